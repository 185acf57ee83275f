// Many factors tried at once: which of them stand up, when one false find in so many is allowed.
import { accept, type Result, refuse } from '../base/result.ts';
import { checkColumns } from './columns.ts';

export type FalseDiscovery = {
  /** In the order the p values were given. */
  readonly adjusted: readonly number[];
  readonly rejected: number;
};

/**
 * p values adjusted for the false discovery rate, and how many stand at the rate `q`. Refuses no p values and any
 * outside 0 to 1. Source: Y. Benjamini and Y. Hochberg, Journal of the Royal Statistical Society B 57, 1995, 289.
 */
export function falseDiscovery(p: readonly number[], q: number): Result<FalseDiscovery> {
  const checked = checkColumns({ p });
  if (!checked.ok) return checked;
  if (p.length === 0) return refuse('too-few', 'There is no p value to adjust.');
  if (!p.every((each) => each >= 0 && each <= 1)) return refuse('not-a-probability', 'p values lie between 0 and 1.');
  const order = [...p.keys()].sort((a, b) => p[b]! - p[a]!);
  const adjusted = new Array<number>(p.length);
  let least = 1;
  order.forEach((place, fromLast) => {
    const rank = p.length - fromLast;
    least = Math.min(least, p[place]! * (p.length / rank));
    adjusted[place] = least;
  });
  // The last digit of a product must not decide.
  return accept({ adjusted, rejected: adjusted.filter((each) => each <= q * (1 + 1e-12)).length });
}
