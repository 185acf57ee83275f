// How long each build was followed, and whether what is asked about ended that or something else did.
import { daysBetween } from '../jobs/calendar-days.ts';
import type { Distance } from '../jobs/distance.contract.ts';
import { lastDayOf } from '../jobs/warranty.ts';
import type { Cause } from './causes.ts';
import type { FleetBuild, LaterVisit } from './fleet-rows.ts';

export const clocks = ['days', 'miles', 'km', 'passes'] as const;
export type Clock = (typeof clocks)[number];

export const endings = [
  'came back',
  'came back for another cause',
  'came back, cause not known yet',
  'not our part',
  'no fault found',
  'here again for something else',
  'warranty ended',
  'still followed',
] as const;
export type Ending = (typeof endings)[number];

export const reasonsLeftOut = ['no term of months', 'use not known'] as const;
export type ReasonLeftOut = (typeof reasonsLeftOut)[number];

export type WhatIsAsked = {
  /** null: the whole unit. */
  readonly packName: string | null;
  /** null: any cause. */
  readonly cause: Cause | null;
  readonly clock: Clock;
  /** Whether use that nobody wrote down is guessed from what the others ran a day. */
  readonly isUseGuessed: boolean;
};

export type FollowedBuild = {
  /** Its place among the builds. */
  readonly place: number;
  readonly time: number;
  readonly event: 0 | 1;
  readonly ending: Ending;
  readonly isGuessed: boolean;
};

export type FollowedBuilds = {
  /** By time; of equal times those that came back first. */
  readonly followed: readonly FollowedBuild[];
  readonly leftOut: Readonly<Record<ReasonLeftOut, number>>;
  /** Followed from delivery, because nobody said when it went into service. */
  readonly fromDelivery: number;
  /** Half of those whose use is known ran more a day; null where use was not guessed or is known of none. */
  readonly usePerDay: { readonly median: number; readonly builds: number } | null;
};

/** A build that came back on its first day had some use: half a day, or half of one mile, km or pass. */
const least = 0.5;

/**
 * Follows the builds at these places from the day in service, or from delivery where nobody said it, to whatever came
 * first: a comeback, another visit of the unit, the last day of its warranty, today. Time is in days, or in use since
 * delivery where that is asked; use is known only where it was written down at delivery and at the visit.
 * Assumption: until the warranty ends it would have come back to us. In use a build without a term of months counts too.
 */
export function followBuilds(
  builds: readonly FleetBuild[],
  places: readonly number[],
  today: string,
  asked: WhatIsAsked,
): FollowedBuilds {
  const calendar = calendarOf();
  const leftOut = { 'no term of months': 0, 'use not known': 0 };
  const ended: Array<Omit<FollowedBuild, 'time' | 'isGuessed'> & { days: number; used: number | null }> = [];
  let fromDelivery = 0;
  for (const place of places) {
    const build = builds[place]!;
    const lastDay = calendar.lastDay(build);
    if (lastDay === null && asked.clock === 'days') {
      leftOut['no term of months'] += 1;
      continue;
    }
    if (build.inServiceOn === null) fromDelivery += 1;
    const { day, ending, visit } = endOf(build, lastDay, today, asked);
    const days = Math.max(least, calendar.days(build.inServiceOn ?? build.deliveredOn, day));
    const used = asked.clock === 'days' ? null : usedBetween(build.distanceAtDelivery, visit?.distance, asked.clock);
    ended.push({ place, event: ending === 'came back' ? 1 : 0, ending, days, used });
  }
  const usePerDay = asked.clock !== 'days' && asked.isUseGuessed ? medianUse(ended) : null;
  const followed = ended.flatMap(({ days, used, ...each }): FollowedBuild[] => {
    if (asked.clock === 'days') return [{ ...each, time: days, isGuessed: false }];
    if (used !== null) return [{ ...each, time: Math.max(least, used), isGuessed: false }];
    if (usePerDay !== null) return [{ ...each, time: Math.max(least, days * usePerDay.median), isGuessed: true }];
    leftOut['use not known'] += 1;
    return [];
  });
  followed.sort((a, b) => a.time - b.time || b.event - a.event || a.place - b.place);
  return { followed, leftOut, fromDelivery, usePerDay };
}

