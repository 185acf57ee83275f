// The line with known errors against slow, obvious forms: every direction tried, and the regressions it must become.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demingLineKnownErrors } from '../../app/statistics/deming-known-errors.ts';
import { expectRelative } from './relative.ts';
import { accepted, expectRefusal } from './result.ts';

const coordinate = fc.integer({ min: -50, max: 50 });
const error = fc.integer({ min: 1, max: 30 }).map((tenths) => tenths / 10);
const orNone = fc.oneof(error, fc.constant(0));
type Point = readonly [x: number, y: number, sx: number, sy: number];

const lineOf = (points: readonly Point[]) =>
  demingLineKnownErrors(
    points.map((point) => point[0]),
    points.map((point) => point[1]),
    points.map((point) => point[2]),
    points.map((point) => point[3]),
  );

/** Σ (y − a − bx)² / (sy² + b²sx²) with the best a, for the line that rises by `angle`. */
function misfit(points: readonly Point[], angle: number): number {
  const [along, up] = [Math.cos(angle), Math.sin(angle)];
  const weights = points.map(([, , sx, sy]) => 1 / ((sy * along) ** 2 + (sx * up) ** 2));
  const heights = points.map(([x, y]) => y * along - x * up);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const mean = heights.reduce((sum, height, i) => sum + weights[i]! * height, 0) / total;
  return heights.reduce((sum, height, i) => sum + weights[i]! * (height - mean) ** 2, 0);
}

describe('the line with known errors', () => {
  it('fits no worse than any of 20,000 directions', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate, error, error), { minLength: 3, maxLength: 8 }),
        (points) => {
          const result = lineOf(points);
          fc.pre(result.ok);
          const { slope, meanWeightedSquare } = accepted(result);
          const found = misfit(points, Math.atan(slope));
          expect(meanWeightedSquare! * (points.length - 2)).toBeCloseTo(found, 7);
          for (let i = 0; i < 20_000; i++) {
            const other = misfit(points, ((i + 0.5) / 20_000 - 0.5) * Math.PI);
            if (other < found * (1 - 1e-9)) expect(found, `slope ${slope}`).toBeLessThanOrEqual(other);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('has an answer wherever one direction is the best, errors of zero among them', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(coordinate, coordinate, orNone, orNone).filter(([, , sx, sy]) => sx + sy > 0),
          { minLength: 3, maxLength: 8 },
        ),
        (points) => {
          const result = lineOf(points);
          if (result.ok) {
            for (const each of Object.values(accepted(result))) expect(each).toSatisfy(Number.isFinite);
          } else {
            expectRefusal(result, 'no-slope');
          }
        },
      ),
    );
  });

  it('is the weighted regression of y on x where x has no error, and of x on y where y has none', () => {
    const weighted = (x: readonly number[], y: readonly number[], s: readonly number[]) => {
      const w = s.map((each) => 1 / each ** 2);
      const sum = (of: (i: number) => number) => w.reduce((total, each, i) => total + each * of(i), 0);
      const [all, mx, my] = [sum(() => 1), sum((i) => x[i]!), sum((i) => y[i]!)];
      const [xx, xy] = [sum((i) => x[i]! ** 2), sum((i) => x[i]! * y[i]!)];
      const slope = (all * xy - mx * my) / (all * xx - mx * mx);
      return { slope, intercept: (my - slope * mx) / all, slopeStandardError: Math.sqrt(all / (all * xx - mx * mx)) };
    };
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate, error), { minLength: 3, maxLength: 12 }), (rows) => {
        const [x, y, s] = [rows.map((row) => row[0]), rows.map((row) => row[1]), rows.map((row) => row[2])];
        fc.pre(new Set(x).size > 1 && new Set(y).size > 1);
        const none = rows.map(() => 0);
        const upward = weighted(x, y, s);
        const level = accepted(demingLineKnownErrors(x, y, none, s));
        expect(level.slope).toBeCloseTo(upward.slope, 9);
        expect(level.intercept).toBeCloseTo(upward.intercept, 7);
        expectRelative(level.slopeStandardError, upward.slopeStandardError, 1e-9);
        const sideways = weighted(y, x, s);
        fc.pre(Math.abs(sideways.slope) > 1e-3);
        const upright = accepted(demingLineKnownErrors(x, y, s, none));
        expectRelative(upright.slope, 1 / sideways.slope, 1e-9);
        expectRelative(upright.intercept * sideways.slope + 1000, 1000 - sideways.intercept, 1e-9);
      }),
    );
  });

  it('turned over, x for y, is the same line', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(coordinate, coordinate, error, error), { minLength: 3, maxLength: 8 }),
        (points) => {
          const [straight, turned] = [lineOf(points), lineOf(points.map(([x, y, sx, sy]) => [y, x, sy, sx] as const))];
          fc.pre(straight.ok && turned.ok && Math.abs(accepted(straight).slope) > 1e-3);
          expectRelative(accepted(turned).slope, 1 / accepted(straight).slope, 1e-7);
        },
      ),
    );
  });

  it('refuses points that leave the direction open', () => {
    const at = (points: readonly (readonly [number, number])[]) => points.map(([x, y]) => [x, y, 1, 1] as const);
    const corners = [
      [1, 1],
      [1, -1],
      [-1, 1],
      [-1, -1],
    ] as const;
    expectRefusal(lineOf(at(corners)), 'no-slope');
    expectRefusal(
      lineOf(
        at([
          [3, 1],
          [3, 2],
          [3, 5],
        ]),
      ),
      'no-slope',
    );
    expectRefusal(
      lineOf(
        at([
          [3, 1],
          [3, 1],
          [3, 1],
        ]),
      ),
      'no-slope',
    );
    expect(
      accepted(
        lineOf(
          at([
            [1, 4],
            [2, 4],
            [5, 4],
          ]),
        ),
      ).slope,
    ).toBeCloseTo(0, 12);
  });
});
