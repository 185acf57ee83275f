// Whom to call, in words that stand the same on the screen, on paper and in a file.
import { distanceWords, type Writing, warrantyStanding } from '../jobs/warranty.ts';
import type { BuildToCall, UnitToCall } from './calls.contract.ts';

/** Nobody has to call any more: it was looked at, or taken off the list. */
export function isSettled({ calls }: Pick<UnitToCall, 'calls'>): boolean {
  const newest = calls[0]?.cameOfIt;
  return newest === 'looked at' || newest === 'taken off';
}

/** "to be called", or what came of the newest call. */
export function callStanding({ calls }: Pick<UnitToCall, 'calls'>): string {
  return calls[0]?.cameOfIt ?? 'to be called';
}

/** How its warranty stands on `today`, by what is known of its use. */
export function warrantyToday(build: BuildToCall, today: string, writing: Writing): string {
  const seen = build.seenSince;
  return warrantyStanding(build.left, { day: today, distance: seen?.distance ?? null }, writing).words;
}

/** "3,200 miles by 4 May", or that it was not seen since. */
export function usedSoFar({ seenSince, service }: BuildToCall, { decimalMark, sayDay }: Writing): string {
  if (seenSince === null) return 'not seen since';
  const used = service.used === null ? 'use not known' : distanceWords(service.used, decimalMark);
  return `${used} by ${sayDay(seenSince.on)}`;
}

/** "came back 4 May as job 12, ours"; empty where it did not. */
export function cameBackWords({ cameBack }: BuildToCall, sayDay: Writing['sayDay']): string {
  return cameBack
    .map(({ number, cameBackOn, outcome }) => `came back ${sayDay(cameBackOn)} as job ${number}, ${outcome}`)
    .join('; ');
}
