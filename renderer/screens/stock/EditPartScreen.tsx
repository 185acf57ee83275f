// What is said of a part, new or known: what it is, where it comes from, when to buy it, which units it fits.
import { PageHead } from '../../frame/PageHead.tsx';
import { StockTabs } from './StockTabs.tsx';

export function EditPartScreen({ partId }: { partId: number | null }) {
  return (
    <>
      <PageHead title={partId === null ? 'New part' : 'Edit the part'} />
      <StockTabs />
    </>
  );
}
