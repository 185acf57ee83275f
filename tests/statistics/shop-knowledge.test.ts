// What a shop learns about its own readings: how well it repeats, and how its feeler differs from the air.
import { expect, test } from 'vitest';
import { feelerBias } from '../../app/readings/feeler-bias.ts';
import { shopRepeatability } from '../../app/readings/repeatability.ts';

const stated = { standardDeviation: 1.5, degreesOfFreedom: 50 };

test('the stated value holds until the shop’s own repeats carry twenty degrees of freedom', () => {
  expect(shopRepeatability(stated, { sumOfSquares: 0, degreesOfFreedom: 0 })).toEqual({ ...stated, from: 'stated' });
  expect(shopRepeatability(stated, { sumOfSquares: 76, degreesOfFreedom: 19 })).toEqual({ ...stated, from: 'stated' });
  // √(80 / 20) = 2
  expect(shopRepeatability(stated, { sumOfSquares: 80, degreesOfFreedom: 20 })).toEqual({
    standardDeviation: 2,
    degreesOfFreedom: 20,
    from: 'repeats',
  });
});

test('how many are enough can be said, but none never is', () => {
  expect(shopRepeatability(stated, { sumOfSquares: 4, degreesOfFreedom: 1 }, 1).standardDeviation).toBe(2);
  expect(shopRepeatability(stated, { sumOfSquares: 0, degreesOfFreedom: 0 }, 0).from).toBe('stated');
});

test('seven pairs give a count and nothing to apply', () => {
  expect(feelerBias([1, 2, 3, 1, 2, 3, 2])).toEqual({ applies: false, pairs: 7 });
  expect(feelerBias([])).toEqual({ applies: false, pairs: 0 });
});

test('eight pairs give a bias with its uncertainty', () => {
  // 1 1 1 1 3 3 3 3: mean 2, Σ d² = 8, s = √(8/7), s/√8 = 1/√7.
  const learned = feelerBias([1, 1, 1, 1, 3, 3, 3, 3]);
  expect(learned).toMatchObject({ applies: true, pairs: 8, bias: 2 });
  if (!learned.applies) throw new Error('eight are enough');
  expect(learned.standardDeviation).toBeCloseTo(Math.sqrt(8 / 7), 15);
  expect(learned.standardUncertainty).toBeCloseTo(1 / Math.sqrt(7), 15);
});
