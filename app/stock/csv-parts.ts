// What one row of a file of parts would do: add a part, change what is said of one, nothing, or why it cannot be taken.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { formatMoney, parseMoney } from '../quantities/money.ts';
import type { CsvField } from './csv-columns.ts';
import { parseWhole } from './csv-numbers.ts';
import type { CsvFate } from './lists.contract.ts';
import { type PartKind, partKinds } from './parts.contract.ts';

/** What a file can say of a part. Money is written out by the shop's decimal mark, empty where unknown. */
export type PartSaid = {
  readonly number: string;
  readonly description: string;
  readonly kind: PartKind;
  readonly supplier: string;
  readonly unitOfIssue: string;
  readonly bin: string;
  readonly cost: string;
  readonly price: string;
  readonly coreCharge: string;
  readonly reorderPoint: number | null;
  readonly reorderQuantity: number | null;
  /** In the order of their names. */
  readonly families: readonly string[];
};

export type PartPlan = { readonly fate: CsvFate; readonly says: string; readonly part: PartSaid | null };

export type PartsKnown = {
  readonly decimalMark: DecimalMark;
  readonly families: readonly string[];
};

const longestText = 200;
const mostPieces = 1_000_000;
const newPart: PartSaid = {
  number: '',
  description: '',
  kind: 'other',
  supplier: '',
  unitOfIssue: 'each',
  bin: '',
  cost: '',
  price: '',
  coreCharge: '',
  reorderPoint: null,
  reorderQuantity: null,
  families: [],
};

/** `fields` of a row against the part of that number as it stands, or none. What no column says stays as it is. */
export function planPart(
  fields: ReadonlyMap<CsvField, string>,
  before: PartSaid | undefined,
  known: PartsKnown,
): PartPlan {
  const read = readPart(fields, before, known);
  if (!read.ok) return { fate: 'reject', says: read.refusal.message, part: null };
  const part = read.value;
  if (before === undefined) return { fate: 'add', says: 'new part', part };
  const changes = differences(before, part);
  if (changes.length === 0) return { fate: 'same', says: 'as it is', part: null };
  return { fate: 'change', says: changes.join(', '), part };
}

function readPart(
  fields: ReadonlyMap<CsvField, string>,
  before: PartSaid | undefined,
  known: PartsKnown,
): Result<PartSaid> {
  const number = fields.get('number') ?? '';
  if (number === '') return refuse('no-number', 'has no number');
  const unmapped = before === undefined ? (['description', 'kind'] as const).filter((field) => !fields.has(field)) : [];
  if (unmapped.length > 0) return refuse('new', `is a new part: it needs a column for ${unmapped.join(' and ')}`);
  let part: PartSaid = { ...(before ?? newPart), number: before?.number ?? number };
  for (const [field, cell] of fields) {
    if (cell.length > longestText) return refuse('too-long', `${field} is longer than ${longestText} characters`);
    const said = readField(field, cell, known);
    if (!said.ok) return said;
    part = { ...part, ...said.value };
  }
  if (before?.kind === 'kit' && part.kind !== 'kit') return refuse('was-a-kit', 'is a kit and stays one');
  if (part.reorderQuantity !== null && part.reorderPoint === null) {
    return refuse('no-point', 'has a reorder quantity but no reorder point');
  }
  return accept(part);
}

function readField(field: CsvField, cell: string, known: PartsKnown): Result<Partial<PartSaid>> {
  switch (field) {
    case 'description':
      return cell === '' ? refuse('empty', 'has no description') : accept({ description: cell });
    case 'kind': {
      const kind = partKinds.find((each) => each === cell.toLowerCase());
      if (kind !== undefined) return accept({ kind });
      return refuse('kind', cell === '' ? 'has no kind' : `“${cell}” is not a kind: ${partKinds.join(', ')}`);
    }
    case 'supplier':
      return accept({ supplier: cell });
    case 'unit of issue':
      return accept({ unitOfIssue: cell === '' ? newPart.unitOfIssue : cell });
    case 'bin':
      return accept({ bin: cell });
    case 'cost':
      return readMoney(field, cell, known, (cost) => ({ cost }));
    case 'price':
      return readMoney(field, cell, known, (price) => ({ price }));
    case 'core charge':
      // No charge and a charge of nothing are the same.
      return readMoney(field, cell, known, (charge) => ({ coreCharge: /[1-9]/.test(charge) ? charge : '' }));
    case 'reorder point':
      return readCount(field, cell, known, 0, (reorderPoint) => ({ reorderPoint }));
    case 'reorder quantity':
      return readCount(field, cell, known, 1, (reorderQuantity) => ({ reorderQuantity }));
    case 'families':
      return readFamilies(cell, known);
    default:
      return accept({});
  }
}

function readMoney(
  field: CsvField,
  cell: string,
  { decimalMark }: PartsKnown,
  said: (money: string) => Partial<PartSaid>,
): Result<Partial<PartSaid>> {
  if (cell === '') return accept(said(''));
  const cents = parseMoney(cell, decimalMark);
  if (cents.ok) return accept(said(formatMoney(cents.value, decimalMark)));
  return refuse('money', `${field} “${cell}” is not an amount of money like 12${decimalMark}50`);
}

function readCount(
  field: CsvField,
  cell: string,
  { decimalMark }: PartsKnown,
  least: number,
  said: (count: number | null) => Partial<PartSaid>,
): Result<Partial<PartSaid>> {
  if (cell === '') return accept(said(null));
  const count = parseWhole(cell, decimalMark);
  if (count !== null && count >= least && count <= mostPieces) return accept(said(count));
  const most = mostPieces.toLocaleString('en-US');
  return refuse('count', `${field} “${cell}” is not a whole number from ${least} to ${most}`);
}

/** Separated by semicolons, or by commas where no family is called that. */
function readFamilies(cell: string, { families }: PartsKnown): Result<Partial<PartSaid>> {
  const find = (name: string) => families.find((family) => family.toLowerCase() === name.toLowerCase());
  const trimmed = (text: string, mark: string) =>
    text
      .split(mark)
      .map((each) => each.trim())
      .filter((each) => each !== '');
  const names = trimmed(cell, ';').flatMap((name) => (find(name) === undefined ? trimmed(name, ',') : [name]));
  const unknown = names.find((name) => find(name) === undefined);
  if (unknown !== undefined) return refuse('family', `there is no family “${unknown}”`);
  const found = new Set(names.flatMap((name) => find(name) ?? []));
  return accept({ families: families.filter((family) => found.has(family)) });
}

const shownNames = {
  description: 'description',
  kind: 'kind',
  supplier: 'supplier',
  unitOfIssue: 'unit of issue',
  bin: 'bin',
  cost: 'cost',
  price: 'price',
  coreCharge: 'core charge',
  reorderPoint: 'reorder point',
  reorderQuantity: 'reorder quantity',
  families: 'families',
} as const;

/** "cost 4.10 → 4.35". */
function differences(before: PartSaid, after: PartSaid): readonly string[] {
  return Object.entries(shownNames).flatMap(([key, name]) => {
    const [was, is] = [shown(before[key as keyof PartSaid]), shown(after[key as keyof PartSaid])];
    return was === is ? [] : [`${name} ${was} → ${is}`];
  });
}

function shown(value: PartSaid[keyof PartSaid]): string {
  const text = Array.isArray(value) ? value.join('; ') : String(value ?? '');
  return text === '' ? 'empty' : text;
}
