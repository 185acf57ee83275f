// Which of everything that was recorded goes together with coming back, and by how much: one factor at a time, all
// counted, so that the best of many is not taken for a find.
import { accept, type Result, refuse } from '../base/result.ts';
import { chiSquareTails } from '../statistics/chi-square.ts';
import { cox, coxOfGroup, scoreOfGroup } from '../statistics/cox.ts';
import { falseDiscovery } from '../statistics/false-discovery.ts';
import { fisher } from '../statistics/fisher.ts';
import { normalCoverageFactor } from '../statistics/normal.ts';
import type { FactorColumn, GroupColumn, NumberColumn } from './fleet-rows.ts';
import type { FollowedBuild } from './follow-builds.ts';

/** Fewer comebacks than these say nothing about factors. */
export const enoughEvents = 8;
/** Fewer builds than these are no group to hold against the rest. */
export const enoughInGroup = 5;
/** One find in so many may be false (Benjamini and Hochberg). */
export const falseFinds = 0.05;
/** A group of more levels than these, as the batches of many years are, has those far from a find counted, not fitted. */
const manyLevels = 100;
/** By the score test; a find needs a twentieth at most before it is held against all that were tried. */
const farFromFound = 0.1;

/** A column with what it is asked: a number as it is, a group as one of its levels against the rest. */
export type Asked =
  | { readonly column: NumberColumn; readonly level: null }
  | { readonly column: GroupColumn; readonly level: string };

export type Effect = {
  /** By Cox the ratio of hazards; where that has no limit, as when one side has no comeback, of odds by Fisher. */
  readonly by: 'cox' | 'fisher';
  /** null: without limit, as are the limits of 95 %. */
  readonly ratio: number | null;
  readonly interval: readonly [lower: number | null, upper: number | null];
  readonly p: number;
};

export type Factor = Asked & {
  readonly builds: number;
  readonly events: number;
  /** Followed builds of which it was never recorded, so they are left out here. */
  readonly unrecorded: number;
  /** Of a level: how many builds, and how many of them came back. */
  readonly inLevel: { readonly builds: number; readonly events: number } | null;
  /** The quarter points of what was recorded; the ratio is of the first against the second. null for a level. */
  readonly between: { readonly worse: number; readonly better: number } | null;
  readonly effect: Effect;
  /** p by Benjamini and Hochberg over all that were tried. */
  readonly adjusted: number;
  readonly isFound: boolean;
};

export type TriedFactors = {
  /** The likeliest first. */
  readonly tried: readonly Factor[];
  /** How many were tried, with those of large groups that were too far from a find to be fitted. */
  readonly count: number;
  readonly notTried: ReadonlyArray<{ readonly name: string; readonly why: string }>;
};

type Untold = Omit<Factor, 'adjusted' | 'isFound'>;

/** Tries every column: a number once, a group once a level that has builds enough in it and outside it. */
export function tryFactors(columns: readonly FactorColumn[], followed: readonly FollowedBuild[]): TriedFactors {
  const tried: Untold[] = [];
  const notTried: Array<{ name: string; why: string }> = [];
  let far = 0;
  for (const column of columns) {
    const found = column.kind === 'number' ? [tryNumber(column, followed)] : tryGroup(column, followed);
    for (const each of found) {
      if (each.ok) tried.push(each.value as Untold);
      else if (each.refusal.code === 'far-from-found') far += 1;
      else notTried.push({ name: column.name, why: each.refusal.message });
    }
  }
  // What was too far from a find to be fitted counts with the largest p there is.
  const adjusted = falseDiscovery(
    [...tried.map(({ effect }) => effect.p), ...new Array<number>(far).fill(1)],
    falseFinds,
  );
  const told = tried.map((each, i) => {
    const p = adjusted.ok ? adjusted.value.adjusted[i]! : 1;
    return { ...each, adjusted: p, isFound: p <= falseFinds } as Factor;
  });
  return { tried: told.toSorted((a, b) => a.effect.p - b.effect.p), count: tried.length + far, notTried };
}

