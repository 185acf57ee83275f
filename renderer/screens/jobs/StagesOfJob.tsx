// The stages of a job as keys. What is missing on the way is said before the move, and an open stage opens the job again.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { stagesPassed } from '../../../app/jobs/stage-moves.ts';
import { Notice } from '../../components/Notice.tsx';
import { StageStrip } from '../../components/StageStrip.tsx';
import { useAtBench } from '../../frame/at-bench.ts';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { useWrite } from '../../rpc/use-write.ts';
import { sayDay } from '../../text/say-date.ts';
import { GateOfStage } from './GateOfStage.tsx';
import styles from './StagesOfJob.module.css';

export function StagesOfJob({ job }: { job: Job }) {
  const { person } = useAtBench();
  const write = useWrite('jobs.moveToStage');
  const [askedId, setAskedId] = useState<number | null>(null);
  const now = job.stages.findIndex((stage) => stage.stageId === job.stageId);
  const asked = job.stages.find((stage) => stage.stageId === askedId);
  const missingBefore = (stageId: number) =>
    stagesPassed(job.stages, job.stageId, stageId).flatMap((stage) => stage.missing);

  const moveTo = (stageId: number, reason: string) =>
    write.mutate({ jobId: job.jobId, stageId, reason, by: person.personId }, { onSuccess: () => setAskedId(null) });
  const choose = (stageId: number) => {
    const stage = job.stages.find((each) => each.stageId === stageId);
    if (stage?.isClosed || missingBefore(stageId).length > 0) setAskedId(stageId);
    else moveTo(stageId, '');
  };
  return (
    <section className={styles.stages} aria-label="Stages of the job">
      <StageStrip
        stages={job.stages.map((stage, index) => {
          const wasEntered = stage.enteredAt !== null && index <= now;
          const missing = index === now + 1 ? missingBefore(stage.stageId).length : 0;
          return {
            id: stage.stageId,
            words: stage.name,
            note: wasEntered
              ? `${index === now ? 'since ' : ''}${sayDay(stage.enteredAt ?? '')}`
              : missingWords(missing),
            state: index === now ? 'now' : wasEntered ? 'done' : 'ahead',
          };
        })}
        onChoose={choose}
      />
      {asked && (
        <GateOfStage
          // Another stage is another question.
          key={asked.stageId}
          job={job}
          stage={asked}
          missing={missingBefore(asked.stageId)}
          isPending={write.isPending}
          onMove={(reason) => moveTo(asked.stageId, reason)}
          onStay={() => setAskedId(null)}
        />
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
  return count === 0 ? '' : `${count} missing`;
}
