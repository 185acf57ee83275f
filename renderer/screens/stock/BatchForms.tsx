// What is done to one batch, below its line: pull for a job, count, scrap, take a kit apart.
import { type ReactNode, useState } from 'react';
import type { Batch, Part } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { SuggestField } from '../../components/SuggestField.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { PullAnyway } from '../../frame/PullAnyway.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useRead } from '../../rpc/use-read.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { batchWords, countRefusal, countTyped } from '../../text/part-words.ts';
import styles from './PartForms.module.css';
import { useEscape } from './use-escape.ts';
import type { ShelfAct } from './use-take-back.ts';

export type BatchAct = 'pull' | 'count' | 'scrap' | 'open';

type BatchFormProps = { part: Part; batch: Batch; onDone: (act: ShelfAct | null) => void; onLeave: () => void };

export function BatchForm({ act, ...form }: BatchFormProps & { act: BatchAct }) {
  switch (act) {
    case 'pull':
      return <PullForm {...form} />;
    case 'count':
      return <CountForm {...form} />;
    case 'scrap':
      return <ScrapForm {...form} />;
    case 'open':
      return <OpenForm {...form} />;
  }
}

function PullForm({ part, batch, onDone, onLeave }: BatchFormProps) {
  const [typed, setTyped] = useState('');
  const [job, setJob] = useState<{ jobId: number; number: number } | null>(null);
  const quantity = useQuantity('1');
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.pullForJob');
  const text = typed.trim();
  const jobs = useRead('jobs.listJobs', job ? null : { text, includeClosed: false }, { keepsLast: true });
  const found = job || text === '' ? [] : (jobs.data ?? []).slice(0, 8);
  // A job's own number needs no choosing.
  const only = found.length === 1 ? found[0] : found.find((each) => String(each.number) === text);
  const pull = (isSure = false) => {
    setTried(true);
    const to = job ?? only ?? null;
    if (to === null || quantity.count === null || write.isPending) return;
    const { count } = quantity;
    write.mutate(
      { jobId: to.jobId, partId: part.partId, batchId: batch.batchId, quantity: count, isSure, by: person.personId },
      {
        onSuccess: () =>
          onDone({
            words: `${count} of ${batchWords(batch)} pulled for job ${to.number}.`,
            batchId: batch.batchId,
            back: count,
            jobId: to.jobId,
          }),
      },
    );
  };
  return (
    <Lines label="Pull for a job" words="Pull" write={write} onFinish={() => pull()} onLeave={onLeave}>
      <span className={styles.much}>
        <SuggestField
          label="Job"
          hint={job ? undefined : 'Its number, customer or unit.'}
          value={typed}
          onChange={(next) => {
            setTyped(next);
            setJob(null);
          }}
          suggestions={found.map((each) => ({
            id: each.jobId,
            words: `Job ${each.number}`,
            note: [each.customerName, each.familyName].join(', '),
          }))}
          onTake={(jobId) => {
            const taken = found.find((each) => each.jobId === jobId);
            if (!taken) return;
            setJob(taken);
            setTyped(`Job ${taken.number}`);
          }}
          refusal={isTried && !job && !only ? 'Choose an open job.' : null}
          autoFocus
        />
      </span>
      <Quantity entry={quantity} error={write.error} isTried={isTried} />
      <PullAnyway error={write.error} onSure={() => pull(true)} />
    </Lines>
  );
}

function CountForm({ batch, onDone, onLeave }: BatchFormProps) {
  const [counted, setCounted] = useState('');
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.countBatch');
  const count = /^\d{1,6}$/.test(counted.trim()) ? Number(counted) : null;
  const save = () => {
    setTried(true);
    if (count === null || reason.trim() === '' || write.isPending) return;
    const change = count - batch.onHand;
    write.mutate(
      { batchId: batch.batchId, counted: count, reason, by: person.personId },
      {
        onSuccess: () =>
          onDone(
            change === 0
              ? null
              : { words: `${batchWords(batch)} counted: ${count}.`, batchId: batch.batchId, back: -change },
          ),
      },
    );
  };
  return (
    <Lines label="Count" words="Keep the count" write={write} onFinish={save} onLeave={onLeave}>
      <span className={styles.few}>
        <TextField
          label="Lie there"
          inputMode="numeric"
          autoFocus
          value={counted}
          onChange={setCounted}
          hint={`The book says ${batch.onHand}.`}
          refusal={
            refusalAbout('counted', write.error) ?? (isTried && count === null ? 'Type how many: 0 or more.' : null)
          }
        />
      </span>
      <Reason value={reason} onChange={setReason} error={write.error} isTried={isTried} example="shelf count" />
    </Lines>
  );
}

