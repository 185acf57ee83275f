// What a person may accept of what was seen of the plate, or the one thing that is still missing.
import type { PlateRules, PlateSeen } from './follow-plate.ts';

/** Lengths are differences from rest, never minus. */
export type MeasuredOffer =
  | { readonly kind: 'push and air'; readonly push_nm: number; readonly air_nm: number }
  | { readonly kind: 'whole'; readonly air_nm: number }
  | { readonly kind: 'travel' | 'size'; readonly amount_nm: number };

/** That it will not hold air is a result too. */
export type Offer = MeasuredOffer | { readonly kind: 'will not hold' };

/** How the line is read at this spot. */
export type Wanted = 'push and air' | 'whole' | 'travel' | 'size';

/** The offer, or the one thing that is still missing or wrong. */
export type OfferState =
  | { readonly offer: Offer; readonly isMoving: boolean; readonly isBackSeen: boolean }
  | { readonly offer: null; readonly lacks: 'rest' | 'push' | 'air' | 'stillness' | 'zero' };

/** What was seen, as an offer. While the plate moves the offer stands but must not be accepted: `isMoving`. */
export function offerOf(seen: PlateSeen, wanted: Wanted, rules: PlateRules): OfferState {
  const { level_nm, rest_nm, pressed_nm, back_nm, air_nm } = seen;
  const isMoving = level_nm === null;
  if (wanted === 'size') {
    if (level_nm === null) return { offer: null, lacks: 'stillness' };
    return { offer: { kind: 'size', amount_nm: Math.abs(level_nm) }, isMoving, isBackSeen: true };
  }
  if (rest_nm === null) return { offer: null, lacks: 'rest' };
  if (wanted === 'travel') {
    const far = [air_nm, pressed_nm].flatMap((level) => (level === null ? [] : [Math.abs(level - rest_nm)]));
    if (far.length === 0) return { offer: null, lacks: 'air' };
    return { offer: { kind: 'travel', amount_nm: Math.max(...far) }, isMoving, isBackSeen: true };
  }
  // It sinks as long as it is looked at: nothing to wait for.
  if (seen.isLosingAir) return { offer: { kind: 'will not hold' }, isMoving: false, isBackSeen: true };
  if (wanted === 'push and air') {
    if (pressed_nm === null) return { offer: null, lacks: 'push' };
    if (back_nm !== null && Math.abs(back_nm - rest_nm) > rules.zeroReturn_nm) return { offer: null, lacks: 'zero' };
  }
  if (air_nm === null) return { offer: null, lacks: 'air' };
  const air = air_nm - rest_nm;
  const offer: Offer =
    wanted === 'whole' || pressed_nm === null
      ? { kind: 'whole', air_nm: air }
      : { kind: 'push and air', push_nm: rest_nm - pressed_nm, air_nm: air };
  return { offer, isMoving, isBackSeen: wanted === 'whole' || back_nm !== null };
}
