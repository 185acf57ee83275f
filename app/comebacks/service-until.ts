// How long a build was in service, and how much it was used, until a day.
import { daysBetween } from '../jobs/calendar-days.ts';
import type { Distance } from '../jobs/distance.contract.ts';
import type { Service } from './log.contract.ts';

type Left = {
  readonly deliveredOn: string;
  readonly inServiceOn: string | null;
  readonly distanceAtDelivery: Distance | null;
};

/**
 * Days from the day in service, or from delivery where nobody said when it went into service, which is then an
 * assumption. A day before counts as none. Use is known only where it stands at both ends, in one unit, not backwards.
 */
export function serviceUntil(left: Left, day: string, distance: Distance | null): Service {
  const from = left.inServiceOn ?? left.deliveredOn;
  const before = left.distanceAtDelivery;
  const isKnown = distance !== null && before?.unit === distance.unit && distance.amount >= before.amount;
  return {
    from,
    isAssumed: left.inServiceOn === null,
    days: Math.max(0, daysBetween(from, day)),
    used: isKnown ? { amount: distance.amount - before.amount, unit: distance.unit } : null,
  };
}
