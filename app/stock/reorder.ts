// How many to buy of a part that has run low.

/**
 * The reorder quantity, as often as it takes to stand above the reorder point again; where the part has none, just
 * enough for that. At least one.
 */
export function suggestedQuantity(part: {
  readonly onHand: number;
  readonly reorderPoint: number | null;
  readonly reorderQuantity: number | null;
}): number {
  const short = Math.max(1, (part.reorderPoint ?? 0) + 1 - part.onHand);
  return part.reorderQuantity === null ? short : part.reorderQuantity * Math.ceil(short / part.reorderQuantity);
}
