// Whether a gauge can be relied on today: what its last check found, and when the next one is due.
import { dayAfter } from '../jobs/calendar-days.ts';

export const standingWords = ['good', 'overdue', 'found out', 'never checked', 'not judged'] as const;
export type StandingWord = (typeof standingWords)[number];

export type Standing = {
  readonly word: StandingWord;
  /** The day of the last check, yyyy-mm-dd. */
  readonly checkedOn: string | null;
  /** The day the next one is due; null where no interval is set or nothing was checked. */
  readonly dueOn: string | null;
};

/**
 * `checks` oldest first, superseded ones left out. Due so many calendar days after the last check and overdue the day
 * after that. Found out stays until a later check is inside. Without a permitted error a check is not judged.
 */
export function gaugeStanding(
  checks: ReadonlyArray<{ readonly checkedOn: string; readonly isWithin: boolean | null }>,
  intervalDays: number | null,
  today: string,
): Standing {
  const last = checks.at(-1);
  if (!last) return { word: 'never checked', checkedOn: null, dueOn: null };
  const { checkedOn, isWithin } = last;
  const dueOn = intervalDays === null ? null : dayAfter(checkedOn, intervalDays);
  if (isWithin === false) return { word: 'found out', checkedOn, dueOn };
  if (dueOn !== null && dueOn < today) return { word: 'overdue', checkedOn, dueOn };
  return { word: isWithin === null ? 'not judged' : 'good', checkedOn, dueOn };
}

/** What to say where the gauge is chosen, or null where there is nothing to warn of. */
export function standingWarning(tag: string, { word }: Standing): string | null {
  switch (word) {
    case 'overdue':
      return `${tag} is overdue for its check.`;
    case 'found out':
      return `${tag} was found out of its permitted error: take another, or check it first.`;
    case 'never checked':
      return `${tag} was never checked.`;
    default:
      return null;
  }
}