function ScrapForm({ batch, onDone, onLeave }: BatchFormProps) {
  const quantity = useQuantity('1');
  const [reason, setReason] = useState('');
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.scrapFromBatch');
  const scrap = () => {
    setTried(true);
    const { count } = quantity;
    if (count === null || reason.trim() === '' || write.isPending) return;
    write.mutate(
      { batchId: batch.batchId, quantity: count, reason, by: person.personId },
      {
        onSuccess: () =>
          onDone({ words: `${count} of ${batchWords(batch)} scrapped.`, batchId: batch.batchId, back: count }),
      },
    );
  };
  return (
    <Lines label="Scrap" words="Scrap" write={write} onFinish={scrap} onLeave={onLeave}>
      <Quantity entry={quantity} error={write.error} isTried={isTried} autoFocus />
      <Reason value={reason} onChange={setReason} error={write.error} isTried={isTried} example="glaze cracked" />
    </Lines>
  );
}

function OpenForm({ part, batch, onDone, onLeave }: BatchFormProps) {
  const quantity = useQuantity('1');
  const [isTried, setTried] = useState(false);
  const { person } = useAtBench();
  const write = useWrite('stock.openKit');
  const open = () => {
    setTried(true);
    if (quantity.count === null || write.isPending) return;
    write.mutate(
      { batchId: batch.batchId, quantity: quantity.count, by: person.personId },
      { onSuccess: () => onDone(null) },
    );
  };
  return (
    <Lines label="Take apart" words="Take apart" write={write} onFinish={open} onLeave={onLeave}>
      <Quantity entry={quantity} error={write.error} isTried={isTried} label={`How many ${part.number}`} autoFocus />
      <p className={styles.said}>Its parts lie in stock one by one from then on, and this is not taken back.</p>
    </Lines>
  );
}

type QuantityEntry = ReturnType<typeof useQuantity>;

function useQuantity(initial: string) {
  const [typed, setTyped] = useState(initial);
  return { typed, setTyped, count: countTyped(typed) };
}

type QuantityProps = {
  entry: QuantityEntry;
  error: Error | null;
  isTried: boolean;
  label?: string;
  autoFocus?: boolean;
};

function Quantity({ entry, error, isTried, label = 'How many', autoFocus = false }: QuantityProps) {
  return (
    <span className={styles.few}>
      <TextField
        label={label}
        inputMode="numeric"
        autoFocus={autoFocus}
        value={entry.typed}
        onChange={entry.setTyped}
        refusal={refusalAbout('quantity', error) ?? (isTried && entry.count === null ? countRefusal : null)}
      />
    </span>
  );
}

type ReasonProps = {
  value: string;
  onChange: (typed: string) => void;
  error: Error | null;
  isTried: boolean;
  example: string;
};

function Reason({ value, onChange, error, isTried, example }: ReasonProps) {
  return (
    <span className={styles.much}>
      <TextField
        label="Why"
        maxLength={200}
        placeholder={example}
        value={value}
        onChange={onChange}
        refusal={
          refusalAbout('reason', error) ?? (isTried && value.trim() === '' ? 'Say why, in a word or two.' : null)
        }
      />
    </span>
  );
}

type LinesProps = {
  label: string;
  words: string;
  write: { readonly error: Error | null; readonly isPending: boolean };
  onFinish: () => void;
  onLeave: () => void;
  children: ReactNode;
};

function Lines({ label, words, write, onFinish, onLeave, children }: LinesProps) {
  const { error } = write;
  useEscape(onLeave);
  const isElsewhere = !(error instanceof Refused && (error.field !== null || error.code === 'other-family'));
  return (
    <>
      <EnterThrough label={label} onFinish={onFinish} className={styles.line}>
        {children}
        <span className={styles.keys}>
          <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
            {words}
          </Button>
          <Button onPress={onLeave} keyHint="Esc">
            Leave it
          </Button>
        </span>
      </EnterThrough>
      {isElsewhere && <FailureSentence error={error} />}
    </>
  );
}
