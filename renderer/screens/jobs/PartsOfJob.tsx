// What the ticket holds from stock: pulled by number or scanner, returned whole or part by part, price apart from cost.
import { useCallback, useState } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { PartOfJob } from '../../../app/stock/parts.contract.ts';
import { Button } from '../../components/Button.tsx';
import { Notice } from '../../components/Notice.tsx';
import { FailureSentence } from '../../frame/FailureSentence.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { useRead } from '../../rpc/use-read.ts';
import styles from './PartsOfJob.module.css';
import { PartsOfJobTable } from './PartsOfJobTable.tsx';
import { PullEntry } from './PullEntry.tsx';
import { usePartsOfJob } from './use-parts-of-job.ts';

export function PartsOfJob({ job, find }: { job: Job; find: string }) {
  const parts = useRead('stock.listPartsOfJob', { jobId: job.jobId });
  return (
    <section className={styles.parts} aria-label="Parts">
      <Loaded read={parts}>{(lines) => <Parts job={job} lines={lines} find={find} />}</Loaded>
    </section>
  );
}

function Parts({ job, lines, find }: { job: Job; lines: readonly PartOfJob[]; find: string }) {
  const [showsCost, setShowsCost] = useState(false);
  const acts = usePartsOfJob(job.jobId);
  useLetterKey(
    'c',
    useCallback(() => setShowsCost((shown) => !shown), []),
  );
  return (
    <>
      <header className={styles.head}>
        <h2>Parts</h2>
        {lines.length > 0 && (
          <Button keyHint="C" aria-pressed={showsCost} onPress={() => setShowsCost(!showsCost)}>
            {showsCost ? 'Hide cost' : 'Show cost'}
          </Button>
        )}
      </header>
      {!job.isClosed && <PullEntry acts={acts} find={find} />}
      {acts.last && (
        <div className={styles.done}>
          <Notice kind="done">{acts.last.words}</Notice>
          {acts.last.takeBack && <Button onPress={acts.last.takeBack}>Take it back</Button>}
        </div>
      )}
      <FailureSentence error={acts.returnError} />
      {lines.length === 0 ? (
        <p className="quiet">
          {job.isClosed
            ? 'Nothing from stock went into this one.'
            : 'Nothing from stock yet. Press P, type or scan a number, Enter.'}
        </p>
      ) : (
        <PartsOfJobTable lines={lines} showsCost={showsCost} acts={job.isClosed ? null : acts} />
      )}
    </>
  );
}
