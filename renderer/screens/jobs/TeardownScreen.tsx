// Teardown: what was found part by part and what is done about it, hard parts as measured, cores.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { CoresOfJob } from './CoresOfJob.tsx';
import { FindingEntry } from './FindingEntry.tsx';
import { FindingsTable } from './FindingsTable.tsx';
import { HardPartsFound } from './HardPartsFound.tsx';
import { ListsOfJob } from './ListsOfJob.tsx';
import styles from './Teardown.module.css';
import { TicketPage } from './TicketPage.tsx';

export function TeardownScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <Teardown job={job} />}</TicketPage>;
}

function Teardown({ job }: { job: Job }) {
  const { jobId } = job;
  const findings = useRead('jobs.listFindings', { jobId });
  return (
    <>
      <div className={styles.page}>
        <section aria-labelledby="findings">
          <h2 id="findings">Findings</h2>
          {!job.isClosed && <FindingEntry job={job} />}
          <Loaded read={findings}>{(all) => <FindingsTable job={job} findings={all} />}</Loaded>
        </section>
        <div className={styles.beside}>
          <HardPartsFound job={job} />
          <CoresOfJob job={job} />
        </div>
      </div>
      <ListsOfJob job={job} when="teardown" />
    </>
  );
}
