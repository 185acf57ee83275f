// What moved of a part, newest first, with what was left after each.
import { Link } from '@tanstack/react-router';
import type { Part } from '../../../app/stock/parts.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { batchWords, changeWords, movementWords } from '../../text/part-words.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import styles from './PartSection.module.css';

/** The contract answers with the newest hundred. */
const mostShown = 100;

export function PartMovements({ part }: { part: Part }) {
  if (part.movements.length === 0) return null;
  const batches = new Map(part.batches.map((batch) => [batch.batchId, batchWords(batch)]));
  const left = leftAfter(part);
  return (
    <section className={styles.section} aria-label="What moved">
      <h2>What moved</h2>
      <Table label="What moved" density="dense">
        <colgroup>
          <col className={styles.when} />
        </colgroup>
        <thead>
          <tr>
            <ColumnHead>when</ColumnHead>
            <ColumnHead>what</ColumnHead>
            <ColumnHead>batch</ColumnHead>
            <ColumnHead isNumber>change</ColumnHead>
            <ColumnHead isNumber>on hand</ColumnHead>
            <ColumnHead>by</ColumnHead>
          </tr>
        </thead>
        <tbody>
          {part.movements.map((movement, index) => (
            <tr key={movement.movementId}>
              <RowHead>{sayDayAndTime(movement.at)}</RowHead>
              <Cell>
                {movementWords(movement)}
                {movement.job && (
                  <>
                    {' '}
                    <Link to="/jobs/$jobId" params={{ jobId: String(movement.job.jobId) }}>
                      job {movement.job.number}
                    </Link>
                  </>
                )}
              </Cell>
              <Cell>{batches.get(movement.batchId)}</Cell>
              <Cell isNumber isStrong>
                {changeWords(movement.change)}
              </Cell>
              <Cell isNumber>{left[index]}</Cell>
              <Cell isQuiet>{movement.by}</Cell>
            </tr>
          ))}
        </tbody>
      </Table>
      {part.movements.length === mostShown && (
        <p className="small quiet">The newest {mostShown}; the whole ledger goes out as a file under Import.</p>
      )}
    </section>
  );
}

/** On hand is the sum of the ledger, so each line leaves what is on hand now less everything after it. */
function leftAfter({ onHand, movements }: Part): number[] {
  let left = onHand;
  return movements.map(({ change }) => {
    const after = left;
    left -= change;
    return after;
  });
}
