// What one row of a count sheet would do: correct a batch, nothing, or why it cannot be taken.
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { CsvField } from './csv-columns.ts';
import { parseWhole } from './csv-numbers.ts';
import type { CsvFate } from './lists.contract.ts';

export type CountedBatch = {
  readonly batchId: number;
  readonly mark: string;
  readonly document: string;
  readonly onHand: number;
};

export type CountPlan = {
  readonly fate: CsvFate;
  readonly says: string;
  /** The batch the row means, where it means one. */
  readonly batchId: number | null;
  readonly counted: number;
};

const mostPieces = 1_000_000;

/** `fields` of a row against the batches of the part it names; undefined: there is no such part. An empty count is none. */
export function planCount(
  fields: ReadonlyMap<CsvField, string>,
  batches: readonly CountedBatch[] | undefined,
  decimalMark: DecimalMark,
): CountPlan {
  const reject = (says: string): CountPlan => ({ fate: 'reject', says, batchId: null, counted: 0 });
  const number = fields.get('number') ?? '';
  if (number === '') return reject('has no number');
  if (batches === undefined) return reject(`there is no part ${number}`);
  const cell = fields.get('counted') ?? '';
  if (cell === '') return { fate: 'same', says: 'not counted', batchId: null, counted: 0 };
  const counted = parseWhole(cell, decimalMark);
  if (counted === null || counted > mostPieces) return reject(`counted “${cell}” is not a whole number`);
  const told = batchTold(fields, number, batches);
  if (typeof told === 'string') return reject(told);
  const { batchId, onHand } = told;
  if (counted === onHand) return { fate: 'same', says: `on hand ${onHand}, as counted`, batchId, counted };
  return { fate: 'change', says: `on hand ${onHand} → ${counted}`, batchId, counted };
}

/** The one batch that the row tells, or why there is not one. */
function batchTold(
  fields: ReadonlyMap<CsvField, string>,
  number: string,
  batches: readonly CountedBatch[],
): CountedBatch | string {
  const mark = fields.get('batch mark') ?? '';
  const document = fields.get('document') ?? '';
  if (batches.length === 0) return `${number} never came in: receive it first`;
  const isTold = (told: string, is: string) => told === '' || told.toLowerCase() === is.toLowerCase();
  const matching = batches.filter((batch) => isTold(mark, batch.mark) && isTold(document, batch.document));
  // An empty batch is not what somebody counted on a shelf, unless it is the only one.
  const onShelf = matching.filter((batch) => batch.onHand > 0);
  const [only, ...others] = onShelf.length > 0 ? onShelf : matching;
  if (only === undefined) return `${number} has no batch ${[mark, document].filter((each) => each !== '').join(', ')}`;
  if (others.length === 0) return only;
  const count = others.length + 1;
  return mark === '' && document === ''
    ? `${number} lies in ${count} batches: say which by its batch mark or document`
    : `${count} batches of ${number} are called that: say both batch mark and document`;
}
