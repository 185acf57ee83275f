// What the jobs on the screen miss for their next stage, looked up for the rows that are seen and for no others.
import { useQueries } from '@tanstack/react-query';
import { useCallback, useEffect, useRef, useState } from 'react';
import { call } from '../../rpc/client.ts';

/** What is missing, one line each, for the stage that is next for this job. */
export type MissingOfJob = { readonly missing: readonly string[]; readonly nextStageId: number | null };

/** As many jobs as are asked about at once. */
const atOnce = 10;

export function useMissing(): {
  readonly missing: ReadonlyMap<number, MissingOfJob>;
  /** Goes to a row as its `ref`: the row names its job in `data-job`. */
  readonly row: (element: HTMLTableRowElement) => () => void;
} {
  const [seen, setSeen] = useState<readonly number[]>([]);
  const observer = useRef<IntersectionObserver | null>(null);
  if (observer.current === null) {
    observer.current = new IntersectionObserver((entries) => {
      const jobIds = entries
        .filter((entry) => entry.isIntersecting)
        .map((entry) => Number((entry.target as HTMLElement).dataset.job));
      if (jobIds.length === 0) return;
      setSeen((before) => {
        const more = jobIds.filter((jobId) => !before.includes(jobId));
        return more.length === 0 ? before : [...before, ...more];
      });
    });
  }
  useEffect(() => () => observer.current?.disconnect(), []);
  const row = useCallback((element: HTMLTableRowElement) => {
    observer.current?.observe(element);
    return () => observer.current?.unobserve(element);
  }, []);
  const answers = useQueries({
    queries: groupsOf(seen).map((jobIds) => ({
      queryKey: ['jobs.listMissing', { jobIds }],
      queryFn: () => call('jobs.listMissing', { jobIds }),
    })),
  });
  const missing = new Map(
    answers.flatMap(({ data }) =>
      (data ?? []).map(
        ({ jobId, missing, nextStageId }) =>
          [jobId, { missing: missing.map(({ what }) => what), nextStageId }] as const,
      ),
    ),
  );
  return { missing, row };
}

function groupsOf(jobIds: readonly number[]): number[][] {
  return Array.from({ length: Math.ceil(jobIds.length / atOnce) }, (_, index) =>
    jobIds.slice(index * atOnce, (index + 1) * atOnce),
  );
}
