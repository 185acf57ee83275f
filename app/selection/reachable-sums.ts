// Which sums a bin can make with so many pieces, exactly, and which pieces make them.

/** Interchangeable loose pieces: one height, one group of slots, one uncertainty class. */
export type Lot = {
  readonly group: number;
  readonly uncertaintyClass: number;
  readonly height: number;
  readonly count: number;
};

/** How many pieces are taken, for each group and of each uncertainty class; both add up to `total`. */
export type Draw = {
  readonly index: number;
  readonly perGroup: readonly number[];
  readonly perClass: readonly number[];
  readonly total: number;
  /** The smallest sum there could be: the thinnest height of its group for every piece. */
  readonly floor: number;
};

/** So many pieces of one lot; `lot` counts in `ReachableSums.lots`. */
export type Take = { readonly lot: number; readonly pieces: number };

export type ReachableSums = {
  /** In the order given. */
  readonly lots: readonly Lot[];
  /** Fewest pieces first; the first takes nothing. */
  readonly draws: readonly Draw[];
  /** Sums are kept as whole steps above the draw's floor. */
  readonly step: number;
  /** One row of bits a draw, a bit for every sum. */
  readonly rows: Uint32Array;
  readonly rowStart: readonly number[];
  /** For every bit of `rows`: how many lots, in their order, suffice to make that sum. */
  readonly lotsNeeded: Uint16Array;
  /** The draw that one piece of a lot turns a draw into, and back; -1 where there is none. */
  readonly after: (draw: number, lot: number) => number;
  readonly before: (draw: number, lot: number) => number;
};

const largestTable = 2 ** 26;
const mostLots = 2 ** 16 - 1;

/**
 * Every sum that can be made from `lots` with at most `slots[g]` pieces of group g, for every draw; the order of the
 * lots decides ties, see `setsMaking`. Returns null where the heights are too finely divided for a table of 67 million
 * sums. Exact: a bit is set only by adding a piece that is there to a sum that can be made without it. 32 sums a word;
 * shifting a word by 32 shifts by 0 in this language, which is why whole words are counted apart.
 */
export function reachableSums(lots: readonly Lot[], slots: readonly number[], classes: number): ReachableSums | null {
  if (lots.length > mostLots) return null;
  const thinnest = slots.map(() => Number.POSITIVE_INFINITY);
  const thickest = slots.map(() => 0);
  for (const { group, height } of lots) {
    thinnest[group] = Math.min(thinnest[group]!, height);
    thickest[group] = Math.max(thickest[group]!, height);
  }
  let step = 0;
  for (const { group, height } of lots) step = greatestCommonDivisor(step, height - thinnest[group]!);
  step ||= 1;
  const spread = slots.map((_, group) => Math.max(0, (thickest[group]! - thinnest[group]!) / step) || 0);

  const { draws, after, before } = listDraws(lots, slots, classes, thinnest);
  const rowStart: number[] = [];
  let words = 0;
  for (const { perGroup } of draws) {
    rowStart.push(words);
    words += Math.floor(perGroup.reduce((sum, pieces, group) => sum + pieces * spread[group]!, 0) / 32) + 1;
    if (words * 32 > largestTable) return null;
  }
  const rows = new Uint32Array(words);
  const lotsNeeded = new Uint16Array(words * 32);
  const highest = new Int32Array(draws.length).fill(-1);
  rows[0] = 1;
  highest[0] = 0;

  const join = (to: number, from: number, shift: number, needed: number) => {
    const target = rowStart[to]! + (shift >>> 5);
    const source = rowStart[from]!;
    const bits = shift & 31;
    const last = highest[from]! >>> 5;
    let carried = 0;
    for (let word = 0; word <= last; word++) {
      const sums = rows[source + word]!;
      setNew(target + word, (sums << bits) | carried, needed);
      carried = bits === 0 ? 0 : sums >>> (32 - bits);
    }
    if (carried !== 0) setNew(target + last + 1, carried, needed);
    highest[to] = Math.max(highest[to]!, highest[from]! + shift);
  };
  const setNew = (word: number, sums: number, needed: number) => {
    let fresh = sums & ~rows[word]!;
    if (fresh === 0) return;
    rows[word]! |= fresh;
    for (; fresh !== 0; fresh &= fresh - 1) lotsNeeded[word * 32 + 31 - Math.clz32(fresh & -fresh)] = needed;
  };

  for (const [index, lot] of lots.entries()) {
    const shift = (lot.height - thinnest[lot.group]!) / step;
    if (lot.count >= slots[lot.group]!) {
      // As many as anybody could take: small draws first, so that a draw may already hold pieces of this lot.
      for (let draw = 0; draw < draws.length; draw++) {
        const to = after(draw, index);
        if (to >= 0 && highest[draw]! >= 0) join(to, draw, shift, index + 1);
      }
    } else {
      // Large draws first, so that no draw holds a piece of this lot when pieces are added to it.
      for (let draw = draws.length - 1; draw >= 0; draw--) {
        if (highest[draw]! < 0) continue;
        for (let pieces = 1, to = after(draw, index); pieces <= lot.count && to >= 0; pieces++) {
          join(to, draw, pieces * shift, index + 1);
          to = after(to, index);
        }
      }
    }
  }
  return { lots, draws, step, rows, rowStart, lotsNeeded, after, before };
}

