// Where to look when a pack reads far from what its plates said, first suspect first.
import type { ReactNode } from 'react';
import styles from './Suspects.module.css';

export function Suspects({ suspects, children }: { suspects: readonly string[]; children: ReactNode }) {
  return (
    <div>
      <p>{children} Look first at:</p>
      <ol className={styles.suspects}>
        {suspects.map((suspect) => (
          <li key={suspect}>{suspect}</li>
        ))}
      </ol>
    </div>
  );
}
