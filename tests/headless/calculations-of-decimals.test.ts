// The bench's computations with the decimals people type, and at the ends of their ranges. Expected numbers by hand, or by mpmath where said.
import { describe, expect, it } from 'vitest';
import { expectRelative } from '../statistics/relative.ts';
import { ask } from './ask-calculator.ts';

const dial = { resolution: 1 };

describe('decimals come back as decimals', () => {
  it('clearance: 8.4 + 23.2 and 5.9 + 17.9 are 27.7 in the mean', () => {
    const spots = [{ reads: [{ push: 8.4, air: 23.2 }] }, { reads: [{ push: 5.9, air: 17.9 }] }];
    expect(ask('clearance', { spots, dial })).toMatchObject({ mean: 27.7, min: 23.8, max: 31.6, uneven: 7.8 });
  });

  it('clearance: repeats at one spot are their decimal mean', () => {
    const reads = [
      { push: 8.4, air: 23.2 },
      { push: 5.9, air: 17.9 },
    ];
    expect(ask('clearance', { spots: [{ reads }], dial })).toMatchObject({ mean: 27.7, spots: [{ clearance: 27.7 }] });
  });

  it.each([
    [0.1, 0.2, 0.05, 0.1],
    [0.3, 0.35, 0.1, 0.225],
    [8.4, 8.9, 0.3, 8.35],
  ])('feeler: between %d and %d less %d is %d', (goes, stops, bias, value) => {
    expect(ask('feeler', { goes, stops, bias: { value: bias, standardUncertainty: 0.01 } }).value).toBe(value);
  });

  it('feeler-bias: differences of 0.1 and 0.2 are 0.15 in the mean', () => {
    const pairs = Array.from({ length: 8 }, (_, i) => ({ feeler: i % 2 ? 0.8 : 0.9, air: 0.7 }));
    expect(ask('feeler-bias', { pairs }).bias).toBe(0.15);
  });

  it('conformity: 0.7 lies below 0.8 by 0.1, and 1.3 above 1.1 by 0.2', () => {
    const judge = (value: number, lower: number, upper: number) =>
      ask('conformity', { value, standardUncertainty: 0.01, lower, upper, guard: { multiple: 2 } });
    expect(judge(0.7, 0.8, 1)).toMatchObject({ verdict: 'tight', by: 0.1 });
    expect(judge(1.3, 0.8, 1.1)).toMatchObject({ verdict: 'loose', by: 0.2 });
  });

  it('budget: 31.6 and 23.8 are 27.7 in the mean', () => {
    expect(ask('budget', { readings: [31.6, 23.8], components: [], coverage: 0.95 }).mean).toBe(27.7);
  });
});

describe('the ends of ranges', () => {
  it('clearance: loosest at the mark is 0 degrees, not 360', () => {
    const spots = [21, 19, 17, 19].map((air, i) => ({ degrees: 90 * i, reads: [{ push: 4, air }] }));
    expect(ask('clearance', { spots, dial }).harmonic).toMatchObject({
      amplitude: expect.closeTo(2, 12),
      loosestAtDegrees: 0,
    });
  });

  it.each([
    // mpmath, 50 digits, of the doubles as they are.
    [0, 0.5, 0.5000000001, 3.52065355885514e-11],
    [1e-5, -1e-10, 1e-10, 7.97884560762971e-11],
    [0, -1e-300, 1e-300, 7.97884560802865e-301],
  ])('conformity: %d between %d and %d, a band far narrower than the uncertainty', (value, lower, upper, expected) => {
    const asked = { value, standardUncertainty: 1, lower, upper, guard: { multiple: 0 } };
    expectRelative(ask('conformity', asked).probabilityConforming as number, expected, 1e-12);
  });

  it('next-swaps: the chance of a very narrow band is its density times its width', () => {
    const plates = { current: [{ id: 'a', thickness: 2 }], bin: [], space: 3, standardUncertainty: 1 };
    const found = ask('next-swaps', { ...plates, target: 0.5, lower: 0.5, upper: 0.5000000001 });
    // mpmath, 50 digits, of the doubles as they are.
    const [{ probabilityInBand }] = found.options as [{ probabilityInBand: number }];
    expectRelative(probabilityInBand, 3.52065355903117e-11, 1e-12);
  });

  it('feeler: a bias larger than the gap is refused', () => {
    const asked = { goes: 0.1, stops: 0.2, bias: { value: 5, standardUncertainty: 0.1 } };
    expect(ask('feeler', asked)).toMatchObject({ refusal: { code: 'below-zero' } });
    expect(ask('feeler', { ...asked, bias: { value: 0.15, standardUncertainty: 0.1 } })).toMatchObject({ value: 0 });
  });

  it('end-play: a target outside its limits is refused', () => {
    const asked = { washerIn: 2, endPlay: 0.5, thicknesses: [2.2], lower: 0.4, upper: 0.5 };
    expect(ask('end-play', { ...asked, target: 0.3 })).toMatchObject({ refusal: { code: 'target-outside' } });
    expect(ask('end-play', { ...asked, target: 0.6 })).toMatchObject({ refusal: { code: 'target-outside' } });
    // A target on its limit is inside, and 2 + 0.5 − 2.1 = 0.4.
    expect(ask('end-play', { ...asked, thicknesses: [2.1], target: 0.4 })).toMatchObject({
      options: [{ endPlay: 0.4 }],
    });
  });

  it('fisher: below 1e-307 a chance is 0, never a sum of what is left of the doubles there', () => {
    // R 4.2.2: log10 of phyper(259999, 5e5, 5e5, 5e5, lower = FALSE) is −349.49.
    const table = [
      [260000, 240000],
      [240000, 260000],
    ];
    expect(ask('fisher', { table })).toMatchObject({ pTwoSided: 0, pLess: 1, pGreater: 0 });
    expect(ask('fisher', { table: table.toReversed() })).toMatchObject({ pTwoSided: 0, pLess: 0, pGreater: 1 });
  });
});
