// What goes into a slot as it is typed at the bench: "77.0", "77.0 A31" with the tag after a blank, or " A31" for the
// loose plate of that tag. The blank comes first because a letter on an empty line is a key.
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import type { Piece, PieceSource } from '../../../app/packs/packs.contract.ts';
import { parseAmount } from '../../../app/quantities/parse-amount.ts';
import type { Settings } from '../../../app/shop/shop.contract.ts';
import type { SavedSlot } from '../../../app/specs/specs.contract.ts';
import type { Can } from '../../../app/stock/stock.contract.ts';

export type Filling = { readonly from: PieceSource; readonly height_nm: number; readonly tag: string };

/** By slot. */
export type Fillings = Readonly<Record<number, Filling>>;

export type AtHand = { readonly pieces: readonly Piece[]; readonly cans: readonly Can[] };

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
  settings: Pick<Settings, 'lengthUnit' | 'decimalMark'>,
  isBought: boolean,
): Result<Filling> {
  const text = typed.trim();
  const named = fittingSlot(atHand, slot).pieces.find((piece) => piece.tag.toLowerCase() === text.toLowerCase());
  if (named && text !== '') return accept(pieceFilling(named));
  const { height, tag } = heightAndTag(text, slot.kind, settings);
  if (!height.ok) return height;
  const height_nm = height.value;
  if (height_nm <= 0) return refuse('negative', `“${text}”: a ${slot.kind} has a thickness above nothing.`);
  if (isBought && slot.catalogue_nm.includes(height_nm)) {
    return accept({ from: { catalogue_nm: height_nm }, height_nm, tag });
  }
  const typedHeight = tag === '' ? text : text.slice(0, -tag.length).trim();
  return accept({ from: { typed: typedHeight, ...(tag === '' ? {} : { tag }) }, height_nm, tag });
}

export function pieceFilling({ pieceId, height_nm, tag }: Piece): Filling {
  return { from: { pieceId }, height_nm, tag };
}

export function canFilling({ canId, height_nm }: Can): Filling {
  return { from: { canId }, height_nm, tag: '' };
}

/** The whole as a height if it can be one, else all but the last word, which is the tag. */
export function heightAndTag(
  text: string,
  kind: string,
  { lengthUnit, decimalMark }: Pick<Settings, 'lengthUnit' | 'decimalMark'>,
): { height: Result<number>; tag: string } {
  const field = {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest: largestHeight_nm,
    what: `a ${kind}`,
  } as const;
  const whole = parseAmount(text, field);
  const [, head, tag] = /^(.*\S)\s+(\S+)$/.exec(text) ?? [];
  if (whole.ok || head === undefined || tag === undefined) return { height: whole, tag: '' };
  const height = parseAmount(head, field);
  return height.ok ? { height, tag } : { height: whole, tag: '' };
}
