// The calculator console, run as a person runs it. Numbers are published or hand arithmetic; tests/published has their
// sources.
import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { answer } from '../../main/shells/headless/calculator/computation.ts';
import { explain } from '../../main/shells/headless/calculator/explain.ts';
import { computations } from '../../main/shells/headless/calculator/registry.ts';
import { expectRelative } from '../statistics/relative.ts';

const script = new URL('../../main/shells/headless/calc.ts', import.meta.url).pathname;

function calc(words: readonly string[], input = '') {
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...words], { input, encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** What one computation answers, through the same door as the console but in this process. */
function ask(name: string, input: unknown) {
  const computation = computations.find((each) => each.name === name);
  if (!computation) throw new Error(`no computation is called ${name}`);
  const result = answer(computation, typeof input === 'string' ? input : JSON.stringify(input));
  return result.ok
    ? (JSON.parse(JSON.stringify(result.value)) as Record<string, unknown>)
    : { refusal: result.refusal };
}

const spots = (...reads: readonly (readonly [number, number])[]) =>
  reads.map(([push, air], i) => ({ degrees: 90 * i, reads: [{ push, air }] }));

const steels = {
  current: [
    { id: 's1', thickness: 77 },
    { id: 's2', thickness: 76.5 },
    { id: 's3', thickness: 78 },
    { id: 's4', thickness: 77.5 },
  ],
  bin: [74, 75.5, 78.5, 79.5, 80.5, 83].map((thickness) => ({ id: `b${thickness}`, thickness })),
  space: 341,
  target: 25,
  lower: 20,
  upper: 30,
  standardUncertainty: 1.6,
};

describe('the console', () => {
  it('answers with one JSON object and leaves with 0', () => {
    const { status, stdout, stderr } = calc(['convert'], '{"value":"0.0355","from":"in","to":"mm"}');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({ value: '0.9017' });
  });

  it('lists every name, one a line', () => {
    const { status, stdout } = calc(['list']);
    expect(status).toBe(0);
    const promised =
      'convert summary student-t budget clearance feeler conformity acceptance-risk gauge-study variance-components ' +
      'agreement deming individuals-chart gap select-plates next-swaps end-play kaplan-meier log-rank weibull cox ' +
      'fisher false-discovery piston-force torque-capacity engagement fill-and-drag';
    expect(stdout.trim().split('\n')).toEqual(expect.arrayContaining(promised.split(' ')));
  });

  it('explains inputs, units, outputs, formula and source', () => {
    const { status, stdout } = calc(['piston-force', '--explain']);
    expect(status).toBe(0);
    for (const said of [
      'pressure_Pa',
      'kg/m³',
      'netForce_N',
      'Formula',
      'Source',
      'spring_N, number: N, as installed',
    ]) {
      expect(stdout).toContain(said);
    }
    for (const computation of computations) {
      const text = explain(computation);
      for (const output of Object.keys(computation.outputs)) expect(text).toContain(`  ${output}: `);
      expect(text).not.toMatch(/undefined|anything|\[object/);
    }
  });

  it.each([
    ['an unknown name', ['clearence'], '{}', 'unknown-name'],
    ['no name', [], '', 'usage'],
    ['an option that is none', ['summary', '--verbose'], '{}', 'usage'],
    ['nothing on the input', ['summary'], '', 'not-json'],
    ['JSON that breaks off', ['summary'], '{"values":[1,2', 'not-json'],
    ['NaN', ['summary'], '{"values":[1,NaN]}', 'not-json'],
    ['a number too large for a double', ['summary'], '{"values":[1,1e999]}', 'input'],
    ['text for a number', ['summary'], '{"values":[1,"2"]}', 'input'],
    ['a list for an object', ['summary'], '[1,2]', 'input'],
    ['a field that is not asked for', ['summary'], '{"values":[1,2],"sigma":3}', 'input'],
    ['a field that is missing', ['conformity'], '{"value":1,"standardUncertainty":1,"lower":0}', 'input'],
    ['numbers that overflow', ['summary'], '{"values":[1e308,-1e308]}', 'out-of-range'],
  ])('refuses %s in one plain sentence and leaves with 2', (_, words, input, code) => {
    const { status, stdout, stderr } = calc(words, input);
    expect({ status, stderr }).toEqual({ status: 2, stderr: '' });
    expect(JSON.parse(stdout)).toEqual({ refusal: { code, message: expect.stringMatching(/^[^\n]+\.$/) } });
  });

  it('100,000 builds go through', () => {
    const time = Array.from({ length: 100_000 }, (_, i) => 1 + ((i * 7919) % 100_003));
    const event = time.map((_, i) => (i % 3 === 0 ? 1 : 0));
    const { status, stdout } = calc(['cox'], JSON.stringify({ time, event, x: time.map((_, i) => (i * 31) % 97) }));
    expect(status).toBe(0);
    expect(Math.abs(JSON.parse(stdout).z)).toBeLessThan(5);
  });
});

describe('measurement, as calculator.md names its fields', () => {
  it('summary', () => {
    expect(ask('summary', { values: [10000001, 10000003, 10000002] })).toEqual({
      n: 3,
      mean: 10000002,
      sampleStandardDeviation: 1,
      lag1Autocorrelation: -0.5,
    });
  });

  it('student-t, with endless degrees of freedom as a word', () => {
    const { coverageFactors } = ask('student-t', {
      degreesOfFreedom: [4, 18.9987423143, 'infinity'],
      probability: 0.95,
    });
    expect(coverageFactors).toEqual([
      expect.closeTo(2.77644511, 8),
      expect.closeTo(2.0930334322, 9),
      expect.closeTo(1.95996398, 8),
    ]);
  });

  it('budget, two of them', () => {
    const first = ask('budget', {
      readings: [0.81, 0.83, 0.82, 0.84, 0.8],
      components: [
        { kind: 'resolution', resolution: 0.01 },
        { kind: 'rectangular', halfWidth: 0.008 },
        { kind: 'normal', expanded: 0.006, coverageFactor: 2 },
        { kind: 'triangular', halfWidth: 0.003 },
      ],
      coverage: 0.95,
    });
    expect(first).toMatchObject({
      n: 5,
      mean: expect.closeTo(0.82, 12),
      typeA: expect.closeTo(0.007071067812, 11),
      components: [2.886751346e-3, 4.618802154e-3, 3e-3, 1.224744871e-3].map((each) => expect.closeTo(each, 11)),
      combined: expect.closeTo(0.009495613022, 11),
      effectiveDegreesOfFreedom: expect.closeTo(13.00804444, 7),
      coverageFactor: expect.closeTo(2.160232854, 8),
      expanded: expect.closeTo(0.02051273522, 10),
    });
    const second = ask('budget', {
      readings: [0.905, 0.912, 0.908],
      components: [
        { kind: 'rectangular', halfWidth: 0.005, degreesOfFreedom: 8 },
        { kind: 'resolution', resolution: 0.001 },
      ],
      coverage: 0.95,
    });
    expect(second).toMatchObject({
      effectiveDegreesOfFreedom: expect.closeTo(9.161381857, 8),
      expanded: expect.closeTo(0.007985366437, 11),
    });
  });

  it('budget: one reading and no repeatability is refused, a pooled one carries it', () => {
    const one = { readings: [27], components: [], coverage: 0.95 };
    expect(ask('budget', one)).toMatchObject({ refusal: { code: 'repeatability-unknown' } });
    const pooled = ask('budget', { ...one, pooled: { standardDeviation: 0.7, degreesOfFreedom: 'infinity' } });
    expect(pooled).toMatchObject({ n: 1, mean: 27, typeA: 0.7, effectiveDegreesOfFreedom: null });
    expect(ask('budget', { ...one, readings: [] })).toMatchObject({ refusal: { code: 'input' } });
    expect(ask('budget', { ...one, readings: [27, 27] })).toMatchObject({ refusal: { code: 'no-uncertainty' } });
  });

  it('clearance of four spots', () => {
    const found = ask('clearance', {
      spots: spots([5, 39], [5, 40], [6, 41], [5, 39]),
      repeatability: { standardDeviation: 0.7, degreesOfFreedom: 100 },
      handForce: 1,
      dial: { resolution: 1 },
    });
    expect(found).toMatchObject({
      spots: [44, 45, 47, 44].map((clearance, i) => ({ degrees: 90 * i, clearance })),
      mean: 45,
      min: 44,
      max: 47,
      uneven: 3,
      harmonic: { amplitude: expect.closeTo(1.581, 3), loosestAtDegrees: expect.closeTo(161.565, 3) },
      expanded: expect.closeTo(1.547, 3),
    });
    const budget = found.budget as { share: number }[];
    expectRelative(
      budget.reduce((sum, line) => sum + line.share, 0),
      1,
      1e-14,
    );
  });

  it('clearance: zeroed again, a single read, air only', () => {
    const one = (read: object) => ask('clearance', { spots: [{ reads: [read] }], dial: { resolution: 1 } });
    expect(one({ push: 5, air: 38, zeroedAgain: true })).toMatchObject({ mean: 38 });
    expect(one({ push: 4, air: 23 })).toMatchObject({
      mean: 27,
      harmonic: null,
      combined: null,
      expanded: null,
      note: expect.stringContaining('Repeatability unknown'),
    });
    expect(one({ air: 27 })).toMatchObject({ refusal: { code: 'air-only' } });
    expect(one({ push: -4, air: 27 })).toMatchObject({ refusal: { code: 'input' } });
  });

  it('feeler', () => {
    expect(ask('feeler', { goes: 41, stops: 42 })).toEqual({ value: 41.5, combined: expect.closeTo(0.288675, 6) });
    expect(ask('feeler', { goes: 42, stops: 41 })).toMatchObject({ refusal: { code: 'stops-before-it-goes' } });
  });

  it('conformity: in, tight by, loose by, too close, and a band too narrow to decide', () => {
    const judge = (value: number, standardUncertainty = 0.75) =>
      ask('conformity', { value, standardUncertainty, lower: 20, upper: 30, target: 25, guard: { multiple: 2 } });
    expect(judge(26)).toMatchObject({ verdict: 'in', simple: 'accept', acceptance: { lower: 21.5, upper: 28.5 } });
    expect(judge(26)).not.toHaveProperty('by');
    expect(judge(18)).toMatchObject({ verdict: 'tight', by: 2, simple: 'reject' });
    expect(judge(32)).toMatchObject({ verdict: 'loose', by: 2 });
    expect(judge(30.5)).toMatchObject({ verdict: 'too close to call', simple: 'reject' });
    expect(judge(25, 3)).toMatchObject({ acceptance: null, verdict: 'too close to call', note: expect.any(String) });
  });

  it('conformity: no limit, limits upside down, a target outside, no uncertainty', () => {
    const guard = { multiple: 2 };
    expect(ask('conformity', { value: 1, standardUncertainty: 1, guard })).toMatchObject({
      refusal: { code: 'no-limits' },
    });
    expect(ask('conformity', { value: 1, standardUncertainty: 1, lower: 2, upper: 1, guard })).toMatchObject({
      refusal: { code: 'limits-upside-down' },
    });
    expect(ask('conformity', { value: 1, standardUncertainty: 1, lower: 0, target: -1, guard })).toMatchObject({
      refusal: { code: 'target-outside' },
    });
    expect(ask('conformity', { value: 1, standardUncertainty: 0, lower: 0, guard })).toMatchObject({
      refusal: { code: 'input' },
    });
  });

  it('acceptance-risk', () => {
    const rule = {
      processMean: 1500,
      processStandardDeviation: 0.12,
      measurementStandardUncertainty: 0.04,
      lower: 1499.8,
      upper: 1500.2,
      acceptLower: 1499.82,
      acceptUpper: 1500.18,
    };
    expect(ask('acceptance-risk', rule)).toMatchObject({
      consumerRisk: expect.closeTo(0.00987829152, 11),
      producerRisk: expect.closeTo(0.06902651046, 11),
    });
    expect(ask('acceptance-risk', { ...rule, acceptUpper: 1499 })).toMatchObject({
      refusal: { code: 'empty-acceptance' },
    });
  });
});

describe('the bench', () => {
  it('gap: one mock-up, a candidate, a band', () => {
    const found = ask('gap', {
      pieces: [
        { id: 'rest', height: 802.5, standardUncertainty: 50 },
        { id: 'out', height: 76.5, standardUncertainty: 0.3 },
        { id: 'in', height: 83, standardUncertainty: 0.3 },
      ],
      sharedMicrometerUncertainty: 0.2,
      restack: 1,
      mockUps: [{ pieces: ['rest', 'out'], clearance: 32, standardUncertainty: 0.75 }],
      candidate: ['rest', 'in'],
      band: { lower: 20, upper: 30 },
    });
    expect(found).toMatchObject({
      gap: { mean: 911 },
      innovations: [null],
      prediction: { mean: 25.5, standardDeviation: expect.closeTo(Math.sqrt(2.7425), 12) },
    });
  });

  it('select-plates: the published pack, and one that cannot be', () => {
    const pack = {
      space: 11235,
      plates: 6,
      thicknesses: [1600, 1700, 1800, 1900, 2000, 2100],
      stock: [4, 4, 4, 4, 4, 4],
      target: 760,
      lower: 600,
      upper: 900,
    };
    const found = ask('select-plates', pack);
    expect(found).toMatchObject({ status: 'Optimal', clearance: 735, absoluteDeviation: 25, isListComplete: true });
    expect(found.optimalSets).toHaveLength(18);
    expect(ask('select-plates', { ...pack, stock: [0, 0, 0, 0, 0, 1] })).toMatchObject({ status: 'Infeasible' });
    expect(ask('select-plates', { ...pack, stock: [4] })).toMatchObject({ refusal: { code: 'length-mismatch' } });
  });

  it('next-swaps: what one swap buys, what two buy', () => {
    const found = ask('next-swaps', steels);
    expect(found.options).toMatchObject([
      { changes: 0, remove: [], add: [], clearance: 32 },
      { changes: 1, remove: ['s2'], add: ['b83'], clearance: 25.5, probabilityInBand: expect.closeTo(0.997249, 6) },
      { changes: 2, clearance: 25, equallyGood: 3 },
      { changes: 3, clearance: 25, isNoBetter: true },
      { changes: 4, clearance: 25, isNoBetter: true },
    ]);
    const twice = { ...steels, bin: [{ id: 's1', thickness: 74 }] };
    expect(ask('next-swaps', twice)).toMatchObject({ refusal: { code: 'piece-twice' } });
  });

  it('end-play in either form', () => {
    const washers = { thicknesses: [60, 66, 72, 78, 84], target: 18, lower: 10, upper: 24 };
    const expected = {
      options: [
        { thickness: 78, endPlay: 19, absoluteDeviation: 1 },
        { thickness: 84, endPlay: 13, absoluteDeviation: 5 },
      ],
    };
    expect(ask('end-play', { washerIn: 66, endPlay: 31, ...washers })).toEqual(expected);
    expect(ask('end-play', { gapWithoutShim: 97, ...washers })).toEqual(expected);
    expect(ask('end-play', { gapWithoutShim: 97, ...washers, thicknesses: [60] })).toMatchObject({
      refusal: { code: 'nothing-fits', message: expect.stringContaining('79') },
    });
  });
});

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
      expect(ask(name, { time: [1, 2], event: [0, 2] })).toMatchObject({ refusal: { code: 'input' } });
    }
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
