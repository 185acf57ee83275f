// An estimate as it was given, on the screen before it is saved or printed.
import { Link } from '@tanstack/react-router';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';

export function EstimatePaperScreen({ jobId, number }: { jobId: number; number: number }) {
  return (
    <PrintedPaper
      title={`Estimate ${number}`}
      facts={
        <Link to="/jobs/$jobId/estimate" params={{ jobId: String(jobId) }}>
          Back to its lines
        </Link>
      }
      method="jobs.printEstimate"
      of={{ jobId, number }}
    />
  );
}
