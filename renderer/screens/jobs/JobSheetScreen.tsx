// The papers of a job besides its report: the build sheet and a blank bench sheet.
import { Link } from '@tanstack/react-router';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';
import { LoadedJob } from './LoadedJob.tsx';

export function JobSheetScreen({ jobId, kind }: { jobId: number; kind: 'build' | 'bench' }) {
  return (
    <LoadedJob jobId={jobId}>
      {(job) => {
        const facts = (
          <Link to="/jobs/$jobId" params={{ jobId: String(jobId) }}>
            Job {job.number}
          </Link>
        );
        return kind === 'build' ? (
          <PrintedPaper title="Build sheet" facts={facts} method="jobs.printBuildSheet" of={{ jobId }} />
        ) : (
          <PrintedPaper title="Bench sheet" facts={facts} method="jobs.printBenchSheet" of={{ of: { jobId } }} />
        );
      }}
    </LoadedJob>
  );
}

/** A blank bench sheet of a family, for any job. */
export function FamilySheetScreen({ familyId }: { familyId: number }) {
  const facts = (
    <Link to="/specs/$familyId" params={{ familyId: String(familyId) }}>
      Back to the sheet
    </Link>
  );
  return <PrintedPaper title="Bench sheet" facts={facts} method="jobs.printBenchSheet" of={{ of: { familyId } }} />;
}
