// What went into a build beside what went into its siblings: plates used again, batches, and who built it.
import { fisher } from '../statistics/fisher.ts';
import { enoughSiblings, tellsFrom, unusualBelow } from './how-unusual.ts';
import type { RecordedBatch, RecordedBuild } from './recorded-build.ts';
import type { TraceFinding } from './trace.contract.ts';
import { counted, type TraceFindingBase } from './trace-checks.ts';

const blank: Omit<TraceFindingBase, 'subject' | 'kind'> = {
  p: null,
  byChance: 0,
  isNotable: false,
  siblings: 0,
  place: null,
  telling: null,
  packName: null,
  opens: null,
};

export function platesUsedAgain(build: RecordedBuild, siblings: readonly RecordedBuild[]): TraceFinding[] {
  return build.packs.flatMap(({ name, reusedPlates: count }) => {
    if (count === null) return [];
    const others = siblings.flatMap(({ packs }) => {
      const same = packs.find((pack) => pack.name === name)?.reusedPlates ?? null;
      return same === null ? [] : [someOrNone(same)];
    });
    const said = count === 0 ? 'no plate' : count === 1 ? '1 plate' : `${count} plates`;
    const base: TraceFindingBase = {
      ...blank,
      subject: `${name} plates`,
      kind: 'plates',
      packName: name,
      opens: { kind: 'packs', jobId: build.jobId },
    };
    return [
      counted(base, {
        own: someOrNone(count),
        others,
        isNotable: count > 0,
        says: `${name}: ${said} of an earlier job`,
        beside: ({ alike, of }) => `${someOrNone(count)} in ${alike} of ${of} builds`,
      }),
    ];
  });
}

function someOrNone(count: number): string {
  return count > 0 ? 'some' : 'none';
}

/**
 * Each batch that went in, over the other builds: how many with it came back and how many without. p is Fisher’s exact
 * one, two-sided; the build itself is left out, because it is looked at for having come back.
 */
export function sharedBatches(build: RecordedBuild, siblings: readonly RecordedBuild[]): TraceFinding[] {
  return build.batches.map((batch) => {
    const base: TraceFindingBase = {
      ...blank,
      subject: batch.name,
      kind: 'batch',
      siblings: siblings.length,
      opens: { kind: 'batch', partId: batch.partId, batchId: batch.batchId },
    };
    const hasIt = siblings.filter(({ batches }) => batches.some(({ batchId }) => batchId === batch.batchId));
    const came = (builds: readonly RecordedBuild[]) => builds.filter(({ hasComeBack }) => hasComeBack).length;
    const [withIt, back, all] = [hasIt.length, came(hasIt), came(siblings)];
    const [without, backWithout] = [siblings.length - withIt, all - back];
    const says = `${batch.name}: ${back} of ${withIt} other builds with it came back, ${backWithout} of ${without} without`;
    const isOftener = back > 0 && back * without > backWithout * withIt;
    if (siblings.length < enoughSiblings) {
      const sentence = `${says}; not enough yet, ${siblings.length} of ${enoughSiblings} siblings.`;
      return { ...base, isNotable: isOftener, sentence };
    }
    const p = chanceOf(back, withIt, backWithout, without);
    const isNotable = isOftener && p !== null && p <= tellsFrom;
    return { ...base, isNotable, sentence: `${says}.`, p, byChance: p === null ? 0 : attainable(all, withIt, without) };
  });
}

function chanceOf(back: number, withIt: number, backWithout: number, without: number): number | null {
  const found = fisher([
    [back, withIt - back],
    [backWithout, without - backWithout],
  ]);
  return found.ok ? found.value.pTwoSided : null;
}

/** No more than the line itself, and nothing where even the most one-sided table would not be unusual. */
function attainable(all: number, withIt: number, without: number): number {
  const most = Math.min(all, withIt);
  const ends = [
    [most, all - most],
    [Math.max(0, all - without), Math.min(all, without)],
  ] as const;
  const canBe = ends.some(([back, backWithout]) => (chanceOf(back, withIt, backWithout, without) ?? 1) <= unusualBelow);
  return canBe ? unusualBelow : 0;
}

/** Told and never ranked: who built it is no finding against anybody. */
export function whoBuiltIt(build: RecordedBuild, siblings: readonly RecordedBuild[]): TraceFinding[] {
  const { builder } = build;
  if (builder === null) return [];
  const known = siblings.filter((each) => each.builder !== null);
  const share = known.filter((each) => each.builder === builder).length;
  const sentence = `Read for the most part by ${builder}, as ${share} of ${known.length} builds.`;
  return [{ ...blank, subject: 'Builder', kind: 'builder', siblings: known.length, sentence }];
}

/** Batches of the build that other builds had without one coming back: they speak for the material. */
export function quietBatches(
  { batches }: RecordedBuild,
  siblings: readonly RecordedBuild[],
): Array<{ readonly batch: RecordedBatch; readonly builds: number }> {
  return batches.flatMap((batch) => {
    const hasIt = siblings.filter((each) => each.batches.some(({ batchId }) => batchId === batch.batchId));
    return hasIt.length > 0 && hasIt.every(({ hasComeBack }) => !hasComeBack) ? [{ batch, builds: hasIt.length }] : [];
  });
}
