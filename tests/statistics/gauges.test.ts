// What must hold of gauge statistics whatever the data, and what they refuse.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { agreement } from '../../app/statistics/agreement.ts';
import { demingLine } from '../../app/statistics/deming.ts';
import { demingLineKnownErrors } from '../../app/statistics/deming-known-errors.ts';
import { gaugeStudy } from '../../app/statistics/gauge-study.ts';
import { individualsChart } from '../../app/statistics/individuals-chart.ts';
import { meanOf, summarise } from '../../app/statistics/summary.ts';
import { varianceComponents } from '../../app/statistics/variance-components.ts';
import { expectRelative } from './relative.ts';
import { accepted, expectRefusal } from './result.ts';

const reading = fc.integer({ min: -500, max: 500 }).map((hundredths) => hundredths / 100);
const readings = fc.array(reading, { minLength: 2, maxLength: 30 });

const study = (
  parts: number,
  appraisers: number,
  trials: number,
  value: (part: number, appraiser: number, trial: number) => number,
) =>
  Array.from({ length: parts * appraisers * trials }, (_, i) => {
    const [part, appraiser, trial] = [
      i % parts,
      Math.floor(i / parts) % appraisers,
      Math.floor(i / (parts * appraisers)),
    ];
    return { part, appraiser, trial, value: value(part, appraiser, trial) };
  });

describe('a spread', () => {
  it('does not change with order or shift, and scales with the unit', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const spread = (each: readonly number[]) => accepted(summarise(each)).sampleStandardDeviation;
        expect(spread(values.toReversed())).toBeCloseTo(spread(values), 12);
        expect(spread(values.map((value) => value + 1e6))).toBeCloseTo(spread(values), 8);
        expect(spread(values.map((value) => value * 25.4))).toBeCloseTo(spread(values) * 25.4, 9);
      }),
    );
  });

  it('refuses one value and values that are none', () => {
    expectRefusal(summarise([5]), 'too-few');
    expectRefusal(summarise([1, Number.NaN]), 'not-finite');
    expect(accepted(summarise([5, 5, 5]))).toMatchObject({ sampleStandardDeviation: 0, lag1Autocorrelation: null });
  });
});

describe('components of variance', () => {
  it('sums of squares add up to the whole, with groups of any size', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const groups = values.map((_, i) => (i * i) % 3);
        const found = varianceComponents(values, groups);
        fc.pre(found.ok);
        const { sumOfSquaresBetween, sumOfSquaresWithin } = accepted(found);
        const whole = accepted(summarise(values)).sampleStandardDeviation ** 2 * (values.length - 1);
        expect(sumOfSquaresBetween + sumOfSquaresWithin).toBeCloseTo(whole, 8);
      }),
    );
  });

  it('refuses one group, no repeats, no spread within, and a group for every value but one', () => {
    expectRefusal(varianceComponents([1, 2, 3], ['a', 'a', 'a']), 'one-group');
    expectRefusal(varianceComponents([1, 2, 3], ['a', 'b', 'c']), 'no-repeats');
    expectRefusal(varianceComponents([1, 1, 2, 2], ['a', 'a', 'b', 'b']), 'zero-variance');
    expectRefusal(varianceComponents([1, 2, 3], ['a', 'b']), 'different-lengths');
    expectRefusal(varianceComponents([], []), 'one-group');
  });
});

describe('values count as the decimals they were typed as', () => {
  it('groups of one mean do not differ, and within them Σ d² is what it is by hand', () => {
    // Means 0.2, 0.2 and 0.2; 2 · 0.1² + 2 · 0.2².
    const found = accepted(varianceComponents([0.1, 0.3, 0.2, 0.2, 0.4, 0], ['a', 'a', 'b', 'b', 'c', 'c']));
    expect(found).toMatchObject({ sumOfSquaresBetween: 0, f: 0, p: 1, sumOfSquaresWithin: 0.1 });
  });

  it('0.8 − 0.7 and 0.9 − 0.8 are one difference', () => {
    expectRefusal(agreement([0.8, 0.9], [0.7, 0.8]), 'zero-variance');
  });

  it('a mean is the double nearest to the decimal one', () => {
    expect(accepted(summarise([31.6, 23.8])).mean).toBe(27.7);
    // Differences 0.1, 0.2, 0.3: the middle one.
    expect(accepted(agreement([0.8, 0.9, 1], [0.7, 0.7, 0.7])).bias).toBe(0.2);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -1e6, max: 1e6 }), { minLength: 1, maxLength: 20 }), (thousandths) => {
        const exact = thousandths.reduce((sum, each) => sum + each, 0) / (1000 * thousandths.length);
        expect(meanOf(thousandths.map((each) => each / 1000))).toBe(exact);
      }),
    );
  });
});

