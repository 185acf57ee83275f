// What is typed when a unit leaves, and what it means.
import type { Handover } from '../../../app/jobs/delivery.contract.ts';
import type { Distance } from '../../../app/jobs/distance.contract.ts';
import { parseDistance } from '../../../app/jobs/parse-distance.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';

export type HandoverDraft = {
  readonly deliveredTo: string;
  readonly deliveredOn: string;
  readonly distance: string;
  readonly distanceUnit: Distance['unit'];
  /** null: whoever is at the bench. */
  readonly handedOverById: number | null;
};

export type HandoverRefusals = { deliveredTo?: string; deliveredOn?: string; distance?: string };

export function handoverRefusals(draft: HandoverDraft, decimalMark: DecimalMark): HandoverRefusals {
  const distance = parseDistance(draft.distance, decimalMark);
  return {
    ...(draft.deliveredTo.trim() === '' && { deliveredTo: 'Say who took it.' }),
    ...(draft.deliveredOn === '' && { deliveredOn: 'Say which day.' }),
    ...(!distance.ok && { distance: distance.refusal.message }),
  };
}

/** null while something is refused. */
export function handoverOf(draft: HandoverDraft, decimalMark: DecimalMark, atBenchId: number): Handover | null {
  const distance = parseDistance(draft.distance, decimalMark);
  if (!distance.ok || Object.keys(handoverRefusals(draft, decimalMark)).length > 0) return null;
  const { deliveredTo, deliveredOn, handedOverById } = draft;
  return {
    deliveredTo,
    deliveredOn,
    distance: distance.value === null ? null : { amount: distance.value, unit: draft.distanceUnit },
    handedOverById: handedOverById ?? atBenchId,
  };
}
