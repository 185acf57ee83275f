// Choose the plates of one pack from scratch: so many plates from counts per thickness, nearest to the target.
import { accept, type Result, refuse } from '../base/result.ts';
import { heightToBuy } from './height-to-buy.ts';
import type { PackSearch } from './pack-search.ts';
import {
  firstSetsMaking,
  type Lot,
  type ReachableSums,
  reachableSums,
  sumAtOrAbove,
  sumAtOrBelow,
  thinnestFirst,
} from './reachable-sums.ts';
import { isHeight } from './swap-question.ts';

/** Whole numbers of one unit. */
export type PlateRequest = {
  /** What is there for plates and clearance together. */
  readonly space: number;
  /** Exactly so many plates. */
  readonly plates: number;
  readonly thicknesses: readonly number[];
  /** How many there are of each thickness. */
  readonly stock: readonly number[];
  readonly target: number;
  readonly lower: number;
  readonly upper: number;
  /** How many optimal sets to list; 1 where nothing is said. */
  readonly setsWanted?: number;
};

export type PlateSelection =
  | {
      readonly status: 'Optimal';
      readonly clearance: number;
      /** Plates of each thickness, in the order the thicknesses were given. */
      readonly counts: readonly number[];
      readonly absoluteDeviation: number;
      /** The counts of every optimal set, the chosen one first, up to the number asked for. */
      readonly optimalSets: readonly (readonly number[])[];
      readonly isListComplete: boolean;
    }
  | {
      readonly status: 'Infeasible';
      /** `stock`: there are not enough plates at all. `between`: plates reach past both limits and none falls inside. */
      readonly blockedBy: 'stock' | 'lower limit' | 'upper limit' | 'between';
      /** The clearance nearest to the limits and its plates; null where there are not enough plates. */
      readonly nearest: { readonly clearance: number; readonly counts: readonly number[] } | null;
      /** The fewest plates of one thickness that, bought, bring it in; null where no thickness in the usual range does. */
      readonly buy: { readonly height: number; readonly pieces: number } | null;
    };

/**
 * Exactly `plates` plates within stock with lower ≤ clearance ≤ upper that bring the clearance nearest to the target.
 * Exact, by the table of all sums. Equally near: the looser clearance; then, sets compared thickest plate first, the
 * one with the thinner plate. Refuses numbers that are not whole, lists of different length, limits upside down.
 *
 *     selectPlates({ space: 100, plates: 2, thicknesses: [30, 40], stock: [1, 2], target: 25, lower: 20, upper: 30 });
 *     // { status: 'Optimal', clearance: 30, counts: [1, 1], absoluteDeviation: 5, … }
 */
export function selectPlates(request: PlateRequest): Result<PlateSelection> {
  const { space, plates, thicknesses, stock, target, lower, upper } = request;
  const refusal = checkStock(thicknesses, stock) ?? checkPack({ space, plates, target, lower, upper });
  if (refusal) return refusal;
  const lots = lotsInStock(thicknesses, stock);
  const reachable = reachableSums(lots, [plates], 1);
  if (reachable === null) {
    return refuse('too-fine', 'These thicknesses are too finely divided to be searched: round them to a coarser unit.');
  }
  if (lots.reduce((sum, { count }) => sum + count, 0) < plates) {
    return accept({
      status: 'Infeasible',
      blockedBy: 'stock',
      nearest: null,
      buy: whatToBuy(request, lots, reachable),
    });
  }
  const countsOf = (sum: number, wanted: number) =>
    firstSetsMaking(reachable, plates, sum, wanted).map((set) =>
      spreadOver(request, new Map(set.map(({ lot, pieces }) => [reachable.lots[lot]!.height, pieces]))),
    );
  // Within the limits the nearest to a target that lies outside them is the nearest to the limit beside it.
  const wantedSum = space - Math.min(upper, Math.max(lower, target));
  const around = [sumAtOrBelow(reachable, plates, wantedSum), sumAtOrAbove(reachable, plates, wantedSum)];
  const inside = around.filter((sum) => sum !== null && space - sum >= lower && space - sum <= upper) as number[];
  if (inside.length > 0) {
    const deviation = Math.min(...inside.map((sum) => Math.abs(space - sum - target)));
    const best = [...new Set(inside)].filter((sum) => Math.abs(space - sum - target) === deviation);
    const wanted = Math.max(1, request.setsWanted ?? 1);
    const sets = best.flatMap((sum) => countsOf(sum, wanted + 1)).slice(0, wanted + 1);
    return accept({
      status: 'Optimal',
      clearance: space - best[0]!,
      counts: sets[0]!,
      absoluteDeviation: deviation,
      optimalSets: sets.slice(0, wanted),
      isListComplete: sets.length <= wanted,
    });
  }
  const loose = sumAtOrBelow(reachable, plates, space - lower);
  const tight = sumAtOrAbove(reachable, plates, space - upper);
  const isLooseNearer = tight === null || (loose !== null && space - loose - upper <= lower - (space - tight));
  const nearest = isLooseNearer ? loose! : tight;
  return accept({
    status: 'Infeasible',
    blockedBy: loose !== null && tight !== null ? 'between' : loose === null ? 'lower limit' : 'upper limit',
    nearest: { clearance: space - nearest, counts: countsOf(nearest, 1)[0]! },
    buy: whatToBuy(request, lots, reachable),
  });
}

