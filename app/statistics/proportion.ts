// How sure a share is that was counted: so many of so many.
import { accept, type Result, refuse } from '../base/result.ts';
import { normalCoverageFactor } from './normal.ts';

export type Proportion = { readonly share: number; readonly lower: number; readonly upper: number };

/**
 * The share of `of` that are so, with 95 % limits by the score of the binomial. Refuses counts that are not whole, nobody
 * counted, and more that are so than there are.
 * Source: E. Wilson, JASA 22, 1927, 209; R. Newcombe, Statistics in Medicine 17, 1998, 857, method 3.
 */
export function proportion(count: number, of: number): Result<Proportion> {
  if (![count, of].every((each) => Number.isSafeInteger(each) && each >= 0)) {
    return refuse('not-a-count', 'Both counts are whole numbers, zero or more.');
  }
  if (of === 0) return refuse('nobody', 'Nobody was counted, so there is no share.');
  if (count > of) return refuse('more-than-all', 'More were counted than there are.');
  const z2 = normalCoverageFactor(0.95) ** 2;
  const share = count / of;
  const middle = (count + z2 / 2) / (of + z2);
  const reach = (Math.sqrt(z2) * Math.sqrt((count * (of - count)) / of + z2 / 4)) / (of + z2);
  return accept({
    share,
    // At either end the limit is the end itself, which the difference only comes near to.
    lower: count === 0 ? 0 : middle - reach,
    upper: count === of ? 1 : middle + reach,
  });
}
