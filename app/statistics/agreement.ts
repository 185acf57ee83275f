// Method against method on the same packs: by how much two of them disagree.
import { accept, type Result, refuse } from '../base/result.ts';
import { differenceAsTyped } from './as-typed.ts';
import { checkColumns } from './columns.ts';
import { normalCoverageFactor } from './normal.ts';
import { studentTCoverageFactor } from './student-t.ts';
import { centreInUnits, meanOf } from './summary.ts';

export type Interval = readonly [lower: number, upper: number];

export type Agreement = {
  readonly n: number;
  /** Mean of first − second. */
  readonly bias: number;
  readonly standardDeviation: number;
  readonly biasInterval: Interval;
  /** Between these lie 95 % of the differences. */
  readonly limits: Interval;
  readonly lowerLimitInterval: Interval;
  readonly upperLimitInterval: Interval;
};

/**
 * Limits of agreement of paired values, bias ± 1.959964 standard deviations, with 95 % intervals by Student's t. Refuses
 * unequal lengths, fewer than two pairs, and differences that do not vary at all.
 * Source: J. Bland and D. Altman, Lancet i, 1986, 307; the limits' standard error s√(1/n + z²/(2(n − 1))) from their
 * Statistical Methods in Medical Research 8, 1999, 135.
 */
export function agreement(first: readonly number[], second: readonly number[]): Result<Agreement> {
  const checked = checkColumns({ a: first, b: second });
  if (!checked.ok) return checked;
  const n = checked.value;
  if (n < 2) return refuse('too-few', 'Agreement needs at least two pairs.');
  const differences = first.map((value, i) => differenceAsTyped(value, second[i]!));
  const bias = meanOf(differences);
  const { unit, sumOfSquares } = centreInUnits(differences);
  if (sumOfSquares === 0) {
    return refuse('zero-variance', 'All differences are equal, so nothing shows how far the methods may disagree.');
  }
  const standardDeviation = unit * Math.sqrt(sumOfSquares / (n - 1));
  const z = normalCoverageFactor(0.95);
  const t = studentTCoverageFactor(0.95, n - 1);
  const around = (middle: number, standardError: number): Interval => [
    middle - t * standardError,
    middle + t * standardError,
  ];
  const limits: Interval = [bias - z * standardDeviation, bias + z * standardDeviation];
  const limitError = standardDeviation * Math.sqrt(1 / n + (z * z) / (2 * (n - 1)));
  return accept({
    n,
    bias,
    standardDeviation,
    biasInterval: around(bias, standardDeviation / Math.sqrt(n)),
    limits,
    lowerLimitInterval: around(limits[0], limitError),
    upperLimitInterval: around(limits[1], limitError),
  });
}
