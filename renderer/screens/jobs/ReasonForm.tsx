// An act on a ticket that asks for nothing but the reason, in a popover; the reason is kept while it is typed.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DoorForms.module.css';

type ReasonFormProps = {
  job: Job;
  method: 'jobs.widenJob' | 'jobs.takeBackDelivery';
  /** Under what name the reason is kept as a draft. */
  draft: string;
  label: string;
  /** What the act comes to. */
  lead: string;
  /** Said while there is no reason. */
  refusal: string;
  keyWords: string;
  onDone: () => void;
};

export function ReasonForm({ job, method, draft, label, lead, refusal, keyWords, onDone }: ReasonFormProps) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite(method);
  const [isTried, setTried] = useState(false);
  const reason = useDraft(`${draft}: ${file}, job ${job.jobId}`, '');
  const lacksReason = reason.value.trim() === '';
  const act = () => {
    setTried(true);
    if (lacksReason || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, reason: reason.value, by: person.personId },
      {
        onSuccess: () => {
          reason.clear();
          onDone();
        },
      },
    );
  };
  return (
    <EnterThrough label={label} onFinish={act} className={styles.form}>
      <p className="small quiet">{lead}</p>
      <TextField
        label="Why"
        value={reason.value}
        onChange={reason.change}
        refusal={isTried && lacksReason ? refusal : null}
        maxLength={200}
        autoFocus
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        {keyWords}
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
