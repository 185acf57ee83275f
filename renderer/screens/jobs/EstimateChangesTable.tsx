// What changed since the customer said yes, line by line, with the difference.
import type { EstimateChanges } from '../../../app/jobs/estimate.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useEstimateWords } from './use-estimate-words.ts';

type EstimateChangesTableProps = { changes: EstimateChanges; taxLabel: string };

export function EstimateChangesTable({ changes, taxLabel }: EstimateChangesTableProps) {
  const { money, difference } = useEstimateWords();
  return (
    <Table label="Changed since approved" density="dense">
      <thead>
        <tr>
          <ColumnHead>changed since</ColumnHead>
          <ColumnHead isNumber>was</ColumnHead>
          <ColumnHead isNumber>is</ColumnHead>
          <ColumnHead isNumber>by</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {changes.lines.map((line) => (
          <tr key={line.lineId}>
            <RowHead>{line.description}</RowHead>
            <Cell isNumber>{line.was_cents === null ? 'new' : money(line.was_cents)}</Cell>
            <Cell isNumber>{line.is_cents === null ? 'off' : money(line.is_cents)}</Cell>
            <Cell isNumber>{difference(line.difference_cents)}</Cell>
          </tr>
        ))}
        {changes.tax_difference_cents !== 0 && (
          <tr>
            <RowHead columns={3}>{taxLabel}</RowHead>
            <Cell isNumber>{difference(changes.tax_difference_cents)}</Cell>
          </tr>
        )}
      </tbody>
      <tfoot>
        <tr>
          <RowHead columns={3}>In all</RowHead>
          <Cell isNumber>{difference(changes.total_difference_cents)}</Cell>
        </tr>
      </tfoot>
    </Table>
  );
}
