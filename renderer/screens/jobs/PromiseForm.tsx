// Promising a day, or another one with the reason; the earlier day stays on the ticket.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { refusalAbout } from '../../rpc/failures.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DoorForms.module.css';
import { usePastDay } from './use-past-day.ts';

export function PromiseForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.promiseDay');
  const [isTried, setTried] = useState(false);
  const draft = useDraft(`promise: ${file}, job ${job.jobId}`, { on: '', reason: '' });
  const { on, reason } = draft.value;
  const pastDay = usePastDay(on);
  const keep = () => {
    setTried(true);
    if (on === '' || write.isPending || !pastDay.isMeant()) return;
    write.mutate(
      { jobId: job.jobId, on, reason, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          onDone();
        },
      },
    );
  };
  const aboutDay = refusalAbout('on', write.error);
  const aboutReason = refusalAbout('reason', write.error);
  return (
    <EnterThrough label="Promise a day" onFinish={keep} className={styles.form}>
      <TextField
        label="Day"
        type="date"
        value={on}
        onChange={(typed) => draft.change({ on: typed, reason })}
        refusal={isTried && on === '' ? 'Say which day.' : (aboutDay ?? pastDay.question)}
        autoFocus
      />
      <TextField
        label={job.promised ? 'Why another day' : 'Why then'}
        value={reason}
        onChange={(typed) => draft.change({ on, reason: typed })}
        refusal={aboutReason}
        maxLength={200}
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Promise it
      </Button>
      {aboutDay === null && aboutReason === null && <FailureSentence error={write.error} />}
    </EnterThrough>
  );
}
