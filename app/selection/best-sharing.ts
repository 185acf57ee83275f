// The best sharing of plates among packs for either objective, and a sharing in the request's own terms.
import { assert } from '../base/assert.ts';
import { type Held, holdLargest } from './hold-largest.ts';
import { extremesOf } from './joint-bounds.ts';
import { type JointProblem, type JointRequest, type Shares, sumOfShare } from './joint-request.ts';
import { minimiseSum, type Proof, proofs, type Table } from './minimise-sum.ts';
import { reachableSums } from './reachable-sums.ts';

export type JointPlan = {
  /** One a pack, in the order given; plates of each thickness, in the order the thicknesses were given. */
  readonly packs: readonly { readonly clearance: number; readonly counts: readonly number[] }[];
  readonly sum: number;
  readonly largest: number;
};

export type Sharing =
  | { readonly kind: 'optimal'; readonly shares: Shares; readonly provedBy: Proof }
  | { readonly kind: 'impossible' }
  /** The budget ended; `shares` is the best known, if any is, and the number made small is at least `bound`. */
  | {
      readonly kind: 'open';
      readonly shares: Shares | null;
      readonly bound: number;
      readonly boundOn: JointRequest['objective'];
    };

/** Whether there are as many plates as the packs need in all. */
export function isEnough({ lots, goals }: JointProblem): boolean {
  return platesOf(goals) <= lots.reduce((sum, { count }) => sum + count, 0);
}

/** What the stages of the search share, or null where the thicknesses are too finely divided for a table of sums. */
export function tableOf({ lots, goals }: JointProblem): Table | null {
  const reachable = reachableSums(lots, [Math.max(...goals.map((goal) => goal.plates))], 1);
  return reachable && { reachable, extremes: extremesOf(lots, platesOf(goals)) };
}

/** The best sharing where there are enough plates. */
export function bestSharing(
  problem: JointProblem,
  objective: JointRequest['objective'],
  table: Table,
  budget: { left: number },
): Sharing {
  const held: Held =
    objective === 'largest'
      ? holdLargest(problem, table, budget)
      : { kind: 'held', problem, shares: null, provedBy: proofs[0] };
  if (held.kind === 'impossible') return held;
  if (held.kind === 'open') return { ...held, boundOn: 'largest' };
  const outcome = minimiseSum(held.problem, table, budget, { known: held.shares });
  if (outcome.kind === 'impossible') return outcome;
  if (outcome.kind === 'open') return { ...outcome, boundOn: 'sum' };
  assert(outcome.kind === 'optimal', 'without a value to stay below, the search ends in a proof');
  const provedBy = proofs[Math.max(proofs.indexOf(outcome.provedBy), proofs.indexOf(held.provedBy))]!;
  return { kind: 'optimal', shares: outcome.shares, provedBy };
}

function platesOf(goals: JointProblem['goals']): number {
  return goals.reduce((sum, { plates }) => sum + plates, 0);
}

/** The shares by the request's own thicknesses and packs. */
export function planOf({ thicknesses, stock, packs }: JointRequest, { lots }: JointProblem, shares: Shares): JointPlan {
  const left = [...stock];
  const chosen = packs.map(({ space }, pack) => {
    const counts = thicknesses.map(() => 0);
    for (const [lot, pieces] of shares[pack]!.entries()) {
      let wanted = pieces;
      for (const [place, height] of thicknesses.entries()) {
        if (height !== lots[lot]!.height) continue;
        const here = Math.min(wanted, left[place]!);
        counts[place]! += here;
        left[place]! -= here;
        wanted -= here;
      }
    }
    return { clearance: space - sumOfShare(lots, shares[pack]!), counts };
  });
  const deviations = chosen.map(({ clearance }, pack) => Math.abs(clearance - packs[pack]!.target));
  return { packs: chosen, sum: deviations.reduce((sum, each) => sum + each, 0), largest: Math.max(...deviations) };
}
