// The jobs of a board as one table, a part for each stage that has any. Arrows go from job to job, Enter opens.
import { Link } from '@tanstack/react-router';
import { type KeyboardEvent, useRef } from 'react';
import type { JobLine, Stage } from '../../../app/jobs/jobs.contract.ts';
import { Cell, ColumnHead, RowHead, Table } from '../../components/Table.tsx';
import { sayAge } from '../../text/say-date.ts';
import styles from './JobsBoard.module.css';

type JobsBoardProps = { stages: readonly Stage[]; jobs: readonly JobLine[] };

export function JobsBoard({ stages, jobs }: JobsBoardProps) {
  const board = useRef<HTMLDivElement>(null);
  const parts = stages
    .map((stage) => ({ stage, jobs: jobs.filter((job) => job.stageId === stage.stageId) }))
    .filter((part) => part.jobs.length > 0);
  const step = (event: KeyboardEvent) => {
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (by === 0) return;
    const links = [...(board.current?.querySelectorAll('a') ?? [])];
    const next = links[links.indexOf(document.activeElement as HTMLAnchorElement) + by];
    if (!next) return;
    event.preventDefault();
    next.focus();
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the arrows are a shortcut between links that Tab reaches too.
    <div ref={board} className={styles.board} onKeyDown={step}>
      <Table label="Jobs by stage">
        <thead>
          <tr>
            <ColumnHead>job</ColumnHead>
            <ColumnHead>customer</ColumnHead>
            <ColumnHead>unit</ColumnHead>
            <ColumnHead>vehicle, use</ColumnHead>
            <ColumnHead>came in with</ColumnHead>
            <ColumnHead isNumber>here</ColumnHead>
          </tr>
        </thead>
        {parts.map((part) => (
          <tbody key={part.stage.stageId}>
            <tr className={styles.stage}>
              <th scope="rowgroup" colSpan={6}>
                {part.stage.name} <span className="quiet">{part.jobs.length}</span>
              </th>
            </tr>
            {part.jobs.map((job) => (
              <JobRow key={job.jobId} job={job} />
            ))}
          </tbody>
        ))}
      </Table>
    </div>
  );
}

function JobRow({ job }: { job: JobLine }) {
  return (
    <tr className={styles.job}>
      <RowHead isStrong>
        <Link to="/jobs/$jobId" params={{ jobId: String(job.jobId) }} className={styles.link}>
          {job.number}
        </Link>
      </RowHead>
      <Cell>{job.customerName}</Cell>
      <Cell>
        {job.familyName} <span className="small quiet">{job.serial}</span>
      </Cell>
      <Cell>{job.vehicle === '' ? job.use : `${job.vehicle}, ${job.use}`}</Cell>
      <Cell isQuiet>
        <span className={styles.complaint}>{job.complaint}</span>
      </Cell>
      <Cell isNumber>{sayAge(job.openedAt)}</Cell>
    </tr>
  );
}
