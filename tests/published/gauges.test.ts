// Gauge studies and method comparison. [S] read in a public copy, [R] computed with R 4.2.2 or mpmath, [M] published value
// quoted from memory.
import { describe, expect, it } from 'vitest';
import { agreement } from '../../app/statistics/agreement.ts';
import { demingLine } from '../../app/statistics/deming.ts';
import { demingLineKnownErrors } from '../../app/statistics/deming-known-errors.ts';
import { type GaugeComponents, gaugeStudy, sourcesOfVariation } from '../../app/statistics/gauge-study.ts';
import { individualsChart } from '../../app/statistics/individuals-chart.ts';
import { varianceComponents } from '../../app/statistics/variance-components.ts';
import { expectAllRelative, expectRelative } from '../statistics/relative.ts';
import { accepted } from '../statistics/result.ts';

describe('NIST StRD one-way analysis of variance, certified', () => {
  it('SiRstv: five instruments', () => {
    // [S] files shipped with a public numerical library’s tests
    const values = [
      196.3052, 196.124, 196.189, 196.2569, 196.3403, 196.3042, 196.3825, 196.1669, 196.3257, 196.0422, 196.1303,
      196.2005, 196.2889, 196.0343, 196.1811, 196.2795, 196.1748, 196.1494, 196.1485, 195.9885, 196.2119, 196.1051,
      196.185, 196.0052, 196.209,
    ];
    const found = accepted(
      varianceComponents(
        values,
        values.map((_, i) => Math.floor(i / 5)),
      ),
    );
    expectRelative(found.sumOfSquaresBetween, 5.11462616e-2, 1e-10);
    expectRelative(found.sumOfSquaresWithin, 2.1663656e-1, 1e-10);
    expectRelative(found.f, 1.18046237440255, 1e-10);
    expectRelative(found.residualStandardDeviation, 1.04076068334656e-1, 1e-10);
    expect(found).toMatchObject({ degreesOfFreedomBetween: 4, degreesOfFreedomWithin: 20 });
  });

  it.each([
    ['SmLs01, near 1', 1, 1e-9],
    ['SmLs04, near a million', 1e6, 1e-7],
    ['SmLs07, near 1e12 with a spread of 0.1', 1e12, 1e-2],
  ])('%s', (_, base, tolerance) => {
    // [S] rule checked against the files: treatment i is base + tᵢ/10 and ten pairs a tenth below and above it.
    const offsets = [4, 3, 5, 3, 5, 3, 5, 3, 5];
    const values = offsets.flatMap((tenths) => [
      base + tenths / 10,
      ...Array.from({ length: 10 }, () => [base + (tenths - 1) / 10, base + (tenths + 1) / 10]).flat(),
    ]);
    const found = accepted(
      varianceComponents(
        values,
        values.map((_, i) => Math.floor(i / 21)),
      ),
    );
    expectRelative(found.f, 21, tolerance);
    expectRelative(found.sumOfSquaresBetween, 1.68, tolerance);
    expectRelative(found.sumOfSquaresWithin, 1.8, tolerance);
    expectRelative(found.residualStandardDeviation, 0.1, tolerance);
  });

  it('ten days of five voltages, GUM H.5', () => {
    // [M] day means and within-day deviations; [R]. Five values a day with exactly that mean and deviation.
    const means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41];
    const deviations = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86];
    const pattern = [-Math.SQRT2, -Math.SQRT1_2, 0, Math.SQRT1_2, Math.SQRT2].map((each) => each * Math.sqrt(4 / 5));
    const values = means.flatMap((mean, i) => pattern.map((each) => mean + each * deviations[i]!));
    const found = accepted(
      varianceComponents(
        values,
        values.map((_, i) => Math.floor(i / 5)),
      ),
    );
    expectRelative(found.f, 2.26151926997, 1e-10);
    expectRelative(Math.sqrt(found.betweenVariance), 42.6386105673, 1e-10);
  });
});

// [S] AIAG Measurement Systems Analysis, 4th edition: 10 parts, 3 appraisers, 3 trials; several public copies agree.
const study = {
  A1: [0.29, -0.56, 1.34, 0.47, -0.8, 0.02, 0.59, -0.31, 2.26, -1.36],
  A2: [0.41, -0.68, 1.17, 0.5, -0.92, -0.11, 0.75, -0.2, 1.99, -1.25],
  A3: [0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31],
  B1: [0.08, -0.47, 1.19, 0.01, -0.56, -0.2, 0.47, -0.63, 1.8, -1.68],
  B2: [0.25, -1.22, 0.94, 1.03, -1.2, 0.22, 0.55, 0.08, 2.12, -1.62],
  B3: [0.07, -0.68, 1.34, 0.2, -1.28, 0.06, 0.83, -0.34, 2.19, -1.5],
  C1: [0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49],
  C2: [-0.11, -1.13, 1.09, 0.2, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77],
  C3: [-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16],
};
const rows = Object.entries(study).flatMap(([who, values]) =>
  values.map((value, part) => ({ part: part + 1, appraiser: who[0]!, trial: Number(who[1]), value })),
);

