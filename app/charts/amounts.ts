// How a chart writes its amounts and which stretch of them it shows. Amounts are whole base units of their quantity.
import { type DecimalMark, formatAmount } from '../quantities/format-amount.ts';
import { type LengthUnit, unitNamed } from '../quantities/units.ts';

export type AmountWords = {
  /** Base units in one of the unit that the axis counts in. */
  readonly perUnit: number;
  /** An amount as it was read or set: "20". */
  readonly short: (amount: number) => string;
  /** A computed amount, with the decimals of its column: "26.0". */
  readonly full: (amount: number) => string;
};

export type Limits = { readonly low: number | null; readonly high: number | null };

/** A value with its half-width of 95 in 100, null where repeatability is not known. */
export type SureAmount = { readonly value: number; readonly expanded: number | null };

/** Lengths in the shop's unit. */
export function lengthWords(unit: LengthUnit, decimalMark?: DecimalMark): AmountWords {
  return unitWords(unit, decimalMark);
}

/** How amounts of a unit are written: thou with one decimal, millimetres with three; bare where they were set or read. */
export function unitWords(unitName: string, decimalMark: DecimalMark = '.'): AmountWords {
  const unit = unitNamed(unitName);
  const full = (amount: number) => formatAmount(amount, unit, { decimalMark });
  return {
    perUnit: Number(unit.numerator) / Number(unit.denominator),
    full,
    // 0.66 beside 0.686 would look like a coarser reading: millimetres keep their decimals.
    short: (amount) => (unitName === 'mm' ? full(amount) : withoutTrailingZeros(full(amount))),
  };
}

export function withoutTrailingZeros(figure: string): string {
  return figure.replace(/[.,](\d*?)0+$/, (whole, kept: string) => (kept === '' ? '' : whole.charAt(0) + kept));
}

/** "26.0 ± 1.5", or the bare value where the half-width is not known. */
export function writeSure(amount: SureAmount, words: AmountWords): string {
  const value = words.full(amount.value);
  return amount.expanded === null ? value : `${value} ± ${words.full(amount.expanded)}`;
}

/** "limits 20 and 30", "at least 20", "at most 30", or nothing where none is set. */
export function writeLimits({ low, high }: Limits, words: AmountWords): string {
  if (low !== null && high !== null) return `limits ${words.short(low)} and ${words.short(high)}`;
  if (low !== null) return `at least ${words.short(low)}`;
  return high === null ? 'no limits' : `at most ${words.short(high)}`;
}

/**
 * The stretch that stands for the band: the limits where both are set; up from nothing to an only high limit; a quarter
 * up from an only low one; else round the target or the values. Wide enough for the values it is given.
 */
export function bandStretch(
  { low, high }: Limits,
  target: number | null,
  values: readonly number[],
  perUnit: number,
): { readonly low: number; readonly high: number } {
  if (low !== null && high !== null && high > low) return { low, high };
  const anchor = low ?? high ?? target ?? values[0] ?? 0;
  const others = target === null ? values : [...values, target];
  const least = anchor === 0 ? perUnit : Math.abs(anchor) / 4;
  const reach = Math.max(least, ...others.map((each) => Math.abs(each - anchor) * 1.25));
  if (low !== null) return { low, high: low + reach };
  if (high !== null) return { low: high > 0 ? Math.min(0, ...others) : high - reach, high };
  return { low: anchor - reach, high: anchor + reach };
}
