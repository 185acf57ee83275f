// What the plate does, found in the gauge's trace: at rest, pressed down, lifted by air, and whether the air holds.
// No clock inside and nothing decided: it only says what was seen; what may be accepted of it is in plate-offer.ts.
import type { Sample } from './read-line.ts';
import { judgedSince, levelOf, type Recent, type Stillness, withSample } from './stillness.ts';

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
  /** Where and when it last stood. */
  readonly stood: Sample | null;
  /** The deepest level of the newest push. */
  readonly pressed_nm: number | null;
  /** It got there so slowly that a drum may have been turned as well. */
  readonly isPressedSlowly: boolean;
  /** Between two readings it went from standing below rest to zero, as the zero key does, and a quick hand. */
  readonly isZeroedPerhaps: boolean;
  /** A level below rest that looked turned to, not pushed to. */
  readonly doubted_nm: number | null;
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
  stood: null,
  pressed_nm: null,
  isPressedSlowly: false,
  isZeroedPerhaps: false,
  doubted_nm: null,
  back_nm: null,
  air_nm: null,
  isReleased: false,
  isLosingAir: false,
};

/** Air that does not hold is looked for over so long. */
const losing_ms = 1000;

/** A plate off zero by less than so many zero returns is not yet lifted by air: it is not back at zero. */
const leastLift = 3;

/** A hand is at the stop sooner than this, and nobody turns a drum to its next mark so fast. */
const slow_ms = 800;

/**
 * What was seen, with one more reading. Readings must come in the order of their time. A turned drum is told from a push
 * by its time, so by a gauge that speaks ten times a second or more.
 */
export function followPlate(before: PlateSeen, sample: Sample, rules: PlateRules): PlateSeen {
  const recent = withSample(before.recent, sample, Math.max(rules.for_ms, losing_ms));
  const level_nm = levelOf(recent, rules);
  const isZeroedPerhaps = before.isZeroedPerhaps || looksZeroed(before, sample, rules);
  const seen = { ...before, recent, level_nm, isZeroedPerhaps };
  if (level_nm !== null) {
    const settled = settle(seen, level_nm, sample.at_ms, rules);
    return { ...settled, stood: { at_ms: sample.at_ms, value_nm: level_nm }, isZeroedPerhaps: false };
  }
  return { ...seen, isLosingAir: before.isLosingAir || isFalling(seen, rules) };
}

function settle(seen: PlateSeen, level: number, at_ms: number, rules: PlateRules): PlateSeen {
  const { zeroReturn_nm, within_nm } = rules;
  const { rest_nm, pressed_nm } = seen;
  const atRest = { rest_nm: level, restAt_ms: at_ms };
  if (rest_nm === null) return Math.abs(level) > zeroReturn_nm ? seen : { ...seen, ...atRest };
  const off = level - rest_nm;
  if (off > leastLift * zeroReturn_nm) {
    // Once it was let down, a new lift is a new go.
    if (seen.isReleased) return { ...seen, air_nm: level, isReleased: false, isLosingAir: false };
    // Coming down slowly enough to look still is losing air too.
    const highest = Math.max(seen.air_nm ?? level, level);
    return { ...seen, air_nm: highest, isLosingAir: seen.isLosingAir || highest - level > 2 * within_nm };
  }
  const hasHadAir = seen.air_nm !== null || seen.isLosingAir;
  if (isPush(seen, level, rest_nm, hasHadAir, rules)) return pushed(seen, level, hasHadAir, rules);
  if (hasHadAir) return { ...seen, isReleased: true };
  if (pressed_nm !== null && isNoPush(seen, level, rest_nm, pressed_nm, rules)) {
    return { ...seen, ...atRest, pressed_nm: null, back_nm: null, doubted_nm: pressed_nm };
  }
  if (pressed_nm !== null) return { ...seen, back_nm: level };
  // Before the push the dial may be zeroed once more.
  return Math.abs(level) > zeroReturn_nm ? seen : { ...seen, ...atRest };
}

