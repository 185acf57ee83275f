// Hours, quantities, tax rates and prices of an estimate, as a person types them and as they are written back.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from '../quantities/format-amount.ts';
import { parseMoney } from '../quantities/money.ts';

const mostHundredths = 10_000_00;

/** Hours or pieces in hundredths, "2.5" is 250; nothing typed is one. Refuses zero, signs and a third decimal. Exact. */
export function parseQuantity(typed: string, decimalMark: DecimalMark): Result<number> {
  const text = typed.trim();
  if (text === '') return accept(100);
  const hundredths = decimalsTyped(text, decimalMark, 2);
  if (hundredths === null || hundredths === 0) {
    return refuse('not-a-quantity', `“${text}” is not a quantity: type it like 2 or 1${decimalMark}25.`);
  }
  if (hundredths > mostHundredths) return refuse('too-many', `“${text}” is more than one line holds: check it.`);
  return accept(hundredths);
}

/** "2.5" from 250; no more decimals than it has. */
export function formatQuantity(hundredths: number, decimalMark: DecimalMark): string {
  return shortDecimals(hundredths, 2, decimalMark);
}

/** A tax rate typed in percent, in parts per hundred thousand: "8.875" is 8875. Nothing typed is no tax. Exact. */
export function parseTaxRate(typed: string, decimalMark: DecimalMark): Result<number> {
  const text = typed.replace('%', '').trim();
  if (text === '') return accept(0);
  const perHundredThousand = decimalsTyped(text, decimalMark, 3);
  if (perHundredThousand === null || perHundredThousand > 100_000) {
    return refuse('not-a-rate', `“${text}” is not a tax rate: type percent, like 8${decimalMark}875.`);
  }
  return accept(perHundredThousand);
}

/** "8.875" from 8875. */
export function formatTaxRate(perHundredThousand: number, decimalMark: DecimalMark): string {
  return shortDecimals(perHundredThousand, 3, decimalMark);
}

/** Money that may be a credit: a minus sign in front takes it off. */
export function parseMoneyOrCredit(typed: string, decimalMark: DecimalMark): Result<number> {
  const text = typed.trim();
  const parsed = parseMoney(text.replace(/^[-−]\s*/, ''), decimalMark);
  if (!parsed.ok || !/^[-−]/.test(text)) return parsed;
  return accept(parsed.value === 0 ? 0 : -parsed.value);
}

/** What was typed in units of its last decimal allowed, or null where it is no such number. */
function decimalsTyped(text: string, decimalMark: DecimalMark, decimals: number): number | null {
  const mark = decimalMark === '.' ? '\\.' : ',';
  const match = new RegExp(`^(\\d{0,7})(?:${mark}(\\d{1,${decimals}}))?$`).exec(text);
  if (!match || (match[1] === '' && match[2] === undefined)) return null;
  return Number((match[1] ?? '') + (match[2] ?? '').padEnd(decimals, '0'));
}

function shortDecimals(amount: number, decimals: number, decimalMark: DecimalMark): string {
  const digits = String(amount).padStart(decimals + 1, '0');
  const rest = digits.slice(-decimals).replace(/0+$/, '');
  return rest === '' ? digits.slice(0, -decimals) : `${digits.slice(0, -decimals)}${decimalMark}${rest}`;
}
