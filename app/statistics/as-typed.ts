// Numbers that were typed as decimals, reckoned in whole numbers of their last decimal: 8.4 + 23.2 is 31.6.
import { decimalsOf, roundToDecimals } from '../quantities/decimals.ts';

/** A decimal of up to fifteen digits comes back from a double unchanged. */
const mostSteps = 1e15;

/** a − b with no more decimals than they were typed with: 0.8 − 0.7 is 0.1. */
export function differenceAsTyped(a: number, b: number): number {
  return roundToDecimals(a - b, Math.max(decimalsOf(a), decimalsOf(b)));
}

/**
 * The values as whole numbers of one step, `steps` to a unit; null where they need more than fifteen digits, because
 * they were computed and not typed.
 */
function inSteps(values: readonly number[]): { readonly whole: readonly number[]; readonly steps: number } | null {
  let [decimals, largest] = [0, 0];
  for (const value of values) {
    decimals = Math.max(decimals, decimalsOf(value));
    largest = Math.max(largest, Math.abs(value));
    if (!(largest * 10 ** decimals <= mostSteps)) return null;
  }
  const steps = 10 ** decimals;
  // Powers of ten above are no longer doubles themselves.
  return decimals > 22 ? null : { whole: values.map((value) => Math.round(value * steps)), steps };
}

/** Each value less the first, `steps` to a unit: exact where the values were typed, otherwise in units themselves. */
export function offsetsFromFirst(values: readonly number[]): { readonly offsets: number[]; readonly steps: number } {
  const { whole, steps } = inSteps(values) ?? { whole: values, steps: 1 };
  return { offsets: whole.map((each) => each - whole[0]!), steps };
}

/** The double nearest to the mean of the decimals as they were typed; null where they were not, or are too many. */
export function meanAsTyped(values: readonly number[]): number | null {
  const typed = inSteps(values);
  if (typed === null) return null;
  const [total, size] = typed.whole.reduce(([sum, sizes], each) => [sum + each, sizes + Math.abs(each)], [0, 0]);
  // Where both sides of the division are exact it rounds just once.
  const parts = values.length * typed.steps;
  return Number.isSafeInteger(size) && Number.isSafeInteger(parts) ? total / parts : null;
}
