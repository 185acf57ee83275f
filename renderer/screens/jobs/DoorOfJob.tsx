// A ticket from the door: what was said and seen, the day promised, calls, earlier visits.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { sayDay, sayDayAndTime } from '../../text/say-date.ts';
import { CallForm } from './CallForm.tsx';
import styles from './DoorOfJob.module.css';
import { dayHere, sayBusinessDay, sayUntil } from './days.ts';
import { diagnosisFacts } from './diagnosis-words.ts';
import { IntakeForm } from './IntakeForm.tsx';
import { PromiseForm } from './PromiseForm.tsx';
import { VisitsOfUnit, type VisitThatLeft } from './VisitsOfUnit.tsx';

export function DoorOfJob({ job }: { job: Job }) {
  const held = useRead('comebacks.listOfJob', { jobId: job.jobId });
  return (
    <section className={styles.door} aria-label="At the door">
      {!job.isClosed && (
        <div className={styles.keys}>
          <Acts job={job} />
        </div>
      )}
      <div className={styles.visits}>
        <VisitsOfUnit
          unitId={job.unit.unitId}
          serial={job.unit.serial}
          besidesJobId={job.jobId}
          title="Was here before"
          now={{ day: dayHere(job.openedAt), distance: job.distance }}
          {...(!job.isClosed && held.data?.heldAgainst === null && { actOn: (visit) => logKey(visit, job.jobId) })}
        />
      </div>
      <div className={styles.columns}>
        <SaidAndSeen job={job} />
        <Calls jobId={job.jobId} />
        <Promises jobId={job.jobId} />
      </div>
    </section>
  );
}

function logKey(visit: VisitThatLeft, jobId: number) {
  return (
    <LinkKey to="/comebacks/new" search={{ of: visit.jobId, ticket: jobId }}>
      {`Log as a comeback of job ${visit.number}`}
    </LinkKey>
  );
}

function Acts({ job }: { job: Job }) {
  return (
    <>
      <PopoverDialog words={job.promised ? 'Promise another day' : 'Promise a day'} title="Promise a day">
        {(close) => <PromiseForm job={job} onDone={close} />}
      </PopoverDialog>
      <PopoverDialog words="Write a call down" title="Write a call down">
        {(close) => <CallForm job={job} onDone={close} />}
      </PopoverDialog>
    </>
  );
}

function SaidAndSeen({ job }: { job: Job }) {
  const intakes = useRead('jobs.listIntakes', { jobId: job.jobId });
  const [newest, ...earlier] = intakes.data ?? [];
  const facts = diagnosisFacts(job.diagnosis);
  return (
    <section aria-label="Said and seen">
      <h2>Said and seen</h2>
      <p>{job.complaint === '' ? <span className="quiet">What it does is not written down.</span> : job.complaint}</p>
      <dl className={styles.facts}>
        {facts.map(({ name, words }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      {newest && (
        <p className="small quiet">
          {newest.by}, {sayDayAndTime(newest.at)}
          {earlier.length > 0 && `, corrected ${earlier.length === 1 ? 'once' : `${earlier.length} times`}`}
        </p>
      )}
      {earlier.map((intake) => (
        <p key={intake.at} className={styles.earlier}>
          <s>
            {[intake.complaint, ...diagnosisFacts(intake.diagnosis).map(({ name, words }) => `${name}: ${words}`)]
              .filter((each) => each !== '')
              .join(' ') || 'nothing written'}
          </s>{' '}
          {intake.by}, {sayDayAndTime(intake.at)}
        </p>
      ))}
      {!job.isClosed && (
        <PopoverDialog words="Correct" title="Correct what was said and seen">
          {(close) => <IntakeForm job={job} onDone={close} />}
        </PopoverDialog>
      )}
    </section>
  );
}

function Calls({ jobId }: { jobId: number }) {
  const calls = useRead('jobs.listCalls', { jobId });
  return (
    <section aria-label="Calls">
      <h2>Calls</h2>
      {calls.data?.length === 0 && <p className="quiet">None written down.</p>}
      <ul className={styles.lines}>
        {calls.data?.map((call) => (
          <li key={call.callId}>
            {call.said}
            <span className={styles.beneath}>
              {call.direction === 'we called' ? `we called ${call.withWhom}` : `${call.withWhom} called`}, {call.by},{' '}
              {sayDayAndTime(call.at)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Promises({ jobId }: { jobId: number }) {
  const promises = useRead('jobs.listPromises', { jobId });
  return (
    <section aria-label="Days promised">
      <h2>Days promised</h2>
      {promises.data?.length === 0 && <p className="quiet">None yet.</p>}
      <ul className={styles.lines}>
        {promises.data?.map((promise, index) => (
          <li key={promise.at}>
            {index === 0 ? (
              <>
                {sayBusinessDay(promise.on)}, {sayUntil(promise.on)}
              </>
            ) : (
              <s>{sayBusinessDay(promise.on)}</s>
            )}
            <span className={styles.beneath}>
              {promise.reason !== '' && `${promise.reason}, `}
              {promise.by}, {sayDay(promise.at)}
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
