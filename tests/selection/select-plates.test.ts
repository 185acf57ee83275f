// Choosing plates from scratch: classic subset sums, two synthetic packs, the slow form, refusals.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type PlateRequest, type PlateSelection, selectPlates } from '../../app/selection/select-plates.ts';
import { problemsInSelection } from '../../app/selection/verify.ts';

function selectionFor(request: PlateRequest): PlateSelection {
  const selection = selectPlates(request);
  if (!selection.ok) throw new Error(selection.refusal.message);
  expect(problemsInSelection(request, selection.value)).toEqual([]);
  return selection.value;
}

/** Index sets of every way to make `target`, over all sizes up to `most`. */
function subsetSums(weights: readonly number[], target: number, most: number): number[][] {
  const found: number[][] = [];
  for (let plates = 1; plates <= most; plates++) {
    const selection = selectionFor({
      space: target,
      plates,
      thicknesses: weights,
      stock: weights.map(() => 1),
      target: 0,
      lower: 0,
      upper: 0,
      setsWanted: 100,
    });
    if (selection.status === 'Infeasible') continue;
    expect(selection.isListComplete).toBe(true);
    for (const counts of selection.optimalSets) found.push([...counts.keys()].filter((place) => counts[place] === 1));
  }
  return found.toSorted((a, b) => (String(a) < String(b) ? -1 : 1));
}

// Classic subset-sum instances, the weights quoted from memory; the numbers of solutions were proved by exhaustive search
// outside this project.
test('subset sum A: three exact solutions', () => {
  expect(subsetSums([15, 22, 14, 26, 32, 9, 16, 8], 53, 8)).toEqual([
    [0, 1, 6],
    [0, 2, 6, 7],
    [1, 2, 5, 7],
  ]);
});

test('subset sum B: one exact solution, of three weights', () => {
  const weights = [
    518533, 1037066, 2074132, 1648264, 796528, 1593056, 686112, 1372224, 244448, 488896, 977792, 1955584, 1411168,
    322336, 644672, 1289344, 78688, 157376, 314752, 629504, 1259008,
  ];
  expect(subsetSums(weights, 2463098, 4)).toEqual([[1, 4, 19]]);
});

test('subset sum C: one exact solution', () => {
  expect(subsetSums([267, 493, 869, 961, 1000, 1153, 1246, 1598, 1766, 1922], 5842, 10)).toEqual([[2, 3, 4, 6, 8]]);
});

// Two synthetic packs in micrometres; combinations and optima counted by exhaustive search outside this project.
test('pack of six: 25 µm off, in eighteen ways', () => {
  const selection = selectionFor({
    space: 11235,
    plates: 6,
    thicknesses: [1600, 1700, 1800, 1900, 2000, 2100],
    stock: [4, 4, 4, 4, 4, 4],
    target: 760,
    lower: 600,
    upper: 900,
    setsWanted: 100,
  });
  if (selection.status !== 'Optimal') throw new Error('infeasible');
  expect([selection.clearance, selection.absoluteDeviation, selection.isListComplete]).toEqual([735, 25, true]);
  const published = `4,0,0,0,1,1 3,1,0,1,0,1 3,1,0,0,2,0 3,0,2,0,0,1 3,0,1,1,1,0 3,0,0,3,0,0 2,2,1,0,0,1 2,2,0,1,1,0
    2,1,2,0,1,0 2,1,1,2,0,0 2,0,3,1,0,0 1,4,0,0,0,1 1,3,1,0,1,0 1,3,0,2,0,0 1,2,2,1,0,0 1,1,4,0,0,0 0,4,1,1,0,0 0,3,3,0,0,0`;
  expect(selection.optimalSets.map(String).toSorted()).toEqual(published.split(/\s+/).toSorted());
  // The stated tie rule: the thickest plate as thin as can be.
  expect(selection.counts).toEqual([0, 3, 3, 0, 0, 0]);
});

