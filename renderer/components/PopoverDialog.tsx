// A key that lets something float beside it without taking the screen: the table behind a figure, a short form.
import type { ReactNode } from 'react';
import { Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';
import { Button, type ButtonProps } from './Button.tsx';
import { classNames } from './class-names.ts';
import styles from './PopoverDialog.module.css';

export type PopoverDialogProps = Pick<ButtonProps, 'kind' | 'size' | 'keyHint' | 'isDisabled' | 'aria-label'> & {
  /** On the key. */
  words: string;
  title: string;
  /** A function is given what closes it. */
  children: ReactNode | ((close: () => void) => ReactNode);
};

/** Nothing modal: the page behind stays live, Escape or a press outside closes it. */
export function PopoverDialog({ words, title, children, ...key }: PopoverDialogProps) {
  return (
    <DialogTrigger>
      <Button {...key}>{words}</Button>
      <Popover isNonModal offset={8} className={classNames(styles.sheet)}>
        <Dialog className={classNames(styles.dialog)}>
          {({ close }) => (
            <>
              <Heading slot="title" level={2} className={classNames(styles.title)}>
                {title}
              </Heading>
              {typeof children === 'function' ? children(close) : children}
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
