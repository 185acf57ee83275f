// Something a person should know, where it matters: a caution, what was done, what a figure rests on.
import type { ReactNode } from 'react';
import { classNames } from './class-names.ts';
import styles from './Notice.module.css';

type NoticeProps = {
  /** `caution` is about a hand, an eye or a part, and begins with what to do. `done` says what just happened. */
  kind?: 'note' | 'caution' | 'done';
  children: ReactNode;
};

export function Notice({ kind = 'note', children }: NoticeProps) {
  return (
    <p role={kind === 'done' ? 'status' : undefined} className={classNames(styles.notice, styles[kind])}>
      {kind === 'caution' && <b>Caution: </b>}
      {children}
    </p>
  );
}
