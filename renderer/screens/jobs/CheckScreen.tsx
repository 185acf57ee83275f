// One check of a job: what the spec asks, where it stands and why, every take with every typed line.
import { Link } from '@tanstack/react-router';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { methodWords } from '../../../app/readings/method-words.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { amountWords } from '../../text/amount-words.ts';
import { holdsForWords, limitsWords, waveWords } from '../../text/check-words.ts';
import styles from './CheckScreen.module.css';
import { LetItStand } from './LetItStand.tsx';
import { LoadedJob } from './LoadedJob.tsx';
import { TakeSection } from './TakeSection.tsx';

export function CheckScreen({ jobId, checkId }: { jobId: number; checkId: number }) {
  return (
    <LoadedJob jobId={jobId}>
      {(known) => {
        const check = known.checks.find((each) => each.checkId === checkId);
        return check ? (
          <CheckOfTicket job={known} check={check} />
        ) : (
          <EmptyState title={`Job ${known.number} has no such check.`}>
            <Link to="/jobs/$jobId" params={{ jobId: String(jobId) }}>
              Back to job {known.number}
            </Link>
          </EmptyState>
        );
      }}
    </LoadedJob>
  );
}

function CheckOfTicket({ job, check }: { job: Job; check: CheckOfJob }) {
  const params = { jobId: String(job.jobId), checkId: String(check.checkId) };
  return (
    <>
      <PageHead
        title={check.name}
        facts={
          <span>
            <Link to="/jobs/$jobId" params={{ jobId: params.jobId }}>
              Job {job.number}
            </Link>
            , {job.unit.familyName} {job.unit.serial}
          </span>
        }
        acts={
          <>
            <Neighbours job={job} check={check} />
            {!job.isClosed && (
              <LinkKey to="/bench/$jobId/$checkId" params={params} kind="filled">
                Read it at the bench
              </LinkKey>
            )}
          </>
        }
      />
      <SpecLine job={job} check={check} />
      <div className={styles.body}>
        <Takes job={job} check={check} />
        <LetItStand job={job} check={check} />
      </div>
    </>
  );
}

function SpecLine({ job, check }: { job: Job; check: CheckOfJob }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { limits } = check;
  const asks = [
    `${limitsWords(limits, words)} ${words.unit}`.trim(),
    limits.kind === 'target' ? `target ${words.short(limits.target)}` : '',
    methodWords(check.method),
    waveWords(check.waveState),
    check.spots > 1 ? `${check.spots} spots` : '',
    limits.kind === 'variants' || check.spots === 1 ? '' : holdsForWords(check.holdsFor),
  ].filter((each) => each !== '');
  return (
    <p className={styles.spec}>
      <span>{asks.join(', ')}</span>
      <span className="small quiet">
        {job.unit.familyName} sheet {job.revisionNumber}
        {check.sourceNote !== '' && `, ${check.sourceNote}`}
      </span>
    </p>
  );
}

/** The checks before and after this one, in the order of the sheet. */
function Neighbours({ job, check }: { job: Job; check: CheckOfJob }) {
  const at = job.checks.findIndex((each) => each.checkId === check.checkId);
  const link = (neighbour: CheckOfJob | undefined, words: string) =>
    neighbour && (
      <LinkKey
        to="/jobs/$jobId/checks/$checkId"
        params={{ jobId: String(job.jobId), checkId: String(neighbour.checkId) }}
        aria-label={`${words} check: ${neighbour.name}`}
      >
        {words}
      </LinkKey>
    );
  return (
    <>
      {link(job.checks[at - 1], 'Previous')}
      {link(job.checks[at + 1], 'Next')}
    </>
  );
}

function Takes({ job, check }: { job: Job; check: CheckOfJob }) {
  const takes = useRead('readings.listTakes', { jobId: job.jobId, checkId: check.checkId });
  return (
    <div className={styles.takes}>
      <Loaded read={takes}>
        {(all) =>
          all.length === 0 ? (
            <EmptyState level={2} title="Not read yet.">
              Read it at the bench; every line you type there stands here afterwards.
            </EmptyState>
          ) : (
            [...all]
              .reverse()
              .map((take, index) => <TakeSection key={take.takeId} take={take} check={check} isNewest={index === 0} />)
          )
        }
      </Loaded>
    </div>
  );
}
