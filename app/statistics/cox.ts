// How much more often something comes back for one step more of a factor: Cox's model with one covariate.
import { accept, type Result, refuse } from '../base/result.ts';
import { chiSquareTails } from './chi-square.ts';
import { type FollowUp, type Moment, orderFollowUp } from './follow-up.ts';
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
  const scaled = Float64Array.from(ordered.value.order, (place) => deviations[place]! / spread);
  const latestFirst = ordered.value.moments.toReversed();
  const refusal = refuseWithoutEstimate(latestFirst, scaled);
  if (refusal) return refusal;
  const start = partialLikelihood(latestFirst, scaled, ties, 0);
  const fitted = climb((coefficient) => partialLikelihood(latestFirst, scaled, ties, coefficient), start);
  if (!fitted) return refuse('no-finite-estimate', 'The hazard ratio has no finite estimate.');
  const coefficient = fitted.coefficient / spread / unit;
  const standardError = 1 / Math.sqrt(fitted.information) / spread / unit;
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

/** `x` is in the order of time, as the moments count it. */
function partialLikelihood(
  latestFirst: readonly Moment[],
  x: Float64Array,
  ties: Ties,
  coefficient: number,
): Likelihood {
  let value = 0;
  let slope = 0;
  let information = 0;
  // Σ w, Σ wx, Σ wx² with w = exp(coefficient · x), of everybody still at risk.
  let [weights, firsts, seconds] = [0, 0, 0];
  for (const { first, events, next } of latestFirst) {
    let [tiedWeights, tiedFirsts, tiedSeconds] = [0, 0, 0];
    for (let place = first; place < next; place++) {
      const each = x[place]!;
      const weight = Math.exp(coefficient * each);
      weights += weight;
      firsts += weight * each;
      seconds += weight * each * each;
      if (place < first + events) {
        tiedWeights += weight;
        tiedFirsts += weight * each;
        tiedSeconds += weight * each * each;
        value += coefficient * each;
        slope += each;
      }
    }
    for (let i = 0; i < events; i++) {
      const left = ties === 'efron' ? i / events : 0;
      const total = weights - left * tiedWeights;
      const mean = (firsts - left * tiedFirsts) / total;
      value -= Math.log(total);
      slope -= mean;
      information += (seconds - left * tiedSeconds) / total - mean * mean;
    }
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
function refuseWithoutEstimate(latestFirst: readonly Moment[], x: Float64Array) {
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  let [doesVary, isAlwaysHighest, isAlwaysLowest] = [false, true, true];
  for (const { first, events, next } of latestFirst) {
    for (let place = first; place < next; place++) {
      lowest = Math.min(lowest, x[place]!);
      highest = Math.max(highest, x[place]!);
    }
    if (events === 0 || lowest === highest) continue;
    doesVary = true;
    for (let place = first; place < first + events; place++) {
      isAlwaysHighest &&= x[place] === highest;
      isAlwaysLowest &&= x[place] === lowest;
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
