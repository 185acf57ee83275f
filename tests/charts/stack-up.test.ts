import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lengthWords } from '../../app/charts/amounts.ts';
import type { Line } from '../../app/charts/shapes.ts';
import type { Stack } from '../../app/charts/stack.ts';
import { stackUp } from '../../app/charts/stack-up.ts';
import { stackUpHalves } from '../../app/charts/stack-up-halves.ts';
import { forwardAsFound, forwardPlanned, overhangs, overlaps, piece, piecesOf, textsOf, thou } from './example-unit.ts';

const write = lengthWords('thou').full;
const single = (stack: Stack, more = {}) =>
  stackUp(stack, { name: 'Forward', width: 188, height: 226, medium: 'paper', write, ...more });
const halves = (now: Stack, planned: Stack) =>
  stackUpHalves(now, planned, { width: 376, height: 552, medium: 'screen', write });
const gapOf = (lines: readonly Line[]) => Math.abs(lines[0]!.y1 - lines[1]!.y1);

const planned: Stack = { pieces: forwardPlanned, clearance_nm: thou(25.5) };
const asFound: Stack = { pieces: forwardAsFound, clearance_nm: thou(32) };

describe('one pack to scale', () => {
  const chart = single(planned);
  const drawn = piecesOf(chart);

  test('draws every height in one proportion', () => {
    const heights = [77, 79.5, 83, 80, 78, 80, 77.5, 80.5, 250];
    expect(drawn).toHaveLength(heights.length);
    const perThou = drawn[8]!.height / 250;
    for (const [index, height] of heights.entries()) expect(drawn[index]!.height / height).toBeCloseTo(perThou, 3);
  });

  test('stands on the piston, each piece on the one before', () => {
    for (const [index, each] of drawn.entries()) {
      const above = drawn[index + 1];
      if (above !== undefined) expect(above.y + above.height).toBeCloseTo(each.y, 1);
    }
    expect(drawn[0]!.y).toBeGreaterThan(drawn[8]!.y);
  });

  test('leaves the clearance in the same proportion', () => {
    const lines = chart.shapes.filter((shape): shape is Line => shape.kind === 'line' && shape.depicts === 'clearance');
    expect(gapOf(lines) / 25.5).toBeCloseTo(drawn[8]!.height / 250, 2);
  });

  test('says every height, the clearance and what is new', () => {
    const words = textsOf(chart).map((line) => line.text);
    for (const figure of ['77.0', '79.5', '83.0', '80.0', '78.0', '77.5', '80.5', '250.0', '25.5'])
      expect(words).toContain(figure);
    expect(textsOf(chart).find((line) => line.text === '83.0')?.weight).toBe('semibold');
    expect(chart.title).toContain('steel 2 A47 83.0');
  });

  test('is drawn to the scale of a taller pack beside it', () => {
    const beside = piecesOf(single(planned, { tallest_nm: thou(1822) }));
    expect(beside[8]!.height).toBeCloseTo(drawn[8]!.height / 2, 1);
  });

  test('draws a selective ring to scale above the clearance', () => {
    const ring = single({
      pieces: [piece('steel', 70), piece('snap ring', 86, { label: 'snap ring 86' })],
      clearance_nm: thou(60),
    });
    const [steel, left] = piecesOf(ring);
    expect(left!.height / 86).toBeCloseTo(steel!.height / 70, 2);
    expect((steel!.y - left!.y - left!.height) / 60).toBeCloseTo(steel!.height / 70, 2);
  });

  test('draws a pack without room as none left, and says so', () => {
    const chart = single({ pieces: [piece('steel', 70)], clearance_nm: thou(-3) });
    expect(textsOf(chart).map((line) => line.text)).toContain('−3.0');
  });
});

describe('half section', () => {
  const chart = halves(asFound, planned);

  test('what leaves is dashed and empty, what enters is solid', () => {
    const dashed = piecesOf(chart).filter((each) => each.dash !== undefined);
    expect(dashed).toHaveLength(1);
    expect(dashed[0]!.fill).toBeUndefined();
    const solid = piecesOf(chart).filter((each) => each.fill === 'act');
    expect(solid).toHaveLength(1);
    expect(solid[0]!.height / dashed[0]!.height).toBeCloseTo(83 / 76.5, 3);
  });

  test('says out and in with heights and marks, and both clearances', () => {
    const words = textsOf(chart).map((line) => line.text);
    for (const each of ['out', 'A32', '76.5', 'in', 'A47', '83.0', '32.0', '25.5', 'snap ring', 'steel 4'])
      expect(words).toContain(each);
    expect(chart.title).toBe(
      'Half sections to scale, piston at the bottom: now with 32.0 of clearance, after the swap with 25.5 of clearance. Out: steel 2 76.5. In: steel 2 83.0.',
    );
  });

  test('holds both rings at one height, since the gap of the drum is one', () => {
    const lines = chart.shapes.filter((shape): shape is Line => shape.kind === 'line' && shape.depicts === 'clearance');
    expect(lines[0]!.y1).toBeCloseTo(lines[2]!.y1, 1);
  });
});

describe('labels', () => {
  const kinds = ['apply plate', 'wave plate', 'steel', 'friction', 'backing plate'] as const;
  const anyPiece = fc.record({
    kind: fc.constantFrom(...kinds),
    height: fc.integer({ min: 5, max: 3200 }).map((tenths) => tenths / 10),
    change: fc.constantFrom(undefined, undefined, undefined, 'leaves' as const, 'enters' as const),
    tag: fc.constantFrom(undefined, 'A47', 'B9'),
    name: fc.constantFrom('', ' 1', ' 12, ground flat on both faces'),
  });
  const anyStack = fc.record({
    pieces: fc.array(anyPiece, { minLength: 1, maxLength: 24 }),
    clearance: fc.option(fc.integer({ min: -50, max: 900 })),
    ring: fc.option(fc.integer({ min: 40, max: 1200 })),
  });
  const toStack = ({
    pieces,
    clearance,
    ring,
  }: {
    pieces: readonly {
      kind: (typeof kinds)[number];
      height: number;
      change: 'leaves' | 'enters' | undefined;
      tag: string | undefined;
      name: string;
    }[];
    clearance: number | null;
    ring: number | null;
  }): Stack => ({
    pieces: [
      ...pieces.map(({ kind, height, change, tag, name }) =>
        piece(kind, height, {
          label: kind + name,
          ...(change === undefined ? {} : { change }),
          ...(tag === undefined ? {} : { tag }),
        }),
      ),
      ...(ring === null ? [] : [piece('snap ring', ring / 10, { label: 'snap ring' })]),
    ],
    clearance_nm: clearance === null ? null : thou(clearance / 10),
  });

  test('never lie on each other nor leave the paper, however thin the plates', () => {
    fc.assert(
      fc.property(anyStack, fc.constantFrom('thou' as const, 'mm' as const), (drawn, unit) => {
        const chart = single(toStack(drawn), { write: lengthWords(unit).full });
        expect(overlaps(chart)).toEqual([]);
        expect(overhangs(chart)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });

  test('never lie on each other nor leave the screen in the half section', () => {
    fc.assert(
      fc.property(anyStack, anyStack, (now, after) => {
        const chart = halves(toStack(now), toStack(after));
        expect(overlaps(chart)).toEqual([]);
        expect(overhangs(chart)).toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});
