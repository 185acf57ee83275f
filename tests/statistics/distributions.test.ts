// Reference values: mpmath 1.3.0 with 40 to 60 digits.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareQuantile, chiSquareTails } from '../../app/statistics/chi-square.ts';
import { fQuantile, fTails } from '../../app/statistics/f-distribution.ts';
import { incompleteBeta } from '../../app/statistics/incomplete-beta.ts';
import { incompleteGamma } from '../../app/statistics/incomplete-gamma.ts';
import { logGamma } from '../../app/statistics/log-gamma.ts';
import { normalBetween, normalCoverageFactor, normalTails } from '../../app/statistics/normal.ts';
import {
  studentTCoverageFactor,
  studentTQuantile,
  studentTTails,
  studentTTwoSided,
} from '../../app/statistics/student-t.ts';
import { expectRelative } from './relative.ts';

const promised = 1e-12;

describe('the distributions keep twelve digits, far into their tails', () => {
  it.each([
    [1e-300, 690.775527898214],
    [1e-5, 11.5129196928958],
    [0.5, 0.5723649429247],
    [0.75, 0.203280951431295],
    [1.0001, -5.77133422204713e-5],
    [1.4616, -0.121486290035897],
    [1.9999, -4.22752087721535e-5],
    [2.0001, 4.22816581129199e-5],
    [3.5, 1.20097360234707],
    [10, 12.8018274800815],
    [171.5, 709.143163030928],
    [1e6, 12815504.5691476],
    [1e12, 26631021115915.652],
  ])('log gamma of %d', (x, expected) => {
    expectRelative(logGamma(x), expected, promised);
  });

  it.each([
    [0.5, 0.308537538725987],
    [1.96, 0.0249978951482204],
    [5, 2.86651571879194e-7],
    [10, 7.61985302416053e-24],
    [20, 2.75362411860623e-89],
    [30, 4.90671392714819e-198],
    [37, 5.72557122252458e-300],
  ])('a normal value above %d standard deviations', (z, expected) => {
    expectRelative(normalTails(z).upper, expected, promised);
    expectRelative(normalTails(-z).lower, expected, promised);
  });

  it.each([
    [2, 1, 0.295167235300867],
    [1e-3, 3, 0.999264894969461],
    [12, 4, 0.000276428548502973],
    [30, 18.9987, 1.81320500947836e-17],
    [1e50, 5, 1.89803344911247e-249],
    [1e150, 1.5, 7.54170486403249e-226],
    [35, 200, 3.19804374360108e-87],
    [2.5, 0.5, 0.400970529053293],
  ])('Student’s t outside ± %d with %d degrees of freedom', (t, degreesOfFreedom, expected) => {
    expectRelative(studentTTwoSided(t, degreesOfFreedom).upper, expected, promised);
  });

  it.each([
    [2.26151926997, 9, 40, 0.0373968251449982],
    [21, 8, 180, 2.58326433726897e-22],
    [1e6, 3, 60, 6.71459600515203e-141],
    [0.01, 4, 7, 0.999748170703272],
    [1.05, 1000, 1200.5, 0.209535984282107],
  ])('a variance ratio above %d with %d and %d degrees of freedom', (f, first, second, expected) => {
    expectRelative(fTails(f, first, second).upper, expected, promised);
  });

  it.each([
    [1e-6, 9, 40, 2.40550490836381e-26],
    [0.2, 300, 500, 4.68268284202334e-45],
  ])('a variance ratio below %d with %d and %d degrees of freedom', (f, first, second, expected) => {
    expectRelative(fTails(f, first, second).lower, expected, promised);
  });

  it.each([
    [16.79294099, 1, 4.16880910761336e-5],
    [1300, 2.5, 2.84879258599521e-282],
    [0.001, 3, 0.999991592080942],
    [1100, 1000, 0.0146144081262952],
    [700, 40, 1.87626757683296e-121],
  ])('chi-square above %d with %d degrees of freedom', (chiSquare, degreesOfFreedom, expected) => {
    expectRelative(chiSquareTails(chiSquare, degreesOfFreedom).upper, expected, promised);
  });

  it.each([
    [1e-100, 5, 5.31923040535244e-252],
    [30, 400, 6.92811513452368e-147],
  ])('chi-square below %d with %d degrees of freedom', (chiSquare, degreesOfFreedom, expected) => {
    expectRelative(chiSquareTails(chiSquare, degreesOfFreedom).lower, expected, promised);
  });
});

describe('the distributions keep twelve digits, about their middle too', () => {
  it.each([
    // p / (2 · density at 0), the density by mpmath.
    [1, 1.5707963267949e-300],
    [30, 1.26380011306166e-300],
    [Number.POSITIVE_INFINITY, 1.2533141373155e-300],
  ])('Student’s t within which 1e-300 lies, with %d degrees of freedom', (degreesOfFreedom, expected) => {
    const factor = studentTCoverageFactor(1e-300, degreesOfFreedom);
    expectRelative(factor, expected, promised);
    expectRelative(studentTTwoSided(factor, degreesOfFreedom).lower, 1e-300, promised);
  });

  it.each([
    [0.5, 0.5000000001, 3.52065355885514e-11],
    [-1e-300, 1e-300, 7.97884560802865e-301],
    [30, 30.00001, 1.47342510998102e-201],
    [-12.5, -12.499995, 2.34767104284479e-40],
    [3, 3.0003, 1.32895638356625e-6],
    [-0.2, -0.1996, 0.000156423330268766],
    [-1e-5, 3e-5, 1.59576912141956e-5],
  ])('a normal value between %d and %d', (from, to, expected) => {
    expectRelative(normalBetween(from, to), expected, promised);
  });
});

