// What to swap in one pack: the example unit's tables, the slow form, ties, refusals, what to buy.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextSwaps, type SwapAnswer, type SwapOption } from '../../app/selection/next-swaps.ts';
import type { SwapQuestion } from '../../app/selection/swap-question.ts';
import { problemsInSwaps } from '../../app/selection/verify.ts';
import { combinations, slowSwaps } from './slow-swaps.ts';
import { bandBetween, smallQuestion, spaceAfter, steels } from './swap-questions.ts';

function answerTo(question: SwapQuestion): SwapAnswer {
  const answer = nextSwaps(question);
  if (!answer.ok) throw new Error(answer.refusal.message);
  expect(problemsInSwaps(question, answer.value)).toEqual([]);
  return answer.value;
}

const heights = ({ remove, add }: Pick<SwapOption, 'remove' | 'add'>) => [
  remove.map((id) => Number(id.split(' ')[1])),
  add.map(({ height }) => height),
];

// Tenths of a thou. The example unit: Forward leaves 911 - 320 - 250 = 341 thou for steels, target 25, band 20-30.
const forward = steels(3410, [770, 765, 780, 775], [740, 755, 785, 795, 805, 830], {
  band: bandBetween(200, 300),
  target: 250,
  setsWanted: 20,
});

test('Forward: 32.0 as it is, 25.5 by one swap, 25.0 by three different pairs', () => {
  const { status, options } = answerTo(forward);
  expect(status).toBe('Optimal');
  expect(options.map(({ clearance }) => clearance).slice(0, 3)).toEqual([320, 255, 250]);
  expect(heights(options[1]!)).toEqual([[765], [830]]);
  expect(options[1]!.equallyGood).toHaveLength(1);
  expect(options[2]!.isListComplete).toBe(true);
  // Thinnest leave first among equals.
  expect(options[2]!.equallyGood.map(heights)).toEqual([
    [
      [765, 780],
      [785, 830],
    ],
    [
      [770, 775],
      [785, 830],
    ],
    [
      [775, 780],
      [795, 830],
    ],
  ]);
  expect(options.slice(3).map(({ isNoBetter }) => isNoBetter)).toEqual([true, true]);
});

test('Direct: 45.0 by one swap and in one way only', () => {
  // 1052 - 337 - 310 = 405 thou for steels, target 45, band 40-50.
  const { options } = answerTo(
    steels(4050, [920, 910, 925, 915], [840, 870, 895, 900, 930], {
      band: bandBetween(400, 500),
      target: 450,
      setsWanted: 20,
    }),
  );
  expect(options.map(({ clearance }) => clearance).slice(0, 2)).toEqual([380, 450]);
  expect(heights(options[1]!)).toEqual([[910], [840]]);
  expect(options[1]!.equallyGood).toHaveLength(1);
  expect(options[1]!.isNoBetter).toBe(false);
  expect(options.slice(2).every(({ isNoBetter }) => isNoBetter)).toBe(true);
});

test('Low/reverse: the selective ring is a group of its own, and 86 gives 60 of 58', () => {
  // 1181 - 400 - 350 - 85 - 200 = 146 thou for the ring; found 74; target 58, band 45-70.
  const ring = { id: 'ring 74', height: 740 };
  const { options } = answerTo({
    groups: [
      {
        name: 'snap ring',
        fitted: [ring],
        loose: [620, 740, 860, 980].map((height) => ({ id: `sold ${height}`, height, count: 1, uncertaintyClass: 1 })),
      },
    ],
    predict: (inPack, [, fromCatalogue]) => ({
      spaceLeft: spaceAfter(1460, [ring], inPack),
      variance: 100 + 25 * fromCatalogue!,
    }),
    band: bandBetween(450, 700),
    target: 580,
  });
  expect(options.map(({ clearance }) => clearance)).toEqual([720, 600]);
  expect(options[1]!.add).toEqual([{ id: 'sold 860', group: 'snap ring', height: 860 }]);
});

test('agrees with the slow form, and every answer adds up', () => {
  fc.assert(
    fc.property(smallQuestion, (question) => {
      const { options } = answerTo(question);
      const slow = slowSwaps(question);
      expect(options.map(({ changes }) => changes)).toEqual(slow.map(({ changes }) => changes));
      for (const [place, option] of options.entries()) {
        const expected = slow[place]!;
        expect(option.absoluteDeviation).toBeCloseTo(expected.deviation, 9);
        expect(option.clearance).toBeCloseTo(expected.clearance, 9);
        if (question.band) expect(option.chance).toBeGreaterThanOrEqual(expected.chance - 1e-12);
        expect(option.isListComplete).toBe(true);
        expect(option.equallyGood).toHaveLength(expected.sets.size);
      }
    }),
    { numRuns: 400 },
  );
});

