// The cores of a list by who owes them, settled where they stand.
import { Link } from '@tanstack/react-router';
import { type Core, coreDirections } from '../../app/stock/parts.contract.ts';
import { PopoverDialog } from '../components/PopoverDialog.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../components/Table.tsx';
import { sayDay } from '../text/say-date.ts';
import { useMoneyWords } from '../text/use-money-words.ts';
import styles from './Cores.module.css';
import { CoresSettleForm } from './CoresSettleForm.tsx';

export function CoresTable({ cores }: { cores: readonly Core[] }) {
  const money = useMoneyWords();
  const parts = coreDirections
    .map((direction) => ({ direction, cores: cores.filter((core) => core.direction === direction) }))
    .filter((part) => part.cores.length > 0);
  return (
    <Table label="Cores">
      <thead>
        <tr>
          <ColumnHead>core</ColumnHead>
          <ColumnHead isNumber>how many</ColumnHead>
          <ColumnHead isNumber>charge</ColumnHead>
          <ColumnHead>of</ColumnHead>
          <ColumnHead>due</ColumnHead>
          <ColumnHead />
        </tr>
      </thead>
      {parts.map((part) => (
        <tbody key={part.direction}>
          <tr className={styles.direction}>
            <th scope="rowgroup" colSpan={6}>
              {part.direction === 'to send back' ? 'To send back' : 'Due to us'}{' '}
              <span className="small quiet">{part.cores.length}</span>
            </th>
          </tr>
          {part.cores.map((core) => (
            <tr key={core.coreId} className={styles.core}>
              <RowHead>{core.what}</RowHead>
              <Cell isNumber>{core.quantity}</Cell>
              <Cell isNumber>{core.charge_cents === null ? '–' : money(core.charge_cents)}</Cell>
              <Cell>
                <WhoseCore core={core} />
              </Cell>
              <Cell>
                <Due core={core} />
              </Cell>
              <Cell isNumber>
                {core.settled === null ? (
                  <PopoverDialog words="Settle…" title={`${core.quantity} × ${core.what}`}>
                    {(close) => <CoresSettleForm core={core} onDone={close} />}
                  </PopoverDialog>
                ) : (
                  <span className="small quiet">{core.settled.by}</span>
                )}
              </Cell>
            </tr>
          ))}
        </tbody>
      ))}
    </Table>
  );
}

/** The supplier of the part it belongs to, or the ticket it came from. */
function WhoseCore({ core }: { core: Core }) {
  if (core.job) {
    return (
      <Link to="/jobs/$jobId" params={{ jobId: String(core.job.jobId) }}>
        Job {core.job.number}
      </Link>
    );
  }
  if (!core.part) return null;
  return (
    <Link to="/stock/parts/$partId" params={{ partId: String(core.part.partId) }}>
      {core.part.supplier || core.part.number}
    </Link>
  );
}

function Due({ core }: { core: Core }) {
  if (core.settled) {
    const { how, note, at } = core.settled;
    return (
      <>
        {how} {sayDay(at)}
        {note !== '' && <span className="small quiet"> {note}</span>}
      </>
    );
  }
  if (core.dueOn === null) return <span className="quiet">no day set</span>;
  if (!core.isOverdue) return sayDay(core.dueOn);
  return (
    <strong className={styles.overdue}>
      <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        <path d="M8 2v8M8 13v1" fill="none" stroke="currentColor" strokeWidth="3" />
      </svg>
      overdue since {sayDay(core.dueOn)}
    </strong>
  );
}
