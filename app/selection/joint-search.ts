// The exact search: plates are dealt out height by height, the dearest first, bounded by what prices show.
import type { Goal, JointProblem, Shares } from './joint-request.ts';
import { cheapestEnd, type PricedSums, partsPerUnit, pricedSums } from './priced-sums.ts';

export type SearchResult =
  | { readonly kind: 'found'; readonly value: number; readonly shares: Shares }
  /** Nothing below `stopAt` exists; the least there may be (infinite: nothing at all). */
  | { readonly kind: 'refuted'; readonly bound: number }
  | { readonly kind: 'exhausted'; readonly bound: number };

/**
 * The smallest sum of costs below `stopAt`, starting from a proven bound. The scarcest heights carry the highest prices
 * and are dealt out first: who gets them decides most, and what is left is bounded well. An allowance is tried: everything within it
 * is refuted, or the first success is optimal; a refusal raises the allowance to the least that was in sight. Refuted
 * states are remembered with what they were proven to need, and packs to which the same is left count as the same.
 * `budget.left` counts steps down and is shared between searches.
 */
export function searchByHeight(
  { lots: givenLots, goals }: JointProblem,
  givenPriced: PricedSums,
  provenBound: number,
  stopAt: number,
  budget: { left: number },
): SearchResult {
  const order = [...givenLots.keys()].toSorted((a, b) => givenPriced.prices[a]! - givenPriced.prices[b]! || a - b);
  const lots = order.map((lot) => givenLots[lot]!);
  const priced = pricedSums(
    lots,
    order.map((lot) => givenPriced.prices[lot]!),
    givenPriced.rows - 1,
    givenPriced.step,
  );
  const shares = goals.map(() => lots.map(() => 0));
  const shapes = shapesOf(goals);
  const priceOfStock = [0];
  for (const [lot, { count }] of lots.entries()) priceOfStock.push(priceOfStock[lot]! + count * priced.prices[lot]!);
  const inStock = [0];
  for (const [lot, { count }] of lots.entries()) inStock.push(inStock[lot]! + count);
  const known = new Map<string, number>();
  const plates = goals.map((goal) => goal.plates);
  const taken = goals.map(() => 0);
  const cost = goals.map(() => 0);
  let allowance = provenBound * partsPerUnit;

  const total = () => cost.reduce((sum, each) => sum + each, 0);

  /** Deals out the first `lots` lots; returns the value found if within the allowance, otherwise a bound above it. */
  const deal = (lotsLeft: number): number => {
    const wanted = plates.reduce((sum, each) => sum + each, 0);
    if (wanted === 0) return total();
    if (wanted > inStock[lotsLeft]!) return Number.POSITIVE_INFINITY;
    const key = `${lotsLeft} ${shapes
      .map((shape, pack) => `${shape}:${plates[pack]}:${goals[pack]!.aimLow - taken[pack]!}`)
      .sort()
      .join(' ')}`;
    const remembered = known.get(key);
    if (remembered !== undefined && remembered > allowance) return remembered;
    const found = share(lotsLeft - 1, 0, lots[lotsLeft - 1]!.count);
    if (found > allowance) known.set(key, found);
    return found;
  };

  /** Gives the packs from `pack` on their plates of one lot, of which `left` are still there. */
  const share = (lot: number, pack: number, left: number): number => {
    if (budget.left-- <= 0) return Number.NEGATIVE_INFINITY;
    if (pack === goals.length) return deal(lot);
    const goal = goals[pack]!;
    const { height } = lots[lot]!;
    const platesBefore = plates[pack]!;
    const takenBefore = taken[pack]!;
    const costBefore = cost[pack]!;
    const others = total() - costBefore - priceOfStock[lot]!;
    let least = Number.POSITIVE_INFINITY;
    for (let pieces = 0; pieces <= Math.min(left, platesBefore); pieces++) {
      const paid = others - (left - pieces) * priced.prices[lot]!;
      plates[pack] = platesBefore - pieces;
      taken[pack] = takenBefore + pieces * height;
      cost[pack] = cheapestEnd(priced, goal, lot, plates[pack]!, taken[pack]!, allowance - paid).cost;
      const bound = paid + cost[pack]!;
      if (bound > allowance) {
        least = Math.min(least, bound);
        continue;
      }
      shares[pack]![lot] = pieces;
      const found = share(lot, pack + 1, left - pieces);
      if (found <= allowance) return found;
      least = Math.min(least, found);
    }
    shares[pack]![lot] = 0;
    plates[pack] = platesBefore;
    taken[pack] = takenBefore;
    cost[pack] = costBefore;
    return least;
  };

  while (allowance < stopAt * partsPerUnit) {
    for (const [pack, goal] of goals.entries()) {
      plates[pack] = goal.plates;
      taken[pack] = 0;
      cost[pack] = cheapestEnd(priced, goal, lots.length, goal.plates, 0, Number.POSITIVE_INFINITY).cost;
    }
    const found = deal(lots.length);
    if (found === Number.NEGATIVE_INFINITY) return { kind: 'exhausted', bound: allowance / partsPerUnit };
    if (found <= allowance) {
      return {
        kind: 'found',
        value: found / partsPerUnit,
        shares: shares.map((share) => givenLots.map((_, lot) => share[order.indexOf(lot)]!)),
      };
    }
    allowance = Math.ceil(found / partsPerUnit) * partsPerUnit;
  }
  return { kind: 'refuted', bound: allowance / partsPerUnit };
}

/** Packs with the same limits around their aim may stand in for each other. */
function shapesOf(goals: readonly Goal[]): number[] {
  const texts = goals.map(
    ({ aimLow, aimHigh, least, most }) => `${aimHigh - aimLow} ${aimLow - least} ${most - aimLow}`,
  );
  return texts.map((text) => texts.indexOf(text));
}
