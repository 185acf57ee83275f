// Several packs from the same plates: a published case, every sharing tried, never worse than taking turns, budgets.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { JointRequest, PackRequest } from '../../app/selection/joint-request.ts';
import { selectPlates } from '../../app/selection/select-plates.ts';
import { type JointSelection, selectPlatesJointly } from '../../app/selection/select-plates-jointly.ts';
import { problemsInJointSelection } from '../../app/selection/verify.ts';

function selectionFor(request: JointRequest): JointSelection {
  const selection = selectPlatesJointly(request);
  if (!selection.ok) throw new Error(selection.refusal.message);
  expect(problemsInJointSelection(request, selection.value)).toEqual([]);
  return selection.value;
}

// A synthetic case in micrometres; its optima were found by exhaustive search outside this project.
const twoPacks: JointRequest = {
  thicknesses: [1700, 1800, 1900, 2000],
  stock: [2, 2, 1, 3],
  packs: [
    { space: 6410, plates: 3, target: 700, lower: 500, upper: 900 },
    { space: 6350, plates: 3, target: 760, lower: 500, upper: 900 },
  ],
  objective: 'sum',
};

test('two packs: 20 µm in all, and 10 then 20 with the largest first', () => {
  expect(selectionFor(twoPacks)).toMatchObject({ status: 'Optimal', sum: 20 });
  const largest = selectionFor({ ...twoPacks, objective: 'largest' });
  expect(largest).toMatchObject({ status: 'Optimal', largest: 10, sum: 20 });
  const published = ['1,0,0,2 0,2,0,1', '1,0,0,2 1,0,1,1'];
  for (const selection of [selectionFor(twoPacks), largest]) {
    if (selection.status !== 'Optimal') throw new Error(selection.status);
    expect(published).toContain(selection.packs.map(({ counts }) => String(counts)).join(' '));
    expect(selection.packs.map(({ clearance }) => clearance)).toEqual([710, 750]);
  }
});

/** Every way to give the packs their plates: the deviations of each way that keeps the limits, and all clearances. */
function everySharing({ thicknesses, stock, packs }: JointRequest): { deviations: number[]; outside: number }[] {
  let ways: { left: readonly number[]; deviations: number[]; outside: number }[] = [
    { left: stock, deviations: [], outside: 0 },
  ];
  for (const { space, plates, target, lower, upper } of packs) {
    ways = ways.flatMap(({ left, deviations, outside }) =>
      everyDraw(left, plates).map((counts) => {
        const clearance = counts.reduce((rest, count, place) => rest - count * thicknesses[place]!, space);
        return {
          left: left.map((count, place) => count - counts[place]!),
          deviations: [...deviations, Math.abs(clearance - target)],
          outside: outside + Math.max(0, lower - clearance, clearance - upper),
        };
      }),
    );
  }
  return ways;
}

function everyDraw(stock: readonly number[], plates: number): number[][] {
  const [first, ...rest] = stock;
  if (first === undefined) return plates === 0 ? [[]] : [];
  const draws: number[][] = [];
  for (let count = 0; count <= Math.min(first, plates); count++) {
    for (const others of everyDraw(rest, plates - count)) draws.push([count, ...others]);
  }
  return draws;
}

const sumOf = (numbers: readonly number[]) => numbers.reduce((sum, each) => sum + each, 0);

const smallPack: fc.Arbitrary<PackRequest> = fc
  .record({
    space: fc.integer({ min: 10, max: 60 }),
    plates: fc.integer({ min: 1, max: 3 }),
    target: fc.integer({ min: 0, max: 20 }),
    tight: fc.integer({ min: 0, max: 12 }),
    loose: fc.integer({ min: 0, max: 12 }),
  })
  .map(({ space, plates, target, tight, loose }) => ({
    space,
    plates,
    target,
    lower: target - tight,
    upper: target + loose,
  }));

const smallRequest: fc.Arbitrary<JointRequest> = fc
  .record({
    bin: fc.uniqueArray(fc.tuple(fc.integer({ min: 5, max: 20 }), fc.integer({ min: 0, max: 4 })), {
      maxLength: 5,
      minLength: 1,
      selector: ([height]) => height,
    }),
    packs: fc.array(smallPack, { minLength: 1, maxLength: 3 }),
    objective: fc.constantFrom('sum' as const, 'largest' as const),
  })
  .map(({ bin, ...rest }) => ({
    ...rest,
    thicknesses: bin.map(([height]) => height),
    stock: bin.map(([, count]) => count),
  }));

