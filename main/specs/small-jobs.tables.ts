// The rows of a family's small jobs.
import type { Generated } from 'kysely';

export interface SmallJobsTable {
  small_job_id: Generated<number>;
  family_id: number;
  name: string;
  saved_at: string;
  saved_by: number;
}

export interface SmallJobStagesTable {
  small_job_id: number;
  stage_id: number;
}

export interface SmallJobPartsTable {
  small_job_id: number;
  kind: 'check' | 'list';
  name: string;
}

export type SmallJobsTables = {
  small_jobs: SmallJobsTable;
  small_job_stages: SmallJobStagesTable;
  small_job_parts: SmallJobPartsTable;
};
