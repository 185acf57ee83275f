// One build among the others: a dot each, inside the strip, the limits only where they are near.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { unitWords } from '../../app/charts/amounts.ts';
import { placeStrip } from '../../app/charts/place-strip.ts';
import type { Circle } from '../../app/charts/shapes.ts';

const words = unitWords('thou');
const thou = 25_400;
const size = { width: 320, height: 44, medium: 'screen' } as const;
const thous = (...values: number[]) => values.map((value) => value * thou);

function strip(amount: number, others: readonly number[], low: number | null = 20, high: number | null = 30) {
  const limits = { low: low === null ? null : low * thou, high: high === null ? null : high * thou };
  return placeStrip({ amount: amount * thou, others: thous(...others), limits }, words, size);
}

const dots = (chart: ReturnType<typeof strip>) =>
  chart.shapes.filter((shape): shape is Circle => shape.kind === 'circle' && shape.depicts === 'reading');
const limits = (chart: ReturnType<typeof strip>) =>
  chart.shapes.filter((each) => each.kind === 'line' && each.depicts === 'limit');

describe('the place of a build among the others', () => {
  it('says in words what it draws', () => {
    expect(strip(21, [24, 25, 26]).title).toBe('21.0 beside 3 other builds from 24.0 to 26.0, limits 20 and 30.');
    expect(strip(21, [24], null, null).title).toBe('21.0 beside 1 other build from 24.0 to 24.0, no limits.');
  });

  it('draws a dot for each of the others, all within the strip', () => {
    const thousand = fc.array(fc.double({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 400 });
    fc.assert(
      fc.property(thousand, fc.double({ min: 0, max: 100, noNaN: true }), (others, amount) => {
        const drawn = dots(strip(amount, others));
        expect(drawn).toHaveLength(others.length);
        for (const { x, y, radius } of drawn) {
          expect(x - radius).toBeGreaterThanOrEqual(0);
          expect(x + radius).toBeLessThanOrEqual(size.width);
          expect(y - radius).toBeGreaterThanOrEqual(0);
          expect(y + radius).toBeLessThanOrEqual(size.height);
        }
      }),
    );
  });

  it('leaves out a limit that lies far from every build', () => {
    expect(limits(strip(24, [22, 25, 28]))).toHaveLength(2);
    expect(limits(strip(24, [22, 25, 28], 0, 30))).toHaveLength(1);
    expect(limits(strip(24, [22, 25, 28], null, null))).toHaveLength(0);
  });

  it('draws builds that are all alike in the middle', () => {
    expect(new Set(dots(strip(25, [25, 25], null, null)).map(({ x }) => Math.round(x / 10)))).toEqual(new Set([16]));
  });
});
