// What a check asks for and how it is read, in the shop's words and as the drawings want them.
import type { AmountWords, Limits as DrawnLimits } from '../../app/charts/amounts.ts';
import { boundsOf } from '../../app/readings/judge-take.ts';
import type { HoldsFor, Limits, WaveState } from '../../app/specs/spec-sheet.ts';

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

const waveWordsOf: Record<WaveState, string> = {
  none: '',
  in: 'wave in',
  flattened: 'wave flattened',
  'left out': 'wave left out',
};

/** "wave in", or nothing where the pack has none. */
export function waveWords(waveState: WaveState): string {
  return waveWordsOf[waveState];
}

/** Which reading the limits bind. */
export function holdsForWords(holdsFor: HoldsFor): string {
  switch (holdsFor) {
    case 'mean and tightest':
      return 'the mean inside, the tightest spot not under the low limit';
    case 'mean':
      return 'the mean inside';
    case 'tightest spot':
      return 'the tightest spot inside';
    case 'every spot':
      return 'every spot inside';
  }
}
