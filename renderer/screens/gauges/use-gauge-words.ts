// Amounts of a gauge in the unit it is marked in: a digit finer than readings are, because errors are smaller.
import { withoutTrailingZeros } from '../../../app/charts/amounts.ts';
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

export type GaugeWords = {
  /** Said once beside the figures. */
  readonly unit: string;
  /** "0.5": without trailing zeros. */
  readonly bare: (amount: number) => string;
  /** "0.50": figures of one column. */
  readonly full: (amount: number) => string;
  /** The same, with the sign of an error: "+0.5", "−0.2", "0". */
  readonly signed: (amount: number) => string;
};

export function useGaugeWords(markedIn: string): GaugeWords {
  const { decimalMark } = useOpenShop().settings;
  const unit = unitNamed(markedIn);
  const full = (amount: number) => formatAmount(amount, unit, { decimals: unit.decimals + 1, decimalMark });
  const bare = (amount: number) => withoutTrailingZeros(full(amount));
  return { unit: markedIn, bare, full, signed: (amount) => (amount > 0 ? `+${bare(amount)}` : bare(amount)) };
}