test('agrees with trying every sharing', () => {
  fc.assert(
    fc.property(smallRequest, (request) => {
      const ways = everySharing(request);
      const allowed = ways.filter(({ outside }) => outside === 0).map(({ deviations }) => deviations);
      const selection = selectionFor(request);
      if (allowed.length > 0) {
        const largest = Math.min(...allowed.map((deviations) => Math.max(...deviations)));
        const considered =
          request.objective === 'sum' ? allowed : allowed.filter((each) => Math.max(...each) === largest);
        expect(selection).toMatchObject({ status: 'Optimal', sum: Math.min(...considered.map(sumOf)) });
        if (request.objective === 'largest') expect(selection).toMatchObject({ largest });
        return;
      }
      if (selection.status !== 'Infeasible') throw new Error(`says ${selection.status}`);
      if (ways.length === 0) {
        expect(selection).toMatchObject({ blockedBy: 'stock', nearest: null });
        return;
      }
      const outsideBy = Math.min(...ways.map(({ outside }) => outside));
      expect(selection.nearest).toMatchObject({ outsideBy, isProvenNearest: true });
      const isAlone = (pack: PackRequest) =>
        everySharing({ ...request, packs: [pack] }).some(({ outside }) => outside === 0);
      const blocked = request.packs.findIndex((pack) => !isAlone(pack));
      expect(selection.blockedBy).toBe(blocked < 0 ? 'jointly' : blocked);
    }),
    { numRuns: 600 },
  );
});

test('every sharing of every small bin between two packs of two agrees with trying them all', () => {
  let compared = 0;
  for (const stock of everyDraw([2, 2, 2, 2], 5)) {
    for (const space of [24, 27, 31]) {
      for (const objective of ['sum', 'largest'] as const) {
        const packs = [space, 29].map((each) => ({ space: each, plates: 2, target: 6, lower: 0, upper: 12 }));
        const request: JointRequest = { thicknesses: [8, 9, 11, 15], stock, packs, objective };
        const allowed = everySharing(request).filter(({ outside }) => outside === 0);
        const selection = selectionFor(request);
        expect(selection.status).toBe(allowed.length > 0 ? 'Optimal' : 'Infeasible');
        if (selection.status !== 'Optimal') continue;
        const largest = Math.min(...allowed.map(({ deviations }) => Math.max(...deviations)));
        const best = allowed.filter(({ deviations }) => objective === 'sum' || Math.max(...deviations) === largest);
        expect(selection.sum).toBe(Math.min(...best.map(({ deviations }) => sumOf(deviations))));
        compared++;
      }
    }
  }
  expect(compared).toBeGreaterThan(50);
});

test('from a scarce bin of single plates it agrees with trying every sharing', () => {
  const scarceBin = fc.record({
    heights: fc.array(fc.tuple(fc.integer({ min: 0, max: 2 }), fc.integer({ min: -1, max: 1 })), {
      minLength: 7,
      maxLength: 8,
    }),
    wishes: fc.array(fc.integer({ min: -30, max: 30 }), { minLength: 3, maxLength: 3 }),
    objective: fc.constantFrom('sum' as const, 'largest' as const),
  });
  fc.assert(
    fc.property(scarceBin, ({ heights, wishes, objective }) => {
      const thicknesses = heights.map(([can, off]) => 700 + 20 * can + off);
      const packs = wishes.map((wish) => ({ space: 1690 + wish, plates: 2, target: 250, lower: 100, upper: 400 }));
      const request: JointRequest = { thicknesses, stock: thicknesses.map(() => 1), packs, objective };
      const ways = everySharing(request).map(({ deviations }) => deviations);
      const largest = Math.min(...ways.map((deviations) => Math.max(...deviations)));
      const considered = objective === 'sum' ? ways : ways.filter((deviations) => Math.max(...deviations) === largest);
      expect(selectionFor(request)).toMatchObject({ status: 'Optimal', sum: Math.min(...considered.map(sumOf)) });
    }),
    { numRuns: 60 },
  );
});

/** Scarce enough that the cheap proofs do not always do. */
const scarceRequest: fc.Arbitrary<JointRequest> = fc
  .record({
    heights: fc.array(fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: -2, max: 2 })), {
      minLength: 16,
      maxLength: 20,
    }),
    wishes: fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 4, maxLength: 4 }),
    objective: fc.constantFrom('sum' as const, 'largest' as const),
  })
  .map(({ heights, wishes, objective }) => {
    const plates = heights.map(([can, off]) => 700 + 40 * can + off);
    const mean = Math.round(sumOf(plates) / plates.length);
    return {
      thicknesses: plates,
      stock: plates.map(() => 1),
      packs: wishes.map((wish) => ({ space: 4 * mean + wish + 250, plates: 4, target: 250, lower: 50, upper: 450 })),
      objective,
    };
  });