test('every pack of up to three steels from three heights, every handful of loose ones, agrees with the slow form', () => {
  const packs = [1, 2, 3].flatMap((size) => multisets([5, 6, 8], size));
  const bins = [0, 1, 2, 3].flatMap((size) => multisets([4, 6, 7], size));
  let compared = 0;
  for (const pack of packs) {
    for (const bin of bins) {
      for (const space of [14, 19, 24]) {
        const fitted = pack.map((height, place) => ({ id: `in ${place}`, height }));
        const loose = bin.map((height, place) => ({ id: `loose ${place}`, height, count: 1, uncertaintyClass: 0 }));
        const question: SwapQuestion = {
          groups: [{ name: 'steels', fitted, loose }],
          predict: (inPack) => ({ spaceLeft: spaceAfter(space, fitted, inPack), variance: 1 }),
          band: bandBetween(2, 5),
          target: 3,
          setsWanted: 100,
        };
        const { options } = answerTo(question);
        const found = options.map((option) => [option.changes, option.clearance, option.equallyGood.length]);
        expect(found).toEqual(
          slowSwaps(question).map(({ changes, clearance, sets }) => [changes, clearance, sets.size]),
        );
        compared++;
      }
    }
  }
  expect(compared).toBe(19 * 20 * 3);
});

test('the order in which pieces, cans and groups are listed never matters', () => {
  fc.assert(
    fc.property(smallQuestion, (question) => {
      const shuffled: SwapQuestion = {
        ...question,
        groups: question.groups.toReversed().map((group) => ({
          ...group,
          fitted: group.fitted.toReversed(),
          readBefore: (group.readBefore ?? []).toReversed(),
          loose: group.loose.toReversed(),
        })),
        // The same facts under the other numbering of the named pieces.
        predict: (inPack, added) => question.predict(renumbered(question, inPack), added),
      };
      expect(answerTo(shuffled)).toEqual(answerTo(question));
    }),
  );
});

test('asked twice, answers twice the same', () => {
  fc.assert(
    fc.property(smallQuestion, (question) => {
      expect(answerTo(question)).toEqual(answerTo(question));
    }),
  );
});

test('in coarser or shifted numbers the answer is the same', () => {
  fc.assert(
    fc.property(smallQuestion, fc.integer({ min: 2, max: 2540 }), (question, scale) => {
      const { options } = answerTo({ ...question, band: null });
      const finer = answerTo({
        ...question,
        band: null,
        target: question.target * scale,
        groups: question.groups.map((group) => ({
          ...group,
          fitted: group.fitted.map((piece) => ({ ...piece, height: piece.height * scale })),
          readBefore: (group.readBefore ?? []).map((piece) => ({ ...piece, height: piece.height * scale })),
          loose: group.loose.map((piece) => ({ ...piece, height: piece.height * scale })),
        })),
        predict: (inPack, added) => ({ variance: 1, spaceLeft: scale * question.predict(inPack, added).spaceLeft }),
      });
      expect(finer.options.map(({ remove }) => remove)).toEqual(options.map(({ remove }) => remove));
    }),
  );
});

test('a better known piece wins over an equal one, and the surer plan over the nearer one', () => {
  const base = steels(30, [10, 10], [], { band: bandBetween(8, 12), target: 10 });
  const fitted = [
    { id: 'a', height: 4 },
    { id: 'b', height: 10 },
  ];
  const loose = (id: string, height: number, uncertaintyClass: number) => ({ id, height, count: 1, uncertaintyClass });
  const withLoose = (...pieces: ReturnType<typeof loose>[]): SwapQuestion => ({
    ...base,
    groups: [{ ...base.groups[0]!, fitted, loose: pieces }],
    predict: (inPack, added) => ({ spaceLeft: spaceAfter(30, fitted, inPack), variance: 1 + 99 * (added[1] ?? 0) }),
  });
  expect(answerTo(withLoose(loose('guess', 10, 1), loose('miked', 10, 0))).options[1]!.add[0]!.id).toBe('miked');
  // 10 exactly but hardly known, or 11 and sure: the chance decides.
  const surer = answerTo(withLoose(loose('guess', 10, 1), loose('miked', 9, 0))).options[1]!;
  expect([surer.add[0]!.id, surer.clearance]).toEqual(['miked', 11]);
});

test('where every chance is as good, the nearest to an off-centre target wins', () => {
  const sure = { lower: 0, upper: 100, chance: (clearance: number) => (clearance >= 0 && clearance <= 100 ? 1 : 0) };
  const { options } = answerTo(steels(100, [50], [20, 30, 70, 90], { band: sure, target: 11 }));
  expect(options.map(({ clearance }) => clearance)).toEqual([50, 10]);
});

test('with a minimum only, room is what counts; with the target it is what is equal', () => {
  const { options } = answerTo(steels(100, [50], [40, 60, 80], { band: bandBetween(30, null), target: 45 }));
  expect(options[1]!.clearance).toBe(60);
});

