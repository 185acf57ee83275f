// Adds up again what a bin can do for packs, from the question alone: shares no code with the search.
import type { CoverAnswer, CoverQuestion } from './cover-gaps.ts';

/** What is wrong with an answer to `coverPacks`, one sentence each; empty when everything adds up. */
export function problemsInCover({ packs, bin, swaps = 1, ...sale }: CoverQuestion, answer: CoverAnswer): string[] {
  const problems: string[] = [];
  if (answer.packs.length !== packs.length) return ['There is not one line for every pack.'];
  let covered = 0;
  for (const [place, line] of answer.packs.entries()) {
    const name = `Pack ${place + 1}`;
    const { fitted, clearance, lower, upper } = packs[place]!;
    const isOutside = (value: number) => (lower !== null && value < lower) || (upper !== null && value > upper);
    if (line.swaps !== null) covered++;
    if (line.remove.length !== (line.swaps ?? 0)) problems.push(`${name} takes out another number of pieces.`);
    if (line.add.length !== line.remove.length) problems.push(`${name} does not fill its slots.`);
    if (line.remove.length > swaps) problems.push(`${name} makes more changes than were asked for.`);
    for (const height of line.remove) {
      const times = line.remove.filter((each) => each === height).length;
      if (times > fitted.filter((each) => each === height).length) problems.push(`${name} loses a piece it has not.`);
    }
    for (const height of line.add) {
      let there = 0;
      for (const loose of bin) if (loose.height === height) there += loose.count;
      if (line.add.filter((each) => each === height).length > there) problems.push(`${name} uses a piece twice.`);
    }
    let sum = clearance;
    for (const height of line.remove) sum += height;
    for (const height of line.add) sum -= height;
    if (sum !== line.clearance) problems.push(`${name} has another clearance.`);
    if (isOutside(sum) !== (line.swaps === null)) problems.push(`${name} is not where its line says.`);
  }
  if (covered !== answer.covered) problems.push('The number of packs covered is wrong.');
  let before = 0;
  for (const { heights, packs: helped } of answer.buy) {
    const name = `Buying ${heights.join(' and ')}`;
    if (helped.length <= before) problems.push(`${name} covers no more than less would.`);
    before = helped.length;
    if (heights.some((height) => !sale.forSale?.includes(height))) problems.push(`${name} is not for sale.`);
    if (new Set(heights).size < heights.length) problems.push(`${name} buys a height twice.`);
    if (heights.length > (sale.most ?? 2)) problems.push(`${name} buys more than was asked for.`);
    for (const [place, { fitted, clearance, lower, upper }] of packs.entries()) {
      const canHelp = heights.some((bought) =>
        fitted.some((out) => {
          const then = clearance + out - bought;
          return then >= (lower ?? then) && then <= (upper ?? then);
        }),
      );
      const isHelped = canHelp && answer.packs[place]?.swaps === null;
      if (helped.includes(place) !== isHelped) problems.push(`${name} is wrong about pack ${place + 1}.`);
    }
  }
  return problems;
}
