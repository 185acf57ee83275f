// Money as this shop writes it.
import { formatMoney } from '../../app/quantities/money.ts';
import { useOpenShop } from '../frame/open-shop.ts';

/** Writes cents out: "12.50". */
export function useMoneyWords(): (cents: number) => string {
  const { settings } = useOpenShop();
  return (cents) => formatMoney(cents, settings.decimalMark);
}
