// Every computation of the calculator by the names of its fields. Numbers are published or hand arithmetic; tests/published
// has their sources.
import { describe, expect, it } from 'vitest';
import { expectRelative } from '../statistics/relative.ts';
import { ask } from './ask-calculator.ts';

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

describe('measurement, by the names of its fields', () => {
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

  it('clearance adds what was typed, not what a double makes of it', () => {
    const found = ask('clearance', {
      spots: [{ reads: [{ push: 0.1, air: 0.7 }] }, { reads: [{ push: 0.2, air: 0.7 }] }],
      dial: { resolution: 0.1 },
    });
    expect(found).toMatchObject({ spots: [{ clearance: 0.8 }, { clearance: 0.9 }], min: 0.8, max: 0.9, uneven: 0.1 });
  });

  it('feeler-bias: a count below eight pairs, a bias to take off from eight on', () => {
    const pairs = [1, 1, 1, 1, 3, 3, 3, 3].map((tenths) => ({ feeler: (40 + tenths) / 10, air: 4 }));
    expect(ask('feeler-bias', { pairs: pairs.slice(1) })).toEqual({
      n: 7,
      applies: false,
      bias: null,
      standardUncertainty: null,
      standardDeviation: null,
    });
    // 0.1 and 0.3, four each: mean 0.2, s = 0.1 √(8/7), s/√8 = 0.1/√7.
    const { bias, standardUncertainty, ...rest } = ask('feeler-bias', { pairs });
    expect(rest).toEqual({ n: 8, applies: true, standardDeviation: expect.closeTo(0.1 * Math.sqrt(8 / 7), 12) });
    const corrected = ask('feeler', { goes: 4.1, stops: 4.2, bias: { value: bias, standardUncertainty } });
    expect(corrected).toEqual({
      value: expect.closeTo(4.15 - 0.2, 12),
      combined: expect.closeTo(Math.sqrt(0.05 ** 2 / 3 + 0.01 / 7), 12),
    });
    expect(ask('feeler-bias', { pairs: [{ feeler: 1 }] })).toMatchObject({ refusal: { code: 'input' } });
  });

  it('pooled-repeatability: stated until the repeats carry enough, then the repeats', () => {
    const stated = { standardDeviation: 2, degreesOfFreedom: 'infinity' };
    // 1 3 | 5 5 8 by hand: 2 + 6 over 1 + 2 degrees of freedom.
    const repeats = [[1, 3], [5, 5, 8], [40]];
    expect(ask('pooled-repeatability', { repeats, stated })).toEqual({
      standardDeviation: 2,
      degreesOfFreedom: null,
      from: 'stated',
    });
    const own = { standardDeviation: expect.closeTo(Math.sqrt(8 / 3), 12), degreesOfFreedom: 3, from: 'repeats' };
    expect(ask('pooled-repeatability', { repeats, stated, enoughDegreesOfFreedom: 3 })).toEqual(own);
    expect(ask('pooled-repeatability', { repeats, stated, enoughDegreesOfFreedom: 4 })).toMatchObject({
      from: 'stated',
    });
    expect(ask('pooled-repeatability', { repeats })).toEqual(own);
    expect(ask('pooled-repeatability', { repeats: [[1], [2]] })).toMatchObject({
      refusal: { code: 'repeatability-unknown' },
    });
    const twenty = Array.from({ length: 20 }, () => [0, 2]);
    expect(ask('pooled-repeatability', { repeats: twenty, stated })).toEqual({
      standardDeviation: expect.closeTo(Math.SQRT2, 12),
      degreesOfFreedom: 20,
      from: 'repeats',
    });
  });

  it('convert knows no temperature below absolute zero, but differences of any size', () => {
    const convert = (value: string, from: string, to: string) => ask('convert', { value, from, to });
    expect(convert('-300', '°C', 'K')).toMatchObject({ refusal: { code: 'below-absolute-zero' } });
    expect(convert('-0.001', 'K', '°F')).toMatchObject({ refusal: { code: 'below-absolute-zero' } });
    expect(convert('-459.67', '°F', 'K')).toEqual({ value: '0' });
    expect(convert('-300', 'Δ°C', 'ΔK')).toEqual({ value: '-300' });
  });

  it('conformity: acceptance limits are the decimals they are, and never upside down', () => {
    const judge = (lower: number, upper: number, standardUncertainty: number, value = 1) =>
      ask('conformity', { value, standardUncertainty, lower, upper, guard: { multiple: 1 } });
    expect(judge(0.95, 1.05, 0.05)).toMatchObject({ acceptance: { lower: 1, upper: 1 }, verdict: 'in' });
    expect(judge(0.95, 1.05, 0.0500001)).toMatchObject({ acceptance: null, verdict: 'too close to call' });
    for (let thousandths = 1; thousandths <= 400; thousandths++) {
      const { acceptance } = judge((1000 - thousandths) / 1000, (1000 + thousandths) / 1000, thousandths / 1000);
      expect(acceptance).toEqual({ lower: 1, upper: 1 });
    }
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

  it('select-plates-jointly: the published two packs from one stock', () => {
    const shared = {
      thicknesses: [1700, 1800, 1900, 2000],
      stock: [2, 2, 1, 3],
      packs: [
        { space: 6410, plates: 3, target: 700, lower: 500, upper: 900 },
        { space: 6350, plates: 3, target: 760, lower: 500, upper: 900 },
      ],
    };
    const bySum = ask('select-plates-jointly', { ...shared, objective: 'sum' });
    expect(bySum).toMatchObject({ status: 'Optimal', sum: 20, packs: [{ clearance: 710 }, { clearance: 750 }] });
    expect(ask('select-plates-jointly', { ...shared, objective: 'largest' })).toMatchObject({ sum: 20, largest: 10 });
    const short = { ...shared, stock: [1, 1, 1, 1], objective: 'sum' };
    expect(ask('select-plates-jointly', short)).toMatchObject({ status: 'Infeasible', blockedBy: 'stock' });
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
