// What a ± is made of: each line's standard uncertainty and its share, and what they come to together.
import type { Evaluation } from '../../app/readings/readings.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from './Table.tsx';

type BudgetTableProps = {
  label: string;
  density?: 'dense' | 'normal';
  /** Over the names of the lines, and over their standard uncertainties. */
  heads: readonly [lines: string, uncertainty: string];
  of: Pick<Evaluation, 'budget' | 'standardUncertainty'>;
  write: (amount: number) => string;
};

export function BudgetTable({ label, density = 'normal', heads, of, write }: BudgetTableProps) {
  return (
    <Table label={label} density={density}>
      <thead>
        <tr>
          <ColumnHead>{heads[0]}</ColumnHead>
          <ColumnHead isNumber>{heads[1]}</ColumnHead>
          <ColumnHead isNumber>share</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {of.budget.map((line) => (
          <tr key={line.name}>
            <RowHead>
              {line.name}
              {line.basis !== '' && <span className="quiet">, {line.basis}</span>}
            </RowHead>
            <Cell isNumber>{write(line.standardUncertainty)}</Cell>
            <Cell isNumber>{Math.round(100 * line.share)} %</Cell>
          </tr>
        ))}
      </tbody>
      {of.standardUncertainty !== null && (
        <tfoot>
          <tr>
            <RowHead>together</RowHead>
            <Cell isNumber>{write(of.standardUncertainty)}</Cell>
            <Cell isNumber>100 %</Cell>
          </tr>
        </tfoot>
      )}
    </Table>
  );
}
