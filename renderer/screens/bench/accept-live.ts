// Accepting what a running gauge offers: only as it stands still, and only by a hand.
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { typedOffer } from '../../../app/indicators/typed-offer.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import { heardOf, type LiveNow } from './live-gauge.ts';
import type { ReadingLine } from './use-reading-line.ts';

/** Writes the offer through the entry line, with its trace; why it cannot be accepted is said beside the line. */
export function acceptLive(now: LiveNow | null, line: GaugeLine, decimalMark: DecimalMark, entry: ReadingLine): void {
  const offer = now?.trouble === null && !isMoving(now) ? now.state.offer : null;
  if (now && offer) entry.accept(typedOffer(offer, line.unit, decimalMark), heardOf(now, line.lineId));
  else entry.refuse(whyNot(now));
}

function isMoving({ state }: LiveNow): boolean {
  return state.offer !== null && state.isMoving;
}

function whyNot(now: LiveNow | null): string {
  if (!now || now.trouble !== null) return 'Nothing comes from the gauge: type the line.';
  if (isMoving(now)) return 'Not while it moves: wait until it stands still.';
  return 'Nothing to accept yet: do as the gauge says, or type the line.';
}
