// The final check of a unit that runs: its lists, pressures and flows, and the sign-off.
import { isReadRunning } from '../../../app/jobs/build-order.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import styles from './BuildScreen.module.css';
import { ChecksTable } from './ChecksTable.tsx';
import { ListsOfJob } from './ListsOfJob.tsx';
import { SignedOff } from './SignedOff.tsx';
import { SignOffForm } from './SignOffForm.tsx';
import { TicketPage } from './TicketPage.tsx';

export function FinalScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <Final job={job} />}</TicketPage>;
}

function Final({ job }: { job: Job }) {
  const checks = job.checks.filter(isReadRunning);
  return (
    <>
      <ListsOfJob job={job} when="final" />
      {checks.length > 0 && (
        <section className={styles.checks} aria-labelledby="final-checks">
          <h2 id="final-checks" className={styles.title}>
            Pressures and flows
          </h2>
          <ChecksTable job={job} checks={checks} />
        </section>
      )}
      <section className={styles.signOff} aria-labelledby="sign-off">
        <h2 id="sign-off" className={styles.title}>
          Sign-off, on stand or in vehicle
        </h2>
        {!job.signOff && <p className="quiet">Not signed off yet.</p>}
        <SignedOff job={job} />
        {!job.isClosed && (
          <PopoverDialog words="Sign off" title="Sign off">
            {(close) => <SignOffForm job={job} onDone={close} />}
          </PopoverDialog>
        )}
      </section>
    </>
  );
}
