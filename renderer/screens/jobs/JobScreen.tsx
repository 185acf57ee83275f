// The ticket of one job: every check and where it stands, what is missing, its packs.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { ChecksTable } from './ChecksTable.tsx';
import { dayHere } from './days.ts';
import styles from './JobScreen.module.css';
import { MissingList } from './MissingList.tsx';
import { PacksOfJob } from './PacksOfJob.tsx';
import { PicturesOfJob } from './PicturesOfJob.tsx';
import { SignedOff } from './SignedOff.tsx';
import { TicketPage } from './TicketPage.tsx';
import { VisitsOfUnit } from './VisitsOfUnit.tsx';

export function JobScreen({ jobId }: { jobId: number }) {
  return (
    <TicketPage jobId={jobId}>
      {(job) => (
        <>
          <div className={styles.before}>
            <VisitsOfUnit
              unitId={job.unit.unitId}
              serial={job.unit.serial}
              besidesJobId={job.jobId}
              title="Was here before"
              now={{ day: dayHere(job.openedAt), distance: job.distance }}
            />
            <SignedOff job={job} />
          </div>
          <Checks job={job} />
          <PicturesOfJob job={job} />
        </>
      )}
    </TicketPage>
  );
}

function Checks({ job }: { job: Job }) {
  if (job.checks.length === 0) {
    return (
      <EmptyState level={2} title="This family has no checks yet.">
        Add them to its sheet in Specs: units checked in after that are measured against them.
      </EmptyState>
    );
  }
  return (
    <div className={styles.body}>
      <MissingList job={job} />
      <div className={styles.checks}>
        <ChecksTable job={job} />
      </div>
      <PacksOfJob job={job} />
    </div>
  );
}
