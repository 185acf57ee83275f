// The part of a fleet that has not come back, as a curve with its limits, as a line of wear, and by quarter of delivery.
import { accept, type Result, refuse } from '../base/result.ts';
import { quarterOf } from '../jobs/calendar-days.ts';
import { kaplanMeier, type SurvivalStep } from '../statistics/kaplan-meier.ts';
import { logRank } from '../statistics/log-rank.ts';
import { proportion } from '../statistics/proportion.ts';
import { type Weibull, weibull } from '../statistics/weibull.ts';
import { enoughInGroup, eventsOf } from './fleet-factors.ts';
import type { FleetBuild, GroupColumn } from './fleet-rows.ts';
import type { FollowedBuild } from './follow-builds.ts';

export type Curve = {
  readonly builds: number;
  readonly events: number;
  /** The longest that any of them was followed. */
  readonly until: number;
  /** One a time with a comeback; none came back where there is none. */
  readonly steps: readonly SurvivalStep[];
  readonly median: number | null;
  /** At round times, from the start: what a table says beside the curve. */
  readonly atTimes: ReadonlyArray<{
    readonly time: number;
    readonly atRisk: number;
    readonly cameBack: number;
    readonly survival: number;
    readonly lower: number | null;
    readonly upper: number | null;
  }>;
};

/** By Kaplan and Meier. `followed` stands in the order of time and holds somebody. */
export function curveOf(followed: readonly FollowedBuild[], times: readonly number[]): Curve {
  const time = followed.map((each) => each.time);
  const event = followed.map((each) => each.event);
  const fit = kaplanMeier({ time, event });
  const steps = fit.ok ? fit.value.steps : [];
  return {
    builds: followed.length,
    events: eventsOf({ event }),
    until: time.at(-1) ?? 0,
    steps,
    median: fit.ok ? fit.value.median : null,
    atTimes: times.map((at) => {
      const step = steps.findLast((each) => each.time <= at);
      return {
        time: at,
        atRisk: followed.length - placeOfFirst(time, at),
        cameBack: steps.reduce((sum, each) => (each.time <= at ? sum + each.events : sum), 0),
        survival: step?.survival ?? 1,
        lower: step?.lower ?? null,
        upper: step?.upper ?? null,
      };
    }),
  };
}

/** How many of the sorted times are shorter than `at`: who ends at `at` was still at risk then. */
function placeOfFirst(sorted: readonly number[], at: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (sorted[middle]! < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Round times from 0 to the end, at most nine: by the month for days, by 1, 2 or 5 and noughts for use. */
export function roundTimes(until: number, isDays: boolean): number[] {
  const rough = until / 8;
  const step = isDays && rough > 10 ? Math.ceil(rough / 30) * 30 : roundUp(rough);
  return Array.from({ length: Math.floor(until / step) + 1 }, (_, i) => i * step);
}

function roundUp(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  return Math.max(1, ([1, 2, 5].find((digit) => digit * power >= rough) ?? 10) * power);
}

export function wearLine(followed: readonly FollowedBuild[]): Result<Weibull> {
  return weibull({ time: followed.map(({ time }) => time), event: followed.map(({ event }) => event) });
}

export type ComparedGroups = {
  readonly curves: ReadonlyArray<{ readonly level: string; readonly expected: number; readonly curve: Curve }>;
  /** Builds of no group, of several at once, or of one that is too small or one too many. */
  readonly leftOut: number;
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly p: number;
};

const mostGroups = 6;

/** The largest groups of a column beside each other, by the log-rank test. Refuses fewer than two. */
export function compareGroups(
  column: GroupColumn,
  followed: readonly FollowedBuild[],
  times: readonly number[],
): Result<ComparedGroups> {
  const levelOf = ({ place }: FollowedBuild) => {
    const levels = column.levels[place] ?? [];
    return levels.length === 1 ? levels[0]! : null;
  };
  const byLevel = Map.groupBy(followed, levelOf);
  const large = [...byLevel].flatMap(([level, builds]) =>
    level === null || builds.length < enoughInGroup ? [] : [{ level, builds }],
  );
  if (large.length < 2) {
    return refuse(
      'small-groups',
      `Not enough yet to compare: ${large.length} of 2 groups with ${enoughInGroup} builds or more.`,
    );
  }
  const compared = large.toSorted((a, b) => b.builds.length - a.builds.length).slice(0, mostGroups);
  const levels = new Set<string | null>(compared.map(({ level }) => level));
  const inGroups = followed.filter((build) => levels.has(levelOf(build)));
  const test = logRank(
    { time: inGroups.map(({ time }) => time), event: inGroups.map(({ event }) => event) },
    inGroups.map((build) => levelOf(build)!),
  );
  if (!test.ok) return test;
  const { groups, chiSquare, degreesOfFreedom, p } = test.value;
  return accept({
    curves: compared.map(({ level, builds }) => ({
      level,
      expected: groups.find(({ name }) => name === level)?.expected ?? 0,
      curve: curveOf(builds, times),
    })),
    leftOut: followed.length - inGroups.length,
    chiSquare,
    degreesOfFreedom,
    p,
  });
}

export type Quarter = {
  /** Such as "2026 Q3". */
  readonly quarter: string;
  readonly builds: number;
  readonly cameBack: number;
  /** Of them, those that can still come back. */
  readonly stillFollowed: number;
  readonly share: number;
  readonly lower: number;
  readonly upper: number;
};

/** What came back of each quarter's deliveries, in order; only as far as it was followed. */
export function ratesByQuarter(builds: readonly FleetBuild[], followed: readonly FollowedBuild[]): Quarter[] {
  const byQuarter = Map.groupBy(followed, ({ place }) => quarterOf(builds[place]!.deliveredOn));
  return [...byQuarter]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([quarter, ofQuarter]) => {
      const cameBack = eventsOf({ event: ofQuarter.map(({ event }) => event) });
      const stillFollowed = ofQuarter.filter(({ ending }) => ending === 'still followed').length;
      const told = proportion(cameBack, ofQuarter.length);
      return told.ok ? [{ quarter, builds: ofQuarter.length, cameBack, stillFollowed, ...told.value }] : [];
    });
}
