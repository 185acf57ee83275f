// What a take says: its spots, their mean and how sure it is, the verdict, and what a person should know beside it.
import { formatAmount } from '../quantities/format-amount.ts';
import { shownUnit, unitNamed } from '../quantities/units.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';
import { meanOf } from '../statistics/summary.ts';
import type { BudgetLine } from '../statistics/uncertainty-budget.ts';
import {
  feelerBiasLine,
  gaugeErrorLine,
  leafLine,
  micrometerLine,
  offSquareLine,
  permittedErrorLine,
  repeatabilityLine,
} from './budget-lines.ts';
import { decideSentence } from './decide-words.ts';
import { enoughPairs } from './feeler-bias.ts';
import type { FirstHarmonic } from './first-harmonic.ts';
import { judgeTake } from './judge-take.ts';
import { readQuality, readQualityByGauge } from './method-budget.ts';
import type { Evaluation, Setup } from './readings.contract.ts';
import { repeatabilityOfRepeats } from './repeatability.ts';
import type { FeelerFigures, TakeFigures } from './take-figures.ts';
import { type TypedReading, valueOfReading } from './typed-line.ts';
import { type ReadQuality, summariseSpots, surenessAt } from './values-at-spots.ts';
import { nameVariant } from './variant.ts';
import { whatWouldDecide } from './what-would-decide.ts';

export type TakeToEvaluate = {
  readonly check: Check;
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  /** What it leans on since it began; the settings are only those it is shown by. */
  readonly figures: TakeFigures;
  readonly settings: Pick<Settings, 'lengthUnit' | 'decimalMark'>;
  /** Whose hands, by their initials. */
  readonly by: string;
  /** In the order they were typed, superseded ones left out. */
  readonly readings: ReadonlyArray<{ readonly spot: number; readonly reading: TypedReading }>;
  readonly willNotHold: boolean;
};

type SpotReads = { readonly spot: number; readonly readings: TypedReading[]; readonly values: number[] };

/** Beyond this chance of arising from repeat scatter alone, a tilt is not called cocked. */
const cockedChance = 0.05;

/** Amounts in base units of the check's quantity. A take that holds nothing to judge yet is "not judged". */
export function evaluateTake(take: TakeToEvaluate): Evaluation {
  const spots = spotsOf(take);
  const full = spots.filter((spot) => spot.values.length > 0);
  const isAirOnly = spots.length > 0 && full.length === 0;
  if (full.length === 0) return notJudged(take, spots, whyNothing(take, isAirOnly));
  const stated = qualityOf(take, full);
  const repeatability = stated.repeatability ?? repeatabilityOfRepeats(full.map(({ values }) => values));
  const quality = { ...stated, repeatability };
  const readsAtSpots = full.map(({ values }) => values.length);
  const summary = summariseSpots(
    full.map(({ spot, values }) => ({ degrees: degreesOf(take, spot), values })),
    quality,
  );
  const { mean, min, max, means } = summary;
  const ofMean = summary.uncertainty.known ? summary.uncertainty : undefined;
  const { decisionRule } = take.figures;
  const judged = judgeTake(take.check, { mean, min, max, ...surenessAt(readsAtSpots, quality) }, decisionRule);
  const variant = take.check.limits.kind === 'variants' ? nameVariant(mean, take.check) : undefined;
  const verdict = variant?.ok
    ? { word: 'in' as const, by: null, probabilityConforming: null, reason: variant.value }
    : judged.verdict;
  const harmonic = summary.harmonic && tiltOf(summary.harmonic);
  const close = { check: take.check, rule: decisionRule, mean, min, max, readsAtSpots, quality };
  const decides =
    verdict.word === 'too close to call'
      ? whatWouldDecide({ ...close, isLearning: stated.repeatability === null })
      : null;
  return {
    spots: evaluatedSpots(take, spots),
    mean,
    min,
    max,
    harmonic,
    standardUncertainty: ofMean?.combined ?? null,
    effectiveDegreesOfFreedom:
      ofMean && Number.isFinite(ofMean.effectiveDegreesOfFreedom) ? ofMean.effectiveDegreesOfFreedom : null,
    coverageFactor: ofMean?.coverageFactor ?? null,
    expanded: ofMean?.expanded ?? null,
    budget: ofMean?.lines.map((line) => budgetLine(take, line)) ?? [],
    feelerBias: feelerBiasOf(take.figures, mean),
    decisionRule,
    unevenLimit_nm: take.figures.unevenLimit_nm,
    verdict,
    acceptance: judged.acceptance,
    variantName: variant?.ok ? variant.value : null,
    remarks: remarksOn(take, spots, {
      mean,
      min,
      max,
      cocked: harmonic?.isCocked ? summary.harmonic : null,
      isSure: ofMean !== undefined,
    }),
    whatWouldDecide: decides && decideSentence(decides, { unit: unitOf(take), decimalMark: take.settings.decimalMark }),
    asks: asksOf(take, full, means),
  };
}

