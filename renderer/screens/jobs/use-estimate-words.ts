// Money, differences, hours and days of an estimate as this shop writes them.
import { formatQuantity } from '../../../app/jobs/estimate-typed.ts';
import { formatMoney } from '../../../app/quantities/money.ts';
import { useOpenShop } from '../../frame/open-shop.ts';

export function useEstimateWords() {
  const { decimalMark } = useOpenShop().settings;
  const money = (cents: number) => formatMoney(cents, decimalMark);
  return {
    money,
    /** "+12.50", "−3.00": what something changed by. */
    difference: (cents: number) => `${cents > 0 ? '+' : ''}${money(cents)}`,
    quantity: (hundredths: number) => formatQuantity(hundredths, decimalMark),
  };
}

/** The day of this machine's calendar, YYYY-MM-DD. */
export function dayHere(): string {
  const now = new Date();
  const two = (count: number) => String(count).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
