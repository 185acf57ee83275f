// A check may stand as it is by somebody's decision: the reason, the name and the day stay beside it for good.
import { useState } from 'react';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDayAndTime } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './LetItStand.module.css';

export function LetItStand({ job, check }: { job: Job; check: CheckOfJob }) {
  const { override } = check;
  // What is in needs no decision.
  if (!override && !job.missing.some((each) => each.checkId === check.checkId)) return null;
  return (
    <aside className={styles.side} aria-label="Decision">
      <h2>{override ? 'Stands by decision' : 'Let it stand'}</h2>
      {override ? (
        <>
          <p>{override.reason}</p>
          <p className="small quiet">
            {override.by}, {sayDayAndTime(override.at)}. Reading it again opens it again.
          </p>
        </>
      ) : (
        <ReasonForm job={job} check={check} />
      )}
    </aside>
  );
}

function ReasonForm({ job, check }: { job: Job; check: CheckOfJob }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.overrideCheck');
  const [isTried, setTried] = useState(false);
  const reason = useDraft(`reason: ${file}, job ${job.jobId}, check ${check.checkId}`, '');
  const isEmpty = reason.value.trim() === '';
  const decide = () => {
    setTried(true);
    if (isEmpty || write.isPending) return;
    write.mutate(
      { jobId: job.jobId, checkId: check.checkId, reason: reason.value, by: person.personId },
      { onSuccess: reason.clear },
    );
  };
  return (
    <EnterThrough label="Let it stand" onFinish={decide} className={styles.form}>
      <p className="small quiet">
        Instead of putting it right. Your name and the reason stand beside it, on the papers too.
      </p>
      <TextField
        label="Reason"
        value={reason.value}
        onChange={reason.change}
        maxLength={200}
        refusal={isTried && isEmpty ? 'Say why it may stand.' : null}
      />
      <Button type="submit" isPending={write.isPending}>
        Let it stand
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
