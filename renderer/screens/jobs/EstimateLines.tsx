// The lines of an estimate by kind, what they come to with tax, and how that was rounded.
import type { EstimateLine, EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { kindHeadings, kindsInOrder } from '../../../app/jobs/estimate-kinds.ts';
import { lineAmount_cents, roundingWords } from '../../../app/jobs/estimate-total.ts';
import { formatTaxRate } from '../../../app/jobs/estimate-typed.ts';
import { classNames } from '../../components/class-names.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { EstimateLineChange } from './EstimateLineChange.tsx';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

type EstimateLinesProps = { estimate: EstimateOfJob; showsCost: boolean };

export function EstimateLines({ estimate, showsCost }: EstimateLinesProps) {
  const { lines, isClosed, terms } = estimate;
  if (lines.length === 0) {
    return (
      <EmptyState level={2} title="No line yet.">
        {isClosed ? 'Nothing was charged for on this ticket.' : 'Type the first one, or charge what is on the ticket.'}
      </EmptyState>
    );
  }
  return (
    <>
      <Table label="Lines">
        <thead>
          <tr>
            <ColumnHead>line</ColumnHead>
            <ColumnHead isNumber>quantity</ColumnHead>
            <ColumnHead isNumber>each</ColumnHead>
            {showsCost && <ColumnHead isNumber>our cost</ColumnHead>}
            <ColumnHead>taxed</ColumnHead>
            <ColumnHead isNumber>amount</ColumnHead>
            {!isClosed && <ColumnHead />}
          </tr>
        </thead>
        {kindsInOrder.map((kind) => {
          const ofKind = lines.filter((line) => line.kind === kind);
          if (ofKind.length === 0) return null;
          return (
            <tbody key={kind}>
              <tr className={styles.kind}>
                <th scope="rowgroup" colSpan={(showsCost ? 6 : 5) + (isClosed ? 0 : 1)}>
                  {kindHeadings[kind]}
                </th>
              </tr>
              {ofKind.map((line) => (
                <LineRow key={line.lineId} line={line} estimate={estimate} showsCost={showsCost} />
              ))}
            </tbody>
          );
        })}
        <Sums estimate={estimate} showsCost={showsCost} />
      </Table>
      <p className={classNames('small quiet', styles.note)}>{roundingWords}</p>
      {terms.taxPerHundredThousand === 0 && (
        <p className="small quiet">No tax rate is set: “Rates and tax” above sets it.</p>
      )}
    </>
  );
}

function LineRow({ line, estimate, showsCost }: EstimateLinesProps & { line: EstimateLine }) {
  const { money, quantity } = useEstimateWords();
  const charged = line.quantity_hundredths / 100;
  return (
    <tr className={styles.line}>
      <RowHead>
        {line.description}
        {line.stock !== null && line.stock.pulled < charged && (
          <span className="small quiet"> only {line.stock.pulled} on the ticket</span>
        )}
      </RowHead>
      <Cell isNumber>
        {quantity(line.quantity_hundredths)}
        {line.kind === 'labour' && <span className="small quiet"> h</span>}
      </Cell>
      <Cell isNumber>{money(line.unitPrice_cents)}</Cell>
      {showsCost && (
        <Cell isNumber isQuiet>
          {line.unitCost_cents === null ? '–' : money(line.unitCost_cents)}
        </Cell>
      )}
      <Cell isQuiet>{line.isTaxable ? 'taxed' : ''}</Cell>
      <Cell isNumber isStrong>
        {money(line.amount_cents)}
      </Cell>
      {!estimate.isClosed && (
        <Cell isNumber>
          <EstimateLineChange line={line} terms={estimate.terms} showsCost={showsCost} />
        </Cell>
      )}
    </tr>
  );
}

function Sums({ estimate, showsCost }: EstimateLinesProps) {
  const { money } = useEstimateWords();
  const { decimalMark } = useOpenShop().settings;
  const { totals, terms, deposited_cents, balance_cents, isClosed } = estimate;
  const before = showsCost ? 5 : 4;
  const row = (name: string, cents: number, className: string | undefined) => (
    <tr className={className}>
      <th scope="row" colSpan={before}>
        {name}
      </th>
      <Cell isNumber>{money(cents)}</Cell>
      {!isClosed && <td />}
    </tr>
  );
  const tax = `${terms.taxLabel} ${formatTaxRate(terms.taxPerHundredThousand, decimalMark)} % on ${money(totals.taxable_cents)}`;
  return (
    <tfoot>
      {row('Lines', totals.lines_cents, styles.sum)}
      {row(tax, totals.tax_cents, styles.sum)}
      {row('Total', totals.total_cents, styles.total)}
      {deposited_cents !== 0 && row('Received ahead', -deposited_cents, styles.sum)}
      {deposited_cents !== 0 && row('Balance', balance_cents, styles.total)}
      {showsCost && row(costWords(estimate), costOf(estimate.lines), styles.sum)}
    </tfoot>
  );
}

function costOf(lines: readonly EstimateLine[]): number {
  return lines.reduce((sum, { quantity_hundredths, unitCost_cents }) => {
    return sum + lineAmount_cents({ quantity_hundredths, unitPrice_cents: unitCost_cents ?? 0 });
  }, 0);
}

/** A sum says what it leaves out. */
function costWords({ lines }: EstimateOfJob): string {
  const unknown = lines.filter((line) => line.unitCost_cents === null).length;
  if (unknown === 0) return 'Our cost';
  return `Our cost, without ${unknown === 1 ? 'one line' : `${unknown} lines`} whose cost is not known`;
}
