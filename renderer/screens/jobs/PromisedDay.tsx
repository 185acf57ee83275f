// A promised day; one that has passed is marked by a word and a shape, not by colour alone.
import { classNames } from '../../components/class-names.ts';
import { isLateToday, sayBusinessDay, sayUntil } from './days.ts';
import styles from './PromisedDay.module.css';

type PromisedDayProps = {
  day: string;
  /** What is done cannot be late any more. */
  isDone: boolean;
  saysWhen?: boolean;
};

export function PromisedDay({ day, isDone, saysWhen = false }: PromisedDayProps) {
  const isLate = !isDone && isLateToday(day);
  return (
    <span className={classNames(styles.day, isLate && styles.late)}>
      {isLate && (
        <svg viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
          <path d="M7 1l6 12H1z" fill="none" stroke="currentColor" strokeWidth="2" />
        </svg>
      )}
      {sayBusinessDay(day)}
      {saysWhen && !isDone ? `, ${sayUntil(day)}` : isLate && ', late'}
    </span>
  );
}
