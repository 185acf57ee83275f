// When nothing at hand brings a pack into its band: the one height that would, and how many of it.
import { type AddedPiece, idsOf, type PackSearch, type Removal } from './pack-search.ts';
import { type Draw, firstSetsMaking, sumAtOrAbove, sumAtOrBelow, sumsBetween } from './reachable-sums.ts';
import { type SwapQuestion, sameClearance } from './swap-question.ts';

export type HeightToBuy = {
  readonly group: string;
  readonly height: number;
  readonly pieces: number;
  /** With it: all changes of the plan, the pieces that leave, and the loose pieces that come in beside it. */
  readonly changes: number;
  readonly remove: readonly string[];
  readonly add: readonly AddedPiece[];
  readonly clearance: number;
};

type Limits = { readonly lower: number | null; readonly upper: number | null };
type Plan = {
  readonly removal: Removal;
  readonly draw: Draw;
  readonly sum: number;
  readonly group: number;
  readonly height: number;
  readonly pieces: number;
  readonly clearance: number;
  readonly deviation: number;
  readonly fromMiddle: number;
};

/**
 * The fewest pieces of one height that, bought, bring the expected clearance into the limits; with as few changes as
 * possible; then as near the target as possible; then nearest to the middle between the thinnest and the thickest
 * height; then the thinner; then the looser clearance. Only heights for sale count, or where any height could be had,
 * those between the thinnest and the thickest known. Exact: every sum of loose pieces is weighed. null where no single
 * height does.
 */
export function heightToBuy(
  search: PackSearch,
  predict: SwapQuestion['predict'],
  target: number,
  limits: Limits,
): HeightToBuy | null {
  const mostChanges = search.removals.at(-1)!.changes;
  for (let pieces = 1; pieces <= mostChanges; pieces++) {
    for (let changes = pieces; changes <= mostChanges; changes++) {
      let best: Plan | null = null;
      for (const removal of search.removals) {
        if (removal.changes !== changes) continue;
        for (const plan of plansBuying(search, predict, removal, pieces, target, limits)) {
          if (best === null || isBetter(plan, best)) best = plan;
        }
      }
      if (best !== null) return purchase(search, best);
    }
  }
  return null;
}

function isBetter(plan: Plan, best: Plan): boolean {
  if (Math.abs(plan.deviation - best.deviation) > sameClearance) return plan.deviation < best.deviation;
  if (plan.fromMiddle !== best.fromMiddle) return plan.fromMiddle < best.fromMiddle;
  if (plan.height !== best.height) return plan.height < best.height;
  return plan.clearance > best.clearance + sameClearance;
}

function* plansBuying(
  search: PackSearch,
  predict: SwapQuestion['predict'],
  removal: Removal,
  pieces: number,
  target: number,
  limits: Limits,
): Generator<Plan> {
  const lower = (limits.lower ?? Number.NEGATIVE_INFINITY) - sameClearance;
  const upper = (limits.upper ?? Number.POSITIVE_INFINITY) + sameClearance;
  for (const [group, { fitted, readBefore = [], loose, forSale }] of search.groups.entries()) {
    const known = [...fitted, ...readBefore, ...loose].map(({ height }) => height);
    const heights = forSale ?? known;
    if (removal.perGroup[group]! < pieces || heights.length === 0) continue;
    const thinnest = Math.min(...heights);
    const thickest = Math.max(...heights);
    const middle = (thinnest + thickest) / 2;
    const fromHand = removal.perGroup.with(group, removal.perGroup[group]! - pieces);
    for (const draw of search.drawsOf(fromHand)) {
      // Once bought it is measured like the best known of the loose ones.
      const { spaceLeft } = predict(removal.inPack, draw.perClass.with(0, draw.perClass[0]! + pieces));
      const room = { least: spaceLeft - upper, most: spaceLeft - lower, wish: spaceLeft - target };
      const bought = forSale
        ? besideSold(search, draw, room, pieces, forSale)
        : besideAny(search, draw, room, pieces, thinnest, thickest);
      for (const { sum, height } of bought) {
        const clearance = spaceLeft - (sum + pieces * height);
        const deviation = Math.abs(clearance - target);
        const fromMiddle = Math.abs(height - middle);
        yield { removal, draw, sum, group, height, pieces, clearance, deviation, fromMiddle };
      }
    }
  }
}

/** What all pieces coming in may add up to, and what is wished for. */
type Room = { readonly least: number; readonly most: number; readonly wish: number };
type Bought = { readonly sum: number; readonly height: number };

/** For every height for sale the sums of loose pieces beside it that come nearest to the wish from either side. */
function* besideSold(
  { reachable }: PackSearch,
  draw: Draw,
  { least, most, wish }: Room,
  pieces: number,
  forSale: readonly number[],
): Generator<Bought> {
  for (const height of forSale) {
    const wanted = Math.min(most, Math.max(least, wish)) - pieces * height;
    const below = sumAtOrBelow(reachable, draw.index, wanted);
    const above = sumAtOrAbove(reachable, draw.index, wanted);
    if (below !== null && below + pieces * height >= least) yield { sum: below, height };
    if (above !== null && above + pieces * height <= most) yield { sum: above, height };
  }
}

/** For every sum of loose pieces the height beside it that comes nearest to the wish. */
function* besideAny(
  { reachable }: PackSearch,
  draw: Draw,
  { least, most, wish }: Room,
  pieces: number,
  thinnest: number,
  thickest: number,
): Generator<Bought> {
  for (const sum of sumsBetween(reachable, draw.index, least - pieces * thickest, most - pieces * thinnest)) {
    const thin = Math.max(thinnest, Math.ceil((least - sum) / pieces));
    const thick = Math.min(thickest, Math.floor((most - sum) / pieces));
    if (thin <= thick) yield { sum, height: Math.min(thick, Math.max(thin, Math.round((wish - sum) / pieces))) };
  }
}

function purchase(search: PackSearch, { removal, draw, sum, group, height, pieces, clearance }: Plan): HeightToBuy {
  const [set] = firstSetsMaking(search.reachable, draw.index, sum, 1);
  return {
    group: search.groups[group]!.name,
    height,
    pieces,
    changes: removal.changes,
    remove: idsOf(removal.removed),
    add: search.comingIn(removal, set!),
    clearance,
  };
}
