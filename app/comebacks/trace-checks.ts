// What a build's checks show beside the same checks of its siblings: each number's place among them, and how it was read.
import { boundsOf } from '../readings/judge-take.ts';
import { methodWords } from '../readings/method-words.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';
import { enoughSiblings, placeAmong, type Share, shareAlike } from './how-unusual.ts';
import type { RecordedBuild, RecordedCheck, RecordedTake } from './recorded-build.ts';
import { type ShopWords, sayAmount, sideWords } from './say-amount.ts';
import type { TraceFinding } from './trace.contract.ts';
import { packOfCheck, whatACheckTells } from './what-a-check-tells.ts';

/** The same check of the siblings whose sheets have it. */
export type Beside = {
  readonly build: RecordedBuild;
  readonly recorded: RecordedCheck;
  readonly siblings: readonly RecordedCheck[];
  readonly words: ShopWords;
};

/** What is the same of every finding on one subject. */
export type TraceFindingBase = Omit<TraceFinding, 'sentence'>;

/** Everything one check shows. */
export function findingsOfCheck(beside: Beside): TraceFinding[] {
  const { take } = beside.recorded;
  if (take === null) return [readOrNot(beside)];
  return [
    ...placeOfMean(beside, take),
    ...tightestSpot(beside, take),
    ...uneven(beside, take),
    ...verdictOf(beside, take),
    overriddenOrNot(beside),
    methodOf(beside, take),
    ...setupOf(beside, take),
    readOrNot(beside),
  ];
}

function notEnough(siblings: number): string {
  return `; not enough yet, ${siblings} of ${enoughSiblings} siblings.`;
}

/** "38 of 40 builds", "all 40 builds". */
function countOfBuilds(count: number, of: number): string {
  return count === of ? `all ${of} builds` : `${count} of ${of} builds`;
}

function base({ build, recorded }: Beside, kind: TraceFinding['kind']): TraceFindingBase {
  const { check, checkId, take } = recorded;
  return {
    subject: check.name,
    kind,
    p: null,
    byChance: 0,
    isNotable: false,
    siblings: 0,
    place: null,
    telling: whatACheckTells(check),
    packName: packOfCheck(check, build.packs)?.name ?? null,
    opens: { kind: 'check', jobId: build.jobId, checkId, takeId: take?.takeId ?? null },
  };
}

function numbersOf(siblings: readonly RecordedCheck[], of: (take: RecordedTake) => number | null): number[] {
  return siblings.flatMap(({ take }) => {
    const number = take === null ? null : of(take);
    return number === null ? [] : [number];
  });
}

function ranked(
  kind: 'place' | 'uneven',
  beside: Beside,
  { amount, others, says }: { readonly amount: number; readonly others: readonly number[]; readonly says: string },
  side: { readonly low: string; readonly high: string },
  limits: { readonly low: number | null; readonly high: number | null },
): TraceFinding {
  const { check } = beside.recorded;
  const finding = { ...base(beside, kind), siblings: others.length };
  const place = { amount, others: [...others], ...limits, quantity: check.quantity, unit: check.unit };
  if (others.length < enoughSiblings) {
    const sentence = `${says}${notEnough(others.length)}`;
    return { ...finding, sentence, place: { ...place, side: null, distance: 0, middle: null } };
  }
  const at = placeAmong(amount, others);
  const isLow = at.above > at.below;
  const [count, word] = isLow ? [at.above, side.low] : [at.below, side.high];
  const same = at.equal === 0 ? '' : `, ${at.equal} the same`;
  const stands = at.above === at.below ? null : isLow ? ('low' as const) : ('high' as const);
  const rest =
    stands === null
      ? `in the middle of ${others.length} builds`
      : `${word} than ${countOfBuilds(count, others.length)}`;
  return {
    ...finding,
    sentence: `${says}: ${rest}${stands === null ? '' : same}.`,
    p: at.p,
    byChance: at.byChance,
    place: { ...place, side: stands, distance: at.distance, middle: at.middle },
  };
}

