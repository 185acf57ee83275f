// The rows of the jobs room.
import type { Generated } from 'kysely';
import type { Call, Diagnosis } from '../../app/jobs/door.contract.ts';
import type { Answer } from '../../app/jobs/lists.contract.ts';
import type { Need } from '../../app/jobs/needs.ts';
import type { SignOff } from '../../app/jobs/stages.contract.ts';
import type { DeliveryTables } from './delivery.tables.ts';
import type { EstimateTables } from './estimate.tables.ts';
import type { ExtentTables } from './extent.tables.ts';
import type { FindingsTables } from './findings.tables.ts';

export interface StagesTable {
  stage_id: Generated<number>;
  position: number;
  name: string;
  is_closed: number;
}

export interface JobsTable {
  job_id: Generated<number>;
  number: number;
  customer_id: number;
  unit_id: number;
  revision_id: number;
  case_tag: string;
  distance_amount: number | null;
  distance_unit: 'miles' | 'km' | 'passes' | null;
  opened_at: string;
  opened_by: number;
}

export interface StageEntriesTable {
  stage_entry_id: Generated<number>;
  job_id: number;
  stage_id: number;
  entered_at: string;
  entered_by: number;
}

export interface OverridesTable {
  override_id: Generated<number>;
  job_id: number;
  check_id: number;
  reason: string;
  overridden_at: string;
  overridden_by: number;
}

export interface IntakesTable {
  intake_id: Generated<number>;
  job_id: number;
  complaint: string;
  codes: string;
  fluid_level: Diagnosis['fluidLevel'];
  fluid_colour: Diagnosis['fluidColour'];
  fluid_smell: Diagnosis['fluidSmell'];
  pan: string;
  installed_by: string;
  vehicle_changes: string;
  written_at: string;
  written_by: number;
}

export interface PromisesTable {
  promise_id: Generated<number>;
  job_id: number;
  promised_on: string;
  reason: string;
  promised_at: string;
  promised_by: number;
}

export interface CallsTable {
  call_id: Generated<number>;
  job_id: number;
  direction: Call['direction'];
  with_whom: string;
  said: string;
  logged_at: string;
  logged_by: number;
}

export interface SignOffsTable {
  sign_off_id: Generated<number>;
  job_id: number;
  place: SignOff['place'];
  note: string;
  signed_at: string;
  signed_by: number;
}

export interface StageNeedsTable {
  stage_id: number;
  need: Need;
}

export interface NeedsPassedOverTable {
  stage_entry_id: number;
  stage_id: number;
  need: Need;
  what: string;
  reason: string;
}

export interface ListAnswersTable {
  list_answer_id: Generated<number>;
  job_id: number;
  list_line_id: number;
  says: Answer['kind'];
  words: string;
  became: string;
  number: number | null;
  seconds: number | null;
  reason: string;
  answered_at: string;
  answered_by: number;
}

/** Kept by triggers, as is `job_words`. */
export interface JobsInStagesTable {
  job_id: number;
  stage_id: number;
  stage_entry_id: number;
}

export interface JobWordsTable {
  rowid: number;
  words: string;
}

type TablesOfPages = DeliveryTables & ExtentTables & EstimateTables & FindingsTables;

export type JobsTables = TablesOfPages & {
  stages: StagesTable;
  jobs: JobsTable;
  stage_entries: StageEntriesTable;
  overrides: OverridesTable;
  intakes: IntakesTable;
  promises: PromisesTable;
  calls: CallsTable;
  sign_offs: SignOffsTable;
  stage_needs: StageNeedsTable;
  needs_passed_over: NeedsPassedOverTable;
  list_answers: ListAnswersTable;
  jobs_in_stages: JobsInStagesTable;
  job_words: JobWordsTable;
};
