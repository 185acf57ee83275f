// How long things last when wear has a shape: the Weibull distribution fitted to times that may have ended early.
import { accept, type Result, refuse } from '../base/result.ts';
import { chiSquareQuantile } from './chi-square.ts';
import { type FollowUp, orderFollowUp } from './follow-up.ts';
import { logGamma } from './log-gamma.ts';
import { rootBeside, rootBetween } from './root.ts';

export type Weibull = {
  /** Below 1 early failures, 1 chance, above 1 wear. */
  readonly shape: number;
  /** The time by which 63.2 % have failed. */
  readonly scale: number;
  readonly logLikelihood: number;
  /** null: no upper limit within the range of numbers. */
  readonly shapeInterval: readonly [lower: number | null, upper: number | null];
  readonly scaleInterval: readonly [lower: number | null, upper: number | null];
  /** The time by which 10 % have failed. */
  readonly b10: number;
  readonly median: number;
  readonly mean: number;
};

/**
 * Maximum likelihood with right censoring and 95 % limits from the profile likelihood. Refuses what `orderFollowUp` refuses,
 * times of zero, and times from which no shape can be told: every event at one moment that nobody outlasted.
 * Source: W. Meeker and L. Escobar, Statistical Methods for Reliability Data, 1998, 8. The shape solves
 * d/k + Σ log tₑ − d · Σ tᵏ log t / Σ tᵏ = 0, which falls steadily in k; times enter by their logarithms less the
 * largest, so their unit and size do not matter.
 */
export function weibull(followUp: FollowUp): Result<Weibull> {
  const ordered = orderFollowUp(followUp);
  if (!ordered.ok) return ordered;
  const { moments } = ordered.value;
  if (followUp.time.includes(0))
    return refuse('not-positive', 'A time of zero has no place in a Weibull distribution.');
  const longest = moments.at(-1)!;
  if (moments.every((moment) => moment === longest || moment.events === 0)) {
    return refuse('no-finite-estimate', 'Every event came at one moment that nobody outlasted: no shape can be told.');
  }
  const logLongest = Math.log(longest.time);
  const sample: Sample = {
    logs: Float64Array.from(moments, (moment) => logOfShare(moment.time, longest.time)),
    counts: Float64Array.from(moments, (moment) => moment.next - moment.first),
    events: moments.reduce((sum, moment) => sum + moment.events, 0),
    eventLogs: moments.reduce((sum, moment) => sum + moment.events * logOfShare(moment.time, longest.time), 0),
  };
  const best = bestFit(sample);
  const drop = chiSquareQuantile(0.95, 1) / 2;
  const { logShape, logScale } = best;
  const shape = Math.exp(logShape);
  const scale = Math.exp(logScale + logLongest);
  const atShape = (trial: number) => likelihoodAbove(sample, best, trial, bestLogScale(sample, trial)) + drop;
  const atScale = (trial: number) => likelihoodAbove(sample, best, bestLogShape(sample, trial, logShape), trial) + drop;
  const step = 1 / Math.sqrt(sample.events);
  const limit = (f: (trial: number) => number, start: number, firstStep: number, unit: number) => {
    const root = rootBeside(f, start, firstStep, 40);
    const value = root === null ? Number.POSITIVE_INFINITY : Math.exp(root) * unit;
    return Number.isFinite(value) ? value : null;
  };
  return accept({
    shape,
    scale,
    logLikelihood:
      sample.events * (logShape - logLongest - 1) + (shape - 1) * sample.eventLogs - sample.events * shape * logScale,
    shapeInterval: [limit(atShape, logShape, -step, 1), limit(atShape, logShape, step, 1)],
    scaleInterval: [
      limit(atScale, logScale, -step / shape, longest.time),
      limit(atScale, logScale, step / shape, longest.time),
    ],
    b10: scale * (-Math.log(0.9)) ** (1 / shape),
    median: scale * Math.LN2 ** (1 / shape),
    mean: scale * Math.exp(logGamma(1 + 1 / shape)),
  });
}

/** log(time / longest), which keeps its digits where the two are nearly equal. */
function logOfShare(time: number, longest: number): number {
  return time > longest / 2 ? Math.log1p((time - longest) / longest) : Math.log(time / longest);
}

type Sample = {
  /** Logarithms of the distinct times, less that of the longest, so none above 0. */
  readonly logs: Float64Array;
  /** How many subjects have each. */
  readonly counts: Float64Array;
  readonly events: number;
  /** Σ over the events. */
  readonly eventLogs: number;
};

type Fit = { readonly logShape: number; readonly logScale: number };

function bestFit(sample: Sample): Fit {
  const { events, eventLogs } = sample;
  const slope = (logShape: number) => {
    const shape = Math.exp(logShape);
    const { powers, pull } = powerSums(sample, shape, 0);
    return events / shape + eventLogs - (events * pull) / powers;
  };
  const logShape = zeroOf(slope, 0, 1);
  return { logShape, logScale: bestLogScale(sample, logShape) };
}

function bestLogScale(sample: Sample, logShape: number): number {
  const shape = Math.exp(logShape);
  return Math.log(powerSums(sample, shape, 0).powers / sample.events) / shape;
}

function bestLogShape(sample: Sample, logScale: number, start: number): number {
  const { events, eventLogs } = sample;
  const slope = (logShape: number) => {
    const shape = Math.exp(logShape);
    return events / shape + eventLogs - events * logScale - powerSums(sample, shape, logScale).pull;
  };
  return zeroOf(slope, start, 0.1);
}

/** Log-likelihood less that of the best fit: never above zero. */
function likelihoodAbove(sample: Sample, best: Fit, logShape: number, logScale: number): number {
  const { events, eventLogs } = sample;
  const [shape, bestShape] = [Math.exp(logShape), Math.exp(best.logShape)];
  return (
    events * (logShape - best.logShape) +
    (shape - bestShape) * eventLogs -
    events * (shape * logScale - bestShape * best.logScale) -
    (powerSums(sample, shape, logScale).powers - events)
  );
}

/** Σ (t/scale)^shape, and the same weighted with log(t/scale). */
function powerSums({ logs, counts }: Sample, shape: number, logScale: number) {
  let [powers, pull] = [0, 0];
  for (let i = 0; i < logs.length; i++) {
    const beyond = logs[i]! - logScale;
    const power = counts[i]! * Math.exp(shape * beyond);
    powers += power;
    if (beyond !== 0) pull += power * beyond;
  }
  return { powers, pull };
}

/** Where a function that falls steadily passes through zero, looked for in steps that double. */
function zeroOf(falling: (x: number) => number, start: number, firstStep: number): number {
  let [low, high] = [start - firstStep, start + firstStep];
  for (let step = firstStep; !(falling(low) > 0) && step < 2000; step *= 2) low -= step;
  for (let step = firstStep; !(falling(high) < 0) && step < 2000; step *= 2) high += step;
  return rootBetween(falling, low, high);
}
