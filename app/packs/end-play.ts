// End play in the bench's own terms: a washer is in, end play is read; a thicker washer gives less.
import { accept, type Result, refuse } from '../base/result.ts';
import { decimalsOf, roundToDecimals } from '../quantities/decimals.ts';
import type { Limits } from '../statistics/conformity.ts';

export type EndPlayOption = {
  readonly thickness: number;
  readonly endPlay: number;
  readonly absoluteDeviation: number;
};

/** The space the washer has to share with the end play: what is in, plus what was read with it. */
export function spaceForWasher(washerIn: number, endPlay: number): number {
  return roundToDecimals(washerIn + endPlay, Math.max(decimalsOf(washerIn), decimalsOf(endPlay)));
}

/**
 * The washers that bring an end play inside its limits, nearest the target first, the thinner one on a tie. `space` is
 * the gap without a washer. One length unit. A washer that does not go in is never offered. Refuses limits upside down, a
 * target outside them, no washers, and washers none of which fits, naming the thickness that would.
 */
export function endPlayOptions(
  space: number,
  thicknesses: readonly number[],
  target: number,
  limits: Limits,
): Result<readonly EndPlayOption[]> {
  const { lower, upper } = limits;
  if (thicknesses.length === 0) return refuse('no-washers', 'There is no washer to choose from.');
  if (!(space > 0) || !thicknesses.every((thickness) => thickness > 0)) {
    return refuse('not-positive', 'The space and every washer must be more than zero.');
  }
  if (lower !== null && upper !== null && lower > upper) {
    return refuse('limits-upside-down', 'The lower limit is above the upper limit.');
  }
  if (target < (lower ?? target) || target > (upper ?? target)) {
    return refuse('target-outside', 'The target does not lie within the limits.');
  }
  // Decimals in, decimals out: an end play of 0.031 lies on a limit of 0.031.
  const decimals = Math.max(...[space, target, ...thicknesses].map(decimalsOf));
  const options = [...new Set(thicknesses)]
    .map((thickness) => {
      const endPlay = roundToDecimals(space - thickness, decimals);
      return { thickness, endPlay, absoluteDeviation: roundToDecimals(Math.abs(endPlay - target), decimals) };
    })
    .filter(({ endPlay }) => endPlay >= Math.max(0, lower ?? 0) && (upper === null || endPlay <= upper))
    .sort((a, b) => a.absoluteDeviation - b.absoluteDeviation || a.thickness - b.thickness);
  if (options.length === 0) {
    const wanted = roundToDecimals(space - target, decimals);
    return refuse('nothing-fits', `No washer at hand fits; one of ${wanted} would bring the end play to its target.`);
  }
  return accept(options);
}
