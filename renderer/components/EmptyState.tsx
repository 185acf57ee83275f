// A place with nothing in it yet: says so, and what to do about it.
import type { ReactNode } from 'react';
import { classNames } from './class-names.ts';
import styles from './EmptyState.module.css';

type EmptyStateProps = {
  title: string;
  /** What to do, in a sentence. */
  children?: ReactNode;
  /** The key that does it. */
  act?: ReactNode;
  /** The heading's rank where it stands. */
  level?: 1 | 2;
};

export function EmptyState({ title, children, act, level = 1 }: EmptyStateProps) {
  const Title = level === 1 ? 'h1' : 'h2';
  return (
    <section className={classNames(styles.empty, level === 1 && styles.head)}>
      <Title className={level === 1 ? 'say' : styles.second}>{title}</Title>
      {children && <p className="quiet">{children}</p>}
      {act && <div className={styles.act}>{act}</div>}
    </section>
  );
}
