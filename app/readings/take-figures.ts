// What a take leans on, settled when it begins: how well the shop repeats, its hand and dial, its limits and its rule.
import type { Settings } from '../shop/shop.contract.ts';
import type { Check, ReadingMethod } from '../specs/spec-sheet.ts';
import { roundingOf } from '../statistics/uncertainty-budget.ts';
import { feelerBias } from './feeler-bias.ts';
import type { FeelerBias } from './feeler-gap.ts';
import { type OwnRepeats, type Repeatability, type ShopRepeatability, shopRepeatability } from './repeatability.ts';

/** Lengths in whole nanometres. */
export type TakeFigures = Pick<
  Settings,
  | 'handForceHalfWidth_nm'
  | 'baseOnPumpHalfWidth_nm'
  | 'dialResolution_nm'
  | 'micrometerUncertainty_nm'
  | 'repeatLimit_nm'
  | 'unevenLimit_nm'
  | 'decisionRule'
> & {
  /** Of one reading; null where the shop states none for what is read. */
  readonly repeatability: ShopRepeatability | null;
  /** Only for a feeler where the check is meant by air. */
  readonly feeler: FeelerFigures | null;
  /** What read it, where somebody said. */
  readonly gauge: GaugeFigures | null;
};

/** Of a gauge when a take with it began; the error in base units of what it reads. */
export type GaugeFigures = {
  readonly tag: string;
  readonly permittedError: number | null;
  readonly offSquareDegrees: number;
};

/** A gauge that reads a take which begins now. */
export type NamedGauge = GaugeFigures & { readonly isDial: boolean; readonly resolution: number };

/** Readings of the same pack in the same state, by this person's feeler and by air; a bias once they are enough. */
export type FeelerFigures = { readonly pairs: number; readonly bias: FeelerBias | null };

/** What the shop's own book has to say when a take begins. */
export type LearnedFigures = {
  /** Of this method; null where its repeats are not pooled. */
  readonly repeats: OwnRepeats | null;
  /** Feeler less air, in nanometres; null where a feeler reading is not to be judged by air. */
  readonly feelerAboveAir: readonly number[] | null;
};

/** The methods whose repeats are pooled: one reading is one number, in lengths. */
export const pooledMethods = ['air', 'dial', 'direct'] as const;
export type PooledMethod = (typeof pooledMethods)[number];

export function isPooled(method: ReadingMethod): method is PooledMethod {
  return pooledMethods.some((pooled) => pooled === method);
}

/** The stated starting value of one reading by this method, in nanometres. */
export function statedRepeatability(method: PooledMethod, settings: Settings): Repeatability {
  const standardDeviation = {
    air: settings.repeatability_nm,
    dial: settings.dialRepeatability_nm,
    direct: settings.directRepeatability_nm,
  }[method];
  return { standardDeviation, degreesOfFreedom: settings.repeatabilityDegreesOfFreedom };
}

/** What a take by this method leans on if it begins now. */
export function figuresNow(
  check: Pick<Check, 'quantity'>,
  method: ReadingMethod,
  settings: Settings,
  learned: LearnedFigures,
  gauge: NamedGauge | null = null,
): TakeFigures {
  const dialResolution_nm =
    gauge?.isDial && check.quantity === 'length' ? gauge.resolution : settings.dialResolution_nm;
  return {
    repeatability:
      check.quantity === 'length' && isPooled(method) && learned.repeats
        ? notFinerThanRead(
            method,
            shopRepeatability(statedRepeatability(method, settings), learned.repeats),
            dialResolution_nm,
          )
        : null,
    handForceHalfWidth_nm: settings.handForceHalfWidth_nm,
    baseOnPumpHalfWidth_nm: settings.baseOnPumpHalfWidth_nm,
    dialResolution_nm,
    micrometerUncertainty_nm: settings.micrometerUncertainty_nm,
    repeatLimit_nm: settings.repeatLimit_nm,
    unevenLimit_nm: settings.unevenLimit_nm,
    decisionRule: settings.decisionRule,
    feeler: learned.feelerAboveAir && feelerFigures(learned.feelerAboveAir),
    gauge: gauge && {
      tag: gauge.tag,
      permittedError: gauge.permittedError,
      offSquareDegrees: gauge.offSquareDegrees,
    },
  };
}

/**
 * Not below δ/√12 of the dial's step: repeats that all show the same say only that the step hides what they differ by
 * (JCGM 100:2008 F.2.2.1).
 */
function notFinerThanRead(
  method: PooledMethod,
  repeatability: ShopRepeatability,
  dialResolution_nm: number,
): ShopRepeatability {
  const finest = method === 'direct' ? 0 : roundingOf(dialResolution_nm);
  return repeatability.from === 'stated'
    ? repeatability
    : { ...repeatability, standardDeviation: Math.round(Math.max(finest, repeatability.standardDeviation)) };
}

function feelerFigures(feelerAboveAir: readonly number[]): FeelerFigures {
  const learned = feelerBias(feelerAboveAir);
  if (!learned.applies) return { pairs: learned.pairs, bias: null };
  const { pairs, bias, standardUncertainty } = learned;
  return { pairs, bias: { value: Math.round(bias), standardUncertainty: Math.round(standardUncertainty) } };
}
