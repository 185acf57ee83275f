// What was said and seen, written anew; what stood there before stays on the ticket, struck through.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextArea } from '../../components/TextArea.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useWrite } from '../../rpc/use-write.ts';
import { useDraft } from '../../text/use-draft.ts';
import { DiagnosisEntry } from './DiagnosisEntry.tsx';
import styles from './DoorForms.module.css';

export function IntakeForm({ job, onDone }: { job: Job; onDone: () => void }) {
  const { file } = useOpenShop();
  const { person } = useAtBench();
  const write = useWrite('jobs.correctIntake');
  const { complaint, diagnosis } = job;
  const draft = useDraft(`intake: ${file}, job ${job.jobId}`, { complaint, diagnosis });
  const keep = () => {
    if (write.isPending) return;
    write.mutate(
      { jobId: job.jobId, ...draft.value, by: person.personId },
      {
        onSuccess: () => {
          draft.clear();
          onDone();
        },
      },
    );
  };
  return (
    <EnterThrough label="Correct what was said and seen" onFinish={keep} className={styles.wide}>
      <TextArea
        label="What it does, and when"
        value={draft.value.complaint}
        onChange={(typed) => draft.change({ ...draft.value, complaint: typed })}
        maxLength={4000}
        autoFocus
      />
      <DiagnosisEntry
        value={draft.value.diagnosis}
        onChange={(changed) => draft.change({ ...draft.value, diagnosis: changed })}
      />
      <Button type="submit" kind="filled" keyHint="Ctrl Enter" isPending={write.isPending}>
        Write it anew
      </Button>
      <FailureSentence error={write.error} />
    </EnterThrough>
  );
}
