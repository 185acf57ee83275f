// A probability as a builder reads it.

/** "87 of 100"; never 0 or 100 of 100, because nothing here is certain. */
export function chanceWords(probability: number): string {
  if (probability < 0.01) return 'under 1 of 100';
  if (probability > 0.99) return 'over 99 of 100';
  return `${Math.round(100 * probability)} of 100`;
}
