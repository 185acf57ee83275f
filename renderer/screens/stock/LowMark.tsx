// The mark of what is at or under its reorder point: an arrow down to the shelf's line, and the word for ears.
import styles from './LowMark.module.css';

export function LowMark() {
  return (
    <span className={styles.mark}>
      <svg viewBox="0 0 16 16" width="14" height="14" aria-hidden="true">
        <path d="M8 1v9M4.5 6.5L8 10l3.5-3.5M2 14h12" fill="none" stroke="currentColor" strokeWidth="1.75" />
      </svg>
      low
    </span>
  );
}
