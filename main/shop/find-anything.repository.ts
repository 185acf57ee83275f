// Whatever holds a few words, noun by noun, the newest first. Each word must be held by one of the columns named.
import { type RawBuilder, sql } from 'kysely';
import type { Reading } from '../database/tables.ts';
import { newestJobsHolding } from '../jobs/jobs.repository.ts';

export type Sought = { readonly words: readonly string[]; readonly limit: number };

/** The newest tickets that hold the words, and before them the one that has this number. */
export async function findJobs(reading: Reading, number: number | null, { words, limit }: Sought) {
  const holding = await newestJobsHolding(reading, words, limit);
  const rows = await reading
    .selectFrom('jobs')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .innerJoin('jobs_in_stages', 'jobs_in_stages.job_id', 'jobs.job_id')
    .innerJoin('stages', 'stages.stage_id', 'jobs_in_stages.stage_id')
    .select([
      'jobs.job_id',
      'jobs.number',
      'customers.name as customer_name',
      'families.name as family_name',
      'units.serial',
      'units.vehicle',
      'stages.name as stage_name',
    ])
    .where((row) => row.or([row('jobs.job_id', 'in', holding), row('jobs.number', '=', number)]))
    .orderBy((row) => row('jobs.number', '=', number ?? 0), 'desc')
    .orderBy('jobs.job_id', 'desc')
    .limit(limit)
    .execute();
  return rows;
}

export function findCustomers(reading: Reading, { words, limit }: Sought) {
  return reading
    .selectFrom('customers')
    .select(['customers.name', 'customers.phone'])
    .select((row) => [
      row
        .selectFrom('jobs')
        .whereRef('jobs.customer_id', '=', 'customers.customer_id')
        .select((jobs) => jobs.fn.max('job_id').as('newest'))
        .as('job_id'),
      row
        .selectFrom('jobs')
        .whereRef('jobs.customer_id', '=', 'customers.customer_id')
        .select((jobs) => jobs.fn.countAll<number>().as('count'))
        .as('jobs'),
    ])
    .where(holds(words, 'customers.name', 'customers.phone'))
    .orderBy('customers.customer_id', 'desc')
    .limit(limit)
    .execute();
}

/** By serial and vehicle, and by the family where a word is part of its name. */
export async function findUnits(reading: Reading, { words, limit }: Sought) {
  const families = await reading.selectFrom('families').select(['family_id', 'name']).execute();
  return reading
    .selectFrom('units')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .select(['families.name as family_name', 'units.serial', 'units.vehicle'])
    .select((row) =>
      row
        .selectFrom('jobs')
        .whereRef('jobs.unit_id', '=', 'units.unit_id')
        .select((jobs) => jobs.fn.max('job_id').as('newest'))
        .as('job_id'),
    )
    .where((row) =>
      row.and(
        words.map((word) => {
          const named = families.filter(({ name }) => name.toLowerCase().includes(word.toLowerCase()));
          const ids = named.map(({ family_id }) => family_id);
          return row.or([row('units.family_id', 'in', ids), holds([word], 'units.serial', 'units.vehicle')]);
        }),
      ),
    )
    .orderBy('units.unit_id', 'desc')
    .limit(limit)
    .execute();
}

export function findParts(reading: Reading, { words, limit }: Sought) {
  return reading
    .selectFrom('parts')
    .select(['part_id', 'number', 'description', 'kind', 'is_retired'])
    .where(holds(words, 'number', 'description', 'supplier', 'bin'))
    .orderBy('is_retired')
    .orderBy('number')
    .limit(limit)
    .execute();
}

export function findBatches(reading: Reading, { words, limit }: Sought) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .select(['batches.part_id', 'mark', 'document', 'received_on', 'parts.number', 'parts.kind'])
    .where(holds(words, 'mark', 'document'))
    .orderBy('batch_id', 'desc')
    .limit(limit)
    .execute();
}

/** By their tags; those written down by mistake are left out. */
export function findPlates(reading: Reading, { words, limit }: Sought) {
  return (
    reading
      .selectFrom('pieces')
      .leftJoin('discards', 'discards.piece_id', 'pieces.piece_id')
      .select(['pieces.piece_id', 'pieces.tag', 'pieces.outline', 'pieces.kind'])
      .select((row) =>
        row
          .selectFrom('piece_heights')
          .whereRef('piece_heights.piece_id', '=', 'pieces.piece_id')
          .select('height_nm')
          .orderBy('piece_height_id', 'desc')
          .limit(1)
          .as('height_nm'),
      )
      .where('tag', '<>', '')
      .where(holds(words, 'tag', 'outline'))
      // An outline alone would bring all of its plates.
      .where((row) => row.or(words.map((word) => holds([word], 'tag'))))
      .where((row) => row.or([row('was_mistyped', 'is', null), row('was_mistyped', '=', 0)]))
      .orderBy('pieces.piece_id', 'desc')
      .limit(limit)
      .execute()
  );
}

/** By their tags, what they are and their serial numbers. */
export function findGauges(reading: Reading, { words, limit }: Sought) {
  return reading
    .selectFrom('gauges_as_known')
    .select(['gauge_id', 'tag', 'kind', 'serial', 'is_retired'])
    .where(holds(words, 'tag', 'kind', 'serial'))
    .orderBy('is_retired')
    .orderBy('tag')
    .limit(limit)
    .execute();
}

export function findFamilies(reading: Reading, { words, limit }: Sought) {
  return reading
    .selectFrom('families')
    .select(['family_id', 'name'])
    .where(holds(words, 'name'))
    .orderBy('name')
    .limit(limit)
    .execute();
}

function holds(words: readonly string[], ...columns: readonly string[]): RawBuilder<boolean> {
  const each = words.map((word) => {
    const fragment = `%${word.replace(/[\\%_]/g, '\\$&')}%`;
    const any = columns.map((column) => sql`${sql.ref(column)} like ${fragment} escape '\\'`);
    return sql`(${sql.join(any, sql` or `)})`;
  });
  return sql<boolean>`(${sql.join(each, sql` and `)})`;
}
