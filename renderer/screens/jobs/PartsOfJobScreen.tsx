// What a ticket holds from stock.
import { PartsOfJob } from './PartsOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

/** `find` is looked for in the stock at once: a part that teardown wants replaced. */
export function PartsOfJobScreen({ jobId, find }: { jobId: number; find: string }) {
  return <TicketPage jobId={jobId}>{(job) => <PartsOfJob job={job} find={find} />}</TicketPage>;
}
