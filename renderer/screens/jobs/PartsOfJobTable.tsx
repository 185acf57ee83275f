// The parts of a ticket line by line; a kit opens into what it brought along.
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { PartOfJob } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { batchWords } from '../../text/part-words.ts';
import { sayDay } from '../../text/say-date.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './PartsOfJob.module.css';
import { ReturnKey } from './ReturnKey.tsx';
import type { PartsOfJobActs } from './use-parts-of-job.ts';

type PartsOfJobTableProps = {
  lines: readonly PartOfJob[];
  showsCost: boolean;
  /** null: the ticket is closed, and nothing moves. */
  acts: PartsOfJobActs | null;
};

export function PartsOfJobTable({ lines, showsCost, acts }: PartsOfJobTableProps) {
  return (
    <Table label="Parts">
      <thead>
        <tr>
          <ColumnHead isNumber>count</ColumnHead>
          <ColumnHead>part</ColumnHead>
          <ColumnHead>batch</ColumnHead>
          <ColumnHead isWide>pulled</ColumnHead>
          {showsCost && <ColumnHead isNumber>cost</ColumnHead>}
          <ColumnHead isNumber>price</ColumnHead>
          {acts && <ColumnHead />}
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <Line key={line.batchId} line={line} showsCost={showsCost} acts={acts} />
        ))}
      </tbody>
      <tfoot>
        <tr>
          <ColumnHead />
          <th scope="row" colSpan={2}>
            In all{unpriced(lines)}
          </th>
          <Cell isWide />
          {showsCost && <Sum lines={lines} of="cost_cents" />}
          <Sum lines={lines} of="price_cents" />
          {acts && <td />}
        </tr>
      </tfoot>
    </Table>
  );
}

function Line({ line, showsCost, acts }: { line: PartOfJob } & Omit<PartsOfJobTableProps, 'lines'>) {
  const [isOpen, setOpen] = useState(false);
  const { batchId, partId, number, quantity, unitOfIssue } = line;
  return (
    <>
      <tr className={styles.line}>
        <Cell isNumber isStrong>
          {quantity}
          {unitOfIssue !== 'each' && <span className={styles.unit}> {unitOfIssue}</span>}
        </Cell>
        <RowHead>
          <Link to="/stock/parts/$partId" params={{ partId: String(partId) }} className={styles.partNumber}>
            {number}
          </Link>
          {line.description}
          {line.contents.length > 0 && (
            <span className={styles.opens}>
              <Button aria-expanded={isOpen} onPress={() => setOpen(!isOpen)}>
                {isOpen ? 'Close the kit' : `${line.contents.length} parts in it`}
              </Button>
            </span>
          )}
        </RowHead>
        <Cell>
          <Link to="/stock/trace/$kind/$id" params={{ kind: 'batch', id: String(batchId) }}>
            {batchWords(line)}
          </Link>
        </Cell>
        <Cell isWide isQuiet>
          {sayDay(line.pulledAt)}, {line.by}
        </Cell>
        {showsCost && <Amount cents={line.cost_cents} quantity={quantity} />}
        <Amount cents={line.price_cents} quantity={quantity} />
        {acts && (
          <Cell isNumber>
            <ReturnKey acts={acts} part={{ batchId, number, quantity, of: { whole: partId } }} />
          </Cell>
        )}
      </tr>
      {isOpen &&
        line.contents.map((part) => (
          <tr key={part.partId} className={styles.inKit}>
            <Cell isNumber>{part.quantity}</Cell>
            <RowHead>
              <Link to="/stock/parts/$partId" params={{ partId: String(part.partId) }} className={styles.partNumber}>
                {part.number}
              </Link>
              {part.description}
            </RowHead>
            <Cell isQuiet>of the kit</Cell>
            <Cell isWide />
            {showsCost && <Cell />}
            <Cell />
            {acts && (
              <Cell isNumber>
                <ReturnKey
                  acts={acts}
                  part={{
                    batchId,
                    number: part.number,
                    quantity: part.quantity,
                    of: { partOfKit: part.partId },
                  }}
                />
              </Cell>
            )}
          </tr>
        ))}
    </>
  );
}

function Amount({ cents, quantity }: { cents: number | null; quantity: number }) {
  const money = useMoneyWords();
  if (cents === null) return <Cell isNumber>–</Cell>;
  return (
    <Cell isNumber>
      {quantity > 1 && (
        <span className={styles.each}>
          {quantity} × {money(cents)}
        </span>
      )}
      {money(cents * quantity)}
    </Cell>
  );
}

function Sum({ lines, of }: { lines: readonly PartOfJob[]; of: 'cost_cents' | 'price_cents' }) {
  const money = useMoneyWords();
  return <Cell isNumber>{money(lines.reduce((sum, line) => sum + (line[of] ?? 0) * line.quantity, 0))}</Cell>;
}

/** A sum says what it leaves out. */
function unpriced(lines: readonly PartOfJob[]): string {
  const count = lines.filter((line) => line.price_cents === null).length;
  if (count === 0) return '';
  return count === 1 ? ', without 1 line that has no price' : `, without ${count} lines that have no price`;
}