test('nothing fits: which limit, how near, and the height to buy', () => {
  const tight = answerTo(steels(100, [50, 45], [44, 49], { band: bandBetween(20, 24), target: 22 }));
  expect(tight).toMatchObject({ status: 'Infeasible', blockedBy: 'lower limit', buy: null });
  if (tight.status !== 'Infeasible') return;
  // 100 - 44 - 45 = 11, 9 short of 20.
  expect(tight.nearest).toMatchObject({ changes: 1, remove: ['in 50'], clearance: 11, outsideBy: 9 });

  const loose = answerTo(steels(100, [50, 30], [31, 33], { band: bandBetween(4, 8), target: 6 }));
  // 100 - 50 - 33 = 17, 9 above 8; a 44 beside the 50 gives 6, and lies between the 30 and the 50 known.
  expect(loose).toMatchObject({
    status: 'Infeasible',
    blockedBy: 'upper limit',
    buy: { height: 44, pieces: 1, changes: 1 },
  });

  const sold = answerTo({
    ...steels(100, [50, 30], [31, 33], { band: bandBetween(4, 8), target: 6 }),
    groups: [{ ...steels(100, [50, 30], [31, 33], { band: null, target: 6 }).groups[0]!, forSale: [60, 43] }],
  });
  expect(sold).toMatchObject({ buy: { height: 43, pieces: 1, clearance: 7 } });

  const gap = answerTo(steels(100, [50], [60, 95], { band: bandBetween(20, 30), target: 25 }));
  expect(gap).toMatchObject({ status: 'Infeasible', blockedBy: 'between', buy: { height: 75, pieces: 1 } });
});

test('what there is to buy really is the fewest: no single piece of any known height would do', () => {
  // 100 for two plates; 40s and a 60 known; wanted 3: 97 = 60 + 37 or 57 + 40.
  const answer = answerTo(steels(100, [40, 41], [42], { band: bandBetween(2, 4), target: 3 }));
  // Known heights end at 42, and 42 + 42 leaves 16: nothing between 40 and 42 can do it.
  expect(answer).toMatchObject({ status: 'Infeasible', buy: null });
});

test('says in one sentence why it cannot answer', () => {
  const fine = steels(100, [50], [40], { band: null, target: 10 });
  const group = fine.groups[0]!;
  const refusalOf = (change: Partial<SwapQuestion>) => {
    const answer = nextSwaps({ ...fine, ...change });
    return answer.ok ? 'answered' : answer.refusal.code;
  };
  const loose = (change: object) => [{ ...group, loose: [{ ...group.loose[0]!, ...change }] }];
  expect(refusalOf({})).toBe('answered');
  expect(refusalOf({ groups: [] })).toBe('no-adjuster');
  expect(refusalOf({ groups: [{ ...group, fitted: [] }] })).toBe('no-adjuster');
  const thirteen = Array.from({ length: 13 }, (_, place) => ({ id: `${place}`, height: 1 }));
  expect(refusalOf({ groups: [{ ...group, fitted: thirteen }] })).toBe('too-many-slots');
  const sixteen = Array.from({ length: 16 }, (_, place) => ({ id: `${place}`, height: 1 }));
  expect(refusalOf({ groups: [{ ...group, readBefore: sixteen }] })).toBe('too-many-pieces');
  for (const height of [0, -1, 1.5, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(refusalOf({ groups: loose({ height }) })).toBe('bad-height');
  }
  for (const count of [0, -1, 0.5, Number.NaN]) expect(refusalOf({ groups: loose({ count }) })).toBe('bad-count');
  for (const uncertaintyClass of [-1, 6, 0.5])
    expect(refusalOf({ groups: loose({ uncertaintyClass }) })).toBe('bad-class');
  expect(refusalOf({ groups: loose({ id: 'in 50' }) })).toBe('piece-twice');
  expect(refusalOf({ groups: [group, { ...group, fitted: [], loose: [] }] })).toBe('group-twice');
  expect(refusalOf({ band: bandBetween(5, 4) })).toBe('limits-upside-down');
  expect(refusalOf({ target: Number.NaN })).toBe('bad-limits');
  expect(
    refusalOf({ groups: [{ ...group, loose: [...group.loose, ...loose({ id: 'far', height: 10 ** 9 })[0]!.loose] }] }),
  ).toBe('answered');
  const far = [10 ** 9, 10 ** 9 + 1].map((height) => ({ id: `${height}`, height, count: 1, uncertaintyClass: 0 }));
  expect(refusalOf({ groups: [{ ...group, loose: [...group.loose, ...far] }] })).toBe('too-fine');
});

function multisets(from: readonly number[], size: number): number[][] {
  const copies = from.flatMap((height) => Array.from({ length: size }, () => height));
  return [...new Map(combinations(copies, size).map((set) => [String(set), set])).values()];
}

/** The bits of `inPack` when groups, and in them fitted pieces and those read before, are numbered backwards. */
function renumbered(question: SwapQuestion, inPack: number): number {
  const ids = question.groups.flatMap(({ fitted, readBefore = [] }) => [...fitted, ...readBefore]).map(({ id }) => id);
  const backwards = question.groups
    .toReversed()
    .flatMap(({ fitted, readBefore = [] }) => [...fitted.toReversed(), ...readBefore.toReversed()]);
  return backwards.reduce((bits, { id }, place) => bits | (((inPack >> place) & 1) << ids.indexOf(id)), 0);
}
