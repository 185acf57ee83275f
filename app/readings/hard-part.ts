// Which checks are of hard parts: bushings, pump gears, rings, measured in the hand once a unit is apart.
import type { Check } from '../specs/spec-sheet.ts';

/** One instrument on one part: a length that no pack stands in. */
export function isHardPart(check: Pick<Check, 'packName' | 'method' | 'quantity'>): boolean {
  return check.packName === null && check.method === 'direct' && check.quantity === 'length';
}
