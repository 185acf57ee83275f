// The parts of this shop, found by any fragment of what is known of them.
import { PageHead } from '../../frame/PageHead.tsx';
import { StockTabs } from './StockTabs.tsx';

export function PartsScreen() {
  return (
    <>
      <StockTabs />
      <PageHead title="Parts" />
    </>
  );
}
