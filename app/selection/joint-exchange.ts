// Betters a sharing by exchanging single plates between packs and with the bin, following a fixed sequence.
import { costOf, type Goal, type JointProblem, type Shares } from './joint-request.ts';

const proposals = 30_000;
/** Lying outside a limit weighs this much more than missing the target: first inside, then near. */
const outsideWeight = 1000;

/**
 * Starts from a sharing (or from dealing the plates out in order) and exchanges two plates at a time where that is no
 * worse than a limit which sinks steadily from the mean cost of a pack to nothing (threshold accepting, G. Dueck and
 * T. Scheuer 1990). Stops at `enough`. The sequence of proposals is fixed, so the result is the same on every run.
 * Returns the best sharing within the limits that was met, or null.
 */
export function exchangePlates({ lots, goals }: JointProblem, start: Shares | null, enough: number): Shares | null {
  // Places in packs first, pack after pack, then the plates left in the bin; each holds the number of a lot.
  const places: number[] = [];
  const owner: number[] = [];
  const left = lots.map(({ count }, lot) => count - (start?.reduce((sum, share) => sum + share[lot]!, 0) ?? 0));
  for (const [pack, { plates }] of goals.entries()) {
    const lotsOfPack = start?.[pack]?.flatMap((pieces, lot) => Array.from({ length: pieces }, () => lot));
    for (let place = 0; place < plates; place++) {
      const lot = lotsOfPack?.[place] ?? left.findIndex((count) => count > 0);
      if (!lotsOfPack) left[lot]!--;
      places.push(lot);
      owner.push(pack);
    }
  }
  const placesInPacks = places.length;
  for (const [lot, count] of left.entries()) {
    for (let piece = 0; piece < Math.min(count, placesInPacks); piece++) {
      places.push(lot);
      owner.push(-1);
    }
  }
  const sums = goals.map(() => 0);
  for (let place = 0; place < placesInPacks; place++) sums[owner[place]!]! += lots[places[place]!]!.height;
  const costs = goals.map((goal, pack) => weighed(goal, sums[pack]!));
  let value = costs.reduce((sum, cost) => sum + cost, 0);
  let bestValue = Number.POSITIVE_INFINITY;
  let best: number[] | null = null;
  const keepIfBest = () => {
    if (value >= bestValue || goals.some((goal, pack) => sums[pack]! < goal.least || sums[pack]! > goal.most)) return;
    bestValue = value;
    best = places.slice(0, placesInPacks);
  };
  keepIfBest();
  const firstLimit = Math.max(4, value / goals.length);
  const next = sequence();
  for (let proposal = 0; proposal < proposals && bestValue > enough; proposal++) {
    const a = next(placesInPacks);
    const b = next(places.length);
    const packA = owner[a]!;
    const packB = owner[b]!;
    const change = lots[places[b]!]!.height - lots[places[a]!]!.height;
    if (change === 0 || packA === packB) continue;
    const costA = weighed(goals[packA]!, sums[packA]! + change);
    const costB = packB < 0 ? 0 : weighed(goals[packB]!, sums[packB]! - change);
    const worse = costA - costs[packA]! + (packB < 0 ? 0 : costB - costs[packB]!);
    if (worse > firstLimit * (1 - proposal / proposals) ** 2) continue;
    [places[a], places[b]] = [places[b]!, places[a]!];
    sums[packA]! += change;
    costs[packA] = costA;
    if (packB >= 0) {
      sums[packB]! -= change;
      costs[packB] = costB;
    }
    value += worse;
    if (value < bestValue) keepIfBest();
  }
  if (best === null) return null;
  const shares = goals.map(() => lots.map(() => 0));
  for (const [place, lot] of (best as number[]).entries()) shares[owner[place]!]![lot]!++;
  return shares;
}

function weighed(goal: Goal, sum: number): number {
  return costOf(goal, sum) + outsideWeight * Math.max(0, goal.least - sum, sum - goal.most);
}

/** Whole numbers from 0 to below a bound, always the same ones. Source: G. Marsaglia, Xorshift RNGs, 2003. */
function sequence(): (below: number) => number {
  let state = 2_463_534_242;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % below;
  };
}
