// The report of a comeback on the screen before it is saved or printed: the shop's copy or the customer's.
import { Link, useNavigate } from '@tanstack/react-router';
import { CopyChoice } from '../../components/CopyChoice.tsx';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';

type ComebackReportScreenProps = { comebackId: number; copy: 'shop' | 'customer' };

export function ComebackReportScreen({ comebackId, copy }: ComebackReportScreenProps) {
  const navigate = useNavigate();
  const params = { comebackId: String(comebackId) };
  return (
    <PrintedPaper
      title="Comeback report"
      facts={
        <Link to="/comebacks/$comebackId" params={params}>
          The comeback
        </Link>
      }
      acts={
        <CopyChoice
          copy={copy}
          onChange={(chosen) =>
            void navigate({
              to: '/comebacks/$comebackId/report/$copy',
              params: { ...params, copy: chosen },
              replace: true,
            })
          }
        />
      }
      method="comebacks.printReport"
      of={{ comebackId, copy }}
    />
  );
}
