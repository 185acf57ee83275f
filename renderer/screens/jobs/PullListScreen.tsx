// The plates to pull for all packs of a unit, on the screen before the list is saved or printed.
import { Link } from '@tanstack/react-router';
import { PrintedPaper } from '../../frame/PrintedPaper.tsx';

type PullListScreenProps = { jobId: number; way: 'inOrder' | 'together'; objective: 'sum' | 'largest' };

export function PullListScreen({ jobId, way, objective }: PullListScreenProps) {
  return (
    <PrintedPaper
      title="Pull list"
      facts={
        <Link to="/bench/$jobId/swaps" params={{ jobId: String(jobId) }}>
          What to swap, all packs
        </Link>
      }
      method="packs.printPullList"
      of={{ jobId, way, objective }}
    />
  );
}
