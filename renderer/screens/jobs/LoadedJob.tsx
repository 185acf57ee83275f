// A job by its number in the address, or a way back when there is none.
import type { ReactNode } from 'react';
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { EmptyState } from '../../components/EmptyState.tsx';
import { LinkKey } from '../../frame/LinkKey.tsx';
import { Loaded } from '../../frame/Loaded.tsx';
import { useRead } from '../../rpc/use-read.ts';

export function LoadedJob({ jobId, children }: { jobId: number; children: (job: Job) => ReactNode }) {
  const read = useRead('jobs.getJob', Number.isInteger(jobId) && jobId > 0 ? { jobId } : null);
  if (read.data === undefined && (read.error || !read.isEnabled)) {
    return (
      <EmptyState
        title={read.error?.message ?? 'There is no such job.'}
        act={
          <LinkKey to="/jobs" kind="filled">
            To the jobs
          </LinkKey>
        }
      />
    );
  }
  return <Loaded read={read}>{children}</Loaded>;
}
