// A build report on the screen before it is saved or printed: the shop's copy or the customer's.
import { Link, useNavigate } from '@tanstack/react-router';
import { CopyChoice } from '../../components/CopyChoice.tsx';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';
import { useRead } from '../../rpc/use-read.ts';

type ReportScreenProps = { jobId: number; copy: 'shop' | 'customer' };

export function ReportScreen({ jobId, copy }: ReportScreenProps) {
  const navigate = useNavigate();
  const job = useRead('jobs.getJob', { jobId });
  const params = { jobId: String(jobId) };
  return (
    <PrintedPaper
      title="Build report"
      facts={
        <Link to="/jobs/$jobId" params={params}>
          Job {job.data?.number ?? ''}
        </Link>
      }
      acts={
        <CopyChoice
          copy={copy}
          onChange={(chosen) =>
            void navigate({ to: '/jobs/$jobId/report/$copy', params: { ...params, copy: chosen }, replace: true })
          }
        />
      }
      method="jobs.printBuildReport"
      of={{ jobId, copy }}
    />
  );
}
