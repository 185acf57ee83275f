// A verdict in the trade's words.
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Check } from '../specs/spec-sheet.ts';
import type { Verdict } from './readings.contract.ts';

/** "in", "loose by 2.0", "high by 5.0" for what is not a length, "too close to call", or why it is not judged. */
export function verdictWords(verdict: Verdict, check: Pick<Check, 'unit' | 'quantity'>): string {
  const by = verdict.by === null ? '' : ` by ${formatAmount(verdict.by, unitNamed(check.unit))}`;
  switch (verdict.word) {
    case 'tight':
      return `${check.quantity === 'length' ? 'tight' : 'low'}${by}`;
    case 'loose':
      return `${check.quantity === 'length' ? 'loose' : 'high'}${by}`;
    case 'not judged':
      return verdict.reason === '' ? 'not judged' : `not judged: ${verdict.reason}`;
    default:
      return verdict.word;
  }
}
