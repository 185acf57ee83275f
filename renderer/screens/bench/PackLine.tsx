// The clearance of one pack, large: what it reads, on its band, and which mock-up that is.
import { Link } from '@tanstack/react-router';
import { bandRow } from '../../../app/charts/band-row.ts';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { KeyHint } from '../../components/KeyHint.tsx';
import { ReadingWithUncertainty } from '../../components/ReadingWithUncertainty.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import { drawnLimits } from '../../text/check-words.ts';
import { StandingVerdict } from './CheckLine.tsx';
import { askedFor } from './check-facts.ts';
import styles from './PackLine.module.css';
import { phaseWords } from './reading-plan.ts';

/** `figure` is the key that opens it. */
export function PackLine({ job, check, figure }: { job: Job; check: CheckOfJob; figure: string }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { latest, asFound } = check;
  const value = latest?.value ?? null;
  const facts = {
    ...drawnLimits(check.limits),
    now: value === null ? null : { value, expanded: latest?.expanded ?? null, label: 'now' },
    asFound: asFound && asFound.takeId !== latest?.takeId ? asFound.value : null,
  };
  return (
    <li>
      <Link
        to="/bench/$jobId/$checkId"
        params={{ jobId: String(job.jobId), checkId: String(check.checkId) }}
        className={styles.line}
      >
        <KeyHint>{figure}</KeyHint>
        <span className={styles.name}>
          {check.name}
          <span className={styles.asked}>{askedFor(check.limits, words)}</span>
        </span>
        <span className={styles.value}>
          {value !== null && (
            <ReadingWithUncertainty
              value={words.full(value)}
              plusMinus={latest?.expanded ? words.full(latest.expanded) : null}
              size="say"
            />
          )}
        </span>
        <span className={styles.band}>
          <ChartView chart={bandRow(facts, words, { width: 200, height: 32, medium: 'screen' })} />
        </span>
        <span className={styles.verdict}>
          <StandingVerdict check={check} by={latest?.verdict.by ? words.full(latest.verdict.by) : null} />
          <span className={styles.phase}>{latest ? phaseOf(job, check) : ''}</span>
        </span>
      </Link>
    </li>
  );
}

function phaseOf(job: Job, { latest, packId }: CheckOfJob): string {
  const pack = job.packs.find((each) => each.packId === packId);
  if (!latest) return '';
  const isRebuilt = (pack?.mockUpNumber ?? 0) > (latest.mockUpNumber ?? 0);
  const phase = phaseWords(latest);
  return isRebuilt ? `${phase}; swapped since` : phase;
}
