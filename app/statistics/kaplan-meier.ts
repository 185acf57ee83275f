// The part that has not come back by a given time, when following ends at different times.
import { accept, type Result } from '../base/result.ts';
import { type FollowUp, orderFollowUp } from './follow-up.ts';
import { normalCoverageFactor } from './normal.ts';

export type SurvivalStep = {
  readonly time: number;
  readonly atRisk: number;
  readonly events: number;
  readonly survival: number;
  /** Greenwood's; null, as are the limits, where nobody is left and it has no meaning. */
  readonly standardError: number | null;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Nelson and Aalen's. */
  readonly cumulativeHazard: number;
  readonly cumulativeHazardStandardError: number;
};

export type KaplanMeier = {
  /** One a time with an event. */
  readonly steps: readonly SurvivalStep[];
  /** null: not reached. */
  readonly median: number | null;
  readonly medianInterval: readonly [lower: number | null, upper: number | null];
};

/**
 * Survival by the product-limit estimate with 95 % limits from log(−log S), and the cumulative hazard. Refuses what
 * `orderFollowUp` refuses. The median is the first time at which survival is one half or less; where the curve runs level at
 * exactly one half until an event takes it lower, the middle of that stretch, as R's survival prints it. Its interval reads the
 * limits the same way (R. Brookmeyer and J. Crowley, Biometrics 38, 1982, 29).
 * Source: E. Kaplan and P. Meier, JASA 53, 1958, 457; M. Greenwood, 1926; O. Aalen, Annals of Statistics 6, 1978, 701.
 */
export function kaplanMeier(followUp: FollowUp): Result<KaplanMeier> {
  const ordered = orderFollowUp(followUp);
  if (!ordered.ok) return ordered;
  const { moments } = ordered.value;
  const z = normalCoverageFactor(0.95);
  const steps: SurvivalStep[] = [];
  let survival = 1;
  let logSurvival = 0;
  let greenwood = 0;
  let cumulativeHazard = 0;
  let hazardVariance = 0;
  for (const { time, first, events } of moments) {
    if (events > 0) {
      const atRisk = followUp.time.length - first;
      survival *= (atRisk - events) / atRisk;
      logSurvival += Math.log1p(-events / atRisk);
      greenwood += events / (atRisk * (atRisk - events));
      cumulativeHazard += events / atRisk;
      hazardVariance += events / atRisk ** 2;
      const isOver = survival === 0;
      const reach = isOver ? 0 : (z * Math.sqrt(greenwood)) / -logSurvival;
      steps.push({
        time,
        atRisk,
        events,
        survival,
        standardError: isOver ? null : survival * Math.sqrt(greenwood),
        lower: isOver ? null : Math.exp(logSurvival * Math.exp(reach)),
        upper: isOver ? null : Math.exp(logSurvival * Math.exp(-reach)),
        cumulativeHazard,
        cumulativeHazardStandardError: Math.sqrt(hazardVariance),
      });
    }
  }
  const halfOf = (curve: (step: SurvivalStep) => number | null) => timeOfHalf(steps, curve);
  return accept({
    steps,
    median: halfOf((step) => step.survival),
    medianInterval: [halfOf((step) => step.lower), halfOf((step) => step.upper)],
  });
}

/** Products of many fractions reach one half only to within their rounding. */
const level = 1e-9;

function timeOfHalf(steps: readonly SurvivalStep[], curve: (step: SurvivalStep) => number | null): number | null {
  const isHalfOrLess = (step: SurvivalStep) => (curve(step) ?? 1) <= 0.5 + level;
  const first = steps.find(isHalfOrLess);
  if (!first) return null;
  if ((curve(first) ?? 1) < 0.5 - level) return first.time;
  const lower = steps.find((step) => (curve(step) ?? 1) < 0.5 - level);
  return lower ? (first.time + lower.time) / 2 : first.time;
}
