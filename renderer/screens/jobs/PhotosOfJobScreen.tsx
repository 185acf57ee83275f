// The photos of a ticket.
import { PhotosOfJob } from './PhotosOfJob.tsx';
import { TicketPage } from './TicketPage.tsx';

export function PhotosOfJobScreen({ jobId }: { jobId: number }) {
  return <TicketPage jobId={jobId}>{(job) => <PhotosOfJob job={job} />}</TicketPage>;
}