describe('a gauge study', () => {
  it('sums of squares add up to the whole, and no component is below zero', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 24, maxLength: 24 }), (values) => {
        const found = gaugeStudy(
          study(4, 3, 2, (part, appraiser, trial) => values[part + 4 * appraiser + 12 * trial]!),
          { above: 0.25 },
        );
        fc.pre(found.ok);
        const { anova, withInteraction, pooled } = accepted(found);
        const { part, appraiser, interaction, repeatability, total } = anova.sumsOfSquares;
        expect(part + appraiser + interaction + repeatability).toBeCloseTo(total, 8);
        for (const { variances } of [withInteraction, pooled]) {
          for (const variance of Object.values(variances)) expect(variance).toBeGreaterThanOrEqual(0);
          expectRelative(variances.total, variances.gauge + variances.part, 1e-12);
        }
      }),
    );
  });

  it('keeps its digits near 1e12', () => {
    const value = (part: number, appraiser: number, trial: number) =>
      part * 4 + appraiser * 2 + ((part * 3 + appraiser + trial) % 2);
    const plain = accepted(gaugeStudy(study(5, 3, 2, value), 'never'));
    const far = accepted(
      gaugeStudy(
        study(5, 3, 2, (...at) => 1e12 + value(...at)),
        'never',
      ),
    );
    expect(far.withInteraction).toEqual(plain.withInteraction);
  });

  it('a gauge that always shows the same for the same part has no categories to count', () => {
    const found = accepted(
      gaugeStudy(
        study(3, 2, 2, (part) => part),
        'never',
      ),
    );
    expect(found.anova).toMatchObject({ fInteraction: null, pInteraction: null });
    expect(found.withInteraction.distinctCategories).toBeNull();
  });

  it('refuses a study that is unbalanced, too small, repeated or without any spread', () => {
    const rows = study(3, 2, 2, (part, appraiser, trial) => part + appraiser * trial);
    expectRefusal(gaugeStudy(rows.slice(1), 'never'), 'unbalanced');
    expectRefusal(
      gaugeStudy(
        rows.filter((row) => row.part !== 0 || row.appraiser !== 0),
        'never',
      ),
      'unbalanced',
    );
    expectRefusal(
      gaugeStudy(
        rows.filter((row) => row.trial === 0),
        'never',
      ),
      'too-small',
    );
    expectRefusal(gaugeStudy([], 'never'), 'too-small');
    expectRefusal(gaugeStudy([...rows, rows[0]!], 'never'), 'trial-twice');
    expectRefusal(
      gaugeStudy(
        study(3, 2, 2, () => 7),
        'never',
      ),
      'zero-variance',
    );
  });

  it('average and range end where their tables end', () => {
    expect(
      accepted(
        gaugeStudy(
          study(26, 2, 2, (part, _, trial) => part + trial),
          'never',
        ),
      ).averageRange,
    ).toBeNull();
    expect(
      accepted(
        gaugeStudy(
          study(25, 2, 2, (part, _, trial) => part + trial),
          'never',
        ),
      ).averageRange,
    ).not.toBeNull();
  });
});

describe('lines and agreement', () => {
  it('swapping the two methods turns the signs and the line over', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(reading, reading), { minLength: 3, maxLength: 20 }), (pairs) => {
        const [a, b] = [pairs.map((pair) => pair[0]), pairs.map((pair) => pair[1])];
        const [straight, turned] = [agreement(a, b), agreement(b, a)];
        fc.pre(straight.ok);
        expect(accepted(turned).bias).toBeCloseTo(-accepted(straight).bias, 10);
        expect(accepted(turned).limits[0]).toBeCloseTo(-accepted(straight).limits[1], 9);
        const [line, back] = [demingLine(a, b, 2), demingLine(b, a, 1 / 2)];
        fc.pre(line.ok && back.ok && Math.abs(accepted(line).slope) > 1e-3);
        expectRelative(accepted(back).slope, 1 / accepted(line).slope, 1e-6);
      }),
    );
  });

  it('equal errors at every point give the same line either way', () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 4, maxLength: 20 }), (x) => {
        const y = x.map((each, i) => 3 + 0.8 * each + ((i % 3) - 1) / 50);
        fc.pre(new Set(x).size > 2);
        const plain = accepted(demingLine(x, y, 4));
        const known = accepted(
          demingLineKnownErrors(
            x,
            y,
            x.map(() => 0.1),
            x.map(() => 0.2),
          ),
        );
        expectRelative(known.slope, plain.slope, 1e-9);
        expect(known.intercept).toBeCloseTo(plain.intercept, 9);
      }),
    );
  });

  it('refuses too few points, points without a direction, and differences without a spread', () => {
    expectRefusal(demingLine([1], [2], 1), 'too-few');
    expectRefusal(demingLine([1, 1], [2, 2], 1), 'no-slope');
    expectRefusal(demingLine([1, 1], [2, 3], 1), 'no-slope');
    expectRefusal(demingLine([1, 2, 3], [1, 2], 1), 'different-lengths');
    expectRefusal(demingLineKnownErrors([1, 2], [1, 2], [0, 1], [0, 1]), 'not-positive');
    expectRefusal(agreement([1, 2, 3], [2, 3, 4]), 'zero-variance');
    expectRefusal(agreement([1], [2]), 'too-few');
    expectRefusal(agreement([1, 2], [2]), 'different-lengths');
  });

  it('two points make a line with known errors, and a level one is level', () => {
    expect(accepted(demingLineKnownErrors([0, 1], [1, 3], [1, 1], [1, 1]))).toMatchObject({ meanWeightedSquare: null });
    expect(accepted(demingLine([1, 2, 3], [5, 5, 5], 1))).toEqual({ slope: 0, intercept: 5 });
  });
});

describe('a chart of single values', () => {
  it('names the one that falls outside, counted from 0', () => {
    // By hand: moving ranges 1 1 1 1 8 8 1 1 1 1, mean 2.4; mean 1.182 ± 3 · 2.4/1.128 = 6.383; 9 is above 7.565.
    expect(accepted(individualsChart([0, 1, 0, 1, 1 - 0, 9, 1, 0, 1, 0, 1])).outside).toEqual([5]);
  });

  it('refuses one value, and values that never change', () => {
    expectRefusal(individualsChart([4]), 'too-few');
    expectRefusal(individualsChart([4, 4, 4]), 'zero-variance');
  });
});
