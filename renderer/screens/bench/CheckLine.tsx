// One check of the unit as a line to press: what it asks for, where it stands.
import { Link } from '@tanstack/react-router';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import { Verdict } from '../../components/Verdict.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import styles from './CheckLine.module.css';
import { askedFor } from './check-facts.ts';

export function CheckLine({ job, check }: { job: Job; check: CheckOfJob }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { latest } = check;
  return (
    <li>
      <Link
        to="/bench/$jobId/$checkId"
        params={{ jobId: String(job.jobId), checkId: String(check.checkId) }}
        className={styles.line}
      >
        <span className={styles.name}>
          {check.name}
          <span className={styles.asked}>{askedFor(check.limits, words)}</span>
        </span>
        {latest && latest.value !== null && <b className={styles.value}>{words.full(latest.value)}</b>}
        <span className={styles.verdict}>
          <StandingVerdict check={check} by={latest?.verdict.by ? words.full(latest.verdict.by) : null} />
        </span>
      </Link>
    </li>
  );
}

/** The verdict of the newest take, or that a person let it stand. */
export function StandingVerdict({ check, by }: { check: CheckOfJob; by: string | null }) {
  const { latest, override } = check;
  if (override) return <Verdict verdict="not judged" words={`stands: ${override.reason}`} />;
  if (!latest) return <Verdict verdict="not read" />;
  if (latest.unreadSpots > 0) {
    const words = `${latest.spots} of ${latest.spots + latest.unreadSpots} spots read, go on`;
    return <Verdict verdict="not judged" words={words} />;
  }
  if (latest.variantName !== null) return <Verdict verdict="in" words={latest.variantName} />;
  return <Verdict verdict={shownVerdict(latest.verdict, check.quantity)} by={by} />;
}
