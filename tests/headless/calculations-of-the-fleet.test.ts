// The calculator's computations about gauges, comebacks and the clutch, by the names of their fields.
import { describe, expect, it } from 'vitest';
import { ask } from './ask-calculator.ts';

describe('gauges, comebacks and the clutch', () => {
  it('variance-components and individuals-chart', () => {
    const values = [196.3052, 196.124, 196.189, 196.3042, 196.3825, 196.1669];
    expect(Object.keys(ask('variance-components', { values, groups: [1, 1, 1, 2, 2, 2] }))).toEqual([
      'sumOfSquaresBetween',
      'sumOfSquaresWithin',
      'degreesOfFreedomBetween',
      'degreesOfFreedomWithin',
      'f',
      'p',
      'betweenVariance',
      'residualStandardDeviation',
    ]);
    const chart = ask('individuals-chart', { values: [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1] });
    expect(chart).toMatchObject({ upper: expect.closeTo(55.80408983, 8), outside: [] });
  });

  it('gauge-study with its four tables', () => {
    const rows = [0, 1, 2].flatMap((part) =>
      ['A', 'B'].flatMap((appraiser) =>
        [1, 2].map((trial) => ({ part, appraiser, trial, value: part + (appraiser === 'A' ? 0.1 : 0) + trial / 50 })),
      ),
    );
    const found = ask('gauge-study', { rows, tolerance: 2, pooling: { above: 0.25 } });
    for (const table of ['withInteraction', 'pooled', 'chosen', 'averageRange']) {
      expect(found[table]).toMatchObject({
        variances: { interaction: 0, total: expect.any(Number) },
        standardDeviations: { gauge: expect.any(Number) },
        percentStudyVariation: { total: 100 },
        distinctCategories: expect.any(Number),
      });
    }
    expect(ask('gauge-study', { rows: rows.slice(1) })).toMatchObject({ refusal: { code: 'unbalanced' } });
  });

  it('agreement and deming, with and without known deviations', () => {
    expect(ask('agreement', { a: [1, 2, 3], b: [1.5, 1.75, 3.25] })).toMatchObject({
      n: 3,
      limits: [expect.any(Number), expect.any(Number)],
      lowerLimitInterval: [expect.any(Number), expect.any(Number)],
    });
    expect(ask('agreement', { a: [1, 2], b: [1] })).toMatchObject({ refusal: { code: 'different-lengths' } });
    const points = { x: [0, 1, 2], y: [1, 3, 5] };
    expect(ask('deming', { ...points, varianceRatio: 1 })).toEqual({ slope: 2, intercept: 1 });
    expect(ask('deming', { ...points, sx: [1, 1, 1], sy: [1, 1, 1] })).toMatchObject({
      slope: 2,
      slopeStandardError: expect.any(Number),
      interceptStandardError: expect.any(Number),
    });
  });

  it('kaplan-meier, log-rank, weibull and cox on the same few', () => {
    const data = { time: [6, 6, 6, 7, 10, 13, 16, 22, 23], event: [1, 1, 0, 1, 1, 0, 1, 1, 0] };
    expect(ask('kaplan-meier', data)).toMatchObject({ interval: 'log-log', steps: expect.any(Array) });
    const group = ['a', 'b', 'a', 'b', 'a', 'b', 'a', 'b', 'a'];
    expect(ask('log-rank', { ...data, group })).toMatchObject({
      degreesOfFreedom: 1,
      groups: [
        { name: 'a', n: 5 },
        { name: 'b', n: 4 },
      ],
    });
    expect(ask('weibull', data)).toMatchObject({ shapeInterval: [expect.any(Number), expect.any(Number)] });
    expect(ask('cox', { ...data, x: [1, 2, 1, 3, 2, 1, 2, 1, 3] })).toMatchObject({
      logLikelihood: [expect.any(Number), expect.any(Number)],
    });
    for (const name of ['kaplan-meier', 'weibull']) {
      expect(ask(name, { time: [1, 2], event: [0, 0] })).toMatchObject({ refusal: { code: 'no-events' } });
      expect(ask(name, { time: [1, 2], event: [0, 2] })).toEqual({
        refusal: { code: 'input', message: 'event[1] must be 0 or 1.' },
      });
    }
  });

  it('cox keeps its coefficient where only the ratio is beyond a number', () => {
    const data = { time: [1, 2, 3, 4, 5, 6], event: [1, 1, 0, 1, 1, 1], x: [1, 3, 2, 2, 3, 1] };
    const plain = ask('cox', data) as Record<string, number>;
    const fine = ask('cox', { ...data, x: data.x.map((each) => each / 100_000) });
    expect(fine).toMatchObject({
      hazardRatio: null,
      hazardRatioInterval: [null, null],
      p: expect.closeTo(plain.p!, 9),
    });
    expect((fine.coefficient as number) / plain.coefficient!).toBeCloseTo(100_000, 3);
  });

  it('components of variance keep their ratio and deviation where a square is beyond a number', () => {
    const found = ask('variance-components', { values: [1e155, 2e155, 3e155, 5e155], groups: [1, 1, 2, 2] });
    expect(found).toMatchObject({ sumOfSquaresWithin: null, betweenVariance: null, f: expect.closeTo(5, 12) });
    const rows = [0, 1, 2].flatMap((part) =>
      ['A', 'B'].flatMap((appraiser) =>
        [1, 2].map((trial) => ({ part, appraiser, trial, value: (part + trial / 50) * 1e155 })),
      ),
    );
    expect(ask('gauge-study', { rows })).toMatchObject({
      anova: { sumsOfSquares: { total: null } },
      chosen: { variances: { part: null }, percentStudyVariation: { total: 100 } },
    });
  });

  it('what is wanted of several kinds is said in full', () => {
    const message = (name: string, input: object) =>
      (ask(name, input) as { refusal: { message: string } }).refusal.message;
    expect(message('student-t', { degreesOfFreedom: ['many'], probability: 0.9 })).toBe(
      'degreesOfFreedom[0] must be a number or "infinity".',
    );
    expect(message('gauge-study', { rows: [], pooling: 'sometimes' })).toBe(
      'pooling must be "never" or "always" or an object.',
    );
  });

  it('fisher and false-discovery', () => {
    expect(
      ask('fisher', {
        table: [
          [3, 1],
          [1, 3],
        ],
      }),
    ).toMatchObject({
      pTwoSided: expect.closeTo(0.4857142857, 10),
      oddsRatio: expect.closeTo(6.408319658, 8),
    });
    expect(ask('fisher', { table: [[3, 1], [1]] })).toMatchObject({ refusal: { code: 'input' } });
    expect(ask('false-discovery', { p: [0.01, 0.02, 0.9], q: 0.05 })).toEqual({
      adjusted: [expect.closeTo(0.03, 12), expect.closeTo(0.03, 12), 0.9],
      rejected: 2,
    });
  });

  it('piston-force, torque-capacity, engagement, fill-and-drag', () => {
    const ring = { outerDiameter_m: 0.16, innerDiameter_m: 0.11 };
    expect(ask('piston-force', { pressure_Pa: 1e6, ...ring, spring_N: 900 })).toMatchObject({
      netForce_N: expect.closeTo(9702.875206, 5),
    });
    expect(ask('piston-force', { pressure_Pa: 1e6, ...ring, spring_N: 900, speed_rpm: 6000 })).toMatchObject({
      refusal: { code: 'fluid' },
    });
    expect(
      ask('torque-capacity', {
        theory: 'uniform wear',
        outerDiameter_m: 0.25,
        innerDiameter_m: 0.175,
        friction: 0.3,
        surfaces: 1,
        force_N: 4000,
      }),
    ).toMatchObject({ torque_Nm: expect.closeTo(127.5, 10) });
    expect(
      ask('engagement', {
        inertia1_kgm2: 0.25,
        inertia2_kgm2: 1.1,
        speed1_rpm: 5200,
        speed2_rpm: 3400,
        torque_Nm: 310,
        steelMass_kg: 1.25,
        specificHeat_J_kgK: 460,
      }),
    ).toMatchObject({ energy_J: expect.closeTo(3618.854947, 5) });
    // The invented unit’s Forward piston: 5 in outside, 3 in inside; 5.25 cm³ at 25.5 thou, 6.59 cm³ at 32.
    const thou = 0.0000254;
    const found = ask('fill-and-drag', {
      clearances_m: [25.5 * thou, 32 * thou],
      today_m: 32 * thou,
      pistonOuterDiameter_m: 0.127,
      pistonInnerDiameter_m: 0.0762,
      flow_m3_s: 1e-4,
    });
    expect(found.rows).toMatchObject([
      {
        fillVolume_m3: expect.closeTo(5.25e-6, 8),
        fillTime_s: expect.closeTo(0.0525, 4),
        dragRelativeToToday: expect.closeTo(32 / 25.5, 12),
      },
      { fillVolume_m3: expect.closeTo(6.59e-6, 8), dragRelativeToToday: 1 },
    ]);
  });
});
