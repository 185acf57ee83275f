// How large a label may be, as typed.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { parseAmount } from '../quantities/parse-amount.ts';

// A code of 21 modules with its quiet zone of 4 on both sides: at 0.33 mm a module it takes 9.6 mm.
const least_mm = 10;
const most_mm = 300;
const mm_nm = 1_000_000;
const um_nm = 1_000;

/**
 * One side of a label in whole micrometres, typed in millimetres or with a unit. Refuses under 10 mm, where no code
 * fits that a scanner reads, and over 300 mm.
 */
export function parseLabelSide(typed: string, what: 'width' | 'height', decimalMark: DecimalMark): Result<number> {
  const side = parseAmount(typed, { quantity: 'length', unit: 'mm', decimalMark, what: `the ${what} of a label` });
  if (!side.ok) return side;
  if (side.value < least_mm * mm_nm) {
    return refuse('label-too-small', `“${typed}” is too small for a code that a scanner reads: 10 mm is the least.`);
  }
  if (side.value > most_mm * mm_nm) {
    return refuse('label-too-large', `“${typed}” is too large for a label: ${most_mm} mm is the most.`);
  }
  return accept(Math.round(side.value / um_nm));
}
