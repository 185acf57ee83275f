// The stages of a job as keys. Closing is said plainly before it is done, and an open stage opens the job again.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { StageStrip } from '../../components/StageStrip.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import styles from './StagesOfJob.module.css';

export function StagesOfJob({ job }: { job: Job }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.moveToStage');
  const [closingId, setClosingId] = useState<number | null>(null);
  const now = job.stages.findIndex((stage) => stage.stageId === job.stageId);
  const closing = job.stages.find((stage) => stage.stageId === closingId);

  const moveTo = (stageId: number) => {
    setClosingId(null);
    write.mutate({ jobId: job.jobId, stageId, by: person.personId });
  };
  const choose = (stageId: number) => {
    const stage = job.stages.find((each) => each.stageId === stageId);
    if (stage?.isClosed) setClosingId(stageId);
    else moveTo(stageId);
  };
  return (
    <section className={styles.stages} aria-label="Stages of the job">
      <StageStrip
        stages={job.stages.map((stage, index) => {
          const wasEntered = stage.enteredAt !== null && index <= now;
          return {
            id: stage.stageId,
            words: stage.name,
            note: wasEntered ? `${index === now ? 'since ' : ''}${sayDay(stage.enteredAt ?? '')}` : '',
            state: index === now ? 'now' : wasEntered ? 'done' : 'ahead',
          };
        })}
        onChoose={choose}
      />
      {closing && (
        <div className={styles.closing}>
          <p role="status">
            <b>Close job {job.number}?</b> Once it is closed nothing more is written to it: no readings, no mock-ups, no
            decisions. {missingWords(job.missing.length)}
          </p>
          <div className={styles.keys}>
            <Button onPress={() => moveTo(closing.stageId)}>Close the job</Button>
            <Button autoFocus onPress={() => setClosingId(null)}>
              Leave it open
            </Button>
          </div>
        </div>
      )}
      {job.isClosed && (
        <Notice>
          Job {job.number} is closed: nothing more is written to it. Move it to an open stage above to write to it
          again.
        </Notice>
      )}
      <FailureSentence error={write.error} />
    </section>
  );
}

function missingWords(count: number): string {
  if (count === 0) return 'Nothing is missing.';
  return count === 1 ? 'One check is still open.' : `${count} checks are still open.`;
}
