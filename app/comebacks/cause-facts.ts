// What a rule about a cause may ask of a trace: where checks lie, what was answered, what teardown found, what is missing.
import { conditionWords, partWords } from '../jobs/finding-words.ts';
import type { Condition, Finding, PackPlace } from '../jobs/findings.contract.ts';
import { enoughSiblings, tellsFrom } from './how-unusual.ts';
import type { RecordedBuild, RecordedCheck } from './recorded-build.ts';
import type { ShopWords } from './say-amount.ts';
import type { AsFoundNow, CauseLine, TraceFinding } from './trace.contract.ts';
import { type Telling, whatACheckTells } from './what-a-check-tells.ts';

export type CauseFacts = {
  readonly build: RecordedBuild;
  readonly returnJobId: number;
  readonly findings: readonly TraceFinding[];
  readonly asFound: readonly AsFoundNow[];
  /** What the return teardown found. */
  readonly found: readonly Finding[];
  /** Batches that other builds had and none of those came back, with how many builds. */
  readonly quietBatches: ReadonlyArray<{ readonly name: string; readonly builds: number }>;
  readonly words: ShopWords;
};

/** A fact on record, with the chance of one as unusual where it was ranked. */
export type FactLine = Omit<CauseLine, 'because'> & { readonly p: number | null; readonly finding?: TraceFinding };
export type Fact = (facts: CauseFacts) => FactLine[];

const told = ({ sentence, opens, p }: TraceFinding): FactLine => ({ sentence, opens, p });
const plain = (sentence: string, opens: FactLine['opens'] = null): FactLine => ({ sentence, opens, p: null });

/** Checks that lie low or high: outside or too close to call on that side, or farther out than nine in ten builds. */
export function lies(side: 'low' | 'high', ...tellings: Telling[]): Fact {
  return ({ build, findings }) =>
    checksOf(build, tellings).flatMap(({ check }) => {
      const about = findings.filter(({ subject }) => subject === check.name);
      const place = about.find((each) => each.kind === 'place');
      if (place === undefined) return [];
      const isOut = sideOut(build, place) === side;
      const isFar = place.place?.side === side && place.p !== null && place.p <= tellsFrom;
      const isUnder = side === 'low' && about.some((each) => each.kind === 'tightest spot' && each.isNotable);
      if (isFar) return [{ ...told(place), finding: place }];
      const outside = about.find((each) => each.kind === (isOut ? 'verdict' : 'tightest spot'));
      return (isOut || isUnder) && outside ? [{ ...told(outside), finding: place }] : [];
    });
}

/** Checks that were read and lie as in other builds, all in one line. */
export function liesAsUsual(...tellings: Telling[]): Fact {
  return (facts) => {
    const odd = new Set(
      [...lies('low', ...tellings)(facts), ...lies('high', ...tellings)(facts)].map(({ finding }) => finding?.subject),
    );
    const usual = checksOf(facts.build, tellings).filter(
      ({ check, take }) => take?.amount != null && take.verdict === 'in' && !odd.has(check.name),
    );
    if (usual.length === 0) return [];
    const names = usual.map(({ check }) => check.name);
    const areRanked = facts.findings.some(
      ({ kind, subject, siblings }) => kind === 'place' && names.includes(subject) && siblings >= enoughSiblings,
    );
    return [plain(`${listed(names)}: ${areRanked ? 'as in other builds' : 'within limits'}.`)];
  };
}

/** Checks that the sheet asks for and nobody read when it was built. */
export function neverRead(...tellings: Telling[]): Fact {
  return ({ build }) => {
    const names = checksOf(build, tellings).flatMap(({ check, take }) => (take === null ? [check.name] : []));
    return names.length === 0 ? [] : [plain(`Not read when it was built: ${listed(names)}.`)];
  };
}

/** Checks of the build that were not read as found on the return ticket. */
export function notReadAsFound(...tellings: Telling[]): Fact {
  return ({ build, asFound, returnJobId }) => {
    const names = checksOf(build, tellings).map(({ check }) => check.name);
    const missing = names.filter((name) => !asFound.some((each) => each.name === name));
    const opens = { kind: 'teardown', jobId: returnJobId } as const;
    return missing.length === 0 ? [] : [plain(`Not read as found now: ${listed(missing)}.`, opens)];
  };
}

export function foundNow(says: 'more' | 'less', ...tellings: Telling[]): Fact {
  return ({ asFound }) =>
    asFound
      .filter((each) => each.says === says && tellings.includes(each.telling))
      .map(({ name, sentence, opens }) => plain(`${name}: ${sentence}`, opens));
}

/** How a check was read or set up other than the shop does, where the sentence holds these words. */
export function readOtherwise(kind: 'method' | 'setup', holds: RegExp, ...tellings: Telling[]): Fact {
  return ({ findings }) =>
    findings
      .filter((each) => each.kind === kind && (each.isNotable || isRare(each)) && holds.test(each.sentence))
      .filter(({ telling }) => telling !== null && tellings.includes(telling))
      .map((finding) => ({ ...told(finding), finding }));
}

