import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { classOfHeight, parsePlateHeight } from '../../app/stock/plate-heights.ts';
import { oddHeight } from '../../app/stock/unlikely-height.ts';
import { thou } from './plates-shop.ts';

const words = { lengthUnit: 'thou', decimalMark: '.' } as const;

describe('the height of a plate as typed', () => {
  test.each([
    ['77.0', thou(77), []],
    // (77.0 + 77.5 + 77.0) / 3 = 77.1667 thou = 1 960 033.3 nm.
    ['77.0 77.5 77.0', 1_960_033, [thou(77), thou(77.5), thou(77)]],
    ['0.077 in', thou(77), []],
    // 5/64 in = 78.125 thou.
    ['5/64 in', thou(78.125), []],
    ['1.95 1.96 mm', 1_955_000, [1_950_000, 1_960_000]],
  ])('%s', (typed, height_nm, points_nm) => {
    expect(parsePlateHeight(typed, 'steel', words)).toEqual({ ok: true, value: { height_nm, points_nm } });
  });

  test.each([
    ['77 77 77 77 77 77 77 77 77 77 77 77 77', 'too-many'],
    ['77.0 7.7', 'implausible'],
    ['77.0 seven', 'unknown-unit'],
    ['78 mm', 'implausible'],
    ['', 'empty'],
    ['77,0', 'decimal-mark'],
  ])('“%s” is refused: %s', (typed, code) => {
    expect(parsePlateHeight(typed, 'steel', words)).toMatchObject({ ok: false, refusal: { code } });
  });

  test('a class is the nearest whole one, half way up', () => {
    const classes = [77.0, 77.2, 77.25, 77.3, 77.74, 77.75].map((height) => classOfHeight(thou(height), thou(0.5)));
    expect(classes).toEqual([77, 77, 77.5, 77.5, 77.5, 78].map(thou));
  });

  test('no class is further from a height than half its width', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 508_000, max: 25_400_000 }),
        fc.integer({ min: 1, max: 500_000 }),
        (height, width) => {
          const nearest = classOfHeight(height, width);
          expect(nearest % width).toBe(0);
          expect(2 * Math.abs(nearest - height)).toBeLessThanOrEqual(width);
        },
      ),
    );
  });
});

describe('a height far from the others is asked about', () => {
  const known = [74, 76.5, 77, 77, 80].map((height) => ({ height_nm: thou(height), count: 1 }));
  // Half of the range is 3 thou, a twentieth of the median (77) is 3.85: from 70.15 to 83.85 is not odd.
  test.each([
    [70.2, false],
    [70.1, true],
    [83.8, false],
    [83.9, true],
    [57, true],
  ])('%d thou beside 74 to 80: %s', (height, isOdd) => {
    expect(oddHeight({ height_nm: thou(height), points_nm: [] }, known, words) !== null).toBe(isOdd);
  });

  test('with fewer than five known only what is a quarter off is odd', () => {
    const one = [{ height_nm: thou(80), count: 1 }];
    const isOdd = (height: number) => oddHeight({ height_nm: thou(height), points_nm: [] }, one, words) !== null;
    expect([59.9, 60, 100, 100.1].map(isOdd)).toEqual([true, false, false, true]);
  });

  test('nothing known, nothing odd; and never between the thinnest and the thickest', () => {
    expect(oddHeight({ height_nm: thou(300), points_nm: [] }, [], words)).toBeNull();
    const spread = [62, 62, 62, 62, 62, 98].map((height) => ({ height_nm: thou(height), count: 1 }));
    expect(oddHeight({ height_nm: thou(97), points_nm: [] }, spread, words)).toBeNull();
  });

  test('points of one plate further apart than a twentieth of it', () => {
    const at = (...points: number[]) =>
      oddHeight({ height_nm: thou(77), points_nm: points.map(thou) }, [], words) !== null;
    expect([at(76, 79.8), at(76, 79.9)]).toEqual([false, true]);
  });
});
