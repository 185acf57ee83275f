// Agreement with a reference number, relative to its size.
import { expect } from 'vitest';

/** Fails, naming both numbers, unless `actual` lies within `tolerance` · |expected| of `expected`. */
export function expectRelative(actual: number | null | undefined, expected: number, tolerance: number): void {
  const difference = Math.abs((actual ?? Number.NaN) - expected);
  expect(difference <= tolerance * Math.abs(expected), `${actual} is not ${expected} within ${tolerance}`).toBe(true);
}

export function expectAllRelative(
  actual: readonly (number | null)[],
  expected: readonly number[],
  tolerance: number,
): void {
  expect(actual).toHaveLength(expected.length);
  expected.forEach((each, i) => {
    expectRelative(actual[i], each, tolerance);
  });
}
