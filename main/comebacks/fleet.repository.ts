// What is on record of all delivered builds of a family, a statement a kind of fact, in the order of the builds.
import { sql } from 'kysely';
import type { Reading } from '../database/tables.ts';
import { batchesInto } from './batches-into.repository.ts';

export function listBuilds(reading: Reading, familyId: number) {
  return reading
    .selectFrom('builds_as_delivered as build')
    .innerJoin('revisions', 'revisions.revision_id', 'build.revision_id')
    .innerJoin('units', 'units.unit_id', 'build.unit_id')
    .leftJoin('as_built', 'as_built.job_id', 'build.job_id')
    .leftJoin('people', 'people.person_id', 'as_built.builder')
    .select([
      'build.job_id',
      'build.unit_id',
      'build.delivered_on',
      'build.distance_amount',
      'build.distance_unit',
      'build.in_service_on',
      'build.months',
      'revisions.number as revision_number',
      'as_built.builder',
      'people.initials',
      'units.use',
    ])
    .select((row) =>
      row
        .selectFrom('intakes')
        .select('intakes.installed_by')
        .whereRef('intakes.job_id', '=', 'build.job_id')
        .orderBy('intakes.intake_id', 'desc')
        .limit(1)
        .as('installed_by'),
    )
    .where('build.family_id', '=', familyId)
    .orderBy('build.job_id')
    .execute();
}

/** Every job of the units that were here more than once. */
export function listVisits(reading: Reading, familyId: number) {
  return reading
    .selectFrom('jobs')
    .leftJoin('comebacks_as_known as comeback', 'comeback.job_id', 'jobs.job_id')
    .select([
      'jobs.job_id',
      'jobs.unit_id',
      'jobs.opened_at',
      'jobs.distance_amount',
      'jobs.distance_unit',
      'comeback.comeback_id',
      'comeback.built_job_id',
      'comeback.came_back_on',
      'comeback.outcome',
      'comeback.distance_amount as distance_at_return',
      'comeback.distance_unit as unit_at_return',
    ])
    .where('jobs.unit_id', 'in', (row) =>
      row
        .selectFrom('jobs as again')
        .innerJoin('units', 'units.unit_id', 'again.unit_id')
        .select('again.unit_id')
        .where('units.family_id', '=', familyId)
        .groupBy('again.unit_id')
        .having((having) => having.fn.countAll(), '>', 1),
    )
    .orderBy('jobs.job_id')
    .execute();
}

export function listCauses(reading: Reading) {
  return reading
    .selectFrom('causes_as_known')
    .leftJoin('packs', 'packs.pack_id', 'causes_as_known.pack_id')
    .select(['comeback_id', 'cause', 'certainty', 'packs.name as pack_name'])
    .execute();
}

/** As each check stands on the newest sheet that has one of its name. */
export function listChecksByName(reading: Reading, familyId: number) {
  return reading
    .selectFrom('checks')
    .innerJoin('revisions', 'revisions.revision_id', 'checks.revision_id')
    .leftJoin('packs', 'packs.pack_id', 'checks.pack_id')
    .select([
      'checks.check_id',
      'checks.name',
      'checks.heading',
      'checks.method',
      'checks.quantity',
      'checks.unit',
      'checks.limit_kind',
      'packs.name as pack_name',
    ])
    .where('revisions.family_id', '=', familyId)
    .orderBy('revisions.number', 'desc')
    .orderBy('checks.position')
    .execute();
}

/** The amounts of every check with the jobs they are of, both as JSON: a row for every figure would cost several times as much. */
export function listAmounts(reading: Reading, familyId: number) {
  return reading
    .selectFrom('as_built_checks')
    .select([
      'check_id',
      sql<string>`json_group_array(job_id)`.as('jobs'),
      sql<string>`json_group_array(amount)`.as('amounts'),
    ])
    .where('check_id', 'in', (row) =>
      row
        .selectFrom('checks')
        .innerJoin('revisions', 'revisions.revision_id', 'checks.revision_id')
        .select('checks.check_id')
        .where('revisions.family_id', '=', familyId),
    )
    .groupBy('check_id')
    .execute();
}

/** Changes whenever a figure of the family's builds does: a scan of sums, a tenth of the work of reading them. */
export async function markOfFigures(reading: Reading, familyId: number): Promise<string> {
  const sums = await reading
    .selectFrom('as_built_checks')
    .select((row) => [
      row.fn.countAll().as('figures'),
      row.fn.sum('take_id').as('takes'),
      row.fn.sum('amount').as('amounts'),
      row.fn.sum(row('job_id', '*', row.ref('check_id'))).as('places'),
    ])
    .executeTakeFirstOrThrow();
  const packs = await reading
    .selectFrom('as_built_packs')
    .select((row) => [row.fn.countAll().as('packs'), row.fn.sum('reused_plates').as('plates')])
    .executeTakeFirstOrThrow();
  return JSON.stringify([familyId, sums, packs]);
}

