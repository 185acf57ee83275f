// What came back, in the shop's words: how long it ran, how far, what it turned out to be.
import type { Outcome } from '../../../app/comebacks/causes.ts';
import type { CauseSaid, Service } from '../../../app/comebacks/log.contract.ts';
import { distanceWords } from '../../../app/jobs/warranty.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';

/** "253 days"; "1 day". */
export function daysInService({ days }: Service): string {
  return days === 1 ? '1 day' : `${days} days`;
}

/** "18,400 miles", or that nobody wrote it down. */
export function usedWords({ used }: Service, decimalMark: DecimalMark): string {
  return used === null ? 'use not known' : distanceWords(used, decimalMark);
}

/** "too tight, Forward"; "material, whole unit". */
export function causeWords({ cause, packName }: Pick<CauseSaid, 'cause' | 'packName'>): string {
  return `${cause}, ${packName ?? 'whole unit'}`;
}

/** Whether an outcome says that the shop's work failed, or that nobody knows yet. */
export function isStrong(outcome: Outcome): boolean {
  return outcome === 'ours' || outcome === 'not known yet';
}
