// In, tight by, loose by or too close to call: a take's numbers held against the limits of its check.
import { assertNever } from '../base/assert.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Check, Limits } from '../specs/spec-sheet.ts';
import { type Limits as Bounds, type Conformity, judgeConformity } from '../statistics/conformity.ts';
import type { Evaluation, Verdict } from './readings.contract.ts';
import type { TakeFigures } from './take-figures.ts';

export type TakeNumbers = {
  readonly mean: number;
  readonly min: number;
  readonly max: number;
  /** Of the mean, and of one spot by itself; null when unknown. */
  readonly ofMean: Sureness | null;
  readonly ofSpot: Sureness | null;
};

export type Sureness = { readonly standardUncertainty: number; readonly coverageFactor: number };

export function boundsOf(limits: Limits): Bounds {
  switch (limits.kind) {
    case 'range':
    case 'target':
      return { lower: limits.low, upper: limits.high };
    case 'minimum':
      return { lower: limits.low, upper: null };
    case 'maximum':
      return { lower: null, upper: limits.high };
    case 'variants':
      return { lower: null, upper: null };
    default:
      return assertNever(limits);
  }
}

/**
 * The verdict on a take, under the check's rule of which reading the limits bind and the shop's rule (simple, or
 * guarded by the expanded uncertainty: JCGM 106:2012 8.3, ISO 14253-1:2017 5). Amounts in base units.
 */
export function judgeTake(
  check: Pick<Check, 'limits' | 'holdsFor' | 'unit' | 'quantity'>,
  numbers: TakeNumbers,
  rule: TakeFigures['decisionRule'],
): { verdict: Verdict; acceptance: Evaluation['acceptance'] } {
  const bounds = boundsOf(check.limits);
  if (bounds.lower === null && bounds.upper === null) {
    return {
      verdict: { word: 'not judged', by: null, probabilityConforming: null, reason: 'There is no limit.' },
      acceptance: null,
    };
  }
  const shown = (amount: number) => formatAmount(amount, unitNamed(check.unit));
  const low: Bounds = { lower: bounds.lower, upper: null };
  const high: Bounds = { lower: null, upper: bounds.upper };
  const judged = (value: number, sureness: Sureness | null, within: Bounds) => judgeOne(value, sureness, within, rule);
  switch (check.holdsFor) {
    case 'mean':
      return judged(numbers.mean, numbers.ofMean, bounds);
    case 'tightest spot':
      return judged(numbers.min, numbers.ofSpot, bounds);
    case 'every spot':
      return worse(
        bounds.lower === null ? undefined : judged(numbers.min, numbers.ofSpot, low),
        bounds.upper === null ? undefined : judged(numbers.max, numbers.ofSpot, high),
      );
    case 'mean and tightest': {
      const mean = judged(numbers.mean, numbers.ofMean, bounds);
      if (bounds.lower === null || numbers.min >= bounds.lower || mean.verdict.word !== 'in') return mean;
      const tightest = judged(numbers.min, numbers.ofSpot, low);
      const reason = `The tightest spot, ${shown(numbers.min)}, is under the low limit.`;
      const word = tightest.verdict.word === 'tight' ? 'tight' : 'too close to call';
      return { ...mean, verdict: { ...tightest.verdict, word, reason } };
    }
    default:
      return assertNever(check.holdsFor);
  }
}

type Judged = ReturnType<typeof judgeTake>;

function judgeOne(value: number, sureness: Sureness | null, bounds: Bounds, rule: TakeFigures['decisionRule']): Judged {
  if (!sureness) return judgePlainly(value, bounds);
  const guardMultiple = rule === 'guarded' ? sureness.coverageFactor : 0;
  const conformity = judgeConformity(value, sureness.standardUncertainty, bounds, guardMultiple);
  // Limits are sound since the spec was saved, so only a bug could be refused here.
  if (!conformity.ok) throw new Error(conformity.refusal.message);
  const { verdict, by, probabilityConforming, acceptance } = conformity.value;
  return { verdict: { word: verdict, by, probabilityConforming, reason: closeReason(conformity.value) }, acceptance };
}

function closeReason({ verdict, acceptance }: Conformity): string {
  if (verdict !== 'too close to call') return '';
  return acceptance === null
    ? 'The band is narrower than twice the uncertainty: this method cannot decide it.'
    : 'It lies nearer a limit than its uncertainty.';
}

// With the uncertainty unknown there is no guard and no probability: inside is in, outside is out.
function judgePlainly(value: number, { lower, upper }: Bounds): Judged {
  const below = lower === null ? 0 : lower - value;
  const above = upper === null ? 0 : value - upper;
  const word = below > 0 ? 'tight' : above > 0 ? 'loose' : 'in';
  const by = word === 'in' ? null : Math.max(below, above);
  return { verdict: { word, by, probabilityConforming: null, reason: '' }, acceptance: { lower, upper } };
}

const severity: Record<Verdict['word'], number> = {
  in: 0,
  'not judged': 1,
  'too close to call': 2,
  tight: 3,
  loose: 3,
};

function worse(first: Judged | undefined, second: Judged | undefined): Judged {
  if (!first || !second) return (first ?? second)!;
  const [worst, other] =
    severity[second.verdict.word] > severity[first.verdict.word] ? [second, first] : [first, second];
  const acceptance = { lower: first.acceptance?.lower ?? null, upper: second.acceptance?.upper ?? null };
  const conforming =
    worst.verdict.probabilityConforming === null || other.verdict.probabilityConforming === null
      ? null
      : Math.min(worst.verdict.probabilityConforming, other.verdict.probabilityConforming);
  return { verdict: { ...worst.verdict, probabilityConforming: conforming }, acceptance };
}
