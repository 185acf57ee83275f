// How unusual one build is beside the others, by ranks and by counting: nothing is assumed about their spread.

/** With fewer others than these a build is told, not ranked. */
export const enoughSiblings = 8;
/** As unusual as this, or more, is called unusual: one build in twenty. */
export const unusualBelow = 0.05;
/** As unusual as this it may speak for or against a cause: one build in ten. */
export const tellsFrom = 0.1;

export function isUnusual({ p }: { readonly p: number | null }): boolean {
  return p !== null && p <= unusualBelow;
}

export type Unusual = {
  /**
   * The chance that a build taken at random from all of them, this one among them, lies as far out as this one or
   * further: exact, because before it came back it was as likely as any other to be any of them.
   */
  readonly p: number;
  /** The chance that a build taken at random lies far enough out to be called unusual. */
  readonly byChance: number;
};

export type Place = Unusual & {
  readonly below: number;
  readonly equal: number;
  readonly above: number;
  /** How far from the middle of the others, in widths of their middle half; breaks ties of p. */
  readonly distance: number;
  readonly middle: number;
};

/**
 * Where `amount` lies among `others`, at least one: p is twice its rank from the nearer end over the number of all, itself
 * among them, and at most 1; amounts that are equal share their middle rank.
 * Source: the rank of one exchangeable observation is uniform (E. Lehmann, Nonparametrics, 1975, 1.1); two-sided by
 * doubling.
 */
export function placeAmong(amount: number, others: readonly number[]): Place {
  const all = [...others, amount].toSorted((a, b) => a - b);
  let [below, equal, unusual] = [0, 0, 0];
  let p = 1;
  for (let start = 0; start < all.length; ) {
    let end = start + 1;
    while (end < all.length && all[end] === all[start]) end += 1;
    const here = rankChance(start, end, all.length);
    if (here <= unusualBelow) unusual += end - start;
    if (all[start] === amount) [below, equal, p] = [start, end - start - 1, here];
    start = end;
  }
  const sorted = others.toSorted((a, b) => a - b);
  const middle = quantile(sorted, 0.5);
  const width = quantile(sorted, 0.75) - quantile(sorted, 0.25);
  const away = Math.abs(amount - middle);
  return {
    p,
    byChance: unusual / all.length,
    below,
    equal,
    above: others.length - below - equal,
    distance: away === 0 ? 0 : width === 0 ? Number.MAX_VALUE : away / width,
    middle,
  };
}

/** Of the tied places from `start` up to `end` in order, `end` left out. */
function rankChance(start: number, end: number, count: number): number {
  const fromLow = (start + 1 + end) / 2;
  return Math.min(1, (2 * Math.min(fromLow, count + 1 - fromLow)) / count);
}

export type Share = Unusual & {
  /** How many of the others are alike, of how many. */
  readonly alike: number;
  readonly of: number;
  /** What most of the others are, and how many of them. */
  readonly commonest: string;
  readonly commonestCount: number;
};

/**
 * How many of `others`, at least one, are alike in a word: p is the share of all builds, this one among them, whose word
 * is no commoner than its own. Where there are two words that is the share of those alike.
 */
export function shareAlike(word: string, others: readonly string[]): Share {
  const counts = new Map<string, number>();
  for (const each of [word, ...others]) counts.set(each, (counts.get(each) ?? 0) + 1);
  const sizes = [...counts.values()];
  const all = others.length + 1;
  const noCommonerThan = (size: number) => sum(sizes.filter((each) => each <= size)) / all;
  const own = counts.get(word) ?? 1;
  const alike = own - 1;
  // Among the others alone, so that one build does not outvote them.
  const [commonest, commonestCount] = [...counts]
    .map(([each, count]) => [each, each === word ? alike : count] as const)
    .reduce((most, each) => (each[1] > most[1] ? each : most));
  return {
    p: noCommonerThan(own),
    byChance: sum(sizes.filter((size) => noCommonerThan(size) <= unusualBelow)) / all,
    alike,
    of: others.length,
    commonest,
    commonestCount,
  };
}

function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const [low, high] = [sorted[Math.floor(at)] ?? 0, sorted[Math.ceil(at)] ?? 0];
  return low + (high - low) * (at - Math.floor(at));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
