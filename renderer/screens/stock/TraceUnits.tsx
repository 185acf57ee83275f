// The units something went into, newest first: ticket, customer, what went where, and what their packs read.
import { Link } from '@tanstack/react-router';
import { verdictWords } from '../../../app/charts/verdict-mark.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import type { TracedUnit } from '../../../app/stock/tracing.contract.ts';
import { ReadingWithUncertainty } from '../../components/ReadingWithUncertainty.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './TraceUnits.module.css';

export function TraceUnits({ units }: { units: readonly TracedUnit[] }) {
  const { settings } = useOpenShop();
  return (
    <Table label="Units it went into, newest first">
      <thead>
        <tr>
          <ColumnHead>job</ColumnHead>
          <ColumnHead>unit</ColumnHead>
          <ColumnHead>customer</ColumnHead>
          <ColumnHead>what went in</ColumnHead>
          <ColumnHead>clearances, {settings.lengthUnit}</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {units.map((unit) => (
          <tr key={unit.jobId} className={styles.unit}>
            <RowHead isStrong>
              <Link to="/jobs/$jobId" params={{ jobId: String(unit.jobId) }}>
                {unit.jobNumber}
              </Link>
              <span className={styles.beneath}>{unit.isClosed ? 'closed' : 'open'}</span>
            </RowHead>
            <Cell>
              {unit.familyName} <span className={styles.whole}>{unit.serial}</span>
              <span className={styles.beneath}>{unit.vehicle}</span>
            </Cell>
            <Cell>
              {unit.customerName}
              <span className={styles.beneath}>{unit.phone || 'no phone number'}</span>
            </Cell>
            <Cell>
              <ul>
                {unit.what.map((line) => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
              <span className={styles.beneath}>
                in since {sayDay(unit.at)}, {unit.isStillIn ? 'still in' : 'taken out again'}
              </span>
            </Cell>
            <Cell>
              <Clearances clearances={unit.clearances} />
            </Cell>
          </tr>
        ))}
      </tbody>
    </Table>
  );
}

function Clearances({ clearances }: Pick<TracedUnit, 'clearances'>) {
  const { settings } = useOpenShop();
  const words = amountWords({ quantity: 'length', unit: settings.lengthUnit }, settings);
  if (clearances.length === 0) return <span className="quiet">none read</span>;
  return (
    <dl className={styles.clearances}>
      {clearances.map(({ checkId, packName, phase, mean_nm, expanded_nm, verdict }) => {
        const mark = shownVerdict(verdict, 'length');
        const by = verdict.by === null ? null : words.full(verdict.by);
        return (
          <div key={checkId}>
            <dt>
              {packName}
              {phase === 'as found' && <span className="small quiet"> as found</span>}
            </dt>
            <dd className={styles.reading}>
              {mean_nm !== null && (
                <ReadingWithUncertainty
                  size="body"
                  value={words.full(mean_nm)}
                  plusMinus={expanded_nm === null ? null : words.full(expanded_nm)}
                />
              )}
            </dd>
            <dd>
              <Verdict verdict={mark} words={verdictWords(mark, by)} />
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
