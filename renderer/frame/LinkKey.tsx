// A link that looks like a key: for a way to another screen that is the screen's next act.
import { createLink } from '@tanstack/react-router';
import type { AnchorHTMLAttributes } from 'react';
import button from '../components/Button.module.css';
import { classNames } from '../components/class-names.ts';
import { KeyHint } from '../components/KeyHint.tsx';

type KeyAnchorProps = Omit<AnchorHTMLAttributes<HTMLAnchorElement>, 'className' | 'style'> & {
  kind?: 'plain' | 'filled';
  /** The keyboard's key that does the same. It is only shown; who shows it listens for it. */
  keyHint?: string;
};

function KeyAnchor({ kind = 'plain', keyHint, children, ...rest }: KeyAnchorProps) {
  return (
    <a {...rest} className={classNames(button.key, button[kind], button.desk, button.link)}>
      {keyHint && <KeyHint>{keyHint}</KeyHint>}
      {children}
    </a>
  );
}

export const LinkKey = createLink(KeyAnchor);
