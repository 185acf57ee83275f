// The batches of a part, newest first, and what can be done to each below its line.
import { Link, useNavigate } from '@tanstack/react-router';
import { Fragment, useState } from 'react';
import type { Batch, Part } from '../../../app/stock/parts.contract.ts';
import button from '../../components/Button.module.css';
import { classNames } from '../../components/class-names.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { Menu, type MenuEntry } from '../../components/Menu.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { batchWords, sayBusinessDay } from '../../text/part-words.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';
import styles from './BatchesTable.module.css';
import { type BatchAct, BatchForm } from './BatchForms.tsx';
import type { ShelfAct } from './use-take-back.ts';

type BatchesTableProps = { part: Part; onDone: (act: ShelfAct | null) => void };

export function BatchesTable({ part, onDone }: BatchesTableProps) {
  const lying = part.batches.filter((batch) => batch.onHand > 0);
  const usedUp = part.batches.filter((batch) => batch.onHand === 0);
  return (
    <section className={styles.batches} aria-label="Batches">
      <h2>Batches</h2>
      {lying.length > 0 ? (
        <Batches label="Batches on hand" part={part} batches={lying} onDone={onDone} />
      ) : (
        <p className="quiet">None on hand. Press R when some come in.</p>
      )}
      {usedUp.length > 0 && (
        <Disclosure words={usedUp.length === 1 ? '1 batch used up' : `${usedUp.length} batches used up`}>
          <Batches label="Batches used up" part={part} batches={usedUp} onDone={onDone} />
        </Disclosure>
      )}
    </section>
  );
}

function Batches({ label, part, batches, onDone }: BatchesTableProps & { label: string; batches: readonly Batch[] }) {
  const [open, setOpen] = useState<{ batchId: number; act: BatchAct } | null>(null);
  const money = useMoneyWords();
  return (
    <Table label={label}>
      <thead>
        <tr>
          <ColumnHead>batch</ColumnHead>
          <ColumnHead>received</ColumnHead>
          <ColumnHead isNumber>on hand</ColumnHead>
          <ColumnHead isNumber>cost</ColumnHead>
          <ColumnHead isWide>by</ColumnHead>
          <ColumnHead />
        </tr>
      </thead>
      <tbody>
        {batches.map((batch) => (
          <Fragment key={batch.batchId}>
            <tr className={styles.batch}>
              <RowHead>
                {batch.kit ? (
                  <Link to="/stock/trace/$kind/$id" params={{ kind: 'batch', id: String(batch.kit.batchId) }}>
                    {batchWords(batch)}
                  </Link>
                ) : (
                  <span className={batch.mark === '' ? undefined : 'mono'}>{batchWords(batch)}</span>
                )}
                {batch.mark !== '' && batch.document !== '' && (
                  <span className={classNames('small', 'quiet', styles.document)}>{batch.document}</span>
                )}
              </RowHead>
              <Cell>{sayBusinessDay(batch.receivedOn)}</Cell>
              <Cell isNumber isStrong>
                {batch.onHand}
              </Cell>
              <Cell isNumber>{batch.unitCost_cents === null ? '–' : money(batch.unitCost_cents)}</Cell>
              <Cell isWide isQuiet>
                {batch.by}
              </Cell>
              <Cell isNumber>
                <Acts part={part} batch={batch} onAct={(act) => setOpen({ batchId: batch.batchId, act })} />
              </Cell>
            </tr>
            {open?.batchId === batch.batchId && (
              <tr className={styles.form}>
                <td colSpan={6}>
                  <BatchForm
                    key={open.act}
                    act={open.act}
                    part={part}
                    batch={batch}
                    onLeave={() => setOpen(null)}
                    onDone={(act) => {
                      setOpen(null);
                      onDone(act);
                    }}
                  />
                </td>
              </tr>
            )}
          </Fragment>
        ))}
      </tbody>
    </Table>
  );
}

function Acts({ part, batch, onAct }: { part: Part; batch: Batch; onAct: (act: BatchAct) => void }) {
  const navigate = useNavigate();
  const id = String(batch.batchId);
  const isKit = part.kind === 'kit';
  const onHand: Array<MenuEntry<BatchAct | 'label' | 'trace'>> =
    batch.onHand === 0
      ? []
      : [
          { id: 'pull', words: 'Pull for a job' },
          { id: 'scrap', words: 'Scrap' },
          ...(isKit ? [{ id: 'open' as const, words: 'Take apart' }] : []),
        ];
  return (
    <Menu
      label={`Acts on ${batchWords(batch)}`}
      words="Acts"
      keyClass={classNames(button.key, button.plain, button.desk)}
      items={[
        ...onHand,
        { id: 'count', words: 'Count' },
        { id: 'label', words: 'Label' },
        { id: 'trace', words: 'Trace' },
      ]}
      onChoose={(act) => {
        if (act === 'label') void navigate({ to: '/stock/labels', search: { of: `batch:${id}` } });
        else if (act === 'trace') void navigate({ to: '/stock/trace/$kind/$id', params: { kind: 'batch', id } });
        else onAct(act);
      }}
    />
  );
}