function placeOfMean(beside: Beside, take: RecordedTake): TraceFinding[] {
  if (take.amount === null) return [];
  const { check } = beside.recorded;
  const { lower: low, upper: high } = boundsOf(check.limits);
  const others = numbersOf(beside.siblings, ({ amount }) => amount);
  const says = `${check.name} ${sayAmount(take.amount, check, beside.words)}`;
  const side = sideWords(whatACheckTells(check));
  return [ranked('place', beside, { amount: take.amount, others, says }, side, { low, high })];
}

function uneven(beside: Beside, take: RecordedTake): TraceFinding[] {
  const { check } = beside.recorded;
  const spread = spreadOf(take);
  if (whatACheckTells(check) !== 'clearance' || spread === null || check.spots < 2) return [];
  const others = numbersOf(beside.siblings, spreadOf);
  const says = `${check.name} differs by ${sayAmount(spread, check, beside.words)} round the drum`;
  return [
    ranked(
      'uneven',
      beside,
      { amount: spread, others, says },
      { low: 'less', high: 'more' },
      { low: null, high: null },
    ),
  ];
}

function spreadOf({ lowest, highest }: RecordedTake): number | null {
  return lowest === null || highest === null ? null : highest - lowest;
}

/** A fact told in words: what it is, and what the others are. */
export type Told = {
  readonly own: string;
  readonly others: readonly string[];
  readonly isNotable: boolean;
  readonly says: string;
  readonly beside: (share: Counts) => string;
};
export type Counts = Pick<Share, 'alike' | 'of' | 'commonest' | 'commonestCount'>;

/** A word of this build beside the same word of its siblings: ranked from enough siblings on. */
export function counted(base: TraceFindingBase, { own, others, isNotable, says, beside }: Told): TraceFinding {
  const siblings = others.length;
  if (siblings < enoughSiblings) return { ...base, siblings, isNotable, sentence: `${says}${notEnough(siblings)}` };
  const { p, byChance, ...share } = shareAlike(own, others);
  return { ...base, siblings, isNotable, sentence: `${says}; ${beside(share)}.`, p, byChance };
}

function wordsOf(
  siblings: readonly RecordedCheck[],
  of: (take: RecordedTake, sibling: RecordedCheck) => string | null,
) {
  return siblings.flatMap((sibling) => {
    const word = sibling.take === null ? null : of(sibling.take, sibling);
    return word === null ? [] : [word];
  });
}

function tightestSpot(beside: Beside, take: RecordedTake): TraceFinding[] {
  const { check } = beside.recorded;
  const { lower } = boundsOf(check.limits);
  if (whatACheckTells(check) !== 'clearance' || lower === null || take.lowest === null || check.spots < 2) return [];
  const isUnder = ({ lowest }: RecordedTake) => (lowest === null ? null : lowest < lower ? 'under' : 'not under');
  const own = isUnder(take) ?? '';
  const limit = sayAmount(lower, check, beside.words, false);
  const lies = own === 'under' ? `under the limit of ${limit}` : `not under the limit of ${limit}`;
  return [
    counted(base(beside, 'tightest spot'), {
      own,
      others: wordsOf(beside.siblings, isUnder),
      isNotable: own === 'under',
      says: `${check.name}: tightest spot ${sayAmount(take.lowest, check, beside.words)}, ${lies}`,
      beside: ({ alike, of }) => `so in ${alike} of ${of} builds`,
    }),
  ];
}

function verdictOf(beside: Beside, take: RecordedTake): TraceFinding[] {
  if (take.verdict === 'not judged') return [];
  const { check } = beside.recorded;
  return [
    counted(base(beside, 'verdict'), {
      own: take.verdict,
      others: wordsOf(beside.siblings, ({ verdict }) => (verdict === 'not judged' ? null : verdict)),
      isNotable: take.verdict !== 'in',
      says: `${check.name} went out ${verdictSaid(check, take, beside.words)}`,
      beside: ({ alike, of }) => `so did ${alike} of ${of} builds`,
    }),
  ];
}

