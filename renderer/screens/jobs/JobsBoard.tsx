// The jobs of a board as one table, a part for each stage that has any. Arrows go from job to job, Enter opens, M moves
// the job to its next stage.
import { Link } from '@tanstack/react-router';
import { type KeyboardEvent, useRef } from 'react';
import type { JobLine } from '../../../app/jobs/jobs.contract.ts';
import type { Stage } from '../../../app/jobs/stages.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { sayBusinessDay, sayStanding } from './days.ts';
import styles from './JobsBoard.module.css';
import { PromisedDay } from './PromisedDay.tsx';
import { type MissingOfJob, useMissing } from './use-missing.ts';

type JobsBoardProps = {
  stages: readonly Stage[];
  jobs: readonly JobLine[];
  onMove: (job: JobLine, to: Stage) => void;
};

export function JobsBoard({ stages, jobs, onMove }: JobsBoardProps) {
  const board = useRef<HTMLDivElement>(null);
  const byStage = Map.groupBy(jobs, (job) => job.stageId);
  const parts = stages.flatMap((stage, index) => {
    const inStage = byStage.get(stage.stageId);
    return inStage ? [{ stage, next: stages[index + 1], jobs: inStage }] : [];
  });
  const { missing, row } = useMissing();
  const press = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat) return;
    const links = [...(board.current?.querySelectorAll('a') ?? [])];
    const at = links.indexOf(document.activeElement as HTMLAnchorElement);
    if (event.key.toLowerCase() === 'm' && at >= 0) {
      const part = parts.find((each) => each.jobs.some((job) => String(job.jobId) === links[at]?.dataset.job));
      const job = part?.jobs.find((each) => String(each.jobId) === links[at]?.dataset.job);
      // A small job leaves stages out, so its own next one may be farther on.
      const nextId = job && missing.get(job.jobId)?.nextStageId;
      const next = stages.find(({ stageId }) => stageId === nextId) ?? part?.next;
      if (job && next) onMove(job, next);
      return;
    }
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    const next = by === 0 ? undefined : links[at + by];
    if (!next) return;
    event.preventDefault();
    next.focus();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrows are a shortcut between links that Tab reaches too.
    <div ref={board} className={styles.board} onKeyDown={press}>
      <Table label="Jobs by stage">
        <thead>
          <tr>
            <ColumnHead>job</ColumnHead>
            <ColumnHead>customer</ColumnHead>
            <ColumnHead>unit</ColumnHead>
            <ColumnHead isWide>vehicle, use</ColumnHead>
            <ColumnHead>came in with</ColumnHead>
            <ColumnHead isNumber>here</ColumnHead>
            <ColumnHead isNumber>in stage</ColumnHead>
            <ColumnHead>promised</ColumnHead>
            <ColumnHead>by</ColumnHead>
            <ColumnHead isNumber>missing</ColumnHead>
          </tr>
        </thead>
        {parts.map((part) => (
          <tbody key={part.stage.stageId}>
            <tr className={styles.stage}>
              <th scope="rowgroup" colSpan={10}>
                {part.stage.name} <span className="quiet">{part.jobs.length}</span>
              </th>
            </tr>
            {part.jobs.map((job) => (
              <JobRow key={job.jobId} job={job} missing={missing.get(job.jobId)?.missing} row={row} />
            ))}
          </tbody>
        ))}
      </Table>
    </div>
  );
}

type JobRowProps = {
  job: JobLine;
  missing: MissingOfJob['missing'] | undefined;
  row: (element: HTMLTableRowElement) => () => void;
};

function JobRow({ job, missing, row }: JobRowProps) {
  return (
    <tr ref={row} data-job={job.jobId} className={styles.job}>
      <RowHead isStrong>
        <Link
          to="/jobs/$jobId"
          params={{ jobId: String(job.jobId) }}
          className={styles.link}
          data-job={job.jobId}
          aria-keyshortcuts="M"
        >
          {job.number}
        </Link>
      </RowHead>
      <Cell>{job.customerName}</Cell>
      <Cell>
        {job.familyName} <span className={styles.serial}>{job.serial}</span>
        {job.extentName !== '' && <span className="quiet"> {job.extentName}</span>}
      </Cell>
      <Cell isWide>{job.vehicle === '' ? job.use : `${job.vehicle}, ${job.use}`}</Cell>
      <Cell isQuiet>
        <span className={styles.complaint}>{job.complaint}</span>
      </Cell>
      <Cell isNumber>{sayStanding(job.openedAt)}</Cell>
      <Cell isNumber>{sayStanding(job.enteredAt)}</Cell>
      <Cell>
        {job.deliveredOn !== null ? (
          <span className={styles.left}>left {sayBusinessDay(job.deliveredOn)}</span>
        ) : (
          job.promisedOn !== null && <PromisedDay day={job.promisedOn} isDone={job.isClosed} />
        )}
      </Cell>
      <Cell isQuiet>{job.enteredBy}</Cell>
      <Cell isNumber>{missing && missing.length > 0 && <span title={missing.join('\n')}>{missing.length}</span>}</Cell>
    </tr>
  );
}
