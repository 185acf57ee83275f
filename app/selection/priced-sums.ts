// The cheapest way to make every sum when plates have prices, and what a pack would then pay.
import { costOf, type Goal } from './joint-request.ts';
import type { Lot } from './reachable-sums.ts';

/** Prices and priced costs count in parts of a unit, so that everything stays whole and a bound is rounded up safely. */
export const partsPerUnit = 256;

export type PricedSums = {
  readonly lots: readonly Lot[];
  readonly prices: readonly number[];
  readonly step: number;
  readonly thinnest: number;
  readonly width: number;
  /** cheapest[(lots * rows + plates) * width + at]: with the first so many lots only; infinite where it cannot be made. */
  readonly cheapest: Float64Array;
  readonly rows: number;
};

const largestTable = 2 ** 23;

/** Whether the table is small enough to be worth it: 8 million entries. */
export function isPriceable(lots: readonly Lot[], mostPlates: number, step: number): boolean {
  return (lots.length + 1) * (mostPlates + 1) * widthOf(lots, mostPlates, step) <= largestTable;
}

function widthOf(lots: readonly Lot[], mostPlates: number, step: number): number {
  const heights = lots.map(({ height }) => height);
  return (mostPlates * (Math.max(...heights) - Math.min(...heights))) / step + 1;
}

/** `step` divides every difference of heights. */
export function pricedSums(
  lots: readonly Lot[],
  prices: readonly number[],
  mostPlates: number,
  step: number,
): PricedSums {
  const rows = mostPlates + 1;
  const width = widthOf(lots, mostPlates, step);
  const layer = rows * width;
  const cheapest = new Float64Array((lots.length + 1) * layer).fill(Number.POSITIVE_INFINITY, 0, layer);
  cheapest[0] = 0;
  const thinnest = Math.min(...lots.map(({ height }) => height));
  let widest = 0;
  for (const [lot, { height, count }] of lots.entries()) {
    const old = lot * layer;
    const here = old + layer;
    cheapest.copyWithin(here, old, here);
    const shift = (height - thinnest) / step;
    widest = Math.max(widest, shift);
    for (let plates = 1; plates <= mostPlates; plates++) {
      for (let pieces = 1; pieces <= Math.min(count, plates); pieces++) {
        const from = old + (plates - pieces) * width;
        const to = here + plates * width + pieces * shift;
        const price = pieces * prices[lot]!;
        const end = (plates - pieces) * widest;
        for (let at = 0; at <= end; at++) {
          const paid = cheapest[from + at]! + price;
          if (paid < cheapest[to + at]!) cheapest[to + at] = paid;
        }
      }
    }
  }
  return { lots, prices, step, thinnest, width, cheapest, rows };
}

/** What making `sum` of so many plates costs with the first `lots` lots. */
export function priceOf(priced: PricedSums, lots: number, plates: number, sum: number): number {
  const at = (sum - plates * priced.thinnest) / priced.step;
  if (!(at >= 0 && at < priced.width)) return Number.POSITIVE_INFINITY;
  return priced.cheapest[(lots * priced.rows + plates) * priced.width + at]!;
}

/**
 * The cheapest end for a pack that has taken a sum already and takes so many more plates from the first `lots` lots:
 * its cost in parts of a unit, with the price of those plates. Ends that would cost more than `limit` are not looked
 * at; the answer is then the cost of the first of them, which is still a bound.
 */
export function cheapestEnd(
  priced: PricedSums,
  goal: Goal,
  lots: number,
  plates: number,
  taken: number,
  limit: number,
): { readonly cost: number; readonly end: number } {
  const { step, width, cheapest } = priced;
  const floor = taken + plates * priced.thinnest;
  const row = (lots * priced.rows + plates) * width;
  const least = Math.max(goal.least, floor);
  const most = Math.min(goal.most, floor + step * (width - 1));
  let below = floor + step * Math.floor((Math.min(goal.aimHigh, most) - floor) / step);
  let above = below + step;
  let best = Number.POSITIVE_INFINITY;
  let bestEnd = below;
  for (;;) {
    const costBelow = below < least ? Number.POSITIVE_INFINITY : costOf(goal, below);
    const costAbove = above > most ? Number.POSITIVE_INFINITY : costOf(goal, above);
    const end = costBelow <= costAbove ? below : above;
    const cost = partsPerUnit * Math.min(costBelow, costAbove);
    if (cost >= best || cost === Number.POSITIVE_INFINITY) return { cost: best, end: bestEnd };
    if (cost > limit) return { cost, end };
    const at = (end - floor) / step;
    const paid = end >= least ? cost + cheapest[row + at]! : Number.POSITIVE_INFINITY;
    if (paid < best) {
      best = paid;
      bestEnd = end;
    }
    if (end === below) below -= step;
    else above += step;
  }
}
