// What a check asks for and what was said about it, in the shop's words and as the drawings want them.
import type { AmountWords, Limits as DrawnLimits } from '../../../app/charts/amounts.ts';
import type { Verdict as VerdictWord } from '../../../app/charts/verdict-mark.ts';
import { boundsOf } from '../../../app/readings/judge-take.ts';
import type { Verdict } from '../../../app/readings/readings.contract.ts';
import type { Check, Limits } from '../../../app/specs/spec-sheet.ts';
import type { ShopWords } from '../../text/amount-words.ts';

export function drawnLimits(limits: Limits): { readonly limits: DrawnLimits; readonly target: number | null } {
  const { lower, upper } = boundsOf(limits);
  return { limits: { low: lower, high: upper }, target: limits.kind === 'target' ? limits.target : null };
}

/** "25, 20 to 30 thou", "at least 1 qt", "90 wide or 118 wide". */
export function askedFor(limits: Limits, words: ShopWords): string {
  if (limits.kind === 'variants') return limits.variants.map((variant) => variant.name).join(' or ');
  return `${limitsInWords(limits, words)} ${words.unit}`.trim();
}

function limitsInWords(limits: Exclude<Limits, { kind: 'variants' }>, words: AmountWords): string {
  switch (limits.kind) {
    case 'target':
      return `${words.short(limits.target)}, ${words.short(limits.low)} to ${words.short(limits.high)}`;
    case 'range':
      return `${words.short(limits.low)} to ${words.short(limits.high)}`;
    case 'minimum':
      return `at least ${words.short(limits.low)}`;
    case 'maximum':
      return `at most ${words.short(limits.high)}`;
  }
}

/** The verdict's word for its mark: what is not a length is low or high, not tight or loose. */
export function verdictWord(verdict: Verdict, check: Pick<Check, 'quantity'>): VerdictWord {
  if (check.quantity === 'length') return verdict.word;
  if (verdict.word === 'tight') return 'low';
  return verdict.word === 'loose' ? 'high' : verdict.word;
}

/** "In.", "Loose by 2.0.", or why it is not judged. */
export function verdictSentence(verdict: Verdict, check: Pick<Check, 'quantity'>, words: AmountWords): string {
  if (verdict.word === 'not judged') return verdict.reason;
  const word = verdictWord(verdict, check);
  const by = verdict.by === null ? '' : ` by ${words.full(verdict.by)}`;
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}${by}.`;
}
