// What is typed on a reading's line, by the way it is read.

import type { CheckOfJob } from '../../../app/jobs/jobs.contract.ts';
import type { ReadingMethod } from '../../../app/specs/spec-sheet.ts';

/** Beside the entry: "push-down and air travel, thou". */
export function entryLabel(check: Pick<CheckOfJob, 'unit'>, method: ReadingMethod, isZeroedAgain: boolean): string {
  const unit = check.unit === '' ? '' : `, ${check.unit}`;
  switch (method) {
    case 'air':
      return isZeroedAgain ? `push-down and whole travel${unit}` : `push-down and air travel${unit}`;
    case 'feeler':
      return `goes and stops${unit}`;
    case 'dial':
      return `travel${unit}, or the dial at both ends`;
    case 'direct':
      return `size${unit}, or bore and shaft`;
    case 'count':
      return 'how many';
    case 'drop':
      return `drop${unit}, or start and end`;
  }
}

/** What the hand does, for the ways that need no pack: one or two orders. */
export function readingOrder(check: Pick<CheckOfJob, 'quantity' | 'limits'>, method: ReadingMethod): string {
  switch (method) {
    case 'feeler':
      return 'Largest leaf that goes, smallest that stops.';
    case 'dial':
      return 'Push to one end and zero the dial; pull to the other.';
    case 'direct':
      return directOrder(check);
    case 'count':
      return 'Count them.';
    case 'drop':
      return 'Full air, then shut it off: how far does it drop in the time?';
    case 'air':
      return '';
  }
}

function directOrder({ quantity, limits }: Pick<CheckOfJob, 'quantity' | 'limits'>): string {
  switch (quantity) {
    case 'length':
      return limits.kind === 'variants' ? 'Measure it: the size names which one it is.' : 'Measure it.';
    case 'pressure':
      return 'Read the gauge.';
    case 'torque':
      return 'Set it, then type the torque it was set to.';
    case 'volume':
      return 'Catch what flows and measure it.';
    case 'angle':
      return 'Measure the angle.';
    case 'count':
      return 'Count them.';
    default:
      return 'Measure it.';
  }
}
