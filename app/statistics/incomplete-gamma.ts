// The incomplete gamma function, from which the normal and the chi-square distribution are made.
import { excessOverLogarithm, stirlingRemainder } from './log-gamma.ts';
import type { Tails } from './tails.ts';

/**
 * x^shape · e^(−x) / Γ(shape): how fast either tail changes with the logarithm of x. Written around its peak at
 * x = shape, so that nothing large cancels (C. Loader, Fast and accurate computation of binomial probabilities, 2000).
 */
export function gammaWeight(shape: number, x: number): number {
  const exponent = shape * excessOverLogarithm((x - shape) / shape, x / shape) + stirlingRemainder(shape);
  return Math.sqrt(shape / (2 * Math.PI)) * Math.exp(-exponent);
}

/**
 * P(shape, x) and Q(shape, x), the two tails of the gamma distribution with unit scale; shape > 0, x ≥ 0.
 * Source: the series DLMF 8.11.4 below shape + 1, the continued fraction DLMF 8.9.2 by Lentz's method above.
 * Relative error below 1e-12 in the smaller tail, down to 1e-300.
 */
export function incompleteGamma(shape: number, x: number): Tails {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (x === Number.POSITIVE_INFINITY) return { lower: 1, upper: 0 };
  const weight = gammaWeight(shape, x);
  if (x < shape + 1) {
    const lower = Math.min(1, (weight / shape) * risingSeries(shape, x));
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, weight * upperFraction(shape, x));
  return { lower: 1 - upper, upper };
}

/** 1 + x/(a+1) + x²/((a+1)(a+2)) + … */
function risingSeries(shape: number, x: number): number {
  let term = 1;
  let sum = 1;
  for (let n = 1; term > sum * 1e-17; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

/** 1 / (x+1−a − 1(1−a)/(x+3−a − 2(2−a)/(x+5−a − …))) */
function upperFraction(shape: number, x: number): number {
  let denominator = x + 1 - shape;
  let ratio = 1e300;
  let inverse = 1 / denominator;
  let value = inverse;
  for (let n = 1; n < 1e7; n++) {
    const numerator = n * (shape - n);
    denominator += 2;
    inverse = 1 / (denominator + numerator * inverse);
    ratio = denominator + numerator / ratio;
    const change = ratio * inverse;
    value *= change;
    if (!(Math.abs(change - 1) >= 2.3e-16)) break;
  }
  return value;
}
