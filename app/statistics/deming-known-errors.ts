// A straight line through pairs when the error of every point is known, along and across.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';
import type { Line } from './deming.ts';
import { rootBetween } from './root.ts';
import { centreInUnits, unitNear } from './summary.ts';

export type LineWithErrors = Line & {
  readonly slopeStandardError: number;
  readonly interceptStandardError: number;
  /** S / (n − 2), near 1 where the stated deviations explain the scatter; null for two points. */
  readonly meanWeightedSquare: number | null;
};

/**
 * The line of least S = Σ (residual / its standard deviation)², with standard deviations `sx` and `sy`, zero or more, not
 * both zero at one point. Where all `sx` are zero this is the weighted regression of y on x, where all `sy` are zero that
 * of x on y. Refuses unequal lengths, fewer than two points, and points through which no such line is determined: upright,
 * or as good in another direction.
 * Source: D. York and others, Unified equations for the slope, intercept, and standard errors of the best straight
 * line, American Journal of Physics 72, 2004, 367, without correlation. Their iteration may run to and fro for ever, so
 * the root of their equation 13b is bracketed beside the lowest S of a row of directions instead.
 */
export function demingLineKnownErrors(
  x: readonly number[],
  y: readonly number[],
  sx: readonly number[],
  sy: readonly number[],
): Result<LineWithErrors> {
  const checked = checkColumns({ x, y, sx, sy });
  if (!checked.ok) return checked;
  if (checked.value < 2) return refuse('too-few', 'A line needs at least two points.');
  if (!sx.every((each, i) => each >= 0 && sy[i]! >= 0 && each + sy[i]! > 0)) {
    return refuse('not-positive', 'Standard deviations are zero or more, and not both zero at one point.');
  }
  // Centred and each in its own unit, so that points far from zero keep their digits and every slope is about 1.
  const across = centreInUnits(x);
  const up = centreInUnits(y);
  const [alongErrors, upErrors] = [sx.map((each) => each / across.unit), sy.map((each) => each / up.unit)];
  const errorUnit = unitNear([...alongErrors, ...upErrors]);
  const points: Points = {
    x: across.deviations,
    y: up.deviations,
    sx: alongErrors.map((each) => each / errorUnit),
    sy: upErrors.map((each) => each / errorUnit),
  };
  const best = bestSlope(points);
  if (!best.ok) return best;
  const fit = fitAround(points, best.value);
  const slope = (best.value * up.unit) / across.unit;
  const slopeVariance = 1 / fit.adjustedSquares;
  const adjustedMean = across.mean / across.unit + fit.adjustedMean;
  return accept({
    slope,
    intercept: up.mean + up.unit * (fit.meanY - best.value * fit.meanX) - slope * across.mean,
    slopeStandardError: (errorUnit * Math.sqrt(slopeVariance) * up.unit) / across.unit,
    interceptStandardError:
      errorUnit * up.unit * Math.hypot(Math.sqrt(1 / fit.weight), adjustedMean * Math.sqrt(slopeVariance)),
    meanWeightedSquare: x.length > 2 ? fit.weightedSquares / (x.length - 2) / errorUnit / errorUnit : null,
  });
}

type Points = Readonly<Record<'x' | 'y' | 'sx' | 'sy', readonly number[]>>;

// Directions to look at: level, and eight slopes a decade from a millionth to a million on either side.
const steps = Array.from({ length: 97 }, (_, i) => 10 ** ((i - 48) / 8));
const slopesToTry = [...steps.map((slope) => -slope).reverse(), 0, ...steps];

function bestSlope(points: Points): Result<number> {
  const misfit = (slope: number) => fitAround(points, slope).weightedSquares;
  const tried = slopesToTry.map(misfit);
  const [least, most] = [Math.min(...tried), Math.max(...tried)];
  const unsettled = refuse('no-slope', 'The points do not determine a line.');
  if (most - least <= 1e-12 * most) return unsettled;
  const found = slopesToTry.flatMap((_, i) => {
    const isDip = tried[i]! < (tried[i - 1] ?? 0) && tried[i]! <= (tried[i + 1] ?? 0);
    if (!isDip) return [];
    const slope = lowestBetween(points, slopesToTry[i - 1]!, slopesToTry[i + 1]!);
    return [{ slope, misfit: misfit(slope) }];
  });
  const [first, second] = found.toSorted((a, b) => a.misfit - b.misfit);
  if (!first || least < first.misfit * (1 - 1e-9)) return unsettled;
  if (second && second.misfit <= first.misfit * (1 + 1e-9)) {
    return refuse('no-slope', 'Two directions fit these points equally well.');
  }
  return accept(first.slope);
}

/** Where S is least between two slopes: narrowed down until its derivative changes sign just once, then solved. */
function lowestBetween(points: Points, from: number, to: number): number {
  const fall = (slope: number) => fitAround(points, slope).fall;
  let [lower, upper] = [from, to];
  for (let round = 0; round < 20 && !(fall(lower) > 0 && fall(upper) < 0); round++) {
    const pieces = Array.from({ length: 17 }, (_, i) => lower + (i / 16) * (upper - lower));
    const misfits = pieces.map((slope) => fitAround(points, slope).weightedSquares);
    const lowest = misfits.indexOf(Math.min(...misfits));
    [lower, upper] = [pieces[Math.max(0, lowest - 1)]!, pieces[Math.min(16, lowest + 1)]!];
  }
  return rootBetween(fall, lower, upper);
}

/**
 * The weighted means at one slope, S, half its fall with the slope (13b), and what the standard errors need (13d to 13f).
 * In plain loops, because a hundred thousand points are gone through a few hundred times.
 */
function fitAround({ x, y, sx, sy }: Points, slope: number) {
  const weights = new Float64Array(x.length);
  let [weight, sumX, sumY] = [0, 0, 0];
  for (let i = 0; i < weights.length; i++) {
    const across = slope * sx[i]!;
    // A point known exactly in this direction pins the line: its weight is as good as endless.
    const each = 1 / Math.max(1e-300, sy[i]! * sy[i]! + across * across);
    weights[i] = each;
    weight += each;
    sumX += each * x[i]!;
    sumY += each * y[i]!;
  }
  const [meanX, meanY] = [sumX / weight, sumY / weight];
  const adjusted = new Float64Array(x.length);
  let [weightedSquares, fall, sumAdjusted] = [0, 0, 0];
  for (let i = 0; i < weights.length; i++) {
    const each = weights[i]!;
    const [fromX, error] = [x[i]! - meanX, sx[i]!];
    const residual = y[i]! - meanY - slope * fromX;
    const along = fromX + each * slope * error * error * residual;
    adjusted[i] = along;
    weightedSquares += each * residual * residual;
    fall += each * along * residual;
    sumAdjusted += each * along;
  }
  const adjustedOffset = sumAdjusted / weight;
  let adjustedSquares = 0;
  for (let i = 0; i < weights.length; i++) adjustedSquares += weights[i]! * (adjusted[i]! - adjustedOffset) ** 2;
  return { weight, meanX, meanY, weightedSquares, fall, adjustedMean: meanX + adjustedOffset, adjustedSquares };
}
