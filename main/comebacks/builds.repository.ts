// Delivered builds and the tickets of their units, out of the file.
import { among } from '../database/among.ts';
import type { Reading } from '../database/tables.ts';

export function findJobNumbered(reading: Reading, number: number) {
  return reading.selectFrom('jobs').select('job_id').where('number', '=', number).executeTakeFirst();
}

/** The units of these tickets, and any other row of the same family and serial. */
export async function unitsOfJobs(reading: Reading, jobIds: readonly number[]): Promise<number[]> {
  const own = reading
    .selectFrom('jobs')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .where('jobs.job_id', 'in', among(jobIds));
  const rows = await own
    .select('units.unit_id')
    .union(
      own
        .innerJoin('units as same', (join) =>
          join.onRef('same.family_id', '=', 'units.family_id').onRef('same.serial', '=', 'units.serial'),
        )
        .select('same.unit_id')
        .where('units.serial', '<>', ''),
    )
    .execute();
  return rows.map(({ unit_id }) => unit_id);
}

/** Every row that stands for this unit. */
export async function sameUnits(
  reading: Reading,
  { unitId, familyId, serial }: { unitId: number; familyId: number; serial: string },
): Promise<number[]> {
  if (serial === '') return [unitId];
  const rows = await reading
    .selectFrom('units')
    .select('unit_id')
    .where('family_id', '=', familyId)
    .where('serial', '=', serial)
    .execute();
  return rows.map(({ unit_id }) => unit_id);
}

/** Newest delivery first. */
export function listBuildsOfUnits(reading: Reading, unitIds: readonly number[], limit: number) {
  return reading
    .selectFrom('builds_as_delivered')
    .select('job_id')
    .where('unit_id', 'in', unitIds)
    .orderBy('delivered_on', 'desc')
    .orderBy('job_id', 'desc')
    .limit(limit)
    .execute();
}

/** Open tickets of a unit that came in after a build and are held against none. */
export async function listOpenTickets(reading: Reading, unitIds: readonly number[], builtJobId: number) {
  const rows = await reading
    .selectFrom('jobs')
    .innerJoin('jobs_in_stages', 'jobs_in_stages.job_id', 'jobs.job_id')
    .innerJoin('stages', 'stages.stage_id', 'jobs_in_stages.stage_id')
    .select(['jobs.job_id', 'jobs.number', 'jobs.opened_at'])
    .select((row) =>
      row
        .selectFrom('intakes')
        .select('intakes.complaint')
        .whereRef('intakes.job_id', '=', 'jobs.job_id')
        .orderBy('intakes.intake_id', 'desc')
        .limit(1)
        .as('complaint'),
    )
    .where('jobs.unit_id', 'in', unitIds)
    .where('jobs.job_id', '>', builtJobId)
    .where('stages.is_closed', '=', 0)
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('comebacks_as_known')
            .select('comeback_id')
            .whereRef('comebacks_as_known.job_id', '=', 'jobs.job_id')
            .where('outcome', '<>', 'logged by mistake'),
        ),
      ),
    )
    .orderBy('jobs.job_id', 'desc')
    .execute();
  return rows.map((row) => ({
    jobId: row.job_id,
    number: row.number,
    openedAt: row.opened_at,
    complaint: row.complaint ?? '',
  }));
}
