// What a bin can do for packs, and what to buy: hand arithmetic on the example unit, the slow form, refusals.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type CoverAnswer,
  type CoverQuestion,
  clearancesInReach,
  coverPacks,
  type PackToCover,
} from '../../app/selection/cover-gaps.ts';
import { problemsInCover } from '../../app/selection/verify-cover.ts';
import { combinations } from './slow-swaps.ts';

function answerTo(question: CoverQuestion): CoverAnswer {
  const answer = coverPacks(question);
  if (!answer.ok) throw new Error(answer.refusal.message);
  expect(problemsInCover(question, answer.value)).toEqual([]);
  return answer.value;
}

// Tenths of a thou. The example unit's Forward: 77.0 76.5 78.0 77.5, band 20 to 30.
const forward = { fitted: [770, 765, 780, 775], lower: 200, upper: 300 };
const single = (...heights: number[]) => heights.map((height) => ({ height, count: 1 }));

test('Forward as found at 32.0: an 83.0 for the 76.5 makes 25.5; without it a 79.5 for the 76.5 makes 29.0', () => {
  const found = { ...forward, clearance: 320 };
  const bin = single(740, 755, 785, 795, 805, 830);
  expect(answerTo({ packs: [found], bin }).packs).toEqual([{ swaps: 1, remove: [765], add: [830], clearance: 255 }]);
  // The best with a 79.5: for the 76.5, 32.0 - 3.0 = 29.0.
  expect(answerTo({ packs: [found], bin: single(740, 795) }).packs).toEqual([
    { swaps: 1, remove: [765], add: [795], clearance: 290 },
  ]);
});

test('two swaps where one is not enough, and none where it is already inside', () => {
  // 40.0 must come down by 10.0 at least; 80.5 for 76.5 gives 4.0, 83.0 for 77.0 gives 6.0: together 30.0.
  const packs = [40, 25].map((thou) => ({ ...forward, clearance: thou * 10 }));
  const bin = single(805, 830);
  expect(answerTo({ packs, bin })).toMatchObject({
    covered: 1,
    packs: [{ swaps: null, clearance: 400 }, { swaps: 0 }],
  });
  expect(answerTo({ packs, bin, swaps: 2 }).packs[0]).toEqual({
    swaps: 2,
    remove: [765, 770],
    add: [805, 830],
    clearance: 300,
  });
  // The same height twice only where there are two of it.
  const wide = [{ fitted: [770, 770], clearance: 420, lower: 300, upper: 300 }];
  expect(answerTo({ packs: wide, bin: single(830), swaps: 2 }).covered).toBe(0);
  expect(answerTo({ packs: wide, bin: [{ height: 830, count: 2 }], swaps: 2 }).covered).toBe(1);
});

test('what to buy: one height for most of them, two for all, and no third', () => {
  // One 80 in each; wanted 20 to 22. Packs at 25, 26 and 31 need 83-85, 84-86 and 89-91; the one at 21 needs nothing.
  const packs = [25, 26, 31, 21].map((clearance) => ({ fitted: [80], clearance, lower: 20, upper: 22 }));
  const { covered, buy } = answerTo({ packs, bin: [], forSale: [83, 84, 85, 89, 91, 95], most: 3 });
  expect(covered).toBe(1);
  // Those that bring any in lie from 83 to 91, their middle is 87: 85 is nearer to it than 84, and 89 than 91.
  expect(buy).toEqual([
    { heights: [85], packs: [0, 1] },
    { heights: [85, 89], packs: [0, 1, 2] },
  ]);
  expect(answerTo({ packs, bin: [], forSale: [83, 84, 85, 89, 91, 95], most: 1 }).buy).toHaveLength(1);
  // 82 + 90 are as near to the middle as each other: the thinner.
  const two = [22, 30].map((clearance) => ({ fitted: [80], clearance, lower: 20, upper: 20 }));
  expect(answerTo({ packs: two, bin: [], forSale: [90, 82], most: 1 }).buy).toEqual([{ heights: [82], packs: [0] }]);
  expect(answerTo({ packs, bin: [], forSale: [70, 95] }).buy).toEqual([]);
  expect(answerTo({ packs: [], bin: [], forSale: [70] })).toEqual({ packs: [], covered: 0, buy: [] });
});

