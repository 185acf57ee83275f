// The ticket of one job: its stages, every check and where it stands, what is missing, its packs.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Button } from '../../components/Button.tsx';
import { EmptyState } from '../../components/EmptyState.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { ChecksTable } from './ChecksTable.tsx';
import { DoorOfJob } from './DoorOfJob.tsx';
import { EstimateOnTicket } from './EstimateOnTicket.tsx';
import styles from './JobScreen.module.css';
import { LoadedJob } from './LoadedJob.tsx';
import { MissingList } from './MissingList.tsx';
import { PacksOfJob } from './PacksOfJob.tsx';
import { PartsOfJob } from './PartsOfJob.tsx';
import { PhotosOfJob } from './PhotosOfJob.tsx';
import { goToPullEntry } from './PullEntry.tsx';
import { StagesOfJob } from './StagesOfJob.tsx';

export function JobScreen({ jobId }: { jobId: number }) {
  return <LoadedJob jobId={jobId}>{(job) => <Ticket job={job} />}</LoadedJob>;
}

function Ticket({ job }: { job: Job }) {
  const params = (copy: string) => ({ jobId: String(job.jobId), copy });
  return (
    <>
      <PageHead title={`Job ${job.number}`} facts={<HeadLine job={job} />} acts={<HeadKeys job={job} />} />
      <div className={styles.second}>
        <p className={styles.who}>
          <span>{[job.customer.name, job.customer.phone].filter(Boolean).join(', ')}</span>
          {job.complaint !== '' && <span className="quiet">{job.complaint}</span>}
          <EstimateOnTicket jobId={job.jobId} />
        </p>
        <nav className={styles.report} aria-label="Papers">
          <span className="small quiet">Build report</span>
          <LinkKey to="/jobs/$jobId/report/$copy" params={params('shop')}>
            Shop’s copy
          </LinkKey>
          <LinkKey to="/jobs/$jobId/report/$copy" params={params('customer')}>
            Customer’s copy
          </LinkKey>
          <LinkKey to="/stock/labels" search={{ of: `job:${job.jobId}` }}>
            Case label
          </LinkKey>
        </nav>
      </div>
      <StagesOfJob job={job} />
      <DoorOfJob job={job} />
      {job.checks.length === 0 ? (
        <EmptyState level={2} title="This family has no checks yet.">
          Add them to its sheet in Specs: units checked in after that are measured against them.
        </EmptyState>
      ) : (
        <div className={styles.body}>
          <MissingList job={job} />
          <div className={styles.checks}>
            <ChecksTable job={job} />
          </div>
          <PacksOfJob job={job} />
        </div>
      )}
      <PartsOfJob job={job} />
      <PhotosOfJob job={job} />
    </>
  );
}

function HeadKeys({ job }: { job: Job }) {
  return (
    <>
      <BenchKey job={job} />
      <LinkKey to="/jobs/$jobId/estimate" params={{ jobId: String(job.jobId) }}>
        Estimate
      </LinkKey>
      {!job.isClosed && (
        <Button keyHint="P" onPress={goToPullEntry}>
          Pull a part
        </Button>
      )}
    </>
  );
}

function BenchKey({ job }: { job: Job }) {
  if (job.isClosed || job.checks.length === 0) return null;
  return (
    <LinkKey to="/bench" search={{ unit: job.jobId }} kind={job.missing.length > 0 ? 'filled' : 'plain'}>
      Read at the bench
    </LinkKey>
  );
}

function HeadLine({ job }: { job: Job }) {
  const { settings } = useOpenShop();
  const { unit, caseTag, distance } = job;
  return (
    <>
      <span>
        {unit.familyName} {unit.serial}
        {caseTag !== '' && (
          <>
            , case tag <span className="mono">{caseTag}</span>
          </>
        )}
      </span>
      <span>{[unit.vehicle, unit.use].filter((each) => each !== '').join(', ')}</span>
      {distance && (
        <span>
          {distance.amount.toLocaleString(settings.decimalMark === ',' ? 'de-DE' : 'en-US')} {distance.unit}
        </span>
      )}
    </>
  );
}
