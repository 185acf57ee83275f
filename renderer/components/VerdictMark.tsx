// The shape of a verdict alone, as large as the letters beside it. The word must stand near it.
import { type Verdict, verdictRole } from '../../app/charts/verdict-mark.ts';
import { classNames } from './class-names.ts';
import styles from './Verdict.module.css';

export function VerdictMark({ verdict }: { verdict: Verdict }) {
  const role = verdictRole(verdict);
  return (
    <svg viewBox="0 0 16 16" className={classNames(styles.mark, styles[role])} aria-hidden="true">
      {role === 'in' && <circle cx="8" cy="8" r="7" fill="currentColor" />}
      {role === 'out' && (
        <path d="M1.75 1.75h12.5v12.5h-12.5zM2 2l12 12M14 2L2 14" fill="none" stroke="currentColor" strokeWidth="2" />
      )}
      {role === 'close' && (
        <>
          <path d="M8 1l7 7-7 7-7-7z" fill="none" stroke="currentColor" strokeWidth="1.75" />
          <path d="M8 1v14L1 8z" fill="currentColor" />
        </>
      )}
      {role === 'quiet' && <path d="M3 8h10" stroke="currentColor" strokeWidth="2" />}
    </svg>
  );
}
