import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import { band } from '../../app/charts/band.ts';
import type { BandFacts } from '../../app/charts/band-axis.ts';
import { bandRow } from '../../app/charts/band-row.ts';
import type { Chart, Circle, Depicts, Line, Path, Rect } from '../../app/charts/shapes.ts';
import { overhangs, overlaps, textsOf, thou } from './example-unit.ts';

const words = lengthWords('thou');

/** Forward as found, one swap planned: 31, 32, 33, 32 read; limits 20–30, target 25; 25.5 predicted. */
const forward: BandFacts = {
  limits: { low: thou(20), high: thou(30) },
  target: thou(25),
  guard: thou(1.5),
  readings: [31, 32, 33, 32].map(thou),
  now: { value: thou(32), expanded: thou(1.5), label: 'now' },
  predicted: { value: thou(25.5), expanded: thou(3.2), label: 'after the swap' },
  asFound: null,
};
const none: BandFacts = {
  limits: { low: null, high: null },
  target: null,
  guard: null,
  readings: [],
  now: null,
  predicted: null,
  asFound: null,
};

const draw = (facts: BandFacts, width = 432) => band(facts, words, { width, medium: 'screen' });
const depicting = <Kind extends Circle | Line | Path | Rect>(chart: Chart, depicts: Depicts, kind: Kind['kind']) =>
  chart.shapes.filter((shape): shape is Kind => shape.kind === kind && 'depicts' in shape && shape.depicts === depicts);

describe('the large band', () => {
  const chart = draw(forward);
  const [low, high] = depicting<Line>(chart, 'limit', 'line').map((each) => each.x1);
  const perThou = (high! - low!) / 10;

  test('places every reading on one straight scale', () => {
    const dots = depicting<Circle>(chart, 'reading', 'circle').map((each) => each.x);
    expect(dots).toHaveLength(4);
    for (const [index, reading] of [31, 32, 32, 33].entries())
      expect(dots[index]).toBeCloseTo(low! + (reading - 20) * perThou, 1);
  });

  test('stacks equal readings instead of hiding one behind the other', () => {
    const equal = depicting<Circle>(chart, 'reading', 'circle').filter(
      (each) => Math.abs(each.x - low! - 12 * perThou) < 0.1,
    );
    expect(equal).toHaveLength(2);
    expect(Math.abs(equal[0]!.y - equal[1]!.y)).toBeGreaterThanOrEqual(2 * equal[0]!.radius);
  });

  test('hatches within the guard of each limit, on the inside', () => {
    const hatched = depicting<Rect>(chart, 'guard', 'rect');
    expect(hatched.map((each) => each.width / perThou)).toEqual([expect.closeTo(1.5, 1), expect.closeTo(1.5, 1)]);
    expect(hatched[0]!.x).toBeCloseTo(low!, 1);
    expect(hatched[1]!.x + hatched[1]!.width).toBeCloseTo(high!, 1);
  });

  test('hatches a band narrower than two guards once, from limit to limit', () => {
    const hatched = depicting<Rect>(draw({ ...forward, guard: thou(8) }), 'guard', 'rect');
    const width = hatched.reduce((sum, each) => sum + each.width, 0);
    expect(width).toBeCloseTo(
      depicting<Line>(draw({ ...forward, guard: thou(8) }), 'limit', 'line').reduce(
        (a, each, i) => (i === 0 ? -each.x1 : a + each.x1),
        0,
      ),
      1,
    );
  });

  test('says in words what it shows', () => {
    expect(chart.title).toBe(
      '4 readings, 31 to 33, against limits 20 and 30 and target 25. Now 32.0 ± 1.5. After the swap 25.5 ± 3.2.',
    );
  });

  test('writes the limits and the target under the axis', () => {
    const under = textsOf(chart).map((line) => line.text);
    for (const each of ['20', '25', '30', 'low limit', 'target', 'high limit', 'now', 'after the swap'])
      expect(under).toContain(each);
  });

  test('shows what lies off the scale as an arrow at that edge', () => {
    const far = draw({ ...forward, readings: [31, 600].map(thou), asFound: thou(-400) });
    expect(depicting<Circle>(far, 'reading', 'circle')).toHaveLength(1);
    expect(depicting<Path>(far, 'reading', 'path')).toHaveLength(1);
    const arrow = depicting<Path>(far, 'as found', 'path')[0]!;
    const [back, tip] = [...arrow.outline.matchAll(/[ML]([\d.]+) /g)].map((match) => Number(match[1]));
    expect(tip).toBeLessThan(back!);
    expect(tip).toBeLessThan(15);
  });
});

const amount = fc.integer({ min: -300, max: 3000 }).map((tenths) => thou(tenths / 10));
const sure = (label: string) =>
  fc.record({
    value: amount,
    expanded: fc.option(fc.integer({ min: 0, max: 90 }).map((x) => thou(x / 10))),
    label: fc.constant(label),
  });
const anyFacts: fc.Arbitrary<BandFacts> = fc.record({
  limits: fc
    .record({ low: fc.option(amount), high: fc.option(amount) })
    .filter(({ low, high }) => low === null || high === null || low < high),
  target: fc.option(amount),
  guard: fc.option(fc.integer({ min: 0, max: 90 }).map((x) => thou(x / 10))),
  readings: fc.array(amount, { maxLength: 12 }),
  now: fc.option(sure('now')),
  predicted: fc.option(sure('after the swap')),
  asFound: fc.option(amount),
});