function spotsOf({ readings, figures }: TakeToEvaluate): SpotReads[] {
  const bias = figures.feeler?.bias?.value ?? 0;
  const spots = new Map<number, SpotReads>();
  for (const { spot, reading } of readings) {
    const at = spots.get(spot) ?? { spot, readings: [], values: [] };
    const value = valueOfReading(reading);
    at.readings.push(reading);
    if (value !== null) at.values.push(value - bias);
    spots.set(spot, at);
  }
  return [...spots.values()].sort((a, b) => a.spot - b.spot);
}

function degreesOf(take: TakeToEvaluate, spot: number): number {
  return ((spot - 1) * 360) / take.check.spots;
}

function evaluatedSpots(take: TakeToEvaluate, spots: readonly SpotReads[]): Evaluation['spots'] {
  return spots
    .filter((spot) => spot.values.length > 0)
    .map(({ spot, readings, values }) => {
      const reads = readings.flatMap((reading) => (reading.method === 'air' && !reading.isAirOnly ? [reading] : []));
      const pushes = reads.flatMap((reading) => (reading.push === null ? [] : [reading.push]));
      return {
        spot,
        degrees: degreesOf(take, spot),
        push: pushes.length > 0 ? meanOf(pushes) : null,
        air: reads.length > 0 ? meanOf(reads.map((reading) => reading.air)) : null,
        value: meanOf(values),
        reads: values.length,
      };
    });
}

/** Only lengths have a stated repeatability; anything else is as sure as its own repeats and its gauge say. */
function qualityOf({ check, method, figures, setup }: TakeToEvaluate, full: readonly SpotReads[]): ReadQuality {
  if (check.quantity !== 'length') return readQualityByGauge(method, figures.gauge);
  const readings = full.flatMap((spot) => spot.readings);
  return readQuality(method, figures, setup, readings);
}

function budgetLine(take: TakeToEvaluate, line: BudgetLine & { share: number }): Evaluation['budget'][number] {
  const { name, standardUncertainty, share } = line;
  return { name, basis: basisOf(take.figures, name), standardUncertainty, share };
}

function basisOf({ repeatability, feeler, gauge }: TakeFigures, name: string): string {
  if (name === offSquareLine) return `${gauge?.tag ?? ''}, too much only`;
  const isOfGauge = gauge !== null && gauge.permittedError !== null;
  if (isOfGauge && [permittedErrorLine, leafLine, micrometerLine, gaugeErrorLine].includes(name)) return gauge.tag;
  if (name === feelerBiasLine) return `${feeler?.pairs ?? 0} pairs`;
  if (name !== repeatabilityLine) return '';
  if (!repeatability) return 'these reads alone';
  return repeatability.from === 'stated' ? 'starting value' : ownWords(repeatability.degreesOfFreedom);
}

function ownWords(repeats: number): string {
  return `the shop’s own, ${repeats} repeats`;
}

function feelerBiasOf({ feeler }: TakeFigures, mean: number): Evaluation['feelerBias'] {
  if (!feeler) return null;
  const bias = feeler.bias?.value ?? null;
  return { pairs: feeler.pairs, bias, meanAsRead: mean + (bias ?? 0) };
}

function tiltOf({ amplitude, loosestAtDegrees, probabilityByChance }: FirstHarmonic): Evaluation['harmonic'] {
  return { amplitude, loosestAtDegrees, isCocked: probabilityByChance !== null && probabilityByChance < cockedChance };
}

function asksOf(take: TakeToEvaluate, full: readonly SpotReads[], means: readonly number[]): Evaluation['asks'] {
  const { repeatLimit_nm, unevenLimit_nm } = take.figures;
  if (take.check.quantity !== 'length') return [];
  const others = (i: number) => means.filter((_, j) => j !== i);
  const apart = means.length < 3 ? [] : means.map((mean, i) => Math.abs(mean - middleOf(others(i))));
  // Beside one spot that is far off, every other looks far off too: only the farthest is asked about.
  const farthest = apart.indexOf(Math.max(...apart));
  return full.flatMap(({ spot, values }, i) => {
    const [first = 0, second = 0] = values;
    if (values.length === 2 && Math.abs(first - second) > repeatLimit_nm) {
      return [{ spot, why: `These two differ by ${shown(take, Math.abs(first - second))}: once more.` }];
    }
    const isFar = i === farthest && (apart[i] ?? 0) > unevenLimit_nm;
    if (values.length > 1 || !isFar) return [];
    return [{ spot, why: `This spot is ${shown(take, apart[i] ?? 0)} from the others: read it once more.` }];
  });
}

function middleOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return meanOf(sorted.slice(Math.floor((sorted.length - 1) / 2), Math.floor(sorted.length / 2) + 1));
}

function shown(take: TakeToEvaluate, amount: number): string {
  return `${shownBare(take, amount)} ${unitOf(take)}`;
}

function shownBare(take: TakeToEvaluate, amount: number): string {
  return formatAmount(amount, unitNamed(unitOf(take)), { decimalMark: take.settings.decimalMark });
}

function unitOf({ check, settings }: TakeToEvaluate): string {
  return shownUnit(check.unit, settings.lengthUnit);
}

function remarksOn(
  take: TakeToEvaluate,
  spots: readonly SpotReads[],
  say: { mean: number; min: number; max: number; cocked: FirstHarmonic | null; isSure: boolean },
): string[] {
  const { check, method, setup, figures } = take;
  const airOnly = spots.filter((spot) => spot.values.length === 0).map((spot) => spot.spot);
  const uneven = say.max - say.min;
  const isWaveOther = method === 'air' && setup !== null && setup.waveState !== check.waveState;
  return [
    method !== check.method && `Read by ${method}; the spec is meant by ${check.method}.`,
    figures.feeler && feelerSentence(take, figures.feeler, say.mean),
    isWaveOther && `Read with the wave plate “${setup.waveState}”; the spec means “${check.waveState}”.`,
    airOnly.length > 0 && `Air only at spot ${airOnly.join(', ')}: left out.`,
    check.quantity === 'length' &&
      uneven > figures.unevenLimit_nm &&
      `Uneven by ${shown(take, uneven)}, more than the shop’s limit.`,
    say.cocked && cockedSentence(take, say.cocked),
    setup && !setup.isPistonSeated && 'The piston was not stroked and down: a held-up piston reads tight.',
    setup?.dialBase === 'pump or lower drum' &&
      'The dial stood on the pump or a lower drum: rock and bushing slop read loose.',
    take.willNotHold && 'It would not hold air.',
    !say.isSure && check.quantity !== 'count' && 'Repeatability unknown: judged without a guard.',
  ].filter((remark) => typeof remark === 'string');
}

function feelerSentence(take: TakeToEvaluate, { pairs, bias }: FeelerFigures, mean: number): string {
  if (!bias) return `${pairs} of ${enoughPairs} pairs of feeler and air in ${take.by}’s hands: not corrected.`;
  const apart = `${shown(take, Math.abs(bias.value))} ${bias.value < 0 ? 'below' : 'above'} air`;
  return `Feeler reads this pack ${apart} in ${take.by}’s hands (${pairs} pairs): ${shownBare(take, mean)} by air.`;
}

function cockedSentence(
  take: TakeToEvaluate,
  { amplitude, loosestAtDegrees, probabilityByChance }: FirstHarmonic,
): string {
  const times = Math.max(1, Math.round(1000 * (probabilityByChance ?? 0)));
  return `Cocked: tilted by ${shown(take, amplitude)}, loosest at ${Math.round(loosestAtDegrees ?? 0)}°; repeat scatter alone would show as much ${times} times in 1000. It is confirmed if it stays put when the plates are turned.`;
}

function whyNothing({ willNotHold }: TakeToEvaluate, isAirOnly: boolean): string {
  if (willNotHold) return 'It would not hold air.';
  return isAirOnly ? 'Air only: no push-down was taken.' : 'Not read yet.';
}

function notJudged(take: TakeToEvaluate, spots: readonly SpotReads[], reason: string): Evaluation {
  return {
    spots: evaluatedSpots(take, spots),
    mean: null,
    min: null,
    max: null,
    harmonic: null,
    standardUncertainty: null,
    effectiveDegreesOfFreedom: null,
    coverageFactor: null,
    expanded: null,
    budget: [],
    feelerBias: null,
    decisionRule: take.figures.decisionRule,
    unevenLimit_nm: take.figures.unevenLimit_nm,
    verdict: { word: 'not judged', by: null, probabilityConforming: null, reason },
    acceptance: null,
    variantName: null,
    remarks: [],
    whatWouldDecide: null,
    asks: [],
  };
}
