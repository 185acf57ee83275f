// Which column of a file says what: by its heading, or as a person chose.
import { accept, type Result, refuse } from '../base/result.ts';
import { type CsvTarget, csvFields } from './lists.contract.ts';

export type CsvField = (typeof csvFields)[CsvTarget][number];
/** For each column the field it fills, or null. */
export type CsvMapping = readonly (CsvField | null)[];

// What others call them; our own headings stand in `csvFields`.
const synonyms: Readonly<Record<CsvField, readonly string[]>> = {
  number: ['part number', 'part no', 'part', 'item number', 'item no', 'item'],
  description: ['part description', 'name'],
  kind: ['type', 'category'],
  supplier: ['vendor'],
  'unit of issue': ['unit', 'uom'],
  bin: ['location', 'shelf'],
  cost: ['unit cost', 'cost each'],
  price: ['sell price', 'list price', 'price each'],
  'core charge': ['core'],
  'reorder point': ['reorder at', 'minimum', 'min'],
  'reorder quantity': ['reorder qty', 'order quantity'],
  families: ['family', 'fits'],
  'batch mark': ['batch', 'mark', 'lot'],
  document: ['invoice', 'packing slip'],
  counted: ['count', 'quantity', 'qty'],
};

const mustBeMapped: Readonly<Record<CsvTarget, readonly CsvField[]>> = {
  parts: ['number'],
  counts: ['number', 'counted'],
};

/** Capitals, blanks and punctuation of a heading do not count. */
function plain(heading: string): string {
  return heading.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

/** The fields by the headings; where two columns could be the same field our own heading wins, then the first. */
export function mapByHeadings(target: CsvTarget, headings: readonly string[]): CsvMapping {
  const names = headings.map(plain);
  const mapping: (CsvField | null)[] = headings.map(() => null);
  for (const field of csvFields[target] as readonly CsvField[]) {
    const column = [field, ...synonyms[field]]
      .map((spelling) => names.indexOf(plain(spelling)))
      .find((index) => index >= 0 && mapping[index] === null);
    if (column !== undefined) mapping[column] = field;
  }
  return mapping;
}

/** The mapping a person chose; refuses another number of columns, a field there is not, a field chosen twice. */
export function checkMapping(
  target: CsvTarget,
  headings: readonly string[],
  chosen: readonly (string | null)[],
): Result<CsvMapping> {
  const known: readonly (string | null)[] = csvFields[target];
  if (chosen.length !== headings.length) {
    return refuse(
      'columns',
      `The file has ${headings.length} columns, but ${chosen.length} were chosen: choose again.`,
    );
  }
  const unknown = chosen.find((field) => field !== null && !known.includes(field));
  if (unknown !== undefined) return refuse('columns', `A column cannot be “${unknown}”: choose one of the list.`);
  const twice = chosen.find((field, index) => field !== null && chosen.indexOf(field) !== index);
  if (twice !== undefined) return refuse('columns', `Two columns are chosen for “${twice}”: leave one of them out.`);
  return accept(chosen as CsvMapping);
}

/** Fields that no column fills though nothing can be done without them. */
export function missingFields(target: CsvTarget, mapping: CsvMapping): readonly CsvField[] {
  return mustBeMapped[target].filter((field) => !mapping.includes(field));
}

/** What a row says, by field; a column the row is too short for is empty. Blanks around it do not count. */
export function fieldsOf(mapping: CsvMapping, cells: readonly string[]): ReadonlyMap<CsvField, string> {
  return new Map(
    mapping.flatMap((field, column) => (field === null ? [] : [[field, (cells[column] ?? '').trim()] as const])),
  );
}
