// One build of the invented shop: what is true of it, and what was written down.
import type { Setup } from '../../../../app/readings/readings.contract.ts';
import type { Check } from '../../../../app/specs/spec-sheet.ts';
import type { Use } from '../../../../app/units/units.contract.ts';
import type { Draw } from './draw.ts';
import type { FamilyToBuild, PackToBuild } from './families.ts';
import type { PlantedAnswer, PlantedTake, PlantedTicket } from './planted-ticket.ts';
import { plantedTruth } from './planted-truth.ts';
import { airTake, feelerTake, singleTake, type When } from './typed-takes.ts';

/** What nobody sees: lengths in thou, pressures in psi, flow in quarts in 30 s. By pack, from the first. */
export type BuildTruth = {
  readonly family: FamilyToBuild;
  readonly hand: number;
  readonly use: Use;
  readonly clearances: readonly number[];
  readonly letGoTight: readonly boolean[];
  readonly leakDowns: readonly number[];
  readonly coolerFlow: number;
  readonly isReadByFeeler: boolean;
  readonly hasBadFrictions: boolean;
  readonly plates: Setup['plates'];
  readonly fluid: (typeof fluids)[number];
};

/** Two invented brands, between which there is nothing. */
export const fluids = ['Okerlund Red', 'Tarnbrook 6'] as const;

/** The pack of a family that most of what is planted sits in: its second one. */
export const plantedPack = 1;

export function drawTruth(draw: Draw, of: Pick<BuildTruth, 'family' | 'hand' | 'use' | 'hasBadFrictions'>): BuildTruth {
  const { feeler, leakDown, coolerFlow, confoundedHand, letGoTight, decoys } = plantedTruth;
  const { family, hand } = of;
  const isConfounded = hand === confoundedHand.hand;
  const isReadByFeeler = draw.happens(hand === feeler.hand ? feeler.probability : 0);
  const tight = family.packs.map(
    (_, index) => draw.happens(letGoTight.probability) && !(isReadByFeeler && index === plantedPack),
  );
  const clearances = family.packs.map((pack, index) => {
    const scatter = plantedTruth.scatterOfHalfBand * Math.min(pack.aim - pack.lowest, pack.highest - pack.aim);
    const below = pack.lowest - 0.5 - Math.abs(draw.normal(0, letGoTight.scatter));
    const aimed = draw.normal(pack.aim, scatter);
    if (tight[index]) return below;
    return isReadByFeeler && index === plantedPack ? aimed - feeler.readsHigh : aimed;
  });
  const isLeaking = draw.happens(isConfounded ? confoundedHand.leaking : leakDown.probability);
  const leakDowns = family.packs.map((_, index) =>
    isLeaking && index === plantedPack
      ? Math.min(9.4, draw.normal(leakDown.leaking, leakDown.leakingScatter))
      : Math.min(6.4, Math.max(1, draw.normal(leakDown.usual, leakDown.scatter))),
  );
  const isLow = draw.happens(isConfounded ? confoundedHand.lowFlow : coolerFlow.probability);
  return {
    ...of,
    isReadByFeeler,
    clearances,
    letGoTight: tight,
    leakDowns,
    coolerFlow: isLow
      ? Math.max(1.01, draw.normal(coolerFlow.low, coolerFlow.lowScatter))
      : Math.max(1.15, draw.normal(coolerFlow.usual, coolerFlow.scatter)),
    plates: draw.happens(decoys.dryPlates) ? 'dry' : 'soaked',
    fluid: draw.happens(decoys.secondFluid) ? fluids[1] : fluids[0],
  };
}

/** Single readings beside the packs: mean, standard deviation, decimals, in the unit of the check. */
const singles: ReadonlyArray<readonly [check: string, mean: number, scatter: number, decimals: number]> = [
  ['Front end play', 18, 2, 0],
  ['Rear end play', 11, 2, 0],
  ['Converter hub to pump bushing', 3, 0.35, 1],
  ['Sealing ring side', 2.6, 0.3, 1],
  ['Line, idle, D', 82, 2.5, 0],
  ['Line, full throttle, D', 163, 3.5, 0],
  ['Line, full throttle, R', 261, 6, 0],
];

export const coolerCheck = 'Cooler flow in 30 s';

export function checkNamed({ sheet }: FamilyToBuild, name: string): Check | undefined {
  return sheet.checks.find((check) => check.name === name);
}

