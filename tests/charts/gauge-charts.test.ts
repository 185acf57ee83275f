// Shares as bars, two methods' differences, and single values over the builds: every figure has its mark, and the
// sentence says the same. Places are asked for by order and by distance, which is what a person reads off.
import { expect, test } from 'vitest';
import { agreementPlot } from '../../app/charts/agreement-plot.ts';
import { lengthWords } from '../../app/charts/amounts.ts';
import { individuals } from '../../app/charts/individuals.ts';
import type { Chart, Circle, Line, Rect } from '../../app/charts/shapes.ts';
import { shareBars } from '../../app/charts/share-bars.ts';

const thou = 25_400;
const words = lengthWords('thou');
const circles = (chart: Chart, depicts?: Circle['depicts']) =>
  chart.shapes.filter((shape): shape is Circle => shape.kind === 'circle' && shape.depicts === depicts);
const lines = (chart: Chart, depicts: Line['depicts']) =>
  chart.shapes.filter((shape): shape is Line => shape.kind === 'line' && shape.depicts === depicts);

test('bars are as long as their shares', () => {
  const chart = shareBars(
    [
      { name: 'the parts', share: 0.75 },
      { name: 'the hand', share: 0.25 },
    ],
    800,
  );
  const [parts, hand] = chart.shapes.filter((shape): shape is Rect => shape.kind === 'rect');
  expect((parts?.width ?? 0) / (hand?.width ?? 1)).toBeCloseTo(3, 2);
  expect(chart.title).toBe('the parts 75 of 100, the hand 25 of 100.');
});

test('each pair is a dot at its difference, on the scale of the limits', () => {
  const pairs = [
    { first: 25 * thou, second: 27 * thou },
    { first: 30 * thou, second: 30 * thou },
  ];
  const agreement = {
    bias: -1 * thou,
    biasInterval: [-2 * thou, 0],
    limits: [-3 * thou, thou],
    lowerLimitInterval: [-4 * thou, -2 * thou],
    upperLimitInterval: [0, 2 * thou],
  } as const;
  const chart = agreementPlot({ pairs, agreement }, words, { width: 800, height: 320, between: '' });
  const [bias] = lines(chart, 'fit');
  const [upper, lower] = lines(chart, 'limit');
  const [first, second] = circles(chart, 'reading');
  const perThou = ((lower?.y1 ?? 0) - (upper?.y1 ?? 0)) / 4;
  expect((first?.y ?? 0) - (bias?.y1 ?? 0)).toBeCloseTo(perThou, 1);
  expect((bias?.y1 ?? 0) - (second?.y ?? 0)).toBeCloseTo(perThou, 1);
  expect(first?.x ?? 0).toBeLessThan(second?.x ?? 0);
  expect(chart.title).toBe('2 pairs: difference −1.0 on average, 95 of 100 between −3.0 and 1.0.');
});

test('one pair is drawn though nothing can be said of it yet', () => {
  const pairs = [{ first: 25 * thou, second: 25 * thou }];
  const chart = agreementPlot({ pairs, agreement: null }, words, { width: 800, height: 320, between: '' });
  expect(circles(chart, 'reading')).toHaveLength(1);
  expect(chart.title).toBe('1 pair.');
});

test('what falls outside is ringed, and named in the sentence', () => {
  const points = [
    { name: '41', value: 10 * thou, isOutside: false },
    { name: '42', value: 30 * thou, isOutside: true },
  ];
  const limits = { mean: 12 * thou, lower: 4 * thou, upper: 20 * thou };
  const chart = individuals({ points, limits }, words, { width: 800, height: 280 });
  const [, second] = circles(chart, 'reading');
  expect(circles(chart).map(({ x, y }) => [x, y])).toEqual([[second?.x, second?.y]]);
  expect(second?.y ?? 0).toBeLessThan(lines(chart, 'limit')[0]?.y1 ?? 0);
  expect(chart.title).toBe('2 builds, mean 12.0, limits 4.0 and 20.0, outside: 42.');
});
