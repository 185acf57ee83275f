// The customer's yes to an estimate: who said it, how, on which day, up to how much.
import { useState } from 'react';
import { type ApprovalWay, approvalWays, type GivenEstimate } from '../../../app/jobs/estimate.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { RadioGroup } from '../../components/RadioGroup.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Refused, refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import styles from './EstimateScreen.module.css';
import { dayHere, useEstimateWords } from './use-estimate-words.ts';

const wayWords: Record<ApprovalWay, string> = { 'in person': 'In person', phone: 'Phone', message: 'Message' };

type EstimateApproveFormProps = { estimate: GivenEstimate; customerName: string };

export function EstimateApproveForm({ estimate, customerName }: EstimateApproveFormProps) {
  const { money } = useEstimateWords();
  const { person } = useAtBench();
  const write = useWrite('jobs.approveEstimate');
  const [typed, setTyped] = useState(() => ({
    approvedBy: customerName,
    how: 'phone' as ApprovalWay,
    upTo: '',
    approvedOn: dayHere(),
    note: '',
  }));
  const [isTried, setTried] = useState(false);
  const change = (some: Partial<typeof typed>) => setTyped((before) => ({ ...before, ...some }));
  const isNameless = typed.approvedBy.trim() === '';
  const approve = () => {
    setTried(true);
    if (isNameless || write.isPending) return;
    const approvedOn = typed.approvedOn === '' ? null : typed.approvedOn;
    write.mutate({ ...typed, approvedOn, estimateId: estimate.estimateId, by: person.personId });
  };
  const isSaidAbove = write.error instanceof Refused && ['upTo', 'approvedOn'].includes(write.error.field ?? '');
  return (
    <EnterThrough label={`Estimate ${estimate.number} is approved`} onFinish={approve} className={styles.form}>
      <TextField
        label="Who said yes"
        value={typed.approvedBy}
        onChange={(approvedBy) => change({ approvedBy })}
        maxLength={200}
        refusal={isTried && isNameless ? 'Type who said yes.' : null}
      />
      <RadioGroup
        label="How"
        options={approvalWays.map((id) => ({ id, words: wayWords[id] }))}
        value={typed.how}
        onChange={(how) => change({ how })}
      />
      <div className={styles.pair}>
        <TextField
          label="Up to"
          inputMode="decimal"
          placeholder={money(Math.max(0, estimate.totals.total_cents))}
          value={typed.upTo}
          onChange={(upTo) => change({ upTo })}
          refusal={refusalAbout('upTo', write.error)}
        />
        <TextField
          label="On"
          type="date"
          value={typed.approvedOn}
          onChange={(approvedOn) => change({ approvedOn })}
          refusal={refusalAbout('approvedOn', write.error)}
        />
      </div>
      <TextField label="Note" value={typed.note} onChange={(note) => change({ note })} maxLength={200} />
      <Button type="submit" kind="filled" isPending={write.isPending}>
        Write down the yes
      </Button>
      {!isSaidAbove && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
