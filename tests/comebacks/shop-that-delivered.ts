// A small shop by the calendar: units that came in, left with a warranty, and came back, on days a test sets.
import type { Input } from '../../app/contract/contract.ts';
import { calendarClock, shopWithKx3 } from '../desk.ts';

type Leaving = {
  readonly in: string;
  readonly out: string;
  readonly miles?: number;
  /** null: nobody said when it went into service; left out: the day it left. */
  readonly inServiceOn?: string | null;
  readonly serial: string;
  readonly customer?: string;
  readonly caseTag?: string;
  readonly familyId?: number;
};

/** Twelve months or 12,000 miles. */
export const usualTerms = { months: 12, distance: { amount: 12_000, unit: 'miles' as const }, passes: null };

export async function shopThatDelivered(from = '2025-01-06') {
  const clock = calendarClock(from);
  const at = await shopWithKx3(clock);
  const miles = (amount: number | undefined) => (amount === undefined ? null : { amount, unit: 'miles' as const });

  const takeIn = async ({ serial, customer = 'Dana Pell', caseTag = '', ...given }: Omit<Leaving, 'out'>) => {
    clock.setTo(given.in);
    return at.call('jobs.checkIn', {
      customer: { name: customer, phone: '555 0160', email: '' },
      unit: { familyId: given.familyId ?? at.familyId, serial, vehicle: 'delivery van', use: 'street' },
      complaint: 'Slips in third.',
      caseTag,
      distance: miles(given.miles),
      by: at.by,
    });
  };
  const deliver = async (job: { jobId: number; number: number }, given: Leaving) => {
    clock.setTo(given.out);
    await at.call('jobs.deliver', {
      reason: 'they know what is open',
      jobId: job.jobId,
      deliveredTo: given.customer ?? 'Dana Pell',
      deliveredOn: given.out,
      distance: miles(given.miles),
      handedOverById: at.by,
      warranty: { terms: usualTerms, inServiceOn: given.inServiceOn === undefined ? given.out : given.inServiceOn },
      by: at.by,
    });
    return job;
  };
  const build = async (given: Leaving) => deliver(await takeIn(given), given);

  /** Logs a comeback on a ticket that is opened for it. */
  const comesBack = async (
    builtJobId: number,
    on: string,
    more: Partial<Input<'comebacks.logComeback'>> & { readonly odometer?: number } = {},
  ) => {
    clock.setTo(on);
    const { odometer, ...rest } = more;
    const { customer, unit } = await at.call('jobs.getJob', { jobId: builtJobId });
    const distance = miles(odometer);
    return at.call('comebacks.logComeback', {
      builtJobId,
      ticket: {
        checkIn: {
          customer: { customerId: customer.customerId },
          unit: { unitId: unit.unitId },
          complaint: 'Slips again.',
          caseTag: '',
          distance,
        },
      },
      cameBackOn: on,
      customerSays: 'Slips again.',
      distance,
      covered: 'not decided yet',
      coveredNote: '',
      by: at.by,
      ...rest,
    });
  };
  /** Writes the card anew with some of it changed. */
  const changeCard = async (comebackId: number, more: object) => {
    const { card } = await at.call('comebacks.getComeback', { comebackId });
    const { cost_cents, reason: _, at: __, by: ___, ...rest } = card;
    const cost = cost_cents === null ? '' : (cost_cents / 100).toFixed(2);
    return { comebackId, ...rest, cost, reason: '', by: at.by, ...more };
  };
  const decide = async (comebackId: number, more: object) =>
    at.call('comebacks.writeCard', await changeCard(comebackId, more));
  return { ...at, clock, takeIn, deliver, build, comesBack, changeCard, decide };
}
