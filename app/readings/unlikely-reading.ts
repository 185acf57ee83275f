// Whether a reading is so far off that it was probably mistyped: a slip is asked about while the hand is still there.
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { Check } from '../specs/spec-sheet.ts';
import { boundsOf } from './judge-take.ts';

// Common practice, no source: both. A drum that is cocked reads a few times its tightest spot, never ten times.
const timesTheOthers = 3;
const timesTheLimit = 4;

/**
 * What is odd about a length that was read, in one sentence that asks; null where nothing is, and for anything but a
 * length. `others` are what stands at the other spots of the take, in nanometres: odd is more than three times the largest
 * of them or less than a third of the smallest. Where nothing else was read, odd is more than four times the most the sheet
 * allows.
 */
export function oddReading(
  value: number,
  others: readonly number[],
  check: Pick<Check, 'quantity' | 'unit' | 'limits'>,
  { decimalMark }: Pick<Settings, 'decimalMark'>,
): string | null {
  if (check.quantity !== 'length' || value < 0) return null;
  const unit = unitNamed(check.unit);
  const shown = (amount: number) => formatAmount(amount, unit, { decimalMark });
  const ask = 'Enter: it is so. Else type it anew.';
  if (others.length > 0) {
    const [least, most] = [Math.min(...others), Math.max(...others)];
    if (least <= 0 || (value <= timesTheOthers * most && value >= least / timesTheOthers)) return null;
    const range = least === most ? shown(least) : `${shown(least)} to ${shown(most)}`;
    return `${shown(value)} ${unit.name}, where the other spots read ${range}? ${ask}`;
  }
  const { upper } = boundsOf(check.limits);
  if (upper === null || upper <= 0 || value <= timesTheLimit * upper) return null;
  return `${shown(value)} ${unit.name}, where the sheet allows ${shown(upper)}? ${ask}`;
}
