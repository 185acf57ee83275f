// That a ticket is a small job, and the way to make it the whole rebuild.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './DoorForms.module.css';

/** Nothing for a job that was the whole rebuild from the start. */
export function ExtentOfJob({ job }: { job: Job }) {
  const { extent } = job;
  if (extent === null) return null;
  if (extent.widened) {
    const { reason, by, at } = extent.widened;
    return (
      <span className="quiet">
        Came in as {extent.name}, the whole rebuild since {sayDay(at)}: {reason}, {by}
      </span>
    );
  }
  return (
    <span>
      <b>{extent.name}</b>{' '}
      {!job.isClosed && job.deliveredOn === null && (
        <PopoverDialog words="Make it the whole rebuild" title="Make it the whole rebuild">
          {(close) => <WidenForm job={job} name={extent.name} onDone={close} />}
        </PopoverDialog>
      )}
    </span>
  );
}

function WidenForm({ job, name, onDone }: { job: Job; name: string; onDone: () => void }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.widenJob');
  const [isTried, setTried] = useState(false);
  const reason = useDraft(`widen: ${file}, job ${job.jobId}`, '');
  const lacksReason = reason.value.trim() === '';
  const widen = () => {
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
    <EnterThrough label="Make it the whole rebuild" onFinish={widen} className={styles.form}>
      <p className="small quiet">
        All stages, packs and checks of the sheet come onto the ticket. It does not become {name} again.
      </p>
      <TextField
        label="Why"
        value={reason.value}
        onChange={reason.change}
        refusal={isTried && lacksReason ? 'Say why; it stays on the ticket.' : null}
        maxLength={200}
        autoFocus
      />
      <Button type="submit" kind="filled" keyHint="Enter" isPending={write.isPending}>
        Make it whole
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
