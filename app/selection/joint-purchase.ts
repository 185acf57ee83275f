// When packs that share plates cannot all be brought in: the one thickness to buy, and how many of it.
import { bestSharing, isEnough, type JointPlan, planOf, tableOf } from './best-sharing.ts';
import { type JointRequest, problemOf, type Shares } from './joint-request.ts';
import { minimiseSum } from './minimise-sum.ts';

export type JointPurchase = Pick<JointPlan, 'sum' | 'largest'> & {
  readonly thickness: number;
  readonly pieces: number;
  /** Proven: fewer plates of no one listed thickness would do. If not, the search ran out of steps on the way. */
  readonly isProvenFewest: boolean;
  /** Plates from stock, and how many of those bought go into the pack. */
  readonly packs: readonly (JointPlan['packs'][number] & { readonly bought: number })[];
};

type Budget = { left: number };

/**
 * The fewest plates of one listed thickness that, bought, make all packs fit at once; of thicknesses that need equally
 * many the one with which the objective comes out best; then nearest to the middle of the thicknesses listed; then the
 * thinner. Every listed thickness is tried, in stock or not. The steps are shared between all of that: where they run
 * out, a thickness that would do may be passed over, and `isProvenFewest` says so. null where none is known to do.
 */
export function platesToBuy(request: JointRequest, budget: Budget): JointPurchase | null {
  const plates = request.packs.reduce((sum, pack) => sum + pack.plates, 0);
  const least = Math.max(1, plates - request.stock.reduce((sum, count) => sum + count, 0));
  let isProven = true;
  const sharingWith = (thickness: number, pieces: number): Shares | null => {
    const sharing = anySharing(buying(request, thickness, pieces), budget);
    if (sharing === 'unknown') isProven = false;
    return typeof sharing === 'string' ? null : sharing;
  };
  let fewest = plates;
  let found: { thickness: number; shares: Shares }[] = [];
  for (const thickness of new Set(request.thicknesses)) {
    // Where it does with so many it does with more: so the fewest are found by halving, never above the fewest so far.
    let shares = sharingWith(thickness, fewest);
    if (shares === null) continue;
    let most = fewest;
    for (let from = least; from < most; ) {
      const middle = Math.floor((from + most) / 2);
      const sharing = sharingWith(thickness, middle);
      if (sharing === null) {
        from = middle + 1;
      } else {
        most = middle;
        shares = sharing;
      }
    }
    if (most < fewest) found = [];
    fewest = most;
    found.push({ thickness, shares });
  }
  const middle = (Math.min(...request.thicknesses) + Math.max(...request.thicknesses)) / 2;
  const purchases = found.map(({ thickness, shares }) => {
    const plan = bestPlan(buying(request, thickness, fewest), shares, budget);
    return { ...plan, thickness, fromMiddle: Math.abs(thickness - middle) };
  });
  const { objective } = request;
  const [best] = purchases.toSorted(
    (a, b) => a[objective] - b[objective] || a.sum - b.sum || a.fromMiddle - b.fromMiddle || a.thickness - b.thickness,
  );
  if (!best) return null;
  const { thickness, packs, sum, largest } = best;
  const boughtIn = packs.map(({ clearance, counts }) => ({
    clearance,
    counts: counts.slice(0, -1),
    bought: counts.at(-1)!,
  }));
  const pieces = boughtIn.reduce((total, { bought }) => total + bought, 0);
  return { thickness, pieces, isProvenFewest: isProven || pieces === least, packs: boughtIn, sum, largest };
}

/** The request with the bought plates as one more can. */
function buying(request: JointRequest, thickness: number, pieces: number): JointRequest {
  return {
    ...request,
    thicknesses: [...request.thicknesses, thickness],
    stock: [...request.stock, pieces],
  };
}

/** Some sharing within all limits. */
function anySharing(request: JointRequest, budget: Budget): Shares | 'none' | 'unknown' {
  const problem = problemOf(request);
  if (!isEnough(problem)) return 'none';
  const table = tableOf(problem);
  if (table === null) return 'unknown';
  // Within the limits nothing costs: whatever must cost is not there.
  const goals = problem.goals.map((goal) => ({ ...goal, aimLow: goal.least, aimHigh: goal.most }));
  const outcome = minimiseSum({ ...problem, goals }, table, budget, { below: 1 });
  if (outcome.kind === 'optimal') return outcome.shares;
  return outcome.kind === 'open' ? (outcome.shares ?? 'unknown') : 'none';
}

/** The best plan known, starting from shares that fit. */
function bestPlan(request: JointRequest, known: Shares, budget: Budget): JointPlan {
  const problem = problemOf(request);
  const table = tableOf(problem);
  const sharing = table && bestSharing(problem, request.objective, table, budget);
  return planOf(request, problem, (sharing && 'shares' in sharing && sharing.shares) || known);
}
