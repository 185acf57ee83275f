// Bushings, pump, rings: what each asks, what it measured as found, and the way to the bench.
import { Link } from '@tanstack/react-router';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { isHardPart } from '../../../app/readings/hard-part.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import { limitsWords } from '../../text/check-words.ts';
import { saidVerdict } from './standing-words.ts';
import styles from './Teardown.module.css';

export function HardPartsFound({ job }: { job: Job }) {
  const checks = job.checks.filter(isHardPart);
  return (
    <section aria-labelledby="hard-parts">
      <h2 id="hard-parts">Hard parts measured</h2>
      {checks.length === 0 ? (
        <p className="quiet">The sheet of this family measures none: add checks to it in Specs.</p>
      ) : (
        <Table label="Hard parts measured">
          <thead>
            <tr>
              <ColumnHead>check</ColumnHead>
              <ColumnHead>limits</ColumnHead>
              <ColumnHead isNumber>as found</ColumnHead>
              <ColumnHead>verdict</ColumnHead>
            </tr>
          </thead>
          <tbody>
            {checks.map((check) => (
              <HardPart key={check.checkId} job={job} check={check} />
            ))}
          </tbody>
        </Table>
      )}
    </section>
  );
}

function HardPart({ job, check }: { job: Job; check: CheckOfJob }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { asFound, latest } = check;
  const verdict = saidVerdict(asFound, check, settings);
  const params = { jobId: String(job.jobId), checkId: String(check.checkId) };
  const isReadSince = latest !== null && latest.takeId !== asFound?.takeId;
  return (
    <tr className={styles.finding}>
      <RowHead>
        {job.isClosed ? (
          check.name
        ) : (
          <Link to="/bench/$jobId/$checkId" params={params}>
            {check.name}
          </Link>
        )}
      </RowHead>
      <Cell>{`${limitsWords(check.limits, words)} ${words.unit}`}</Cell>
      <Cell isNumber isStrong>
        {asFound?.value == null ? '–' : words.full(asFound.value)}
      </Cell>
      <Cell>
        <Verdict verdict={verdict.mark} words={verdict.words} />
        {isReadSince && (
          <span className={styles.beneath}>now {latest.value === null ? '–' : words.full(latest.value)}</span>
        )}
      </Cell>
    </tr>
  );
}
