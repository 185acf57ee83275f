// What a ticket holds from stock.
import { PartsOfJob } from './PartsOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

export function PartsOfJobScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <PartsOfJob job={job} />}</TicketPage>;
}
