// One part: what it is, how many are on hand, its batches and what moved.
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { StockTabs } from './StockTabs.tsx';

export function PartScreen({ partId }: { partId: number }) {
  const part = useRead('stock.getPart', { partId });
  return (
    <Loaded read={part}>
      {(known) => (
        <>
          <PageHead title={known.number} facts={known.description} />
          <StockTabs />
        </>
      )}
    </Loaded>
  );
}