test('never worse than letting the packs choose one after another', () => {
  fc.assert(
    fc.property(scarceRequest, (request) => {
      const left = [...request.stock];
      const deviations: number[] = [];
      for (const pack of request.packs) {
        const own = selectPlates({ ...pack, thicknesses: request.thicknesses, stock: left });
        if (!own.ok) throw new Error(own.refusal.message);
        if (own.value.status === 'Infeasible') return;
        deviations.push(own.value.absoluteDeviation);
        for (const [place, count] of own.value.counts.entries()) left[place]! -= count;
      }
      const selection = selectionFor({ ...request, nodeBudget: 2000 });
      if (selection.status === 'Infeasible') throw new Error('says it cannot be done');
      const plan = selection.status === 'Optimal' ? selection : selection.best!;
      expect(plan[request.objective]).toBeLessThanOrEqual(
        request.objective === 'sum' ? sumOf(deviations) : Math.max(...deviations),
      );
    }),
    { numRuns: 30 },
  );
});

test('a budget that ends leaves a bound below the optimum and a best above it', () => {
  fc.assert(
    fc.property(scarceRequest, (request) => {
      const settled = selectionFor({ ...request, nodeBudget: 100_000 });
      const hurried = selectionFor({ ...request, nodeBudget: 10 });
      if (settled.status === 'BudgetExhausted') return;
      if (hurried.status !== 'BudgetExhausted') {
        expect(hurried).toEqual(settled);
        return;
      }
      if (settled.status === 'Infeasible') {
        expect(hurried.best).toBeNull();
        return;
      }
      expect(hurried.bound).toBeLessThanOrEqual(settled[hurried.boundOn]);
      if (hurried.best) expect(hurried.best[hurried.boundOn]).toBeGreaterThanOrEqual(settled[hurried.boundOn]);
    }),
    { numRuns: 10 },
  );
});

test('the order in which plates or packs are listed never changes what is reached', () => {
  fc.assert(
    fc.property(smallRequest, (request) => {
      const reached = (selection: JointSelection) =>
        selection.status === 'Optimal' ? [selection.sum, selection.largest] : [selection.status];
      const turned = {
        ...request,
        thicknesses: request.thicknesses.toReversed(),
        stock: request.stock.toReversed(),
        packs: request.packs.toReversed(),
      };
      const other = selectionFor(turned);
      const here = selectionFor(request);
      expect(other.status).toBe(here.status);
      if (request.objective === 'largest') expect(reached(other)).toEqual(reached(here));
      if (other.status === 'Optimal' && here.status === 'Optimal') expect(other.sum).toBe(here.sum);
    }),
    { numRuns: 200 },
  );
});

test('asked twice, answers twice the same', () => {
  fc.assert(
    fc.property(scarceRequest, (request) => {
      expect(selectPlatesJointly(request)).toEqual(selectPlatesJointly(request));
    }),
    { numRuns: 10 },
  );
});

test('not enough plates, a pack that cannot, and packs that cannot together', () => {
  const [first, second] = twoPacks.packs as [PackRequest, PackRequest];
  expect(selectionFor({ ...twoPacks, stock: [1, 1, 1, 1] })).toMatchObject({
    status: 'Infeasible',
    blockedBy: 'stock',
  });
  expect(selectionFor({ ...twoPacks, packs: [first, { ...second, space: 4000 }] })).toMatchObject({
    status: 'Infeasible',
    blockedBy: 1,
  });
  // Both want the only 30, each alone could have it: 40 - 30 = 10, and 40 - 20 = 20 lies outside.
  const pack = { space: 40, plates: 1, target: 10, lower: 5, upper: 15 };
  const both = selectionFor({ thicknesses: [20, 30], stock: [5, 1], packs: [pack, pack], objective: 'sum' });
  expect(both).toMatchObject({
    status: 'Infeasible',
    blockedBy: 'jointly',
    nearest: { outsideBy: 5, isProvenNearest: true },
  });
});

