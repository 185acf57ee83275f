// What was paid ahead, row by row, and what is still to pay.
import { useState } from 'react';
import { type DepositWay, depositWays, type EstimateOfJob } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { classNames } from '../../components/class-names.ts';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './EstimateScreen.module.css';
import { useEstimateWords } from './use-estimate-words.ts';

const wayWords: Record<DepositWay, string> = {
  cash: 'Cash',
  card: 'Card',
  check: 'Check',
  transfer: 'Transfer',
  other: 'Other',
};

export function EstimateDeposits({ estimate }: { estimate: EstimateOfJob }) {
  const { money } = useEstimateWords();
  const { deposits, deposited_cents, balance_cents } = estimate;
  return (
    <section className={styles.part} aria-label="Deposits">
      <h2>Deposits</h2>
      {deposits.length === 0 ? (
        <p className="quiet">Nothing received yet.</p>
      ) : (
        <ul className={styles.list}>
          {deposits.map((deposit) => (
            <li key={deposit.depositId} className={styles.received}>
              <span>
                {deposit.how}
                <span className="small quiet">
                  {' '}
                  {[sayDay(deposit.receivedAt), deposit.by, deposit.note].filter((each) => each !== '').join(', ')}
                </span>
              </span>
              <span>{money(deposit.amount_cents)}</span>
            </li>
          ))}
          <li className={styles.received}>
            <span>held</span>
            <span>{money(deposited_cents)}</span>
          </li>
          <li className={classNames(styles.received, styles.balance)}>
            <span>{balance_cents < 0 ? 'to give back' : 'still to pay'}</span>
            <span>{money(Math.abs(balance_cents))}</span>
          </li>
        </ul>
      )}
      {!estimate.isClosed && (
        <PopoverDialog words="Money received…" title="Money received ahead">
          {(close) => <DepositForm jobId={estimate.jobId} onDone={close} />}
        </PopoverDialog>
      )}
    </section>
  );
}

function DepositForm({ jobId, onDone }: { jobId: number; onDone: () => void }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.recordDeposit');
  const [typed, setTyped] = useState({ amount: '', how: 'cash' as DepositWay, note: '' });
  const change = (some: Partial<typeof typed>) => setTyped((before) => ({ ...before, ...some }));
  const keep = () => {
    if (!write.isPending) write.mutate({ ...typed, jobId, by: person.personId }, { onSuccess: onDone });
  };
  const isSaidAbove = write.error instanceof Refused && write.error.field === 'amount';
  return (
    <EnterThrough label="Money received ahead" onFinish={keep} className={styles.form}>
      <TextField
        label="How much"
        hint="A minus sign in front gives it back."
        value={typed.amount}
        onChange={(amount) => change({ amount })}
        autoFocus
        refusal={refusalAbout('amount', write.error)}
      />
      <RadioGroup
        label="How"
        options={depositWays.map((id) => ({ id, words: wayWords[id] }))}
        value={typed.how}
        onChange={(how) => change({ how })}
      />
      <TextField label="Note" value={typed.note} onChange={(note) => change({ note })} maxLength={200} />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Write it down
      </Button>
      {!isSaidAbove && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
