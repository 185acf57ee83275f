// The smallest largest deviation that several packs can have, and the packs held within it.
import { sumAlone } from './joint-bounds.ts';
import { costOf, type Goal, type JointProblem, type Shares, sumOfShare } from './joint-request.ts';
import { everyTurn, minimiseSum, type Proof, proofs, type Table } from './minimise-sum.ts';

export type Held =
  /** The smallest largest deviation is proven; `shares` has it (null: nobody asked). */
  | { readonly kind: 'held'; readonly problem: JointProblem; readonly shares: Shares | null; readonly provedBy: Proof }
  | { readonly kind: 'impossible' }
  /** The largest deviation is at least `bound`. */
  | { readonly kind: 'open'; readonly shares: Shares | null; readonly bound: number };

/**
 * The problem with every pack held within the smallest largest deviation. What the packs must in all lie beyond a
 * deviation says by how much it must be raised, for raising it by one gains at most one a pack: so it climbs from
 * below, over the deviations that any pack can have, and stops at the first that all can keep.
 */
export function holdLargest(problem: JointProblem, table: Table, budget: { left: number }): Held {
  const { goals } = problem;
  const alone = goals.map((goal) => sumAlone(table.reachable, goal));
  if (alone.includes(null)) return { kind: 'impossible' };
  let deviation = Math.max(...goals.map((goal, pack) => costOf(goal, alone[pack]!)));
  let known = smallestLargest(problem, [...everyTurn(problem)]);
  if (known === null) {
    const anywhere = minimiseSum(within(problem, Number.POSITIVE_INFINITY), table, budget, { below: 1 });
    // Within the limits nothing costs, so whatever must cost is not there.
    if (anywhere.kind === 'impossible' || anywhere.kind === 'above') return { kind: 'impossible' };
    if (anywhere.kind === 'open') return { ...anywhere, bound: deviation };
    known = anywhere.shares;
  }
  let provedBy: Proof = proofs[0];
  while (deviation < largestOf(problem, known)) {
    const outcome = minimiseSum(within(problem, deviation), table, budget, { below: 1, known });
    if (outcome.kind === 'open') {
      return { kind: 'open', shares: smallestLargest(problem, [known, outcome.shares]), bound: deviation };
    }
    if (outcome.kind === 'optimal' && outcome.value === 0) {
      known = outcome.shares;
      break;
    }
    if (outcome.kind !== 'impossible' && proofs.indexOf(outcome.provedBy) > proofs.indexOf(provedBy)) {
      provedBy = outcome.provedBy;
    }
    const beyond = outcome.kind === 'above' ? outcome.bound : outcome.kind === 'optimal' ? outcome.value : 1;
    deviation = nextDeviation(goals, table, deviation + Math.ceil(beyond / goals.length));
  }
  const limits = within(problem, deviation).goals;
  const held = goals.map((goal, pack): Goal => ({ ...goal, least: limits[pack]!.aimLow, most: limits[pack]!.aimHigh }));
  return { kind: 'held', problem: { ...problem, goals: held }, shares: known, provedBy };
}

/** Only what lies further out than the deviation costs. */
function within(problem: JointProblem, deviation: number): JointProblem {
  const goals = problem.goals.map((goal) => ({
    ...goal,
    aimLow: Math.max(goal.least, goal.aimLow - deviation),
    aimHigh: Math.min(goal.most, goal.aimHigh + deviation),
  }));
  return { ...problem, goals };
}

/** The smallest deviation from `atLeast` up that the steps between sums allow some pack to have. */
function nextDeviation(goals: readonly Goal[], { reachable: { step, draws } }: Table, atLeast: number): number {
  const deviations = goals.flatMap(({ plates, aimLow }) => {
    const thicker = (((draws[plates]!.floor - aimLow) % step) + step) % step;
    return [thicker, step - thicker].map((first) => first + step * Math.ceil((atLeast - first) / step));
  });
  return Math.min(...deviations);
}

function largestOf({ lots, goals }: JointProblem, shares: Shares): number {
  return Math.max(...goals.map((goal, pack) => costOf(goal, sumOfShare(lots, shares[pack]!))));
}

function smallestLargest(problem: JointProblem, known: readonly (Shares | null)[]): Shares | null {
  return known.reduce(
    (best, shares) =>
      shares && (best === null || largestOf(problem, shares) < largestOf(problem, best)) ? shares : best,
    null,
  );
}
