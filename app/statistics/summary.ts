// Mean, spread and serial correlation of a list of numbers, safe for large values with a small spread.
import { accept, type Result, refuse } from '../base/result.ts';
import { meanAsTyped } from './as-typed.ts';
import { checkColumns } from './columns.ts';

export type Summary = {
  readonly n: number;
  readonly mean: number;
  readonly sampleStandardDeviation: number;
  /** null where all values are equal, so that nothing can be correlated. */
  readonly lag1Autocorrelation: number | null;
};

/**
 * n, mean, sample standard deviation (n − 1) and lag-1 autocorrelation Σ dᵢdᵢ₊₁ / Σ dᵢ² of at least two values.
 * Source: definitions of the NIST StRD univariate sets; two passes, centred on the first value.
 */
export function summarise(values: readonly number[]): Result<Summary> {
  if (values.length < 2) return refuse('too-few', 'A spread needs at least two values.');
  const checked = checkColumns({ values });
  if (!checked.ok) return checked;
  const { unit, deviations, sumOfSquares } = centreInUnits(values);
  let products = 0;
  for (let i = 1; i < values.length; i++) products += deviations[i - 1]! * deviations[i]!;
  return accept({
    n: values.length,
    mean: meanOf(values),
    sampleStandardDeviation: unit * Math.sqrt(sumOfSquares / (values.length - 1)),
    lag1Autocorrelation: sumOfSquares > 0 ? products / sumOfSquares : null,
  });
}

/**
 * A power of two about as large as the largest of the values, 1 where all are 0. In this unit no square leaves the range
 * of doubles, and no digit changes on the way there and back.
 */
export function unitNear(values: readonly number[]): number {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return largest > 0 ? 2 ** Math.floor(Math.log2(largest)) : 1;
}

export type Centred = {
  readonly mean: number;
  readonly deviations: readonly number[];
  /** Σ (value − mean)² */
  readonly sumOfSquares: number;
};

/**
 * The values as deviations from their mean, at least one value. They are first taken from the first value, which loses
 * nothing when they lie close together, so values near 1e12 keep the digits their doubles have.
 */
export function centre(values: readonly number[]): Centred {
  const origin = values[0] ?? 0;
  const offsets = values.map((value) => value - origin);
  const meanOffset = sum(offsets) / values.length;
  const deviations = offsets.map((offset) => offset - meanOffset);
  return { mean: origin + meanOffset, deviations, sumOfSquares: sumOfSquares(deviations) };
}

/**
 * As `centre`, but with the deviations in a `unit` of their own size and the sum of squares in its square, for values that
 * may be so small or so large that the square of a deviation is no double.
 */
export function centreInUnits(values: readonly number[]): Centred & { readonly unit: number } {
  const { mean, deviations: unscaled } = centre(values);
  const unit = unitNear(unscaled);
  const deviations = unscaled.map((deviation) => deviation / unit);
  return { mean, unit, deviations, sumOfSquares: sumOfSquares(deviations) };
}

/** Σ values, with the rounding of every addition carried along (A. Neumaier, ZAMM 54, 1974). */
export function sum(values: readonly number[]): number {
  let total = 0;
  let lost = 0;
  for (const value of values) {
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}

/** Σ dᵢ² − (Σ dᵢ)² / n: the second term takes out what rounding left of the mean. */
function sumOfSquares(deviations: readonly number[]): number {
  const left = sum(deviations);
  const squares = sum(deviations.map((deviation) => deviation * deviation));
  return Math.max(0, squares - (left * left) / deviations.length);
}

/** The mean of at least one value; of decimals as they were typed the double nearest to it. */
export function meanOf(values: readonly number[]): number {
  return meanAsTyped(values) ?? centre(values).mean;
}
