// The chi-square distribution: a sum of squared standard normal values.
import { gammaWeight, incompleteGamma } from './incomplete-gamma.ts';
import { pointWithTails, type Tails } from './tails.ts';

/**
 * The probability below and above `chiSquare` ≥ 0; degrees of freedom > 0, real. Source: DLMF 8.2.4 with shape ν/2 and
 * x = χ²/2. Relative error below 1e-12 in each tail, down to 1e-300.
 */
export function chiSquareTails(chiSquare: number, degreesOfFreedom: number): Tails {
  return incompleteGamma(degreesOfFreedom / 2, chiSquare / 2);
}

/** The value below which `probability` lies, 0 < probability < 1. */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  return pointWithTails({ lower: probability, upper: 1 - probability }, (chiSquare) => ({
    ...chiSquareTails(chiSquare, degreesOfFreedom),
    slope: gammaWeight(degreesOfFreedom / 2, chiSquare / 2),
  }));
}
