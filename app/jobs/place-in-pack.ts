// Whether a slot lies at the piston end of its pack, in the middle, or at the ring end.
import type { PackPlace } from './findings.contract.ts';

/**
 * Among the slots of its own kind, which are in order from the piston: the first lies at the piston end, the last at the
 * ring end, any other in the middle. The only one of its kind is placed among all slots.
 */
export function placeInPack(slots: ReadonlyArray<{ readonly kind: string }>, index: number): PackPlace {
  const kind = slots[index]?.kind;
  const ofKind = slots.flatMap((slot, position) => (slot.kind === kind ? [position] : []));
  const isOnly = ofKind.length === 1;
  const first = isOnly ? 0 : ofKind[0];
  const last = isOnly ? slots.length - 1 : ofKind.at(-1);
  if (index === first) return 'piston end';
  return index === last ? 'ring end' : 'middle';
}
