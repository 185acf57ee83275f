// A core written down by hand: which way it is owed, what it is, its charge, by when, and of which ticket.
import { useState } from 'react';
import { type Core, coreDirections } from '../../app/stock/parts.contract.ts';
import { Button } from '../components/Button.tsx';
import { EnterThrough } from '../components/EnterThrough.tsx';
import { RadioGroup } from '../components/RadioGroup.tsx';
import { SuggestField } from '../components/SuggestField.tsx';
import { TextField } from '../components/TextField.tsx';
import { useAtBench } from '../frame/at-bench.ts';
import { FailureSentence } from '../frame/FailureSentence.tsx';
import { Refused, refusalAbout } from '../rpc/failures.ts';
import { useRead } from '../rpc/use-read.ts';
import { useWrite } from '../rpc/use-write.ts';
import styles from './Cores.module.css';

const blank = {
  direction: 'due to us' as Core['direction'],
  what: '',
  quantity: '1',
  charge: '',
  dueOn: '',
  job: '',
  jobId: null as number | null,
};

type CoresOpenFormProps = {
  /** The ticket it is written down on; else it may be named. */
  of?: { readonly jobId: number; readonly number: number };
  onDone: () => void;
};

export function CoresOpenForm({ of, onDone }: CoresOpenFormProps) {
  const [typed, setTyped] = useState({ ...blank, job: of ? `Job ${of.number}` : '', jobId: of?.jobId ?? null });
  const [isTried, setTried] = useState(false);
  const change = (some: Partial<typeof blank>) => setTyped((before) => ({ ...before, ...some }));
  const { person } = useAtBench();
  const write = useWrite('stock.openCore');
  const wanted = typed.job.trim();
  const jobs = useRead('jobs.listJobs', wanted === '' ? null : { text: wanted, includeClosed: true });
  const found = typed.jobId === null ? (jobs.data ?? []).slice(0, 8) : [];

  const isNameless = typed.what.trim() === '';
  const isCounted = /^[1-9]\d{0,5}$/.test(typed.quantity.trim());
  const isJobOpen = wanted !== '' && typed.jobId === null;
  const open = () => {
    setTried(true);
    if (isNameless || !isCounted || isJobOpen) return;
    write.mutate(
      {
        direction: typed.direction,
        what: typed.what,
        quantity: Number(typed.quantity),
        charge: typed.charge.trim(),
        dueOn: typed.dueOn === '' ? null : typed.dueOn,
        jobId: typed.jobId,
        by: person.personId,
      },
      { onSuccess: onDone },
    );
  };
  return (
    <EnterThrough label="A core is owed" onFinish={open} className={styles.form}>
      <RadioGroup
        label="Which way"
        options={coreDirections.map((id) => ({ id, words: id === 'due to us' ? 'Due to us' : 'To send back' }))}
        value={typed.direction}
        onChange={(direction) => change({ direction })}
      />
      <TextField
        label="What"
        value={typed.what}
        onChange={(what) => change({ what })}
        refusal={isTried && isNameless ? 'Say what it is: a pump, a converter.' : null}
      />
      <div className={styles.pair}>
        <TextField
          label="How many"
          inputMode="numeric"
          value={typed.quantity}
          onChange={(quantity) => change({ quantity })}
          refusal={isTried && !isCounted ? 'Type a whole number from 1 up.' : null}
        />
        <TextField
          label="Charge"
          inputMode="decimal"
          value={typed.charge}
          onChange={(charge) => change({ charge })}
          refusal={refusalAbout('charge', write.error)}
        />
        <TextField label="Due on" type="date" value={typed.dueOn} onChange={(dueOn) => change({ dueOn })} />
      </div>
      <SuggestField
        label="Job"
        hint="Its number or customer; or nothing."
        value={typed.job}
        onChange={(job) => change({ job, jobId: null })}
        suggestions={found.map((job) => ({ id: job.jobId, words: `Job ${job.number}`, note: job.customerName }))}
        onTake={(jobId) => change({ jobId, job: `Job ${found.find((each) => each.jobId === jobId)?.number ?? ''}` })}
        refusal={isTried && isJobOpen ? 'Choose a job of the list, or leave this empty.' : null}
      />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Write it down
      </Button>
      {!(write.error instanceof Refused && write.error.field === 'charge') && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
