// The trace as it is drawn: to scale, every level named with its figure, and only the stretch that was asked for.
import { expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import type { Line, Path, Text } from '../../app/charts/shapes.ts';
import { traceChart } from '../../app/charts/trace.ts';

const thou = 25_400;
const words = lengthWords('thou');
const size = { width: 400, height: 120, medium: 'screen' } as const;
const samples = [0, 0, -4, -4, 0, 0, 23, 23].map((value, index) => ({ at_ms: index * 500, value: value * thou }));
const levels = [
  { label: 'pressed', value: -4 * thou },
  { label: 'air', value: 23 * thou },
];

test('is to scale, and says its levels in figures and in words', () => {
  const chart = traceChart({ samples, span_ms: 4000, levels }, words, size);
  const [zero, pressed, air] = chart.shapes.filter((shape): shape is Line => shape.kind === 'line').map(({ y1 }) => y1);
  const outline = chart.shapes.find((shape): shape is Path => shape.kind === 'path')?.outline ?? '';
  const ys = outline
    .slice(1)
    .split('L')
    .map((point) => Number(point.split(' ')[1]));
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([air, pressed]);
  // 23 up against 4 down, by hand.
  expect(((zero ?? 0) - (air ?? 0)) / ((pressed ?? 0) - (zero ?? 0))).toBeCloseTo(23 / 4, 1);
  const texts = chart.shapes.filter((shape): shape is Text => shape.kind === 'text').map(({ text }) => text);
  expect(texts).toEqual(['air 23.0', 'pressed −4.0']);
  expect(chart.title).toBe('The gauge’s trace: pressed −4.0, air 23.0.');
  for (const shape of chart.shapes) if (shape.kind === 'text') expect(shape.y).toBeLessThanOrEqual(size.height + 5);
});

test('draws the last stretch only, and nothing where nothing was heard', () => {
  const last = traceChart({ samples, span_ms: 1000, levels: [] }, words, size);
  const outline = last.shapes.find((shape): shape is Path => shape.kind === 'path')?.outline ?? '';
  expect(outline.split('L')).toHaveLength(3);
  const none = traceChart({ samples: [], span_ms: 1000, levels: [] }, words, size);
  expect(none.shapes.some(({ kind }) => kind === 'path')).toBe(false);
});
