// A verdict of the book in the words it is shown by.
import { type Verdict as ShownVerdict, verdictWords as shownWords } from '../charts/verdict-mark.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { type Quantity, unitNamed } from '../quantities/units.ts';
import type { Check } from '../specs/spec-sheet.ts';
import type { Verdict } from './readings.contract.ts';

/** What is not a length is low or high, not tight or loose; a check that was never read is not read. */
export function shownVerdict(verdict: Verdict | null, quantity: Quantity): ShownVerdict {
  if (!verdict) return 'not read';
  if (quantity === 'length' || (verdict.word !== 'tight' && verdict.word !== 'loose')) return verdict.word;
  return verdict.word === 'tight' ? 'low' : 'high';
}

/** "in", "loose by 2.0", "high by 5.0", "too close to call". */
export function verdictWords(verdict: Verdict | null, check: Pick<Check, 'unit' | 'quantity'>): string {
  const by = verdict?.by == null ? null : formatAmount(verdict.by, unitNamed(check.unit));
  return shownWords(shownVerdict(verdict, check.quantity), by);
}
