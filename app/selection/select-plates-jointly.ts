// Several packs, of one unit or more, that share the same plates: the best sharing, or how near it is known to be.
import { accept, type Result, refuse } from '../base/result.ts';
import { bestSharing, isEnough, type JointPlan, planOf, tableOf } from './best-sharing.ts';
import { sumAlone } from './joint-bounds.ts';
import { type JointPurchase, platesToBuy } from './joint-purchase.ts';
import { asProblem, costOf, type JointProblem, type JointRequest, sumOfShare } from './joint-request.ts';
import { minimiseSum, type Proof, type Table } from './minimise-sum.ts';

export type JointSelection =
  | ({ readonly status: 'Optimal'; readonly provedBy: Proof } & JointPlan)
  | {
      readonly status: 'Infeasible';
      /** The first pack that cannot be brought within its limits even with all plates to itself, counted from 0. */
      readonly blockedBy: number | 'jointly' | 'stock';
      /** The sharing that lies outside the limits by the least in all; null where there are not enough plates. */
      readonly nearest: (JointPlan & { readonly outsideBy: number; readonly isProvenNearest: boolean }) | null;
      /** null where no one listed thickness is known to make all packs fit. */
      readonly buy: JointPurchase | null;
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
 * the first one met is given, and nothing more is promised about it. Where nothing fits, see `platesToBuy`.
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
  const table = tableOf(problem);
  if (table === null) {
    return refuse('too-fine', 'These thicknesses are too finely divided to be searched: round them to a coarser unit.');
  }
  const allowed = request.nodeBudget ?? usualBudget;
  const budget = { left: allowed };
  const sharing = isEnough(problem) ? bestSharing(problem, request.objective, table, budget) : null;
  switch (sharing?.kind) {
    case 'optimal':
      return accept({
        status: 'Optimal',
        provedBy: sharing.provedBy,
        ...planOf(request, problem, sharing.shares),
      });
    case 'open': {
      const { bound, boundOn, shares } = sharing;
      const best = shares && planOf(request, problem, shares);
      return accept({
        status: 'BudgetExhausted',
        best,
        bound,
        boundOn,
        nodes: allowed - Math.max(0, budget.left),
      });
    }
    default: {
      // What to buy is asked afresh, with as many steps again.
      const buy = platesToBuy(request, { left: allowed });
      if (sharing === null) return accept({ status: 'Infeasible', blockedBy: 'stock', nearest: null, buy });
      return accept({ status: 'Infeasible', ...nearestSharing(request, problem, table, budget), buy });
    }
  }
}

function nearestSharing(
  request: JointRequest,
  problem: JointProblem,
  table: Table,
  budget: { left: number },
): Pick<JointSelection & { status: 'Infeasible' }, 'blockedBy' | 'nearest'> {
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
    blockedBy: blocked < 0 ? 'jointly' : blocked,
    nearest: plan && { ...plan, outsideBy, isProvenNearest: outcome.kind === 'optimal' },
  };
}
