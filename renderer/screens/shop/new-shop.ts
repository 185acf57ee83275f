// What is typed to start a shop, and what is still missing of it.
import type { Input } from '../../../app/contract/contract.ts';

export type NewShop = Input<'shop.createShop'>;

export const blankShop: NewShop = {
  shopName: '',
  lengthUnit: 'thou',
  paper: 'letter',
  personName: '',
  personInitials: '',
};

/** The first letters of a name, as initials to offer: "Rosa Aldane" gives RA. */
export function initialsOf(name: string): string {
  return name
    .split(/\s+/)
    .map((word) => word.charAt(0).toUpperCase())
    .join('')
    .slice(0, 4);
}

/** The shop as it would be started: initials nobody typed are those of the name. */
export function completed(shop: NewShop): NewShop {
  return { ...shop, personInitials: shop.personInitials.trim() || initialsOf(shop.personName) };
}

/** One plain sentence for each entry that is still empty. */
export function whatIsMissing(shop: NewShop): { shopName?: string; personName?: string } {
  return {
    ...(shop.shopName.trim() === '' && { shopName: 'Type the name that stands on your papers.' }),
    ...(shop.personName.trim() === '' && { personName: 'Type your name: it stands beside what you record.' }),
  };
}
