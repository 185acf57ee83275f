// Questions for the tests: small random packs, and a shorthand for one group of steels.
import fc from 'fast-check';
import type { AdjusterGroup, Band, SwapQuestion } from '../../app/selection/swap-question.ts';

/** Not the normal distribution, so that nothing here leans on ours: falls with the distance to the middle. */
export function bandBetween(lower: number | null, upper: number | null): Band {
  return {
    lower,
    upper,
    chance: (clearance, variance) => {
      if (lower === null && upper === null) return 1;
      const inside = Math.min(
        clearance - (lower ?? Number.NEGATIVE_INFINITY),
        (upper ?? Number.POSITIVE_INFINITY) - clearance,
      );
      return 0.5 + Math.atan(inside / Math.sqrt(variance)) / Math.PI;
    },
  };
}

/** What pieces whose bits are set leave of a space. */
export function spaceAfter(space: number, pieces: readonly { readonly height: number }[], inPack: number): number {
  return pieces.reduce((left, { height }, place) => left - ((inPack >> place) & 1) * height, space);
}

/** One group of steels in a gap; every piece equally well known. */
export function steels(
  space: number,
  heights: readonly number[],
  loose: readonly number[],
  judged: Pick<SwapQuestion, 'band' | 'target' | 'setsWanted'>,
): SwapQuestion {
  const fitted = heights.map((height) => ({ id: `in ${height}`, height }));
  return {
    ...judged,
    groups: [
      {
        name: 'steels',
        fitted,
        loose: loose.map((height) => ({ id: `loose ${height}`, height, count: 1, uncertaintyClass: 0 })),
      },
    ],
    predict: (inPack) => ({ spaceLeft: spaceAfter(space, fitted, inPack), variance: 1 }),
  };
}

const group = (name: string, most: number): fc.Arbitrary<AdjusterGroup> =>
  fc
    .record({
      fitted: fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: most }),
      readBefore: fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 2 }),
      loose: fc.array(
        fc.record({
          height: fc.integer({ min: 1, max: 12 }),
          count: fc.integer({ min: 1, max: 2 }),
          uncertaintyClass: fc.integer({ min: 0, max: 2 }),
        }),
        { maxLength: 4 },
      ),
    })
    .map(({ fitted, readBefore, loose }) => ({
      name,
      fitted: fitted.map((height, place) => ({ id: `${name} in ${place}`, height })),
      readBefore: readBefore.map((height, place) => ({ id: `${name} out ${place}`, height })),
      loose: loose.map((piece, place) => ({ ...piece, id: `${name} loose ${place}` })),
    }));

const limit = fc.option(fc.integer({ min: 0, max: 12 }), { freq: 4 });

/** Small enough for the slow form; what stays in the pack tilts the mean and the variance, as a posterior does. */
export const smallQuestion: fc.Arbitrary<SwapQuestion> = fc
  .record({
    groups: fc.tuple(group('steels', 3), group('ring', 1)).filter(([a, b]) => a.fitted.length + b.fitted.length > 0),
    space: fc.integer({ min: 10, max: 40 }),
    limits: fc.option(fc.tuple(limit, limit), { freq: 5 }),
    target: fc.integer({ min: 0, max: 24 }).map((half) => half / 2),
    tilt: fc.integer({ min: 0, max: 3 }),
    spread: fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 2 })),
  })
  .map(({ groups, space, limits, target, tilt, spread }) => {
    const named = groups.flatMap((each) => [...each.fitted, ...(each.readBefore ?? [])]);
    const [lower, upper] = limits ?? [null, null];
    const isUpsideDown = lower !== null && upper !== null && lower > upper;
    return {
      groups,
      target,
      setsWanted: 1000,
      band: limits === null ? null : isUpsideDown ? bandBetween(upper, lower) : bandBetween(lower, upper),
      predict: (inPack, [first = 0, second = 0, third = 0]) => ({
        spaceLeft: spaceAfter(space, named, inPack) + (tilt * (inPack % 3)) / 8 - first / 16,
        variance: 1 + (inPack % 2) + spread[0] * second + spread[1] * third,
      }),
    };
  });
