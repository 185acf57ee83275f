// Every act on a job, day by day, the newest first: that is what one looks for. The build sheet prints them in order.
import { Link } from '@tanstack/react-router';
import { timeIn } from '../../../app/jobs/calendar-days.ts';
import type { Act, ActKind } from '../../../app/jobs/history.contract.ts';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { Cell, ColumnHead, Table } from '../../components/Table.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { dayHere, sayBusinessDay, zoneHere } from './days.ts';
import styles from './HistoryScreen.module.css';
import { TicketPage } from './TicketPage.tsx';

export function HistoryScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <History job={job} />}</TicketPage>;
}

function History({ job }: { job: Job }) {
  const history = useRead('jobs.getHistory', { jobId: job.jobId });
  return (
    <div className={styles.history}>
      <Loaded read={history}>
        {(acts) => (
          <Table label="What was done">
            <thead>
              <tr>
                <ColumnHead>time</ColumnHead>
                <ColumnHead>what</ColumnHead>
                <ColumnHead>by</ColumnHead>
              </tr>
            </thead>
            {[...Map.groupBy(acts.toReversed(), (act) => dayHere(act.at))].map(([day, ofDay]) => (
              <tbody key={day}>
                <tr className={styles.day}>
                  <th scope="rowgroup" colSpan={3}>
                    {sayBusinessDay(day)}
                  </th>
                </tr>
                {ofDay.map((act, index) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: acts are only ever appended, and their order is theirs.
                  <ActRow key={index} act={act} jobId={job.jobId} />
                ))}
              </tbody>
            ))}
          </Table>
        )}
      </Loaded>
    </div>
  );
}

/** What was decided or went wrong stands out from what was done. */
const strong: readonly ActKind[] = ['stage', 'sign-off', 'went on without', 'decision', 'comeback'];

function ActRow({ act, jobId }: { act: Act; jobId: number }) {
  return (
    <tr className={styles.act}>
      <Cell isQuiet>{timeIn(act.at, zoneHere())}</Cell>
      <Cell isStrong={strong.includes(act.kind)}>
        {act.checkId === null ? (
          act.says
        ) : (
          <Link
            to="/jobs/$jobId/checks/$checkId"
            params={{ jobId: String(jobId), checkId: String(act.checkId) }}
            className={styles.link}
          >
            {act.says}
          </Link>
        )}
        {act.more !== '' && <span className={styles.more}>{act.more}</span>}
      </Cell>
      <Cell isQuiet>{act.by}</Cell>
    </tr>
  );
}