function endOf(
  build: FleetBuild,
  lastDay: string | null,
  today: string,
  asked: WhatIsAsked,
): { day: string; ending: Ending; visit: LaterVisit | null } {
  const ends = lastDay !== null && lastDay < today;
  const bound = ends ? lastDay : today;
  const first = build.laterVisits[0]?.day;
  if (first === undefined || first > bound) {
    return { day: bound, ending: ends ? 'warranty ended' : 'still followed', visit: null };
  }
  // Of several visits on that day the one it came back on speaks.
  const visits = build.laterVisits.filter(({ day }) => day === first);
  const told = visits.map((visit) => ({ day: first, ending: endingOf(visit, asked), visit }));
  return told.find(({ ending }) => ending === 'came back') ?? told.find(({ visit }) => visit.comeback) ?? told[0]!;
}

function endingOf({ comeback }: LaterVisit, { cause, packName }: WhatIsAsked): Ending {
  if (comeback === null || comeback.outcome === 'logged by mistake') return 'here again for something else';
  if (comeback.outcome === 'not our part' || comeback.outcome === 'no fault found') return comeback.outcome;
  if (comeback.outcome === 'not known yet' && cause !== null) return 'came back, cause not known yet';
  if (cause === null && packName === null) return 'came back';
  const said = comeback.causes.filter(({ certainty }) => certainty !== 'not found');
  if (said.length === 0) return 'came back, cause not known yet';
  const isIt = said.some(
    (each) =>
      (cause === null || each.cause === cause) &&
      (packName === null || each.packName === null || each.packName === packName),
  );
  return isIt ? 'came back' : 'came back for another cause';
}

/** 1 mile is 1.609344 km exactly. */
const metres = { miles: 1609.344, km: 1000 } as const;

/** How much it ran between delivery and a later look, in the unit of the clock; null where that is not known. */
function usedBetween(from: Distance | null, until: Distance | null | undefined, clock: Exclude<Clock, 'days'>) {
  if (!from || !until) return null;
  const inClock = ({ amount, unit }: Distance) => {
    if (unit === clock) return amount;
    return unit === 'passes' || clock === 'passes' ? null : (amount * metres[unit]) / metres[clock];
  };
  const [start, end] = [inClock(from), inClock(until)];
  return start === null || end === null || end < start ? null : end - start;
}

function medianUse(ended: ReadonlyArray<{ days: number; used: number | null }>) {
  const rates = ended.flatMap(({ days, used }) => (used === null ? [] : [used / days])).toSorted((a, b) => a - b);
  if (rates.length === 0) return null;
  const middle = rates.length / 2;
  const median = (rates[Math.ceil(middle) - 1]! + rates[Math.floor(middle)]!) / 2;
  return { median, builds: rates.length };
}

/** A fleet of tens of thousands has a few thousand days, so each is worked out once. */
function calendarOf() {
  const numbers = new Map<string, number>();
  const lasts = new Map<string, string | null>();
  const numberOf = (day: string) => {
    const known = numbers.get(day) ?? daysBetween('2000-01-01', day);
    numbers.set(day, known);
    return known;
  };
  return {
    days: (from: string, until: string) => numberOf(until) - numberOf(from),
    lastDay: ({ inServiceOn, deliveredOn, months }: FleetBuild) => {
      const from = inServiceOn ?? deliveredOn;
      const key = `${from} ${months}`;
      const known = lasts.get(key);
      if (known !== undefined) return known;
      const last = lastDayOf({ terms: { months, distance: null, passes: null }, inServiceOn: from });
      lasts.set(key, last);
      return last;
    },
  };
}
