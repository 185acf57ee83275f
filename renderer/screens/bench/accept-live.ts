// Accepting what a running gauge offers: only as it stands still, and only by a hand.
import type { GaugeLine } from '../../../app/indicators/indicators.contract.ts';
import { typedOffer } from '../../../app/indicators/typed-offer.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import { heardOf, type LiveNow } from './live-gauge.ts';
import type { ReadingLine } from './use-reading-line.ts';

type Accepting = {
  readonly line: GaugeLine;
  readonly decimalMark: DecimalMark;
  readonly entry: Pick<ReadingLine, 'accept'>;
  /** That it will not hold air is the result. */
  readonly noteNoHold: () => void;
};

/** Writes the offer through the entry line, with its trace. False: there is nothing that may be accepted now. */
export function acceptLive(now: LiveNow | null, { line, decimalMark, entry, noteNoHold }: Accepting): boolean {
  if (!now || now.trouble !== null || now.state.offer === null || now.state.isMoving) return false;
  const { offer } = now.state;
  if (offer.kind === 'will not hold') noteNoHold();
  else entry.accept(typedOffer(offer, line.unit, decimalMark), heardOf(now, line.lineId));
  return true;
}
