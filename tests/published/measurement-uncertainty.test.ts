// JCGM 100:2008 (GUM) and NIST StRD. Marks: [S] read in a public copy, [R] computed with reference software (R 4.2.2 or
// 40-digit mpmath), [M] published value quoted from memory.
import { describe, expect, it } from 'vitest';
import { fQuantile } from '../../app/statistics/f-distribution.ts';
import { studentTCoverageFactor } from '../../app/statistics/student-t.ts';
import { summarise } from '../../app/statistics/summary.ts';
import { arcsine, combine, rectangular, roundingOf, triangular } from '../../app/statistics/uncertainty-budget.ts';
import { expectAllRelative, expectRelative } from '../statistics/relative.ts';
import { accepted } from '../statistics/result.ts';

const endless = Number.POSITIVE_INFINITY;
const line = (standardUncertainty: number, degreesOfFreedom = endless) => ({
  name: 'a line',
  standardUncertainty,
  degreesOfFreedom,
});

describe('the Guide to the expression of uncertainty', () => {
  it('twenty temperatures scatter as in GUM 4.4.3 table 1', () => {
    // [M] data and published 100.14, 1.49, 0.33; [R]
    const temperatures = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11,
      101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const { mean, sampleStandardDeviation } = accepted(summarise(temperatures));
    expectRelative(mean, 100.145, 1e-14);
    expectRelative(sampleStandardDeviation, 1.4888444830595, 1e-12);
    expectRelative(sampleStandardDeviation / Math.sqrt(20), 0.33291574720467, 1e-12);
  });

  it('limits of 96 and 104 °C are worth what GUM 4.4.5 and 4.4.6 say', () => {
    // [M] published 2.3 and 1.6; [R]
    expectRelative(rectangular(4), 2.309401077, 1e-9);
    expectRelative(triangular(4), 1.632993162, 1e-9);
  });

  it('effective degrees of freedom agree with GUM G.4.1 and stay real', () => {
    // [M] published u 1.03 %, ν 19.0, U 2.2 %; [R]. Truncated to a whole number this ν would be 18.
    const total = accepted(combine([line(0.25, 9), line(0.57, 4), line(0.82, 14)], 0.95));
    expectRelative(total.combined, 1.02946588093, 1e-11);
    expectRelative(total.effectiveDegreesOfFreedom, 18.9987423143, 1e-11);
    expectRelative(total.coverageFactor, 2.0930334322, 1e-10);
    expect(Math.floor(total.effectiveDegreesOfFreedom)).toBe(18);
    expect(total.expanded).toBeCloseTo(2.2, 1);
  });

  it('the end gauge of GUM H.1 comes out at 32 nm, with 93 nm expanded', () => {
    // [S] inputs from GUM_H1 example code of a public metrology library; published uc 32, ν 16, k 2.92, U 93; [R]
    const comparison = accepted(combine([line(5.8, 24), line(3.9, 5), line(6.7, 8)], 0.99));
    expectRelative(comparison.combined, 9.68194195397, 1e-11);
    expectRelative(comparison.effectiveDegreesOfFreedom, 25.44725078, 1e-9);
    // Difference in expansion: −ls · θ̄ · u(δα), ± 1e-6 with 50; in temperature: −ls · αs · u(δθ), ± 0.05 with 2.
    const standard = 50_000_623;
    const expansion = line(standard * 0.1 * rectangular(1e-6), 50);
    const temperature = line(standard * 11.5e-6 * rectangular(0.05), 2);
    expectRelative(expansion.standardUncertainty, 2.88678731487, 1e-11);
    expectRelative(temperature.standardUncertainty, 16.5990270605, 1e-11);
    const total = accepted(
      combine(
        [line(25, 18), line(comparison.combined, comparison.effectiveDegreesOfFreedom), expansion, temperature],
        0.99,
      ),
    );
    expectRelative(total.combined, 31.663879111, 1e-10);
    expectRelative(total.effectiveDegreesOfFreedom, 16.75185574, 1e-9);
    expectRelative(total.coverageFactor, 2.90354763, 1e-8);
    expectRelative(total.expanded, 91.93758136, 1e-8);
    expectRelative(studentTCoverageFactor(0.99, 16) * total.combined, 92.4832762021, 1e-10);
  });

  it('a swing, a resolution and the F table agree with GUM H.1.3.4, F.2.2.1 and H.5', () => {
    // [M] published F0.95(9,40) 2.12 and F0.975(9,40) 2.45; [R]
    expectRelative(arcsine(0.5), 0.5 / Math.SQRT2, 1e-15);
    expectRelative(roundingOf(1), 0.288675134594813, 1e-14);
    expectRelative(fQuantile(0.95, 9, 40), 2.12402926402, 1e-11);
    expectRelative(fQuantile(0.975, 9, 40), 2.45193921703, 1e-11);
  });

  it('each line carries its share of the variance', () => {
    const total = accepted(combine([line(3), line(4)], 0.95));
    expect(total.combined).toBe(5);
    expectAllRelative(
      total.lines.map((each) => each.share),
      [9 / 25, 16 / 25],
      1e-15,
    );
  });
});

