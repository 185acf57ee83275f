// How much more often something comes back for one step more of a factor: Cox's model with one covariate.
import { accept, type Result, refuse } from '../base/result.ts';
import { chiSquareTails } from './chi-square.ts';
import { type FollowUp, orderFollowUp } from './follow-up.ts';
import { normalCoverageFactor } from './normal.ts';
import { centreInUnits } from './summary.ts';

export type Cox = {
  readonly coefficient: number;
  readonly standardError: number;
  /** null where e to that power is too large or too small for a double, which the coefficient still tells. */
  readonly hazardRatio: number | null;
  readonly hazardRatioInterval: readonly [lower: number | null, upper: number | null];
  readonly z: number;
  readonly p: number;
  /** With no effect, and fitted. */
  readonly logLikelihood: readonly [withoutEffect: number, fitted: number];
  readonly likelihoodRatio: number;
  readonly score: number;
};

export type Ties = 'efron' | 'breslow';

/**
 * Partial likelihood for one covariate `x`, 95 % interval by Wald. Refuses what `orderFollowUp` refuses, a covariate that
 * does not vary (at all, or among those at risk), and one that has no finite estimate because every event fell on the
 * highest (or lowest) value then at risk, as when all events are in one group.
 * Source: D. Cox, Journal of the Royal Statistical Society B 34, 1972, 187; B. Efron, JASA 72, 1977, 557;
 * N. Breslow, Biometrics 30, 1974, 89. Newton's method on a concave function, each step halved until it gains.
 */
export function cox(followUp: FollowUp, x: readonly number[], ties: Ties): Result<Cox> {
  const ordered = orderFollowUp(followUp, { x });
  if (!ordered.ok) return ordered;
  // In standard deviations about the mean, so that neither its unit nor its size can spoil a digit.
  const { unit, deviations, sumOfSquares } = centreInUnits(x);
  if (sumOfSquares === 0) return refuse('constant-covariate', 'The covariate is the same for everybody.');
  const spread = Math.sqrt(sumOfSquares / x.length);
  const { order, moments } = ordered.value;
  const scaled = new Float64Array(order.length);
  for (let place = 0; place < order.length; place++) scaled[place] = deviations[order[place]!]! / spread;
  const once = new Float64Array(order.length).fill(1);
  const never = new Float64Array(order.length);
  const latestFirst = moments.toReversed().map(
    ({ first, events, next }): Tally => ({
      events,
      x: scaled.subarray(first, next),
      counts: once.subarray(first, next),
      // Those with the event stand before the others.
      eventsAtX: events === 0 ? never.subarray(first, next) : never.slice(first, next).fill(1, 0, events),
    }),
  );
  return estimate(latestFirst, ties, spread * unit);
}

/** Of a group, or of the rest: how many ended at each time, and of how many of them the event came. */
export type Alike = { readonly counts: ArrayLike<number>; readonly events: ArrayLike<number> };

/**
 * The same for a group against the rest, x being 1 or 0, from how many are alike: one count a time, in the order of time.
 * Refuses what `cox` refuses. Counting takes no longer for a fleet than for a few.
 */
export function coxOfGroup(inside: Alike, outside: Alike, ties: Ties): Result<Cox> {
  const counted = tallyGroup(inside, outside);
  return counted.ok ? estimate(counted.value, ties, 1) : counted;
}

/**
 * How often chance alone gives at least such a difference between a group and the rest, by the score test: what `coxOfGroup`
 * would find, without fitting. Refuses columns of different lengths.
 */
export function scoreOfGroup(inside: Alike, outside: Alike, ties: Ties): Result<{ readonly p: number }> {
  const length = inside.counts.length;
  if ([inside.events, outside.counts, outside.events].some((column) => column.length !== length)) {
    return refuse('different-lengths', 'The counts of inside and outside must be equally long.');
  }
  let [slope, information, within, all] = [0, 0, 0, 0];
  for (let i = length - 1; i >= 0; i--) {
    within += inside.counts[i]!;
    all += inside.counts[i]! + outside.counts[i]!;
    const tied = inside.events[i]!;
    const events = tied + outside.events[i]!;
    if (within === 0) continue;
    slope += tied;
    for (let event = 0; event < events; event++) {
      const left = ties === 'efron' ? event / events : 0;
      const mean = (within - left * tied) / (all - left * events);
      slope -= mean;
      information += mean - mean * mean;
    }
  }
  return accept({ p: information > 0 ? chiSquareTails(slope ** 2 / information, 1).upper : 1 });
}

function tallyGroup(inside: Alike, outside: Alike): Result<Tally[]> {
  const columns = [inside, outside].flatMap(({ counts, events }) => [counts, events]);
  const length = inside.counts.length;
  if (columns.some((column) => column.length !== length)) {
    return refuse('different-lengths', 'The counts of inside and outside must be equally long.');
  }
  const latestFirst: Tally[] = [];
  let [within, beside, came] = [0, 0, 0];
  for (let i = length - 1; i >= 0; i--) {
    const counts = Float64Array.of(inside.counts[i]!, outside.counts[i]!);
    const eventsAtX = Float64Array.of(inside.events[i]!, outside.events[i]!);
    const areCounts = eventsAtX.every(
      (events, at) =>
        Number.isSafeInteger(counts[at]) && Number.isSafeInteger(events) && events >= 0 && events <= counts[at]!,
    );
    if (!areCounts) {
      return refuse('not-a-count', 'Counts are whole numbers, zero or more, and no more events than there are.');
    }
    const events = eventsAtX[0]! + eventsAtX[1]!;
    within += counts[0]!;
    beside += counts[1]!;
    came += events;
    latestFirst.push({ events, x: groupAndRest, counts, eventsAtX });
  }
  if (within === 0 || beside === 0) {
    return refuse('constant-covariate', 'The covariate is the same for everybody.');
  }
  if (came === 0) return refuse('no-events', 'There is no event to learn from.');
  return accept(latestFirst);
}

