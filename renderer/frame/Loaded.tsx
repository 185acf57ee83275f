// What a read gives, once it is there: until then a quiet word, and its failure where the answer would have stood.
import type { ReactNode } from 'react';
import type { Read } from '../rpc/use-read.ts';
import { FailureSentence } from './FailureSentence.tsx';
import styles from './Loaded.module.css';

export function Loaded<T>({ read, children }: { read: Read<T>; children: (value: T) => ReactNode }) {
  if (read.data !== undefined) return children(read.data);
  if (read.error) {
    return (
      <div className={styles.failed}>
        <FailureSentence error={read.error} />
      </div>
    );
  }
  return (
    <p className={styles.waiting} role="status">
      Looking it up…
    </p>
  );
}
