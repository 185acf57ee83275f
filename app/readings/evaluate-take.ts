// What a take says: its spots, their mean and how sure it is, the verdict, and what a person should know beside it.
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';
import { meanOf } from '../statistics/summary.ts';
import { type BudgetLine, type CombinedUncertainty, combine } from '../statistics/uncertainty-budget.ts';
import { fitFirstHarmonic } from './first-harmonic.ts';
import { boundsOf, judgeTake, type Sureness } from './judge-take.ts';
import { coverage, fixedLines, statedRepeatability } from './method-budget.ts';
import type { Evaluation, Setup } from './readings.contract.ts';
import { type Repeatability, repeatabilityOfRepeats } from './repeatability.ts';
import { type TypedReading, valueOfReading } from './typed-line.ts';
import { nameVariant } from './variant.ts';

export type TakeToEvaluate = {
  readonly check: Check;
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  readonly settings: Settings;
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
  if (full.length === 0)
    return notJudged(take, spots, isAirOnly ? 'Air only: no push-down was taken.' : 'Not read yet.');
  const means = full.map((spot) => meanOf(spot.values));
  const [mean, min, max] = [meanOf(means), Math.min(...means), Math.max(...means)];
  const repeatability =
    statedRepeatability(take.method, take.settings) ?? repeatabilityOfRepeats(full.map((spot) => spot.values));
  const isLength = take.check.quantity === 'length';
  const fixed = isLength
    ? fixedLines(
        take.method,
        take.settings,
        take.setup,
        full.flatMap((spot) => spot.readings),
      )
    : [];
  const sureOf = (readsAtSpots: number[]) =>
    isLength ? uncertaintyOf(repeatability, fixed, readsAtSpots, take.method) : undefined;
  const ofMean = sureOf(full.map((spot) => spot.values.length));
  const fewestReads = Math.min(...full.map((spot) => spot.values.length));
  const numbers = { mean, min, max, ofMean: surenessOf(ofMean), ofSpot: surenessOf(sureOf([fewestReads])) };
  const judged = judgeTake(take.check, numbers, take.settings.decisionRule);
  const variant = take.check.limits.kind === 'variants' ? nameVariant(mean, take.check) : undefined;
  const verdict = variant?.ok
    ? { word: 'in' as const, by: null, probabilityConforming: null, reason: variant.value }
    : judged.verdict;
  const harmonic = tiltOf(take, full, means, repeatability);
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
    budget: ofMean?.lines.map(({ name, standardUncertainty, share }) => ({ name, standardUncertainty, share })) ?? [],
    verdict,
    acceptance: judged.acceptance,
    variantName: variant?.ok ? variant.value : null,
    remarks: remarksOn(take, spots, { min, max, isCocked: harmonic?.isCocked ?? false, isSure: ofMean !== undefined }),
    whatWouldDecide:
      verdict.word === 'too close to call' ? whatWouldDecide(take, mean, repeatability, fixed, full) : null,
    asks: asksOf(take, full, means),
  };
}

