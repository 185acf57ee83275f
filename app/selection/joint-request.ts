// What is asked of several packs that share the same plates, and the same question as goals over sums.
import { accept, type Result, refuse } from '../base/result.ts';
import type { Lot } from './reachable-sums.ts';
import { checkPack, checkStock, lotsInStock } from './select-plates.ts';

/** Whole numbers of one unit. */
export type PackRequest = {
  readonly space: number;
  readonly plates: number;
  readonly target: number;
  readonly lower: number;
  readonly upper: number;
};

export type JointRequest = {
  readonly thicknesses: readonly number[];
  /** How many there are of each thickness, for all packs together; one of which there is none could be bought. */
  readonly stock: readonly number[];
  /** Of one unit or of several jobs: the plates do not care whose unit a pack is in. */
  readonly packs: readonly PackRequest[];
  /** The sum of all |clearance − target|; or first the largest of them, then the sum. */
  readonly objective: 'sum' | 'largest';
  /** How many steps of the search may be taken before it stops with the best so far; 200,000 where nothing is said. */
  readonly nodeBudget?: number;
};

/**
 * What one pack wants of the sum of its plates: from `aimLow` to `aimHigh` it costs nothing, outside it costs what it is
 * off; below `least` and above `most` it is not allowed.
 */
export type Goal = {
  readonly plates: number;
  readonly aimLow: number;
  readonly aimHigh: number;
  readonly least: number;
  readonly most: number;
};

export type JointProblem = {
  /** Thinnest first. */
  readonly lots: readonly Lot[];
  readonly goals: readonly Goal[];
};

/** How many plates of every lot each pack gets. */
export type Shares = readonly (readonly number[])[];

const mostPacks = 40;

export function asProblem({ thicknesses, stock, packs, nodeBudget }: JointRequest): Result<JointProblem> {
  if (packs.length === 0 || packs.length > mostPacks) {
    return refuse('bad-packs', `The number of packs must be from 1 to ${mostPacks}.`);
  }
  if (nodeBudget !== undefined && !(Number.isSafeInteger(nodeBudget) && nodeBudget >= 0)) {
    return refuse('bad-budget', 'The node budget must be a whole number, zero or more.');
  }
  const refusal = checkStock(thicknesses, stock) ?? packs.map(checkPack).find((refused) => refused !== null);
  if (refusal) return refusal;
  return accept(problemOf({ thicknesses, stock, packs }));
}

/** The goals of a request that was checked. */
export function problemOf({
  thicknesses,
  stock,
  packs,
}: Pick<JointRequest, 'thicknesses' | 'stock' | 'packs'>): JointProblem {
  const goals = packs.map(({ space, plates, target, lower, upper }) => {
    const aim = space - target;
    return { plates, aimLow: aim, aimHigh: aim, least: space - upper, most: space - lower };
  });
  return { lots: lotsInStock(thicknesses, stock), goals };
}

export function costOf({ aimLow, aimHigh }: Goal, sum: number): number {
  return Math.max(0, aimLow - sum, sum - aimHigh);
}

export function sumOfShare(lots: readonly Lot[], share: readonly number[]): number {
  return share.reduce((sum, pieces, lot) => sum + pieces * lots[lot]!.height, 0);
}

export function valueOfShares({ lots, goals }: JointProblem, shares: Shares): number {
  return goals.reduce((sum, goal, pack) => sum + costOf(goal, sumOfShare(lots, shares[pack]!)), 0);
}
