// What a bin of loose heights can do for a kind of pack: which packs a swap brings into the band, and what to buy for the
// rest.
import { accept, type Result, refuse } from '../base/result.ts';
import { mostCovering, type Purchase } from './most-covering.ts';
import { isCount, isHeight, isLength } from './swap-question.ts';

/** A pack as it stood, or as it may come. All lengths here and below are whole steps of one unit. */
export type PackToCover = {
  /** Heights of the pieces in it that may be swapped. */
  readonly fitted: readonly number[];
  /** What it read with them. */
  readonly clearance: number;
  /** null: no limit on that side. */
  readonly lower: number | null;
  readonly upper: number | null;
};

export type LooseHeight = { readonly height: number; readonly count: number };

export type CoverQuestion = {
  readonly packs: readonly PackToCover[];
  readonly bin: readonly LooseHeight[];
  /** How many pieces of a pack may be changed: one where nothing is said. */
  readonly swaps?: 1 | 2;
  /** Heights that could be bought; none where nothing is said. */
  readonly forSale?: readonly number[];
  /** How many different heights may be bought; two where nothing is said. */
  readonly most?: number;
};

export type PackCover = {
  /** 0: inside as it is; null: out of reach. */
  readonly swaps: 0 | 1 | 2 | null;
  /** Thinnest first. */
  readonly remove: readonly number[];
  readonly add: readonly number[];
  /** With that swap done; what it read where there is none. */
  readonly clearance: number;
};

export type CoverAnswer = {
  /** One for every pack, in the order given. */
  readonly packs: readonly PackCover[];
  /** How many are inside or can be brought inside with what is there. */
  readonly covered: number;
  /**
   * The best one height to buy, then the best two and so on, each covering more of the packs out of reach than the one
   * before; `packs` names those it covers, by their places in the question. Empty where nothing for sale helps.
   */
  readonly buy: readonly Purchase[];
};

/** From one whole number of steps to another, both included; null: without end. */
export type Interval = { readonly from: number | null; readonly to: number | null };

type Limits = { readonly lower: number; readonly upper: number };
type Swapped = { readonly remove: readonly number[]; readonly add: readonly number[]; readonly clearance: number };

const mostFitted = 40;
const mostPieces = 4;
const mostPairs = 20_000_000;

/**
 * For every pack whether it lies in its band, or one swap (or two, if asked) from the bin brings it there, and which
 * heights to buy so that one swap covers the most of the packs left out. Each pack is judged on its own against the
 * whole bin. A bought piece goes in by itself, with no other change.
 *
 * Exact. Fewest swaps; then the clearance nearest to the middle of the band, or with one limit nearest to what the pack
 * read; then the looser one; then the thinnest pieces leave; of two that come in, the pair with the thinnest piece. For
 * what to buy see `mostCovering`. Refuses lengths that are not whole or beyond 1e12 steps, limits upside down, more than 40 pieces in a
 * pack, and more heights for sale than can be tried.
 *
 *     // thou: 32 with a 77 and a 76 in; wanted 20 to 30; an 83 in place of the 76 leaves 25
 *     coverPacks({ packs: [{ fitted: [77, 76], clearance: 32, lower: 20, upper: 30 }], bin: [{ height: 83, count: 1 }] });
 *     // { packs: [{ swaps: 1, remove: [76], add: [83], clearance: 25 }], covered: 1, buy: [] }
 */
export function coverPacks(question: CoverQuestion): Result<CoverAnswer> {
  const { bin, swaps = 1, forSale = [], most = 2 } = question;
  const refusal = checkBin(bin) ?? checkSale(forSale, most) ?? question.packs.map(checkPack).find((each) => each);
  if (refusal) return refusal;
  const heights = heightsIn(bin);
  const packs = question.packs.map((pack): PackCover => {
    const asItIs = { swaps: 0, remove: [], add: [], clearance: pack.clearance } as const;
    if (isInside(pack.clearance, limitsOf(pack))) return asItIs;
    for (let changes = 1 as 1 | 2; changes <= swaps; changes++) {
      const best = bestSwap(pack, heights, changes);
      if (best) return { swaps: changes, ...best };
    }
    return { ...asItIs, swaps: null };
  });
  const left = [...packs.keys()].filter((place) => packs[place]!.swaps === null);
  const offers = [...new Set(forSale)].map((height) => ({
    height,
    packs: [...left.keys()].filter((place) => isCoveredBy(question.packs[left[place]!]!, height)),
  }));
  const bought = mostCovering(offers, left.length, most);
  if (!bought.ok) return bought;
  const buy = bought.value.map((each) => ({ ...each, packs: each.packs.map((place) => left[place]!) }));
  return accept({ packs, covered: packs.length - left.length, buy });
}

