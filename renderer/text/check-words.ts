// What a check asks for, how it is read and what was said about it, in the shop's words and as the drawings want them.
import type { AmountWords, Limits as DrawnLimits } from '../../app/charts/amounts.ts';
import type { Verdict as VerdictWord } from '../../app/charts/verdict-mark.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import type { Verdict } from '../../app/readings/readings.contract.ts';
import type { Check, HoldsFor, Limits, ReadingMethod, WaveState } from '../../app/specs/spec-sheet.ts';

export function drawnLimits(limits: Limits): { readonly limits: DrawnLimits; readonly target: number | null } {
  const { lower, upper } = boundsOf(limits);
  return { limits: { low: lower, high: upper }, target: limits.kind === 'target' ? limits.target : null };
}

/** "20–30", "0.8–2.0", "at least 1", "90 or 118"; the target stands by itself. */
export function limitsWords(limits: Limits, words: AmountWords): string {
  switch (limits.kind) {
    case 'target':
    case 'range': {
      const figures = [limits.low, limits.high].map(words.short);
      // Both ends with the decimals of either.
      const hasDecimals = figures.some((figure) => /[.,]/.test(figure));
      return hasDecimals ? `${words.full(limits.low)}–${words.full(limits.high)}` : figures.join('–');
    }
    case 'minimum':
      return `at least ${words.short(limits.low)}`;
    case 'maximum':
      return `at most ${words.short(limits.high)}`;
    case 'variants':
      return limits.variants.map((variant) => words.short(variant.nominal)).join(' or ');
  }
}

/** The verdict's word for its mark: what is not a length is low or high, not tight or loose. */
export function verdictWord(verdict: Verdict, check: Pick<Check, 'quantity'>): VerdictWord {
  if (check.quantity === 'length') return verdict.word;
  if (verdict.word === 'tight') return 'low';
  return verdict.word === 'loose' ? 'high' : verdict.word;
}

const methodWordsOf: Record<ReadingMethod, string> = {
  air: 'by air',
  feeler: 'by feeler',
  dial: 'by dial',
  direct: '',
  count: 'counted',
  drop: 'drop',
};

const waveWordsOf: Record<WaveState, string> = {
  none: '',
  in: 'wave in',
  flattened: 'wave flattened',
  'left out': 'wave left out',
};

/** "by air"; nothing for one instrument and one number, which goes without saying. */
export function methodWords(method: ReadingMethod): string {
  return methodWordsOf[method];
}

/** "wave in", or nothing where the pack has none. */
export function waveWords(waveState: WaveState): string {
  return waveWordsOf[waveState];
}

/** Which reading the limits bind. */
export function holdsForWords(holdsFor: HoldsFor): string {
  switch (holdsFor) {
    case 'mean and tightest':
      return 'the mean inside, the tightest spot not under';
    case 'mean':
      return 'the mean inside';
    case 'tightest spot':
      return 'the tightest spot inside';
    case 'every spot':
      return 'every spot inside';
  }
}