test('which clearances one swap reaches', () => {
  const reach = (question: Parameters<typeof clearancesInReach>[0]) => {
    const found = clearancesInReach(question);
    return found.ok ? found.value : found.refusal.code;
  };
  const one = { fitted: [77], lower: 20, upper: 24 };
  expect(reach({ ...one, bin: [] })).toEqual([{ from: 20, to: 24 }]);
  expect(reach({ ...one, bin: single(83) })).toEqual([
    { from: 20, to: 24 },
    { from: 26, to: 30 },
  ]);
  // 25 to 29 with an 82: no whole step lies between, so it is one stretch.
  expect(reach({ ...one, bin: single(82) })).toEqual([{ from: 20, to: 29 }]);
  expect(reach({ ...one, bin: single(72, 90) })).toEqual([
    { from: 15, to: 24 },
    { from: 33, to: 37 },
  ]);
  expect(reach({ ...one, upper: null, bin: single(72) })).toEqual([{ from: 15, to: null }]);
  expect(reach({ ...one, lower: null, upper: null, bin: [] })).toEqual([{ from: null, to: null }]);
  // Two swaps take off 6 and 7 together, and never twice the same piece.
  expect(reach({ fitted: [77, 77], lower: 20, upper: 20, bin: single(83, 84), swaps: 2 })).toEqual([
    { from: 20, to: 20 },
    { from: 26, to: 27 },
    { from: 33, to: 33 },
  ]);
  const many = Array.from({ length: 5000 }, (_, place) => ({ height: 1 + place * place, count: 1 }));
  expect(reach({ ...forward, bin: many, swaps: 2 })).toBe('too-many-heights');
});

const limit = fc.option(fc.integer({ min: -4, max: 12 }), { freq: 5 });
const pack: fc.Arbitrary<PackToCover> = fc
  .record({
    fitted: fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 4 }),
    clearance: fc.integer({ min: -12, max: 24 }),
    lower: limit,
    upper: limit,
  })
  .map((each) =>
    each.lower !== null && each.upper !== null && each.lower > each.upper
      ? { ...each, lower: each.upper, upper: each.lower }
      : each,
  );
const question: fc.Arbitrary<CoverQuestion> = fc.record({
  packs: fc.array(pack, { maxLength: 6 }),
  bin: fc.array(fc.record({ height: fc.integer({ min: 1, max: 16 }), count: fc.integer({ min: 0, max: 2 }) }), {
    maxLength: 4,
  }),
  swaps: fc.constantFrom<(1 | 2)[]>(1, 2),
  forSale: fc.array(fc.integer({ min: 1, max: 20 }), { maxLength: 7 }),
  most: fc.integer({ min: 1, max: 3 }),
});

function isInside({ lower, upper }: PackToCover, clearance: number): boolean {
  return clearance >= (lower ?? clearance) && clearance <= (upper ?? clearance);
}

/** The clearances inside the band after exactly so many swaps, piece by piece. */
function slowSwaps(pack: PackToCover, loose: readonly number[], swaps: number): number[] {
  return combinations(pack.fitted, swaps)
    .flatMap((out) =>
      combinations(loose, swaps).map(
        (into) => pack.clearance + out.reduce((a, b) => a + b, 0) - into.reduce((a, b) => a + b, 0),
      ),
    )
    .filter((clearance) => isInside(pack, clearance));
}

const piecesOf = (bin: CoverQuestion['bin']) =>
  bin.flatMap(({ height, count }) => Array.from({ length: count }, () => height));

test('agrees with trying every swap piece by piece', () => {
  fc.assert(
    fc.property(question, (asked) => {
      const answer = answerTo(asked);
      const loose = piecesOf(asked.bin);
      for (const [place, pack] of asked.packs.entries()) {
        const found = answer.packs[place]!;
        const byChanges = [isInside(pack, pack.clearance) ? [pack.clearance] : [], slowSwaps(pack, loose, 1)];
        if (asked.swaps === 2) byChanges.push(slowSwaps(pack, loose, 2));
        const fewest = byChanges.findIndex((clearances) => clearances.length > 0);
        expect(found.swaps).toBe(fewest < 0 ? null : fewest);
        if (fewest <= 0) continue;
        const aim = pack.lower === null || pack.upper === null ? pack.clearance : (pack.lower + pack.upper) / 2;
        const nearest = Math.min(...byChanges[fewest]!.map((clearance) => Math.abs(clearance - aim)));
        const equal = byChanges[fewest]!.filter((clearance) => Math.abs(clearance - aim) === nearest);
        expect(found.clearance).toBe(Math.max(...equal));
      }
      expect(answer.covered).toBe(answer.packs.filter(({ swaps }) => swaps !== null).length);
    }),
    { numRuns: 600 },
  );
});

