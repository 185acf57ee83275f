// The logarithm of the gamma function, and what Stirling's formula leaves out of it.

// ζ(k) − 1 for k = 2, 3, …: the coefficients of DLMF 5.7.3.
const zetaMinusOne = [
  0.6449340668482264, 0.2020569031595943, 0.08232323371113819, 0.03692775514336993, 0.01734306198444914,
  0.00834927738192283, 0.004077356197944339, 0.002008392826082214, 0.000994575127818085, 0.000494188604119465,
  0.0002460865533080483, 0.0001227133475784891, 6.12481350587048e-5, 3.058823630702049e-5, 1.528225940865187e-5,
  7.63719763789976e-6, 3.81729326499984e-6, 1.908212716553939e-6, 9.53962033872796e-7, 4.76932986787806e-7,
  2.38450502727733e-7, 1.192199259653111e-7, 5.96081890512595e-8, 2.980350351465228e-8, 1.490155482836505e-8,
  7.45071178983543e-9,
];
const oneMinusEuler = 0.4227843350984671;

// B(2k) / (2k(2k − 1)), k = 1, 2, …: DLMF 5.11.1.
const stirlingCoefficients = [
  1 / 12,
  -1 / 360,
  1 / 1260,
  -1 / 1680,
  1 / 1188,
  -691 / 360360,
  1 / 156,
  -3617 / 122400,
  43867 / 244188,
];

const halfLogTwoPi = 0.9189385332046728;

/**
 * log Γ(x) − [(x − ½) log x − x + ½ log 2π] for x > 0.
 * Source: DLMF 5.11.1 from 10 upwards, below that carried down by Γ(x + 1) = xΓ(x). Absolute error below 1e-15
 * from 1 upwards, and below 1e-13 for any x > 0.
 */
export function stirlingRemainder(x: number): number {
  let carried = 0;
  let from = x;
  while (from < 10) {
    carried += (from + 0.5) * Math.log1p(1 / from) - 1;
    from += 1;
  }
  const inverse = 1 / from;
  const inverseSquared = inverse * inverse;
  let sum = 0;
  for (let k = stirlingCoefficients.length - 1; k >= 0; k--) sum = sum * inverseSquared + stirlingCoefficients[k]!;
  return carried + sum * inverse;
}

/**
 * log Γ(x) for x > 0. Source: DLMF 5.7.3 between ½ and 2½, where it passes through zero at 1 and 2; Stirling with its
 * remainder elsewhere. Relative error below 1e-13.
 */
export function logGamma(x: number): number {
  if (x > 0.5 && x < 2.5) return x < 1.5 ? logGammaNearTwo(x - 1) - Math.log1p(x - 1) : logGammaNearTwo(x - 2);
  if (x <= 0.5) return logGammaNearTwo(x) - Math.log1p(x) - Math.log(x);
  return (x - 0.5) * Math.log(x) - x + halfLogTwoPi + stirlingRemainder(x);
}

/** log Γ(2 + offset) for |offset| ≤ ½. */
function logGammaNearTwo(offset: number): number {
  let sum = 0;
  for (let k = zetaMinusOne.length - 1; k >= 0; k--) {
    const order = k + 2;
    sum = (sum + ((order % 2 === 0 ? 1 : -1) * zetaMinusOne[k]!) / order) * offset;
  }
  return (sum + oneMinusEuler) * offset;
}

/**
 * value − log(1 + value) for value > −1, without the cancellation near zero. `onePlusValue` is passed beside it because
 * near −1 it is known better than it can be computed.
 * Source: log(1 + u) = 2 artanh(u / (2 + u)), DLMF 4.6.5. Relative error below 1e-15.
 */
export function excessOverLogarithm(value: number, onePlusValue: number): number {
  if (!(Math.abs(value) <= 0.5)) return value - Math.log(onePlusValue);
  const ratio = value / (2 + value);
  const squared = ratio * ratio;
  let power = squared;
  let sum = 1 / 3;
  for (let order = 5; ; order += 2) {
    const next = sum + power / order;
    if (next === sum) break;
    sum = next;
    power *= squared;
  }
  return ratio * (value - 2 * squared * sum);
}
