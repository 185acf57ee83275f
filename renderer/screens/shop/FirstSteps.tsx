// The first three steps: shop name and units, where the data live, the demo shop or an empty one.
import type { ShopState } from '../../../app/shop/shop.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';

export function FirstSteps({ shop }: { shop: Extract<ShopState, { open: false }> }) {
  return <EmptyState title="No shop is open">The shop file will live in {shop.folder}.</EmptyState>;
}
