// Cells of a CSV file on their way out and in: quoted as RFC 4180 asks, and guarded where a spreadsheet would calculate.
import type { DecimalMark } from '../quantities/format-amount.ts';

export const csvDelimiters = [',', ';', '\t', '|'] as const;
export type CsvDelimiter = (typeof csvDelimiters)[number];

/** A number and a figure, its digits already written out, stand as they are; text may be anything. */
export type CsvCell = string | number | { readonly figure: string };

// Spreadsheets take = + - @ for the start of a formula, some of them also in full width, after blanks, quotes or marks that
// cannot be seen; a tab or a line break at the front lets what follows begin a cell.
const formulaStart = /^['"\p{White_Space}\p{Cc}\p{Cf}]*[=+\-@＝＋－＠−\t\r\n]/u;

/**
 * The text with an apostrophe in front where a spreadsheet could take it for a formula. Text that begins with such an
 * apostrophe gets another, so that `unguardCell` gives back exactly what went out.
 */
export function guardCell(text: string): string {
  return formulaStart.test(text) ? `'${text}` : text;
}

/** The text that `guardCell` was given; text that it would not have guarded stays as it is. */
export function unguardCell(cell: string): string {
  return cell.startsWith("'") && formulaStart.test(cell.slice(1)) ? cell.slice(1) : cell;
}

/** What stands between the columns: a comma, or where the comma is the decimal mark a semicolon, as spreadsheets there expect. */
export function delimiterFor(decimalMark: DecimalMark): CsvDelimiter {
  return decimalMark === ',' ? ';' : ',';
}

/**
 * The rows as one CSV text after RFC 4180: CR LF after each row, quotes where a cell needs them. Text is guarded; numbers
 * are not, nor is their minus sign: they are no formulas. It begins with a byte order mark, without which a spreadsheet on
 * Windows reads “±” as two letters of its own code page.
 */
export function writeCsv(rows: ReadonlyArray<readonly CsvCell[]>, delimiter: CsvDelimiter): string {
  return byteOrderMark + writeCsvRows(rows, delimiter);
}

export const byteOrderMark = '\ufeff';

/** Rows to stand after others of the same file. */
export function writeCsvRows(rows: ReadonlyArray<readonly CsvCell[]>, delimiter: CsvDelimiter): string {
  return rows.map((cells) => `${cells.map((cell) => writeCell(cell, delimiter)).join(delimiter)}\r\n`).join('');
}

function writeCell(cell: CsvCell, delimiter: CsvDelimiter): string {
  const text = typeof cell === 'string' ? guardCell(cell) : typeof cell === 'number' ? String(cell) : cell.figure;
  const needsQuotes = text.includes(delimiter) || /["\r\n]/.test(text) || text.startsWith('\ufeff');
  return needsQuotes ? `"${text.replaceAll('"', '""')}"` : text;
}
