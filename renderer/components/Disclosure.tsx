// What most never need, one press away and in place: the budget behind a ±, the small print.
import type { ReactNode } from 'react';
import { Disclosure as AriaDisclosure, Button, DisclosurePanel } from 'react-aria-components';
import { classNames } from './class-names.ts';
import styles from './Disclosure.module.css';

type DisclosureProps = {
  /** On the key: "Why?", "Settings of the dial". */
  words: string;
  isOpenAtFirst?: boolean;
  /** For what is looked up only when it is opened. */
  onOpenChange?: (isOpen: boolean) => void;
  children: ReactNode;
};

export function Disclosure({ words, isOpenAtFirst = false, onOpenChange, children }: DisclosureProps) {
  return (
    <AriaDisclosure
      defaultExpanded={isOpenAtFirst}
      {...(onOpenChange && { onExpandedChange: onOpenChange })}
      className={classNames(styles.disclosure)}
    >
      <Button slot="trigger" className={classNames(styles.key)}>
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d="M5 2l6 6-6 6" fill="none" stroke="currentColor" strokeWidth="1.5" />
        </svg>
        {words}
      </Button>
      <DisclosurePanel className={classNames(styles.panel)}>{children}</DisclosurePanel>
    </AriaDisclosure>
  );
}
