// Money: whole cents, from what a person typed and back. No currency is kept; a shop has one.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from './format-amount.ts';

const mostCents = 100_000_000_00;

/** The cents meant by "12.50", "12", "1,250.00" or, as it is often written, "$12.50"; refuses more than two decimals, signs and anything else. Exact. */
export function parseMoney(typed: string, decimalMark: DecimalMark): Result<number> {
  const [mark, grouping] = decimalMark === '.' ? ['\\.', ','] : [',', '\\.'];
  const match = new RegExp(`^(\\d+|\\d{1,3}(?:[ ${grouping}]\\d{3})+)(?:${mark}(\\d{1,2}))?$`).exec(
    typed.trim().replace(/^\p{Sc}\s*/u, ''),
  );
  if (!match) {
    return refuse('not-money', `“${typed}” is not an amount of money: type it like 12${decimalMark}50.`);
  }
  const [, whole = '', decimals = ''] = match;
  const cents = Number(whole.replace(/\D/g, '') + decimals.padEnd(2, '0'));
  if (cents > mostCents) return refuse('too-much-money', `“${typed}” is more than this book keeps: check it.`);
  return accept(cents);
}

/** "12.50"; always two decimals. `cents` may be negative. */
export function formatMoney(cents: number, decimalMark: DecimalMark): string {
  const digits = String(Math.abs(cents)).padStart(3, '0');
  return `${cents < 0 ? '−' : ''}${digits.slice(0, -2)}${decimalMark}${digits.slice(-2)}`;
}
