// What is typed about a part until it is saved.
import type { Input } from '../../../app/contract/contract.ts';
import type { Part, PartKind } from '../../../app/stock/parts.contract.ts';

export type PartDraft = {
  readonly number: string;
  readonly description: string;
  readonly kind: PartKind;
  readonly unitOfIssue: string;
  readonly supplier: string;
  readonly bin: string;
  readonly cost: string;
  readonly price: string;
  readonly coreCharge: string;
  readonly reorderPoint: string;
  readonly reorderQuantity: string;
  readonly familyIds: readonly number[];
  readonly contents: ReadonlyArray<{
    readonly partId: number;
    readonly number: string;
    readonly description: string;
    readonly quantity: string;
  }>;
};

export const blankPart: PartDraft = {
  number: '',
  description: '',
  kind: 'other',
  unitOfIssue: 'each',
  supplier: '',
  bin: '',
  cost: '',
  price: '',
  coreCharge: '',
  reorderPoint: '',
  reorderQuantity: '',
  familyIds: [],
  contents: [],
};

export function draftOf(part: Part, money: (cents: number) => string): PartDraft {
  const amount = (cents: number | null) => (cents === null ? '' : money(cents));
  const count = (known: number | null) => (known === null ? '' : String(known));
  return {
    number: part.number,
    description: part.description,
    kind: part.kind,
    unitOfIssue: part.unitOfIssue,
    supplier: part.supplier,
    bin: part.bin,
    cost: amount(part.cost_cents),
    price: amount(part.price_cents),
    coreCharge: amount(part.coreCharge_cents),
    reorderPoint: count(part.reorderPoint),
    reorderQuantity: count(part.reorderQuantity),
    familyIds: part.families.map(({ familyId }) => familyId),
    contents: part.contents.map((line) => ({ ...line, quantity: String(line.quantity) })),
  };
}

export type PartRefusals = Partial<Record<keyof PartDraft, string>>;

/** What keeps it from being saved, field by field, as far as it can be seen before asking the book. */
export function refusalsOf(draft: PartDraft): PartRefusals {
  const refusals: PartRefusals = {};
  if (draft.number.trim() === '') refusals.number = 'Type its number.';
  if (draft.description.trim() === '') refusals.description = 'Say what it is.';
  if (draft.unitOfIssue.trim() === '') refusals.unitOfIssue = 'Say what one is: each, a pair, a quart.';
  if (!isWhole(draft.reorderPoint, 0)) refusals.reorderPoint = 'Type a whole number, or nothing.';
  if (!isWhole(draft.reorderQuantity, 1)) refusals.reorderQuantity = 'Type a whole number from 1 up, or nothing.';
  if (draft.contents.some(({ quantity }) => quantity.trim() === '' || !isWhole(quantity, 1))) {
    refusals.contents = 'Say how many of each part lie in the kit: whole numbers from 1 up.';
  }
  return refusals;
}

/** Null while something keeps it from being saved. */
export function partOf(draft: PartDraft, partId: number | null, by: number): Input<'stock.savePart'> | null {
  if (Object.keys(refusalsOf(draft)).length > 0) return null;
  const count = (typed: string) => (typed.trim() === '' ? null : Number(typed));
  return {
    ...draft,
    partId,
    reorderPoint: count(draft.reorderPoint),
    reorderQuantity: count(draft.reorderQuantity),
    familyIds: [...draft.familyIds],
    contents:
      draft.kind === 'kit'
        ? draft.contents.map((line) => ({ partId: line.partId, quantity: Number(line.quantity) }))
        : [],
    by,
  };
}

function isWhole(typed: string, least: 0 | 1): boolean {
  const text = typed.trim();
  return text === '' || (/^\d{1,6}$/.test(text) && Number(text) >= least);
}
