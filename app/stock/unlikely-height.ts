// Whether a height is so far from the others of its outline that it was probably mistyped or is another pack's plate.
import { formatLength } from '../quantities/format-amount.ts';
import type { LengthWords } from './plate-heights.ts';

export type KnownHeight = { readonly height_nm: number; readonly count: number };

// Common practice, no source: all four figures.
const enoughForARange = 5;
const widenedBy = 0.5;
const leastWidening = 0.05;
const farFromMedian = 0.25;
const mostTaper = 0.05;

/**
 * What is odd about a height, in one sentence that asks; null where nothing is. `known` are the heights of the same
 * outline and kind, those of the spec sheets among them.
 *
 * Odd is: beyond a quarter of the median of the known heights; once five are known also beyond their range widened at
 * either end by half of it, or by a twentieth of the median where that is more; and points of one plate further apart
 * than a twentieth of its height. A height between the thinnest and the thickest known is never odd by itself.
 */
export function oddHeight(
  measured: { readonly height_nm: number; readonly points_nm: readonly number[] },
  known: readonly KnownHeight[],
  words: LengthWords,
): string | null {
  const shown = (length_nm: number) => formatLength(length_nm, words.lengthUnit, undefined, words.decimalMark);
  const { height_nm, points_nm } = measured;
  const apart_nm = Math.max(0, ...points_nm) - Math.min(...points_nm, Number.MAX_SAFE_INTEGER);
  if (apart_nm > mostTaper * height_nm) {
    return `These points lie ${shown(apart_nm)} ${words.lengthUnit} apart on one plate: measure again, or say that it is so.`;
  }
  const median_nm = medianOf(known);
  if (median_nm === null) return null;
  const heights = known.map((each) => each.height_nm);
  const [thinnest, thickest] = [Math.min(...heights), Math.max(...heights)];
  if (height_nm >= thinnest && height_nm <= thickest) return null;
  const isFar = Math.abs(height_nm - median_nm) > farFromMedian * median_nm;
  const widening = Math.max(widenedBy * (thickest - thinnest), leastWidening * median_nm);
  const isOutside =
    countOf(known) >= enoughForARange && (height_nm < thinnest - widening || height_nm > thickest + widening);
  if (!isFar && !isOutside) return null;
  const others = thinnest === thickest ? shown(thinnest) : `${shown(thinnest)} to ${shown(thickest)}`;
  return `${shown(height_nm)} ${words.lengthUnit} is far from the others, ${others}: measure again, or say that it is so.`;
}

function countOf(known: readonly KnownHeight[]): number {
  return known.reduce((sum, each) => sum + each.count, 0);
}

function medianOf(known: readonly KnownHeight[]): number | null {
  const half = (countOf(known) + 1) / 2;
  let passed = 0;
  for (const { height_nm, count } of known.toSorted((a, b) => a.height_nm - b.height_nm)) {
    passed += count;
    if (passed >= half) return height_nm;
  }
  return null;
}
