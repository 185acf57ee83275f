// Of two factors that were found and that go together, one may be the other's shadow.
import { cox } from '../statistics/cox.ts';
import { normalCoverageFactor } from '../statistics/normal.ts';
import { type Asked, eventsOf, type Factor, numberOf, quantile, recorded } from './fleet-factors.ts';
import type { FollowedBuild } from './follow-builds.ts';

/** Two factors go together from this correlation on; common practice calls 0.1 weak and 0.3 middling. */
const goTogether = 0.2;
/** Fewer comebacks than these within a group tell nothing there. */
const enoughInside = 4;
/** So many of the likeliest finds are held against each other. */
const mostCompared = 6;

export type Inside = {
  /** Which builds: those of a level or not, or those below or above the middle of a number. */
  readonly part: 'in' | 'out' | 'below' | 'above';
  readonly builds: number;
  readonly events: number;
  readonly ratio: number | null;
};

export type HeldAgainst = {
  /** The factor whose effect is looked at, and the one inside whose groups it is. */
  readonly factor: Factor;
  readonly within: Factor;
  readonly inside: readonly Inside[];
  /** Over the groups together, each weighed by how sure it is; null where nothing could be told. */
  readonly ratio: number | null;
  readonly interval: readonly [lower: number, upper: number] | null;
  /** With the other held still it makes no difference that could be told from none. */
  readonly mayBeShadow: boolean;
};

export type Shadow = {
  /** Of the two numbers, or of belonging to the two levels, over the builds where both were recorded. */
  readonly correlation: number;
  readonly builds: number;
  readonly each: readonly [HeldAgainst, HeldAgainst];
};

/** Every two of the likeliest finds that go together, with the effect of each inside the groups of the other. */
export function findShadows(found: readonly Factor[], followed: readonly FollowedBuild[]): Shadow[] {
  const likeliest = found.slice(0, mostCompared);
  return likeliest.flatMap((first, i) =>
    likeliest.slice(i + 1).flatMap((second) => {
      const { correlation, builds } = correlate(first, second, followed);
      if (Math.abs(correlation) < goTogether) return [];
      const each = [holdAgainst(first, second, followed), holdAgainst(second, first, followed)] as const;
      return [{ correlation, builds, each }];
    }),
  );
}

function correlate(first: Asked, second: Asked, followed: readonly FollowedBuild[]) {
  const pairs = followed.flatMap(({ place }) => {
    const [x, y] = [numberOf(first, place), numberOf(second, place)];
    return x === null || y === null ? [] : [[x, y] as const];
  });
  const builds = pairs.length;
  const middle = (at: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[at], 0) / builds;
  const [mx, my] = [middle(0), middle(1)];
  let [xx, xy, yy] = [0, 0, 0];
  for (const [x, y] of pairs) {
    xx += (x - mx) ** 2;
    xy += (x - mx) * (y - my);
    yy += (y - my) ** 2;
  }
  return { builds, correlation: xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0 };
}

/** The coefficient over the groups is their mean weighed by one over the variance of each. */
function holdAgainst(factor: Factor, within: Factor, followed: readonly FollowedBuild[]): HeldAgainst {
  // Steps in the direction that was told to be worse, so that a ratio above 1 agrees with what was found.
  const { between } = factor;
  const step = between === null ? 1 : between.worse - between.better;
  let [weights, weighed] = [0, 0];
  const inside = partsOf(within, followed).map(({ part, builds }): Inside => {
    const rows = recorded(builds, ({ place }) => numberOf(factor, place));
    const events = eventsOf(rows);
    const fit = events >= enoughInside ? cox(rows, rows.x, 'efron') : null;
    if (!fit?.ok) return { part, builds: rows.time.length, events, ratio: null };
    const { coefficient, standardError } = fit.value;
    const weight = 1 / (standardError * step) ** 2;
    weights += weight;
    weighed += weight * coefficient * step;
    return { part, builds: rows.time.length, events, ratio: finite(Math.exp(coefficient * step)) };
  });
  if (weights === 0) return { factor, within, inside, ratio: null, interval: null, mayBeShadow: true };
  const mean = weighed / weights;
  const reach = normalCoverageFactor(0.95) / Math.sqrt(weights);
  const interval = [Math.exp(mean - reach), Math.exp(mean + reach)] as const;
  return {
    factor,
    within,
    inside,
    ratio: finite(Math.exp(mean)),
    interval: interval.every(Number.isFinite) ? interval : null,
    mayBeShadow: interval[0] <= 1 && interval[1] >= 1,
  };
}

function partsOf(within: Factor, followed: readonly FollowedBuild[]) {
  const known = followed.flatMap((build) => {
    const number = numberOf(within, build.place);
    return number === null ? [] : [{ build, number }];
  });
  const isLevel = within.level !== null;
  const middle = quantile(Float64Array.from(known, ({ number }) => number).sort(), 0.5);
  const isHigh = (number: number) => (isLevel ? number === 1 : number > middle);
  const take = (part: Inside['part'], wanted: boolean) => ({
    part,
    builds: known.filter(({ number }) => isHigh(number) === wanted).map(({ build }) => build),
  });
  return [take(isLevel ? 'in' : 'above', true), take(isLevel ? 'out' : 'below', false)];
}

function finite(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
