// Where a ticket stands with its customer: what is to be given, what is to be approved, what went over.
import type { ApprovalState } from './estimate.contract.ts';

/**
 * `approvedUpTo_cents` is the newest approval's amount, null where there is none. Over it a new approval is asked for,
 * however small the difference; at it or under it the work goes on.
 */
export function approvalStateOf(ticket: {
  readonly total_cents: number;
  readonly hasLines: boolean;
  readonly isGivenAsItStands: boolean;
  readonly approvedUpTo_cents: number | null;
}): ApprovalState {
  const { approvedUpTo_cents, total_cents } = ticket;
  if (approvedUpTo_cents !== null) return total_cents > approvedUpTo_cents ? 'over' : 'approved';
  if (ticket.isGivenAsItStands) return 'to approve';
  return ticket.hasLines ? 'to give' : 'nothing to give';
}
