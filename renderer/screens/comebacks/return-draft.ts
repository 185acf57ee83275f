// What is typed of a return before it is in the book, and what it means.

import type { Distance } from '../../../app/jobs/distance.contract.ts';
import { parseDistance } from '../../../app/jobs/parse-distance.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';

export type ReturnDraft = {
  /** yyyy-mm-dd, or empty. */
  readonly cameBackOn: string;
  readonly distance: string;
  readonly distanceUnit: Distance['unit'];
  readonly customerSays: string;
};

export type ReturnRefusals = { cameBackOn?: string; distance?: string };

export function returnRefusals({ cameBackOn, distance }: ReturnDraft, decimalMark: DecimalMark): ReturnRefusals {
  const read = parseDistance(distance, decimalMark);
  return {
    ...(cameBackOn === '' && { cameBackOn: 'Say which day.' }),
    ...(!read.ok && { distance: read.refusal.message }),
  };
}

/** What stands on it as far as it can be read; null otherwise. */
export function distanceTyped({ distance, distanceUnit }: ReturnDraft, decimalMark: DecimalMark): Distance | null {
  const read = parseDistance(distance, decimalMark);
  return read.ok && read.value !== null ? { amount: read.value, unit: distanceUnit } : null;
}
