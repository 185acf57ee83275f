// Which mock-up of a pack a take read.
import type { Take } from './readings.contract.ts';

/**
 * The number of the mock-up, 0 for the pack as it was found. What sits in a pack is usually typed after it was read, when a
 * swap is wanted: whatever was read until then, of any phase, read the plates that are written down first.
 */
export function mockUpRead(take: Pick<Take, 'mockUpNumber'>): number {
  return take.mockUpNumber ?? 0;
}
