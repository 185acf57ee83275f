// The rows of the jobs room.
import type { Generated } from 'kysely';
import type { EstimateTables } from './estimate.tables.ts';

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
  complaint: string;
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

export type JobsTables = EstimateTables & {
  stages: StagesTable;
  jobs: JobsTable;
  stage_entries: StageEntriesTable;
  overrides: OverridesTable;
};
