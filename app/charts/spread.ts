// Moves labels as little as possible so that none lies on its neighbour.

/** `from` and `to` are the room the label takes before and after its position. */
export type Spreadable = { readonly wanted: number; readonly before: number; readonly after: number };

/**
 * Positions in the given order, nearest in the sum of squares to the wanted ones, such that each label's room ends
 * before the next begins and all lie between `least` and `most` (if they fit there at all: otherwise they start at
 * `least`). Pool adjacent violators (Ayer et al. 1955) on the wanted positions less the room already taken.
 */
export function spread(labels: readonly Spreadable[], least: number, most: number): readonly number[] {
  const taken: number[] = [];
  let room = 0;
  for (const [index, label] of labels.entries()) {
    const previous = labels[index - 1];
    room += previous === undefined ? 0 : previous.after + label.before;
    taken.push(room);
  }
  const pools: Array<{ sum: number; count: number }> = [];
  for (const [index, label] of labels.entries()) {
    pools.push({ sum: label.wanted - taken[index]!, count: 1 });
    while (pools.length > 1) {
      const last = pools[pools.length - 1]!;
      const before = pools[pools.length - 2]!;
      if (before.sum / before.count <= last.sum / last.count) break;
      pools.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  }
  const first = labels[0];
  const final = labels[labels.length - 1];
  if (first === undefined || final === undefined) return [];
  const lowest = least + first.before;
  const highest = most - final.after - room;
  return pools
    .flatMap((pool) => Array.from({ length: pool.count }, () => pool.sum / pool.count))
    .map((position, index) => Math.max(lowest, Math.min(highest, position)) + taken[index]!);
}
