// The calculator's computations of measurement: units, spread, uncertainty, conformity.
import { z } from 'zod';
import { accept, refuse } from '../../../../app/base/result.ts';
import { convertExactly, convertibleUnits } from '../../../../app/quantities/exact-conversion.ts';
import { acceptanceRisk } from '../../../../app/statistics/acceptance-risk.ts';
import { judgeConformity } from '../../../../app/statistics/conformity.ts';
import { studentTCoverageFactor } from '../../../../app/statistics/student-t.ts';
import { meanOf, summarise } from '../../../../app/statistics/summary.ts';
import {
  arcsine,
  type BudgetLine,
  combine,
  rectangular,
  roundingOf,
  triangular,
} from '../../../../app/statistics/uncertainty-budget.ts';
import {
  computation,
  degreesOfFreedom,
  mapResult,
  notNegative,
  nullIfEndless,
  number,
  numbers,
  positive,
  probability,
} from './computation.ts';

const convert = computation({
  name: 'convert',
  purpose: 'a value in another unit, without a rounding error',
  input: z.strictObject({
    value: z.string().max(400).describe('a decimal number as text, such as "0.0355"'),
    from: z.string().max(40).describe('its unit'),
    to: z
      .string()
      .max(40)
      .describe(`the unit wanted; known are ${convertibleUnits().join(', ')}`),
  }),
  outputs: { value: 'decimal text in the unit wanted: exact where the decimal ends, otherwise 25 significant digits' },
  formula:
    'value · (SI units in one `from`) / (SI units in one `to`), in fractions of whole numbers; temperatures by their zeros',
  source: 'NIST SP 811 appendix B, exact definitions',
  compute: ({ value, from, to }) => mapResult(convertExactly(value, from, to), (converted) => ({ value: converted })),
});

const summary = computation({
  name: 'summary',
  purpose: 'mean, spread and serial correlation of a list of numbers',
  input: z.strictObject({ values: numbers('at least two, in any one unit') }),
  outputs: {
    n: 'how many',
    mean: 'in the unit of the values',
    sampleStandardDeviation: 'with n − 1, in the unit of the values',
    lag1Autocorrelation: 'Σ dᵢdᵢ₊₁ / Σ dᵢ², d the deviations from the mean; null where all values are equal',
  },
  formula: 's = √(Σ (x − x̄)² / (n − 1)), in two passes centred on the first value',
  source: 'JCGM 100:2008 4.2; NIST StRD univariate definitions',
  compute: ({ values }) => summarise(values),
});

const studentT = computation({
  name: 'student-t',
  purpose: 'coverage factors of Student’s t for any degrees of freedom',
  input: z.strictObject({
    degreesOfFreedom: z.array(degreesOfFreedom).min(1),
    probability: probability('two-sided: the part that lies within ± k, such as 0.95'),
  }),
  outputs: { coverageFactors: 'k for each number of degrees of freedom, no unit' },
  formula: 'k with P(|T| ≤ k) = probability; P from the incomplete beta function at ν / (ν + t²)',
  source: 'JCGM 100:2008 table G.2; DLMF 8.17.22; ACM TOMS algorithm 708',
  compute: (input) =>
    accept({ coverageFactors: input.degreesOfFreedom.map((each) => studentTCoverageFactor(input.probability, each)) }),
});

const component = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.enum(['rectangular', 'triangular', 'arcsine']),
    halfWidth: notNegative('half the distance between the limits, in the unit of the readings'),
    degreesOfFreedom: degreesOfFreedom.optional(),
  }),
  z.strictObject({ kind: z.literal('resolution'), resolution: notNegative('one step of the display') }),
  z.strictObject({
    kind: z.literal('normal'),
    expanded: notNegative('an expanded uncertainty, as on a certificate'),
    coverageFactor: positive('the k it was stated with'),
    degreesOfFreedom: degreesOfFreedom.optional(),
  }),
]);

function lineOf(part: z.output<typeof component>): BudgetLine {
  const endless = Number.POSITIVE_INFINITY;
  switch (part.kind) {
    case 'resolution':
      return { name: part.kind, standardUncertainty: roundingOf(part.resolution), degreesOfFreedom: endless };
    case 'normal':
      return {
        name: part.kind,
        standardUncertainty: part.expanded / part.coverageFactor,
        degreesOfFreedom: part.degreesOfFreedom ?? endless,
      };
    default: {
      const spread = { rectangular, triangular, arcsine }[part.kind];
      return {
        name: part.kind,
        standardUncertainty: spread(part.halfWidth),
        degreesOfFreedom: part.degreesOfFreedom ?? endless,
      };
    }
  }
}

