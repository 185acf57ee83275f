// Fisher’s test and false discovery against slower, obvious forms.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { falseDiscovery } from '../../app/statistics/false-discovery.ts';
import { fisher } from '../../app/statistics/fisher.ts';
import { binomial, ratio } from './fixed-point.ts';
import { expectRelative } from './relative.ts';
import { accepted, expectRefusal } from './result.ts';

const count = fc.integer({ min: 0, max: 9 });

/** Whole-number binomials, exact for these sizes. */
function choose(n: number, k: number): number {
  let product = 1;
  for (let i = 1; i <= k; i++) product = (product * (n - k + i)) / i;
  return Math.round(product);
}

describe('Fisher’s exact test', () => {
  it('agrees with counting every table', () => {
    fc.assert(
      fc.property(count, count, count, count, (a, b, c, d) => {
        const result = fisher([
          [a, b],
          [c, d],
        ]);
        fc.pre(result.ok);
        const found = accepted(result);
        const [row, column, all] = [a + b, a + c, a + b + c + d];
        const ways = (x: number) =>
          x < 0 || column - x < 0 || column - x > all - row || x > row
            ? 0
            : choose(row, x) * choose(all - row, column - x);
        const tables = Array.from({ length: column + 1 }, (_, x) => ways(x));
        const part = (keep: (x: number) => boolean) =>
          tables.reduce((sum, each, x) => (keep(x) ? sum + each : sum), 0) / choose(all, column);
        expectRelative(
          found.pLess,
          part((x) => x <= a),
          1e-12,
        );
        expectRelative(
          found.pGreater,
          part((x) => x >= a),
          1e-12,
        );
        expectRelative(
          found.pTwoSided,
          part((x) => ways(x) <= ways(a)),
          1e-12,
        );
        if (found.oddsRatio !== null && found.oddsRatio > 0) {
          const weighted = tables.map((each, x) => each * found.oddsRatio! ** x);
          const total = weighted.reduce((sum, each) => sum + each, 0);
          expectRelative(weighted.reduce((sum, each, x) => sum + each * x, 0) / total, a, 1e-9);
        }
      }),
    );
  });

  it('turning the table over turns the odds over', () => {
    fc.assert(
      fc.property(count, count, count, count, (a, b, c, d) => {
        const [straight, turned] = [
          fisher([
            [a, b],
            [c, d],
          ]),
          fisher([
            [b, a],
            [d, c],
          ]),
        ];
        fc.pre(straight.ok);
        const [found, other] = [accepted(straight), accepted(turned)];
        expectRelative(other.pTwoSided, found.pTwoSided, 1e-9);
        const turnOver = (odds: number | null) => (odds === null ? 0 : odds === 0 ? null : 1 / odds);
        const pairs = [
          [other.oddsRatio, turnOver(found.oddsRatio)],
          [other.interval[0], turnOver(found.interval[1])],
          [other.interval[1], turnOver(found.interval[0])],
        ] as const;
        for (const [actual, expected] of pairs) {
          if (expected === null) expect(actual).toBeNull();
          else expectRelative(actual, expected, 1e-8);
        }
      }),
    );
  });

  it('with thousands counted agrees with whole numbers of any length, far into its tails', () => {
    for (const [a, b, c, d] of [
      [1000, 900, 800, 1100],
      [40, 1900, 160, 1800],
      [700, 100, 150, 650],
    ] as const) {
      const [row, other, column] = [BigInt(a + b), BigInt(c + d), BigInt(a + c)];
      // Each way to fill the table from the one before: exact, because the product is a whole number.
      const lowest = column > other ? column - other : 0n;
      let ways = binomial(row, lowest) * binomial(other, column - lowest);
      let [less, greater, all] = [0n, 0n, 0n];
      for (let x = lowest; x <= row && x <= column; x++) {
        all += ways;
        if (x <= BigInt(a)) less += ways;
        if (x >= BigInt(a)) greater += ways;
        ways = (ways * (row - x) * (column - x)) / ((x + 1n) * (other - column + x + 1n));
      }
      const found = accepted(
        fisher([
          [a, b],
          [c, d],
        ]),
      );
      expectRelative(found.pLess, ratio(less, all), 1e-11);
      expectRelative(found.pGreater, ratio(greater, all), 1e-11);
    }
  });

  it('with a million counted has the odds ratio and limits of the normal approximation, and refuses more', () => {
    // log odds ± 1.96 √(1/a + 1/b + 1/c + 1/d): B. Woolf, Annals of Human Genetics 19, 1955, 251; good to about 1/√n.
    const found = accepted(
      fisher([
        [250_000, 250_000],
        [250_300, 249_000],
      ]),
    );
    const logOdds = Math.log((250_000 * 249_000) / (250_000 * 250_300));
    const reach = 1.959964 * Math.sqrt(2 / 250_000 + 1 / 250_300 + 1 / 249_000);
    expectRelative(found.oddsRatio, Math.exp(logOdds), 1e-6);
    expectRelative(found.interval[0], Math.exp(logOdds - reach), 1e-4);
    expectRelative(found.interval[1], Math.exp(logOdds + reach), 1e-4);
    expectRefusal(
      fisher([
        [250_000, 250_000],
        [250_300, 249_701],
      ]),
      'too-large',
    );
  });

  it('a table that chance would never bring has a p of zero and limits all the same', () => {
    const found = accepted(
      fisher([
        [300_000, 1000],
        [1000, 300_000],
      ]),
    );
    expect(found).toMatchObject({ pTwoSided: 0, pLess: 1, pGreater: 0 });
    expect(found.interval[0]).toBeLessThan(found.oddsRatio!);
    expect(found.interval[1]).toBeGreaterThan(found.oddsRatio!);
  });

  it('a cell that can go no lower or higher has an odds ratio of zero or without limit', () => {
    expect(
      accepted(
        fisher([
          [0, 5],
          [5, 0],
        ]),
      ),
    ).toMatchObject({ oddsRatio: 0, interval: [0, expect.any(Number)] });
    expect(
      accepted(
        fisher([
          [5, 0],
          [0, 5],
        ]),
      ),
    ).toMatchObject({ oddsRatio: null, interval: [expect.any(Number), null] });
  });

  it('refuses an empty row or column, and counts that are none', () => {
    expectRefusal(
      fisher([
        [0, 0],
        [3, 4],
      ]),
      'empty-margin',
    );
    expectRefusal(
      fisher([
        [0, 3],
        [0, 4],
      ]),
      'empty-margin',
    );
    expectRefusal(
      fisher([
        [1.5, 2],
        [3, 4],
      ]),
      'not-a-count',
    );
    expectRefusal(
      fisher([
        [-1, 2],
        [3, 4],
      ]),
      'not-a-count',
    );
  });
});

describe('false discovery', () => {
  const chances = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 30 });

  it('adjusts as the definition says, one by one', () => {
    fc.assert(
      fc.property(chances, (p) => {
        const { adjusted } = accepted(falseDiscovery(p, 0.1));
        const sorted = p.toSorted((a, b) => a - b);
        p.forEach((each, i) => {
          const later = sorted.map((other, j) => (other >= each ? (other * p.length) / (j + 1) : 1));
          expect(adjusted[i]).toBeCloseTo(Math.min(1, ...later), 12);
          expect(adjusted[i]).toBeGreaterThanOrEqual(each);
        });
      }),
    );
  });

  it('refuses what is no probability, and nothing at all', () => {
    expectRefusal(falseDiscovery([0.5, 1.5], 0.05), 'not-a-probability');
    expectRefusal(falseDiscovery([Number.NaN], 0.05), 'not-finite');
    expectRefusal(falseDiscovery([], 0.05), 'too-few');
  });
});
