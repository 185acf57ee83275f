// Every estimate that was given, and every line that stood here before and why it does not any more.
import { Link } from '@tanstack/react-router';
import type { EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { approvalWords } from '../../../app/papers/estimate.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

export function EstimateHistory({ estimate }: { estimate: EstimateOfJob }) {
  const { estimates, endedLines } = estimate;
  if (estimates.length === 0 && endedLines.length === 0) return null;
  return (
    <section className={styles.history} aria-label="What was before">
      {estimates.length > 0 && (
        <Disclosure words={estimates.length === 1 ? 'One estimate given' : `${estimates.length} estimates given`}>
          <Given estimate={estimate} />
        </Disclosure>
      )}
      {endedLines.length > 0 && (
        <Disclosure
          words={
            endedLines.length === 1
              ? 'One line changed or taken off'
              : `${endedLines.length} lines changed or taken off`
          }
        >
          <Ended estimate={estimate} />
        </Disclosure>
      )}
    </section>
  );
}

function Given({ estimate }: { estimate: EstimateOfJob }) {
  const { money } = useEstimateWords();
  const { decimalMark } = useOpenShop().settings;
  return (
    <Table label="Estimates given" density="dense">
      <thead>
        <tr>
          <ColumnHead>estimate</ColumnHead>
          <ColumnHead>given</ColumnHead>
          <ColumnHead isNumber>total</ColumnHead>
          <ColumnHead>the customer’s word</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {estimate.estimates.map((given) => (
          <tr key={given.estimateId}>
            <RowHead>
              <Link
                to="/jobs/$jobId/estimate/$number"
                params={{ jobId: String(estimate.jobId), number: String(given.number) }}
              >
                {`Estimate ${given.number}`}
              </Link>
            </RowHead>
            <Cell>
              {sayDayAndTime(given.givenAt)}, {given.by}
            </Cell>
            <Cell isNumber>{money(given.totals.total_cents)}</Cell>
            <Cell>
              {given.approvals.length === 0
                ? 'none'
                : given.approvals.map((approval) => approvalWords(approval, decimalMark)).join('; ')}
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Ended({ estimate }: { estimate: EstimateOfJob }) {
  const { money, quantity } = useEstimateWords();
  return (
    <Table label="Lines changed or taken off" density="dense">
      <thead>
        <tr>
          <ColumnHead>line</ColumnHead>
          <ColumnHead isNumber>quantity</ColumnHead>
          <ColumnHead isNumber>amount</ColumnHead>
          <ColumnHead>what became of it</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {estimate.endedLines.map((line) => (
          <tr key={line.lineId}>
            <RowHead>
              <s>{line.description}</s>
            </RowHead>
            <Cell isNumber>{quantity(line.quantity_hundredths)}</Cell>
            <Cell isNumber>{money(line.amount_cents)}</Cell>
            <Cell>
              {line.replacedById === null ? 'taken off' : 'changed'}
              {line.reason !== '' && `: ${line.reason}`} ({line.endedBy}, {sayDayAndTime(line.endedAt)})
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}
