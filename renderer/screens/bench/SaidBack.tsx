// What a typed line was understood as: in the unit it was typed in, and beside it in the other one.
import styles from './SaidBack.module.css';

/** `words` as the one formatter says it: "27.0 thou · 0.686 mm". */
export function SaidBack({ words }: { words: string }) {
  const [first, other] = words.split(' · ');
  return (
    <span className={styles.said}>
      {first}
      {other && <span className={styles.other}>{other}</span>}
    </span>
  );
}
