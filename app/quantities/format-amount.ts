// The one formatter: a whole number of base units, written in a unit with a fixed number of decimals.
import { type LengthUnit, type Unit, unitNamed } from './units.ts';

export type DecimalMark = '.' | ',';

/**
 * The amount as text in `unit`, rounded half away from zero to `decimals`, with the real minus sign.
 * `amount` may be a fraction of a base unit (a mean of readings); it is rounded to a thousandth of one first.
 */
export function formatAmount(
  amount: number,
  unit: Unit,
  options: { decimals?: number; decimalMark?: DecimalMark } = {},
): string {
  const decimals = options.decimals ?? unit.decimals;
  const thousandths = BigInt(Math.round(amount * 1000));
  const numerator = (thousandths < 0n ? -thousandths : thousandths) * unit.denominator * 10n ** BigInt(decimals);
  const denominator = unit.numerator * 1000n;
  const rounded = (2n * numerator + denominator) / (2n * denominator);
  const digits = rounded.toString().padStart(decimals + 1, '0');
  const whole = digits.slice(0, digits.length - decimals);
  const fraction = digits.slice(digits.length - decimals);
  const sign = thousandths < 0n && rounded !== 0n ? '−' : '';
  return `${sign}${whole}${decimals === 0 ? '' : `${options.decimalMark ?? '.'}${fraction}`}`;
}

/** A length in the shop's unit: thou with one decimal, millimetres with three. */
export function formatLength(
  length_nm: number,
  unit: LengthUnit,
  decimals?: number,
  decimalMark?: DecimalMark,
): string {
  return formatAmount(length_nm, unitNamed(unit), {
    ...(decimals === undefined ? {} : { decimals }),
    ...(decimalMark === undefined ? {} : { decimalMark }),
  });
}

/** The amount with its unit, and for a length the other system beside it: "27.0 thou · 0.686 mm". */
export function formatLengthTwice(length_nm: number, unit: LengthUnit, decimalMark?: DecimalMark): string {
  const other = unit === 'thou' ? 'mm' : 'thou';
  return `${formatLength(length_nm, unit, undefined, decimalMark)} ${unit} · ${formatLength(length_nm, other, undefined, decimalMark)} ${other}`;
}
