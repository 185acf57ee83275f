// What a shop's own readings teach it: repeats at one spot, and the same pack read by feeler and by air.
import { centre, meanOf } from '../statistics/summary.ts';
import type { OwnRepeats } from './repeatability.ts';
import { type TypedReading, valueOfReading } from './typed-line.ts';

/** A reading that stands: superseded ones are left out before. */
export type OwnRead = { readonly takeId: number; readonly spot: number; readonly reading: TypedReading };

/** A take that may be one half of a pair. The same `state` is the same pack of the same job at the same mock-up. */
export type PairableTake = { readonly takeId: number; readonly state: string; readonly method: 'air' | 'feeler' };

/** Several reads at one spot of one take are repeats; every such group is added up. Air only says nothing here. */
export function ownRepeats(reads: readonly OwnRead[]): OwnRepeats {
  let sumOfSquares = 0;
  let degreesOfFreedom = 0;
  for (const spots of valuesBySpot(reads).values()) {
    for (const values of spots.values()) {
      sumOfSquares += values.length > 1 ? centre(values).sumOfSquares : 0;
      degreesOfFreedom += values.length - 1;
    }
  }
  return { sumOfSquares, degreesOfFreedom };
}

/**
 * Feeler less air, one difference for every state of a pack that was read both ways: the means over the spots of the
 * newest take of each. `takes` oldest first; one without a single clearance is passed over.
 */
export function feelerAboveAir(takes: readonly PairableTake[], reads: readonly OwnRead[]): number[] {
  const values = valuesBySpot(reads);
  const states = new Map<string, { air?: number; feeler?: number }>();
  for (const { takeId, state, method } of takes) {
    const spots = values.get(takeId);
    if (!spots) continue;
    states.set(state, { ...states.get(state), [method]: meanOf([...spots.values()].map(meanOf)) });
  }
  return [...states.values()].flatMap(({ air, feeler }) =>
    air === undefined || feeler === undefined ? [] : [feeler - air],
  );
}

/** By take, then by spot; only what has a value. */
function valuesBySpot(reads: readonly OwnRead[]): Map<number, Map<number, number[]>> {
  const takes = new Map<number, Map<number, number[]>>();
  for (const { takeId, spot, reading } of reads) {
    const value = valueOfReading(reading);
    if (value === null) continue;
    const spots = takes.get(takeId) ?? new Map<number, number[]>();
    spots.set(spot, [...(spots.get(spot) ?? []), value]);
    takes.set(takeId, spots);
  }
  return takes;
}
