// What no sharing of the plates can beat: proven lower limits on the deviations, each cheap enough to try first.
import { costOf, type Goal } from './joint-request.ts';
import { type Lot, type ReachableSums, sumAtOrAbove, sumAtOrBelow } from './reachable-sums.ts';

/** The sum a pack would take if it had all plates to itself, or null where none is allowed. */
export function sumAlone(reachable: ReachableSums, { plates, aimLow, aimHigh, least, most }: Goal): number | null {
  const below = sumAtOrBelow(reachable, plates, Math.min(most, aimHigh));
  const above = sumAtOrAbove(reachable, plates, Math.max(least, aimLow));
  const goal = { plates, aimLow, aimHigh, least, most };
  const allowed = [below, above].filter((sum) => sum !== null && sum >= least && sum <= most) as number[];
  return allowed.reduce<number | null>(
    (best, sum) => (best === null || costOf(goal, sum) < costOf(goal, best) ? sum : best),
    null,
  );
}

/** The sums of the n thinnest and of the n thickest plates there are, by n. */
export type Extremes = { readonly thinnest: readonly number[]; readonly thickest: readonly number[] };

export function extremesOf(lots: readonly Lot[], mostPlates: number): Extremes {
  return { thinnest: firstPlates(lots, mostPlates), thickest: firstPlates(lots.toReversed(), mostPlates) };
}

function firstPlates(lots: readonly Lot[], most: number): number[] {
  const sums = [0];
  for (const { height, count } of lots) {
    for (let piece = 0; piece < count && sums.length <= most; piece++) sums.push(sums.at(-1)! + height);
  }
  return sums;
}

/** What a pack needs, and what it costs at least by itself. */
export type Need = Goal & { readonly costAlone: number };

/**
 * Plates shared among packs lie between the thinnest and the thickest there are: packs that want thick plates cannot
 * together have more than the thickest plates give, and so for thin ones. The worst group is a prefix or a suffix of
 * the packs in order of the mean height they want. Never below the sum of what each costs alone; infinite where the
 * limits of a group cannot be kept.
 */
export function extremesBound(needs: readonly Need[], { thinnest, thickest }: Extremes): number {
  const thinFirst = needs.toSorted((a, b) => a.aimLow * b.plates - b.aimLow * a.plates);
  const alone = needs.reduce((sum, { costAlone }) => sum + costAlone, 0);
  const tooThick = gains(thinFirst, (group) => ({
    beyondAim: thinnest[group.plates]! - group.aimHigh,
    beyondLimit: thinnest[group.plates]! - group.most,
  }));
  const tooThin = gains(thinFirst.toReversed(), (group) => ({
    beyondAim: group.aimLow - thickest[group.plates]!,
    beyondLimit: group.least - thickest[group.plates]!,
  }));
  return alone + Math.max(...tooThick.map((gain, packs) => gain + tooThin[needs.length - packs]!));
}

/** For every number of packs from the front: by how much a group among them must cost more than each pack alone. */
function gains(needs: readonly Need[], judge: (group: Goal) => { beyondAim: number; beyondLimit: number }): number[] {
  const best = [0];
  let alone = 0;
  let group: Goal = { plates: 0, aimLow: 0, aimHigh: 0, least: 0, most: 0 };
  for (const [place, need] of needs.entries()) {
    alone += need.costAlone;
    group = {
      plates: group.plates + need.plates,
      aimLow: group.aimLow + need.aimLow,
      aimHigh: group.aimHigh + need.aimHigh,
      least: group.least + need.least,
      most: group.most + need.most,
    };
    const { beyondAim, beyondLimit } = judge(group);
    best.push(beyondLimit > 0 ? Number.POSITIVE_INFINITY : Math.max(best[place]!, beyondAim - alone));
  }
  return best;
}
