// How much of a spread lies between groups and how much within them: one way, groups of any size.
import { accept, type Result, refuse } from '../base/result.ts';
import { offsetsFromFirst } from './as-typed.ts';
import { checkColumns } from './columns.ts';
import { fTails } from './f-distribution.ts';
import { centre, meanOf, unitNear } from './summary.ts';

export type VarianceComponents = {
  readonly sumOfSquaresBetween: number;
  readonly sumOfSquaresWithin: number;
  readonly degreesOfFreedomBetween: number;
  readonly degreesOfFreedomWithin: number;
  readonly f: number;
  readonly p: number;
  /** Never below zero: a negative estimate is reported as 0. */
  readonly betweenVariance: number;
  readonly residualStandardDeviation: number;
};

/**
 * One-way random effects by analysis of variance; `groups` names the group of each value. Refuses fewer than two groups,
 * no group with two values, and values that do not differ within their groups. A square of the unit that is too large for
 * a double is infinite, one that is too small is 0; the ratios and the deviation do not suffer from it.
 * Source: JCGM 100:2008 H.5; with unequal sizes n₀ = (N − Σnᵢ²/N) / (k − 1) (S. Searle, Linear Models, 1971, 11.2).
 */
export function varianceComponents(
  values: readonly number[],
  groups: readonly (string | number)[],
): Result<VarianceComponents> {
  if (groups.length !== values.length) return refuse('different-lengths', 'Every value needs its group.');
  const checked = checkColumns({ values });
  if (!checked.ok) return checked;
  // Offsets from the first value keep the digits of large values with a small spread.
  const { offsets, steps } = offsetsFromFirst(values);
  const size = unitNear(offsets);
  const unit = size / steps;
  const members = [...Map.groupBy(values.keys(), (i) => groups[i]!).values()].map((places) =>
    places.map((i) => offsets[i]! / size),
  );
  const total = values.length;
  if (members.length < 2) return refuse('one-group', 'Comparing groups needs at least two of them.');
  if (members.length === total)
    return refuse('no-repeats', 'No group holds two values, so nothing shows the spread within.');
  const within = members.map((group) => centre(group));
  const grandMean = meanOf(members.flat());
  const sumOfSquaresBetween = members.reduce(
    (sum, group, i) => sum + group.length * (within[i]!.mean - grandMean) ** 2,
    0,
  );
  const sumOfSquaresWithin = within.reduce((sum, group) => sum + group.sumOfSquares, 0);
  if (sumOfSquaresWithin === 0) {
    return refuse('zero-variance', 'The values do not differ within their groups, so nothing can be compared with it.');
  }
  const degreesOfFreedomBetween = members.length - 1;
  const degreesOfFreedomWithin = total - members.length;
  const meanSquareBetween = sumOfSquaresBetween / degreesOfFreedomBetween;
  const meanSquareWithin = sumOfSquaresWithin / degreesOfFreedomWithin;
  const effectiveSize =
    (total - members.reduce((sum, group) => sum + group.length ** 2, 0) / total) / degreesOfFreedomBetween;
  const f = meanSquareBetween / meanSquareWithin;
  const squared = (square: number) => square * unit * unit;
  return accept({
    sumOfSquaresBetween: squared(sumOfSquaresBetween),
    sumOfSquaresWithin: squared(sumOfSquaresWithin),
    degreesOfFreedomBetween,
    degreesOfFreedomWithin,
    f,
    p: fTails(f, degreesOfFreedomBetween, degreesOfFreedomWithin).upper,
    betweenVariance: squared(Math.max(0, (meanSquareBetween - meanSquareWithin) / effectiveSize)),
    residualStandardDeviation: unit * Math.sqrt(meanSquareWithin),
  });
}