describe('any band', () => {
  test('shows as many dots and arrows as there are readings, inside the chart', () => {
    fc.assert(
      fc.property(anyFacts, fc.integer({ min: 240, max: 900 }), (facts, width) => {
        const chart = draw(facts, width);
        const dots = depicting<Circle>(chart, 'reading', 'circle');
        expect(dots.length + depicting<Path>(chart, 'reading', 'path').length).toBe(facts.readings.length);
        for (const dot of dots) {
          expect(dot.x).toBeGreaterThanOrEqual(0);
          expect(dot.x).toBeLessThanOrEqual(width);
        }
      }),
    );
  });

  test('keeps its labels off each other and on the chart', () => {
    fc.assert(
      fc.property(anyFacts, fc.integer({ min: 240, max: 900 }), (facts, width) => {
        expect(overlaps(draw(facts, width))).toEqual([]);
        expect(overhangs(draw(facts, width))).toEqual([]);
      }),
    );
  });

  test('keeps every number of the drawing finite', () => {
    fc.assert(
      fc.property(anyFacts, (facts) => {
        expect(JSON.stringify(draw(facts))).not.toMatch(/NaN|null/);
      }),
    );
    expect(JSON.stringify(draw(none))).not.toMatch(/NaN|null/);
  });
});

describe('the band of a row', () => {
  const size = { width: 105, height: 13.5, medium: 'paper' } as const;
  const row = (low: number, high: number, now: number, asFound: number | null) =>
    bandRow(
      {
        limits: { low: thou(low), high: thou(high) },
        target: null,
        now: { value: thou(now), expanded: thou(1), label: 'as built' },
        asFound: asFound === null ? null : thou(asFound),
      },
      words,
      size,
    );

  test('has its limits at the same places whatever they are, so that rows compare', () => {
    const places = (chart: Chart) => depicting<Line>(chart, 'limit', 'line').map((each) => each.x1);
    expect(places(row(20, 30, 26, 32))).toEqual(places(row(100, 150, 125, null)));
  });

  test('keeps as found as an open dot beside as built', () => {
    const [found] = depicting<Circle>(row(20, 30, 26, 32), 'as found', 'circle');
    const [built] = depicting<Circle>(row(20, 30, 26, 32), 'now', 'circle');
    expect(found).toMatchObject({ fill: 'face', stroke: 'ink' });
    expect(built).toMatchObject({ fill: 'ink' });
    expect(found!.x).toBeGreaterThan(built!.x);
  });

  test('shows an as found off the scale as an arrow (front end play 10–24, found 31)', () => {
    const chart = row(10, 24, 19, 31);
    expect(depicting<Circle>(chart, 'as found', 'circle')).toHaveLength(0);
    expect(depicting<Path>(chart, 'as found', 'path')).toHaveLength(1);
  });

  test('moves with the reading under an only limit: 3, 4 and 6 psi of at most 10 lie 3, 4 and 6 tenths of the way', () => {
    const place = (now: number) =>
      depicting<Circle>(
        bandRow(
          {
            limits: { low: null, high: 10 },
            target: null,
            now: { value: now, expanded: null, label: 'now' },
            asFound: null,
          },
          { ...words, perUnit: 1 },
          { ...size, width: 100 },
        ),
        'now',
        'circle',
      )[0]!.x;
    expect([3, 4, 6].map((now) => (place(now) - 21.4) / (78.6 - 21.4))).toEqual([
      expect.closeTo(0.3, 2),
      expect.closeTo(0.4, 2),
      expect.closeTo(0.6, 2),
    ]);
  });

  test('draws predicted open and dashed above what was read, and says both (25.5 ± 3.2, read 26.0)', () => {
    const chart = bandRow(
      {
        limits: { low: thou(20), high: thou(30) },
        target: null,
        now: { value: thou(26), expanded: thou(1.5), label: 'read' },
        predicted: { value: thou(25.5), expanded: thou(3.2), label: 'predicted' },
        asFound: null,
      },
      words,
      size,
    );
    const [predicted] = depicting<Circle>(chart, 'predicted', 'circle');
    const [now] = depicting<Circle>(chart, 'now', 'circle');
    expect(predicted).toMatchObject({ fill: 'face', stroke: 'act' });
    expect(predicted!.x).toBeLessThan(now!.x);
    expect(predicted!.y).toBeLessThan(now!.y);
    expect(chart.title).toBe('Limits 20 and 30. Read 26.0 ± 1.5. Predicted 25.5 ± 3.2.');
  });

  test('stays empty but for its limits where nothing was read', () => {
    const chart = bandRow(
      { limits: { low: thou(100), high: thou(150) }, target: null, now: null, asFound: null },
      words,
      size,
    );
    expect(depicting<Line>(chart, 'limit', 'line')).toHaveLength(2);
    expect(chart.shapes.some((shape) => shape.kind === 'circle')).toBe(false);
    expect(chart.title).toBe('Limits 100 and 150.');
  });
});
