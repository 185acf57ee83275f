// What a slot is called at the bench.

/** "steel 2" counted from the piston, or "backing plate" where there is only one. */
export function slotName(slots: ReadonlyArray<{ readonly kind: string }>, index: number): string {
  const kind = slots[index]?.kind ?? '';
  const ofKind = slots.filter((slot) => slot.kind === kind).length;
  const place = slots.slice(0, index + 1).filter((slot) => slot.kind === kind).length;
  return ofKind > 1 ? `${kind} ${place}` : kind;
}
