// What the plate does, found in the gauge's trace: at rest, pressed down, lifted by air, and whether the air holds.
// No clock inside and nothing decided: it only says what was seen, for a person to accept.
import type { Sample } from './read-line.ts';
import { levelOf, type Recent, type Stillness, withSample } from './stillness.ts';

export type PlateRules = Stillness & {
  /** Not back to zero by more than this is said; at rest, the gauge itself must show zero within it. */
  readonly zeroReturn_nm: number;
};

/** Levels are what the gauge showed while it stood still; null means not seen since the spot began. */
export type PlateSeen = {
  readonly recent: Recent;
  /** The newest level; null while it moves. */
  readonly level_nm: number | null;
  readonly rest_nm: number | null;
  /** When it last stood at rest before it was pressed. */
  readonly restAt_ms: number | null;
  /** The deepest level of the newest push. */
  readonly pressed_nm: number | null;
  /** Where it came to rest after the push. */
  readonly back_nm: number | null;
  /** The highest level on air. */
  readonly air_nm: number | null;
  /** It came down again without the gauge's level falling on the way. */
  readonly isReleased: boolean;
  /** The air lifted the plate and did not keep it there. */
  readonly isLosingAir: boolean;
};

export const nothingSeen: PlateSeen = {
  recent: [],
  level_nm: null,
  rest_nm: null,
  restAt_ms: null,
  pressed_nm: null,
  back_nm: null,
  air_nm: null,
  isReleased: false,
  isLosingAir: false,
};

/** Air that does not hold is looked for over so long. */
const losing_ms = 1000;

/** A plate off zero by less than so many zero returns is not yet lifted by air: it is not back at zero. */
const leastLift = 3;

/** What was seen, with one more reading. Readings must come in the order of their time. */
export function followPlate(before: PlateSeen, sample: Sample, rules: PlateRules): PlateSeen {
  const recent = withSample(before.recent, sample, Math.max(rules.for_ms, losing_ms));
  const level_nm = levelOf(recent, rules);
  const seen = { ...before, recent, level_nm };
  if (level_nm !== null) return settle(seen, level_nm, sample.at_ms, rules);
  return { ...seen, isLosingAir: before.isLosingAir || (before.air_nm === null && isFalling(seen, rules)) };
}

function settle(seen: PlateSeen, level: number, at_ms: number, rules: PlateRules): PlateSeen {
  const { zeroReturn_nm, within_nm } = rules;
  if (seen.rest_nm === null) {
    return Math.abs(level) > zeroReturn_nm ? seen : { ...seen, rest_nm: level, restAt_ms: at_ms };
  }
  const least = leastMove(rules);
  const [off, pressed] = [level - seen.rest_nm, seen.pressed_nm];
  if (off > leastLift * zeroReturn_nm) {
    // Coming down slowly enough to look still is losing air too.
    const highest = Math.max(seen.air_nm ?? level, level);
    return { ...seen, air_nm: highest, isLosingAir: seen.isLosingAir || highest - level > 2 * within_nm };
  }
  const hasHadAir = seen.air_nm !== null || seen.isLosingAir;
  const isPressed = off < -least && (hasHadAir || pressed === null || level <= pressed + least);
  if (isPressed && hasHadAir) {
    // A new push after air is a new go at the spot.
    return { ...seen, pressed_nm: level, back_nm: null, air_nm: null, isReleased: false, isLosingAir: false };
  }
  if (isPressed) return { ...seen, pressed_nm: Math.min(pressed ?? level, level), back_nm: null };
  if (hasHadAir) return { ...seen, isReleased: true };
  if (pressed !== null) return { ...seen, back_nm: level };
  // Before the push the dial may be zeroed once more.
  return Math.abs(level) > zeroReturn_nm ? seen : { ...seen, rest_nm: level, restAt_ms: at_ms };
}

/** What is more than the gauge's own unrest. */
function leastMove({ within_nm, zeroReturn_nm }: PlateRules): number {
  return Math.max(within_nm, zeroReturn_nm / 2);
}

/**
 * Lifted, never still there, and coming down all of the last second: by more than unrest, never up again by more than
 * that, and not in one drop, which is a hand on the valve.
 */
function isFalling({ recent, rest_nm }: PlateSeen, { within_nm, zeroReturn_nm }: PlateRules): boolean {
  const [first, last] = [recent[0], recent.at(-1)];
  if (rest_nm === null || !first || !last || last.at_ms - first.at_ms < losing_ms) return false;
  const fall = first.value_nm - last.value_nm;
  if (fall <= within_nm) return false;
  if (recent.some(({ value_nm }) => value_nm - rest_nm <= leastLift * zeroReturn_nm)) return false;
  let [lowest, isSteady] = [first.value_nm, true];
  for (const { at_ms, value_nm } of recent) {
    const quarterBefore = recent.findLast((each) => each.at_ms <= at_ms - losing_ms / 4);
    const drop = (quarterBefore?.value_nm ?? value_nm) - value_nm;
    isSteady &&= value_nm - lowest <= within_nm && drop <= (fall * 2) / 3 + within_nm;
    lowest = Math.min(lowest, value_nm);
  }
  return isSteady;
}

/** What a person may accept now. Lengths are differences from rest, never minus. */
export type Offer =
  | { readonly kind: 'push and air'; readonly push_nm: number; readonly air_nm: number }
  | { readonly kind: 'whole'; readonly air_nm: number }
  | { readonly kind: 'travel' | 'size'; readonly amount_nm: number };

/** How the line is read at this spot. */
export type Wanted = 'push and air' | 'whole' | 'travel' | 'size';

/** The offer, or the one thing that is still missing or wrong. */
export type OfferState =
  | { readonly offer: Offer; readonly isMoving: boolean; readonly isBackSeen: boolean }
  | { readonly offer: null; readonly lacks: 'rest' | 'push' | 'air' | 'stillness' | 'zero' | 'hold' };

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
  if (seen.isLosingAir) return { offer: null, lacks: 'hold' };
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