/** How the clearance of each pack was read, and whether its plates were soaked. */
export function listWaysRead(reading: Reading, familyId: number) {
  return reading
    .selectFrom('as_built_checks')
    .innerJoin('takes', 'takes.take_id', 'as_built_checks.take_id')
    .leftJoin('setups', 'setups.setup_id', 'takes.setup_id')
    .select([
      'as_built_checks.check_id',
      'takes.method',
      'setups.plates',
      sql<string>`json_group_array(as_built_checks.job_id)`.as('jobs'),
    ])
    .where('as_built_checks.check_id', 'in', (row) =>
      row
        .selectFrom('checks')
        .innerJoin('revisions', 'revisions.revision_id', 'checks.revision_id')
        .select('checks.check_id')
        .where('revisions.family_id', '=', familyId)
        .where('checks.pack_id', 'is not', null)
        .where('checks.quantity', '=', 'length'),
    )
    .groupBy(['as_built_checks.check_id', 'takes.method', 'setups.plates'])
    .execute();
}

export function listReusedPlates(reading: Reading, familyId: number) {
  return reading
    .selectFrom('as_built_packs')
    .innerJoin('packs', 'packs.pack_id', 'as_built_packs.pack_id')
    .innerJoin('revisions', 'revisions.revision_id', 'packs.revision_id')
    .select(['as_built_packs.job_id', 'packs.name', 'as_built_packs.reused_plates'])
    .where('revisions.family_id', '=', familyId)
    .execute();
}

export function listBatchesOfJobs(reading: Reading, familyId: number) {
  const ofFamily = reading
    .selectFrom('jobs')
    .innerJoin('revisions', 'revisions.revision_id', 'jobs.revision_id')
    .select('jobs.job_id')
    .where('revisions.family_id', '=', familyId)
    .$asScalar();
  return batchesInto(reading, ofFamily).selectAll().execute();
}

export function listBatches(reading: Reading) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .select(['batch_id', 'parts.part_id', 'parts.number', 'parts.description', 'mark', 'document', 'received_on'])
    .orderBy('batch_id')
    .execute();
}

/** Answers to lines that ask for a choice, the newest of a line last. */
export function listChoices(reading: Reading, familyId: number) {
  return reading
    .selectFrom('list_answers')
    .innerJoin('list_lines', 'list_lines.list_line_id', 'list_answers.list_line_id')
    .innerJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .innerJoin('revisions', 'revisions.revision_id', 'lists.revision_id')
    .select(['list_answers.job_id', 'list_answers.says', 'list_answers.words as chosen', 'list_lines.words as line'])
    .where('revisions.family_id', '=', familyId)
    .where('list_lines.asks', '=', 'choice')
    .orderBy('list_answers.list_answer_id')
    .execute();
}

export function countBuildsByFamily(reading: Reading) {
  return reading
    .selectFrom('builds_as_delivered')
    .innerJoin('families', 'families.family_id', 'builds_as_delivered.family_id')
    .select((row) => ['families.family_id as id', 'families.name', row.fn.countAll<number>().as('builds')])
    .groupBy('families.family_id')
    .orderBy('families.name')
    .execute();
}

export async function revisionsWithBuilds(reading: Reading, familyId: number): Promise<number[]> {
  const rows = await reading
    .selectFrom('revisions')
    .select('number')
    .where('family_id', '=', familyId)
    .where((row) =>
      row.exists(row.selectFrom('jobs').select('job_id').whereRef('jobs.revision_id', '=', 'revisions.revision_id')),
    )
    .orderBy('number', 'desc')
    .execute();
  return rows.map(({ number }) => number);
}

/** Of all revisions, each name once, in the order of the newest. */
export async function packNames(reading: Reading, familyId: number): Promise<string[]> {
  const rows = await reading
    .selectFrom('packs')
    .innerJoin('revisions', 'revisions.revision_id', 'packs.revision_id')
    .select('packs.name')
    .where('revisions.family_id', '=', familyId)
    .orderBy('revisions.number', 'desc')
    .orderBy('packs.position')
    .execute();
  return [...new Set(rows.map(({ name }) => name))];
}

/** Who is on the shelf as a builder; before anything was asked nobody is. */
export function buildersOf(reading: Reading, familyId: number) {
  return reading
    .selectFrom('as_built')
    .innerJoin('people', 'people.person_id', 'as_built.builder')
    .innerJoin('jobs', 'jobs.job_id', 'as_built.job_id')
    .innerJoin('revisions', 'revisions.revision_id', 'jobs.revision_id')
    .select(['people.person_id as id', 'people.initials as name'])
    .where('revisions.family_id', '=', familyId)
    .groupBy('people.person_id')
    .orderBy('people.initials')
    .execute();
}
