// What the plates at hand can do for a kind of pack, in one sentence.
import { formatLength } from '../quantities/format-amount.ts';
import type { LengthWords } from './plate-heights.ts';
import type { Reach } from './reach.ts';

export type ReachSaid = {
  readonly packName: string;
  readonly familyName: string;
  readonly fittedFrom: 'the last unit' | 'the spec sheet' | 'nothing';
  /** Thinnest first. */
  readonly atHand_nm: readonly number[];
  readonly reach: Reach;
};

const small = [
  'None',
  'One',
  'Two',
  'Three',
  'Four',
  'Five',
  'Six',
  'Seven',
  'Eight',
  'Nine',
  'Ten',
  'Eleven',
  'Twelve',
];
const counted = (count: number): string => small[count] ?? String(count);

/** "Two of the last 20 packs asked for more than 83.0: 84.0 would do for both." */
export function reachSentence(said: ReachSaid, words: LengthWords): string {
  const { packName, familyName, reach } = said;
  const read = reach.packs.length;
  if (read === 0) {
    const none = `No ${packName} of a ${familyName} was read yet`;
    if (said.fittedFrom === 'nothing') return `${none}, and no heights of its plates are known.`;
    return `${none}; the picture stands on the heights of ${said.fittedFrom}.`;
  }
  const left = read - reach.covered;
  const last = read === 1 ? 'the last pack' : `the last ${read} packs`;
  if (left === 0) {
    const each = read === 1 ? 'The last pack' : `Each of ${last}`;
    return `${each} was in the band, or one swap from it with what is at hand today.`;
  }
  const who = read === 1 ? 'The last pack' : `${left === read ? 'All' : counted(left)} of ${last}`;
  return `${who} ${askedFor(said, left, words)}: ${whatToBuy(reach, left, words)}`;
}

function askedFor({ reach, atHand_nm }: ReachSaid, left: number, words: LengthWords): string {
  const ways = new Set(reach.packs.filter((pack) => pack.swaps === null).map((pack) => pack.out));
  const [thinnest, thickest] = [atHand_nm[0], atHand_nm.at(-1)];
  if (thinnest === undefined || thickest === undefined) {
    return `asked for ${left === 1 ? 'a plate, and none is' : 'plates, and none are'} at hand`;
  }
  if (ways.size === 1 && ways.has('thicker')) return `asked for more than ${shown(thickest, words)}`;
  if (ways.size === 1 && ways.has('thinner')) return `asked for less than ${shown(thinnest, words)}`;
  return 'asked for heights that are not at hand';
}

/** The fewest heights that do for all; else the most that two do. */
function whatToBuy({ buy }: Reach, left: number, words: LengthWords): string {
  const best = buy.find((each) => each.covers === left) ?? buy.at(-1);
  if (!best) return `no plate that could be bought would do.`;
  const heights = best.heights_nm.map((height_nm) => shown(height_nm, words)).join(' and ');
  if (best.covers < left) return `${heights} would do for ${counted(best.covers).toLowerCase()} of them.`;
  return `${heights} would do${left === 1 ? '' : left === 2 ? ' for both' : ' for all'}.`;
}

function shown(height_nm: number, { lengthUnit, decimalMark }: LengthWords): string {
  return formatLength(height_nm, lengthUnit, undefined, decimalMark);
}
