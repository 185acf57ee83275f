// A CSV file as rows with their headings, whatever stands between its columns; or why it cannot be read.
import Papa from 'papaparse';
import { type CsvDelimiter, csvDelimiters, unguardCell } from '../../app/stock/csv-cells.ts';
import { mapByHeadings } from '../../app/stock/csv-columns.ts';
import type { CsvTarget } from '../../app/stock/lists.contract.ts';
import { Refused } from '../database/errors.ts';

export type CsvFile = {
  readonly delimiter: CsvDelimiter;
  readonly headings: readonly string[];
  readonly rows: ReadonlyArray<{ readonly line: number; readonly cells: readonly string[] }>;
};

const mostRows = 20_000;
const names: Readonly<Record<CsvDelimiter, string>> = { ',': 'commas', ';': 'semicolons', '\t': 'tabs', '|': 'bars' };

/**
 * The file with blank lines left out and the guard against formulas taken off again. Lines are counted as a spreadsheet
 * does. Refuses an empty file, letters that were not saved as UTF-8, quotes that do not close, a single column, and more
 * rows than are taken at a time.
 */
export function readCsvFile(text: string, delimiter: CsvDelimiter | null, target: CsvTarget): CsvFile {
  const content = text.replace(/^\ufeff/, '');
  const between = delimiter ?? findDelimiter(content, target);
  const { data, errors } = parse(content, between);
  const [head, ...rows] = data
    .map((cells, index) => ({ line: index + 1, cells: cells.map(unguardCell) }))
    .filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  if (head === undefined) throw new Refused('empty-file', 'The file is empty.');
  const [broken] = errors;
  if (broken !== undefined) {
    const line = (broken.row ?? 0) + 1;
    throw new Refused('quotes', `A quotation mark in line ${line} does not close where the cell ends: correct it.`);
  }
  const garbled = [head, ...rows].find(({ cells }) => cells.some((cell) => cell.includes('\ufffd')));
  if (garbled !== undefined) {
    throw new Refused(
      'encoding',
      `Line ${garbled.line} has letters that cannot be read: save the file as CSV in UTF-8 and choose it again.`,
    );
  }
  if (head.cells.length < 2) {
    const given = delimiter === null ? '' : ` with ${names[delimiter]} between`;
    throw new Refused('one-column', `Only one column was found${given}: choose what separates the columns.`);
  }
  if (rows.length === 0) throw new Refused('no-rows', 'The file has headings, but no row under them.');
  if (rows.length > mostRows) {
    const [count, most] = [rows.length, mostRows].map((each) => each.toLocaleString('en-US'));
    throw new Refused('too-many-rows', `The file has ${count} rows; ${most} are taken at a time: split it.`);
  }
  return { delimiter: between, headings: head.cells.map((heading) => heading.trim()), rows };
}

/** The one under which most headings are known; where none is, the one that makes most columns. */
function findDelimiter(content: string, target: CsvTarget): CsvDelimiter {
  const [first = ''] = /^\s*[^\r\n]*/.exec(content) ?? [];
  const [best] = csvDelimiters
    .map((delimiter) => {
      const headings = parse(first.trimStart(), delimiter).data[0] ?? [];
      return { delimiter, known: mapByHeadings(target, headings).filter(Boolean).length, columns: headings.length };
    })
    .toSorted((a, b) => b.known - a.known || b.columns - a.columns);
  return best?.delimiter ?? ',';
}

/** Lines may end in LF, CR LF or, in a file without LF, in CR. */
function parse(content: string, delimiter: CsvDelimiter): Papa.ParseResult<string[]> {
  const newline = content.includes('\n') ? '\n' : '\r';
  const parsed = Papa.parse<string[]>(content, { delimiter, newline });
  for (const cells of parsed.data) {
    const last = cells.at(-1);
    if (last?.endsWith('\r')) cells[cells.length - 1] = last.slice(0, -1);
  }
  return parsed;
}
