// A key: what pressing it does, in the trade's words, with the letter that does the same.
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components';
import styles from './Button.module.css';
import { classNames } from './class-names.ts';
import { KeyHint } from './KeyHint.tsx';

export type ButtonProps = Omit<AriaButtonProps, 'className' | 'style' | 'children' | 'render'> & {
  children: string;
  /** The one filled key of a screen is the act the prompt asks for. */
  kind?: 'plain' | 'filled';
  /** `bench` is pressed with gloves at arm's length. */
  size?: 'desk' | 'bench';
  /** The keyboard's key that does the same. It is only shown; who shows it listens for it. */
  keyHint?: string;
};

export function Button({ children, kind = 'plain', size = 'desk', keyHint, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} className={classNames(styles.key, styles[kind], styles[size])}>
      {keyHint && <KeyHint>{keyHint}</KeyHint>}
      {children}
    </AriaButton>
  );
}
