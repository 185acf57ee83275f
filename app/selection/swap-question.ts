// What is asked of one pack: the pieces in it that may be swapped, the loose ones at hand, and how a clearance is judged.
import { accept, type Result, refuse } from '../base/result.ts';

/** Heights are whole numbers of one step, the same throughout; a clearance is in that step too and need not be whole. */
export type FittedPiece = { readonly id: string; readonly height: number };

export type LoosePiece = {
  readonly id: string;
  readonly height: number;
  /** How many there are: 1 for a single piece, more for a can sorted by thickness. */
  readonly count: number;
  /** 0, 1, 2 …: pieces of one class are equally well known, so that any of them gives the same variance. */
  readonly uncertaintyClass: number;
};

/** Slots whose pieces can replace each other, such as the steels, or the one selective snap ring. */
export type AdjusterGroup = {
  readonly name: string;
  readonly fitted: readonly FittedPiece[];
  /** Loose pieces that were in an earlier mock-up, so that a reading says something about each of them. */
  readonly readBefore?: readonly FittedPiece[];
  readonly loose: readonly LoosePiece[];
  /** Heights that could be bought. Without it any height between the thinnest and the thickest piece known could be. */
  readonly forSale?: readonly number[];
};

export type Band = {
  /** null: no limit on that side. */
  readonly lower: number | null;
  readonly upper: number | null;
  /**
   * The chance that a clearance with this mean and variance lies between the limits. For any one variance it must
   * depend on the distance to the middle of the band and fall with it (with one limit: rise away from the limit).
   */
  readonly chance: (clearance: number, variance: number) => number;
};

export type SwapQuestion = {
  readonly groups: readonly AdjusterGroup[];
  /**
   * `spaceLeft`: the expected clearance before the added pieces' heights are taken off, that is the gap less the pieces
   * in `inPack` (and less any error that the added pieces are thought to share). `variance`: of the clearance with all
   * of them in. Bit i of `inPack` stands for the i-th piece named, counted through the groups in the order given, in
   * each group the fitted ones and then those read before; `addedPerClass` counts the other loose pieces added.
   */
  readonly predict: (
    inPack: number,
    addedPerClass: readonly number[],
  ) => { readonly spaceLeft: number; readonly variance: number };
  readonly band: Band | null;
  readonly target: number;
  /** How many equally good sets to name for each number of changes; 1 where nothing is said. */
  readonly setsWanted?: number;
};

/** Clearances that differ by less than this part of a step are one clearance: sums are whole, the rest is rounding. */
export const sameClearance = 1e-6;
const mostFitted = 12;
const mostNamed = 16;
const mostClasses = 6;

/** The question as it stands if it can be answered, or one sentence why it cannot. */
export function checkQuestion(question: SwapQuestion): Result<SwapQuestion> {
  const { groups, band, target } = question;
  const fitted = groups.flatMap((group) => group.fitted);
  const readBefore = groups.flatMap((group) => group.readBefore ?? []);
  const loose = groups.flatMap((group) => group.loose);
  const forSale = groups.flatMap((group) => group.forSale ?? []);
  if (fitted.length === 0) return refuse('no-adjuster', 'No piece of this pack may be swapped.');
  if (fitted.length > mostFitted) {
    return refuse('too-many-slots', `Only up to ${mostFitted} pieces of a pack can be weighed against each other.`);
  }
  if (fitted.length + readBefore.length > mostNamed) {
    return refuse('too-many-pieces', `Only up to ${mostNamed} pieces can be weighed that are or were in the pack.`);
  }
  const pieces = [...fitted, ...readBefore, ...loose];
  if (!pieces.every(({ height }) => isHeight(height)) || !forSale.every(isHeight)) {
    return refuse(
      'bad-height',
      'Every height must be a whole number of steps, above zero and at most 1,000,000,000,000.',
    );
  }
  if (!loose.every(({ count }) => isCount(count) && count >= 1)) {
    return refuse('bad-count', 'Every loose piece must be there at least once, and at most 1,000,000,000 times.');
  }
  const isClass = (value: number) => Number.isInteger(value) && value >= 0 && value < mostClasses;
  if (!loose.every(({ uncertaintyClass }) => isClass(uncertaintyClass))) {
    return refuse('bad-class', `An uncertainty class must be a whole number from 0 to ${mostClasses - 1}.`);
  }
  const ids = new Set<string>();
  for (const { id } of pieces) ids.add(id);
  if (ids.size < pieces.length) return refuse('piece-twice', 'A piece is named twice.');
  if (new Set(groups.map(({ name }) => name)).size < groups.length) {
    return refuse('group-twice', 'Two groups of slots have the same name.');
  }
  const limits = [band?.lower ?? 0, band?.upper ?? 0, target];
  if (!limits.every(Number.isFinite)) return refuse('bad-limits', 'The limits and the target must be numbers.');
  if (band && band.lower !== null && band.upper !== null && band.lower > band.upper) {
    return refuse('limits-upside-down', 'The lower limit is above the upper limit.');
  }
  return accept(question);
}

/** How far a clearance lies outside the band; 0 inside and on its limits. */
export function outsideBy(clearance: number, { lower, upper }: Pick<Band, 'lower' | 'upper'>): number {
  const outside = Math.max(0, (lower ?? clearance) - clearance, clearance - (upper ?? clearance));
  return outside <= sameClearance ? 0 : outside;
}

/** Sums of a whole pack of such lengths stay exact. */
const mostLength = 1e12;
const mostPieces = 1e9;

/** Whole, positive, and small enough that sums of a whole pack stay exact. */
export function isHeight(value: number): boolean {
  return isLength(value) && value > 0;
}

/** Whole, of either sign, and small enough. */
export function isLength(value: number): boolean {
  return Number.isInteger(value) && Math.abs(value) <= mostLength;
}

export function isCount(value: number): boolean {
  return Number.isInteger(value) && value >= 0 && value <= mostPieces;
}
