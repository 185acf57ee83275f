// Several packs, of one unit or more, that share the same plates: the best sharing, or how near it is known to be.
import { assert } from '../base/assert.ts';
import { accept, type Result, refuse } from '../base/result.ts';
import { type Held, holdLargest } from './hold-largest.ts';
import { extremesOf, sumAlone } from './joint-bounds.ts';
import { asProblem, costOf, type JointProblem, type JointRequest, type Shares, sumOfShare } from './joint-request.ts';
import { minimiseSum, type Proof, proofs, type Table } from './minimise-sum.ts';
import { reachableSums } from './reachable-sums.ts';

export type JointPlan = {
  /** One a pack, in the order given; plates of each thickness, in the order the thicknesses were given. */
  readonly packs: readonly { readonly clearance: number; readonly counts: readonly number[] }[];
  readonly sum: number;
  readonly largest: number;
};

export type JointSelection =
  | ({ readonly status: 'Optimal'; readonly provedBy: Proof } & JointPlan)
  | {
      readonly status: 'Infeasible';
      /** The first pack that cannot be brought within its limits even with all plates to itself, counted from 0. */
      readonly blockedBy: number | 'jointly' | 'stock';
      /** The sharing that lies outside the limits by the least in all; null where there are not enough plates. */
      readonly nearest: (JointPlan & { readonly outsideBy: number; readonly isProvenNearest: boolean }) | null;
    }
  | {
      readonly status: 'BudgetExhausted';
      /** null: not even known whether there is a sharing within the limits. */
      readonly best: JointPlan | null;
      /** Proven: the number that was being made small is at least this. */
      readonly bound: number;
      readonly boundOn: 'sum' | 'largest';
      /** Steps of the search that were taken. */
      readonly nodes: number;
    };

const usualBudget = 200_000;

/**
 * Which plates go into which pack, so that the sum of |clearance − target| is smallest; or, for `largest`, first the
 * largest of them and then the sum. Proven optimal, proven impossible, or the best known with a bound where the budget
 * ends. Deterministic: the budget counts steps, not time, and nothing is left to chance. Among equally good sharings
 * the first one met is given, and nothing more is promised about it.
 *
 * Refuses numbers that are not whole, lists of different length, limits upside down, no pack or more than 40, and
 * thicknesses too finely divided for a table of sums.
 *
 *     selectPlatesJointly({
 *       thicknesses: [20, 30], stock: [2, 1], objective: 'sum',
 *       packs: [40, 33].map((space) => ({ space, plates: 1, target: 10, lower: 5, upper: 15 })),
 *     });
 *     // { status: 'Optimal', packs: [{ clearance: 10, counts: [0, 1] }, { clearance: 13, counts: [1, 0] }], sum: 3, … }
 */
export function selectPlatesJointly(request: JointRequest): Result<JointSelection> {
  const asked = asProblem(request);
  if (!asked.ok) return asked;
  const problem = asked.value;
  const plates = problem.goals.reduce((sum, goal) => sum + goal.plates, 0);
  const reachable = reachableSums(problem.lots, [Math.max(...problem.goals.map((goal) => goal.plates))], 1);
  if (reachable === null) {
    return refuse('too-fine', 'These thicknesses are too finely divided to be searched: round them to a coarser unit.');
  }
  if (plates > problem.lots.reduce((sum, { count }) => sum + count, 0)) {
    return accept({ status: 'Infeasible', blockedBy: 'stock', nearest: null });
  }
  const table = { reachable, extremes: extremesOf(problem.lots, plates) };
  const allowed = request.nodeBudget ?? usualBudget;
  const budget = { left: allowed };
  const ranOut = (shares: Shares | null, bound: number, boundOn: 'sum' | 'largest'): JointSelection => {
    const best = shares && planOf(request, problem, shares);
    return { status: 'BudgetExhausted', best, bound, boundOn, nodes: allowed - Math.max(0, budget.left) };
  };

  const held: Held =
    request.objective === 'largest'
      ? holdLargest(problem, table, budget)
      : { kind: 'held', problem, shares: null, provedBy: proofs[0] };
  if (held.kind === 'impossible') return accept(nearestSharing(request, problem, table, budget));
  if (held.kind === 'open') return accept(ranOut(held.shares, held.bound, 'largest'));
  const outcome = minimiseSum(held.problem, table, budget, { known: held.shares });
  if (outcome.kind === 'impossible') return accept(nearestSharing(request, problem, table, budget));
  if (outcome.kind === 'open') return accept(ranOut(outcome.shares, outcome.bound, 'sum'));
  assert(outcome.kind === 'optimal', 'without a value to stay below, the search ends in a proof');
  const provedBy = proofs[Math.max(proofs.indexOf(outcome.provedBy), proofs.indexOf(held.provedBy))]!;
  return accept({ status: 'Optimal', provedBy, ...planOf(request, problem, outcome.shares) });
}

function nearestSharing(
  request: JointRequest,
  problem: JointProblem,
  table: Table,
  budget: { left: number },
): JointSelection {
  const blocked = problem.goals.findIndex((goal) => sumAlone(table.reachable, goal) === null);
  // The same search with no limits, where lying outside them is what costs.
  const goals = problem.goals.map(({ plates, least, most }) => ({
    plates,
    aimLow: least,
    aimHigh: most,
    least: 0,
    most: Number.MAX_SAFE_INTEGER,
  }));
  const outcome = minimiseSum({ ...problem, goals }, table, budget);
  const shares = outcome.kind === 'optimal' || outcome.kind === 'open' ? outcome.shares : null;
  const plan = shares && planOf(request, problem, shares);
  const outsideBy = shares
    ? goals.reduce((sum, goal, pack) => sum + costOf(goal, sumOfShare(problem.lots, shares[pack]!)), 0)
    : 0;
  return {
    status: 'Infeasible',
    blockedBy: blocked < 0 ? 'jointly' : blocked,
    nearest: plan && { ...plan, outsideBy, isProvenNearest: outcome.kind === 'optimal' },
  };
}

function planOf({ thicknesses, stock, packs }: JointRequest, { lots }: JointProblem, shares: Shares): JointPlan {
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
