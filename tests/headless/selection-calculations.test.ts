// The calculator's selection beyond its simplest forms: several kinds of adjuster, what to buy, a budget that ends.
import { describe, expect, it } from 'vitest';
import { ask } from './ask-calculator.ts';

const named = (name: string, ...thicknesses: number[]) =>
  thicknesses.map((thickness) => ({ id: `${name} ${thickness}`, thickness }));

describe('next-swaps with several kinds of adjuster', () => {
  // Steels of 70 and 70.5 and a ring of 74 in 240: 240 - 140.5 - 74 = 25.5; wanted 18 to 22.
  const pack = { space: 240, target: 20, lower: 18, upper: 22, standardUncertainty: 1 };
  const steels = { name: 'steels', current: named('in', 70, 70.5), bin: named('loose', 71) };
  const ring = { name: 'snap ring', current: named('ring', 74), bin: named('sold', 62, 80) };

  it('a ring replaces the ring, and a steel only a steel', () => {
    const found = ask('next-swaps', { groups: [steels, ring], ...pack });
    expect(found.status).toBe('Optimal');
    // 240 - 140.5 - 80 = 19.5; with the 71 for the 70.5 as well, 19. Only one steel is loose, so three cannot change.
    expect(found.options).toMatchObject([
      { changes: 0, clearance: 25.5 },
      { changes: 1, remove: ['ring 74'], add: ['sold 80'], clearance: 19.5, isNoBetter: false },
      { changes: 2, remove: ['in 70.5', 'ring 74'], add: ['loose 71', 'sold 80'], clearance: 19, isNoBetter: true },
    ]);
  });

  it('what to buy, from what is for sale in each group', () => {
    const without = { ...ring, bin: [], forSale: [62, 79, 86] };
    const found = ask('next-swaps', { groups: [{ ...steels, bin: [], forSale: [60] }, without], ...pack });
    // 240 - 140.5 - 79 = 20.5.
    expect(found).toMatchObject({
      status: 'Infeasible',
      blockedBy: 'upper limit',
      nearest: { changes: 0, clearance: 25.5, outsideBy: 3.5 },
      buy: { group: 'snap ring', thickness: 79, pieces: 1, changes: 1, remove: ['ring 74'], add: [], clearance: 20.5 },
    });
    const nothing = {
      groups: [
        { ...steels, bin: [], forSale: [60] },
        { ...ring, bin: [], forSale: [] },
      ],
      ...pack,
    };
    expect(ask('next-swaps', nothing)).toMatchObject({ status: 'Infeasible', buy: null });
  });

  it('a can gives as many as it holds', () => {
    const can = { ...steels, bin: [{ id: 'can', thickness: 72.5, count: 2 }] };
    // 240 - 145 - 74 = 21, and two of them are needed: one gives 23 or 23.5.
    expect(ask('next-swaps', { groups: [can, { ...ring, bin: [] }], ...pack })).toMatchObject({
      options: [{}, { clearance: 23 }, { add: ['can', 'can'], clearance: 21 }],
    });
  });

  it('the simple form says what to buy in the same words', () => {
    // 100 - 50 - 30 = 20; wanted 4 to 8: a 44 for the 30 leaves 6.
    const simple = {
      current: named('in', 50, 30),
      bin: named('loose', 31, 33),
      space: 100,
      target: 6,
      lower: 4,
      upper: 8,
      standardUncertainty: 1,
    };
    expect(ask('next-swaps', simple)).toMatchObject({
      status: 'Infeasible',
      blockedBy: 'upper limit',
      buy: { thickness: 44, pieces: 1, changes: 1, remove: ['in 30'], add: [], clearance: 6 },
    });
    expect(ask('next-swaps', { ...simple, target: 9 })).toMatchObject({ refusal: { code: 'target-outside' } });
    expect(ask('next-swaps', { ...simple, lower: 9 })).toMatchObject({ refusal: { code: 'limits-upside-down' } });
    expect(ask('next-swaps', { ...simple, space: 1e14 })).toMatchObject({ refusal: { code: 'out-of-range' } });
    expect(ask('next-swaps', { groups: [], ...pack })).toMatchObject({ refusal: { code: 'no-adjuster' } });
    expect(ask('next-swaps', { groups: [steels, steels], ...pack })).toMatchObject({
      refusal: { code: 'piece-twice' },
    });
  });
});