function tryNumber(column: NumberColumn, followed: readonly FollowedBuild[]): Result<Untold> {
  const rows = recorded(followed, ({ place }) => column.values[place] ?? null);
  const events = eventsOf(rows);
  if (rows.x.length === 0) return refuse('unrecorded', 'Never recorded.');
  if (events < enoughEvents) return tooFew(events);
  const sorted = Float64Array.from(rows.x).sort();
  const ends = [sorted[0]!, sorted.at(-1)!] as const;
  if (ends[0] === ends[1]) return refuse('constant', 'The same in every build.');
  const quarters = [quantile(sorted, 0.25), quantile(sorted, 0.75)] as const;
  const [low, high] = quarters[0] === quarters[1] ? ends : quarters;
  const fit = cox(rows, rows.x, 'efron');
  if (!fit.ok) return fit;
  const { coefficient, standardError, likelihoodRatio } = fit.value;
  const isWorseLow = coefficient < 0;
  const step = Math.abs(coefficient) * (high - low);
  const reach = normalCoverageFactor(0.95) * standardError * (high - low);
  return accept({
    column,
    level: null,
    builds: rows.x.length,
    events,
    unrecorded: followed.length - rows.x.length,
    inLevel: null,
    between: isWorseLow ? { worse: low, better: high } : { worse: high, better: low },
    effect: {
      by: 'cox',
      ratio: finite(Math.exp(step)),
      interval: [finite(Math.exp(step - reach)), finite(Math.exp(step + reach))],
      p: chiSquareTails(likelihoodRatio, 1).upper,
    },
  });
}

function tryGroup(column: GroupColumn, followed: readonly FollowedBuild[]): Result<Untold>[] {
  const { all, byLevel, builds, events, isEachInOne } = countGroup(column, followed);
  if (builds === 0) return [refuse('unrecorded', 'Never recorded.')];
  if (events < enoughEvents) return [tooFew(events)];
  if (byLevel.size < 2 && isEachInOne) return [refuse('constant', 'The same in every build.')];
  const large = [...byLevel]
    .map(([level, alike]) => ({ level, alike, inLevel: sumOf(alike) }))
    .filter(({ inLevel }) => inLevel.builds >= enoughInGroup && builds - inLevel.builds >= enoughInGroup);
  if (large.length === 0) {
    return [refuse('small-groups', `No group with ${enoughInGroup} builds in it and ${enoughInGroup} beside it.`)];
  }
  // Of two groups each is the rest of the other: one question, told for the one that came back more often.
  const isPair = byLevel.size === 2 && isEachInOne;
  const share = ({ inLevel }: (typeof large)[number]) => inLevel.events / inLevel.builds;
  const asked = isPair ? large.toSorted((a, b) => share(b) - share(a)).slice(0, 1) : large;
  const unrecorded = followed.length - builds;
  return asked.map(({ level, alike, inLevel }) => {
    const rest = {
      counts: all.counts.map((count, i) => count - alike.counts[i]!),
      events: all.events.map((came, i) => came - alike.events[i]!),
    };
    const score = asked.length > manyLevels ? scoreOfGroup(alike, rest, 'efron') : null;
    if (score?.ok && score.value.p > farFromFound) return refuse('far-from-found', 'Too far from a find to be fitted.');
    const effect = effectOfLevel(alike, rest);
    if (!effect.ok) return effect;
    return accept({ column, level, builds, events, unrecorded, inLevel, between: null, effect: effect.value });
  });
}

type Counted = { readonly counts: Float64Array; readonly events: Float64Array };