function whatToBuy(
  { space, plates, target, lower, upper }: PlateRequest,
  lots: readonly Lot[],
  reachable: ReachableSums,
) {
  const loose = lots.map((lot) => ({ ...lot, id: String(lot.height) }));
  const empty = { changes: plates, removed: [], returned: [], inPack: 0, perGroup: [plates] };
  const search: PackSearch = {
    groups: [{ name: '', fitted: [], loose }],
    removals: [empty],
    reachable,
    drawsOf: ([pieces]) => reachable.draws.slice(pieces, pieces! + 1),
    comingIn: () => [],
  };
  const bought = heightToBuy(search, () => ({ spaceLeft: space, variance: 0 }), target, { lower, upper });
  return bought && { height: bought.height, pieces: bought.pieces };
}

/** Counts in the order the thicknesses were given; one listed twice is used where it stands first, then further on. */
function spreadOver({ thicknesses, stock }: PlateRequest, pieces: Map<number, number>): number[] {
  return thicknesses.map((height, place) => {
    const here = Math.min(stock[place]!, pieces.get(height) ?? 0);
    pieces.set(height, (pieces.get(height) ?? 0) - here);
    return here;
  });
}

/** The thicknesses of which there are any, each once, thinnest first. */
export function lotsInStock(thicknesses: readonly number[], stock: readonly number[]): Lot[] {
  const counts = new Map<number, number>();
  for (const [place, height] of thicknesses.entries()) counts.set(height, (counts.get(height) ?? 0) + stock[place]!);
  const lots = [...counts].map(([height, count]) => ({ group: 0, uncertaintyClass: 0, height, count }));
  return thinnestFirst(lots.filter(({ count }) => count > 0));
}

type PackLimits = Pick<PlateRequest, 'space' | 'plates' | 'target' | 'lower' | 'upper'>;

/** Why these thicknesses and counts cannot be used, or null. */
export function checkStock(thicknesses: readonly number[], stock: readonly number[]) {
  if (thicknesses.length !== stock.length) {
    return refuse('length-mismatch', 'There must be one count of stock for every thickness.');
  }
  if (!thicknesses.every(isHeight)) {
    return refuse('bad-height', 'Every thickness must be a whole number above zero.');
  }
  if (!stock.every((count) => Number.isSafeInteger(count) && count >= 0)) {
    return refuse('bad-count', 'Every count of stock must be a whole number, zero or more.');
  }
  return null;
}

const mostPlates = 40;

/** Why a pack cannot be asked for, or null. */
export function checkPack({ space, plates, target, lower, upper }: PackLimits) {
  if (!Number.isInteger(plates) || plates < 1 || plates > mostPlates) {
    return refuse('bad-plates', `The number of plates must be a whole number from 1 to ${mostPlates}.`);
  }
  if (![space, target, lower, upper].every(Number.isSafeInteger)) {
    return refuse('bad-number', 'The space, the target and the limits must be whole numbers.');
  }
  if (lower > upper) return refuse('limits-upside-down', 'The lower limit is above the upper limit.');
  return null;
}
