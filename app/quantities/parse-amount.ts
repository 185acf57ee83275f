// The one parser: what a person typed, to a whole number of base units. Exact, on integers; nothing is guessed.
import { accept, type Result, refuse } from '../base/result.ts';
import type { DecimalMark } from './format-amount.ts';
import { type Quantity, type Unit, unitNamed, unitSpelled } from './units.ts';

export type AmountField = {
  readonly quantity: Quantity;
  /** The unit of a bare number. */
  readonly unit: string;
  readonly decimalMark: DecimalMark;
  /** The largest amount that can be meant here, in base units; beyond it the unit is asked about. */
  readonly largest?: number;
  /** What is being typed, for the sentence: "a clearance", "a steel". */
  readonly what?: string;
};

const fractionDenominators = [2n, 4n, 8n, 16n, 32n, 64n];

/**
 * The amount a person means by `typed`, in base units of the field's quantity. Accepts a bare number in the field's
 * unit, a number with a unit, and for lengths inch fractions ("1 3/16"). Refuses with one plain sentence: not a
 * number, the other decimal mark, two decimal marks, an ambiguous bare ".5", an implausible size, a value finer
 * than the book keeps.
 */
export function parseAmount(typed: string, field: AmountField): Result<number> {
  const text = typed
    .trim()
    .replace(/−/g, '-')
    .replace(/^(?:"|')(.*)(?:"|')$/, '$1');
  const what = field.what ?? 'a number';
  if (text === '') return refuse('empty', `Type ${what} first.`);
  const fraction = /^(-?)(?:(\d+)[ -]+)?(\d+)\/(\d+)\s*(in|inch|inches|")?$/i.exec(text);
  if (fraction && field.quantity === 'length') return parseInchFraction(typed, fraction, field);
  const match = /^([+-]?)([\d.,]*)\s*(.*)$/s.exec(text);
  const [, sign = '', digits = '', suffix = ''] = match ?? [];
  if (digits === '') return refuse('not-a-number', `“${typed}” is not ${what}: type it in figures.`);
  const other = field.decimalMark === '.' ? ',' : '.';
  if (digits.includes(other)) {
    return refuse(
      'decimal-mark',
      field.decimalMark === '.'
        ? `“${typed}” has a comma; this shop writes decimals with a point.`
        : `“${typed}” has a point; this shop writes decimals with a comma.`,
    );
  }
  const [whole = '', decimals = '', ...more] = digits.split(field.decimalMark);
  if (more.length > 0) return refuse('two-decimal-marks', `“${typed}” has two decimal marks.`);
  if (whole === '' && decimals === '') return refuse('not-a-number', `“${typed}” is not ${what}: type it in figures.`);
  const named = suffix === '' ? undefined : unitSpelled(suffix, field.quantity);
  if (suffix !== '' && !named) {
    return refuse('unknown-unit', `“${suffix}” is not a unit for ${what}.`);
  }
  const isAmbiguous =
    !named &&
    field.unit === 'thou' &&
    /[1-9]/.test(decimals) &&
    (whole === '' || (/^0+$/.test(whole) && decimals.length > 2));
  if (isAmbiguous) {
    const shown = `${field.decimalMark}${decimals}`;
    return refuse('which-unit', `Is “${typed}” thou or inches? Type ${shown}t or ${shown} in.`);
  }
  const unit = named ?? unitNamed(field.unit);
  const numerator = BigInt(whole + decimals || '0') * unit.numerator;
  return toBase(typed, numerator, unit.denominator * 10n ** BigInt(decimals.length), sign === '-', unit, field);
}

function parseInchFraction(typed: string, match: RegExpExecArray, field: AmountField): Result<number> {
  const [, sign = '', whole = '0', top = '0', bottom = '1'] = match;
  if (!fractionDenominators.includes(BigInt(bottom)) || BigInt(top) >= BigInt(bottom)) {
    return refuse('not-a-fraction', `“${typed}” is not an inch fraction: use halves to 64ths, such as 1 3/16.`);
  }
  const numerator = BigInt(whole) * BigInt(bottom) + BigInt(top);
  const inch = unitNamed('in');
  return toBase(typed, numerator * inch.numerator, BigInt(bottom) * inch.denominator, sign === '-', inch, field);
}

function toBase(
  typed: string,
  numerator: bigint,
  denominator: bigint,
  isNegative: boolean,
  unit: Unit,
  field: AmountField,
): Result<number> {
  const isWhole = numerator % denominator === 0n;
  // Lengths are kept exactly or not at all; other amounts (psi in pascals) to the nearest base unit.
  if (!isWhole && (field.quantity === 'length' || field.quantity === 'count')) {
    return refuse('too-fine', `“${typed}” is finer than this book keeps.`);
  }
  const rounded = (2n * numerator + denominator) / (2n * denominator);
  if (rounded > BigInt(Number.MAX_SAFE_INTEGER)) return refuse('too-large', `“${typed}” is too large.`);
  if (field.largest !== undefined && rounded > BigInt(field.largest)) {
    const what = field.what ?? 'this';
    return refuse(
      'implausible',
      `“${typed}” would be ${inWords(rounded, unit)}, too large for ${what}: check the unit.`,
    );
  }
  const amount = Number(rounded);
  return accept(isNegative && amount !== 0 ? -amount : amount);
}

function inWords(amount: bigint, unit: Unit): string {
  const inUnit = (Number(amount) * Number(unit.denominator)) / Number(unit.numerator);
  return `${Number(inUnit.toPrecision(6))} ${unit.name}`.trim();
}
