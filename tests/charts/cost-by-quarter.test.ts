// Bars of cost: as tall as they cost, in order, the newest where not all have room, and said in words.
import { expect, test } from 'vitest';
import { costByQuarter } from '../../app/charts/cost-by-quarter.ts';
import { formatMoney } from '../../app/quantities/money.ts';

const money = (cents: number) => formatMoney(cents, '.');
const bars = [
  { quarter: '2025 Q1', cost: 300_00, cameBack: 1, delivered: 3 },
  { quarter: '2025 Q2', cost: 0, cameBack: 0, delivered: 0 },
  { quarter: '2025 Q3', cost: 150_00, cameBack: 4, delivered: 1 },
];

test('a bar of half the cost is half as tall, and a quarter that cost nothing has none', () => {
  const chart = costByQuarter(bars, money, { width: 600, height: 256 });
  const heights = chart.shapes.flatMap((shape) => (shape.kind === 'rect' ? [shape.height] : []));
  expect(heights).toHaveLength(2);
  expect(heights[1]).toBeCloseTo((heights[0] ?? 0) / 2, 1);
  expect(chart.title).toBe(
    '2025 Q1: 300.00, 1 came back, 3 delivered; 2025 Q2: 0.00, 0 came back, 0 delivered; 2025 Q3: 150.00, 4 came back, 1 delivered.',
  );
});

test('where not all have room the newest are drawn, within the width', () => {
  const chart = costByQuarter(bars, money, { width: 160, height: 256 });
  const words = chart.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
  expect(words).toContain('2025 Q3');
  expect(words).not.toContain('2025 Q1');
  for (const shape of chart.shapes) {
    if (shape.kind === 'rect') expect(shape.x + shape.width).toBeLessThanOrEqual(160);
  }
});
