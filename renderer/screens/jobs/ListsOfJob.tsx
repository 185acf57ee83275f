// The lists of one time on a job, gone through by keyboard: an arrow to the line, one key to answer it.
import { type KeyboardEvent, useRef } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import type { ListOfJob } from '../../../app/jobs/lists.contract.ts';
import type { ListTime } from '../../../app/specs/spec-list.ts';
import { Notice } from '../../components/Notice.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';
import { LineOfList } from './LineOfList.tsx';
import styles from './ListsOfJob.module.css';

/** Nothing where the sheet has no list of this time. */
export function ListsOfJob({ job, when }: { job: Job; when: ListTime }) {
  const read = useRead('jobs.listListsOfJob', { jobId: job.jobId, when });
  const body = useRef<HTMLFieldSetElement>(null);
  return (
    <Loaded read={read}>
      {(lists) =>
        lists.length > 0 && (
          <fieldset
            ref={body}
            aria-label={`Lists, ${when}`}
            className={styles.lists}
            onKeyDown={(event) => goByArrow(event, body.current)}
          >
            {lists.map((list) => (
              <OneList
                key={list.listId}
                job={job}
                list={list}
                onAnswered={(line) => goToNextOpen(body.current, line)}
              />
            ))}
            {!job.isClosed && lists.some(({ lines }) => lines.length > 0) && (
              <p className="small quiet">
                ↑ ↓ from line to line · Enter ticks or takes what is typed · digits count and choose · n not so · - does
                not apply
              </p>
            )}
          </fieldset>
        )
      }
    </Loaded>
  );
}

function OneList({ job, list, onAnswered }: { job: Job; list: ListOfJob; onAnswered: (line: HTMLElement) => void }) {
  const { listId, name, sourceNote, lines } = list;
  const titleId = `list-${listId}`;
  const settled = lines.filter((line) => line.isSettled).length;
  return (
    <section aria-labelledby={titleId}>
      <h2 id={titleId} className={styles.title}>
        {name}{' '}
        <span className={styles.beside}>
          {settled} of {lines.length}
          {sourceNote !== '' && `, ${sourceNote}`}
        </span>
      </h2>
      {lines.some(({ asks }) => asks.kind === 'stall') && (
        <Notice kind="caution">
          A few seconds, brakes on, nobody in front; hoses rated for the boosted line pressure. Let it cool between two
          stalls.
        </Notice>
      )}
      <ol>
        {lines.map((line) => (
          <LineOfList key={line.lineId} job={job} line={line} onAnswered={onAnswered} />
        ))}
      </ol>
    </section>
  );
}

/** Where the hand goes on a line: its entry, its first key, or the key that answers it again. */
const handle = '[data-line] [data-hand]';

function handlesIn(body: HTMLElement | null): HTMLElement[] {
  return [...(body?.querySelectorAll<HTMLElement>(handle) ?? [])].flatMap(
    (each) => each.querySelector<HTMLElement>('input, button') ?? [],
  );
}

function goByArrow(event: KeyboardEvent, body: HTMLElement | null): void {
  if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
  const line = (event.target as Element).closest('[data-line]');
  const handles = handlesIn(body);
  const at = handles.findIndex((each) => line?.contains(each));
  const next = handles[at + (event.key === 'ArrowDown' ? 1 : -1)];
  if (!line || !next) return;
  event.preventDefault();
  next.focus();
}

/** After the screen is drawn again: the next open line, else where the hand was. */
function goToNextOpen(body: HTMLElement | null, line: HTMLElement): void {
  requestAnimationFrame(() => {
    const all = [...(body?.querySelectorAll('[data-line]') ?? [])];
    const from = all.indexOf(line);
    const next = [...all.slice(from + 1), ...all.slice(0, from)].find((each) => each.matches('[data-line="open"]'));
    const hand = (next ?? line).querySelector<HTMLElement>('[data-hand] :is(input, button)');
    hand?.focus();
  });
}
