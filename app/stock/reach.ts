// What the plates at hand can do for a kind of pack: which clearances a swap brings into the band, which of the packs
// that came in it would have, and what to buy for the rest. All lengths are whole nanometres.
import { accept, type Result } from '../base/result.ts';
import type { LengthUnit } from '../quantities/units.ts';
import { clearancesInReach, coverPacks, type LooseHeight, type PackToCover } from '../selection/cover-gaps.ts';
import type { Limits as Bounds } from '../statistics/conformity.ts';

export type ReachQuestion = {
  /** Adjusters of the unit that the picture stands on; empty where nothing is known. */
  readonly fitted: readonly number[];
  readonly bounds: Bounds;
  readonly bin: readonly LooseHeight[];
  readonly packs: readonly PackToCover[];
  /** Heights the plates are made in; empty: whole classes around those known. */
  readonly catalogue: readonly number[];
  readonly lengthUnit: LengthUnit;
};

/** Which way a pack lies out of reach: past the thickest or the thinnest plate at hand, or between two of them. */
export type OutOfReach = 'thicker' | 'thinner' | 'between';

export type Reach = {
  readonly intervals: ReadonlyArray<{ readonly from_nm: number | null; readonly to_nm: number | null }>;
  readonly packs: ReadonlyArray<{
    readonly swaps: 0 | 1 | null;
    readonly asks_nm: number | null;
    readonly out: OutOfReach | null;
  }>;
  readonly covered: number;
  readonly buy: ReadonlyArray<{ readonly heights_nm: readonly number[]; readonly covers: number }>;
};

// Common practice, no source: steels are sorted by half a thou, or by a hundredth of a millimetre; and a plate 20 such
// steps past the thinnest or the thickest known is still looked for.
const class_nm: Readonly<Record<LengthUnit, number>> = { thou: 12_700, mm: 10_000 };
const stepsBeyond = 20;

/** One swap at most. Exact: see `coverPacks` and `clearancesInReach`, and what they refuse. */
export function reachOf(question: ReachQuestion): Result<Reach> {
  const { fitted, bounds, bin, packs } = question;
  const intervals =
    fitted.length === 0 ? accept([]) : clearancesInReach({ fitted, bin, lower: bounds.lower, upper: bounds.upper });
  if (!intervals.ok) return intervals;
  const cover = coverPacks({ packs, bin, forSale: forSale(question) });
  if (!cover.ok) return cover;
  return accept({
    intervals: intervals.value.map(({ from, to }) => ({ from_nm: from, to_nm: to })),
    packs: packs.map((pack, index) => {
      const swaps = cover.value.packs[index]?.swaps ?? null;
      if (swaps === 0 || swaps === 1) return { swaps, asks_nm: null, out: null };
      return { swaps: null, ...askOf(pack, bin) };
    }),
    covered: cover.value.covered,
    buy: cover.value.buy.map(({ heights, packs: helped }) => ({ heights_nm: heights, covers: helped.length })),
  });
}

/** The catalogue, or every whole class from below the thinnest to above the thickest height known. */
function forSale({ catalogue, bin, packs, fitted, lengthUnit }: ReachQuestion): number[] {
  if (catalogue.length > 0) return [...catalogue];
  const known = [...bin.map((each) => each.height), ...packs.flatMap((pack) => pack.fitted), ...fitted];
  if (known.length === 0) return [];
  const step = class_nm[lengthUnit];
  const first = Math.max(1, Math.ceil(Math.min(...known) / step) - stepsBeyond);
  const last = Math.floor(Math.max(...known) / step) + stepsBeyond;
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => (first + index) * step);
}

/**
 * The height that would bring a pack to the middle of its band (or to its one limit): in place of the thinnest plate
 * where it is loose, of the thickest where it is tight, so that the least is asked for.
 */
function askOf({ fitted, clearance, lower, upper }: PackToCover, bin: readonly LooseHeight[]) {
  const middle = lower === null || upper === null ? (lower ?? upper) : Math.round((lower + upper) / 2);
  if (fitted.length === 0 || middle === null) return { asks_nm: null, out: null };
  const isLoose = upper !== null && clearance > upper;
  const opened = clearance + (isLoose ? Math.min(...fitted) : Math.max(...fitted));
  const heights = bin.filter((each) => each.count > 0).map((each) => each.height);
  const isPast = isLoose
    ? heights.every((height) => height < opened - (upper ?? 0))
    : heights.every((height) => height > opened - (lower ?? 0));
  const out: OutOfReach = isPast ? (isLoose ? 'thicker' : 'thinner') : 'between';
  return { asks_nm: opened - middle, out };
}
