// Whole numbers in the cells of a file.
import type { DecimalMark } from '../quantities/format-amount.ts';

/** 12 from "12", and from "12.0", which spreadsheets write; null for anything else. Signs and blanks are something else. */
export function parseWhole(cell: string, decimalMark: DecimalMark): number | null {
  const [, digits] = new RegExp(`^(\\d{1,15})(?:${decimalMark === '.' ? '\\.' : ','}0+)?$`).exec(cell) ?? [];
  return digits === undefined ? null : Number(digits);
}
