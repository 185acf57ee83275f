// A straight line through pairs when both of them carry an error of one size each.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';
import { centreInUnits } from './summary.ts';

export type Line = { readonly slope: number; readonly intercept: number };

/**
 * Deming's line for errors of one size each: `varianceRatio` > 0 is the variance of y's error over that of x's, 1 for
 * the orthogonal line. Refuses unequal lengths, fewer than two points, and points through which no such line is
 * determined (all equal, or upright). Source: W. Deming, Statistical Adjustment of Data, 1943; closed form.
 */
export function demingLine(x: readonly number[], y: readonly number[], varianceRatio: number): Result<Line> {
  const checked = checkColumns({ x, y });
  if (!checked.ok) return checked;
  if (checked.value < 2) return refuse('too-few', 'A line needs at least two points.');
  if (!(varianceRatio > 0)) return refuse('not-positive', 'The ratio of the variances must be more than zero.');
  const across = centreInUnits(x);
  const up = centreInUnits(y);
  const ratio = varianceRatio * (across.unit / up.unit) * (across.unit / up.unit);
  const crossed = across.deviations.reduce((sum, deviation, i) => sum + deviation * up.deviations[i]!, 0);
  const excess = up.sumOfSquares - ratio * across.sumOfSquares;
  const root = Math.hypot(excess, 2 * Math.sqrt(ratio) * crossed);
  // Two forms of one root of a quadratic; each adds where the other would subtract.
  const inUnits = excess > 0 ? (excess + root) / (2 * crossed) : (2 * ratio * crossed) / (root - excess);
  if (!Number.isFinite(inUnits)) return refuse('no-slope', 'The points do not determine a line.');
  const slope = inUnits * (up.unit / across.unit);
  return accept({ slope, intercept: up.mean - slope * across.mean });
}
