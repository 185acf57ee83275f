// Adds every answer up again, from the question alone: shares no code with the search, so that a slip there shows here.

import type { JointPlan } from './best-sharing.ts';
import type { JointPurchase } from './joint-purchase.ts';
import type { JointRequest } from './joint-request.ts';
import type { SwapAnswer } from './next-swaps.ts';
import type { PlateRequest, PlateSelection, PlatesToBuy } from './select-plates.ts';
import type { JointSelection } from './select-plates-jointly.ts';
import type { SwapQuestion } from './swap-question.ts';

const rounding = 1e-6;

type Plan = {
  readonly changes: number;
  readonly remove: readonly string[];
  readonly add: readonly { readonly id: string; readonly group: string; readonly height: number }[];
  readonly clearance: number;
};
type Bought = { readonly group: string; readonly height: number; readonly pieces: number };

/** What is wrong with an answer to `nextSwaps`, one sentence each; empty when everything adds up. */
export function problemsInSwaps(question: SwapQuestion, answer: SwapAnswer): string[] {
  const problems: string[] = [];
  for (const option of answer.options) {
    const name = `The plan with ${option.changes} changes`;
    for (const set of option.equallyGood) {
      const clearance = addUp(question, { ...option, ...set }, problems, name);
      const deviation = Math.abs(clearance - question.target);
      if (Math.abs(deviation - option.absoluteDeviation) > rounding) problems.push(`${name} misses by another amount.`);
    }
    if (Math.abs(addUp(question, option, problems, name) - option.clearance) > rounding) {
      problems.push(`${name} has another clearance.`);
    }
    if (question.band && option.chance !== question.band.chance(option.clearance, option.variance)) {
      problems.push(`${name} has another chance.`);
    }
  }
  if (answer.status === 'Optimal') return problems;
  const name = 'The plan nearest to the band';
  if (Math.abs(addUp(question, answer.nearest, problems, name) - answer.nearest.clearance) > rounding) {
    problems.push(`${name} has another clearance.`);
  }
  if (isInside(question, answer.nearest.clearance)) problems.push(`${name} is inside it.`);
  if (answer.buy !== null) {
    const name = 'The plan with a bought piece';
    const clearance = addUp(question, answer.buy, problems, name, answer.buy);
    if (Math.abs(clearance - answer.buy.clearance) > rounding) problems.push(`${name} has another clearance.`);
    if (!isInside(question, clearance)) problems.push(`${name} is outside the band.`);
    if (!(answer.buy.pieces >= 1)) problems.push(`${name} buys nothing.`);
  }
  return problems;
}

function isInside({ band }: SwapQuestion, clearance: number): boolean {
  const { lower = null, upper = null } = band ?? {};
  return (lower === null || clearance >= lower - rounding) && (upper === null || clearance <= upper + rounding);
}

/** The clearance of a plan, added up piece by piece; notes pieces that are not there, not enough, or in the wrong slot. */
function addUp(question: SwapQuestion, plan: Plan, problems: string[], name: string, bought?: Bought): number {
  const leaving = new Set(plan.remove);
  if (leaving.size !== plan.changes) problems.push(`${name} takes out ${leaving.size} pieces.`);
  const perClass = [0, 0, 0, 0, 0, 0];
  let inPack = 0;
  let bit = 1;
  let known = 0;
  let heights = 0;
  for (const { name: group, fitted, readBefore = [], loose, forSale } of question.groups) {
    const coming = plan.add.filter((piece) => piece.group === group);
    const emptied = fitted.filter(({ id }) => leaving.has(id)).length;
    const fromShop = bought?.group === group ? bought.pieces : 0;
    known += emptied;
    if (coming.length + fromShop !== emptied) problems.push(`${name} does not fill the slots of ${group}.`);
    for (const { id } of fitted) {
      if (!leaving.has(id)) inPack |= bit;
      bit *= 2;
    }
    for (const { id } of readBefore) {
      if (coming.some((piece) => piece.id === id)) inPack |= bit;
      bit *= 2;
    }
    for (const piece of coming) {
      const bin = loose.find(({ id }) => id === piece.id);
      const known = bin ?? readBefore.find(({ id }) => id === piece.id);
      const used = coming.filter(({ id }) => id === piece.id).length;
      if (known?.height !== piece.height || used > (bin?.count ?? 1))
        problems.push(`${name} uses ${piece.id} wrongly.`);
      if (!bin) continue;
      perClass[bin.uncertaintyClass]!++;
      heights += bin.height;
    }
    if (fromShop === 0) continue;
    perClass[0]! += fromShop;
    heights += fromShop * bought!.height;
    if (forSale && !forSale.includes(bought!.height)) problems.push(`${name} buys a height that is not for sale.`);
    const all = [...fitted, ...readBefore, ...loose].map((piece) => piece.height);
    const isBetween = all.some((each) => each <= bought!.height) && all.some((each) => each >= bought!.height);
    if (!forSale && !isBetween) problems.push(`${name} buys a height beyond all that are known.`);
  }
  if (known !== leaving.size) problems.push(`${name} takes out a piece that is not in the pack.`);
  return question.predict(inPack, perClass).spaceLeft - heights;
}

