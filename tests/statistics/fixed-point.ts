// Slow arithmetic with as many digits as it takes, on whole numbers, for tests that need a reference beyond doubles.

const digits = 420n;
export const one = 10n ** digits;

/** The double nearest to top / bottom, however small. */
export function ratio(top: bigint, bottom: bigint): number {
  const shift = BigInt(Math.max(0, bottom.toString().length - top.toString().length + 25));
  return Number(`${(top * 10n ** shift) / bottom}e-${shift}`);
}

/** e to a fraction, in units of 1 / one. */
export function exponential(top: bigint, bottom: bigint): bigint {
  let [term, sum] = [one, one];
  for (let n = 1n; term > 0n; n++) {
    term = (term * top) / (bottom * n);
    sum += term;
  }
  return sum;
}

/** The normal probability above z = tenths / 10: ½ − (1/√(2π)) Σ (−1)ⁿ z²ⁿ⁺¹ / (2ⁿ n! (2n + 1)), DLMF 7.6.1. */
export function normalAbove(tenths: bigint): number {
  const squared = tenths * tenths;
  let term = (one * tenths) / 10n;
  let sum = term;
  for (let n = 1n; term !== 0n; n++) {
    term = (-term * squared) / (200n * n);
    sum += term / (2n * n + 1n);
  }
  return ratio(one / 2n - (sum * one) / squareRoot(2n * pi() * one), one);
}

/** J. Machin, 1706: π = 16 arctan(1/5) − 4 arctan(1/239). */
function pi(): bigint {
  return 16n * arctangentOfInverse(5n) - 4n * arctangentOfInverse(239n);
}

function arctangentOfInverse(x: bigint): bigint {
  let power = one / x;
  let sum = power;
  for (let n = 3n; power !== 0n; n += 2n) {
    power /= -(x * x);
    sum += power / n;
  }
  return sum;
}

function squareRoot(value: bigint): bigint {
  let root = 10n ** BigInt(Math.ceil(value.toString().length / 2));
  for (;;) {
    const next = (root + value / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}

export function binomial(n: bigint, k: bigint): bigint {
  let product = 1n;
  for (let i = 1n; i <= k; i++) product = (product * (n - k + i)) / i;
  return product;
}
