// The normal distribution, with tails that keep their digits.
import { incompleteGamma } from './incomplete-gamma.ts';
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

/**
 * The probability between two points given in standard deviations, `from` ≤ `to`, without the loss of 1 − tails. `width` is
 * to − from, for those who know it with more digits. A narrow stretch is its density times its width, with the next term
 * of the series about its middle: the difference of two nearly equal tails would keep few digits.
 */
export function normalBetween(from: number, to: number, width: number = to - from): number {
  const middle = from / 2 + to / 2;
  if (width * Math.max(1, Math.abs(middle)) < 1e-3) {
    return width * normalDensity(middle) * (1 + ((middle * width) ** 2 - width ** 2) / 24);
  }
  if (from >= 0) return normalTails(from).upper - normalTails(to).upper;
  if (to <= 0) return normalTails(to).lower - normalTails(from).lower;
  return (normalTwoSided(-from).lower + normalTwoSided(to).lower) / 2;
}

/** The probability within ± `z` standard deviations (lower) and outside of it (upper), z ≥ 0. */
export function normalTwoSided(z: number): Tails {
  // Here the density is level to the last digit, and z² would leave the range of doubles.
  if (z < 1e-50) return { lower: 2 * z * normalDensity(0), upper: 1 - 2 * z * normalDensity(0) };
  return incompleteGamma(0.5, (z * z) / 2);
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
  return pointWithTails(wanted, (z) => ({ ...normalTwoSided(z), slope: 2 * z * normalDensity(z) }));
}
