// Tickets in and out of the file.
import type { Reading, Writing } from '../database/tables.ts';

export function listStages(reading: Reading) {
  return reading.selectFrom('stages').selectAll().orderBy('position').execute();
}

export function findJob(reading: Reading, jobId: number) {
  return reading
    .selectFrom('jobs')
    .innerJoin('people', 'people.person_id', 'jobs.opened_by')
    .innerJoin('revisions', 'revisions.revision_id', 'jobs.revision_id')
    .selectAll('jobs')
    .select(['people.initials', 'revisions.number as revision_number'])
    .where('job_id', '=', jobId)
    .executeTakeFirst();
}

/** The stage a job is in: that of its newest entry. */
export function currentStage(reading: Reading, jobId: number) {
  return reading
    .selectFrom('stage_entries')
    .innerJoin('stages', 'stages.stage_id', 'stage_entries.stage_id')
    .selectAll('stages')
    .where('job_id', '=', jobId)
    .orderBy('stage_entry_id', 'desc')
    .limit(1)
    .executeTakeFirstOrThrow();
}

export function listStageEntries(reading: Reading, jobId: number) {
  return reading
    .selectFrom('stage_entries')
    .innerJoin('people', 'people.person_id', 'stage_entries.entered_by')
    .select(['stage_id', 'entered_at', 'initials'])
    .where('job_id', '=', jobId)
    .orderBy('stage_entry_id')
    .execute();
}

export function listJobs(reading: Reading, filter: { text: string; includeClosed: boolean }) {
  const fragment = `%${filter.text.replace(/[\\%_]/g, '\\$&')}%`;
  return reading
    .selectFrom('jobs')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .innerJoin('stage_entries', (join) =>
      join.on((row) =>
        row(
          'stage_entries.stage_entry_id',
          '=',
          row
            .selectFrom('stage_entries as newest')
            .whereRef('newest.job_id', '=', 'jobs.job_id')
            .select((entry) => entry.fn.max('newest.stage_entry_id').as('newest')),
        ),
      ),
    )
    .innerJoin('stages', 'stages.stage_id', 'stage_entries.stage_id')
    .select([
      'jobs.job_id as jobId',
      'jobs.number',
      'stages.stage_id as stageId',
      'stages.name as stageName',
      'stages.is_closed',
      'jobs.opened_at as openedAt',
      'customers.name as customerName',
      'families.name as familyName',
      'units.serial',
      'units.vehicle',
      'units.use',
      'jobs.complaint',
    ])
    .where((row) =>
      row.or([
        row('customers.name', 'like', fragment),
        row('families.name', 'like', fragment),
        row('units.serial', 'like', fragment),
        row('units.vehicle', 'like', fragment),
        row('jobs.complaint', 'like', fragment),
        row('jobs.case_tag', 'like', fragment),
        row(row.cast<string>('jobs.number', 'text'), 'like', fragment),
      ]),
    )
    .$if(!filter.includeClosed, (query) => query.where('stages.is_closed', '=', 0))
    .orderBy('jobs.number', 'desc')
    .limit(500)
    .execute();
}

export async function nextNumber(reading: Reading): Promise<number> {
  const { newest } = await reading
    .selectFrom('jobs')
    .select((row) => row.fn.max('number').as('newest'))
    .executeTakeFirstOrThrow();
  return (newest ?? 0) + 1;
}

export async function insertJob(
  writing: Writing,
  job: {
    number: number;
    customerId: number;
    unitId: number;
    revisionId: number;
    complaint: string;
    caseTag: string;
    distance: { amount: number; unit: 'miles' | 'km' | 'passes' } | null;
    by: number;
    now: string;
  },
): Promise<number> {
  const { job_id } = await writing
    .insertInto('jobs')
    .values({
      number: job.number,
      customer_id: job.customerId,
      unit_id: job.unitId,
      revision_id: job.revisionId,
      complaint: job.complaint,
      case_tag: job.caseTag,
      distance_amount: job.distance?.amount ?? null,
      distance_unit: job.distance?.unit ?? null,
      opened_at: job.now,
      opened_by: job.by,
    })
    .returning('job_id')
    .executeTakeFirstOrThrow();
  return job_id;
}

export async function enterStage(
  writing: Writing,
  entry: { jobId: number; stageId: number; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('stage_entries')
    .values({ job_id: entry.jobId, stage_id: entry.stageId, entered_at: entry.now, entered_by: entry.by })
    .execute();
}

export async function insertOverride(
  writing: Writing,
  override: { jobId: number; checkId: number; reason: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('overrides')
    .values({
      job_id: override.jobId,
      check_id: override.checkId,
      reason: override.reason,
      overridden_at: override.now,
      overridden_by: override.by,
    })
    .execute();
}

export function listOverrides(reading: Reading, jobId: number) {
  return reading
    .selectFrom('overrides')
    .innerJoin('people', 'people.person_id', 'overrides.overridden_by')
    .select(['check_id', 'reason', 'overridden_at', 'initials'])
    .where('job_id', '=', jobId)
    .orderBy('override_id')
    .execute();
}
