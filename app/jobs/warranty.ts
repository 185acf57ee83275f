// How long a warranty runs: by the calendar from the day in service, by use from the delivery, whichever ends first.
import type { DecimalMark } from '../quantities/format-amount.ts';
import { monthsAfter } from './calendar-days.ts';
import type { WarrantyInService, WarrantyTerms } from './delivery.contract.ts';
import type { Distance } from './distance.contract.ts';

/** What papers and screens write differently. */
export type Writing = { readonly decimalMark: DecimalMark; readonly sayDay: (day: string) => string };

/** Nothing is promised. */
export function isNone({ months, distance, passes }: WarrantyTerms): boolean {
  return months === null && distance === null && passes === null;
}

/**
 * The last day that is still in warranty, or null where no months are promised or the unit is not in service yet. The
 * same date so many months later; where that month has no such date, its last day.
 */
export function lastDayOf({ terms, inServiceOn }: WarrantyInService): string | null {
  return terms.months === null || inServiceOn === null ? null : monthsAfter(inServiceOn, terms.months);
}

/** "12 months or 12,000 miles, whichever comes first"; "no warranty". */
export function termsWords({ months, distance, passes }: WarrantyTerms, decimalMark: DecimalMark): string {
  const limits = [...(months === null ? [] : [monthsWords(months)]), ...usesOf({ distance, passes }, decimalMark)];
  return limits.length === 0 ? 'no warranty' : firstOf(limits);
}

/** "until 28 February 2027 or 12,000 miles after delivery, whichever comes first". */
export function warrantyWords(warranty: WarrantyInService, { decimalMark, sayDay }: Writing): string {
  const { terms, inServiceOn } = warranty;
  if (isNone(terms)) return 'no warranty';
  const uses = usesOf(terms, decimalMark);
  const limits = [
    ...(terms.months === null ? [] : [untilWords(warranty, sayDay, terms.months)]),
    ...uses.map((use, index) => (index === uses.length - 1 ? `${use} after delivery` : use)),
  ];
  const start = terms.months === null && inServiceOn !== null ? `from ${sayDay(inServiceOn)}, ` : '';
  return `${start}${firstOf(limits)}`;
}

function untilWords(warranty: WarrantyInService, sayDay: Writing['sayDay'], months: number): string {
  const last = lastDayOf(warranty);
  return last === null ? `${monthsWords(months)} from the day it goes into service` : `until ${sayDay(last)}`;
}

/** When and with what on it a unit came back. */
export type Return = { readonly day: string; readonly distance: Distance | null };

export type WarrantyStanding = {
  readonly state: 'none' | 'not in service' | 'in warranty' | 'ended' | 'not known';
  readonly words: string;
};

/**
 * Whether a warranty still runs. The last day and the last mile still count. The rule of use is applied only when what
 * was on the unit is known at delivery and now, in the same unit; otherwise the words say that it was not.
 */
export function warrantyStanding(
  warranty: WarrantyInService & { readonly distanceAtDelivery: Distance | null },
  now: Return,
  { decimalMark, sayDay }: Writing,
): WarrantyStanding {
  const { terms, inServiceOn, distanceAtDelivery } = warranty;
  if (isNone(terms)) return { state: 'none', words: 'left without warranty' };
  if (inServiceOn === null) return { state: 'not in service', words: 'warranty not in service yet' };
  if (now.day < inServiceOn)
    return { state: 'not in service', words: `warranty begins when it goes into service on ${sayDay(inServiceOn)}` };
  const last = lastDayOf(warranty);
  if (last !== null && now.day > last) return { state: 'ended', words: `warranty ended ${sayDay(last)}` };
  const limits = [
    ...(terms.distance === null ? [] : [terms.distance]),
    ...(terms.passes === null ? [] : [{ amount: terms.passes, unit: 'passes' as const }]),
  ];
  const used = limits.map((limit) => ({ limit, amount: usedOf(limit.unit, distanceAtDelivery, now.distance) }));
  const over = used.find(({ limit, amount }) => amount !== null && amount > limit.amount);
  if (over)
    return {
      state: 'ended',
      words: `warranty ended at ${distanceWords(over.limit, decimalMark)}: ${distanceWords({ ...over.limit, amount: over.amount ?? 0 }, decimalMark)} since delivery`,
    };
  const untold = used.filter(({ amount }) => amount === null).map(({ limit }) => distanceWords(limit, decimalMark));
  const within = used.flatMap(({ limit, amount }) =>
    amount === null ? [] : [`${count(amount, decimalMark)} of ${distanceWords(limit, decimalMark)} used`],
  );
  if (last === null && within.length === 0)
    return { state: 'not known', words: `whether the ${untold.join(' and ')} are used up is not known` };
  const notes = [...within, ...(untold.length === 0 ? [] : [`the ${untold.join(' and ')} could not be looked at`])];
  const until = last === null ? 'in warranty' : `in warranty until ${sayDay(last)}`;
  return { state: 'in warranty', words: [until, ...notes].join(', ') };
}

/** How much of it went by between two looks, or null where a look is missing, counts otherwise or runs backwards. */
function usedOf(unit: Distance['unit'], from: Distance | null, until: Distance | null): number | null {
  if (from?.unit !== unit || until?.unit !== unit || until.amount < from.amount) return null;
  return until.amount - from.amount;
}

function usesOf({ distance, passes }: Omit<WarrantyTerms, 'months'>, decimalMark: DecimalMark): string[] {
  return [
    ...(distance === null ? [] : [distanceWords(distance, decimalMark)]),
    ...(passes === null ? [] : [distanceWords({ amount: passes, unit: 'passes' }, decimalMark)]),
  ];
}

/** "12,000 miles". */
export function distanceWords({ amount, unit }: Distance, decimalMark: DecimalMark): string {
  const one = { miles: 'mile', km: 'km', passes: 'pass' }[unit];
  return `${count(amount, decimalMark)} ${amount === 1 ? one : unit}`;
}

function count(amount: number, decimalMark: DecimalMark): string {
  return amount.toLocaleString(decimalMark === ',' ? 'de-DE' : 'en-US');
}

function monthsWords(months: number): string {
  return months === 1 ? '1 month' : `${months} months`;
}

function firstOf(limits: readonly string[]): string {
  if (limits.length < 2) return limits.join('');
  return `${limits.slice(0, -1).join(', ')} or ${limits.at(-1)}, whichever comes first`;
}
