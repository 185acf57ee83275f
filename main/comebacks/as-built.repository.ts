// The shelf of delivered builds in and out of the file. It is derived: what is taken off is reckoned anew.
import type { Insertable } from 'kysely';
import type { Reading, Tables, Writing } from '../database/tables.ts';

/** The delivered builds, of a family or of all, that are not on the shelf, or were put there by another reckoning. */
export async function missingJobIds(reading: Reading, reckoning: number, familyId: number | null): Promise<number[]> {
  const rows = await reading
    .selectFrom('builds_as_delivered')
    .leftJoin('as_built', 'as_built.job_id', 'builds_as_delivered.job_id')
    .select('builds_as_delivered.job_id')
    .where((row) => row.or([row('as_built.reckoning', 'is', null), row('as_built.reckoning', '<>', reckoning)]))
    .$if(familyId !== null, (query) => query.where('builds_as_delivered.family_id', '=', familyId))
    .orderBy('builds_as_delivered.job_id')
    .execute();
  return rows.map((row) => row.job_id);
}

export function revisionsOfJobs(reading: Reading, jobIds: readonly number[]) {
  return reading.selectFrom('jobs').select(['job_id', 'revision_id']).where('job_id', 'in', jobIds).execute();
}

/** How often each pack was mocked up, and how many plates of the last time had sat in another job before. */
export async function mockUpsOfJobs(reading: Reading, jobIds: readonly number[]) {
  const rows = await reading
    .selectFrom('mock_ups')
    .select((row) => [
      'mock_ups.job_id',
      'mock_ups.pack_id',
      row.fn.countAll<number>().as('mock_ups'),
      row.fn.max('mock_up_id').as('newest'),
    ])
    .where('mock_ups.job_id', 'in', jobIds)
    .groupBy(['mock_ups.job_id', 'mock_ups.pack_id'])
    .execute();
  const reused = await reusedPlates(
    reading,
    rows.map((row) => row.newest),
  );
  return rows.map(({ newest, ...row }) => ({ ...row, reused_plates: reused.get(newest) ?? 0 }));
}

/** A plate sat in a job when the last mock-up of its pack there held it; one only tried did not. */
async function reusedPlates(reading: Reading, mockUpIds: readonly number[]): Promise<Map<number, number>> {
  if (mockUpIds.length === 0) return new Map();
  const rows = await reading
    .selectFrom('mock_up_pieces as sits')
    .innerJoin('mock_ups as here', 'here.mock_up_id', 'sits.mock_up_id')
    .innerJoin('pieces', 'pieces.piece_id', 'sits.piece_id')
    .select((row) => ['sits.mock_up_id', row.fn.countAll<number>().as('plates')])
    .where('sits.mock_up_id', 'in', mockUpIds)
    .where('pieces.kind', '<>', 'snap ring')
    .where((row) =>
      row.exists(
        row
          .selectFrom('mock_up_pieces as sat')
          .innerJoin('mock_ups as there', 'there.mock_up_id', 'sat.mock_up_id')
          .select('sat.piece_id')
          .whereRef('sat.piece_id', '=', 'sits.piece_id')
          .whereRef('there.mock_up_id', '<', 'sits.mock_up_id')
          .whereRef('there.job_id', '<>', 'here.job_id')
          .where((sat) =>
            sat.not(
              sat.exists(
                sat
                  .selectFrom('mock_ups as later')
                  .select('later.mock_up_id')
                  .whereRef('later.job_id', '=', 'there.job_id')
                  .whereRef('later.pack_id', '=', 'there.pack_id')
                  .whereRef('later.number', '>', 'there.number'),
              ),
            ),
          ),
      ),
    )
    .groupBy('sits.mock_up_id')
    .execute();
  return new Map(rows.map((row) => [row.mock_up_id, row.plates]));
}

/** Takes what stood there of these jobs off, and puts these figures in its place. */
export async function putOnShelf(
  writing: Writing,
  jobIds: readonly number[],
  rows: {
    readonly builds: ReadonlyArray<Insertable<Tables['as_built']>>;
    readonly checks: ReadonlyArray<Insertable<Tables['as_built_checks']>>;
    readonly packs: ReadonlyArray<Insertable<Tables['as_built_packs']>>;
  },
): Promise<void> {
  await writing.deleteFrom('as_built').where('job_id', 'in', jobIds).execute();
  for (const some of inRowsOf(rows.builds)) await writing.insertInto('as_built').values(some).execute();
  for (const some of inRowsOf(rows.checks)) await writing.insertInto('as_built_checks').values(some).execute();
  for (const some of inRowsOf(rows.packs)) await writing.insertInto('as_built_packs').values(some).execute();
}

/** SQLite takes so many values a statement, and a row has up to ten. */
function inRowsOf<T>(rows: readonly T[]): T[][] {
  const most = 1000;
  return Array.from({ length: Math.ceil(rows.length / most) }, (_, part) => rows.slice(part * most, (part + 1) * most));
}
