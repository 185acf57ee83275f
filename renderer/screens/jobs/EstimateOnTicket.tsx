// Where a ticket stands with its customer, in a few words that lead to the estimate.
import { Link } from '@tanstack/react-router';
import { useRead } from '../../rpc/use-read.ts';
import { useMoneyWords } from '../../text/use-money-words.ts';

/** Nothing while there is no line to give. */
export function EstimateOnTicket({ jobId }: { jobId: number }) {
  const { data: estimate } = useRead('jobs.getEstimate', { jobId });
  const money = useMoneyWords();
  if (!estimate || estimate.state === 'nothing to give') return null;
  const { state, totals, approved } = estimate;
  const upTo = approved ? money(approved.upTo_cents) : '';
  const words = {
    'to give': `Estimate of ${money(totals.total_cents)}, not given yet`,
    'to approve': `Estimate of ${money(totals.total_cents)}, no yes yet`,
    approved: `Approved up to ${upTo}`,
    over: `${money(totals.total_cents)} is over the ${upTo} approved`,
  }[state];
  return (
    <Link to="/jobs/$jobId/estimate" params={{ jobId: String(jobId) }}>
      {words}
    </Link>
  );
}
