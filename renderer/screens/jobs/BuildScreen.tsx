// The build of a unit on one page: what is counted and looked at, then every check in the order it is built.
import { inBuildOrder, isReadRunning } from '../../../app/jobs/build-order.ts';
import { sayBuild } from '../../../app/jobs/build-summary.ts';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import styles from './BuildScreen.module.css';
import { ChecksTable } from './ChecksTable.tsx';
import { ListsOfJob } from './ListsOfJob.tsx';
import { PicturesOfJob } from './PicturesOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

export function BuildScreen({ jobId }: { jobId: number }) {
  return (
    <TicketPage jobId={jobId}>
      {(job) => {
        const checks = inBuildOrder(job.checks.filter((check) => !isReadRunning(check)));
        return (
          <>
            <Standing job={job} checks={checks} />
            <ListsOfJob job={job} when="build" />
            <PicturesOfJob job={job} isOfBuild />
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

/** In one line, so that nobody has to go down the page to know. */
function Standing({ job, checks }: { job: Job; checks: readonly CheckOfJob[] }) {
  const read = useRead('jobs.listListsOfJob', { jobId: job.jobId, when: 'build' });
  return <Loaded read={read}>{(lists) => <p className={styles.standing}>{sayBuild(checks, lists)}</p>}</Loaded>;
}
