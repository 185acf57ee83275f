// A straight line through pairs when both of them carry an error.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';
import { centre } from './summary.ts';

export type Line = { readonly slope: number; readonly intercept: number };

export type LineWithErrors = Line & {
  readonly slopeStandardError: number;
  readonly interceptStandardError: number;
  /** S / (n − 2), near 1 where the stated deviations explain the scatter; null for two points. */
  readonly meanWeightedSquare: number | null;
};

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
  const across = centre(x);
  const up = centre(y);
  const crossed = across.deviations.reduce((sum, deviation, i) => sum + deviation * up.deviations[i]!, 0);
  const excess = up.sumOfSquares - varianceRatio * across.sumOfSquares;
  const root = Math.hypot(excess, 2 * Math.sqrt(varianceRatio) * crossed);
  // Two forms of one root of a quadratic; each adds where the other would subtract.
  const slope = excess > 0 ? (excess + root) / (2 * crossed) : (2 * varianceRatio * crossed) / (root - excess);
  if (!Number.isFinite(slope)) return refuse('no-slope', 'The points do not determine a line.');
  return accept({ slope, intercept: up.mean - slope * across.mean });
}

/**
 * The line when every point's errors are known: standard deviations `sx` and `sy`, zero or more, not both zero at one
 * point. Refuses as `demingLine`, and where the iteration does not settle.
 * Source: D. York and others, Unified equations for the slope, intercept, and standard errors of the best straight
 * line, American Journal of Physics 72, 2004, 367, without correlation.
 */
export function demingLineKnownErrors(
  x: readonly number[],
  y: readonly number[],
  sx: readonly number[],
  sy: readonly number[],
): Result<LineWithErrors> {
  const checked = checkColumns({ x, y, sx, sy });
  if (!checked.ok) return checked;
  if (!sx.every((each, i) => each >= 0 && sy[i]! >= 0 && each + sy[i]! > 0)) {
    return refuse('not-positive', 'Standard deviations are zero or more, and not both zero at one point.');
  }
  // Centred, so that points far from zero keep their digits.
  const start = demingLine(x, y, 1);
  if (!start.ok) return start;
  const across = centre(x);
  const up = centre(y);
  let slope = start.value.slope;
  for (let round = 0; round < 1000; round++) {
    const fit = fitAround(across.deviations, up.deviations, sx, sy, slope);
    if (!Number.isFinite(fit.slope)) return refuse('no-slope', 'The points do not determine a line.');
    const isSettled = Math.abs(fit.slope - slope) <= 1e-14 * Math.abs(fit.slope);
    slope = fit.slope;
    if (isSettled) break;
    if (round === 999 && Math.abs(fit.change) > 1e-10 * Math.abs(slope)) {
      return refuse('not-settled', 'The line does not settle: the stated deviations leave its direction open.');
    }
  }
  const fit = fitAround(across.deviations, up.deviations, sx, sy, slope);
  const slopeVariance = 1 / fit.adjustedSquares;
  const adjustedMean = across.mean + fit.adjustedMean;
  return accept({
    slope,
    intercept: up.mean + fit.meanY - slope * (across.mean + fit.meanX),
    slopeStandardError: Math.sqrt(slopeVariance),
    interceptStandardError: Math.sqrt(1 / fit.weight + adjustedMean * adjustedMean * slopeVariance),
    meanWeightedSquare: x.length > 2 ? fit.weightedSquares / (x.length - 2) : null,
  });
}

/** One round of York's equations 13b and 13c, with what they leave for the standard errors, 13d to 13f. */
function fitAround(
  x: readonly number[],
  y: readonly number[],
  sx: readonly number[],
  sy: readonly number[],
  slope: number,
) {
  const weights = x.map((_, i) => 1 / (sy[i]! ** 2 + slope * slope * sx[i]! ** 2));
  const weight = weights.reduce((sum, each) => sum + each, 0);
  const meanX = weights.reduce((sum, each, i) => sum + each * x[i]!, 0) / weight;
  const meanY = weights.reduce((sum, each, i) => sum + each * y[i]!, 0) / weight;
  const adjusted = weights.map(
    (each, i) => each * ((x[i]! - meanX) * sy[i]! ** 2 + slope * (y[i]! - meanY) * sx[i]! ** 2),
  );
  const upward = weights.reduce((sum, each, i) => sum + each * adjusted[i]! * (y[i]! - meanY), 0);
  const along = weights.reduce((sum, each, i) => sum + each * adjusted[i]! * (x[i]! - meanX), 0);
  const adjustedOffset = weights.reduce((sum, each, i) => sum + each * adjusted[i]!, 0) / weight;
  const adjustedSquares = weights.reduce((sum, each, i) => sum + each * (adjusted[i]! - adjustedOffset) ** 2, 0);
  const weightedSquares = weights.reduce(
    (sum, each, i) => sum + each * (y[i]! - meanY - slope * (x[i]! - meanX)) ** 2,
    0,
  );
  return {
    slope: upward / along,
    change: upward / along - slope,
    weight,
    meanX,
    meanY,
    adjustedMean: meanX + adjustedOffset,
    adjustedSquares,
    weightedSquares,
  };
}
