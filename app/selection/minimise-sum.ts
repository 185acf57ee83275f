// The stages that make a sum of costs small, cheapest first: stops as soon as the best found equals a proven bound.
import { type Extremes, extremesBound, sumAlone } from './joint-bounds.ts';
import { exchangePlates } from './joint-exchange.ts';
import { takeTurns, turnOrders } from './joint-greedy.ts';
import { costOf, type JointProblem, type Shares, valueOfShares } from './joint-request.ts';
import { searchByHeight } from './joint-search.ts';
import { priceBound } from './price-bound.ts';
import { isPriceable } from './priced-sums.ts';
import type { ReachableSums } from './reachable-sums.ts';

/** What showed that nothing better exists, cheapest first. */
export const proofs = ['each pack alone', 'thinnest and thickest', 'prices', 'search'] as const;
export type Proof = (typeof proofs)[number];

/** What the stages share: the sums that can be made, and how thin and thick plates can be. */
export type Table = { readonly reachable: ReachableSums; readonly extremes: Extremes };

export type Outcome =
  | { readonly kind: 'optimal'; readonly value: number; readonly shares: Shares; readonly provedBy: Proof }
  /** No sharing keeps all limits. */
  | { readonly kind: 'impossible' }
  /** Nothing is below the value asked about; it is at least `bound`. */
  | { readonly kind: 'above'; readonly bound: number; readonly provedBy: Proof }
  | { readonly kind: 'open'; readonly shares: Shares | null; readonly bound: number };

/**
 * The sharing with the smallest sum of costs, starting from one that is `known`, if any. With `below` it is enough to
 * find one under that value or to prove that there is none.
 */
export function minimiseSum(
  problem: JointProblem,
  { reachable, extremes }: Table,
  budget: { left: number },
  { below = Number.POSITIVE_INFINITY, known = null }: { below?: number; known?: Shares | null } = {},
): Outcome {
  const { lots, goals } = problem;
  const alone = goals.map((goal) => sumAlone(reachable, goal));
  if (alone.includes(null)) return { kind: 'impossible' };
  const needs = goals.map((goal, pack) => ({ ...goal, costAlone: costOf(goal, alone[pack]!) }));
  const aloneBound = needs.reduce((sum, { costAlone }) => sum + costAlone, 0);
  const bound = extremesBound(needs, extremes);
  const provedBy = bound > aloneBound ? 'thinnest and thickest' : 'each pack alone';
  if (bound === Number.POSITIVE_INFINITY) return { kind: 'impossible' };
  if (bound >= below) return { kind: 'above', bound, provedBy };

  const best = bestQuickly(problem, known, bound);
  if (best && best.value <= bound) return { kind: 'optimal', ...best, provedBy };
  const open = { kind: 'open', shares: best?.shares ?? null, bound } as const;

  const mostPlates = Math.max(...goals.map((goal) => goal.plates));
  if (!isPriceable(lots, mostPlates, reachable.step)) return open;
  const stopAt = Math.min(below, best?.value ?? Number.POSITIVE_INFINITY);
  const byPrices = priceBound(problem, reachable.step, stopAt);
  if (byPrices.bound >= stopAt) return proven(byPrices.bound, 'prices');
  const searched = searchByHeight(problem, byPrices.priced, Math.max(bound, byPrices.bound), stopAt, budget);
  if (searched.kind === 'found') return { ...searched, kind: 'optimal', provedBy: 'search' };
  if (searched.kind === 'exhausted') return { ...open, bound: searched.bound };
  return proven(searched.bound, 'search');

  function proven(atLeast: number, provedBy: Proof): Outcome {
    if (best && atLeast >= best.value) return { kind: 'optimal', ...best, provedBy };
    return atLeast === Number.POSITIVE_INFINITY ? { kind: 'impossible' } : { kind: 'above', bound: atLeast, provedBy };
  }
}

/** A good sharing without proof: taking turns in a few orders, then exchanges. null where none keeps the limits. */
function bestQuickly(
  problem: JointProblem,
  known: Shares | null,
  enough: number,
): { value: number; shares: Shares } | null {
  let best: { value: number; shares: Shares } | null = null;
  const keep = (shares: Shares | null) => {
    const value = shares && valueOfShares(problem, shares);
    if (shares && value !== null && (best === null || value < best.value)) best = { value, shares };
    return best !== null && best.value <= enough;
  };
  if (keep(known)) return best;
  for (const shares of everyTurn(problem)) if (keep(shares)) return best;
  keep(exchangePlates(problem, (best as { shares: Shares } | null)?.shares ?? null, enough));
  return best;
}

/** What comes of letting the packs take turns, in every order worth trying. */
export function* everyTurn(problem: JointProblem): Generator<Shares | null> {
  for (const order of turnOrders(problem)) {
    for (const spareRare of [true, false]) yield takeTurns(problem, order, spareRare);
  }
}
