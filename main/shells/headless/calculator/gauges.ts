// The calculator's computations about gauges: components of variance, studies, method against method, charts.
import { z } from 'zod';
import { agreement } from '../../../../app/statistics/agreement.ts';
import { demingLine } from '../../../../app/statistics/deming.ts';
import { demingLineKnownErrors } from '../../../../app/statistics/deming-known-errors.ts';
import { type GaugeComponents, gaugeStudy } from '../../../../app/statistics/gauge-study.ts';
import { individualsChart } from '../../../../app/statistics/individuals-chart.ts';
import { varianceComponents } from '../../../../app/statistics/variance-components.ts';
import {
  computation,
  mapResult,
  name,
  notNegative,
  nullIfEndless,
  number,
  numbers,
  positive,
  probability,
} from './computation.ts';

const components = computation({
  name: 'variance-components',
  purpose: 'how much of a spread lies between groups and how much within them',
  input: z.strictObject({
    values: numbers('in any one unit'),
    groups: z.array(name).describe('the group of each value; groups may differ in size'),
  }),
  outputs: {
    sumOfSquaresBetween: 'between groups, unit squared; null where that is too large to write, 0 where too small',
    sumOfSquaresWithin: 'within groups, likewise',
    degreesOfFreedomBetween: 'groups − 1',
    degreesOfFreedomWithin: 'values − groups',
    f: 'mean square between over mean square within',
    p: 'how often chance alone gives at least this f',
    betweenVariance: 'component of variance between groups, unit squared, never below 0; null likewise',
    residualStandardDeviation: 'within groups, in the unit of the values',
  },
  formula:
    's²(between) = max(0, (MSB − MSW) / n₀), n₀ = (N − Σnᵢ²/N) / (k − 1); two passes, centred on the first value',
  source: 'JCGM 100:2008 H.5; S. Searle, Linear Models, 1971, 11.2',
  compute: ({ values, groups }) =>
    mapResult(varianceComponents(values, groups), (found) => ({
      ...found,
      sumOfSquaresBetween: nullIfEndless(found.sumOfSquaresBetween),
      sumOfSquaresWithin: nullIfEndless(found.sumOfSquaresWithin),
      betweenVariance: nullIfEndless(found.betweenVariance),
    })),
});

const study = computation({
  name: 'gauge-study',
  purpose: 'crossed repeatability and reproducibility of a gauge and the hands behind it',
  input: z.strictObject({
    rows: z
      .array(z.strictObject({ part: name, appraiser: name, trial: name, value: number('in any one unit') }))
      .describe('every appraiser measures every part the same number of times'),
    tolerance: positive('upper less lower limit, in the same unit').optional(),
    pooling: z
      .union([
        z.enum(['never', 'always']),
        z.strictObject({ above: probability('the p from which on they are pooled') }),
      ])
      .optional()
      .describe('when interaction and repeatability are taken together; {"above": 0.25} if left out'),
  }),
  outputs: {
    anova:
      'sumsOfSquares, degreesOfFreedom, meanSquares of part, appraiser, interaction, repeatability (and total); fInteraction and pInteraction, null where trials never differ; here and below a square is null where too large to write, 0 where too small',
    withInteraction:
      'variances, standardDeviations, percentStudyVariation (and percentTolerance) of repeatability, reproducibility, interaction, gauge, part, total; distinctCategories, not truncated, null where the gauge shows no variation',
    pooled: 'the same with the interaction pooled into the repeatability',
    chosen: 'the one of these two that the pooling rule takes',
    isPooled: 'which one that is',
    averageRange:
      'the same by averages and ranges, which cannot tell the interaction apart; null where the tables end (10 trials, 25 parts or appraisers)',
  },
  formula: [
    'σ²(repeatability) = MSE; σ²(interaction) = (MSI − MSE)/trials; σ²(appraiser) = (MSA − MSI)/(parts · trials);',
    'σ²(part) = (MSP − MSI)/(appraisers · trials); pooled: MSI and MSE together; below 0 is 0;',
    'distinct categories 1.41 σ(part)/σ(gauge)',
  ].join('\n'),
  source: 'AIAG Measurement Systems Analysis, 4th edition, III B',
  compute: ({ rows, pooling, tolerance }) =>
    mapResult(gaugeStudy(rows, pooling ?? { above: 0.25 }, tolerance ?? null), (found) => ({
      ...found,
      anova: {
        ...found.anova,
        sumsOfSquares: squaresOf(found.anova.sumsOfSquares),
        meanSquares: squaresOf(found.anova.meanSquares),
      },
      withInteraction: componentsOf(found.withInteraction),
      pooled: componentsOf(found.pooled),
      chosen: componentsOf(found.chosen),
      averageRange: found.averageRange && componentsOf(found.averageRange),
    })),
});

