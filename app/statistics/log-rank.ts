// Whether groups come back at different rates, over the whole time they were followed.
import { accept, type Result, refuse } from '../base/result.ts';
import { chiSquareTails } from './chi-square.ts';
import { type FollowUp, type OrderedFollowUp, orderFollowUp } from './follow-up.ts';

export type LogRank = {
  readonly groups: readonly {
    readonly name: string | number;
    readonly n: number;
    readonly observed: number;
    /** What would be expected if all groups came back alike. */
    readonly expected: number;
  }[];
  readonly chiSquare: number;
  readonly degreesOfFreedom: number;
  readonly p: number;
};

const mostGroups = 200;

/**
 * The log-rank test for two groups or more, named in the order they first appear. Refuses what `orderFollowUp` refuses, a
 * single group, more than 200, and groups that were never at risk together.
 * Source: N. Mantel, Cancer Chemotherapy Reports 50, 1966, 163; hypergeometric variance at ties.
 */
export function logRank(followUp: FollowUp, group: readonly (string | number)[]): Result<LogRank> {
  if (group.length !== followUp.time.length) {
    return refuse('different-lengths', 'time, event, group must be equally long.');
  }
  const ordered = orderFollowUp(followUp);
  if (!ordered.ok) return ordered;
  const places = new Map<string | number, number>();
  for (const name of group) if (!places.has(name)) places.set(name, places.size);
  if (places.size < 2) return refuse('one-group', 'Comparing groups needs at least two of them.');
  if (places.size > mostGroups) return refuse('too-many-groups', `More than ${mostGroups} groups cannot be compared.`);
  const groupOf = group.map((name) => places.get(name)!);
  const sizes = new Array<number>(places.size).fill(0);
  for (const each of groupOf) sizes[each]! += 1;
  const { observed, expected, covariance } = tally(ordered.value, groupOf, sizes);
  const solved = quadraticForm(
    covariance,
    observed.map((each, i) => each - expected[i]!),
  );
  if (solved.rank === 0) return refuse('never-together', 'No two groups were at risk at the time of any event.');
  return accept({
    groups: [...places.keys()].map((name, i) => ({
      name,
      n: sizes[i]!,
      observed: observed[i]!,
      expected: expected[i]!,
    })),
    chiSquare: solved.value,
    degreesOfFreedom: solved.rank,
    p: chiSquareTails(solved.value, solved.rank).upper,
  });
}

function tally({ order, moments }: OrderedFollowUp, groupOf: readonly number[], sizes: readonly number[]) {
  const atRisk = [...sizes];
  const observed = sizes.map(() => 0);
  const expected = sizes.map(() => 0);
  const covariance = sizes.map(() => sizes.map(() => 0));
  for (const { first, events, next } of moments) {
    const all = order.length - first;
    const factor = all > 1 ? (events * (all - events)) / (all - 1) : 0;
    for (let i = 0; events > 0 && i < sizes.length; i++) {
      const share = atRisk[i]! / all;
      if (share === 0) continue;
      expected[i]! += events * share;
      const row = covariance[i]!;
      for (let j = 0; j < i; j++) row[j]! -= factor * share * (atRisk[j]! / all);
      row[i]! += factor * share * (1 - share);
    }
    for (let place = first; place < next; place++) {
      const of = groupOf[order[place]!]!;
      atRisk[of]! -= 1;
      if (place < first + events) observed[of]! += 1;
    }
  }
  return { observed, expected, covariance };
}

/**
 * dᵀ V⁻ d and the rank of V, by a Cholesky factor of the lower triangle that always takes the largest variance left.
 * The groups' counts add up, so V has at least one direction of no variance.
 */
function quadraticForm(covariance: readonly number[][], deviations: readonly number[]) {
  const matrix = covariance.map((row) => [...row]);
  const rest = [...deviations];
  const open = new Set(rest.keys());
  const entry = (i: number, j: number) => (i >= j ? matrix[i]![j]! : matrix[j]![i]!);
  const smallest = 1e-10 * Math.max(...rest.map((_, i) => entry(i, i)));
  let value = 0;
  let rank = 0;
  while (open.size > 0) {
    const pivot = [...open].reduce((best, i) => (entry(i, i) > entry(best, best) ? i : best));
    const variance = entry(pivot, pivot);
    if (!(variance > smallest)) break;
    open.delete(pivot);
    const column = new Map([...open].map((i) => [i, entry(i, pivot)]));
    value += (rest[pivot]! * rest[pivot]!) / variance;
    rank += 1;
    for (const [i, ofI] of column) {
      rest[i]! -= (ofI / variance) * rest[pivot]!;
      for (const [j, ofJ] of column) if (j <= i) matrix[i]![j]! -= (ofI * ofJ) / variance;
    }
  }
  return { value, rank };
}
