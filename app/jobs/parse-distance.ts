// What stands on an odometer, or how many passes a unit has made, as a person types it.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';

const largest = 10_000_000;

/**
 * The whole number a person means, or null where nothing was typed because it is not known. Thousands may stand apart
 * by a blank, an apostrophe or the mark this shop does not write decimals with. Refuses anything else in one sentence.
 */
export function parseDistance(typed: string, decimalMark: DecimalMark): Result<number | null> {
  const text = typed.trim();
  if (text === '') return accept(null);
  const thousands = decimalMark === '.' ? ',' : '.';
  const grouped = new RegExp(`^\\d{1,3}(?:([ ’'${thousands}])\\d{3})(?:\\1\\d{3})*$`);
  if (!/^\d+$/.test(text) && !grouped.test(text)) {
    return refuse('not-a-distance', `“${text}” is not a whole number: type it in figures, such as 118400.`);
  }
  const amount = Number(text.replace(/\D/g, ''));
  if (amount > largest) return refuse('too-large', `“${text}” is more than any odometer shows: check the digits.`);
  return accept(amount);
}
