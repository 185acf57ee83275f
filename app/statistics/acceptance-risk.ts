// What a rule of acceptance costs over many parts: bad ones accepted, good ones turned away.
import { accept, type Result, refuse } from '../base/result.ts';
import { normalBetween, normalDensity, normalTails } from './normal.ts';

export type AcceptanceRule = {
  readonly processMean: number;
  readonly processStandardDeviation: number;
  readonly measurementStandardUncertainty: number;
  readonly lower: number;
  readonly upper: number;
  readonly acceptLower: number;
  readonly acceptUpper: number;
};

export type AcceptanceRisk = {
  /** The part of the process that conforms. */
  readonly processConforming: number;
  /** The part of everything made that is outside the limits and accepted. */
  readonly consumerRisk: number;
  /** The part of everything made that is inside the limits and turned away. */
  readonly producerRisk: number;
};

/** How far from a normal mean anything can still be seen in a double. */
const reach = 38.5;

/**
 * Global risks of JCGM 106:2012 9.5 for a normal process and a normal measurement error. Refuses limits or acceptance
 * limits upside down (an empty acceptance interval) and spreads that are not more than zero.
 * Integrated over the true value by Gauss and Legendre in panels that follow both spreads; relative error below 1e-10.
 */
export function acceptanceRisk(rule: AcceptanceRule): Result<AcceptanceRisk> {
  const { processMean, processStandardDeviation, measurementStandardUncertainty, lower, upper } = rule;
  if (lower >= upper) return refuse('limits-upside-down', 'The lower limit is not below the upper limit.');
  if (rule.acceptLower >= rule.acceptUpper) {
    return refuse('empty-acceptance', 'The acceptance interval is empty: its lower end is not below its upper end.');
  }
  if (!(processStandardDeviation > 0) || !(measurementStandardUncertainty > 0)) {
    return refuse('no-spread', 'The process and the measurement must both have a spread of more than zero.');
  }
  const below = { from: processMean - reach * processStandardDeviation, to: lower };
  const inside = { from: lower, to: upper };
  const above = { from: upper, to: processMean + reach * processStandardDeviation };
  const density = (value: number) =>
    normalDensity((value - processMean) / processStandardDeviation) / processStandardDeviation;
  const accepted = (value: number) =>
    normalBetween(
      (rule.acceptLower - value) / measurementStandardUncertainty,
      (rule.acceptUpper - value) / measurementStandardUncertainty,
    );
  const rejected = (value: number) =>
    normalTails((rule.acceptLower - value) / measurementStandardUncertainty).lower +
    normalTails((rule.acceptUpper - value) / measurementStandardUncertainty).upper;
  const knots = panelEnds(rule);
  return accept({
    processConforming: normalBetween(
      (lower - processMean) / processStandardDeviation,
      (upper - processMean) / processStandardDeviation,
    ),
    consumerRisk:
      integrate((value) => density(value) * accepted(value), below, knots) +
      integrate((value) => density(value) * accepted(value), above, knots),
    producerRisk: integrate((value) => density(value) * rejected(value), inside, knots),
  });
}

/** Where the integrand may bend: every standard deviation of the process, every uncertainty about an acceptance limit. */
function panelEnds(rule: AcceptanceRule): number[] {
  const ends: number[] = [];
  for (let k = -39; k <= 39; k++) {
    ends.push(rule.processMean + k * rule.processStandardDeviation);
    ends.push(rule.acceptLower + k * rule.measurementStandardUncertainty);
    ends.push(rule.acceptUpper + k * rule.measurementStandardUncertainty);
  }
  return ends.sort((a, b) => a - b);
}

type Span = { readonly from: number; readonly to: number };

function integrate(integrand: (value: number) => number, { from, to }: Span, knots: readonly number[]): number {
  if (!(from < to)) return 0;
  const ends = [from, ...knots.filter((knot) => knot > from && knot < to), to];
  let total = 0;
  for (let i = 1; i < ends.length; i++) {
    const middle = (ends[i]! + ends[i - 1]!) / 2;
    const half = (ends[i]! - ends[i - 1]!) / 2;
    for (const [node, weight] of gaussLegendre) {
      total += half * weight * (integrand(middle + half * node) + integrand(middle - half * node));
    }
  }
  return total;
}

// Ten-point rule, its positive nodes with their weights: DLMF table 3.5.2.
const gaussLegendre: readonly (readonly [number, number])[] = [
  [0.14887433898163122, 0.29552422471475287],
  [0.4333953941292472, 0.26926671930999635],
  [0.6794095682990244, 0.21908636251598204],
  [0.8650633666889845, 0.1494513491505806],
  [0.9739065285171717, 0.06667134430868814],
];
