// Times until something happened or following ended: what every survival statistic starts from.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';

/** One row a subject: how long it was followed, and whether the event ended that (1) or something else (0). */
export type FollowUp = { readonly time: readonly number[]; readonly event: readonly number[] };

/** All subjects whose time is the same: places `first` to `next` of the order, those with the event before the others. */
export type Moment = {
  readonly time: number;
  readonly first: number;
  readonly events: number;
  readonly next: number;
};

export type OrderedFollowUp = {
  /** Places of the subjects in the columns, by time. */
  readonly order: Uint32Array;
  readonly moments: readonly Moment[];
};

/**
 * The subjects in the order of time. Refuses unequal lengths, values that are not numbers, negative times, an event that
 * is neither 0 nor 1, and no event at all. `further` columns must have the same length.
 */
export function orderFollowUp(
  { time, event }: FollowUp,
  further: Readonly<Record<string, readonly number[]>> = {},
): Result<OrderedFollowUp> {
  const checked = checkColumns({ time, event, ...further });
  if (!checked.ok) return checked;
  if (!time.every((each) => each >= 0)) return refuse('negative', 'A time cannot be below zero.');
  if (!event.every((each) => each === 0 || each === 1)) return refuse('not-an-event', 'An event is 1 or 0.');
  if (!event.includes(1)) return refuse('no-events', 'There is no event to learn from.');
  const order = new Uint32Array(time.length);
  for (let place = 0; place < order.length; place++) order[place] = place;
  const isBefore = (a: number, b: number) => time[a]! - time[b]! || event[b]! - event[a]!;
  // What is asked again and again of one fleet comes in order; looking is a tenth of the work of sorting.
  if (!order.every((place) => place === 0 || isBefore(place - 1, place) <= 0)) order.sort(isBefore);
  const moments: Moment[] = [];
  for (let first = 0; first < order.length; ) {
    const at = time[order[first]!]!;
    let next = first;
    let events = 0;
    for (; next < order.length && time[order[next]!] === at; next++) events += event[order[next]!]!;
    moments.push({ time: at, first, events, next });
    first = next;
  }
  return accept({ order, moments });
}
