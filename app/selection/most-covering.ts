// Which few heights to buy so that as many packs as possible can be brought in by one of them: every choice is tried.
import { accept, type Result, refuse } from '../base/result.ts';

/** A height that could be bought, and the packs that it brings in by itself, by their places. */
export type Offer = { readonly height: number; readonly packs: readonly number[] };

export type Purchase = {
  /** Thinnest first, one piece of each. */
  readonly heights: readonly number[];
  /** The places of the packs that these bring in. */
  readonly packs: readonly number[];
};

type Column = { readonly height: number; readonly fromMiddle: number; readonly covers: Uint32Array };
type Choice = { readonly columns: readonly Column[]; readonly covered: number; readonly fromMiddle: number };

const mostWork = 200_000_000;

/**
 * The best one height, the best two, and so on up to `most`, as long as one more brings in more packs. Exact: heights
 * that bring in the same packs stand for each other, and every choice among the rest is counted. Equally good: the
 * heights nearest to the middle of those that bring in any pack (halfway from the thinnest to the thickest of them),
 * then the thinner. Refuses where there are too many choices to count.
 */
export function mostCovering(offers: readonly Offer[], packs: number, most: number): Result<readonly Purchase[]> {
  const columns = distinctColumns(offers, packs);
  const purchases: Purchase[] = [];
  let covered = 0;
  for (let pieces = 1; pieces <= Math.min(most, columns.length); pieces++) {
    if (choicesOf(columns.length, pieces) * Math.ceil(packs / 32) > mostWork) {
      return refuse('too-many-heights', `There are too many heights for sale to try every ${pieces} of them.`);
    }
    const best = bestChoice(columns, pieces, packs);
    // Where one more adds nothing, the heights so far bring in all that can be brought in.
    if (best.covered === covered) break;
    covered = best.covered;
    purchases.push({ heights: heightsOf(best), packs: membersOf(unionOf(best.columns, packs)) });
  }
  return accept(purchases);
}

/** One column for every set of packs: of the heights with that set the one that the tie rule prefers. */
function distinctColumns(offers: readonly Offer[], packs: number): Column[] {
  const useful = offers.filter((offer) => offer.packs.length > 0).toSorted((a, b) => a.height - b.height);
  const middle = useful.length === 0 ? 0 : (useful[0]!.height + useful.at(-1)!.height) / 2;
  const bySet = new Map<string, Column>();
  for (const { height, packs: members } of useful) {
    const covers = new Uint32Array(Math.ceil(packs / 32));
    for (const pack of members) covers[pack >>> 5]! |= 1 << (pack & 31);
    const column = { height, covers, fromMiddle: Math.abs(height - middle) };
    const known = bySet.get(covers.join());
    if (!known || column.fromMiddle < known.fromMiddle) bySet.set(covers.join(), column);
  }
  return [...bySet.values()];
}

function bestChoice(columns: readonly Column[], pieces: number, packs: number): Choice {
  let best: Choice = { columns: [], covered: 0, fromMiddle: 0 };
  const choose = (chosen: readonly Column[], covers: Uint32Array, fromMiddle: number, start: number) => {
    for (let place = start; place <= columns.length - pieces + chosen.length; place++) {
      const column = columns[place]!;
      const columnsNow = [...chosen, column];
      const fromMiddleNow = fromMiddle + column.fromMiddle;
      if (columnsNow.length < pieces) {
        const coversNow = covers.map((word, index) => word | column.covers[index]!);
        choose(columnsNow, coversNow, fromMiddleNow, place + 1);
        continue;
      }
      const choice = { columns: columnsNow, covered: countOfBoth(covers, column.covers), fromMiddle: fromMiddleNow };
      if (isBetter(choice, best)) best = choice;
    }
  };
  choose([], new Uint32Array(Math.ceil(packs / 32)), 0, 0);
  return best;
}

function isBetter(choice: Choice, best: Choice): boolean {
  if (choice.covered !== best.covered) return choice.covered > best.covered;
  if (choice.fromMiddle !== best.fromMiddle) return choice.fromMiddle < best.fromMiddle;
  const thinner = heightsOf(choice);
  const place = heightsOf(best).findIndex((height, index) => height !== thinner[index]);
  return place >= 0 && thinner[place]! < heightsOf(best)[place]!;
}

function heightsOf({ columns }: Choice): number[] {
  return columns.map(({ height }) => height).toSorted((a, b) => a - b);
}

function unionOf(columns: readonly Column[], packs: number): Uint32Array {
  const union = new Uint32Array(Math.ceil(packs / 32));
  for (const { covers } of columns) for (const [index, word] of covers.entries()) union[index]! |= word;
  return union;
}

function membersOf(covers: Uint32Array): number[] {
  const members: number[] = [];
  for (const [index, word] of covers.entries()) {
    for (let bit = 0; bit < 32; bit++) if ((word >>> bit) & 1) members.push(index * 32 + bit);
  }
  return members;
}

function countOfBoth(some: Uint32Array, others: Uint32Array): number {
  let count = 0;
  for (let index = 0; index < some.length; index++) count += bitsIn(some[index]! | others[index]!);
  return count;
}

/** Bits set in a word: added up in pairs, then in fours, in bytes, and the four bytes by one multiplication. */
function bitsIn(word: number): number {
  const pairs = word - ((word >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

function choicesOf(from: number, pieces: number): number {
  let choices = 1;
  for (let piece = 0; piece < pieces; piece++) choices = (choices * (from - piece)) / (piece + 1);
  return choices;
}
