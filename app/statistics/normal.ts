// The normal distribution, with tails that keep their digits.
import { gammaWeight, incompleteGamma } from './incomplete-gamma.ts';
import { pointWithTails, type Tails } from './tails.ts';

/**
 * The probability below and above `z` standard deviations. Source: erfc(z) = Q(½, z²), DLMF 7.11.2. Relative error
 * below 1e-12 in each tail, down to 1e-300.
 */
export function normalTails(z: number): Tails {
  const { upper } = incompleteGamma(0.5, (z * z) / 2);
  const small = upper / 2;
  return z < 0 ? { lower: small, upper: 1 - small } : { lower: 1 - small, upper: small };
}

/** How many standard deviations above the mean `probability` lies below, 0 < probability < 1; right for 1e-300 too. */
export function normalQuantile(probability: number): number {
  if (probability === 0.5) return 0;
  const small = Math.min(probability, 1 - probability);
  const z = pointWithin({ lower: 1 - 2 * small, upper: 2 * small });
  return probability < 0.5 ? -z : z;
}

/** The probability between two points given in standard deviations, `from` ≤ `to`, without the loss of 1 − tails. */
export function normalBetween(from: number, to: number): number {
  if (from >= 0) return normalTails(from).upper - normalTails(to).upper;
  if (to <= 0) return normalTails(to).lower - normalTails(from).lower;
  return (withinOf(-from) + withinOf(to)) / 2;
}

/** The probability within ± `z` standard deviations. */
function withinOf(z: number): number {
  return incompleteGamma(0.5, (z * z) / 2).lower;
}

/** The density at `z` standard deviations, per standard deviation. */
export function normalDensity(z: number): number {
  return Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
}

/** How many standard deviations hold the central `probability`: 1.96 for 0.95. 0 < probability < 1. */
export function normalCoverageFactor(probability: number): number {
  return pointWithin({ lower: probability, upper: 1 - probability });
}

/** The z with these probabilities within and outside of ± z. */
function pointWithin(wanted: Tails): number {
  return pointWithTails(wanted, (z) => ({
    ...incompleteGamma(0.5, (z * z) / 2),
    slope: 2 * gammaWeight(0.5, (z * z) / 2),
  }));
}