/** What is wrong with an answer to `selectPlates`, one sentence each; empty when everything adds up. */
export function problemsInSelection(request: PlateRequest, selection: PlateSelection): string[] {
  const { lower, upper, target } = request;
  if (selection.status === 'Infeasible') {
    const problems = problemsInPurchase(request, selection.buy);
    if (selection.nearest === null) return problems;
    const { clearance, counts } = selection.nearest;
    problems.push(...problemsInCounts(request, counts, clearance));
    if (clearance >= lower && clearance <= upper) problems.push('The nearest clearance is within the limits.');
    return problems;
  }
  const problems = problemsInCounts(request, selection.counts, selection.clearance);
  if (selection.clearance < lower || selection.clearance > upper) problems.push('The clearance is outside the limits.');
  for (const counts of selection.optimalSets) {
    const clearance = request.space - sumOf(request, counts);
    problems.push(...problemsInCounts(request, counts, clearance));
    if (Math.abs(clearance - target) !== selection.absoluteDeviation) problems.push('A set misses by another amount.');
  }
  if (new Set(selection.optimalSets.map(String)).size < selection.optimalSets.length)
    problems.push('A set is listed twice.');
  return problems;
}

function problemsInPurchase({ thicknesses, stock, ...pack }: PlateRequest, buy: PlatesToBuy | null): string[] {
  if (buy === null) return [];
  const { thickness, pieces, isListed, counts, clearance } = buy;
  // The bought plates as one more can that is used up.
  const withBought = { ...pack, thicknesses: [...thicknesses, thickness], stock: [...stock, pieces] };
  const problems = problemsInCounts(withBought, [...counts, pieces], clearance);
  if (!(pieces >= 1)) problems.push('Nothing is bought.');
  if (clearance < pack.lower || clearance > pack.upper) problems.push('With bought plates it is outside the limits.');
  if (thicknesses.includes(thickness) !== isListed) problems.push('A bought thickness is wrongly called listed.');
  if (thickness < Math.min(...thicknesses) || thickness > Math.max(...thicknesses)) {
    problems.push('A bought thickness lies beyond all that are listed.');
  }
  return problems;
}

function problemsInCounts(
  request: Pick<PlateRequest, 'space' | 'plates' | 'thicknesses' | 'stock'>,
  counts: readonly number[],
  clearance: number,
): string[] {
  const problems: string[] = [];
  if (counts.length !== request.stock.length) problems.push('There is not one count for every thickness.');
  if (counts.some((count, place) => !(count >= 0 && count <= request.stock[place]!)))
    problems.push('A plate is not in stock.');
  if (counts.reduce((sum, count) => sum + count, 0) !== request.plates) problems.push('The number of plates is wrong.');
  if (request.space - sumOf(request, counts) !== clearance) problems.push('The plates give another clearance.');
  return problems;
}

function sumOf({ thicknesses }: Pick<PlateRequest, 'thicknesses'>, counts: readonly number[]): number {
  return counts.reduce((sum, count, place) => sum + count * thicknesses[place]!, 0);
}

/** What is wrong with an answer to `selectPlatesJointly`, one sentence each; empty when everything adds up. */
export function problemsInJointSelection(request: JointRequest, selection: JointSelection): string[] {
  if (selection.status === 'Infeasible') {
    const { nearest, buy } = selection;
    const problems = nearest ? problemsInPlan(request, nearest, false) : [];
    return buy ? [...problems, ...problemsInJointPurchase(request, buy)] : problems;
  }
  if (selection.status === 'Optimal') return problemsInPlan(request, selection, true);
  const { best, bound, boundOn } = selection;
  if (best === null) return [];
  const problems = problemsInPlan(request, best, true);
  if (best[boundOn] < bound) problems.push('The best known is better than the bound.');
  return problems;
}

function problemsInJointPurchase(request: JointRequest, buy: JointPurchase): string[] {
  const { thickness, pieces } = buy;
  const thicknesses = [...request.thicknesses, thickness];
  const packs = buy.packs.map(({ clearance, counts, bought }) => ({ clearance, counts: [...counts, bought] }));
  const withBought = { ...request, thicknesses, stock: [...request.stock, pieces] };
  const problems = problemsInPlan(withBought, { ...buy, packs }, true);
  if (!(pieces >= 1)) problems.push('Nothing is bought.');
  if (buy.packs.reduce((sum, { bought }) => sum + bought, 0) !== pieces) problems.push('A bought plate stays over.');
  if (!request.thicknesses.includes(thickness)) problems.push('A thickness is bought that is not listed.');
  return problems;
}

function problemsInPlan({ packs, ...bin }: JointRequest, plan: JointPlan, isWithinLimits: boolean): string[] {
  const problems: string[] = [];
  if (plan.packs.length !== packs.length) return ['There is not one choice for every pack.'];
  for (const [pack, { clearance, counts }] of plan.packs.entries()) {
    const { lower, upper } = packs[pack]!;
    problems.push(...problemsInCounts({ ...bin, ...packs[pack]! }, counts, clearance));
    if (isWithinLimits && (clearance < lower || clearance > upper)) problems.push('A pack is outside its limits.');
  }
  for (const [place, count] of bin.stock.entries()) {
    const used = plan.packs.reduce((sum, { counts }) => sum + counts[place]!, 0);
    if (used > count) problems.push('A plate is used twice.');
  }
  const deviations = plan.packs.map(({ clearance }, pack) => Math.abs(clearance - packs[pack]!.target));
  if (deviations.reduce((sum, each) => sum + each, 0) !== plan.sum) problems.push('The sum of deviations is wrong.');
  if (Math.max(...deviations) !== plan.largest) problems.push('The largest deviation is wrong.');
  return problems;
}
