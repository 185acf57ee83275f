// The keys at the end of a form in sections, on the line its sections stand on.
import type { ReactNode } from 'react';
import styles from './FormKeys.module.css';

export function FormKeys({ children }: { children: ReactNode }) {
  return <div className={styles.keys}>{children}</div>;
}
