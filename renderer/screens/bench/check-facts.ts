// What a check asks for and what was said about it, in the shop's words.
import type { AmountWords } from '../../../app/charts/amounts.ts';
import type { Verdict } from '../../../app/readings/readings.contract.ts';
import { shownVerdict } from '../../../app/readings/verdict-words.ts';
import type { Check, Limits } from '../../../app/specs/spec-sheet.ts';
import type { ShopWords } from '../../text/amount-words.ts';

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

/** "In.", "Loose by 2.0.", or why it is not judged. */
export function verdictSentence(verdict: Verdict, check: Pick<Check, 'quantity'>, words: AmountWords): string {
  if (verdict.word === 'not judged') return verdict.reason;
  const word = shownVerdict(verdict, check.quantity);
  const by = verdict.by === null ? '' : ` by ${words.full(verdict.by)}`;
  return `${word.charAt(0).toUpperCase()}${word.slice(1)}${by}.`;
}
