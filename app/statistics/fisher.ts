// Two by two: whether one group comes back more often than another, exactly, however few there are.
import { accept, type Result, refuse } from '../base/result.ts';
import { rootBeside } from './root.ts';

export type TwoByTwo = readonly [readonly [a: number, b: number], readonly [c: number, d: number]];

export type Fisher = {
  /** Tables as likely as this one or less, within 1e-7. */
  readonly pTwoSided: number;
  readonly pLess: number;
  readonly pGreater: number;
  /** Conditional maximum likelihood, which is not ad/bc; null: without limit. */
  readonly oddsRatio: number | null;
  /** Exact 95 % limits, 2.5 % on either side; null: without limit. */
  readonly interval: readonly [lower: number, upper: number | null];
};

const mostCounted = 1_000_000;

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
  const lowest = Math.max(0, firstColumn - secondRow);
  const highest = Math.min(firstRow, firstColumn);
  // log of the weight of each value of the first cell, by ratios of neighbours.
  const logWeights = [0];
  for (let x = lowest; x < highest; x++) {
    const ratio = ((firstRow - x) / (x + 1)) * ((firstColumn - x) / (secondRow - firstColumn + x + 1));
    logWeights.push(logWeights.at(-1)! + Math.log(ratio));
  }
  const seen = a - lowest;
  const chances = chancesAt(logWeights, 0);
  const add = (from: number, to: number, of: readonly number[]) => {
    let sum = 0;
    for (let i = from; i <= to; i++) sum += of[i]!;
    return Math.min(1, sum);
  };
  const last = highest - lowest;
  // Each limit makes what was seen, or more of it, a matter of 2.5 %.
  const tailLess = (logOdds: number) => Math.log(add(0, seen, chancesAt(logWeights, logOdds)) / 0.025);
  const tailGreater = (logOdds: number) => Math.log(add(seen, last, chancesAt(logWeights, logOdds)) / 0.025);
  const meanLess = (logOdds: number) =>
    chancesAt(logWeights, logOdds).reduce((sum, chance, i) => sum + chance * (i - seen), 0);
  const oddsOf = (logOdds: number | null) => (logOdds === null ? null : finiteOrNull(Math.exp(logOdds)));
  return accept({
    pTwoSided: Math.min(
      1,
      chances.reduce((sum, chance) => (chance <= chances[seen]! * (1 + 1e-7) ? sum + chance : sum), 0),
    ),
    pLess: add(0, seen, chances),
    pGreater: add(seen, last, chances),
    oddsRatio: a === lowest ? 0 : a === highest ? null : oddsOf(rootOfEither(meanLess)),
    interval: [
      a === lowest ? 0 : Math.exp(rootOfEither(tailGreater) ?? Number.NEGATIVE_INFINITY),
      a === highest ? null : oddsOf(rootOfEither(tailLess)),
    ],
  });
}

function chancesAt(logWeights: readonly number[], logOdds: number): number[] {
  const tilted = logWeights.map((weight, i) => weight + i * logOdds);
  const largest = tilted.reduce((most, each) => Math.max(most, each));
  const weights = tilted.map((each) => Math.exp(each - largest));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / total);
}

/** The functions here pass through zero once, on one side of no effect or the other. */
function rootOfEither(f: (logOdds: number) => number): number | null {
  if (f(0) === 0) return 0;
  return rootBeside(f, 0, 1, 12) ?? rootBeside(f, 0, -1, 12);
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
