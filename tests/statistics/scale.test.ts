// No statistic may depend on the unit somebody happens to measure in, however small or large that makes the numbers.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feelerBias } from '../../app/readings/feeler-bias.ts';
import { repeatabilityOfRepeats } from '../../app/readings/repeatability.ts';
import { agreement } from '../../app/statistics/agreement.ts';
import { cox } from '../../app/statistics/cox.ts';
import { demingLine } from '../../app/statistics/deming.ts';
import { demingLineKnownErrors } from '../../app/statistics/deming-known-errors.ts';
import { gaugeStudy } from '../../app/statistics/gauge-study.ts';
import { individualsChart } from '../../app/statistics/individuals-chart.ts';
import { summarise } from '../../app/statistics/summary.ts';
import { varianceComponents } from '../../app/statistics/variance-components.ts';
import { expectRelative } from './relative.ts';
import { accepted } from './result.ts';

const reading = fc.integer({ min: -500, max: 500 });
const readings = fc.array(reading, { minLength: 6, maxLength: 20 });
/** The square of 1e155 is too large for a double, that of 1e-200 too small. */
const scale = fc.constantFrom(1e150, 1e-150, 1e155, 1e-200);
const times = (values: readonly number[], factor: number) => values.map((value) => value * factor);

describe('values in a unit that makes them tiny or huge', () => {
  it('have the same spread in that unit', () => {
    fc.assert(
      fc.property(readings, scale, (values, factor) => {
        fc.pre(new Set(values).size > 1);
        const plain = accepted(summarise(values));
        const scaled = accepted(summarise(times(values, factor)));
        expectRelative(scaled.sampleStandardDeviation, plain.sampleStandardDeviation * factor, 1e-12);
        expect(scaled.lag1Autocorrelation).toBeCloseTo(plain.lag1Autocorrelation!, 10);
        expectRelative(
          repeatabilityOfRepeats([times(values, factor), [7 * factor]])!.standardDeviation,
          plain.sampleStandardDeviation * factor,
          1e-12,
        );
        const learned = feelerBias(times([...values, ...values], factor));
        if (!learned.applies) throw new Error('twelve pairs are enough');
        expect(learned.standardDeviation).toBeGreaterThan(0);
        expect(learned.standardDeviation).toBeLessThan(2 * plain.sampleStandardDeviation * factor);
      }),
    );
  });

  it('agree as well, and make the same chart', () => {
    fc.assert(
      fc.property(readings, scale, (values, factor) => {
        fc.pre(new Set(values).size > 1);
        const zeros = values.map(() => 0);
        const plain = accepted(agreement(values, zeros));
        const scaled = accepted(agreement(times(values, factor), zeros));
        expectRelative(scaled.standardDeviation, plain.standardDeviation * factor, 1e-12);
        expectRelative(scaled.limits[1] - scaled.limits[0], (plain.limits[1] - plain.limits[0]) * factor, 1e-12);
        expectRelative(
          accepted(individualsChart(times(values, factor))).meanMovingRange,
          accepted(individualsChart(values)).meanMovingRange * factor,
          1e-12,
        );
      }),
    );
  });

  it('have the same components of variance', () => {
    fc.assert(
      fc.property(readings, scale, (values, factor) => {
        const groups = values.map((_, i) => i % 2);
        const result = varianceComponents(values, groups);
        fc.pre(result.ok);
        const plain = accepted(result);
        const scaled = accepted(varianceComponents(times(values, factor), groups));
        expect(scaled.f).toBeCloseTo(plain.f, 8);
        expect(scaled.p).toBeCloseTo(plain.p, 8);
        expectRelative(scaled.residualStandardDeviation, plain.residualStandardDeviation * factor, 1e-12);
      }),
    );
  });

  it('make the same gauge study', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 12, maxLength: 12 }), scale, (values, factor) => {
        const rows = (unit: number) =>
          values.map((value, i) => ({
            part: i % 3,
            appraiser: Math.floor(i / 3) % 2,
            trial: Math.floor(i / 6),
            value: value * unit,
          }));
        const result = gaugeStudy(rows(1), { above: 0.25 }, 100);
        fc.pre(result.ok);
        const plain = accepted(result);
        const scaled = accepted(gaugeStudy(rows(factor), { above: 0.25 }, 100 * factor));
        expect(scaled.anova.pInteraction ?? -1).toBeCloseTo(plain.anova.pInteraction ?? -1, 8);
        for (const [source, percent] of Object.entries(plain.chosen.percentStudyVariation)) {
          expect(scaled.chosen.percentStudyVariation).toHaveProperty(source, expect.closeTo(percent, 5));
        }
        expectRelative(scaled.chosen.percentTolerance!.total, plain.chosen.percentTolerance!.total, 1e-9);
        expectRelative(
          scaled.averageRange!.standardDeviations.total,
          plain.averageRange!.standardDeviations.total * factor,
          1e-9,
        );
      }),
    );
  });

  it('lie on the same line', () => {
    fc.assert(
      fc.property(readings, scale, (x, factor) => {
        fc.pre(new Set(x).size > 2);
        const y = x.map((each, i) => 20 + 2 * each + (i % 3));
        const errors = x.map((_, i) => 1 + (i % 2));
        const plain = accepted(demingLine(x, y, 2));
        const scaled = accepted(demingLine(times(x, factor), times(y, factor), 2));
        expectRelative(scaled.slope, plain.slope, 1e-12);
        expect(scaled.intercept / factor).toBeCloseTo(plain.intercept, 8);
        const known = accepted(demingLineKnownErrors(x, y, errors, errors));
        const far = accepted(
          demingLineKnownErrors(times(x, factor), times(y, factor), times(errors, factor), times(errors, factor)),
        );
        expectRelative(far.slope, known.slope, 1e-11);
        expectRelative(far.slopeStandardError, known.slopeStandardError, 1e-9);
        expectRelative(far.interceptStandardError, known.interceptStandardError * factor, 1e-9);
        expectRelative(far.meanWeightedSquare, known.meanWeightedSquare!, 1e-9);
      }),
    );
  });

  it('carry the same hazard, of which only the ratio may be out of reach', () => {
    const time = [1, 2, 3, 4, 5, 6, 7];
    const event = [1, 1, 0, 1, 1, 1, 0];
    const x = [1, 3, 2, 2, 3, 1, 2];
    const plain = accepted(cox({ time, event }, x, 'efron'));
    for (const factor of [1e150, 1e-150, 1e155, 1e-200]) {
      const scaled = accepted(cox({ time, event }, times(x, factor), 'efron'));
      expectRelative(scaled.coefficient, plain.coefficient / factor, 1e-9);
      expectRelative(scaled.standardError, plain.standardError / factor, 1e-9);
      expectRelative(scaled.p, plain.p, 1e-9);
      if (factor > 1) expect(scaled.hazardRatio).toBe(1);
      else expect(scaled).toMatchObject({ hazardRatio: null, hazardRatioInterval: [null, null] });
    }
  });

  it('have no sum of squares to write where its square is beyond a double, but a deviation all the same', () => {
    // 1 2 | 3 5 by hand: within 0.5 + 2, between 4 · 1.25²; F = 6.25 / 1.25 = 5.
    const huge = accepted(varianceComponents([1e155, 2e155, 3e155, 5e155], ['a', 'a', 'b', 'b']));
    expect(huge.sumOfSquaresWithin).toBe(Number.POSITIVE_INFINITY);
    expectRelative(huge.f, 5, 1e-13);
    expectRelative(huge.residualStandardDeviation, Math.sqrt(1.25) * 1e155, 1e-13);
  });
});
