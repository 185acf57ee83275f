// The frame of a ticket: which unit, whose, where it stands; its pages; and what the page in hand shows.
import { useNavigate } from '@tanstack/react-router';
import { type ReactNode, useCallback } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { PageHead } from '../../frame/PageHead.tsx';
import { useLetterKey } from '../../frame/use-letter-key.ts';
import { ComebacksOfJob } from './ComebacksOfJob.tsx';
import { sayBusinessDay } from './days.ts';
import { EstimateOnTicket } from './EstimateOnTicket.tsx';
import { ExtentOfJob } from './ExtentOfJob.tsx';
import { LoadedJob } from './LoadedJob.tsx';
import { PromisedDay } from './PromisedDay.tsx';
import { StagesOfJob } from './StagesOfJob.tsx';
import styles from './TicketPage.module.css';
import { TicketPages } from './TicketPages.tsx';

export function TicketPage({ jobId, children }: { jobId: number; children: (job: Job) => ReactNode }) {
  return (
    <LoadedJob jobId={jobId}>
      {(job) => (
        <>
          <PageHead title={`Job ${job.number}`} facts={<HeadLine job={job} />} acts={<HeadKeys job={job} />} />
          <p className={styles.who}>
            <span>{[job.customer.name, job.customer.phone].filter(Boolean).join(', ')}</span>
            {job.complaint !== '' && <span className="quiet">{job.complaint}</span>}
            <ExtentOfJob job={job} />
            {job.deliveredOn !== null && (
              <span>
                Handed over <b>{sayBusinessDay(job.deliveredOn)}</b>
              </span>
            )}
            {job.promised && job.deliveredOn === null && (
              <span>
                Promised <PromisedDay day={job.promised.on} isDone={job.isClosed} saysWhen />
              </span>
            )}
            <ComebacksOfJob jobId={job.jobId} />
            <EstimateOnTicket jobId={job.jobId} />
          </p>
          <StagesOfJob job={job} />
          <TicketPages jobId={job.jobId} />
          {children(job)}
        </>
      )}
    </LoadedJob>
  );
}

function HeadKeys({ job }: { job: Job }) {
  return (
    <>
      {!job.isClosed && job.deliveredOn === null && job.checks.length > 0 && (
        <LinkKey to="/bench" search={{ unit: job.jobId }} kind={job.missing.length > 0 ? 'filled' : 'plain'}>
          Read at the bench
        </LinkKey>
      )}
      {!job.isClosed && <PullKey jobId={job.jobId} />}
    </>
  );
}

function PullKey({ jobId }: { jobId: number }) {
  const navigate = useNavigate();
  const params = { jobId: String(jobId) };
  useLetterKey(
    'p',
    useCallback(() => void navigate({ to: '/jobs/$jobId/parts', params: { jobId: String(jobId) } }), [navigate, jobId]),
  );
  return (
    <LinkKey to="/jobs/$jobId/parts" params={params} keyHint="P">
      Pull a part
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
