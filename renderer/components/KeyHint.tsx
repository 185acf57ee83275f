// The keyboard's key beside the words of what it does; for eyes only, since the words say it all.
import styles from './KeyHint.module.css';

export function KeyHint({ children }: { children: string }) {
  return (
    <span className={styles.hint} aria-hidden="true">
      {children}
    </span>
  );
}
