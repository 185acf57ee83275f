// What becomes of a build once it runs: which of the things that can happen to it comes first, and on which day.
import type { Cause } from '../../../../app/comebacks/causes.ts';
import type { Draw } from './draw.ts';
import { type BuildTruth, plantedPack } from './plan-build.ts';
import { type Effects, plantedTruth } from './planted-truth.ts';

export type Fate = {
  /** Days after it went into service. */
  readonly after: number;
  readonly what: 'wear' | 'material' | 'leak' | 'cooling' | 'other' | 'not ours' | 'later job';
  /** Which pack, counted from 0; null where it is of none. */
  readonly pack: number | null;
  readonly cause: Cause | null;
};

const otherCauses = ['tie-up or valve body', 'converter', 'use or setting'] as const;

/** The first thing that happens to it; always something, if only after a lifetime. */
export function drawFate(draw: Draw, truth: BuildTruth, effects: Effects): Fate {
  const { wear, material, leak, cooling, other, notOurs } = plantedTruth.hazards;
  // Drawn in the same order whatever is planted, so that a seed makes the same builds with and without effects.
  const strength = effects === 'planted' ? 1 : 0;
  const lasts = (scale: number, shape: number, times: number) =>
    draw.weibull(scale * Math.exp(-strength * times), shape);
  const fates: Fate[] = truth.family.packs.flatMap((pack, index): Fate[] => {
    const below = Math.max(0, pack.lowest - (truth.clearances[index] ?? pack.aim));
    const leaksMore = (truth.leakDowns[index] ?? 0) - plantedTruth.leakDown.usual;
    return [
      { after: lasts(wear.scale, wear.shape, wear.perThou * below), what: 'wear', pack: index, cause: 'too tight' },
      {
        after: lasts(leak.scale, leak.shape, leak.perPsi * leaksMore),
        what: 'leak',
        pack: index,
        cause: 'leak in one circuit',
      },
    ];
  });
  const flowsLess = (plantedTruth.coolerFlow.usual - truth.coolerFlow) / 0.1;
  const badTimes = truth.hasBadFrictions ? Math.log(material.otherScale / material.scale) : 0;
  fates.push(
    {
      after: lasts(material.otherScale, material.shape, badTimes),
      what: 'material',
      pack: plantedPack,
      cause: 'material',
    },
    {
      after: lasts(cooling.scale, cooling.shape, cooling.perTenth * flowsLess),
      what: 'cooling',
      pack: null,
      cause: 'cooler or fluid',
    },
    { after: draw.weibull(other.scale, other.shape), what: 'other', pack: null, cause: draw.oneOf(otherCauses) },
    { after: draw.weibull(notOurs.scale, notOurs.shape), what: 'not ours', pack: null, cause: null },
    {
      after: draw.weibull(plantedTruth.laterJob.scale, plantedTruth.laterJob.shape),
      what: 'later job',
      pack: null,
      cause: null,
    },
  );
  return fates.reduce((first, each) => (each.after < first.after ? each : first));
}