/** How many of each level ended at each time, and how many of all: all that a group has to say. */
function countGroup(column: GroupColumn, followed: readonly FollowedBuild[]) {
  const times = new Map<number, number>();
  for (const { time } of followed) if (!times.has(time)) times.set(time, times.size);
  const nobody = (): Counted => ({ counts: new Float64Array(times.size), events: new Float64Array(times.size) });
  const all = nobody();
  const byLevel = new Map<string, Counted>();
  let isEachInOne = true;
  for (const { place, time, event } of followed) {
    const levels = column.levels[place] ?? null;
    if (levels === null) continue;
    const at = times.get(time)!;
    isEachInOne &&= levels.length === 1;
    all.counts[at]! += 1;
    all.events[at]! += event;
    for (const level of levels) {
      const alike = byLevel.get(level) ?? nobody();
      byLevel.set(level, alike);
      alike.counts[at]! += 1;
      alike.events[at]! += event;
    }
  }
  return { all, byLevel, isEachInOne, ...sumOf(all) };
}

function sumOf({ counts, events }: Counted): { builds: number; events: number } {
  return {
    builds: counts.reduce((sum, count) => sum + count, 0),
    events: events.reduce((sum, came) => sum + came, 0),
  };
}

function effectOfLevel(alike: Counted, others: Counted): Result<Effect> {
  const ratio = coxOfGroup(alike, others, 'efron');
  if (ratio.ok) {
    const { hazardRatio, hazardRatioInterval, likelihoodRatio } = ratio.value;
    const p = chiSquareTails(likelihoodRatio, 1).upper;
    return accept({ by: 'cox', ratio: hazardRatio, interval: hazardRatioInterval, p });
  }
  const [inside, outside] = [sumOf(alike), sumOf(others)];
  const exact = fisher([
    [inside.events, inside.builds - inside.events],
    [outside.events, outside.builds - outside.events],
  ]);
  if (!exact.ok) return exact;
  const { oddsRatio, interval, pTwoSided } = exact.value;
  // Fisher does not know how long anybody was followed, so that the newest builds would seem to last; the score test does,
  // but is not exact for a few. Both have to agree.
  const score = scoreOfGroup(alike, others, 'efron');
  const p = score.ok ? Math.max(pTwoSided, score.value.p) : pTwoSided;
  return accept({ by: 'fisher', ratio: oddsRatio, interval, p });
}

export type Rows = {
  readonly time: readonly number[];
  readonly event: readonly number[];
  readonly x: readonly number[];
};

/** The rows of which `read` knows a number. */
export function recorded(followed: readonly FollowedBuild[], read: (build: FollowedBuild) => number | null): Rows {
  // Room for all of them at once: this is done for every number of every build.
  const [time, event, x] = [0, 1, 2].map(() => new Array<number>(followed.length)) as [number[], number[], number[]];
  let rows = 0;
  for (const build of followed) {
    const value = read(build);
    if (value === null) continue;
    time[rows] = build.time;
    event[rows] = build.event;
    x[rows] = value;
    rows += 1;
  }
  for (const column of [time, event, x]) column.length = rows;
  return { time, event, x };
}

/** The number of a factor for a build, 1 or 0 for a level; null where it was never recorded. */
export function numberOf({ column, level }: Asked, place: number): number | null {
  if (column.kind === 'number') return column.values[place] ?? null;
  const levels = column.levels[place] ?? null;
  return levels === null ? null : Number(levels.includes(level ?? ''));
}

/** Between two of the sorted values that stand about `share`, by how far it is from either. */
export function quantile(sorted: ArrayLike<number>, share: number): number {
  const at = (sorted.length - 1) * share;
  const below = sorted[Math.floor(at)]!;
  return below + (sorted[Math.ceil(at)]! - below) * (at - Math.floor(at));
}

export function eventsOf({ event }: Pick<Rows, 'event'>): number {
  return event.reduce((sum, each) => sum + each, 0);
}

function tooFew(events: number) {
  return refuse('not-enough', `Recorded in ${events} of the ${enoughEvents} comebacks needed.`);
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
