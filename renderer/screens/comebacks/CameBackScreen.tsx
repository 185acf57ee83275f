// What came back, newest first: on which ticket, held against which build, after how long, and why.
import { Link, useNavigate } from '@tanstack/react-router';
import { useCallback } from 'react';
import type { ComebackFilter, ComebackLine } from '../../../app/comebacks/log.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { useKeptView } from '../../frame/kept-view.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import { sayBusinessDay } from '../../text/part-words.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './Comebacks.module.css';
import { ComebacksTabs } from './ComebacksTabs.tsx';
import { daysInService, isStrong, usedWords } from './comeback-words.ts';

const filters: ReadonlyArray<{ readonly id: ComebackFilter; readonly words: string }> = [
  { id: 'all', words: 'all' },
  { id: 'open', words: 'not known yet' },
  { id: 'ours', words: 'ours' },
];

export function CameBackScreen() {
  const { file } = useOpenShop();
  const [only, show] = useKeptView<ComebackFilter>(`comebacks of ${file}`, 'all');
  const comebacks = useRead('comebacks.listComebacks', { only });
  const navigate = useNavigate();
  useLetterKey(
    'n',
    useCallback(() => void navigate({ to: '/comebacks/new' }), [navigate]),
  );
  return (
    <>
      <ComebacksTabs />
      <PageHead
        title="Came back"
        acts={
          <LinkKey to="/comebacks/new" kind="filled" keyHint="N">
            Log a comeback
          </LinkKey>
        }
      />
      <Loaded read={comebacks}>
        {(lines) =>
          lines.length === 0 && only === 'all' ? (
            <NothingYet />
          ) : (
            <section className={styles.section} aria-label="Came back">
              <div className={styles.filter}>
                <RadioGroup label="Show" isLabelHidden options={filters} value={only} onChange={show} />
              </div>
              {lines.length === 0 ? (
                <p className="quiet">{only === 'ours' ? 'None of them was ours.' : 'Every one of them is decided.'}</p>
              ) : (
                <ComebacksTable lines={lines} />
              )}
            </section>
          )
        }
      </Loaded>
    </>
  );
}

function NothingYet() {
  return (
    <EmptyState level={2} title="Nothing came back yet.">
      Here a unit that comes back is held beside the build it left with: press N, or{' '}
      <Link to="/comebacks/new">log the first one</Link> by its case tag, serial, job number or customer.
    </EmptyState>
  );
}

function ComebacksTable({ lines }: { lines: readonly ComebackLine[] }) {
  return (
    <Table label="Came back, newest first">
      <thead>
        <tr>
          <ColumnHead>came back</ColumnHead>
          <ColumnHead>unit</ColumnHead>
          <ColumnHead>built as</ColumnHead>
          <ColumnHead isNumber>in service</ColumnHead>
          <ColumnHead>outcome</ColumnHead>
          <ColumnHead>causes</ColumnHead>
          <ColumnHead>covered</ColumnHead>
          <ColumnHead isNumber>cost</ColumnHead>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <ComebackRow key={line.comebackId} line={line} />
        ))}
      </tbody>
    </Table>
  );
}

function ComebackRow({ line }: { line: ComebackLine }) {
  const { decimalMark } = useOpenShop().settings;
  const money = useMoneyWords();
  const isMistake = line.outcome === 'logged by mistake';
  return (
    <tr className={styles.tall}>
      <RowHead>
        <Link className={styles.whole} to="/comebacks/$comebackId" params={{ comebackId: String(line.comebackId) }}>
          Job {line.number}
        </Link>
        <span className={styles.beneath}>{sayBusinessDay(line.cameBackOn)}</span>
      </RowHead>
      <Cell>
        {line.familyName} <span className={styles.whole}>{line.serial}</span>
        <span className={styles.beneath}>{[line.vehicle, line.customerName].filter(Boolean).join(', ')}</span>
      </Cell>
      <Cell>
        <Link className={styles.whole} to="/jobs/$jobId" params={{ jobId: String(line.builtJobId) }}>
          Job {line.builtNumber}
        </Link>
      </Cell>
      <Cell isNumber>
        {daysInService(line.service)}
        <span className={styles.beneath}>{usedWords(line.service, decimalMark)}</span>
      </Cell>
      <Cell isStrong={isStrong(line.outcome)} isQuiet={isMistake}>
        {line.outcome}
      </Cell>
      <Cell>{line.causes.length === 0 ? <span className="quiet">none said</span> : line.causes.join(', ')}</Cell>
      <Cell>{line.covered}</Cell>
      <Cell isNumber>{line.cost_cents === null ? '–' : money(line.cost_cents)}</Cell>
    </tr>
  );
}
