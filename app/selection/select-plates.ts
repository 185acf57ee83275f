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
import { isCount, isHeight, isLength } from './swap-question.ts';

/** Whole numbers of one unit. */
export type PlateRequest = {
  /** What is there for plates and clearance together. */
  readonly space: number;
  /** Exactly so many plates. */
  readonly plates: number;
  readonly thicknesses: readonly number[];
  /** How many there are of each thickness; one of which there is none could still be bought. */
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
      /** null where no one thickness, bought in whatever number, brings it in. */
      readonly buy: PlatesToBuy | null;
    };

export type PlatesToBuy = {
  readonly thickness: number;
  readonly pieces: number;
  /** Among the thicknesses given. If not, none of those would do, but this one between them would. */
  readonly isListed: boolean;
  /** The plates from stock beside those bought, and the clearance with all of them. */
  readonly counts: readonly number[];
  readonly clearance: number;
};

/**
 * Exactly `plates` plates within stock with lower ≤ clearance ≤ upper that bring the clearance nearest to the target.
 * Exact, by the table of all sums. Equally near: the looser clearance; then, sets compared thickest plate first, the
 * one with the thinner plate. Where nothing fits: the fewest plates of one listed thickness to buy; then the nearest to
 * the target; then the thickness nearest to the middle of those listed; then the thinner; then the looser clearance.
 * Refuses numbers that are not whole or beyond 1e12, lists of different length, limits upside down, a target outside
 * the limits.
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
  const wantedSum = space - target;
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

/** One of the listed thicknesses if any of them helps, else one that lies between them. */
function whatToBuy(request: PlateRequest, lots: readonly Lot[], reachable: ReachableSums): PlatesToBuy | null {
  const { space, plates, thicknesses, target, lower, upper } = request;
  const listed = [...new Set(thicknesses)].map((height) => ({ id: String(height), height }));
  const nothingIn = { changes: plates, removed: [], returned: [], inPack: 0, perGroup: [plates] };
  const buyFrom = (forSale: { forSale?: readonly number[] }) => {
    const search: PackSearch = {
      groups: [{ name: '', fitted: [], readBefore: listed, loose: [], ...forSale }],
      removals: [nothingIn],
      reachable,
      drawsOf: ([pieces]) => reachable.draws.slice(pieces, pieces! + 1),
      comingIn: (_, set) =>
        set.flatMap(({ lot, pieces }) => {
          const { height } = lots[lot]!;
          return Array.from({ length: pieces }, () => ({ id: String(height), group: '', height }));
        }),
    };
    return heightToBuy(search, () => ({ spaceLeft: space, variance: 0 }), target, { lower, upper });
  };
  const bought = buyFrom({ forSale: listed.map(({ height }) => height) }) ?? buyFrom({});
  if (bought === null) return null;
  const { height: thickness, pieces, add, clearance } = bought;
  const beside = new Map<number, number>();
  for (const { height } of add) beside.set(height, (beside.get(height) ?? 0) + 1);
  return {
    thickness,
    pieces,
    isListed: thicknesses.includes(thickness),
    counts: spreadOver(request, beside),
    clearance,
  };
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
    return refuse('bad-height', 'Every thickness must be a whole number, above zero and at most 1,000,000,000,000.');
  }
  if (!stock.every(isCount)) {
    return refuse('bad-count', 'Every count of stock must be a whole number from 0 to 1,000,000,000.');
  }
  return null;
}

const mostPlates = 40;

/** Why a pack cannot be asked for, or null. */
export function checkPack({ space, plates, target, lower, upper }: PackLimits) {
  if (!Number.isInteger(plates) || plates < 1 || plates > mostPlates) {
    return refuse('bad-plates', `The number of plates must be a whole number from 1 to ${mostPlates}.`);
  }
  if (![space, target, lower, upper].every(isLength)) {
    return refuse(
      'bad-number',
      'The space, the target and the limits must be whole numbers, none beyond 1,000,000,000,000.',
    );
  }
  if (lower > upper) return refuse('limits-upside-down', 'The lower limit is above the upper limit.');
  if (target < lower || target > upper) return refuse('target-outside', 'The target lies outside its limits.');
  return null;
}
