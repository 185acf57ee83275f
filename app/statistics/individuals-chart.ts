// A chart of single values in the order they came: which of them fall outside what the others do.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';
import { meanOf } from './summary.ts';

export type IndividualsChart = {
  readonly mean: number;
  readonly meanMovingRange: number;
  readonly lower: number;
  readonly upper: number;
  readonly movingRangeUpper: number;
  /** Places of the values outside the limits, counted from 0. */
  readonly outside: readonly number[];
};

// For ranges of two values, as tabled to three decimals.
const d2 = 1.128;
const D4 = 3.267;

/**
 * Mean ± 3 · mean moving range / 1.128. Refuses fewer than two values and values that never change.
 * Source: NIST/SEMATECH e-Handbook 6.3.2.2.
 */
export function individualsChart(values: readonly number[]): Result<IndividualsChart> {
  const checked = checkColumns({ values });
  if (!checked.ok) return checked;
  if (values.length < 2) return refuse('too-few', 'A chart needs at least two values.');
  const meanMovingRange = meanOf(values.slice(1).map((value, i) => Math.abs(value - values[i]!)));
  if (meanMovingRange === 0) return refuse('zero-variance', 'The values never change, so there is nothing to chart.');
  const mean = meanOf(values);
  const lower = mean - (3 * meanMovingRange) / d2;
  const upper = mean + (3 * meanMovingRange) / d2;
  return accept({
    mean,
    meanMovingRange,
    lower,
    upper,
    movingRangeUpper: D4 * meanMovingRange,
    outside: [...values.keys()].filter((i) => values[i]! < lower || values[i]! > upper),
  });
}
