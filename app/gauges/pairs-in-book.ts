// Pairs that a shop's own book holds: the same pack of the same job in the same state, read two ways.
import { meanOf } from '../statistics/summary.ts';

export type TakeOfState<T> = {
  readonly state: string;
  readonly isFirst: boolean;
  readonly mean: number;
  readonly take: T;
};

/** The newest take of each method of every state that has both; `takes` oldest first. In the order the states came. */
export function pairsOfStates<T>(takes: readonly TakeOfState<T>[]): Array<{ first: number; second: number; take: T }> {
  const states = new Map<string, { first?: number; second?: number; take: T }>();
  for (const { state, isFirst, mean, take } of takes) {
    states.set(state, { ...states.get(state), [isFirst ? 'first' : 'second']: mean, take });
  }
  return [...states.values()].flatMap(({ first, second, take }) =>
    first === undefined || second === undefined ? [] : [{ first, second, take }],
  );
}

/** The mean over the spots of the mean at each; null without a value. */
export function meanOverSpots(reads: ReadonlyArray<{ readonly spot: number; readonly value: number }>): number | null {
  if (reads.length === 0) return null;
  return meanOf(
    [...Map.groupBy(reads, ({ spot }) => spot).values()].map((each) => meanOf(each.map(({ value }) => value))),
  );
}
