// Warranty terms as a person types them: three whole numbers, each of which may be left out.
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { WarrantyTerms } from './delivery.contract.ts';
import { parseDistance } from './parse-distance.ts';

export type TypedTerms = {
  readonly months: string;
  readonly distance: string;
  readonly distanceUnit: 'miles' | 'km';
  readonly passes: string;
};

export type TermsRefusals = { months?: string; distance?: string; passes?: string };

/** `usualUnit` where the terms name no distance. */
export function typedTerms({ months, distance, passes }: WarrantyTerms, usualUnit: 'miles' | 'km'): TypedTerms {
  return {
    months: months === null ? '' : String(months),
    distance: distance === null ? '' : String(distance.amount),
    distanceUnit: distance?.unit ?? usualUnit,
    passes: passes === null ? '' : String(passes),
  };
}

/** What is meant, or null with a sentence for every entry that cannot be taken. */
export function readTerms(
  typed: TypedTerms,
  decimalMark: DecimalMark,
): { readonly terms: WarrantyTerms | null; readonly refusals: TermsRefusals } {
  const months = countIn(typed.months, 240, 'months', decimalMark);
  const distance = countIn(typed.distance, 10_000_000, typed.distanceUnit, decimalMark);
  const passes = countIn(typed.passes, 100_000, 'passes', decimalMark);
  const refusals = {
    ...(typeof months === 'string' && { months }),
    ...(typeof distance === 'string' && { distance }),
    ...(typeof passes === 'string' && { passes }),
  };
  if (typeof months === 'string' || typeof distance === 'string' || typeof passes === 'string')
    return { terms: null, refusals };
  return {
    terms: { months, distance: distance === null ? null : { amount: distance, unit: typed.distanceUnit }, passes },
    refusals,
  };
}

/** The number, null for none, or why it is refused. */
function countIn(typed: string, largest: number, what: string, decimalMark: DecimalMark): number | null | string {
  const read = parseDistance(typed, decimalMark);
  if (!read.ok) return `“${typed.trim()}” is not a whole number of ${what}.`;
  if (read.value === 0) return 'Leave it empty where it does not count.';
  if (read.value !== null && read.value > largest) return `That is more than ${largest} ${what}: check the digits.`;
  return read.value;
}