function componentsOf(components: GaugeComponents) {
  return { ...components, variances: squaresOf(components.variances) };
}

function squaresOf(squares: Readonly<Record<string, number>>) {
  return Object.fromEntries(Object.entries(squares).map(([name, square]) => [name, nullIfEndless(square)]));
}

const methods = computation({
  name: 'agreement',
  purpose: 'by how much two methods disagree on the same things',
  input: z.strictObject({
    a: numbers('by the one method, in any one unit'),
    b: numbers('by the other, in the same order and unit'),
  }),
  outputs: {
    n: 'pairs',
    bias: 'mean of a − b',
    standardDeviation: 'of the differences',
    biasInterval: '95 %, lower and upper',
    limits: 'lower and upper limit of agreement, bias ± 1.959964 standard deviations',
    lowerLimitInterval: '95 % of the lower limit',
    upperLimitInterval: '95 % of the upper limit',
  },
  formula: 'standard error of a limit s√(1/n + 1.959964²/(2(n − 1))); intervals by Student’s t with n − 1',
  source: 'J. Bland and D. Altman, Lancet i, 1986, 307, and Statistical Methods in Medical Research 8, 1999, 135',
  compute: ({ a, b }) => agreement(a, b),
});

const deming = computation({
  name: 'deming',
  purpose: 'a straight line through pairs when both carry an error',
  input: z.union([
    z.strictObject({
      x: numbers('any unit'),
      y: numbers('any unit'),
      varianceRatio: positive('variance of y’s error over that of x’s error; 1 is the orthogonal line'),
    }),
    z.strictObject({
      x: numbers('any unit'),
      y: numbers('any unit'),
      sx: z.array(notNegative('')).describe('standard deviation of each x'),
      sy: z.array(notNegative('')).describe('standard deviation of each y'),
    }),
  ]),
  outputs: {
    slope: 'y per x',
    intercept: 'y at x = 0',
    slopeStandardError: 'with known deviations only',
    interceptStandardError: 'with known deviations only',
    meanWeightedSquare:
      'with known deviations only: S/(n − 2), near 1 where they explain the scatter; null for two points',
  },
  formula: [
    'slope = (q + √(q² + 4λSxy²)) / 2Sxy, q = Syy − λSxx, λ the variance ratio;',
    'with known deviations the line of least Σ (y − a − bx)²/(sy² + b²sx²), its standard errors as stated, not scaled by the scatter',
  ].join('\n'),
  source:
    'W. Deming, Statistical Adjustment of Data, 1943; D. York and others, American Journal of Physics 72, 2004, 367',
  compute: (input) =>
    'varianceRatio' in input
      ? demingLine(input.x, input.y, input.varianceRatio)
      : demingLineKnownErrors(input.x, input.y, input.sx, input.sy),
});

const chart = computation({
  name: 'individuals-chart',
  purpose: 'which of a run of values fall outside what the others do',
  input: z.strictObject({ values: numbers('in the order they came, in any one unit') }),
  outputs: {
    mean: 'of the values',
    meanMovingRange: 'of neighbours',
    lower: 'lower control limit',
    upper: 'upper control limit',
    movingRangeUpper: 'upper control limit of the moving range',
    outside: 'places of the values outside, counted from 0',
  },
  formula: 'mean ± 3 · mean moving range / 1.128; 3.267 · mean moving range',
  source: 'NIST/SEMATECH e-Handbook 6.3.2.2',
  compute: ({ values }) => individualsChart(values),
});

export const gaugeComputations = [components, study, methods, deming, chart];
