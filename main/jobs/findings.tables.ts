// The rows of what teardown found.
import type { Generated } from 'kysely';
import type { Condition, FindingDecision, PackPlace } from '../../app/jobs/findings.contract.ts';

export interface FindingsTable {
  finding_id: Generated<number>;
  job_id: number;
}

export interface FindingCardsTable {
  finding_card_id: Generated<number>;
  finding_id: number;
  part: string;
  pack_id: number | null;
  slot_id: number | null;
  place: PackPlace | null;
  condition: Condition;
  thickness_nm: number | null;
  thickness_typed: string;
  check_id: number | null;
  note: string;
  is_withdrawn: number;
  reason: string;
  written_at: string;
  written_by: number;
}

export interface FindingDecisionsTable {
  finding_decision_id: Generated<number>;
  finding_id: number;
  decision: FindingDecision;
  note: string;
  decided_at: string;
  decided_by: number;
}

export interface FindingPhotosTable {
  finding_photo_id: Generated<number>;
  finding_id: number;
  photo_id: number;
  is_pinned: number;
  pinned_at: string;
  pinned_by: number;
}

export interface FindingLinesTable {
  finding_id: number;
  job_line_id: number;
  linked_at: string;
  linked_by: number;
}

/** A view: the newest card of each finding that stands, with its decision. */
export interface FindingsAsKnownView extends FindingCardsTable {
  job_id: number;
  decision: FindingDecision;
}

export type FindingsTables = {
  findings: FindingsTable;
  finding_cards: FindingCardsTable;
  finding_decisions: FindingDecisionsTable;
  finding_photos: FindingPhotosTable;
  finding_lines: FindingLinesTable;
  findings_as_known: FindingsAsKnownView;
};