test('what to buy when the packs cannot all be brought in: the fewest of one thickness', () => {
  // Both want a 30 and there is one: a second.
  const pack = { space: 40, plates: 1, target: 10, lower: 5, upper: 15 };
  const both = selectionFor({ thicknesses: [20, 30], stock: [5, 1], packs: [pack, pack], objective: 'sum' });
  expect(both).toMatchObject({
    blockedBy: 'jointly',
    buy: { thickness: 30, pieces: 1, isProvenFewest: true, sum: 0, packs: [{ clearance: 10 }, { clearance: 10 }] },
  });
  // Nothing in stock: three packs, three of the 30; with 28 the sum would be 6.
  const none = { thicknesses: [28, 30, 50], stock: [0, 0, 0], packs: [pack, pack, pack] };
  for (const objective of ['sum', 'largest'] as const) {
    expect(selectionFor({ ...none, objective })).toMatchObject({
      blockedBy: 'stock',
      buy: { thickness: 30, pieces: 3, isProvenFewest: true, sum: 0 },
    });
  }
  expect(selectionFor({ ...none, thicknesses: [10, 50], stock: [0, 0], objective: 'sum' })).toMatchObject({
    buy: null,
  });
  // The second pack is the one that cannot: 90 - 2 x 40 = 10 wants two 40s.
  const wide = { space: 90, plates: 2, target: 10, lower: 5, upper: 15 };
  expect(
    selectionFor({ thicknesses: [20, 30, 40], stock: [2, 2, 0], packs: [pack, wide], objective: 'sum' }),
  ).toMatchObject({ blockedBy: 1, buy: { thickness: 40, pieces: 2, packs: [{ bought: 0 }, { bought: 2 }] } });
});

test('what to buy agrees with trying every listed thickness in every number', () => {
  let compared = 0;
  fc.assert(
    fc.property(smallRequest, (request) => {
      const selection = selectionFor(request);
      if (selection.status !== 'Infeasible') return;
      const { thicknesses, stock, packs, objective } = request;
      const plates = sumOf(packs.map((pack) => pack.plates));
      const bestWith = (thickness: number, pieces: number) => {
        const more = { ...request, thicknesses: [...thicknesses, thickness], stock: [...stock, pieces] };
        const values = everySharing(more)
          .filter(({ outside }) => outside === 0)
          .map(({ deviations }) => [Math.max(...deviations), sumOf(deviations)] as const);
        const largest = Math.min(...values.map(([each]) => each));
        const considered = objective === 'sum' ? values : values.filter(([each]) => each === largest);
        return considered.length === 0
          ? null
          : { thickness, largest, sum: Math.min(...considered.map(([, sum]) => sum)) };
      };
      const middle = (Math.min(...thicknesses) + Math.max(...thicknesses)) / 2;
      for (let pieces = 1; pieces <= plates; pieces++) {
        const [best] = thicknesses
          .map((thickness) => bestWith(thickness, pieces))
          .filter((way) => way !== null)
          .toSorted(
            (a, b) =>
              (objective === 'sum' ? 0 : a.largest - b.largest) ||
              a.sum - b.sum ||
              Math.abs(a.thickness - middle) - Math.abs(b.thickness - middle) ||
              a.thickness - b.thickness,
          );
        if (!best) continue;
        compared++;
        expect(selection.buy).toMatchObject({ thickness: best.thickness, pieces, isProvenFewest: true, sum: best.sum });
        return;
      }
      expect(selection.buy).toBeNull();
    }),
    { numRuns: 60 },
  );
  expect(compared).toBeGreaterThan(0);
});

test('says in one sentence why it cannot answer', () => {
  const refusalOf = (change: Partial<JointRequest>) => {
    const selection = selectPlatesJointly({ ...twoPacks, ...change });
    return selection.ok ? 'answered' : selection.refusal.code;
  };
  expect(refusalOf({})).toBe('answered');
  expect(refusalOf({ packs: [] })).toBe('bad-packs');
  expect(refusalOf({ stock: [1] })).toBe('length-mismatch');
  expect(refusalOf({ stock: [1, 2, 3, -1] })).toBe('bad-count');
  expect(refusalOf({ packs: [{ ...twoPacks.packs[0]!, plates: 0 }] })).toBe('bad-plates');
  expect(refusalOf({ packs: [{ ...twoPacks.packs[0]!, lower: 901 }] })).toBe('limits-upside-down');
  expect(refusalOf({ packs: [{ ...twoPacks.packs[0]!, target: Number.NaN }] })).toBe('bad-number');
  expect(refusalOf({ packs: [{ ...twoPacks.packs[0]!, target: 901 }] })).toBe('target-outside');
  expect(refusalOf({ packs: [{ ...twoPacks.packs[0]!, space: 1e14 }] })).toBe('bad-number');
  for (const nodeBudget of [-1, 0.5, Number.NaN]) expect(refusalOf({ nodeBudget })).toBe('bad-budget');
  expect(refusalOf({ thicknesses: [1, 10 ** 9, 10 ** 9 + 1, 5] })).toBe('too-fine');
});