export type Clock = () => string;

/** What was read when it came in, and when it was built. */
export function drawTakes(draw: Draw, truth: BuildTruth, asFound: Clock, final: Clock): PlantedTake[] {
  const { family, hand, plates } = truth;
  const takes: PlantedTake[] = [];
  // Each pack in the one way this hand reads it.
  const take = (index: number, pack: PackToBuild, when: When & { clearance: number }, isRepeated: boolean) =>
    truth.isReadByFeeler && index === plantedPack
      ? feelerTake(draw, pack, when)
      : airTake(draw, pack, { ...when, plates, isRepeated });
  const planted = family.packs[plantedPack];
  if (planted && draw.happens(0.4)) {
    const clearance = draw.normal(planted.highest + 8, 3);
    takes.push(take(plantedPack, planted, { clearance, hand, at: asFound(), phase: 'as found' }, false));
  }
  for (const [index, pack] of family.packs.entries()) {
    const when = { hand, at: final(), phase: 'final' as const, clearance: truth.clearances[index] ?? pack.aim };
    takes.push(take(index, pack, when, index === 0 && draw.happens(0.3)));
  }
  const single = (check: Check | undefined, value: number, decimals: number) => {
    if (check) takes.push(singleTake(check, { value, decimals, hand, at: final(), phase: 'final' }));
  };
  for (const [name, mean, scatter, decimals] of singles)
    single(checkNamed(family, name), draw.normal(mean, scatter), decimals);
  for (const [index, { circuit }] of family.packs.entries()) single(circuit, truth.leakDowns[index] ?? 0, 0);
  single(checkNamed(family, coolerCheck), truth.coolerFlow, 2);
  return misreadNowAndThen(draw, takes);
}

/** One end play in forty is misread by ten and put right at once. */
function misreadNowAndThen(draw: Draw, takes: readonly PlantedTake[]): PlantedTake[] {
  return takes.map((take) => {
    if (take.check !== 'Front end play' || !draw.happens(0.025)) return take;
    const [right] = take.readings;
    if (!right) return take;
    const puts = { right: 0, reason: 'misread by ten on the face' };
    return {
      ...take,
      readings: [
        { spot: 1, typed: String(Number(right.typed) + 10) },
        { ...right, puts },
      ],
    };
  });
}

export function drawAnswers(draw: Draw, { family, hand, fluid }: BuildTruth, final: Clock): PlantedAnswer[] {
  const wanted: Array<Pick<PlantedAnswer, 'list' | 'words' | 'answer'>> = [
    ...family.packs.flatMap(({ pack, frictions, steels }) => {
      const list = `${pack.name} before the snap ring`;
      return [
        { list, words: 'Frictions', answer: { kind: 'counted' as const, count: frictions } },
        { list, words: 'Steels', answer: { kind: 'counted' as const, count: steels } },
      ];
    }),
    {
      list: 'Valve body',
      words: 'Third-gear feed',
      answer: { kind: 'chosen', option: draw.happens(plantedTruth.decoys.openedFeed) ? 'opened' : 'as made' },
    },
    { list: 'Converter', words: 'Source', answer: { kind: 'chosen', option: draw.happens(0.8) ? 'rebuilt' : 'new' } },
    {
      list: 'Cooler',
      words: 'Cooler and lines',
      answer: { kind: 'chosen', option: draw.happens(0.75) ? 'flushed' : 'replaced' },
    },
    { list: 'Final', words: 'Fluid', answer: { kind: 'written', words: fluid } },
    { list: 'Final', words: 'Leaks when hot', answer: { kind: 'chosen', option: 'none' } },
  ];
  const isOnSheet = (list: string, words: string) =>
    family.sheet.lists.some((each) => each.name === list && each.lines.some((line) => line.words === words));
  return wanted
    .filter(({ list, words }) => isOnSheet(list, words))
    .map((answered) => ({ ...answered, hand, at: final() }));
}

/** Who let a tight pack go, and why. */
export function overridesOf({ family, letGoTight, hand }: BuildTruth, final: Clock): PlantedTicket['overrides'] {
  return family.packs.flatMap(({ clearance }: PackToBuild, index) =>
    letGoTight[index]
      ? [{ check: clearance.name, reason: 'No thinner steel in the house, the customer waits.', hand, at: final() }]
      : [],
  );
}
