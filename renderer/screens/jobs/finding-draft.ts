// A finding while it is typed, before the book has it.
import {
  type Condition,
  conditions,
  type Finding,
  type FindingDecision,
  type FindingTyped,
  type PackPlace,
} from '../../../app/jobs/findings.contract.ts';
import { slotName } from '../../../app/packs/slot-name.ts';
import type { SavedPack } from '../../../app/specs/specs.contract.ts';

export type FindingDraft = {
  readonly part: string;
  readonly packId: number | null;
  readonly slotId: number | null;
  readonly place: PackPlace | null;
  /** As typed: a word or its first letters. */
  readonly condition: string;
  readonly thickness: string;
  readonly note: string;
  readonly checkId: number | null;
};

export type NewFinding = FindingDraft & { readonly decision: FindingDecision };

export const blankFinding: NewFinding = {
  part: '',
  packId: null,
  slotId: null,
  place: null,
  condition: '',
  thickness: '',
  note: '',
  checkId: null,
  decision: 'not decided yet',
};

export function draftOfFinding(finding: Finding): FindingDraft {
  const { part, packId, slotId, place, condition, thicknessTyped, note, checkId } = finding;
  return { part, packId, slotId, place, condition, thickness: thicknessTyped, note, checkId };
}

/** The conditions that begin with what is typed; all of them while nothing is. */
export function conditionsBeginning(typed: string): readonly Condition[] {
  const begun = typed.trim().toLowerCase();
  const whole = conditions.find((each) => each === begun);
  return whole ? [whole] : conditions.filter((each) => each.startsWith(begun));
}

/** The one condition that is meant, or null. */
export function conditionMeant(typed: string): Condition | null {
  const meant = conditionsBeginning(typed);
  return typed.trim() !== '' && meant.length === 1 ? (meant[0] ?? null) : null;
}

/** Why the condition is not taken: one plain sentence; null where it is. */
export function conditionRefusal(typed: string): string | null {
  if (conditionMeant(typed)) return null;
  const meant = conditionsBeginning(typed);
  if (typed.trim() === '' || meant.length === 0) return 'Type its condition: burnt, worn, good …';
  return `Is it ${meant.join(' or ')}?`;
}

/** What goes into the book; null while a part or a condition is missing. */
export function typedFinding(draft: FindingDraft): FindingTyped | null {
  const condition = conditionMeant(draft.condition);
  const part = draft.part.trim();
  if (part === '' || condition === null) return null;
  const { packId, slotId, place, checkId } = draft;
  return {
    part,
    packId,
    slotId,
    // The slot says it.
    place: slotId === null ? place : null,
    condition,
    thickness: draft.thickness.trim(),
    checkId,
    note: draft.note.trim(),
  };
}

/**
 * What stands in the entries for the next part. A stack is laid out and gone through in order: of a pack the next slot of
 * the same kind comes up, with the condition and decision of the one before it. For anything else the entries are empty.
 */
export function nextFinding(written: NewFinding, packs: readonly SavedPack[]): NewFinding {
  const pack = packs.find((each) => each.packId === written.packId);
  const index = pack?.slots.findIndex((slot) => slot.slotId === written.slotId) ?? -1;
  if (!pack || index < 0) return blankFinding;
  const next = pack.slots.findIndex((slot, place) => place > index && slot.kind === pack.slots[index]?.kind);
  const slotId = pack.slots[next]?.slotId;
  if (slotId === undefined) return blankFinding;
  const { condition, decision } = written;
  return { ...blankFinding, condition, decision, part: slotName(pack.slots, next), packId: pack.packId, slotId };
}
