// Parts that findings decided to replace and no line charges for yet; their price is typed.
import { conditionWords, partWords } from '../../../app/jobs/finding-words.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './EstimateScreen.module.css';
import { FindingOnEstimate } from './FindingOnEstimate.tsx';

/** Nothing where nothing is left to charge. */
export function FindingsToCharge({ jobId }: { jobId: number }) {
  const { settings } = useOpenShop();
  const { data: findings = [] } = useRead('jobs.listFindings', { jobId });
  const open = findings.filter(({ decision, isCharged }) => decision.decision === 'replace' && !isCharged);
  if (open.length === 0) return null;
  return (
    <section className={styles.offers} aria-label="To be replaced, not charged yet">
      <header className={styles.offersHead}>
        <h2>To be replaced, not charged yet</h2>
      </header>
      <Table label="To be replaced, not charged yet">
        <thead>
          <tr>
            <ColumnHead>part</ColumnHead>
            <ColumnHead>found</ColumnHead>
            <ColumnHead />
          </tr>
        </thead>
        <tbody>
          {open.map((finding) => (
            <tr key={finding.findingId} className={styles.line}>
              <RowHead>{partWords(finding)}</RowHead>
              <Cell>{conditionWords(finding, settings)}</Cell>
              <Cell isNumber>
                <FindingOnEstimate jobId={jobId} finding={finding} />
              </Cell>
            </tr>
          ))}
        </tbody>
      </Table>
    </section>
  );
}
