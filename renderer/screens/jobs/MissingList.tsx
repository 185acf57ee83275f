// What is open before the unit can go, first things first; each leads to its check.
import { Link } from '@tanstack/react-router';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { VerdictMark } from '../../charts/VerdictMark.tsx';
import { classNames } from '../../components/class-names.ts';
import { Disclosure } from '../../components/Disclosure.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import page from './JobScreen.module.css';
import styles from './MissingList.module.css';
import { saidVerdict } from './standing-words.ts';

/** As many as can be taken in at once; the others follow behind a key. */
const first = 6;

export function MissingList({ job }: { job: Job }) {
  const { missing } = job;
  const more = missing.slice(first);
  return (
    <section className={classNames(page.side, page.missing)} aria-label="Missing">
      <BeforeNextStage job={job} />
      <h2>{missing.length === 0 ? 'Nothing is missing' : `Missing, ${missing.length}`}</h2>
      {missing.length === 0 && <p className={styles.nothing}>Every check is in, or stands by a decision.</p>}
      <Lines job={job} missing={missing.slice(0, first)} />
      {more.length > 0 && (
        <Disclosure words={`${more.length} more`}>
          <Lines job={job} missing={more} />
        </Disclosure>
      )}
    </section>
  );
}

/** What the present stage asks for, besides checks that are named one by one below. */
function BeforeNextStage({ job }: { job: Job }) {
  const at = job.stages.findIndex((stage) => stage.stageId === job.stageId);
  const next = job.stages[at + 1];
  const missing = job.stages[at]?.missing ?? [];
  if (!next || missing.length === 0) return null;
  return (
    <>
      <h2>Missing before {next.name}</h2>
      <ul className={styles.before}>
        {missing.map(({ need, what }) => (
          <li key={need}>{what}</li>
        ))}
      </ul>
    </>
  );
}

function Lines({ job, missing }: { job: Job; missing: Job['missing'] }) {
  const { settings } = useOpenShop();
  return (
    <ul className={styles.lines}>
      {missing.map(({ checkId, what }) => {
        const check = job.checks.find((each) => each.checkId === checkId);
        if (!check) return null;
        return (
          <li key={checkId} className={styles.line}>
            <VerdictMark verdict={saidVerdict(check.latest, check, settings).mark} size={14} />
            <span>
              <Link to="/jobs/$jobId/checks/$checkId" params={{ jobId: String(job.jobId), checkId: String(checkId) }}>
                {check.name}
              </Link>
              <span className={styles.what}>{what}</span>
            </span>
          </li>
        );
      })}
    </ul>
  );
}
