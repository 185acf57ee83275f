// What to buy, by supplier, as a list to send off; and below it the cores that have to go back and those due to us.
import { EmptyState } from '../../components/EmptyState.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { SaveKey } from '../../frame/SaveKey.tsx';
import { call } from '../../rpc/client.ts';
import { useRead } from '../../rpc/use-read.ts';
import { CoresSection } from './CoresSection.tsx';
import { ExportKey } from './ExportKey.tsx';
import { StockTabs } from './StockTabs.tsx';
import { ToBuyList } from './ToBuyList.tsx';
import styles from './ToBuyScreen.module.css';

export function ToBuyScreen() {
  const { settings } = useOpenShop();
  const reorder = useRead('stock.listReorder', {});
  return (
    <>
      <StockTabs />
      <PageHead title="To buy" />
      <Loaded read={reorder}>
        {(lines) =>
          lines.length > 0 ? (
            <section className={styles.list} aria-label="Parts that run low">
              <div className={styles.keys}>
                <SaveKey get={() => call('stock.printPurchaseList', { paper: settings.paper })}>
                  Purchase list as PDF
                </SaveKey>
                <ExportKey what="reorder">As CSV</ExportKey>
              </div>
              <ToBuyList lines={lines} />
            </section>
          ) : (
            <EmptyState level={2} title="Nothing is at its reorder point.">
              A part stands here once its shelf is down to the reorder point that is set on its page.
            </EmptyState>
          )
        }
      </Loaded>
      <CoresSection />
    </>
  );
}