test('pack of five with scarce stock: 45 µm off, in two ways', () => {
  const selection = selectionFor({
    space: 9137,
    plates: 5,
    thicknesses: [1524, 1651, 1778, 1829, 1905, 2032],
    stock: [2, 1, 3, 0, 5, 1],
    target: 800,
    lower: 500,
    upper: 1100,
    setsWanted: 100,
  });
  expect(selection).toMatchObject({ status: 'Optimal', clearance: 755, absoluteDeviation: 45, isListComplete: true });
  if (selection.status !== 'Optimal') return;
  expect(selection.optimalSets).toEqual([
    [2, 0, 3, 0, 0, 0],
    [2, 1, 1, 0, 1, 0],
  ]);
});

const smallRequest: fc.Arbitrary<PlateRequest> = fc
  .record({
    bin: fc.array(fc.tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 0, max: 3 })), { maxLength: 5 }),
    plates: fc.integer({ min: 1, max: 4 }),
    space: fc.integer({ min: 0, max: 120 }),
    limits: fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 30 })),
  })
  .map(({ bin, limits, ...rest }) => {
    const [lower, target, upper] = limits.toSorted((a, b) => a - b) as [number, number, number];
    const thicknesses = bin.map(([thickness]) => thickness);
    return { ...rest, thicknesses, stock: bin.map(([, count]) => count), lower, target, upper, setsWanted: 1000 };
  });

/** Every way to draw so many plates, as counts. */
function everyDraw(stock: readonly number[], plates: number): number[][] {
  const [first, ...rest] = stock;
  if (first === undefined) return plates === 0 ? [[]] : [];
  const draws: number[][] = [];
  for (let count = 0; count <= Math.min(first, plates); count++) {
    for (const others of everyDraw(rest, plates - count)) draws.push([count, ...others]);
  }
  return draws;
}

test('agrees with drawing every possible handful', () => {
  fc.assert(
    fc.property(smallRequest, (request) => {
      const { space, plates, thicknesses, stock, target, lower, upper } = request;
      const clearances = everyDraw(stock, plates).map((counts) =>
        counts.reduce((left, count, place) => left - count * thicknesses[place]!, space),
      );
      const inside = clearances.filter((clearance) => clearance >= lower && clearance <= upper);
      const selection = selectionFor(request);
      if (inside.length > 0) {
        const deviation = Math.min(...inside.map((clearance) => Math.abs(clearance - target)));
        const best = inside.filter((clearance) => Math.abs(clearance - target) === deviation);
        expect(selection).toMatchObject({
          status: 'Optimal',
          absoluteDeviation: deviation,
          clearance: Math.max(...best),
        });
        const isWithoutRepeats = new Set(thicknesses).size === thicknesses.length;
        if (selection.status === 'Optimal' && isWithoutRepeats) expect(selection.optimalSets).toHaveLength(best.length);
        return;
      }
      if (selection.status !== 'Infeasible') throw new Error('says it can be done');
      if (clearances.length === 0) {
        expect(selection.blockedBy).toBe('stock');
        return;
      }
      const isTight = clearances.some((clearance) => clearance < lower);
      const isLoose = clearances.some((clearance) => clearance > upper);
      expect(selection.blockedBy).toBe(isTight && isLoose ? 'between' : isTight ? 'lower limit' : 'upper limit');
      const outside = clearances.map((clearance) => Math.max(lower - clearance, clearance - upper));
      const { clearance } = selection.nearest!;
      expect(Math.max(lower - clearance, clearance - upper)).toBe(Math.min(...outside));
    }),
    { numRuns: 1000 },
  );
});

test('none in stock of the one that fits: buy two of it', () => {
  // 1000 for two plates, wanted 200: 800 of plates, as 300 and 500 or as 400 twice.
  const pack = { space: 1000, plates: 2, target: 200, lower: 195, upper: 205 };
  const plates = { ...pack, thicknesses: [300, 400, 500], stock: [0, 0, 1] };
  expect(selectionFor(plates)).toMatchObject({
    status: 'Infeasible',
    blockedBy: 'stock',
    buy: { thickness: 300, pieces: 1, isListed: true, counts: [0, 0, 1], clearance: 200 },
  });
  expect(selectionFor({ ...plates, stock: [0, 0, 0] })).toMatchObject({ buy: { thickness: 400, pieces: 2 } });
  expect(selectionFor({ ...plates, thicknesses: [310, 400, 510], stock: [2, 0, 2] })).toMatchObject({
    blockedBy: 'between',
    buy: { thickness: 400, pieces: 2, isListed: true, counts: [0, 0, 0], clearance: 200 },
  });
  // Neither listed thickness helps in any number, but 405 to 415 beside the 390 lie between them; 410 on the spot.
  expect(selectionFor({ ...plates, thicknesses: [390, 450], stock: [1, 1] })).toMatchObject({
    buy: { thickness: 410, pieces: 1, isListed: false, counts: [1, 0], clearance: 200 },
  });
  expect(selectionFor({ ...plates, thicknesses: [300], stock: [2] })).toMatchObject({ buy: null });
  expect(selectionFor({ ...plates, thicknesses: [], stock: [] })).toMatchObject({ blockedBy: 'stock', buy: null });
});