/**
 * Which clearances a pack with these pieces in it may read so that it is in the band as it is or at most so many swaps
 * from the bin bring it there: disjoint, from tight to loose. Stretches that follow each other with no whole step
 * between them are one. Exact. Refuses what `coverPacks` refuses.
 *
 *     clearancesInReach({ fitted: [77], bin: [{ height: 83, count: 1 }], lower: 20, upper: 24 });
 *     // an 83 in place of the 77 takes 6 off: 20 to 24 as it is, 26 to 30 with the swap
 *     // [{ from: 20, to: 24 }, { from: 26, to: 30 }]
 */
export function clearancesInReach(question: {
  readonly fitted: readonly number[];
  readonly bin: readonly LooseHeight[];
  readonly lower: number | null;
  readonly upper: number | null;
  readonly swaps?: 1 | 2;
}): Result<readonly Interval[]> {
  const { fitted, bin, swaps = 1 } = question;
  const pack = { ...question, clearance: 0 };
  const refusal = checkBin(bin) ?? checkPack(pack);
  if (refusal) return refusal;
  const { lower, upper } = limitsOf(pack);
  const heights = heightsIn(bin);
  const gains = new Set([0]);
  for (let changes = 1 as 1 | 2; changes <= swaps; changes++) {
    const leaving = new Set(choose(fitted, changes).map(total));
    if (changes === 2 && leaving.size * heights.single.length ** 2 > mostPairs) {
      return refuse('too-many-heights', 'There are too many heights in the bin to try every pair of them.');
    }
    const coming = changes === 1 ? heights.single : new Set(pairsOf(heights));
    for (const added of coming) for (const removed of leaving) gains.add(added - removed);
  }
  const joined: { from: number; to: number }[] = [];
  for (const gain of [...gains].toSorted((a, b) => a - b)) {
    const last = joined.at(-1);
    if (last && lower + gain <= last.to + 1) last.to = upper + gain;
    else joined.push({ from: lower + gain, to: upper + gain });
  }
  const orEndless = (value: number) => (Number.isFinite(value) ? value : null);
  return accept(joined.map(({ from, to }) => ({ from: orEndless(from), to: orEndless(to) })));
}

/** The heights that are there, thinnest first, and those that are there twice. */
type Heights = { readonly single: readonly number[]; readonly isTwice: readonly boolean[] };

function heightsIn(bin: readonly LooseHeight[]): Heights {
  const counts = new Map<number, number>();
  for (const { height, count } of bin) counts.set(height, (counts.get(height) ?? 0) + count);
  const single = [...counts.keys()].filter((height) => counts.get(height)! > 0).toSorted((a, b) => a - b);
  return { single, isTwice: single.map((height) => counts.get(height)! > 1) };
}

function* pairsOf({ single, isTwice }: Heights): Generator<number> {
  for (const [place, thinner] of single.entries()) {
    for (let other = isTwice[place] ? place : place + 1; other < single.length; other++) yield thinner + single[other]!;
  }
}

function bestSwap(pack: PackToCover, heights: Heights, changes: 1 | 2): Swapped | null {
  const limits = limitsOf(pack);
  const aim = pack.lower === null || pack.upper === null ? pack.clearance : (pack.lower + pack.upper) / 2;
  const wish = Math.min(limits.upper, Math.max(limits.lower, aim));
  let best: Swapped | null = null;
  for (const remove of choose(
    pack.fitted.toSorted((a, b) => a - b),
    changes,
  )) {
    const opened = pack.clearance + total(remove);
    const around = changes === 1 ? heightsAround(heights, opened - wish) : pairsAround(heights, opened - wish);
    for (const add of around) {
      const swapped = { remove, add, clearance: opened - total(add) };
      if (!isInside(swapped.clearance, limits)) continue;
      if (best === null || isNearer(swapped.clearance, best.clearance, aim)) best = swapped;
    }
  }
  return best;
}