describe('next-swaps where the limits are finer than the plates', () => {
  // By hand: 2.6 − 1.8 = 0.8 is the nearest, and 2.6 − 0.745 = 1.855 would meet the target.
  const plates = {
    current: [{ id: 'a', thickness: 1.8 }],
    bin: [{ id: 'b', thickness: 1.9 }],
    space: 2.6,
    standardUncertainty: 0.02,
  };

  it('what lies outside is told to the last decimal, and what to buy is as fine as the limits', () => {
    expect(ask('next-swaps', { ...plates, target: 0.745, lower: 0.74, upper: 0.76 })).toMatchObject({
      status: 'Infeasible',
      nearest: { clearance: 0.8, outsideBy: 0.04 },
      buy: { thickness: 1.855, pieces: 1, remove: ['a'], add: [], clearance: 0.745 },
    });
    expect(ask('next-swaps', { ...plates, target: 0.75, lower: 0.75, upper: 0.75 })).toMatchObject({
      nearest: { clearance: 0.8, outsideBy: 0.05 },
      buy: { thickness: 1.85, clearance: 0.75 },
    });
    const whole = { current: named('in', 2), bin: named('loose', 3), space: 3, standardUncertainty: 0.02 };
    expect(ask('next-swaps', { ...whole, target: 0.4, lower: 0.3, upper: 0.45 })).toMatchObject({
      nearest: { clearance: 0, outsideBy: 0.3 },
      buy: { thickness: 2.6, clearance: 0.4 },
    });
  });

  it('limits of many decimals are no reason to refuse', () => {
    const found = ask('next-swaps', { ...plates, target: 0.75, lower: 0.7400000000001, upper: 0.76 });
    expect(found).toMatchObject({ nearest: { outsideBy: 0.04 }, buy: { thickness: 1.85, clearance: 0.75 } });
  });
});

describe('select-plates', () => {
  const pack = { space: 1000, plates: 2, thicknesses: [310, 400, 510], target: 200, lower: 195, upper: 205 };

  it('none of the one that fits: buy two of it', () => {
    expect(ask('select-plates', { ...pack, stock: [2, 0, 2] })).toMatchObject({
      status: 'Infeasible',
      blockedBy: 'between',
      buy: { thickness: 400, pieces: 2, isListed: true, counts: [0, 0, 0], clearance: 200 },
    });
    expect(ask('select-plates', { ...pack, stock: [2, 1, 2] })).toMatchObject({
      buy: { thickness: 400, pieces: 1, counts: [0, 1, 0] },
    });
  });

  it('refuses a target outside its limits, and what is absurdly large', () => {
    const stock = [1, 1, 1];
    expect(ask('select-plates', { ...pack, stock, target: 206 })).toMatchObject({
      refusal: { code: 'target-outside' },
    });
    expect(ask('select-plates', { ...pack, stock, space: 1e14 })).toMatchObject({ refusal: { code: 'bad-number' } });
    expect(ask('select-plates', { ...pack, stock: [1, 1, 1e14] })).toMatchObject({ refusal: { code: 'bad-count' } });
    expect(ask('select-plates', { ...pack, stock, thicknesses: [1, 2, 1e14] })).toMatchObject({
      refusal: { code: 'bad-height' },
    });
    expect(ask('select-plates', { ...pack, stock, space: 1e300 })).toMatchObject({ refusal: { code: 'input' } });
  });
});

describe('select-plates-jointly', () => {
  const pack = { space: 40, plates: 1, target: 10, lower: 5, upper: 15 };

  it('packs of several jobs: the job comes back, and what to buy for both', () => {
    const packs = [
      { job: '1041', ...pack },
      { job: '1042', ...pack },
    ];
    const shared = { thicknesses: [20, 30], packs, objective: 'sum' };
    expect(ask('select-plates-jointly', { ...shared, stock: [0, 2] })).toMatchObject({
      status: 'Optimal',
      packs: [
        { job: '1041', clearance: 10, counts: [0, 1] },
        { job: '1042', clearance: 10, counts: [0, 1] },
      ],
    });
    expect(ask('select-plates-jointly', { ...shared, stock: [5, 1] })).toMatchObject({
      status: 'Infeasible',
      blockedBy: 'jointly',
      nearest: { packs: [{ job: '1041' }, { job: '1042' }], outsideBy: 5 },
      buy: { thickness: 30, pieces: 1, isProvenFewest: true, packs: [{ job: '1041' }, { job: '1042' }] },
    });
  });

  it('a budget that ends leaves the best known and a bound below it; a larger one lies between', () => {
    // Cans by class that are never quite alike: nothing cheap settles it.
    const asked = {
      thicknesses: [821, 741, 700, 820, 859, 818, 779, 738, 819, 782, 739, 742, 822],
      stock: [3, 2, 1, 2, 3, 2, 1, 3, 1, 3, 1, 1, 1],
      packs: [
        { space: 5004, plates: 6, target: 383, lower: 283, upper: 483 },
        { space: 5182, plates: 6, target: 480, lower: 380, upper: 580 },
        { space: 5135, plates: 6, target: 305, lower: 205, upper: 405 },
      ],
      objective: 'sum',
    };
    const stopped = ask('select-plates-jointly', { ...asked, nodes: 0 });
    expect(stopped).toMatchObject({ status: 'BudgetExhausted', boundOn: 'sum', nodes: 0 });
    const { best, ...rest } = stopped as { best: { sum: number; packs: object[] }; bound: number };
    expect(rest).toMatchObject(best);
    expect(best.packs).toHaveLength(3);
    expect(best.sum).toBeGreaterThan(rest.bound);
    const settled = ask('select-plates-jointly', asked) as { status: string; sum: number };
    expect(settled.status).toBe('Optimal');
    expect(settled.sum).toBeGreaterThanOrEqual(rest.bound);
    expect(settled.sum).toBeLessThanOrEqual(best.sum);
    expect(ask('select-plates-jointly', { ...asked, nodes: -1 })).toMatchObject({ refusal: { code: 'input' } });
  });
});
