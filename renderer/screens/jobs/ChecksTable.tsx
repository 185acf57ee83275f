// Every check of a job on one ruler: what the spec asks, what was found, where it stands now and how sure that is.
import { Link } from '@tanstack/react-router';
import { bandRow } from '../../../app/charts/band-row.ts';
import type { CheckOfJob, Job } from '../../../app/jobs/jobs.contract.ts';
import { methodWords } from '../../../app/readings/method-words.ts';
import { ChartView } from '../../charts/ChartView.tsx';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { Verdict } from '../../components/Verdict.tsx';
import { useOpenShop } from '../../frame/open-shop.ts';
import { amountWords } from '../../text/amount-words.ts';
import { limitsWords, waveWords } from '../../text/check-words.ts';
import styles from './ChecksTable.module.css';
import { bandOf, saidVerdict, sharedUnit } from './standing-words.ts';

/** All checks of the job, or those that are given. */
export function ChecksTable({ job, checks: shown = job.checks }: { job: Job; checks?: readonly CheckOfJob[] }) {
  const { settings } = useOpenShop();
  const groups = Map.groupBy(shown, (check) => check.group);
  return (
    <Table label="Checks">
      <thead className={styles.head}>
        <tr>
          <ColumnHead>check</ColumnHead>
          <ColumnHead isNumber>target</ColumnHead>
          <ColumnHead>limits</ColumnHead>
          <ColumnHead isNumber>as found</ColumnHead>
          <ColumnHead isNumber>now</ColumnHead>
          <ColumnHead>±</ColumnHead>
          <ColumnHead>
            <span className={styles.ends}>
              <span>low</span> <span>high</span>
            </span>
          </ColumnHead>
          <ColumnHead>verdict</ColumnHead>
        </tr>
      </thead>
      {[...groups].map(([group, checks]) => {
        const unit = sharedUnit(checks, settings);
        return (
          <tbody key={group}>
            <tr className={styles.group}>
              <th scope="rowgroup" colSpan={8}>
                {group} {unit !== null && unit !== '' && <span className={styles.unit}>{unit}</span>}
              </th>
            </tr>
            {checks.map((check) => (
              <CheckRow key={check.checkId} jobId={job.jobId} check={check} saysUnit={unit === null} />
            ))}
          </tbody>
        );
      })}
    </Table>
  );
}

const bandSize = { width: 112, height: 24, medium: 'screen' } as const;

function CheckRow({ jobId, check, saysUnit }: { jobId: number; check: CheckOfJob; saysUnit: boolean }) {
  const { settings } = useOpenShop();
  const words = amountWords(check, settings);
  const { latest, asFound, override } = check;
  const verdict = saidVerdict(latest, check, settings);
  // What stands in the name of the group goes without saying.
  const method = methodWords(check.method);
  const second = [check.group.includes(method) ? '' : method, waveWords(check.waveState), saysUnit ? words.unit : ''];
  return (
    <tr className={styles.check}>
      <RowHead>
        <Link
          to="/jobs/$jobId/checks/$checkId"
          params={{ jobId: String(jobId), checkId: String(check.checkId) }}
          className={styles.link}
        >
          {check.name}
        </Link>{' '}
        <span className={styles.second}>{second.filter((each) => each !== '').join(', ')}</span>
        {override && (
          <span className={styles.beneath}>
            let stand by {override.by}: {override.reason}
          </span>
        )}
        {latest?.verdict.word === 'not judged' && <span className={styles.beneath}>{latest.verdict.reason}</span>}
      </RowHead>
      <Cell isNumber>{check.limits.kind === 'target' && words.short(check.limits.target)}</Cell>
      <Cell>
        <span className={styles.limits}>{limitsWords(check.limits, words)}</span>
      </Cell>
      <Cell isNumber isQuiet>
        {asFound?.value != null && words.full(asFound.value)}
      </Cell>
      <Cell isNumber isStrong>
        {latest?.value == null ? '–' : words.full(latest.value)}
      </Cell>
      <Cell isQuiet>
        {latest?.value != null && latest.expanded !== null && (
          <span className={styles.plusMinus}>± {words.full(latest.expanded)}</span>
        )}
      </Cell>
      <Cell>
        <ChartView chart={{ ...bandRow(bandOf(check), words, bandSize), title: '' }} />
      </Cell>
      <Cell>
        <Verdict verdict={verdict.mark} words={verdict.words} />
      </Cell>
    </tr>
  );
}
