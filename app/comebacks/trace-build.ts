// The recorded build beside its siblings: everything that can be held beside them, the most unusual first.
import { enoughSiblings, isUnusual } from './how-unusual.ts';
import { checkKey, lineKey, type RecordedBuild } from './recorded-build.ts';
import type { ShopWords } from './say-amount.ts';
import type { Trace, TraceFinding } from './trace.contract.ts';
import { findingsOfCheck } from './trace-checks.ts';
import { findingsOfLine, unansweredLines } from './trace-lines.ts';
import { platesUsedAgain, sharedBatches, whoBuiltIt } from './trace-parts.ts';

export type TracedBuild = Pick<Trace, 'findings' | 'looks'>;

/**
 * What of `build` is unusual among `siblings`, itself not one of them: delivered builds of its family. A check is held
 * beside those whose sheet has one of the same name and limits, a line beside the same line.
 *
 * How it is ranked: a number by twice its rank from the nearer end over the number of builds, itself counted; a word by
 * the share of builds whose word is no commoner; a batch by Fisher’s exact test over the other builds. Equal chances stand
 * by how far out the number lies, in widths of the middle half. With fewer than eight siblings a fact is told, not ranked.
 * So many facts are looked at that some are unusual by chance alone: `looks` says how many to expect.
 */
export function traceBuild(build: RecordedBuild, siblings: readonly RecordedBuild[], words: ShopWords): TracedBuild {
  const checks = byKey(
    siblings.flatMap((sibling) => sibling.checks),
    ({ check }) => check,
    checkKey,
  );
  const lines = byKey(
    siblings.flatMap((sibling) => sibling.lines),
    ({ line }) => line,
    lineKey,
  );
  const all = [
    ...build.checks.flatMap((recorded) =>
      findingsOfCheck({ build, recorded, siblings: checks.get(checkKey(recorded.check)) ?? [], words }),
    ),
    ...build.lines.flatMap((each) => findingsOfLine(build, each, lines.get(lineKey(each.line)) ?? [])),
    ...unansweredLines(build, siblings),
    ...platesUsedAgain(build, siblings),
    ...sharedBatches(build, siblings),
    ...whoBuiltIt(build, siblings),
  ];
  return { findings: all.filter(isWorthALine).toSorted(mostUnusualFirst), looks: looksOf(all) };
}

/** A word that most builds share is counted among the looks and not read out. */
function isWorthALine({ place, isNotable, p, kind }: TraceFinding): boolean {
  return place !== null || isNotable || kind === 'builder' || (p !== null && p <= 0.5);
}

function mostUnusualFirst(a: TraceFinding, b: TraceFinding): number {
  if (a.p !== null && b.p !== null) return a.p - b.p || (b.place?.distance ?? 0) - (a.place?.distance ?? 0);
  if (a.p !== null || b.p !== null) return a.p === null ? 1 : -1;
  return Number(b.isNotable) - Number(a.isNotable);
}

function looksOf(all: readonly TraceFinding[]): Trace['looks'] {
  const ranked = all.filter(({ p }) => p !== null).length;
  const unusual = all.filter(isUnusual).length;
  const byChance = all.reduce((sum, finding) => sum + finding.byChance, 0);
  return { ranked, unusual, byChance, sentence: looksSentence(ranked, unusual, byChance) };
}

function looksSentence(ranked: number, unusual: number, byChance: number): string {
  if (ranked === 0) return `Nothing is ranked yet: that takes ${enoughSiblings} siblings.`;
  const facts = ranked === 1 ? '1 fact was' : `${ranked} facts were`;
  const stand = unusual === 0 ? 'none is unusual' : unusual === 1 ? '1 is unusual' : `${unusual} are unusual`;
  const chance = byChance < 0.05 ? 'none' : `about ${byChance < 10 ? byChance.toFixed(1) : Math.round(byChance)}`;
  return `${facts} looked at; ${stand}, and ${chance} would be by chance alone.`;
}

/**
 * Of the siblings’ checks or lines, those that may be held beside one another. What is `of` a revision is shared by many
 * builds, so each is named once.
 */
function byKey<R, T>(recorded: readonly R[], of: (each: R) => T, keyOf: (of: T) => string): Map<string, R[]> {
  const keys = new Map<T, string>();
  return Map.groupBy(recorded, (each) => {
    const known = keys.get(of(each));
    const key = known ?? keyOf(of(each));
    if (known === undefined) keys.set(of(each), key);
    return key;
  });
}
