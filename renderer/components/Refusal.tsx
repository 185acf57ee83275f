// Why something was not done: one plain sentence, where the hand is, read out at once.
import type { ReactNode } from 'react';
import styles from './Refusal.module.css';

export function Refusal({ children }: { children: ReactNode }) {
  return (
    <p role="alert" className={styles.refusal}>
      {children}
    </p>
  );
}
