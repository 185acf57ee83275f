// What the bench says about a running gauge: the next thing the hand does, in one sentence.
import type { PlateSeen } from '../../../app/indicators/follow-plate.ts';
import type { OfferState, Wanted } from '../../../app/indicators/plate-offer.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';
import type { ShopWords } from '../../text/amount-words.ts';

/** What a gauge can read at a check; null where it cannot. */
export function wantedBy(method: ReadingMethod, quantity: string, isZeroedAgain: boolean): Wanted | null {
  if (quantity !== 'length') return null;
  if (method === 'air') return isZeroedAgain ? 'whole' : 'push and air';
  if (method === 'dial') return 'travel';
  return method === 'direct' ? 'size' : null;
}

export function liveSentence(seen: PlateSeen, state: OfferState, wanted: Wanted, words: ShopWords): string {
  const { level_nm, rest_nm, pressed_nm, back_nm } = seen;
  if (state.offer?.kind === 'will not hold') {
    return 'It does not hold air: it sinks. Enter notes that as the result; let it down and air again to try once more.';
  }
  if (state.offer !== null) {
    if (state.isMoving) return 'It moves: wait until it stands still.';
    if (!state.isBackSeen) return 'Enter accepts it. Back to zero was not seen.';
    return 'Enter accepts it.';
  }
  switch (state.lacks) {
    case 'stillness':
      return 'It moves.';
    case 'rest':
      return level_nm === null
        ? 'Let it come to rest at zero.'
        : `At ${words.full(level_nm)}: let it rest, zero the gauge.`;
    case 'push':
      return seen.doubted_nm === null
        ? 'At rest. Push lightly to the stop.'
        : `At rest. ${words.full(seen.doubted_nm)} looked like a turned drum, zeroed. Push lightly to the stop, and let go.`;
    case 'zero':
      return `Not back to zero, ${words.full(Math.abs((back_nm ?? 0) - (rest_nm ?? 0)))} off: zero it and do this spot again.`;
    case 'air':
      if (wanted === 'travel') return 'At rest. Pull to the other end.';
      if (wanted === 'whole') return 'At rest on the pressed plate. Hand off, then air.';
      if (pressed_nm !== null && back_nm === null) return 'Pressed. Let go: back to zero?';
      return 'Back at zero. Hand off the plate, then air.';
  }
}
