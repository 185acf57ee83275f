// Labels: what another screen handed over, on pages of exactly a label's size; and the sizes this shop uses.
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { LabelSizes } from './LabelSizes.tsx';
import { LabelsPrint } from './LabelsPrint.tsx';
import styles from './LabelsScreen.module.css';
import { labelledAt } from './labelled-address.ts';
import { StockTabs } from './StockTabs.tsx';

type LabelsScreenProps = {
  /** "batch:12", or several with commas between. */
  of: string;
  copies: number;
};

export function LabelsScreen({ of, copies }: LabelsScreenProps) {
  const sizes = useRead('stock.listLabelSizes', {});
  const wanted = labelledAt(of);
  return (
    <div className={styles.page}>
      <StockTabs />
      <PageHead title="Labels" />
      <Loaded read={sizes}>
        {(known) => (
          <div className={styles.body}>
            <LabelsPrint key={of} sizes={known} labels={wanted} copiesAtFirst={copies} />
            <div className={styles.side}>
              <LabelSizes sizes={known} />
            </div>
          </div>
        )}
      </Loaded>
    </div>
  );
}
