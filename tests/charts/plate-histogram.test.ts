import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import { type PlateCount, plateHistogram, platesPerSquare } from '../../app/charts/plate-histogram.ts';
import { type PlateMark, plateMark, plateMarks } from '../../app/charts/plate-mark.ts';
import type { Chart, Rect, Shape } from '../../app/charts/shapes.ts';

const thou = (value: number) => Math.round(value * 25_400);
const words = lengthWords('thou');
const room = { width: 432, height: 112, class_nm: thou(0.5) };
const free = (height: number, count = 1): PlateCount => ({ height_nm: thou(height), mark: 'free', count });

const isSquare = (shape: Shape): shape is Rect => shape.kind === 'rect' && shape.depicts === 'piece';
const squares = (chart: Chart) => chart.shapes.filter(isSquare);
const columnOf = (square: Rect) => Math.round(square.x / 16);
const footOf = (chart: Chart) => chart.height - 28;
const labels = (chart: Chart) => chart.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));

describe('the square of a plate', () => {
  test('tells what may be done with it without colour', () => {
    const drawn = plateMarks.map((mark) => JSON.stringify(withoutColour(plateMark(mark, 14).shapes)));
    expect(new Set(drawn).size).toBe(plateMarks.length);
  });

  test('is filled when free, dashed when it is to be read again, and has one stroke when not to be used', () => {
    expect(plateMark('free', 14).shapes).toMatchObject([{ kind: 'rect', fill: 'ink' }]);
    expect(plateMark('read again', 14).shapes).toMatchObject([{ kind: 'rect', dash: [3, 2] }]);
    expect(plateMark('do not use', 14).shapes).toMatchObject([{ kind: 'rect' }, { kind: 'path' }]);
  });
});

/** The shapes as one sees them in black and white. */
function withoutColour(shapes: readonly Shape[]): unknown {
  return shapes.map((shape) =>
    'stroke' in shape || 'fill' in shape
      ? { ...shape, stroke: shape.stroke !== undefined, fill: shape.fill !== undefined }
      : shape,
  );
}

describe('the histogram of an outline', () => {
  test('stacks one square a plate over its half thou, sixteen pixels a column', () => {
    const chart = plateHistogram([free(77), free(77.5, 3), free(79)], words, room);
    const columns = squares(chart).map(columnOf);
    const first = columns[0]!;
    expect(columns.map((column) => column - first)).toEqual([0, 1, 1, 1, 4]);
    // Each square of the column of three stands on the one below.
    expect(
      squares(chart)
        .slice(1, 4)
        .map((each) => Math.round((footOf(chart) - each.y) / 16)),
    ).toEqual([1, 2, 3]);
  });

  test('puts a height between two classes to the nearer, half way to the thicker', () => {
    const chart = plateHistogram([free(77), free(77.2), free(77.3), free(77.75), free(78)], words, room);
    const columns = squares(chart).map(columnOf);
    expect(columns.map((column) => column - columns[0]!)).toEqual([0, 0, 1, 2, 2]);
  });

  test('puts the usable ones at the foot', () => {
    const chart = plateHistogram(
      [{ height_nm: thou(77), mark: 'do not use', count: 1 }, free(77), { ...free(77), mark: 'in a unit' }],
      words,
      room,
    );
    expect(squares(chart).map((each) => each.fill ?? each.stroke)).toEqual(['ink', 'mark', 'quiet']);
  });

  test('says the same in words', () => {
    const chart = plateHistogram([free(77, 2), { ...free(79.5), mark: 'in a unit' }], words, room);
    expect(chart.title).toBe('3 plates from 77 to 79.5: 2 free, 1 in a unit.');
    expect(plateHistogram([], words, room).title).toBe('No plates to show.');
  });

  test('lets a square stand for more where a can is full, and says so', () => {
    // Seven squares fit; 12 plates at 2 a square are 6 squares, at 1 they would be 12.
    const chart = plateHistogram([free(77, 12), free(78, 1)], words, room);
    expect(squares(chart)).toHaveLength(7);
    expect(chart.title).toBe('13 plates from 77 to 78: 13 free. One square is 2 plates.');
    const alone = [1, 7, 8, 14, 15, 35, 36, 70_000].map((tallest) => platesPerSquare([[tallest]], 7));
    expect(alone).toEqual([1, 1, 2, 2, 5, 5, 10, 10_000]);
    // 6 and 1 and 1 are eight squares; at two a square 3 and 1 and 1 are five.
    expect(platesPerSquare([[6, 1, 1]], 7)).toBe(2);
  });

  test('keeps every square and every figure inside, however far the plates spread', () => {
    const plates = fc.array(
      fc.record({
        height_nm: fc.integer({ min: 508_000, max: 25_400_000 }).map((height) => height - (height % 500_000) + 508_000),
        mark: fc.constantFrom<PlateMark[]>(...plateMarks),
        count: fc.integer({ min: 1, max: 10_000 }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(plates, fc.integer({ min: 240, max: 700 }), (counted, width) => {
        const chart = plateHistogram(counted, words, { ...room, width });
        expect(footOf(chart)).toBeLessThanOrEqual(room.height);
        for (const each of squares(chart)) {
          expect(each.x).toBeGreaterThanOrEqual(0);
          expect(each.x + each.width).toBeLessThanOrEqual(width);
          expect(each.y).toBeGreaterThanOrEqual(0);
          expect(each.y + each.height).toBeLessThanOrEqual(footOf(chart));
        }
        expect(squares(chart).length).toBeGreaterThan(0);
        expect(labels(chart).length).toBeGreaterThan(0);
      }),
      { numRuns: 60 },
    );
  });

  test('names the axis in the unit of the shop', () => {
    const inThou = plateHistogram([free(77), free(79)], words, room);
    expect(labels(inThou).map(({ text }) => Number(text))).toContain(78);
    const metric = plateHistogram([{ height_nm: 1_950_000, mark: 'free', count: 1 }], lengthWords('mm'), {
      ...room,
      class_nm: 10_000,
    });
    expect(labels(metric).map(({ text }) => text)).toContain('1.950');
  });
});