/** The smallest sum of a draw at or above `wanted` (which need not be whole, nor finite), or null. */
export function sumAtOrAbove(reachable: ReachableSums, draw: number, wanted: number): number | null {
  const { rows, rowStart, draws, step } = reachable;
  const floor = draws[draw]!.floor;
  const bit = Math.max(0, Math.ceil((wanted - floor) / step));
  const start = rowStart[draw]!;
  const end = rowStart[draw + 1] ?? rows.length;
  let word = start + Math.floor(bit / 32);
  if (!(word < end)) return null;
  let sums = rows[word]! & (-1 << (bit & 31));
  while (sums === 0) {
    if (++word === end) return null;
    sums = rows[word]!;
  }
  return floor + step * ((word - start) * 32 + 31 - Math.clz32(sums & -sums));
}

/** The largest sum of a draw at or below `wanted` (which need not be whole, nor finite), or null. */
export function sumAtOrBelow(reachable: ReachableSums, draw: number, wanted: number): number | null {
  const { rows, rowStart, draws, step } = reachable;
  const floor = draws[draw]!.floor;
  const start = rowStart[draw]!;
  const end = rowStart[draw + 1] ?? rows.length;
  const bit = Math.min((end - start) * 32 - 1, Math.floor((wanted - floor) / step));
  if (!(bit >= 0)) return null;
  let word = start + Math.floor(bit / 32);
  let sums = rows[word]! & (-1 >>> (31 - (bit & 31)));
  while (sums === 0) {
    if (--word < start) return null;
    sums = rows[word]!;
  }
  return floor + step * ((word - start) * 32 + 31 - Math.clz32(sums));
}

/** The sum of a draw nearest to `wanted`, of two equally near the smaller, or null where the draw cannot be made. */
export function sumNearest(reachable: ReachableSums, draw: number, wanted: number): number | null {
  const below = sumAtOrBelow(reachable, draw, wanted);
  const above = sumAtOrAbove(reachable, draw, wanted);
  if (below === null || above === null) return below ?? above;
  return wanted - below <= above - wanted ? below : above;
}

/** Every sum of a draw from `least` to `most`, smallest first. */
export function* sumsBetween(reachable: ReachableSums, draw: number, least: number, most: number): Generator<number> {
  let sum = sumAtOrAbove(reachable, draw, least);
  while (sum !== null && sum <= most) {
    yield sum;
    sum = sumAtOrAbove(reachable, draw, sum + reachable.step);
  }
}

/** Whether the first `lots` lots alone can make this sum in this draw. */
export function isReachable(reachable: ReachableSums, draw: number, sum: number, lots = Number.POSITIVE_INFINITY) {
  const bit = (sum - reachable.draws[draw]!.floor) / reachable.step;
  if (!(bit >= 0) || !Number.isInteger(bit)) return false;
  const word = reachable.rowStart[draw]! + Math.floor(bit / 32);
  if (word >= (reachable.rowStart[draw + 1] ?? reachable.rows.length)) return false;
  return ((reachable.rows[word]! >>> (bit & 31)) & 1) === 1 && neededFor(reachable, draw, sum) <= lots;
}

