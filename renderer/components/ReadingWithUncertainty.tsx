// A figure that was read and how sure it is: never the one without the other.
import { classNames } from './class-names.ts';
import styles from './ReadingWithUncertainty.module.css';

type ReadingProps = {
  /** Already written out: "32.0". */
  value: string;
  /** "1.5"; null when it cannot be said yet. */
  plusMinus: string | null;
  /** "thou · 0.813 mm". */
  unit?: string;
  /** `read` is read across the bench. */
  size?: 'body' | 'say' | 'read';
  /** `act` for the one the hand is about to bring about. */
  tone?: 'ink' | 'act';
};

export function ReadingWithUncertainty({ value, plusMinus, unit, size = 'read', tone = 'ink' }: ReadingProps) {
  return (
    <span className={classNames(styles.reading, styles[size], styles[tone])}>
      <span className={styles.value}>{value}</span>
      {plusMinus !== null && <span className={styles.plusMinus}>± {plusMinus}</span>}
      {unit && <span className={styles.unit}>{unit}</span>}
    </span>
  );
}
