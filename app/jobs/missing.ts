// What is open on a ticket before the unit can go, first things first.
import type { CheckOfJob, Job } from './jobs.contract.ts';

/** One line a check that is not settled: out, too close to call, read only in part, or not read. */
export function missingOn(checks: readonly CheckOfJob[]): Job['missing'] {
  const open = checks.flatMap((check) => {
    const what = whatIsOpen(check);
    return what === undefined || check.override ? [] : [{ checkId: check.checkId, ...what }];
  });
  return open.toSorted((a, b) => a.urgency - b.urgency).map(({ checkId, what }) => ({ checkId, what }));
}

function whatIsOpen({ latest, spots, packId }: CheckOfJob): { what: string; urgency: number } | undefined {
  if (!latest) return { what: 'not read yet', urgency: 3 };
  const isInAsFound = latest.phase === 'as found' && latest.verdict.word === 'in';
  if (packId !== null && isInAsFound) return { what: 'read as found only: read it again as built', urgency: 2 };
  switch (latest.verdict.word) {
    case 'tight':
    case 'loose':
      return { what: 'out: put it right, or let it stand with a reason', urgency: 0 };
    case 'too close to call':
      return { what: 'too close to call: read more, or let it stand with a reason', urgency: 1 };
    case 'not judged':
      return { what: latest.verdict.reason, urgency: 2 };
    case 'in':
      return latest.spots < spots ? { what: `read at ${latest.spots} of ${spots} spots`, urgency: 2 } : undefined;
  }
}
