// In, tight or loose: whether a measured value conforms to its limits, given how sure it is.
import { accept, type Result, refuse } from '../base/result.ts';
import { decimalsOf, roundToDecimals } from '../quantities/decimals.ts';
import { differenceAsTyped } from './as-typed.ts';
import { normalBetween, normalTails } from './normal.ts';

export type Limits = { readonly lower: number | null; readonly upper: number | null };

export type ConformityVerdict = 'in' | 'tight' | 'loose' | 'too close to call';

export type Conformity = {
  readonly probabilityBelow: number;
  readonly probabilityAbove: number;
  readonly probabilityConforming: number;
  /** Inside these a value is proven in; null when the band is narrower than the guard on both sides of it. */
  readonly acceptance: Limits | null;
  /** The rule without a guard. */
  readonly simple: 'accept' | 'reject';
  readonly verdict: ConformityVerdict;
  /** How far beyond its limit, for tight and loose. */
  readonly by: number | null;
};

/**
 * Judges `value` with `standardUncertainty` > 0 against a lower limit, an upper limit or both. Probabilities are normal
 * about the value, their tails by the complementary error function. With the guard w = `guardMultiple` · u (≥ 0) it is
 * *in* inside the limits drawn in by w, *tight* below the lower limit by more than w, *loose* above the upper by more
 * than w, and otherwise too close to call. A limit itself conforms. Refuses no limit at all and limits upside down.
 * Source: JCGM 106:2012 7 and 8; ISO 14253-1:2017 5.
 */
export function judgeConformity(
  value: number,
  standardUncertainty: number,
  limits: Limits,
  guardMultiple: number,
): Result<Conformity> {
  const { lower, upper } = limits;
  if (lower === null && upper === null) return refuse('no-limits', 'There is no limit to judge the value against.');
  if (lower !== null && upper !== null && lower >= upper) {
    return refuse('limits-upside-down', 'The lower limit is not below the upper limit.');
  }
  if (!(standardUncertainty > 0)) {
    return refuse('no-uncertainty', 'The standard uncertainty must be more than zero.');
  }
  const guard = guardMultiple * standardUncertainty;
  // Limits and guard are decimals as a rule, and so are their sums: 0.95 + 0.05 is 1, not a last digit less.
  const guardDecimals = decimalsOf(guardMultiple) + decimalsOf(standardUncertainty);
  const drawnIn = (limit: number, by: number) =>
    roundToDecimals(limit + by, Math.max(decimalsOf(limit), guardDecimals));
  const inner: Limits = {
    lower: lower === null ? null : drawnIn(lower, guard),
    upper: upper === null ? null : drawnIn(upper, -guard),
  };
  const outer: Limits = { lower: lower === null ? null : lower - guard, upper: upper === null ? null : upper + guard };
  // What was computed misses its own decimal by a last digit, and a value on a limit must count as on it.
  const magnitude = Math.max(Math.abs(value), Math.abs(lower ?? 0), Math.abs(upper ?? 0), guard);
  const slack = 4 * Number.EPSILON * magnitude;
  const isEmpty = inner.lower !== null && inner.upper !== null && inner.lower > inner.upper;
  const verdict: ConformityVerdict =
    !isEmpty && isInside(value, inner, slack)
      ? 'in'
      : outer.lower !== null && value < outer.lower - slack
        ? 'tight'
        : outer.upper !== null && value > outer.upper + slack
          ? 'loose'
          : 'too close to call';
  return accept({
    ...probabilities(value, standardUncertainty, limits),
    acceptance: isEmpty ? null : inner,
    simple: isInside(value, limits, slack) ? 'accept' : 'reject',
    verdict,
    by:
      verdict === 'tight'
        ? differenceAsTyped(lower!, value)
        : verdict === 'loose'
          ? differenceAsTyped(value, upper!)
          : null,
  });
}

function isInside(value: number, limits: Limits, slack: number): boolean {
  return (
    (limits.lower === null || value >= limits.lower - slack) && (limits.upper === null || value <= limits.upper + slack)
  );
}

function probabilities(value: number, standardUncertainty: number, { lower, upper }: Limits) {
  const toLower = lower === null ? null : (lower - value) / standardUncertainty;
  const toUpper = upper === null ? null : (upper - value) / standardUncertainty;
  return {
    probabilityBelow: toLower === null ? 0 : normalTails(toLower).lower,
    probabilityAbove: toUpper === null ? 0 : normalTails(toUpper).upper,
    probabilityConforming: probabilityInside(value, standardUncertainty, { lower, upper }),
  };
}

/** The probability that a normal value lies inside the limits, either of which may be missing. */
export function probabilityInside(mean: number, standardDeviation: number, { lower, upper }: Limits): number {
  if (!(standardDeviation > 0)) return isInside(mean, { lower, upper }, 0) ? 1 : 0;
  const to = (limit: number) => (limit - mean) / standardDeviation;
  if (lower === null) return upper === null ? 1 : normalTails(to(upper)).lower;
  if (upper === null) return normalTails(to(lower)).upper;
  return normalBetween(to(lower), to(upper), (upper - lower) / standardDeviation);
}
