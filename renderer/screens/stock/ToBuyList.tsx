// Parts at or under their reorder point, a part of the table for each supplier, with what the order comes to.
import { Link } from '@tanstack/react-router';
import type { ReorderLine } from '../../../app/stock/parts.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './ToBuyList.module.css';

export function ToBuyList({ lines }: { lines: readonly ReorderLine[] }) {
  const money = useMoneyWords();
  const bySupplier = Map.groupBy(lines, (line) => line.supplier);
  return (
    <Table label="To buy, by supplier">
      <thead>
        <tr>
          <ColumnHead>part</ColumnHead>
          <ColumnHead>description</ColumnHead>
          <ColumnHead isNumber>on hand</ColumnHead>
          <ColumnHead isNumber>reorder at</ColumnHead>
          <ColumnHead isNumber>buy</ColumnHead>
          <ColumnHead>unit</ColumnHead>
          <ColumnHead isNumber>cost</ColumnHead>
          <ColumnHead isNumber>comes to</ColumnHead>
        </tr>
      </thead>
      {[...bySupplier].map(([supplier, ofSupplier]) => (
        <tbody key={supplier}>
          <tr className={styles.supplier}>
            <th scope="rowgroup" colSpan={7}>
              {supplier || 'No supplier named'}{' '}
              <span className="small quiet">{ofSupplier.length === 1 ? '1 part' : `${ofSupplier.length} parts`}</span>
            </th>
            <Cell isNumber isStrong>
              {ofSupplier.some((line) => line.lineCost_cents !== null) && money(sumOf(ofSupplier))}
            </Cell>
          </tr>
          {ofSupplier.map((line) => (
            <tr key={line.partId}>
              <RowHead>
                <Link to="/stock/parts/$partId" params={{ partId: String(line.partId) }} className={styles.number}>
                  {line.number}
                </Link>
              </RowHead>
              <Cell>{line.description}</Cell>
              <Cell isNumber>{line.onHand}</Cell>
              <Cell isNumber>{line.reorderPoint}</Cell>
              <Cell isNumber isStrong>
                {line.suggested}
              </Cell>
              <Cell isQuiet>{line.unitOfIssue}</Cell>
              <Cell isNumber>{line.cost_cents === null ? '–' : money(line.cost_cents)}</Cell>
              <Cell isNumber>{line.lineCost_cents === null ? 'not known' : money(line.lineCost_cents)}</Cell>
            </tr>
          ))}
        </tbody>
      ))}
      <tfoot>
        <tr>
          <th scope="row" colSpan={7}>
            In all{unpriced(lines)}
          </th>
          <td className={styles.sum}>{money(sumOf(lines))}</td>
        </tr>
      </tfoot>
    </Table>
  );
}

function sumOf(lines: readonly ReorderLine[]): number {
  return lines.reduce((sum, line) => sum + (line.lineCost_cents ?? 0), 0);
}

/** ", without 2 parts whose cost is not known": a sum says what it leaves out. */
function unpriced(lines: readonly ReorderLine[]): string {
  const count = lines.filter((line) => line.lineCost_cents === null).length;
  if (count === 0) return '';
  return count === 1 ? ', without 1 part whose cost is not known' : `, without ${count} parts whose cost is not known`;
}
