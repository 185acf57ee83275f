// When nothing at hand brings a pack into its band: the one height that would, and how many of it.
import { type AddedPiece, idsOf, type PackSearch, type Removal } from './pack-search.ts';
import { type Draw, firstSetsMaking, sumsBetween } from './reachable-sums.ts';
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
 * possible; then as near the target as possible; then nearest to the middle of the heights known. Only heights for
 * sale count, or where any height could be had, those between the thinnest and the thickest known. Exact: every sum
 * of loose pieces is tried. null where no single height does.
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
  return plan.fromMiddle < best.fromMiddle;
}

function* plansBuying(
  search: PackSearch,
  predict: SwapQuestion['predict'],
  removal: Removal,
  pieces: number,
  target: number,
  limits: Limits,
): Generator<Plan> {
  const lower = limits.lower ?? Number.NEGATIVE_INFINITY;
  const upper = limits.upper ?? Number.POSITIVE_INFINITY;
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
      for (const sum of sumsBetween(
        search.reachable,
        draw.index,
        spaceLeft - upper - pieces * thickest - sameClearance,
        spaceLeft - lower - pieces * thinnest + sameClearance,
      )) {
        const room = spaceLeft - sum;
        const least = Math.max(thinnest, Math.ceil((room - upper) / pieces - sameClearance));
        const most = Math.min(thickest, Math.floor((room - lower) / pieces + sameClearance));
        const wish = Math.round((room - target) / pieces);
        for (const height of forSale ?? [Math.min(most, Math.max(least, wish))]) {
          if (height < least || height > most) continue;
          const clearance = spaceLeft - sum - pieces * height;
          const deviation = Math.abs(clearance - target);
          const fromMiddle = Math.abs(height - middle);
          yield { removal, draw, sum, group, height, pieces, clearance, deviation, fromMiddle };
        }
      }
    }
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
