// By how much one person's feeler gauge reads above the air on one pack: learned from spots that were read both ways.
import { centreInUnits, meanOf } from '../statistics/summary.ts';

/** Fewer pairs than this never change a reading. Common practice, no source. */
export const enoughPairs = 8;

/** What the pairs say. With too few of them there is a count and nothing else, so that nothing can be applied. */
export type LearnedFeelerBias =
  | { readonly applies: false; readonly pairs: number }
  | {
      readonly applies: true;
      readonly pairs: number;
      /** Mean of feeler − air: what to take off a feeler reading. */
      readonly bias: number;
      /** Of that mean: s / √pairs. */
      readonly standardUncertainty: number;
      /** Of one difference. */
      readonly standardDeviation: number;
    };

/**
 * The bias from `differences`, each the mean by feeler − the mean by air of one mock-up, one person’s on one pack, in one length unit.
 * Says only how many there are until there are `enoughPairs`. Source: JCGM 100:2008 4.2.1 to 4.2.3.
 */
export function feelerBias(differences: readonly number[]): LearnedFeelerBias {
  const pairs = differences.length;
  if (pairs < enoughPairs) return { applies: false, pairs };
  const { unit, sumOfSquares } = centreInUnits(differences);
  const standardDeviation = unit * Math.sqrt(sumOfSquares / (pairs - 1));
  return {
    applies: true,
    pairs,
    bias: meanOf(differences),
    standardUncertainty: standardDeviation / Math.sqrt(pairs),
    standardDeviation,
  };
}
