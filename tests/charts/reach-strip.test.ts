import { expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import { reachStrip } from '../../app/charts/reach-strip.ts';
import type { Chart } from '../../app/charts/shapes.ts';

const thou = (value: number) => value * 25_400;
const words = lengthWords('thou');
const limits = { low: thou(20), high: thou(30) };
const pack = (clearance: number, isReached: boolean) => ({ clearance_nm: thou(clearance), isReached });

const reached = (chart: Chart) =>
  chart.shapes.flatMap((shape) => (shape.kind === 'rect' && shape.depicts === 'clearance' ? [shape] : []));
const dots = (chart: Chart) => chart.shapes.flatMap((shape) => (shape.kind === 'circle' ? [shape] : []));

test('the strip is filled where one swap is enough and hatched where it is not', () => {
  // The scale runs from 20 less a twentieth of the spread (1) to 40 and 1: 22 thou over 440 pixels, 20 a thou.
  const chart = reachStrip(
    { limits, reach: [{ from_nm: thou(20), to_nm: thou(35) }], packs: [pack(40, false)] },
    words,
    456,
  );
  expect(reached(chart)).toMatchObject([{ x: 28, width: 300, fill: 'ink' }]);
  expect(chart.shapes[0]).toMatchObject({ kind: 'rect', x: 0, width: 456, hatch: 'guard' });
});

test('a stretch without end goes to the edge', () => {
  const chart = reachStrip({ limits, reach: [{ from_nm: null, to_nm: null }], packs: [] }, words, 400);
  expect(reached(chart)).toMatchObject([{ x: 0, width: 400 }]);
});

test('each pack is a dot somebody can count, and one that was not reached is an open ring', () => {
  const chart = reachStrip(
    {
      limits,
      reach: [{ from_nm: thou(18), to_nm: thou(33) }],
      packs: [pack(25, true), pack(25, true), pack(36, false)],
    },
    words,
    432,
  );
  const [one, other, far] = dots(chart);
  expect(dots(chart)).toHaveLength(3);
  expect(one).toMatchObject({ fill: 'quiet' });
  expect(other!.x).toBe(one!.x);
  expect(other!.y - one!.y).toBe(9);
  expect(far).toMatchObject({ fill: 'ground', stroke: 'out' });
  expect(chart.title).toBe(
    'One swap brings 18.0 to 33.0 to limits 20 and 30. Of the last 3 packs, one swap reached 2.',
  );
});

test('nothing at hand is said, not drawn as if it reached', () => {
  const chart = reachStrip({ limits, reach: [], packs: [] }, words, 400);
  expect(reached(chart)).toEqual([]);
  expect(chart.title).toBe('One swap brings no clearance to limits 20 and 30.');
});

test('a hundred packs of one clearance stay on the screen', () => {
  const packs = Array.from({ length: 100 }, () => pack(25, true));
  const chart = reachStrip({ limits, reach: [], packs }, words, 400);
  expect(dots(chart)).toHaveLength(100);
  expect(chart.height).toBeLessThan(200);
});