describe('coverage factors agree with GUM table G.2', () => {
  // [M] published to two decimals; [R] qt. Columns: 68.27, 90, 95, 95.45, 99, 99.73 %.
  const probabilities = [0.6827, 0.9, 0.95, 0.9545, 0.99, 0.9973];
  it.each([
    [1, [1.83740943, 6.31375151, 12.7062047, 13.9678115, 63.6567412, 235.783687]],
    [2, [1.32131546, 2.91998558, 4.30265273, 4.52655076, 9.9248432, 19.2060159]],
    [3, [1.19691256, 2.35336343, 3.18244631, 3.30682992, 5.84090931, 9.21870182]],
    [4, [1.14165499, 2.13184679, 2.77644511, 2.86931517, 4.60409487, 6.62007155]],
    [5, [1.11053339, 2.01504837, 2.57058184, 2.64865425, 4.03214298, 5.50698497]],
    [6, [1.09059491, 1.94318028, 2.44691185, 2.51652835, 3.70742802, 4.90398978]],
    [8, [1.06655314, 1.85954804, 2.30600414, 2.3664195, 3.35538733, 4.2765768]],
    [10, [1.05258648, 1.81246112, 2.22813885, 2.28368161, 3.16927267, 3.95688999]],
    [16, [1.03226492, 1.74588368, 2.1199053, 2.168943, 2.92078162, 3.54409186]],
    [19, [1.0270403, 1.72913281, 2.09302405, 2.14049663, 2.86093461, 3.44719981]],
    [20, [1.02565563, 1.72471824, 2.08596345, 2.13302836, 2.84533971, 3.42211857]],
    [30, [1.01696921, 1.69726089, 2.04227246, 2.08684705, 2.74999565, 3.2703048]],
    [50, [1.01012265, 1.67590503, 2.00855911, 2.05125078, 2.67779327, 3.15712132]],
    [100, [1.00504699, 1.66023433, 1.98397152, 2.02531165, 2.62589052, 3.0767309]],
    [endless, [1.00002171, 1.64485363, 1.95996398, 2.00000244, 2.5758293, 2.99997699]],
  ])('for %d degrees of freedom', (degreesOfFreedom, expected) => {
    expectAllRelative(
      probabilities.map((probability) => studentTCoverageFactor(probability, degreesOfFreedom)),
      expected,
      5e-9,
    );
  });
});

describe('NIST StRD univariate sets, certified', () => {
  // [S] copies of the certified files in public test suites.
  const alternating = (first: number, low: number, high: number) => [
    first,
    ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
  ];
  it.each([
    ['NumAcc1', [10000001, 10000003, 10000002], 10000002, 1, -0.5, 1e-12],
    ['NumAcc2', alternating(1.2, 1.1, 1.3), 1.2, 0.1, -0.999, 1e-12],
    ['NumAcc4', alternating(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, -0.999, 1e-7],
  ])('%s', (_, values, mean, deviation, autocorrelation, tolerance) => {
    const found = accepted(summarise(values));
    expectRelative(found.mean, mean, 1e-14);
    expectRelative(found.sampleStandardDeviation, deviation, tolerance);
    expectRelative(found.lag1Autocorrelation, autocorrelation, tolerance);
  });

  it('Mavro', () => {
    const values = [
      2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018, 2.0019,
      2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013, 2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014, 2.0013, 2.0014,
      2.0015, 2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022, 2.0023, 2.0024, 2.0025,
      2.0027, 2.0026, 2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024,
    ];
    const found = accepted(summarise(values));
    expectRelative(found.mean, 2.001856, 1e-14);
    expectRelative(found.sampleStandardDeviation, 0.000429123454003053, 1e-12);
    expectRelative(found.lag1Autocorrelation, 0.937989183438248, 1e-12);
  });
});
