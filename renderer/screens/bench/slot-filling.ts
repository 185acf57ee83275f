// What goes into a slot as it is typed at the bench: "77.0", "77.0 A31" with the tag after a blank, or " A31" for the
// loose plate of that tag. The blank comes first because a letter on an empty line is a key.
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import type { Piece, PieceSource } from '../../../app/packs/packs.contract.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import type { SavedSlot } from '../../../app/specs/specs.contract.ts';
import type { Can } from '../../../app/stock/plates.contract.ts';

export type Filling = { readonly from: PieceSource; readonly height_nm: number; readonly tag: string };

/** By slot. */
export type Fillings = Readonly<Record<number, Filling>>;

export type AtHand = { readonly pieces: readonly Piece[]; readonly cans: readonly Can[] };

type WrittenIn = Pick<Settings, 'lengthUnit' | 'decimalMark'>;

/** `typed` is the height as typed, `last` the word behind it, or empty. */
type TypedPlate = { readonly height_nm: number; readonly typed: string; readonly last: string };

const largestHeight_nm = 25_400_000;

/** The loose plates that go into a slot. */
export function fittingSlot({ pieces, cans }: AtHand, slot: Pick<SavedSlot, 'kind' | 'outline'>): AtHand {
  const fits = (each: Pick<Piece, 'kind' | 'outline'>) => each.kind === slot.kind && each.outline === slot.outline;
  return { pieces: pieces.filter(fits), cans: cans.filter((can) => fits(can) && can.count > 0) };
}

/**
 * A typed plate, or one plain sentence why it is none. `isBought` takes a height of the slot's catalogue as a new part
 * instead of one that was measured.
 */
export function parseFilling(
  typed: string,
  slot: Pick<SavedSlot, 'kind' | 'outline' | 'catalogue_nm'>,
  atHand: AtHand,
  settings: WrittenIn,
  isBought: boolean,
): Result<Filling> {
  const text = typed.trim();
  const named = fittingSlot(atHand, slot).pieces.find((piece) => piece.tag.toLowerCase() === text.toLowerCase());
  if (named && text !== '' && !isFigures(typed)) return accept(pieceFilling(named));
  const plate = parseHeightAndTag(text, slot.kind, settings);
  if (!plate.ok) return plate;
  const { height_nm, typed: typedHeight, last: tag } = plate.value;
  if (height_nm <= 0) return refuse('negative', `“${text}”: a ${slot.kind} has a thickness above nothing.`);
  if (isBought && slot.catalogue_nm.includes(height_nm)) {
    return accept({ from: { catalogue_nm: height_nm }, height_nm, tag });
  }
  return accept({ from: { typed: typedHeight, ...(tag === '' ? {} : { tag }) }, height_nm, tag });
}

export function pieceFilling({ pieceId, height_nm, tag }: Piece): Filling {
  return { from: { pieceId }, height_nm, tag };
}

export function canFilling({ canId, height_nm }: Can): Filling {
  return { from: { canId }, height_nm, tag: '' };
}

/** A height with the tag behind it, if there is one; a figure is no tag, it would be a second height. */
export function parseHeightAndTag(text: string, kind: string, settings: WrittenIn): Result<TypedPlate> {
  const plate = heightAndLastWord(text, kind, settings);
  if (plate.ok && isFigures(plate.value.last)) {
    return refuse('tag', `“${plate.value.last}” looks like another height: give tags a letter.`);
  }
  return plate;
}

/** What a can is started with: a height and how many there are. */
export function parseHeightAndCount(text: string, kind: string, settings: WrittenIn): Result<TypedPlate> {
  const can = heightAndLastWord(text, kind, settings);
  if (can.ok && !/^0*[1-9]\d*$/.test(can.value.last)) {
    return refuse('count', 'Type the height and how many there are, such as 77.0\u00a012.');
  }
  return can;
}

/** The whole as a height if it can be one, its unit word with it, else all but the last word. */
function heightAndLastWord(text: string, kind: string, { lengthUnit, decimalMark }: WrittenIn): Result<TypedPlate> {
  const field = {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest: largestHeight_nm,
    what: `a ${kind}`,
  } as const;
  const whole = parseAmount(text, field);
  if (whole.ok) return accept({ height_nm: whole.value, typed: text, last: '' });
  const [, typed, last] = /^(.*\S)\s+(\S+)$/.exec(text) ?? [];
  if (whole.refusal.code !== 'unknown-unit' || typed === undefined || last === undefined) return whole;
  const height = parseAmount(typed, field);
  return height.ok ? accept({ height_nm: height.value, typed, last }) : height;
}

function isFigures(text: string): boolean {
  return /^[\d.,]+$/.test(text);
}
