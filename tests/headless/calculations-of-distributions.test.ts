// The calculator's tails of distributions, against printed tables and against sums of whole numbers of any length.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomial, exponential, normalAbove, one, ratio } from '../statistics/fixed-point.ts';
import { expectRelative } from '../statistics/relative.ts';
import { ask } from './ask-calculator.ts';

const tails = (name: string, input: object) => ask(name, input) as { lower: number; upper: number };

describe('normal', () => {
  it('is the printed table', () => {
    // Printed in every textbook [from memory]: Φ(1) = 0.8413, Φ(1.96) = 0.9750, Φ(3) = 0.99865; 1.6449 and 2.5758.
    const { lower } = ask('normal', { z: [0, 1, 1.96, 3] }) as { lower: number[] };
    expect(lower).toEqual([0.5, expect.closeTo(0.8413, 4), expect.closeTo(0.975, 4), expect.closeTo(0.99865, 5)]);
    expect(ask('normal', { probability: [0.5, 0.95, 0.995, 0.005] }).quantiles).toEqual([
      0,
      expect.closeTo(1.6449, 4),
      expect.closeTo(2.5758, 4),
      expect.closeTo(-2.5758, 4),
    ]);
  });

  it.each([1n, 5n, 13n, 40n, 85n, 150n, 263n, 370n])('above %d tenths is the power series in 420 digits', (tenths) => {
    const z = Number(tenths) / 10;
    const { lower, upper } = ask('normal', { z: [z, -z] }) as { lower: number[]; upper: number[] };
    expectRelative(upper[0], normalAbove(tenths), 1e-12);
    expectRelative(lower[1], normalAbove(tenths), 1e-12);
    const { quantiles } = ask('normal', { probability: [normalAbove(tenths)] }) as { quantiles: number[] };
    expectRelative(quantiles[0], -z, 1e-13);
  });
});

describe('chi-square', () => {
  it('is the printed table', () => {
    // Upper 5 % points as printed (NIST/SEMATECH e-Handbook 1.3.6.7.4) [from memory]: ν 1, 10, 100.
    for (const [degreesOfFreedom, chiSquare] of [
      [1, 3.841],
      [10, 18.307],
      [100, 124.342],
    ]) {
      expect(tails('chi-square', { chiSquare, degreesOfFreedom }).upper).toBeCloseTo(0.05, 4);
    }
  });

  it('with an even number of degrees of freedom is a sum of Poisson terms', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 680 }), (shape, half) => {
        let term = one;
        let sum = one;
        for (let k = 1; k < shape; k++) {
          term = (term * BigInt(half)) / BigInt(k);
          sum += term;
        }
        const all = exponential(BigInt(half), 1n);
        const found = tails('chi-square', { chiSquare: 2 * half, degreesOfFreedom: 2 * shape });
        expectRelative(found.upper, ratio(sum, all), 1e-12);
        expectRelative(found.lower, ratio(all - sum, all), 1e-12);
      }),
      { numRuns: 60 },
    );
  });
});

describe('f-distribution', () => {
  it('is the printed table', () => {
    // JCGM 100:2008 H.5.2.2 [from memory]: F0.95(9, 40) = 2.12, F0.975(9, 40) = 2.45; reference values computed in R 4.2.2.
    const above = (f: number) => tails('f-distribution', { f, degreesOfFreedom1: 9, degreesOfFreedom2: 40 }).upper;
    expect(above(2.12)).toBeCloseTo(0.05, 3);
    expectRelative(above(2.12402926402), 0.05, 1e-10);
    expectRelative(above(2.45193921703), 0.025, 1e-10);
  });

  it('with even degrees of freedom is a sum of binomial terms', () => {
    const half = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(half, half, fc.integer({ min: 1, max: 2000 }), (a, b, tenths) => {
        // x = νf / (νf + μ) as a fraction, with f in tenths.
        const [top, rest] = [BigInt(a * tenths), BigInt(10 * b)];
        const n = BigInt(a + b - 1);
        let [lower, upper] = [0n, 0n];
        for (let j = 0n; j <= n; j++) {
          const term = binomial(n, j) * top ** j * rest ** (n - j);
          if (j >= BigInt(a)) lower += term;
          else upper += term;
        }
        const found = tails('f-distribution', {
          f: tenths / 10,
          degreesOfFreedom1: 2 * a,
          degreesOfFreedom2: 2 * b,
        });
        expectRelative(found.upper, ratio(upper, lower + upper), 1e-12);
        expectRelative(found.lower, ratio(lower, lower + upper), 1e-12);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what the distributions refuse', () => {
  it.each([
    ['normal', { probability: [0] }],
    ['normal', { probability: [1] }],
    ['normal', { z: [1], probability: [0.5] }],
    ['chi-square', { chiSquare: -1, degreesOfFreedom: 2 }],
    ['chi-square', { chiSquare: 1, degreesOfFreedom: 0 }],
    ['f-distribution', { f: 1, degreesOfFreedom1: 2 }],
    ['f-distribution', { f: -1, degreesOfFreedom1: 2, degreesOfFreedom2: 2 }],
  ])('%s of %j', (name, input) => {
    expect(ask(name, input)).toMatchObject({ refusal: { code: 'input', message: expect.stringMatching(/\.$/) } });
  });
});