const inOrder = (components: GaugeComponents, of: 'variances' | 'standardDeviations' | 'percentStudyVariation') =>
  sourcesOfVariation.map((source) => components[of][source]);

describe('the AIAG study', () => {
  const found = accepted(gaugeStudy(rows, { above: 0.25 }));

  it('analysis of variance', () => {
    // [M] published sums of squares 88.3619, 3.1673, 0.3590, 2.7589; [R]
    const { sumsOfSquares, degreesOfFreedom, meanSquares, fInteraction, pInteraction } = found.anova;
    expectRelative(sumsOfSquares.part, 88.36193444, 1e-9);
    expectRelative(sumsOfSquares.appraiser, 3.167262222, 1e-9);
    expectRelative(sumsOfSquares.interaction, 0.3589822222, 1e-9);
    expectRelative(sumsOfSquares.repeatability, 2.758933333, 1e-9);
    expectRelative(sumsOfSquares.total, 94.64711222, 1e-9);
    expect(degreesOfFreedom).toEqual({ part: 9, appraiser: 2, interaction: 18, repeatability: 60, total: 89 });
    expectRelative(meanSquares.interaction, 0.01994345679, 1e-9);
    expectRelative(fInteraction, 0.4337210301, 1e-9);
    expectRelative(pInteraction, 0.9741064043, 1e-9);
  });

  it('components with the interaction pooled and not', () => {
    // [M] published σ 0.199933, 0.226838, 0, 0.302373, 1.042327, 1.085; [R]
    expectAllRelative(
      inOrder(found.pooled, 'standardDeviations'),
      [0.1999331797, 0.2268375215, 0, 0.3023715223, 1.042327494, 1.085299563],
      1e-9,
    );
    expectAllRelative(
      inOrder(found.pooled, 'variances'),
      [0.03997327635, 0.05145526116, 0, 0.09142853751, 1.086446604, 1.177875142],
      1e-9,
    );
    expectAllRelative(
      inOrder(found.pooled, 'percentStudyVariation'),
      [18.42193497, 20.90091337, 0, 27.86065088, 96.0405338, 100],
      1e-9,
    );
    expectAllRelative(
      inOrder(found.withInteraction, 'standardDeviations'),
      [0.2144346572, 0.2283044498, 0, 0.313217407, 1.043394527, 1.089393081],
      1e-9,
    );
    expectAllRelative(
      inOrder(found.withInteraction, 'percentStudyVariation'),
      [19.68386444, 20.95703139, 0, 28.75155098, 95.77759819, 100],
      1e-9,
    );
    expectRelative(found.pooled.distinctCategories, 4.860516477, 1e-9);
  });

  it('the pooling rule decides which one is taken', () => {
    expect(found.isPooled).toBe(true);
    expect(found.chosen).toEqual(found.pooled);
    expect(accepted(gaugeStudy(rows, 'never')).chosen).toEqual(found.withInteraction);
    expect(accepted(gaugeStudy(rows, { above: 0.98 })).isPooled).toBe(false);
  });

  it('average and range', () => {
    // [S] published EV 0.2019, AV 0.2297, GRR 0.3058, PV 1.1046, TV 1.1461, 5 categories; [R] with K 0.5908, 0.5231, 0.3146
    const { averageRange } = found;
    expectAllRelative(
      inOrder(averageRange!, 'standardDeviations'),
      [0.2018566667, 0.2296670291, 0, 0.3057663457, 1.104595556, 1.146134547],
      1e-9,
    );
    expectAllRelative(
      inOrder(averageRange!, 'percentStudyVariation'),
      [17.61195204, 20.03840035, 0, 26.67804984, 96.37573168, 100],
      1e-9,
    );
    expectRelative(averageRange?.distinctCategories, 5.093692473, 1e-9);
  });
});