/** The order of lots behind the usual tie rule: thinnest first, of equal heights the better known first. */
export function thinnestFirst(lots: readonly Lot[]): Lot[] {
  return lots.toSorted((a, b) => a.height - b.height || a.uncertaintyClass - b.uncertaintyClass || a.group - b.group);
}

/**
 * Every set of pieces that makes this sum, in the order that decides ties: sets are compared by their last lot, then
 * the last but one and so on, and the one whose lot is earlier comes first. With the thinnest lots first: thickest
 * piece first, and the thinner wins. Each set names its last lot first.
 */
export function* setsMaking(
  reachable: ReachableSums,
  draw: number,
  sum: number,
  lots = Number.POSITIVE_INFINITY,
): Generator<readonly Take[]> {
  if (!isReachable(reachable, draw, sum, lots)) return;
  if (draw === 0) {
    yield [];
    return;
  }
  const end = Math.min(lots, reachable.lots.length);
  for (let lot = neededFor(reachable, draw, sum) - 1; lot < end; lot++) {
    const { height, count } = reachable.lots[lot]!;
    for (let pieces = 1, rest = reachable.before(draw, lot); pieces <= count && rest >= 0; pieces++) {
      for (const set of setsMaking(reachable, rest, sum - pieces * height, lot)) yield [{ lot, pieces }, ...set];
      rest = reachable.before(rest, lot);
    }
  }
}

/** The first few sets that make this sum, in the order that decides ties. */
export function firstSetsMaking(reachable: ReachableSums, draw: number, sum: number, wanted: number) {
  const sets: (readonly Take[])[] = [];
  for (const set of setsMaking(reachable, draw, sum)) {
    if (sets.length === wanted) break;
    sets.push(set);
  }
  return sets;
}

function neededFor({ draws, step, rowStart, lotsNeeded }: ReachableSums, draw: number, sum: number): number {
  return lotsNeeded[rowStart[draw]! * 32 + (sum - draws[draw]!.floor) / step]!;
}

function listDraws(lots: readonly Lot[], slots: readonly number[], classes: number, thinnest: readonly number[]) {
  // Lots of the same group and class lead from a draw to the same next draw.
  const sorts = [...new Set(lots.map((lot) => lot.group * classes + lot.uncertaintyClass))];
  const sortOfLot = lots.map((lot) => sorts.indexOf(lot.group * classes + lot.uncertaintyClass));
  const draws: Draw[] = [
    { index: 0, perGroup: slots.map(() => 0), perClass: Array.from({ length: classes }, () => 0), total: 0, floor: 0 },
  ];
  const known = new Map<string, number>();
  const next: number[] = [];
  const previous: number[] = sorts.map(() => -1);
  for (let index = 0; index < draws.length; index++) {
    const draw = draws[index]!;
    for (const [sortIndex, sort] of sorts.entries()) {
      const group = Math.floor(sort / classes);
      const ofClass = sort % classes;
      if (draw.perGroup[group]! === slots[group]!) {
        next.push(-1);
        continue;
      }
      const perGroup = draw.perGroup.with(group, draw.perGroup[group]! + 1);
      const perClass = draw.perClass.with(ofClass, draw.perClass[ofClass]! + 1);
      const key = `${perGroup} ${perClass}`;
      let to = known.get(key);
      if (to === undefined) {
        to = draws.length;
        known.set(key, to);
        draws.push({ index: to, perGroup, perClass, total: draw.total + 1, floor: draw.floor + thinnest[group]! });
        for (const _ of sorts) previous.push(-1);
      }
      next.push(to);
      previous[to * sorts.length + sortIndex] = index;
    }
  }
  return {
    draws,
    after: (draw: number, lot: number) => next[draw * sorts.length + sortOfLot[lot]!]!,
    before: (draw: number, lot: number) => previous[draw * sorts.length + sortOfLot[lot]!]!,
  };
}

function greatestCommonDivisor(a: number, b: number): number {
  while (b !== 0) [a, b] = [b, a % b];
  return a;
}
