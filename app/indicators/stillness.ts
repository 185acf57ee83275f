// When a gauge stands still, and at what: all it said for a set time lies within a set distance.
import type { Sample } from './read-line.ts';

export type Stillness = {
  /** From the lowest to the highest it says while it counts as still. */
  readonly within_nm: number;
  readonly for_ms: number;
};

/** Fewer readings than these in the time say nothing about standing still. */
export const leastSamples = 3;

/** The last readings, as many as the time asks for: the newest that is old enough, and all since. */
export type Recent = readonly Sample[];

/** The readings with one more; what is older than the time needs is let go, so that a day-long trace stays small. */
export function withSample(recent: Recent, sample: Sample, span_ms: number): Recent {
  const oldest_ms = recent.findLast((each) => each.at_ms <= sample.at_ms - span_ms)?.at_ms ?? 0;
  return [...recent.filter((each) => each.at_ms >= oldest_ms), sample];
}

/**
 * The level it stands at now: the middle reading of the time, of two middle ones the lower, so that it is always a
 * figure the gauge showed. Null while it moves, or has not been heard for long enough.
 */
export function levelOf(recent: Recent, { within_nm, for_ms }: Stillness): number | null {
  const since_ms = judgedSince(recent, for_ms);
  if (since_ms === null) return null;
  const values = recent.flatMap(({ at_ms, value_nm }) => (at_ms >= since_ms ? [value_nm] : []));
  if (values.length < leastSamples) return null;
  values.sort((left, right) => left - right);
  const [lowest = 0, highest = 0] = [values[0], values.at(-1)];
  return highest - lowest > within_nm ? null : (values[(values.length - 1) >> 1] ?? null);
}

/** The time of the first reading that standing still is judged by: the newest that is old enough. */
export function judgedSince(recent: Recent, for_ms: number): number | null {
  const last = recent.at(-1);
  return recent.findLast((each) => last !== undefined && each.at_ms <= last.at_ms - for_ms)?.at_ms ?? null;
}