/**
 * Below rest, and below the gauge's own zero, by more than unrest: the first push, a deeper one, one after air, or a new
 * one after it was back at zero.
 */
function isPush(seen: PlateSeen, level: number, rest: number, hasHadAir: boolean, rules: PlateRules): boolean {
  const { pressed_nm, back_nm } = seen;
  const least = leastMove(rules);
  if (level - rest >= -least || level >= -rules.within_nm) return false;
  if (hasHadAir || pressed_nm === null || level <= pressed_nm + least) return true;
  const cameBack = back_nm !== null && Math.abs(back_nm - rest) <= rules.zeroReturn_nm;
  return cameBack && level - rest < -leastLift * rules.zeroReturn_nm;
}

/** Deeper in the push it is in, or in a new one, which begins where it stood; after air that is a new go at the spot. */
function pushed(seen: PlateSeen, level: number, hasHadAir: boolean, rules: PlateRules): PlateSeen {
  const isOn = seen.pressed_nm !== null && seen.back_nm === null && !hasHadAir;
  const go = isOn
    ? { ...seen, pressed_nm: Math.min(seen.pressed_nm ?? level, level) }
    : {
        ...seen,
        ...restBefore(seen, rules),
        pressed_nm: level,
        back_nm: null,
        air_nm: null,
        isReleased: false,
        isLosingAir: false,
      };
  const isFurther = !isOn || level < (seen.pressed_nm ?? level) - leastMove(rules);
  return isFurther ? { ...go, isPressedSlowly: cameSlowly(go, go.restAt_ms, rules) } : go;
}

/** What is more than the gauge's own unrest. */
function leastMove({ within_nm, zeroReturn_nm }: PlateRules): number {
  return Math.max(within_nm, zeroReturn_nm / 2);
}

/** It stood below rest, and its very next reading is zero. */
function looksZeroed({ level_nm, rest_nm }: PlateSeen, { value_nm }: Sample, rules: PlateRules): boolean {
  if (level_nm === null || rest_nm === null) return false;
  return level_nm - rest_nm < -leastMove(rules) && Math.abs(value_nm) <= rules.within_nm;
}

/** Where it stood before it moved, if the gauge showed zero there. */
function restBefore({ stood }: PlateSeen, { zeroReturn_nm }: PlateRules) {
  if (!stood || Math.abs(stood.value_nm) > zeroReturn_nm) return {};
  return { rest_nm: stood.value_nm, restAt_ms: stood.at_ms };
}

/** To where it stands now, since it stood somewhere else. */
function cameSlowly({ recent }: PlateSeen, stoodAt_ms: number | null, { for_ms }: PlateRules): boolean {
  const since_ms = judgedSince(recent, for_ms);
  return stoodAt_ms !== null && since_ms !== null && since_ms - stoodAt_ms > slow_ms;
}

/**
 * At zero, after it stood below. It came down slowly, and up at once or slowly too: a drum was turned and zeroed, or
 * turned on. Or it stood off zero after its push, and was zeroed then. A hand as slow, or under a gauge that speaks too
 * seldom to show it let go, is believed the second time.
 */
function isNoPush(seen: PlateSeen, level: number, rest: number, pressed: number, rules: PlateRules): boolean {
  const { back_nm, doubted_nm, isZeroedPerhaps, isPressedSlowly } = seen;
  const { zeroReturn_nm } = rules;
  if (Math.abs(level) > zeroReturn_nm) return false;
  if (back_nm !== null) return isZeroedPerhaps && Math.abs(back_nm - rest) > zeroReturn_nm;
  const wasSaidTwice = doubted_nm !== null && Math.abs(doubted_nm - pressed) <= zeroReturn_nm / 2;
  return isPressedSlowly && (isZeroedPerhaps || cameSlowly(seen, seen.stood?.at_ms ?? null, rules)) && !wasSaidTwice;
}

/**
 * Lifted and coming down all of the last second: by more than unrest, never up again by more than that, and not in one
 * drop, which is a hand on the valve.
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
