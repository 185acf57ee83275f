// What a pack aims at.

type Aim = {
  readonly target: number | null;
  readonly bounds: { readonly lower: number | null; readonly upper: number | null };
};

/** Its target, else the middle of its band, else its one limit. */
export function targetOf({ target, bounds: { lower, upper } }: Aim): number {
  if (target !== null) return target;
  if (lower === null) return upper ?? 0;
  return upper === null ? lower : (lower + upper) / 2;
}
