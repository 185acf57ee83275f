// Amounts in the words of this shop: lengths in the shop's unit, everything else in the unit its check was set in.
import { type AmountWords, lengthWords, withoutTrailingZeros } from '../../app/charts/amounts.ts';
import { formatAmount } from '../../app/quantities/format-amount.ts';
import { type Quantity, unitNamed } from '../../app/quantities/units.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';

export type ShopWords = AmountWords & {
  /** Said once beside the figures: "thou", "psi". */
  readonly unit: string;
};

/** How to write the amounts of a check of this quantity, or of anything else set in `unit`. */
export function amountWords(of: { readonly quantity: Quantity; readonly unit: string }, settings: Settings): ShopWords {
  const { lengthUnit, decimalMark } = settings;
  if (of.quantity === 'length') return { ...lengthWords(lengthUnit, decimalMark), unit: lengthUnit };
  const unit = unitNamed(of.unit);
  const full = (amount: number) => formatAmount(amount, unit, { decimalMark });
  return {
    unit: of.unit,
    perUnit: Number(unit.numerator) / Number(unit.denominator),
    full,
    short: (amount) => withoutTrailingZeros(full(amount)),
  };
}