describe('method against method', () => {
  it('Bland and Altman’s peak flow meters', () => {
    // [S] data (17 subjects, first readings); [M] published bias −2.1, SD 38.8, interval −22.0 to 17.8; [R]
    const wright = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
    const mini = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];
    const found = accepted(agreement(wright, mini));
    expectRelative(found.bias, -2.117647059, 1e-9);
    expectRelative(found.standardDeviation, 38.76512987, 1e-9);
    expectAllRelative(found.limits, [-78.09590547, 73.86061135], 1e-9);
    expectAllRelative(found.biasInterval, [-22.0488377, 17.81354358], 1e-9);
    expectAllRelative(found.lowerLimitInterval, [-112.8515531, -43.34025779], 1e-9);
    expectAllRelative(found.upperLimitInterval, [39.10496368, 108.616259], 1e-9);
  });

  const pearson = {
    x: [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4],
    y: [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5],
  };

  it('Pearson’s orthogonal line of 1901', () => {
    // [M] data and published 5.784 − 0.5456 x; [R]
    const found = accepted(demingLine(pearson.x, pearson.y, 1));
    expectRelative(found.slope, -0.5455611975, 1e-9);
    expectRelative(found.intercept, 5.784043775, 1e-9);
  });

  it('Pearson’s data with York’s weights', () => {
    // [S] a public test file gives 5.47991022403286 and −0.48053340744620; [R]
    const deviation = (weights: number[]) => weights.map((weight) => 1 / Math.sqrt(weight));
    const found = accepted(
      demingLineKnownErrors(
        pearson.x,
        pearson.y,
        deviation([1000, 1000, 500, 800, 200, 80, 60, 20, 1.8, 1]),
        deviation([1, 1.8, 4, 8, 20, 20, 70, 70, 100, 500]),
      ),
    );
    expectRelative(found.slope, -0.4805334074462, 1e-11);
    expectRelative(found.intercept, 5.4799102240329, 1e-11);
    expectRelative(found.slopeStandardError, 0.057985009, 1e-8);
    expectRelative(found.interceptStandardError, 0.2949707355, 1e-9);
    expectRelative(found.meanWeightedSquare, 1.483294149, 1e-9);
  });

  it('Ripley and Thompson’s arsenate', () => {
    // [S] data and published 0.106448 + 0.973000 x; [R]
    const x = [
      8.71, 7.01, 3.28, 5.6, 1.55, 1.75, 0.73, 3.66, 0.9, 9.39, 4.39, 3.69, 0.34, 1.94, 2.07, 1.38, 1.81, 1.27, 0.82,
      1.88, 5.66, 0, 0, 0.4, 0, 1.98, 10.21, 4.64, 5.66, 19.25,
    ];
    const sx = [
      1.92, 1.56, 0.76, 1.26, 0.39, 0.43, 0.22, 0.84, 0.25, 2.07, 1, 0.84, 0.13, 0.47, 0.5, 0.36, 0.45, 0.33, 0.23,
      0.46, 1.27, 0.06, 0.06, 0.15, 0.06, 0.48, 2.24, 1.05, 1.27, 4.18,
    ];
    const y = [
      7.35, 7.92, 3.4, 5.44, 2.07, 2.29, 0.66, 3.43, 1.25, 6.58, 3.31, 2.72, 2.32, 1.5, 3.5, 1.17, 2.31, 1.88, 0.44,
      1.37, 7.04, 0, 0.49, 1.29, 0.37, 2.16, 12.53, 3.9, 4.66, 15.86,
    ];
    const sy = [
      2.07, 2.23, 0.96, 1.53, 0.59, 0.65, 0.19, 0.97, 0.36, 1.85, 0.93, 0.77, 0.66, 0.43, 0.99, 0.33, 0.66, 0.54, 0.13,
      0.4, 1.98, 0.01, 0.15, 0.37, 0.12, 0.62, 3.51, 1.1, 1.31, 4.45,
    ];
    const found = accepted(demingLineKnownErrors(x, y, sx, sy));
    expectRelative(found.slope, 0.972987806, 1e-8);
    expectRelative(found.intercept, 0.1064482745, 1e-8);
    expectRelative(found.slopeStandardError, 0.07661611312, 1e-8);
    expectRelative(found.interceptStandardError, 0.04819371215, 1e-8);
    expectRelative(found.meanWeightedSquare, 1.358378665, 1e-8);
    const plain = accepted(demingLine(x, y, 1));
    expectRelative(plain.slope, 0.8759481421, 1e-9);
    expectRelative(plain.intercept, 0.429399427, 1e-9);
  });
});

describe('a chart of single values', () => {
  it('NIST/SEMATECH 6.3.2.2: flow rate', () => {
    // [S] published mean 50.81, moving range 1.8778, limits 45.8159 and 55.8041; [R]
    const found = accepted(individualsChart([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]));
    expectRelative(found.mean, 50.81, 1e-12);
    expectRelative(found.meanMovingRange, 1.877777778, 1e-9);
    expectAllRelative([found.lower, found.upper], [45.81591017, 55.80408983], 1e-9);
    expectRelative(found.movingRangeUpper, 6.1347, 1e-12);
    expect(found.outside).toEqual([]);
  });
});
