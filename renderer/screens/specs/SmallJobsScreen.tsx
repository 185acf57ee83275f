// The small jobs of a family: which stages each goes through, which checks and lists of the sheet it takes.

import type { SmallJob } from '../../../app/specs/small-jobs.contract.ts';
import type { Revision } from '../../../app/specs/specs.contract.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { SmallJobForm } from './SmallJobForm.tsx';
import styles from './SmallJobsScreen.module.css';

export function SmallJobsScreen({ familyId }: { familyId: number }) {
  const sheet = useRead('specs.getRevision', { familyId });
  const smallJobs = useRead('specs.listSmallJobs', { familyId });
  return (
    <Loaded read={sheet}>
      {(revision) => <Loaded read={smallJobs}>{(known) => <SmallJobs revision={revision} known={known} />}</Loaded>}
    </Loaded>
  );
}

function SmallJobs({ revision, known }: { revision: Revision; known: readonly SmallJob[] }) {
  const { familyId, familyName } = revision;
  return (
    <>
      <PageHead
        title={`${familyName}, small jobs`}
        acts={
          <LinkKey to="/specs/$familyId" params={{ familyId: String(familyId) }}>
            Back to the sheet
          </LinkKey>
        }
      />
      <div className={styles.page}>
        <p className="quiet">
          A small job, such as a reseal, is chosen when a unit comes in. Its ticket has only these stages and checks,
          and can become the whole rebuild later. A change here does not reach jobs that are in already.
        </p>
        {known.map((smallJob) => (
          <SmallJobForm key={smallJob.smallJobId} revision={revision} smallJob={smallJob} />
        ))}
        <SmallJobForm key={`new after ${known.length}`} revision={revision} smallJob={null} />
      </div>
    </>
  );
}