test('agrees with trying every choice of heights to buy, tie rule and all', () => {
  fc.assert(
    fc.property(question, (asked) => {
      const { packs, buy } = answerTo(asked);
      const left = [...packs.keys()].filter((place) => packs[place]!.swaps === null);
      const coveredBy = (heights: readonly number[]) =>
        left.filter((place) => heights.some((height) => slowSwaps(asked.packs[place]!, [height], 1).length > 0));
      const sold = [...new Set(asked.forSale)].toSorted((a, b) => a - b);
      const useful = sold.filter((height) => coveredBy([height]).length > 0);
      const middle = (Math.min(...useful) + Math.max(...useful)) / 2;
      const expected: object[] = [];
      for (let pieces = 1, before = 0; pieces <= asked.most!; pieces++) {
        const choices = combinations(sold, pieces).map((heights) => ({ heights, packs: coveredBy(heights) }));
        const most = Math.max(0, ...choices.map((choice) => choice.packs.length));
        if (most <= before) break;
        before = most;
        const fromMiddle = ({ heights }: { heights: number[] }) =>
          heights.reduce((sum, height) => sum + Math.abs(height - middle), 0);
        // The sort is stable and the choices come thinner heights first.
        const best = choices
          .filter((choice) => choice.packs.length === most)
          .toSorted((a, b) => fromMiddle(a) - fromMiddle(b));
        expected.push(best[0]!);
      }
      expect(buy).toEqual(expected);
    }),
    { numRuns: 600 },
  );
});

test('a clearance is in reach exactly where a pack that reads it is covered', () => {
  fc.assert(
    fc.property(pack, question, ({ fitted, lower, upper }, { bin, swaps = 1 }) => {
      const reach = clearancesInReach({ fitted, lower, upper, bin, swaps });
      if (!reach.ok) throw new Error(reach.refusal.message);
      const packs = Array.from({ length: 121 }, (_, place) => ({ fitted, lower, upper, clearance: place - 60 }));
      const { packs: covers } = answerTo({ packs, bin, swaps });
      for (const [place, { clearance }] of packs.entries()) {
        const isInReach = reach.value.some(
          ({ from, to }) => clearance >= (from ?? clearance) && clearance <= (to ?? clearance),
        );
        expect(covers[place]!.swaps !== null).toBe(isInReach);
      }
      for (const [place, { from }] of reach.value.entries()) {
        const before = reach.value[place - 1];
        if (before) expect(from! - before.to!).toBeGreaterThan(1);
      }
    }),
    { numRuns: 300 },
  );
});

test('more in the bin, or a wider band, never covers less', () => {
  fc.assert(
    fc.property(question, fc.integer({ min: 1, max: 16 }), (asked, height) => {
      const { covered } = answerTo(asked);
      expect(answerTo({ ...asked, bin: [...asked.bin, { height, count: 1 }] }).covered).toBeGreaterThanOrEqual(covered);
      const wider = asked.packs.map((each) => ({ ...each, upper: each.upper === null ? null : each.upper + 2 }));
      expect(answerTo({ ...asked, packs: wider }).covered).toBeGreaterThanOrEqual(covered);
    }),
  );
});

test('says in one sentence why it cannot answer', () => {
  const fine = { packs: [{ ...forward, clearance: 320 }], bin: single(830), forSale: [840], most: 2 };
  const refusalOf = (change: Partial<CoverQuestion>) => {
    const answer = coverPacks({ ...fine, ...change });
    return answer.ok ? 'answered' : answer.refusal.code;
  };
  const packs = (change: Partial<PackToCover>) => ({ packs: [{ ...fine.packs[0]!, ...change }] });
  expect(refusalOf({})).toBe('answered');
  for (const bad of [0, -1, 0.5, Number.NaN, 1e14]) {
    expect(refusalOf({ bin: single(bad) })).toBe('bad-height');
    expect(refusalOf({ forSale: [bad] })).toBe('bad-height');
    expect(refusalOf(packs({ fitted: [bad] }))).toBe('bad-height');
  }
  for (const count of [-1, 0.5, Number.NaN]) expect(refusalOf({ bin: [{ height: 8, count }] })).toBe('bad-count');
  for (const bad of [0.5, Number.NaN, Number.POSITIVE_INFINITY, 1e14]) {
    expect(refusalOf(packs({ clearance: bad }))).toBe('bad-number');
    expect(refusalOf(packs({ lower: bad }))).toBe('bad-number');
  }
  for (const most of [0, 5, 1.5]) expect(refusalOf({ most })).toBe('bad-number');
  expect(refusalOf(packs({ lower: 301 }))).toBe('limits-upside-down');
  expect(refusalOf(packs({ fitted: Array.from({ length: 41 }, () => 8) }))).toBe('too-many-slots');
  // Every height for sale fits another pack, and so many fours of them cannot all be counted.
  const strangers = Array.from({ length: 300 }, (_, clearance) => ({
    fitted: [80],
    clearance,
    lower: -500,
    upper: -500,
  }));
  const wanted = strangers.map(({ clearance }) => 80 + clearance + 500);
  expect(refusalOf({ packs: strangers, forSale: wanted, most: 4 })).toBe('too-many-heights');
  expect(refusalOf({ packs: strangers, forSale: wanted })).toBe('answered');
});
