// How well one read repeats: learned from reads of the same thing, pooled over every such pair or more.
import { centre, unitNear } from '../statistics/summary.ts';

/** One standard deviation of a read, and the degrees of freedom that rests on (may be infinite). */
export type Repeatability = { readonly standardDeviation: number; readonly degreesOfFreedom: number };

/** Pooled within the groups of repeats; differences between groups are the part's. null without a single repeat. */
export function repeatabilityOfRepeats(groups: readonly (readonly number[])[]): Repeatability | null {
  const degreesOfFreedom = groups.reduce((sum, group) => sum + Math.max(0, group.length - 1), 0);
  if (degreesOfFreedom === 0) return null;
  const offsets = groups.filter((group) => group.length > 1).map((group) => group.map((read) => read - group[0]!));
  const unit = unitNear(offsets.flat());
  const sumOfSquares = offsets.reduce(
    (sum, group) => sum + centre(group.map((offset) => offset / unit)).sumOfSquares,
    0,
  );
  return { standardDeviation: unit * Math.sqrt(sumOfSquares / degreesOfFreedom), degreesOfFreedom };
}

/** Several estimates as one: variances weighted by their degrees of freedom (JCGM 100:2008 H.5.2.4). At least one. */
export function poolRepeatabilities(estimates: readonly Repeatability[]): Repeatability {
  const endless = estimates.find((estimate) => estimate.degreesOfFreedom === Number.POSITIVE_INFINITY);
  if (endless) return endless;
  const degreesOfFreedom = estimates.reduce((sum, estimate) => sum + estimate.degreesOfFreedom, 0);
  const weighted = estimates.reduce((sum, each) => sum + each.degreesOfFreedom * each.standardDeviation ** 2, 0);
  return { standardDeviation: Math.sqrt(weighted / degreesOfFreedom), degreesOfFreedom };
}

/**
 * From how many degrees of freedom a shop's own repeats stand for themselves: twenty know a standard deviation to about
 * one part in six (JCGM 100:2008 E.4.3). The number itself is common practice, no source.
 */
export const enoughDegreesOfFreedom = 20;

/** Every repeat of a shop by one method, added up: Σ (read − mean of its group)² and the degrees of freedom of that. */
export type OwnRepeats = { readonly sumOfSquares: number; readonly degreesOfFreedom: number };

export type ShopRepeatability = Repeatability & { readonly from: 'stated' | 'repeats' };

/**
 * How well a shop repeats one read: the stated starting value until its own repeats carry `enough` degrees of freedom,
 * and from then on its own alone. The two are never mixed, so that a guess cannot outlive what was seen. In the unit of
 * the stated value, the sum of squares in its square.
 */
export function shopRepeatability(
  stated: Repeatability,
  { sumOfSquares, degreesOfFreedom }: OwnRepeats,
  enough: number = enoughDegreesOfFreedom,
): ShopRepeatability {
  const own = { standardDeviation: Math.sqrt(sumOfSquares / degreesOfFreedom), degreesOfFreedom };
  return statedOrOwn(stated, degreesOfFreedom > 0 ? own : null, enough);
}

/** As `shopRepeatability`, with the shop's own repeats already pooled; null where it has none. */
export function statedOrOwn(
  stated: Repeatability,
  own: Repeatability | null,
  enough: number = enoughDegreesOfFreedom,
): ShopRepeatability {
  return own && own.degreesOfFreedom >= enough ? { ...own, from: 'repeats' } : { ...stated, from: 'stated' };
}
