// The shop that is open, for every screen under the frame: its settings and its people.
import { createContext, useContext } from 'react';
import type { ShopState } from '../../app/shop/shop.contract.ts';

export type OpenShop = Extract<ShopState, { open: true }>;

const OpenShopContext = createContext<OpenShop | null>(null);

export const OpenShopProvider = OpenShopContext.Provider;

/** The open shop. Only under the frame, which shows its places only once a shop is open. */
export function useOpenShop(): OpenShop {
  const shop = useContext(OpenShopContext);
  if (!shop) throw new Error('useOpenShop outside the frame');
  return shop;
}
