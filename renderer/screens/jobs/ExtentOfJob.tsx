// That a ticket is a small job, and the way to make it the whole rebuild.
import type { Job } from '../../../app/jobs/jobs.contract.ts';
import { PopoverDialog } from '../../components/PopoverDialog.tsx';
import { sayDay } from '../../text/say-date.ts';
import { ReasonForm } from './ReasonForm.tsx';

/** Nothing for a job that was the whole rebuild from the start. */
export function ExtentOfJob({ job }: { job: Job }) {
  const { extent } = job;
  if (extent === null) return null;
  if (extent.widened) {
    const { reason, by, at } = extent.widened;
    return (
      <span className="quiet">
        Came in as {extent.name}, the whole rebuild since {sayDay(at)}: {reason}, {by}
      </span>
    );
  }
  return (
    <span>
      <b>{extent.name}</b>{' '}
      {!job.isClosed && job.deliveredOn === null && (
        <PopoverDialog words="Make it the whole rebuild" title="Make it the whole rebuild">
          {(close) => (
            <ReasonForm
              job={job}
              method="jobs.widenJob"
              draft="widen"
              label="Make it the whole rebuild"
              lead={`All stages, packs and checks of the sheet come onto the ticket. It does not become ${extent.name} again.`}
              refusal="Say why; it stays on the ticket."
              keyWords="Make it whole"
              onDone={close}
            />
          )}
        </PopoverDialog>
      )}
    </span>
  );
}