describe('what must hold between distributions, whatever the numbers', () => {
  const degrees = fc.double({ min: 0.5, max: 5000, noNaN: true });
  const chance = fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true });

  it('two degrees of freedom of chi-square are an exponential', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-6, max: 1300, noNaN: true }), (x) => {
        expectRelative(chiSquareTails(x, 2).upper, Math.exp(-x / 2), 1e-12);
        expectRelative(chiSquareTails(x, 2).lower, -Math.expm1(-x / 2), 1e-12);
      }),
    );
  });

  it('one degree of freedom of Student’s t is the arctangent, two are a square root', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-4, max: 1e6, noNaN: true }), (t) => {
        expectRelative(studentTTwoSided(t, 1).upper, (2 / Math.PI) * Math.atan(1 / t), 1e-12);
        expectRelative(studentTTwoSided(t, 2).lower, t / Math.sqrt(2 + t * t), 1e-12);
      }),
    );
  });

  it('a variance ratio turned over swaps its tails', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e3, noNaN: true }), degrees, degrees, (f, first, second) => {
        const { lower } = fTails(f, first, second);
        fc.pre(lower > 1e-300);
        expectRelative(fTails(1 / f, second, first).upper, lower, 1e-11);
      }),
    );
  });

  it('the smaller tail of the incomplete beta function obeys its recurrence in a', () => {
    // I_x(a, b) − I_x(a + 1, b) = x^a y^b / (a B(a, b)): DLMF 8.17.20, with the beta function of whole numbers by hand.
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 12 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (a, b, x) => {
          const y = 1 - x;
          let beta = 1 / a;
          for (let k = 1; k < b; k++) beta *= k / (a + k);
          const difference = incompleteBeta(a, b, x, y).lower - incompleteBeta(a + 1, b, x, y).lower;
          expect(difference).toBeCloseTo((x ** a * y ** b) / (a * beta), 12);
        },
      ),
    );
  });

  it('a gamma tail of a whole shape is a sum of Poisson terms', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), fc.double({ min: 0.01, max: 200, noNaN: true }), (shape, x) => {
        let term = Math.exp(-x);
        let sum = term;
        for (let k = 1; k < shape; k++) {
          term *= x / k;
          sum += term;
        }
        expectRelative(incompleteGamma(shape, x).upper, sum, 1e-11);
      }),
    );
  });

  it('the point that holds a probability holds that probability', () => {
    fc.assert(
      fc.property(chance, degrees, degrees, (probability, first, second) => {
        const smaller = (tails: { lower: number; upper: number }) => (probability < 0.5 ? tails.lower : tails.upper);
        const wanted = Math.min(probability, 1 - probability);
        expectRelative(smaller(studentTTwoSided(studentTCoverageFactor(probability, first), first)), wanted, 1e-10);
        expectRelative(smaller(studentTTails(studentTQuantile(probability, first), first)), wanted, 1e-7);
        expectRelative(smaller(fTails(fQuantile(probability, first, second), first, second)), wanted, 1e-10);
        expectRelative(smaller(chiSquareTails(chiSquareQuantile(probability, first), first)), wanted, 1e-10);
      }),
    );
  });

  it('endless degrees of freedom are the normal distribution', () => {
    expect(studentTCoverageFactor(0.95, Number.POSITIVE_INFINITY)).toBe(normalCoverageFactor(0.95));
    expectRelative(studentTCoverageFactor(0.95, 1e12), normalCoverageFactor(0.95), 1e-11);
    expect(studentTCoverageFactor(0.95, 1e308)).toBe(normalCoverageFactor(0.95));
  });

  it('a factor too large for a double is infinite, one that just fits is found', () => {
    // One degree of freedom in a hundred: the tail falls as t^−0.01, so ten times the tail is 1e100 times the factor.
    expect(studentTCoverageFactor(1 - 1e-15, 0.01)).toBe(Number.POSITIVE_INFINITY);
    expectRelative(studentTCoverageFactor(0.99, 0.01) / studentTCoverageFactor(0.9, 0.01), 1e100, 1e-9);
  });

  it('the probability between two points does not lose the digits of a narrow band', () => {
    // Φ(b) − Φ(a) for a tiny b − a is the density in the middle times the width.
    expectRelative(normalBetween(-5e-10, 5e-10), 1e-9 / Math.sqrt(2 * Math.PI), 1e-12);
    expectRelative(normalBetween(8, Number.POSITIVE_INFINITY), normalTails(8).upper, 1e-15);
    expect(normalBetween(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY)).toBe(1);
  });
});
