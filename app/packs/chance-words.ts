// A probability as a builder reads it.

/** "99 of 100"; never 0 or 100 of 100, because nothing here is certain. */
export function chanceWords(probability: number): string {
  return `${Math.min(99, Math.max(1, Math.round(100 * probability)))} of 100`;
}
