// What a job takes on, in and out of the file; copied from a small job when it comes in, and never changed.
import type { ExtentOfJob } from '../../app/jobs/extent.contract.ts';
import type { Extent } from '../../app/jobs/extent.ts';
import type { SmallJob } from '../../app/specs/small-jobs.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

/** null for the whole rebuild, from the start or since it was widened. */
export async function extentOf(reading: Reading, jobId: number): Promise<Extent> {
  const standing = await standingExtent(reading, jobId);
  if (standing === null || standing.widened !== null) return null;
  const stages = await reading.selectFrom('job_extent_stages').select('stage_id').where('job_id', '=', jobId).execute();
  const parts = await reading
    .selectFrom('job_extent_parts')
    .select(['kind', 'name'])
    .where('job_id', '=', jobId)
    .execute();
  const named = (kind: 'check' | 'list') => parts.filter((part) => part.kind === kind).map(({ name }) => name);
  return { stageIds: stages.map((each) => each.stage_id), checkNames: named('check'), listNames: named('list') };
}

/** The small job it came in as, and whether it still is; null where it was the whole rebuild from the start. */
export async function standingExtent(reading: Reading, jobId: number): Promise<ExtentOfJob | null> {
  const row = await reading
    .selectFrom('job_extents')
    .leftJoin('jobs_widened', 'jobs_widened.job_id', 'job_extents.job_id')
    .leftJoin('people', 'people.person_id', 'jobs_widened.widened_by')
    .select(['job_extents.name', 'reason', 'widened_at', 'initials'])
    .where('job_extents.job_id', '=', jobId)
    .executeTakeFirst();
  if (!row) return null;
  const { reason, widened_at: at, initials: by } = row;
  return { name: row.name, widened: reason === null || at === null || by === null ? null : { reason, at, by } };
}

export async function insertExtent(writing: Writing, jobId: number, smallJob: SmallJob): Promise<void> {
  await writing.insertInto('job_extents').values({ job_id: jobId, name: smallJob.name }).execute();
  for (const stageId of smallJob.stageIds)
    await writing.insertInto('job_extent_stages').values({ job_id: jobId, stage_id: stageId }).execute();
  const parts = [
    ...smallJob.checkNames.map((name) => ({ kind: 'check' as const, name })),
    ...smallJob.listNames.map((name) => ({ kind: 'list' as const, name })),
  ];
  for (const part of parts)
    await writing
      .insertInto('job_extent_parts')
      .values({ job_id: jobId, ...part })
      .execute();
}

export async function insertWidened(
  writing: Writing,
  widened: { jobId: number; reason: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('jobs_widened')
    .values({ job_id: widened.jobId, reason: widened.reason, widened_at: widened.now, widened_by: widened.by })
    .execute();
}
