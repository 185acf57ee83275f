// What came through the door with a unit, and what was said about it since.
import { DoorOfJob } from './DoorOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

export function DoorScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <DoorOfJob job={job} />}</TicketPage>;
}