/** "tight by 1.0 thou", "too close to call". What is no length is low or high. */
function verdictSaid(check: Check, { verdict, outsideBy }: RecordedTake, words: ShopWords): string {
  if (verdict === 'in') return 'within its limits';
  const isRoom = check.quantity === 'length';
  const word = verdict === 'tight' && !isRoom ? 'low' : verdict === 'loose' && !isRoom ? 'high' : verdict;
  const isFar = outsideBy !== null && word !== 'too close to call';
  return isFar ? `${word} by ${sayAmount(outsideBy, check, words)}` : word;
}

function overriddenOrNot(beside: Beside): TraceFinding {
  const { check, override } = beside.recorded;
  return counted(base(beside, 'override'), {
    own: override ? 'let stand' : 'not',
    others: wordsOf(beside.siblings, (_, sibling) => (sibling.override ? 'let stand' : 'not')),
    isNotable: override !== null,
    says: override
      ? `${check.name} was let stand by ${override.by}, “${override.reason}”`
      : `${check.name} was not let stand by hand`,
    beside: ({ alike, of }) => `so in ${alike} of ${of} builds`,
  });
}

function methodOf(beside: Beside, take: RecordedTake): TraceFinding {
  const { check } = beside.recorded;
  const by = (method: string) => methodWords(method as ReadingMethod) || `by ${method}`;
  return counted(base(beside, 'method'), {
    own: take.method,
    others: wordsOf(beside.siblings, ({ method }) => method),
    isNotable: take.method !== check.method,
    says: `${check.name} was read ${by(take.method)}`,
    beside: ({ alike, of, commonest, commonestCount }) =>
      commonest === take.method ? `so in ${alike} of ${of} builds` : `${commonestCount} of ${of} ${by(commonest)}`,
  });
}

type SetUp = NonNullable<RecordedTake['setup']>;

const setupFacts: ReadonlyArray<{
  readonly of: (setup: SetUp) => string;
  readonly isOdd: (setup: SetUp, check: Check) => boolean;
}> = [
  { of: ({ plates }) => `${plates} plates`, isOdd: ({ plates }) => plates === 'dry' },
  {
    of: ({ waveState }) => (waveState === 'none' ? 'no wave plate' : `the wave plate ${waveState}`),
    isOdd: ({ waveState }, check) => waveState !== check.waveState,
  },
  { of: ({ dialBase }) => `the dial on the ${dialBase}`, isOdd: () => false },
  {
    of: ({ isPistonSeated }) => (isPistonSeated ? 'the piston stroked and down' : 'the piston not stroked'),
    isOdd: ({ isPistonSeated }) => !isPistonSeated,
  },
];

function setupOf(beside: Beside, { setup }: RecordedTake): TraceFinding[] {
  if (setup === null) return [];
  const { check } = beside.recorded;
  return setupFacts.map(({ of: saidOf, isOdd }) => {
    const own = saidOf(setup);
    return counted(base(beside, 'setup'), {
      own,
      others: wordsOf(beside.siblings, (each) => (each.setup === null ? null : saidOf(each.setup))),
      isNotable: isOdd(setup, check),
      says: `${check.name} was read with ${own}`,
      beside: ({ alike, of, commonest, commonestCount }) =>
        commonest === own ? `so in ${alike} of ${of} builds` : `${commonestCount} of ${of} with ${commonest}`,
    });
  });
}

function readOrNot(beside: Beside): TraceFinding {
  const { check, take } = beside.recorded;
  const others = beside.siblings.map((sibling) => (sibling.take === null ? 'not read' : 'read'));
  const have = others.filter((each) => each === 'read').length;
  const isMissed = take === null && (2 * have > others.length || others.length < enoughSiblings);
  return counted(base(beside, 'not read'), {
    own: take === null ? 'not read' : 'read',
    others,
    isNotable: isMissed,
    says: `${check.name} was ${take === null ? 'never ' : ''}read`,
    beside: ({ of }) => `${have} of ${of} builds have it`,
  });
}
