// Prices on scarce heights: what every sharing must cost at least, by letting each pack buy what suits it best.
import type { JointProblem } from './joint-request.ts';
import { cheapestEnd, type PricedSums, partsPerUnit, pricedSums, priceOf } from './priced-sums.ts';

const mostRounds = 80;
/** Large tables get fewer rounds: so many entries in all. */
const entriesInAll = 2e7;
/** How much of the last direction is kept, and how the steps shrink where a round brought nothing; found by trial. */
const momentum = 0.8;
const shrink = 0.97;
/** How far above the bound to aim while no sharing is known, in units. */
const reach = 16;

export type PriceBound = { readonly bound: number; readonly priced: PricedSums };

/**
 * A lower bound on the sum of costs and the prices that show it. Whatever whole prices of zero or more the heights
 * are given: packs that choose freely, each paying for its plates, cost together at most what any sharing costs plus
 * the price of the whole stock (Lagrangean relaxation, A. M. Geoffrion 1974). Prices start at nothing, at what makes
 * thick plates dear and at what makes thin ones dear, and are bettered by subgradient steps that aim at `known`, the
 * value of a sharing already found (Held, Wolfe and Crowder 1974).
 */
export function priceBound(problem: JointProblem, step: number, known: number): PriceBound {
  const { lots, goals } = problem;
  const mostPlates = Math.max(...goals.map((goal) => goal.plates));
  let best: { value: number; priced: PricedSums; excess: number[] } | null = null;
  const attempt = (prices: readonly number[]) => {
    const priced = pricedSums(lots, prices, mostPlates, step);
    const { value, used } = buyFreely(problem, priced);
    const excess = used.map((pieces, lot) => pieces - lots[lot]!.count);
    if (best === null || value > best.value) best = { value, priced, excess };
    return { value, excess };
  };
  const starts = startingPrices(problem).map((prices) => ({ prices, ...attempt(prices) }));
  let { prices, value, excess } = starts.reduce((a, b) => (b.value > a.value ? b : a));
  const rounds = Math.min(mostRounds, Math.ceil(entriesInAll / best!.priced.cheapest.length));
  let direction = lots.map(() => 0);
  let ease = 1;
  for (let round = 0; round < rounds; round++) {
    const top = best!.value;
    if (Math.ceil(top / partsPerUnit) >= known) break;
    direction = excess.map((each, lot) => {
      const push = each + momentum * direction[lot]!;
      return prices[lot] === 0 ? Math.max(0, push) : push;
    });
    const length = direction.reduce((sum, each) => sum + each * each, 0);
    if (length === 0) break;
    const aim = Number.isFinite(known) ? partsPerUnit * known : top + partsPerUnit * reach;
    const stride = (ease * (aim - value)) / length;
    prices = prices.map((price, lot) => Math.max(0, Math.round(price + stride * direction[lot]!)));
    ({ value, excess } = attempt(prices));
    if (value <= top) ease *= shrink;
  }
  return { bound: Math.ceil(best!.value / partsPerUnit), priced: best!.priced };
}

function startingPrices({ lots, goals }: JointProblem): number[][] {
  const wanted = goals.reduce((sum, goal) => sum + goal.plates, 0);
  const thinEnd = heightAt(lots, wanted);
  const thickEnd = heightAt(lots.toReversed(), wanted);
  return [
    lots.map(() => 0),
    lots.map(({ height }) => partsPerUnit * Math.max(0, height - thickEnd)),
    lots.map(({ height }) => partsPerUnit * Math.max(0, thinEnd - height)),
  ];
}

/** The height of the last plate wanted, going through the lots in this order. */
function heightAt(lots: JointProblem['lots'], wanted: number): number {
  let seen = 0;
  return lots.find(({ count }) => {
    seen += count;
    return seen >= wanted;
  })!.height;
}

/** What all packs pay together, less the price of the stock, and how many plates of each lot they would use. */
function buyFreely({ lots, goals }: JointProblem, priced: PricedSums): { value: number; used: number[] } {
  const used = lots.map(() => 0);
  let value = -lots.reduce((sum, { count }, lot) => sum + count * priced.prices[lot]!, 0);
  for (const goal of goals) {
    const { cost, end } = cheapestEnd(priced, goal, lots.length, goal.plates, 0, Number.POSITIVE_INFINITY);
    value += cost;
    let plates = goal.plates;
    let sum = end;
    for (let lot = lots.length - 1; plates > 0; lot--) {
      const paid = priceOf(priced, lot + 1, plates, sum);
      let pieces = 0;
      while (
        priceOf(priced, lot, plates - pieces, sum - pieces * lots[lot]!.height) + pieces * priced.prices[lot]! !==
        paid
      )
        pieces++;
      used[lot]! += pieces;
      plates -= pieces;
      sum -= pieces * lots[lot]!.height;
    }
  }
  return { value, used };
}
