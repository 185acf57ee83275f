// The build of a unit on one page: what is counted and looked at, then every check in the order it is built.
import { inBuildOrder, isReadRunning } from '../../../app/jobs/build-order.ts';
import styles from './BuildScreen.module.css';
import { ChecksTable } from './ChecksTable.tsx';
import { ListsOfJob } from './ListsOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

export function BuildScreen({ jobId }: { jobId: number }) {
  return (
    <TicketPage jobId={jobId}>
      {(job) => {
        const checks = inBuildOrder(job.checks.filter((check) => !isReadRunning(check)));
        return (
          <>
            <ListsOfJob job={job} when="build" />
            {checks.length > 0 && (
              <section className={styles.checks} aria-labelledby="build-checks">
                <h2 id="build-checks" className={styles.title}>
                  Checks, in the order of the build
                </h2>
                <ChecksTable job={job} checks={checks} />
              </section>
            )}
          </>
        );
      }}
    </TicketPage>
  );
}
