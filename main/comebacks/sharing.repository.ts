// What builds may share, out of the file: batches, findings, and what was pulled for builds that came back.
import { sql } from 'kysely';
import type { Reading } from '../database/tables.ts';

/** Of these tickets the ones whose unit has left, newest delivery first. */
export async function deliveredOf(reading: Reading, jobIds: readonly number[]): Promise<number[]> {
  if (jobIds.length === 0) return [];
  const rows = await reading
    .selectFrom('builds_as_delivered')
    .select('job_id')
    .where('job_id', 'in', jobIds)
    .orderBy('delivered_on', 'desc')
    .orderBy('job_id', 'desc')
    .execute();
  return rows.map(({ job_id }) => job_id);
}

/** The newest ticket of any of these units that came in after a job. */
export function newestTicketSince(reading: Reading, unitIds: readonly number[], jobId: number) {
  return reading
    .selectFrom('jobs')
    .select(['job_id', 'number', 'opened_at', 'distance_amount', 'distance_unit'])
    .where('unit_id', 'in', unitIds)
    .where('job_id', '>', jobId)
    .orderBy('job_id', 'desc')
    .executeTakeFirst();
}

/** Batches something was pulled from whose mark, document or part holds every word, newest first. */
export function batchesHolding(reading: Reading, words: readonly string[], limit: number) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .select(['batch_id', 'mark', 'document', 'received_on', 'parts.number', 'parts.description'])
    .where((row) =>
      row.and(
        words.map((word) =>
          row.or(
            (['mark', 'document', 'parts.number', 'parts.description'] as const).map((column) =>
              row(column, 'like', `%${word.replace(/[\\%_]/g, '\\$&')}%`),
            ),
          ),
        ),
      ),
    )
    .where((row) =>
      row.exists(
        row
          .selectFrom('movements')
          .select('movement_id')
          .whereRef('movements.batch_id', '=', 'batches.batch_id')
          .where('movements.kind', '=', 'pull'),
      ),
    )
    .orderBy('batch_id', 'desc')
    .limit(limit)
    .execute();
}

/** Batches pulled for most of the builds that came back and were ours, or of which it is not known yet. */
export function batchesThatCameBack(reading: Reading, limit: number) {
  return (
    reading
      .selectFrom('comebacks_as_known')
      // From the few that came back to what was pulled for them, never the other way round.
      .crossJoin('movements')
      .whereRef('movements.job_id', '=', 'comebacks_as_known.built_job_id')
      .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
      .innerJoin('parts', 'parts.part_id', 'batches.part_id')
      .select(['movements.batch_id', 'mark', 'document', 'received_on', 'parts.number', 'parts.description'])
      .select((row) => row.fn.count<number>('built_job_id').distinct().as('times'))
      .where('movements.kind', '=', 'pull')
      .where('outcome', 'in', ['ours', 'not known yet'])
      .groupBy('movements.batch_id')
      .orderBy('times', 'desc')
      .orderBy('movements.batch_id', 'desc')
      .limit(limit)
      .execute()
  );
}

/** Parts found in the same condition within a family, the most frequent first; good ones tell nothing. */
export function findingsHolding(reading: Reading, words: readonly string[], limit: number) {
  return (
    reading
      .selectFrom('findings_as_known as found')
      .innerJoin('jobs', 'jobs.job_id', 'found.job_id')
      .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
      .innerJoin('families', 'families.family_id', 'units.family_id')
      .select(['found.part', 'found.condition', 'families.name as family_name'])
      .select((row) => [
        row.fn.max<number>('found.finding_id').as('finding_id'),
        row.fn.count<number>('found.job_id').distinct().as('times'),
      ])
      .where('found.condition', '<>', 'good')
      .where((row) =>
        row.and(
          words.map((word) => {
            const fragment = `%${word.replace(/[\\%_]/g, '\\$&')}%`;
            return sql<boolean>`${row.ref('found.part')} || ' ' || ${row.ref('found.condition')} like ${fragment} escape '\\'`;
          }),
        ),
      )
      // A part is the same however its name is written.
      .groupBy(['units.family_id', sql`found.part collate nocase`, 'found.condition'])
      .orderBy('times', 'desc')
      .orderBy('finding_id', 'desc')
      .limit(limit)
      .execute()
  );
}

/** The tickets where the same part was found in the same condition as in this finding, within its family. */
export async function ticketsWithSameFinding(reading: Reading, findingId: number) {
  const finding = await reading
    .selectFrom('findings_as_known as found')
    .innerJoin('jobs', 'jobs.job_id', 'found.job_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .select(['part', 'condition', 'units.family_id', 'families.name as family_name'])
    .where('finding_id', '=', findingId)
    .executeTakeFirst();
  if (!finding) return undefined;
  const tickets = await reading
    .selectFrom('findings_as_known as found')
    .innerJoin('jobs', 'jobs.job_id', 'found.job_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .leftJoin('comebacks_as_known as comeback', (join) =>
      join.onRef('comeback.job_id', '=', 'found.job_id').on('comeback.outcome', '<>', 'logged by mistake'),
    )
    .select(['found.job_id', 'jobs.number', 'decision', 'built_job_id'])
    .where(sql<boolean>`part = ${finding.part} collate nocase`)
    .where('condition', '=', finding.condition)
    .where('units.family_id', '=', finding.family_id)
    .orderBy('finding_id')
    .execute();
  return { ...finding, tickets };
}
