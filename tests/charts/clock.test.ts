import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import { type ClockFacts, clock } from '../../app/charts/clock.ts';
import type { Circle, Depicts, Path, Shape } from '../../app/charts/shapes.ts';
import { overhangs, overlaps, textsOf, thou } from './example-unit.ts';

const words = lengthWords('thou');
const spots = (...values: readonly number[]) =>
  values.map((value, index) => ({ degrees: index * 90, value: thou(value) }));

/** Forward as found: 31, 32, 33, 32; mean 32.0, tilt 1.0, loosest at 180°. */
const forward: ClockFacts = {
  limits: { low: thou(20), high: thou(30) },
  target: thou(25),
  readings: spots(31, 32, 33, 32),
  harmonic: { mean: thou(32), amplitude: thou(1), loosestAtDegrees: 180 },
};
const draw = (facts: ClockFacts, unit: 'thou' | 'mm' = 'thou') =>
  clock(facts, lengthWords(unit), { width: 264, medium: 'screen' });
const circles = (shapes: readonly Shape[], depicts: Depicts) =>
  shapes.filter((shape): shape is Circle => shape.kind === 'circle' && shape.depicts === depicts);
const arrows = (shapes: readonly Shape[]) =>
  shapes.filter((shape): shape is Path => shape.kind === 'path' && shape.depicts === 'reading');

describe('the clock', () => {
  const chart = draw(forward);
  const [low, high] = circles(chart.shapes, 'limit');
  const centre = { x: low!.x, y: low!.y };
  const perThou = (high!.radius - low!.radius) / 10;

  test('has each reading at its own distance and angle, the mark at the top', () => {
    const dots = circles(chart.shapes, 'reading');
    const ways = [
      [0, -1],
      [1, 0],
      [0, 1],
      [-1, 0],
    ] as const;
    for (const [index, value] of [31, 32, 33, 32].entries()) {
      const reach = low!.radius + (value - 20) * perThou;
      expect(dots[index]!.x).toBeCloseTo(centre.x + ways[index]![0] * reach, 1);
      expect(dots[index]!.y).toBeCloseTo(centre.y + ways[index]![1] * reach, 1);
    }
  });

  test('fits a circle of the mean, shifted by the tilt toward the loosest side', () => {
    const [fit] = circles(chart.shapes, 'fit');
    expect(fit!.radius).toBeCloseTo(low!.radius + 12 * perThou, 1);
    expect(fit!.x).toBeCloseTo(centre.x, 1);
    expect(fit!.y).toBeCloseTo(centre.y + perThou, 1);
  });

  test('draws no circle over three spots, whatever harmonic it is given', () => {
    const three = draw({ ...forward, readings: forward.readings.slice(0, 3) });
    expect(circles(three.shapes, 'fit')).toEqual([]);
    expect(three.title).not.toContain('Tilt');
  });

  test('has the target as a dashed ring between the limits', () => {
    expect(circles(chart.shapes, 'target')[0]).toMatchObject({
      radius: expect.closeTo(low!.radius + 5 * perThou, 1),
      dash: [4, 3],
    });
  });

  test('says every value and where it was read', () => {
    expect(textsOf(chart).map((line) => line.text)).toEqual(
      expect.arrayContaining(['31', '32', '33', 'mark', '90°', '180°', '270°']),
    );
    expect(chart.title).toBe(
      'Around the drum 31 at the mark, 32 at 90°, 33 at 180°, 32 at 270°; limits 20 and 30. Tilt 1.0, loosest at 180°.',
    );
  });

  test('shows a reading off the scale as an arrow', () => {
    const far = draw({ ...forward, readings: spots(31, 200, 33, 2) });
    expect(circles(far.shapes, 'reading')).toHaveLength(2);
    expect(arrows(far.shapes)).toHaveLength(2);
  });

  test('keeps both readings of one spot', () => {
    const twice = draw({ ...forward, readings: [...spots(31, 32, 33, 32), { degrees: 90, value: thou(29) }] });
    expect(circles(twice.shapes, 'reading')).toHaveLength(5);
    expect(textsOf(twice).map((line) => line.text)).toContain('32, 29');
  });
});

test('any clock: a dot or an arrow for every reading, labels clear of each other and on the chart', () => {
  const reading = fc.record({
    degrees: fc.integer({ min: 0, max: 359 }),
    value: fc.integer({ min: -100, max: 900 }).map((x) => thou(x / 10)),
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(reading, { maxLength: 16, selector: (each) => each.degrees }),
      fc.constantFrom('thou' as const, 'mm' as const),
      (readings, unit) => {
        const chart = draw({ ...forward, readings }, unit);
        expect(circles(chart.shapes, 'reading').length + arrows(chart.shapes).length).toBe(readings.length);
        const outside = {
          ...chart,
          shapes: chart.shapes.filter((shape) => shape.kind !== 'text' || shape.halo === undefined),
        };
        expect(overlaps(outside)).toEqual([]);
        expect(overhangs(chart)).toEqual([]);
        expect(JSON.stringify(chart)).not.toMatch(/NaN|null/);
      },
    ),
  );
  expect(clock({ ...forward, readings: [], harmonic: null }, words, { width: 264, medium: 'screen' }).title).toBe(
    'No spot read; limits 20 and 30.',
  );
});
