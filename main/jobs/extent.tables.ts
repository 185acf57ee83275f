// The rows of what a job took on; a job without any is the whole rebuild.

export interface JobExtentsTable {
  job_id: number;
  name: string;
}

export interface JobExtentStagesTable {
  job_id: number;
  stage_id: number;
}

export interface JobExtentPartsTable {
  job_id: number;
  kind: 'check' | 'list';
  name: string;
}

export interface JobsWidenedTable {
  job_id: number;
  reason: string;
  widened_at: string;
  widened_by: number;
}

export type ExtentTables = {
  job_extents: JobExtentsTable;
  job_extent_stages: JobExtentStagesTable;
  job_extent_parts: JobExtentPartsTable;
  jobs_widened: JobsWidenedTable;
};
