// The F distribution: a ratio of two mean squares.
import { betaWeight, incompleteBeta } from './incomplete-beta.ts';
import { pointWithTails, type Tails } from './tails.ts';

/**
 * The probability below and above the ratio `f` ≥ 0; degrees of freedom > 0, real. Source: DLMF 8.17 with
 * x = ν₁f / (ν₁f + ν₂). Relative error below 1e-12 in each tail, down to 1e-300.
 */
export function fTails(f: number, numeratorDegrees: number, denominatorDegrees: number): Tails {
  const { x, y } = sharesAt(f, numeratorDegrees, denominatorDegrees);
  return incompleteBeta(numeratorDegrees / 2, denominatorDegrees / 2, x, y);
}

/** The ratio below which `probability` lies, 0 < probability < 1. */
export function fQuantile(probability: number, numeratorDegrees: number, denominatorDegrees: number): number {
  return pointWithTails({ lower: probability, upper: 1 - probability }, (f) => {
    const { x, y } = sharesAt(f, numeratorDegrees, denominatorDegrees);
    const slope = betaWeight(numeratorDegrees / 2, denominatorDegrees / 2, x, y);
    return { ...fTails(f, numeratorDegrees, denominatorDegrees), slope };
  });
}

function sharesAt(f: number, numeratorDegrees: number, denominatorDegrees: number) {
  const scaled = (f * numeratorDegrees) / denominatorDegrees;
  return { x: scaled === Number.POSITIVE_INFINITY ? 1 : scaled / (1 + scaled), y: 1 / (1 + scaled) };
}
