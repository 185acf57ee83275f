// Heights as this shop writes them.
import { type AmountWords, lengthWords } from '../../../app/charts/amounts.ts';
import type { LengthUnit } from '../../../app/quantities/units.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

export type LengthWords = AmountWords & { readonly unit: LengthUnit };

/** Writes heights in thou with one decimal or in millimetres with three. */
export function useLengthWords(): LengthWords {
  const { lengthUnit, decimalMark } = useOpenShop().settings;
  return { ...lengthWords(lengthUnit, decimalMark), unit: lengthUnit };
}