const groupAndRest = Float64Array.of(1, 0);

/** One step of x is so many of the covariate: `unit`. */
function estimate(latestFirst: readonly Tally[], ties: Ties, unit: number): Result<Cox> {
  const refusal = refuseWithoutEstimate(latestFirst);
  if (refusal) return refusal;
  const start = partialLikelihood(latestFirst, ties, 0);
  const fitted = climb((coefficient) => partialLikelihood(latestFirst, ties, coefficient), start);
  if (!fitted) return refuse('no-finite-estimate', 'The hazard ratio has no finite estimate.');
  const coefficient = fitted.coefficient / unit;
  const standardError = 1 / Math.sqrt(fitted.information) / unit;
  const reach = normalCoverageFactor(0.95) * standardError;
  const z = fitted.coefficient * Math.sqrt(fitted.information);
  return accept({
    coefficient,
    standardError,
    hazardRatio: ratioOf(coefficient),
    hazardRatioInterval: [ratioOf(coefficient - reach), ratioOf(coefficient + reach)],
    z,
    p: chiSquareTails(z * z, 1).upper,
    logLikelihood: [start.value, fitted.value],
    likelihoodRatio: Math.max(0, 2 * (fitted.value - start.value)),
    score: start.slope ** 2 / start.information,
  });
}

function ratioOf(logRatio: number): number | null {
  const ratio = Math.exp(logRatio);
  return ratio > 0 && Number.isFinite(ratio) ? ratio : null;
}

type Likelihood = {
  readonly coefficient: number;
  readonly value: number;
  readonly slope: number;
  /** Minus the second derivative. */
  readonly information: number;
};

/** Those whose time is the same: how many have each x, and of how many of them the event came. */
type Tally = {
  readonly events: number;
  readonly x: Float64Array;
  readonly counts: Float64Array;
  readonly eventsAtX: Float64Array;
};

function partialLikelihood(latestFirst: readonly Tally[], ties: Ties, coefficient: number): Likelihood {
  let value = 0;
  let slope = 0;
  let information = 0;
  // Σ w, Σ wx, Σ wx² with w = exp(coefficient · x), of everybody still at risk.
  let [weights, firsts, seconds] = [0, 0, 0];
  for (const { events, x, counts, eventsAtX } of latestFirst) {
    let [tiedWeights, tiedFirsts, tiedSeconds] = [0, 0, 0];
    for (let i = 0; i < x.length; i++) {
      const each = x[i]!;
      const ofOne = Math.exp(coefficient * each);
      const weight = ofOne * counts[i]!;
      weights += weight;
      firsts += weight * each;
      seconds += weight * each * each;
      const eventsHere = eventsAtX[i]!;
      if (eventsHere > 0) {
        const tied = ofOne * eventsHere;
        tiedWeights += tied;
        tiedFirsts += tied * each;
        tiedSeconds += tied * each * each;
        value += coefficient * each * eventsHere;
        slope += each * eventsHere;
      }
    }
    // One logarithm for many factors, as long as their product stays well within the range of doubles.
    let product = 1;
    for (let i = 0; i < events; i++) {
      const left = ties === 'efron' ? i / events : 0;
      const total = weights - left * tiedWeights;
      const mean = (firsts - left * tiedFirsts) / total;
      slope -= mean;
      information += (seconds - left * tiedSeconds) / total - mean * mean;
      const longer = product * total;
      const isWithin = longer > 1e-150 && longer < 1e150;
      if (!isWithin) value -= Math.log(product) + Math.log(total);
      product = isWithin ? longer : 1;
    }
    value -= Math.log(product);
  }
  return { coefficient, value, slope, information };
}

function climb(at: (coefficient: number) => Likelihood, start: Likelihood): Likelihood | null {
  let here = start;
  for (let round = 0; round < 100; round++) {
    // Close to the top a step may seem to lose by what rounding takes from a long sum.
    const enough = here.value - 1e-10 * Math.abs(here.value);
    let step = here.slope / here.information;
    let next = at(here.coefficient + step);
    for (let halvings = 0; !(next.value >= enough) && halvings < 60; halvings++) {
      step /= 2;
      next = at(here.coefficient + step);
    }
    if (!(next.value >= enough && next.information > 0)) return null;
    here = next;
    if (Math.abs(step) <= 1e-9 * (1 + Math.abs(here.coefficient))) return here;
  }
  return null;
}

/** Bounded above or below by the risk sets: then the likelihood rises for ever. */
function refuseWithoutEstimate(latestFirst: readonly Tally[]) {
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [doesVary, isAlwaysHighest, isAlwaysLowest] = [false, true, true];
  for (const { events, x, counts, eventsAtX } of latestFirst) {
    for (let i = 0; i < x.length; i++) {
      if (counts[i] === 0) continue;
      const each = x[i]!;
      lowest = Math.min(lowest, each);
      highest = Math.max(highest, each);
    }
    if (events === 0 || lowest === highest) continue;
    doesVary = true;
    for (let i = 0; i < x.length; i++) {
      if (eventsAtX[i] === 0) continue;
      isAlwaysHighest &&= x[i] === highest;
      isAlwaysLowest &&= x[i] === lowest;
    }
  }
  if (!doesVary) {
    return refuse('constant-covariate', 'At every event all that were still at risk had the same covariate.');
  }
  if (isAlwaysHighest || isAlwaysLowest) {
    const which = isAlwaysHighest ? 'highest' : 'lowest';
    return refuse('no-finite-estimate', `Every event fell on the ${which} covariate then at risk: no ratio is finite.`);
  }
  return null;
}
