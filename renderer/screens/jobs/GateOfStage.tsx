// Before a job moves on: what is missing on the way, what is open with stock, and the reason to go on without it.
import { useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EnterThrough } from '../../components/EnterThrough.tsx';
import { TextField } from '../../components/TextField.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { useDraft } from '../../text/use-draft.ts';
import styles from './GateOfStage.module.css';
import { OpenWithStock } from './OpenWithStock.tsx';

type StageOfJob = Job['stages'][number];

type GateOfStageProps = {
  job: Job;
  /** The one aimed at. */
  stage: StageOfJob;
  missing: StageOfJob['missing'];
  isPending: boolean;
  onMove: (reason: string) => void;
  onStay: () => void;
};

export function GateOfStage({ job, stage, missing, isPending, onMove, onStay }: GateOfStageProps) {
  const { file } = useOpenShop();
  const [isTried, setTried] = useState(false);
  const reason = useDraft(`gate: ${file}, job ${job.jobId}, stage ${stage.stageId}`, '');
  const needsReason = missing.length > 0;
  const lacksReason = needsReason && reason.value.trim() === '';
  const move = () => {
    setTried(true);
    if (lacksReason || isPending) return;
    onMove(needsReason ? reason.value : '');
    reason.clear();
  };
  return (
    <EnterThrough label={`Move to ${stage.name}`} onFinish={move} className={styles.gate}>
      {stage.isClosed && (
        <p role="status">
          <b>Close job {job.number}?</b> Once it is closed nothing more is written to it: no readings, no mock-ups, no
          decisions. {checksWords(job.missing.length)}
        </p>
      )}
      {needsReason && (
        <>
          <p role="status">
            <b>Missing before {stage.name}</b>
          </p>
          <ul className={styles.missing}>
            {missing.map(({ stageId, stageName, need, what }) => (
              <li key={`${stageId} ${need}`}>
                {what} <span className="small quiet">asked for by {stageName}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {(stage.isClosed || missing.some(({ need }) => need === 'cores settled' || need === 'plates measured again')) && (
        <OpenWithStock job={job} />
      )}
      <div className={styles.foot}>
        {needsReason && (
          <div className={styles.reason}>
            <TextField
              label="Why it goes on without"
              value={reason.value}
              onChange={reason.change}
              maxLength={200}
              refusal={isTried && lacksReason ? 'Say why it goes on without; it stays on the ticket.' : null}
            />
          </div>
        )}
        <Button type="submit" isPending={isPending}>
          {stage.isClosed ? 'Close the job' : needsReason ? `Go on to ${stage.name}` : `Move to ${stage.name}`}
        </Button>
        <Button autoFocus onPress={onStay}>
          {stage.isClosed ? 'Leave it open' : 'Stay'}
        </Button>
      </div>
    </EnterThrough>
  );
}

function checksWords(count: number): string {
  if (count === 0) return 'No check is open.';
  return count === 1 ? 'One check is still open.' : `${count} checks are still open.`;
}
