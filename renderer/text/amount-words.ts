// Amounts in the words of this shop: thou and mm in the shop's unit, everything else in the unit its check was set in.
import { type AmountWords, unitWords } from '../../app/charts/amounts.ts';
import { type Quantity, shownUnit } from '../../app/quantities/units.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';

export type ShopWords = AmountWords & {
  /** Said once beside the figures: "thou", "psi". */
  readonly unit: string;
};

/** How to write the amounts of a check of this quantity, or of anything else set in `unit`. */
export function amountWords(of: { readonly quantity: Quantity; readonly unit: string }, settings: Settings): ShopWords {
  const unit = shownUnit(of.unit, settings.lengthUnit);
  return { ...unitWords(unit, settings.decimalMark), unit };
}