test('what it says to buy is the best by the rule, among all ways to buy one listed thickness', () => {
  fc.assert(
    fc.property(smallRequest, (request) => {
      const selection = selectionFor(request);
      if (selection.status !== 'Infeasible') return;
      const { space, plates, thicknesses, stock, target, lower, upper } = request;
      const clearancesWith = (thickness: number, pieces: number) =>
        everyDraw(stock, plates - pieces)
          .map((counts) => counts.reduce((left, count, place) => left - count * thicknesses[place]!, space))
          .map((left) => left - pieces * thickness)
          .filter((clearance) => clearance >= lower && clearance <= upper);
      const middle = (Math.min(...thicknesses) + Math.max(...thicknesses)) / 2;
      const ways = [1, 2, 3, 4]
        .filter((pieces) => pieces <= plates)
        .flatMap((pieces) =>
          thicknesses.flatMap((thickness) =>
            clearancesWith(thickness, pieces).map((clearance) => ({ thickness, pieces, clearance })),
          ),
        )
        .toSorted(
          (a, b) =>
            a.pieces - b.pieces ||
            Math.abs(a.clearance - target) - Math.abs(b.clearance - target) ||
            Math.abs(a.thickness - middle) - Math.abs(b.thickness - middle) ||
            a.thickness - b.thickness ||
            b.clearance - a.clearance,
        );
      const { buy } = selection;
      if (ways[0]) {
        expect(buy).toMatchObject({ ...ways[0], isListed: true });
        return;
      }
      // No listed one helps: the fewest of any other between them.
      const between = Array.from({ length: 41 }, (_, height) => height).filter(
        (height) => height >= Math.min(...thicknesses) && height <= Math.max(...thicknesses),
      );
      const fewest = [1, 2, 3, 4].find(
        (pieces) => pieces <= plates && between.some((height) => clearancesWith(height, pieces).length > 0),
      );
      expect(buy?.pieces).toBe(fewest);
    }),
    { numRuns: 400 },
  );
});

test('says in one sentence why it cannot answer', () => {
  const fine = { space: 100, plates: 2, thicknesses: [30, 40], stock: [1, 2], target: 25, lower: 20, upper: 30 };
  const refusalOf = (change: Partial<PlateRequest>) => {
    const selection = selectPlates({ ...fine, ...change });
    return selection.ok ? 'answered' : selection.refusal.code;
  };
  expect(refusalOf({})).toBe('answered');
  expect(refusalOf({ stock: [1] })).toBe('length-mismatch');
  for (const bad of [0, -30, 30.5, Number.NaN]) expect(refusalOf({ thicknesses: [bad, 40] })).toBe('bad-height');
  for (const bad of [-1, 0.5, Number.POSITIVE_INFINITY]) expect(refusalOf({ stock: [bad, 1] })).toBe('bad-count');
  for (const plates of [0, -1, 1.5, 41]) expect(refusalOf({ plates })).toBe('bad-plates');
  for (const space of [0.5, Number.NaN]) expect(refusalOf({ space })).toBe('bad-number');
  for (const target of [19, 31]) expect(refusalOf({ target })).toBe('target-outside');
  expect(refusalOf({ thicknesses: [30, 1e14] })).toBe('bad-height');
  expect(refusalOf({ stock: [1, 1e14] })).toBe('bad-count');
  for (const huge of [1e14, -1e14]) expect(refusalOf({ space: huge })).toBe('bad-number');
  expect(refusalOf({ lower: 31 })).toBe('limits-upside-down');
  expect(refusalOf({ thicknesses: [], stock: [] })).toBe('answered');
});
