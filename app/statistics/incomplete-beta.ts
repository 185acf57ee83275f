// The incomplete beta function, from which Student's t and the F distribution are made.
import { excessOverLogarithm, stirlingRemainder } from './log-gamma.ts';
import type { Tails } from './tails.ts';

/**
 * x^a · y^b / B(a, b) with y = 1 − x: how fast either tail changes with log(x / y). Written around its peak at
 * x = a / (a + b), so that nothing large cancels (C. Loader, Fast and accurate computation of binomial probabilities,
 * 2000).
 */
export function betaWeight(a: number, b: number, x: number, y: number): number {
  const total = a + b;
  const offset = b * x - a * y;
  const exponent =
    a * excessOverLogarithm(offset / a, (x / a) * total) + b * excessOverLogarithm(-offset / b, (y / b) * total);
  const remainder = stirlingRemainder(total) - stirlingRemainder(a) - stirlingRemainder(b);
  return Math.sqrt((a / total) * (b / (2 * Math.PI))) * Math.exp(remainder - exponent);
}

/**
 * I_x(a, b) and its complement, the two tails of the beta distribution; a, b > 0. Both x and y = 1 − x are passed, so
 * that the smaller keeps its digits.
 * Source: the even part of the continued fraction DLMF 8.17.22, all of whose terms stay positive (A. DiDonato and
 * A. Morris, ACM TOMS 18, 1992, algorithm 708), on the side of the mean where it converges. Relative error below 1e-12
 * in the smaller tail, down to 1e-300.
 */
export function incompleteBeta(a: number, b: number, x: number, y: number): Tails {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (y <= 0) return { lower: 1, upper: 0 };
  if (b * x <= a * y) {
    const lower = Math.min(1, betaWeight(a, b, x, y) / evenFraction(a, b, x, y));
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, betaWeight(b, a, y, x) / evenFraction(b, a, y, x));
  return { lower: 1 - upper, upper };
}

function evenFraction(a: number, b: number, x: number, y: number): number {
  const step = a * y - b * x + 1;
  const denominatorAt = (m: number) =>
    m + (m * (b - m) * x) / (a + 2 * m - 1) + ((a + m) / (a + 2 * m + 1)) * (step + m * (1 + y));
  let value = (a / (a + 1)) * step;
  let ratio = value;
  let inverse = 0;
  for (let m = 1; m < 1e7; m++) {
    const odd = a + 2 * m - 1;
    const numerator = ((a + m - 1) / odd) * ((a + b + m - 1) / odd) * m * (b - m) * x * x;
    const denominator = denominatorAt(m);
    inverse = 1 / (denominator + numerator * inverse);
    ratio = denominator + numerator / ratio;
    const change = ratio * inverse;
    value *= change;
    if (!(Math.abs(change - 1) >= 2.3e-16)) break;
  }
  return value;
}