const budget = computation({
  name: 'budget',
  purpose: 'the uncertainty of a mean of readings with further components',
  input: z.strictObject({
    readings: z.array(z.number()).min(1).describe('in any one unit; a single one needs the pooled repeatability'),
    components: z.array(component).describe('in the same unit; infinitely many degrees of freedom unless given'),
    coverage: probability('such as 0.95'),
    pooled: z
      .strictObject({ standardDeviation: notNegative('of one reading'), degreesOfFreedom })
      .optional()
      .describe('a repeatability known from elsewhere, taken in place of the scatter of these readings'),
  }),
  outputs: {
    n: 'how many readings',
    mean: 'of the readings',
    typeA: 'standard uncertainty of the mean from scatter: s / √n',
    components: 'standard uncertainty of each component, in the order given',
    combined: 'combined standard uncertainty',
    effectiveDegreesOfFreedom: 'Welch and Satterthwaite, a real number; null means without limit',
    coverageFactor: 'Student’s t for that real number',
    expanded: 'k times the combined standard uncertainty',
  },
  formula: [
    'rectangular a/√3, triangular a/√6, arcsine a/√2, resolution δ/√12, normal U/k',
    'u² = Σ uᵢ²;  ν = u⁴ / Σ (uᵢ⁴ / νᵢ), not rounded down;  U = t(ν) · u',
  ].join('\n'),
  source: 'JCGM 100:2008 4.2, 4.3, 5.1.2, F.2.2.1, G.4.1',
  compute: ({ readings, components, coverage, pooled }) => {
    const n = readings.length;
    const scatter = pooled ? accept(pooled) : scatterOf(readings);
    if (!scatter.ok) return scatter;
    const typeA = scatter.value.standardDeviation / Math.sqrt(n);
    const typeB = components.map(lineOf);
    const lines = [
      { name: 'readings', standardUncertainty: typeA, degreesOfFreedom: scatter.value.degreesOfFreedom },
      ...typeB,
    ];
    return mapResult(combine(lines, coverage), (total) => ({
      n,
      mean: meanOf(readings),
      typeA,
      components: typeB.map((line) => line.standardUncertainty),
      combined: total.combined,
      effectiveDegreesOfFreedom: nullIfEndless(total.effectiveDegreesOfFreedom),
      coverageFactor: total.coverageFactor,
      expanded: total.expanded,
    }));
  },
});

function scatterOf(readings: readonly number[]) {
  if (readings.length < 2) {
    return refuse('repeatability-unknown', 'One reading and no pooled repeatability: how well it repeats is unknown.');
  }
  return mapResult(summarise(readings), ({ sampleStandardDeviation, n }) => ({
    standardDeviation: sampleStandardDeviation,
    degreesOfFreedom: n - 1,
  }));
}

const conformity = computation({
  name: 'conformity',
  purpose: 'in, tight, loose or too close to call, with the probability behind it',
  input: z.strictObject({
    value: number('what was measured'),
    standardUncertainty: positive('of the value'),
    lower: number('the lower limit; leave out where there is none').optional(),
    upper: number('the upper limit; leave out where there is none').optional(),
    target: number('what is aimed at; it must lie within the limits and does not change the verdict').optional(),
    guard: z.strictObject({
      multiple: notNegative(
        'guard band in standard uncertainties: 0 for the simple rule, 1.645 for ISO 14253-1, 2 for U',
      ),
    }),
  }),
  outputs: {
    probabilityBelow: 'that the true value lies below the lower limit',
    probabilityAbove: 'that it lies above the upper limit',
    probabilityConforming: 'that it lies within the limits',
    acceptance: 'the limits drawn in by the guard; null where nothing is left between them',
    simple: '"accept" within the limits, otherwise "reject"; a limit itself conforms',
    verdict: '"in", "tight" (proven below the lower limit), "loose" (proven above the upper) or "too close to call"',
    by: 'for tight and loose: how far beyond the limit',
    note: 'only where the acceptance interval is empty: what that means',
  },
  formula:
    'P = Φ((limit − value) / u) by the complementary error function; guard w = multiple · u;\nin: lower + w ≤ value ≤ upper − w; tight: value < lower − w; loose: value > upper + w',
  source: 'JCGM 106:2012 7, 8; ISO 14253-1:2017 5',
  compute: ({ value, standardUncertainty, lower, upper, target, guard }) => {
    if (target !== undefined && (target < (lower ?? target) || target > (upper ?? target))) {
      return refuse('target-outside', 'The target does not lie within the limits.');
    }
    const limits = { lower: lower ?? null, upper: upper ?? null };
    return mapResult(judgeConformity(value, standardUncertainty, limits, guard.multiple), ({ by, ...rest }) => ({
      ...rest,
      ...(by === null ? {} : { by }),
      ...(rest.acceptance
        ? {}
        : { note: 'The band is narrower than twice the guard: nothing can be proven in by this method.' }),
    }));
  },
});

const acceptance = computation({
  name: 'acceptance-risk',
  purpose: 'bad parts accepted and good parts turned away by a rule, over a whole process',
  input: z.strictObject({
    processMean: number('in any one unit'),
    processStandardDeviation: positive('of what is made'),
    measurementStandardUncertainty: positive('of the measurement'),
    lower: number('lower limit'),
    upper: number('upper limit'),
    acceptLower: number('lower end of what the rule accepts'),
    acceptUpper: number('upper end of what the rule accepts'),
  }),
  outputs: {
    processConforming: 'the part of the process within the limits',
    consumerRisk: 'the part of everything made that is outside the limits and accepted',
    producerRisk: 'the part of everything made that is within the limits and turned away',
  },
  formula: '∫ f(y) P(accepted | y) dy outside the limits, ∫ f(y) P(rejected | y) dy inside; both normal',
  source: 'JCGM 106:2012 9.5',
  compute: acceptanceRisk,
});

export const measurementComputations = [convert, summary, studentT, budget, conformity, acceptance];
