// On a ticket: the build it is held against, or what its own build came back as.
import { Link } from '@tanstack/react-router';
import { useRead } from '../../rpc/use-read.ts';
import { sayBusinessDay } from './days.ts';

export function ComebacksOfJob({ jobId }: { jobId: number }) {
  const known = useRead('comebacks.listOfJob', { jobId }).data;
  if (!known) return null;
  const { heldAgainst, cameBack } = known;
  return (
    <>
      {heldAgainst && (
        <span>
          Comeback of{' '}
          <Link to="/jobs/$jobId" params={{ jobId: String(heldAgainst.jobId) }}>
            job {heldAgainst.number}
          </Link>
        </span>
      )}
      {cameBack.map(({ comebackId, number, cameBackOn }) => (
        <span key={comebackId}>
          <b>Came back on {sayBusinessDay(cameBackOn)}</b> as{' '}
          <Link to="/comebacks/$comebackId" params={{ comebackId: String(comebackId) }}>
            job {number}
          </Link>
        </span>
      ))}
    </>
  );
}