function isNearer(clearance: number, best: number, aim: number): boolean {
  const gained = Math.abs(best - aim) - Math.abs(clearance - aim);
  return gained > 0 || (gained === 0 && clearance > best);
}

/** The nearest height at or below, and the nearest at or above. */
function heightsAround({ single }: Heights, wanted: number): number[][] {
  let from = 0;
  for (let to = single.length; from < to; ) {
    const middle = (from + to) >>> 1;
    if (single[middle]! < wanted) from = middle + 1;
    else to = middle;
  }
  return [single[from - 1], single[from]].flatMap((height) => (height === undefined ? [] : [[height]]));
}

/** The pairs whose sums are nearest at or below and at or above: two fingers, one from each end. */
function pairsAround({ single, isTwice }: Heights, wanted: number): number[][] {
  let below: number[] | null = null;
  let above: number[] | null = null;
  for (let thin = 0, thick = single.length - 1; thin <= thick; ) {
    const pair = [single[thin]!, single[thick]!];
    const sum = total(pair);
    if (thin < thick || isTwice[thin]) {
      if (sum <= wanted && (below === null || sum > total(below))) below = pair;
      if (sum >= wanted && (above === null || sum < total(above))) above = pair;
    }
    if (sum < wanted) thin++;
    else thick--;
  }
  return [below, above].filter((pair) => pair !== null);
}

function isCoveredBy(pack: PackToCover, height: number): boolean {
  const limits = limitsOf(pack);
  return pack.fitted.some((removed) => isInside(pack.clearance + removed - height, limits));
}

/** Every choice of one or two pieces, in the order of the list. */
function choose(fitted: readonly number[], pieces: number): number[][] {
  if (pieces === 1) return fitted.map((height) => [height]);
  return fitted.flatMap((first, place) => fitted.slice(place + 1).map((second) => [first, second]));
}

function total(heights: readonly number[]): number {
  return heights.reduce((sum, height) => sum + height, 0);
}

function limitsOf({ lower, upper }: PackToCover): Limits {
  return { lower: lower ?? Number.NEGATIVE_INFINITY, upper: upper ?? Number.POSITIVE_INFINITY };
}

function isInside(clearance: number, { lower, upper }: Limits): boolean {
  return clearance >= lower && clearance <= upper;
}

function checkBin(bin: readonly LooseHeight[]) {
  if (!bin.every(({ height }) => isHeight(height))) {
    return refuse(
      'bad-height',
      'Every height must be a whole number of steps, above zero and at most 1,000,000,000,000.',
    );
  }
  if (!bin.every(({ count }) => isCount(count))) {
    return refuse('bad-count', 'Every count must be a whole number from 0 to 1,000,000,000.');
  }
  return null;
}

function checkSale(forSale: readonly number[], most: number) {
  if (!forSale.every(isHeight)) {
    return refuse(
      'bad-height',
      'Every height for sale must be a whole number of steps, above zero and at most 1,000,000,000,000.',
    );
  }
  if (!Number.isInteger(most) || most < 1 || most > mostPieces) {
    return refuse('bad-number', `The number of heights to buy must be from 1 to ${mostPieces}.`);
  }
  return null;
}

function checkPack({ fitted, clearance, lower, upper }: PackToCover) {
  if (!fitted.every(isHeight)) {
    return refuse(
      'bad-height',
      'Every height must be a whole number of steps, above zero and at most 1,000,000,000,000.',
    );
  }
  if (fitted.length > mostFitted) {
    return refuse('too-many-slots', `A pack may have at most ${mostFitted} pieces to swap.`);
  }
  const lengths = [clearance, lower ?? 0, upper ?? 0];
  if (!lengths.every(isLength)) {
    return refuse(
      'bad-number',
      'The clearance and the limits must be whole numbers of steps, none beyond 1,000,000,000,000.',
    );
  }
  if (lower !== null && upper !== null && lower > upper) {
    return refuse('limits-upside-down', 'The lower limit is above the upper limit.');
  }
  return null;
}
