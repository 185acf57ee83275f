// Two by two: whether one group comes back more often than another, exactly, however few there are.
import { accept, type Result, refuse } from '../base/result.ts';
import { rootBeside } from './root.ts';

export type TwoByTwo = readonly [readonly [a: number, b: number], readonly [c: number, d: number]];

export type Fisher = {
  /** Tables as likely as this one or less, within 1e-7; like the other two 0 where it is below 1e-307. */
  readonly pTwoSided: number;
  readonly pLess: number;
  readonly pGreater: number;
  /** Conditional maximum likelihood, which is not ad/bc; null: without limit. */
  readonly oddsRatio: number | null;
  /** Exact 95 % limits, 2.5 % on either side; null: without limit. */
  readonly interval: readonly [lower: number, upper: number | null];
};

const mostCounted = 1_000_000;
/** Below this a chance has lost digits to the end of the range of doubles, and 0 is said. */
const leastTold = 1e-307;

/**
 * Fisher's exact test given both margins. Refuses counts that are not whole and zero or more, a table with an empty row
 * or column, which says nothing, and more than a million counted.
 * Source: R. Fisher, The Design of Experiments, 1935; A. Agresti, Categorical Data Analysis, 2nd edition, 3.5.
 */
export function fisher([[a, b], [c, d]]: TwoByTwo): Result<Fisher> {
  if (![a, b, c, d].every((count) => Number.isSafeInteger(count) && count >= 0)) {
    return refuse('not-a-count', 'Every cell of the table is a whole number, zero or more.');
  }
  const [firstRow, secondRow, firstColumn] = [a + b, c + d, a + c];
  if ([firstRow, secondRow, firstColumn, b + d].includes(0)) {
    return refuse('empty-margin', 'A row or a column of the table is empty, so it compares nothing.');
  }
  if (firstRow + secondRow > mostCounted) return refuse('too-large', 'More than a million counted is too many here.');
  const table: Margins = { firstRow, secondRow, firstColumn };
  const [lowest, highest] = endsOf(table);
  const chances = chancesAt(table, 1, 0);
  const oddsOf = (logOdds: number | null) => (logOdds === null ? null : finiteOrNull(Math.exp(logOdds)));
  // What is solved for is never small, so terms below its last digit are left out.
  const tilted = (logOdds: number) => chancesAt(table, Math.exp(logOdds), 1e-25);
  // Each limit makes what was seen, or more of it, a matter of 2.5 %.
  const tailLess = (logOdds: number) => Math.log(tilted(logOdds).upTo(a) / 0.025);
  const tailGreater = (logOdds: number) => Math.log(tilted(logOdds).from(a) / 0.025);
  const meanLess = (logOdds: number) => tilted(logOdds).meanLess(a);
  return accept({
    pTwoSided: told(chances.asUnlikelyAs(a)),
    pLess: told(chances.upTo(a)),
    pGreater: told(chances.from(a)),
    oddsRatio: a === lowest ? 0 : a === highest ? null : oddsOf(rootOfEither(meanLess)),
    interval: [
      a === lowest ? 0 : Math.exp(rootOfEither(tailGreater) ?? Number.NEGATIVE_INFINITY),
      a === highest ? null : oddsOf(rootOfEither(tailLess)),
    ],
  });
}

function told(chance: number): number {
  return chance < leastTold ? 0 : Math.min(1, chance);
}

type Margins = { readonly firstRow: number; readonly secondRow: number; readonly firstColumn: number };

/** The least and the most that the first cell can hold. */
function endsOf({ firstRow, secondRow, firstColumn }: Margins): [lowest: number, highest: number] {
  return [Math.max(0, firstColumn - secondRow), Math.min(firstRow, firstColumn)];
}

/**
 * The chances of every value of the first cell at one odds ratio. They are worked outward from the likeliest value by
 * ratios of neighbours while they are more than `least` of it: a few thousand terms however many were counted.
 */
function chancesAt(table: Margins, oddsRatio: number, least: number) {
  const { firstRow, secondRow, firstColumn } = table;
  const [lowest, highest] = endsOf(table);
  /** The chance of x + 1 over that of x; it falls as x grows. */
  const rise = (x: number) =>
    oddsRatio * ((firstRow - x) / (x + 1)) * ((firstColumn - x) / (secondRow - firstColumn + x + 1));
  let [likeliest, beyond] = [lowest, highest];
  while (likeliest < beyond) {
    const middle = Math.floor((likeliest + beyond) / 2);
    if (rise(middle) >= 1) likeliest = middle + 1;
    else beyond = middle;
  }
  const below: number[] = [];
  for (let x = likeliest, weight = 1; x > lowest; x--) {
    weight /= rise(x - 1);
    if (!(weight > least)) break;
    below.push(weight);
  }
  const above: number[] = [];
  for (let x = likeliest, weight = 1; x < highest; x++) {
    weight *= rise(x);
    if (!(weight > least)) break;
    above.push(weight);
  }
  const first = likeliest - below.length;
  const weights = [...below.reverse(), 1, ...above];
  // Smallest first on either side, so that a long tail keeps its digits.
  const part = (from: number, to: number) => {
    let [small, large] = [0, 0];
    for (let i = Math.max(0, from - first); i <= Math.min(to, likeliest) - first; i++) small += weights[i]!;
    for (let i = Math.min(weights.length - 1, to - first); i > likeliest - first && i >= from - first; i--) {
      large += weights[i]!;
    }
    return small + large;
  };
  const total = part(lowest, highest);
  return {
    upTo: (x: number) => part(lowest, x) / total,
    from: (x: number) => part(x, highest) / total,
    /** All values as likely as `x` or less, within 1e-7. */
    asUnlikelyAs: (x: number) => {
      const most = (weights[x - first] ?? 0) * (1 + 1e-7);
      return weights.reduce((sum, weight) => (weight <= most ? sum + weight : sum), 0) / total;
    },
    meanLess: (x: number) => weights.reduce((sum, weight, i) => sum + weight * (first + i - x), 0) / total,
  };
}

/** The functions here pass through zero once, on one side of no effect or the other. */
function rootOfEither(f: (logOdds: number) => number): number | null {
  if (f(0) === 0) return 0;
  return rootBeside(f, 0, 1, 12) ?? rootBeside(f, 0, -1, 12);
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