/** Lines of lists whose names hold these words: off, not answered, or answered as few others are. */
export function lineStandsOut(holds: RegExp): Fact {
  return ({ findings }) =>
    findings
      .filter((each) => each.kind === 'line' && (each.isNotable || isRare(each)) && holds.test(each.subject))
      .map(told);
}

/** All such lines answered and good. */
export function linesAreGood(holds: RegExp, what: string): Fact {
  return ({ build }) => {
    const lines = build.lines.filter(({ line }) => holds.test(`${line.list}: ${line.words}`));
    const areGood = lines.length > 0 && lines.every(({ standing }) => standing === 'good');
    return areGood ? [plain(`${what}: all answered and good.`, { kind: 'lists', jobId: build.jobId })] : [];
  };
}

/** Parts as the return teardown found them. */
export function foundAtTeardown(
  conditions: readonly Condition[],
  { part, places }: { readonly part?: RegExp; readonly places?: readonly PackPlace[] } = {},
): Fact {
  return ({ found, words, returnJobId }) =>
    found
      .filter((each) => conditions.includes(each.condition) && (part === undefined || part.test(partWords(each))))
      .filter(({ place }) => places === undefined || (place !== null && places.includes(place)))
      .map((each) =>
        plain(`${partWords(each)}: ${conditionWords(each, words)}.`, { kind: 'teardown', jobId: returnJobId }),
      );
}

export const hurt = ['burnt', 'glazed', 'flaked', 'heat-spotted', 'warped'] as const satisfies Condition[];

/** The packs with burnt, glazed, flaked, heat-spotted or warped plates, where there is only one or where there are more. */
export function hurtPacks(count: 'one' | 'several'): Fact {
  return ({ found, returnJobId }) => {
    const names = new Set(
      found.flatMap(({ packName, condition }) =>
        packName !== null && (hurt as readonly Condition[]).includes(condition) ? [packName] : [],
      ),
    );
    if (names.size === 0 || (count === 'one') !== (names.size === 1)) return [];
    const opens = { kind: 'teardown', jobId: returnJobId } as const;
    return [plain(`${listed([...names])} ${names.size === 1 ? 'is the only pack' : 'are all'} hurt by heat.`, opens)];
  };
}

/** Nothing of these parts was written down at the return teardown. */
export function notLookedAt(part: RegExp, sentence: string): Fact {
  return ({ found, returnJobId }) =>
    found.some((each) => part.test(partWords(each))) ? [] : [plain(sentence, { kind: 'teardown', jobId: returnJobId })];
}

/** No plate of the return teardown was measured. */
export const noPlateMeasured: Fact = ({ found, returnJobId }) =>
  found.some(({ thickness_nm }) => thickness_nm !== null)
    ? []
    : [plain('No plate is measured yet.', { kind: 'teardown', jobId: returnJobId })];

export const platesUsedAgain: Fact = ({ findings }) =>
  findings.filter(({ kind, isNotable }) => kind === 'plates' && isNotable).map(told);

export const batchCameBack: Fact = ({ findings }) =>
  findings.filter(({ kind, isNotable }) => kind === 'batch' && isNotable).map(told);

export const batchesAreQuiet: Fact = ({ quietBatches }) =>
  quietBatches.map(({ name, builds }) =>
    plain(`${name}: ${builds} other ${builds === 1 ? 'build has' : 'builds have'} it and none came back.`),
  );

export const noBatchKnown: Fact = ({ build }) =>
  build.batches.length > 0 ? [] : [plain('No part was pulled to this build from a batch.')];

/** Ranked facts there are, and none outside of nine in ten builds; nothing outside a limit. */
export const nothingStandsOut: Fact = ({ findings }) => {
  const ranked = findings.filter(({ p }) => p !== null);
  const isQuiet = findings.every((each) => !isRare(each) && !each.isNotable);
  return ranked.length > 0 && isQuiet ? [plain('Nothing on record of this build stands out.')] : [];
};

export const always =
  (sentence: string): Fact =>
  () => [plain(sentence)];

/** "A, B and C"; from the fifth on they are counted. */
export function listed(names: readonly string[]): string {
  const shown = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} more`] : names;
  return shown.length === 1 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

function checksOf(build: RecordedBuild, tellings: readonly Telling[]): RecordedCheck[] {
  return build.checks.filter(({ check }) => tellings.includes(whatACheckTells(check)));
}

/** Too close to call is on the side it lies on among the others, where that is known. */
function sideOut(build: RecordedBuild, { subject, place }: TraceFinding): 'low' | 'high' | null {
  switch (build.checks.find(({ check }) => check.name === subject)?.take?.verdict) {
    case 'tight':
      return 'low';
    case 'loose':
      return 'high';
    case 'too close to call':
      return place?.side ?? null;
    default:
      return null;
  }
}

function isRare({ p }: TraceFinding): boolean {
  return p !== null && p <= tellsFrom;
}