function spotsOf({ readings }: TakeToEvaluate): SpotReads[] {
  const spots = new Map<number, SpotReads>();
  for (const { spot, reading } of readings) {
    const at = spots.get(spot) ?? { spot, readings: [], values: [] };
    const value = valueOfReading(reading);
    at.readings.push(reading);
    if (value !== null) at.values.push(value);
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

function uncertaintyOf(
  repeatability: Repeatability | null,
  fixed: readonly BudgetLine[],
  readsAtSpots: readonly number[],
  method: ReadingMethod,
): CombinedUncertainty | undefined {
  // Leaves bracket the gap, so a feeler reading is sure of its bracket even when nothing was read twice.
  if (!repeatability && method !== 'feeler') return undefined;
  // The mean of the spot means; with equally many reads at each it is s / √(all reads). JCGM 100:2008 4.2.3.
  const perRead = Math.sqrt(readsAtSpots.reduce((sum, reads) => sum + 1 / reads, 0)) / readsAtSpots.length;
  const scatter = repeatability
    ? [
        {
          name: 'repeatability',
          standardUncertainty: repeatability.standardDeviation * perRead,
          degreesOfFreedom: repeatability.degreesOfFreedom,
        },
      ]
    : [];
  const combined = combine([...scatter, ...fixed], coverage);
  return combined.ok ? combined.value : undefined;
}

function surenessOf(uncertainty: CombinedUncertainty | undefined): Sureness | null {
  return uncertainty ? { standardUncertainty: uncertainty.combined, coverageFactor: uncertainty.coverageFactor } : null;
}

function tiltOf(
  take: TakeToEvaluate,
  full: readonly SpotReads[],
  means: readonly number[],
  repeatability: Repeatability | null,
): Evaluation['harmonic'] {
  const harmonic = fitFirstHarmonic(
    full.map(({ spot, values }, i) => ({ degrees: degreesOf(take, spot), value: means[i]!, reads: values.length })),
    repeatability,
  );
  if (!harmonic) return null;
  const { amplitude, loosestAtDegrees, probabilityByChance } = harmonic;
  return { amplitude, loosestAtDegrees, isCocked: probabilityByChance !== null && probabilityByChance < cockedChance };
}

function asksOf(take: TakeToEvaluate, full: readonly SpotReads[], means: readonly number[]): Evaluation['asks'] {
  const { repeatLimit_nm, unevenLimit_nm } = take.settings;
  if (take.check.quantity !== 'length') return [];
  return full.flatMap(({ spot, values }, i) => {
    const [first = 0, second = 0] = values;
    if (values.length === 2 && Math.abs(first - second) > repeatLimit_nm) {
      return [{ spot, why: `These two differ by ${shown(take, Math.abs(first - second))}: once more.` }];
    }
    const others = means.filter((_, j) => j !== i).sort((a, b) => a - b);
    const middle = others[Math.floor(others.length / 2)];
    if (
      values.length === 1 &&
      others.length >= 2 &&
      middle !== undefined &&
      Math.abs(first - middle) > unevenLimit_nm
    ) {
      return [
        { spot, why: `This spot is ${shown(take, Math.abs(first - middle))} from the others: read it once more.` },
      ];
    }
    return [];
  });
}

function shown(take: TakeToEvaluate, amount: number): string {
  return `${formatAmount(amount, unitNamed(take.check.unit))} ${take.check.unit}`;
}

function remarksOn(
  take: TakeToEvaluate,
  spots: readonly SpotReads[],
  say: { min: number; max: number; isCocked: boolean; isSure: boolean },
): string[] {
  const { check, method, setup, settings } = take;
  const airOnly = spots.filter((spot) => spot.values.length === 0).map((spot) => spot.spot);
  const uneven = say.max - say.min;
  const isWaveOther = method === 'air' && setup !== null && setup.waveState !== check.waveState;
  return [
    method !== check.method && `Read by ${method}; the spec is meant by ${check.method}.`,
    isWaveOther && `Read with the wave plate “${setup.waveState}”; the spec means “${check.waveState}”.`,
    airOnly.length > 0 && `Air only at spot ${airOnly.join(', ')}: left out.`,
    check.quantity === 'length' &&
      uneven > settings.unevenLimit_nm &&
      `Uneven by ${shown(take, uneven)}, more than the shop’s limit.`,
    say.isCocked && 'Cocked: the tilt around the drum is more than repeat scatter would show.',
    setup && !setup.isPistonSeated && 'The piston was not stroked and down: a held-up piston reads tight.',
    setup?.dialBase === 'pump or lower drum' &&
      'The dial stood on the pump or a lower drum: rock and bushing slop read loose.',
    take.willNotHold && 'It would not hold air.',
    !say.isSure && check.quantity !== 'count' && 'Repeatability unknown: judged without a guard.',
  ].filter((remark) => typeof remark === 'string');
}

// More reads shrink only the scatter; when the rest alone is too much, the largest line is what to work on.
function whatWouldDecide(
  take: TakeToEvaluate,
  mean: number,
  repeatability: Repeatability | null,
  fixed: readonly BudgetLine[],
  full: readonly SpotReads[],
): string | null {
  if (!repeatability) return null;
  const { lower, upper } = boundsOf(take.check.limits);
  const distance = Math.min(...[lower, upper].flatMap((limit) => (limit === null ? [] : [Math.abs(mean - limit)])));
  const reads = full.reduce((sum, spot) => sum + spot.values.length, 0);
  for (let more = 1; more <= 12; more += 1) {
    const sure = uncertaintyOf(
      repeatability,
      fixed,
      Array.from({ length: reads + more }, () => 1),
      take.method,
    );
    if (sure && sure.expanded <= distance) {
      return `${more} more ${more === 1 ? 'read' : 'reads'} like these would decide it.`;
    }
  }
  const largest = fixed.toSorted((a, b) => b.standardUncertainty - a.standardUncertainty)[0];
  return largest ? `More reads would not decide it: work on the ${largest.name}.` : null;
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
    verdict: { word: 'not judged', by: null, probabilityConforming: null, reason },
    acceptance: null,
    variantName: null,
    remarks: take.willNotHold ? ['It would not hold air.'] : [],
    whatWouldDecide: null,
    asks: [],
  };
}
