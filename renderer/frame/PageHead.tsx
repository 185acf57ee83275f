// The top of a screen at the desk: its name, what it is about, and the keys that belong to the whole of it.
import type { ReactNode } from 'react';
import styles from './PageHead.module.css';

type PageHeadProps = {
  title: string;
  /** What stands beside the name on one line. */
  facts?: ReactNode;
  /** Keys, or a search box, at the far end. */
  acts?: ReactNode;
};

export function PageHead({ title, facts, acts }: PageHeadProps) {
  return (
    <header className={styles.head}>
      <title>{`${title} · Thoubook`}</title>
      <h1 className="say">{title}</h1>
      {facts && <p className={styles.facts}>{facts}</p>}
      {acts && <div className={styles.acts}>{acts}</div>}
    </header>
  );
}
