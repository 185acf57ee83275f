// What the trace of a comeback needs of many builds at once: a handful of statements, however many builds are asked for.
import { sql } from 'kysely';
import type { Reading } from '../database/tables.ts';
import { batchesInto } from './batches-into.repository.ts';

/** As one value of the statement, which is then read in no time however many they are. */
function amongIds(ids: readonly number[]) {
  return sql<number>`(select value from json_each(${JSON.stringify(ids)}))`;
}

function isAmong(column: string, ids: readonly number[]) {
  return sql<boolean>`${sql.ref(column)} in ${amongIds(ids)}`;
}

export function findComeback(reading: Reading, comebackId: number) {
  return reading
    .selectFrom('comebacks_as_known')
    .innerJoin('jobs', 'jobs.job_id', 'comebacks_as_known.job_id')
    .innerJoin('jobs as built', 'built.job_id', 'comebacks_as_known.built_job_id')
    .innerJoin('revisions', 'revisions.revision_id', 'built.revision_id')
    .innerJoin('families', 'families.family_id', 'revisions.family_id')
    .select([
      'comebacks_as_known.comeback_id',
      'comebacks_as_known.job_id',
      'comebacks_as_known.built_job_id',
      'jobs.number',
      'built.number as built_number',
      'built.revision_id',
      'revisions.family_id',
      'families.name as family_name',
    ])
    .where('comeback_id', '=', comebackId)
    .executeTakeFirst();
}

/**
 * Delivered builds of a family that took on as much as this one did, nearest to it in the order they came in: at most
 * `most` before it and as many after. Neither the build nor its comeback is among them.
 */
export async function nearestBuilds(
  reading: Reading,
  of: { readonly jobId: number; readonly familyId: number; readonly returnJobId: number },
  most: number,
): Promise<[before: number[], after: number[]]> {
  const side = (compare: '<' | '>', order: 'asc' | 'desc') =>
    reading
      .selectFrom('builds_as_delivered')
      .select('job_id')
      // The plus keeps SQLite walking along the jobs from this one, instead of sorting all of the family.
      .where(sql<boolean>`+family_id = ${of.familyId}`)
      .where('job_id', compare, of.jobId)
      .where('job_id', '<>', of.returnJobId)
      .where(sql<boolean>`${extentOf(sql.ref('builds_as_delivered.job_id'))} is ${extentOf(sql.val(of.jobId))}`)
      .orderBy('job_id', order)
      .limit(most)
      .execute();
  const [before, after] = [await side('<', 'desc'), await side('>', 'asc')];
  return [before.map((row) => row.job_id), after.map((row) => row.job_id)];
}

/** The name of the small job it is, or null for the whole rebuild. */
function extentOf(jobId: ReturnType<typeof sql.ref> | ReturnType<typeof sql.val<number>>) {
  return sql`(select name from job_extents where job_extents.job_id = ${jobId}
    and not exists (select 1 from jobs_widened where jobs_widened.job_id = job_extents.job_id))`;
}

/** Those that are not on the shelf, or were put there by another way of reckoning. */
export async function notOnShelf(reading: Reading, jobIds: readonly number[], reckoning: number): Promise<number[]> {
  const rows = await reading
    .selectFrom('as_built')
    .select('job_id')
    .where(isAmong('job_id', jobIds))
    .where('reckoning', '=', reckoning)
    .execute();
  const there = new Set(rows.map((row) => row.job_id));
  return jobIds.filter((jobId) => !there.has(jobId));
}

export function buildsOf(reading: Reading, jobIds: readonly number[]) {
  return reading
    .selectFrom('jobs')
    .leftJoin('as_built', 'as_built.job_id', 'jobs.job_id')
    .leftJoin('people', 'people.person_id', 'as_built.builder')
    .select(['jobs.job_id', 'jobs.number', 'jobs.revision_id', 'people.initials'])
    .where(isAmong('jobs.job_id', jobIds))
    .orderBy('jobs.job_id')
    .execute();
}

/** Those of the builds that came back and were not found to be without fault or somebody else’s. */
export async function cameBack(reading: Reading, jobIds: readonly number[]): Promise<Set<number>> {
  const rows = await reading
    .selectFrom('comebacks_as_known')
    .select('built_job_id')
    .where(isAmong('built_job_id', jobIds))
    .where('outcome', 'in', ['ours', 'not known yet'])
    .execute();
  return new Set(rows.map((row) => row.built_job_id));
}

/** For every check of a revision, the checks of its family with the same name and the same limits, itself among them. */
export function sameChecks(reading: Reading, revisionId: number) {
  return reading
    .selectFrom('checks as mine')
    .innerJoin('revisions as of', 'of.revision_id', 'mine.revision_id')
    .innerJoin('revisions', 'revisions.family_id', 'of.family_id')
    .innerJoin('checks', (join) =>
      join
        .onRef('checks.revision_id', '=', 'revisions.revision_id')
        .onRef('checks.name', '=', 'mine.name')
        .onRef('checks.quantity', '=', 'mine.quantity')
        .onRef('checks.limit_kind', '=', 'mine.limit_kind')
        .onRef('checks.low_amount', 'is', 'mine.low_amount')
        .onRef('checks.target_amount', 'is', 'mine.target_amount')
        .onRef('checks.high_amount', 'is', 'mine.high_amount'),
    )
    .select(['mine.check_id as mine', 'checks.check_id', 'checks.revision_id'])
    .where('mine.revision_id', '=', revisionId)
    .execute();
}

/** The figures of these checks on the shelf, with how each was read. */
export function figuresOf(reading: Reading, jobIds: readonly number[], checkIds: readonly number[]) {
  return reading
    .selectFrom('as_built_checks')
    .innerJoin('takes', 'takes.take_id', 'as_built_checks.take_id')
    .leftJoin('setups', 'setups.setup_id', 'takes.setup_id')
    .select([
      'as_built_checks.job_id',
      'as_built_checks.check_id',
      'as_built_checks.take_id',
      'amount',
      'lowest',
      'highest',
      'expanded',
      'verdict',
      'outside_by',
      'takes.method',
      'plates',
      'wave_state',
      'dial_base',
      'is_piston_seated',
    ])
    .where(isAmong('as_built_checks.job_id', jobIds))
    .where(isAmong('as_built_checks.check_id', checkIds))
    .execute();
}

/** Checks let stand, the newest last; one read again since speaks for itself. */
export function overridesOf(reading: Reading, jobIds: readonly number[]) {
  return reading
    .selectFrom('overrides')
    .innerJoin('people', 'people.person_id', 'overrides.overridden_by')
    .leftJoin('as_built_checks', (join) =>
      join
        .onRef('as_built_checks.job_id', '=', 'overrides.job_id')
        .onRef('as_built_checks.check_id', '=', 'overrides.check_id'),
    )
    .leftJoin('takes', 'takes.take_id', 'as_built_checks.take_id')
    .select(['overrides.job_id', 'overrides.check_id', 'overrides.reason', 'people.initials'])
    .where(isAmong('overrides.job_id', jobIds))
    .where((row) => row.or([row('takes.take_id', 'is', null), row('takes.started_at', '<=', row.ref('overridden_at'))]))
    .orderBy('override_id')
    .execute();
}

/** For every line of a revision's lists, the lines of its family with the same list, words and ask, itself among them. */
export function sameLines(reading: Reading, revisionId: number) {
  return reading
    .selectFrom('list_lines as mine')
    .innerJoin('lists as of_list', 'of_list.list_id', 'mine.list_id')
    .innerJoin('revisions as of', 'of.revision_id', 'of_list.revision_id')
    .innerJoin('revisions', 'revisions.family_id', 'of.family_id')
    .innerJoin('lists', (join) =>
      join
        .onRef('lists.revision_id', '=', 'revisions.revision_id')
        .onRef('lists.name', '=', 'of_list.name')
        .onRef('lists.gone_through', '=', 'of_list.gone_through'),
    )
    .innerJoin('list_lines', (join) =>
      join
        .onRef('list_lines.list_id', '=', 'lists.list_id')
        .onRef('list_lines.words', '=', 'mine.words')
        .onRef('list_lines.asks', '=', 'mine.asks')
        .onRef('list_lines.expected_count', 'is', 'mine.expected_count'),
    )
    .select(['mine.list_line_id as mine', 'list_lines.list_line_id', 'lists.revision_id'])
    .where('of_list.revision_id', '=', revisionId)
    .where('of_list.gone_through', 'in', ['build', 'final', 'delivery'])
    .execute();
}

/** The newest answer to each of these lines. */
export function answersOf(reading: Reading, jobIds: readonly number[], lineIds: readonly number[]) {
  return (
    reading
      .selectFrom('list_answers')
      .select(['job_id', 'list_line_id', 'says', 'words', 'became', 'number', 'seconds', 'reason'])
      // SQLite takes the other columns from the row that holds the maximum.
      .select((row) => row.fn.max('list_answer_id').as('newest'))
      .where(isAmong('job_id', jobIds))
      .where(isAmong('list_line_id', lineIds))
      .groupBy(['job_id', 'list_line_id'])
      .execute()
  );
}

/** The packs of each job’s sheet; reused plates are null where nobody wrote down what lay in it. */
export function packsOf(reading: Reading, jobIds: readonly number[]) {
  return reading
    .selectFrom('jobs')
    .innerJoin('packs', 'packs.revision_id', 'jobs.revision_id')
    .leftJoin('as_built_packs', (join) =>
      join.onRef('as_built_packs.job_id', '=', 'jobs.job_id').onRef('as_built_packs.pack_id', '=', 'packs.pack_id'),
    )
    .select(['jobs.job_id', 'packs.pack_id', 'packs.name', 'reused_plates'])
    .where(isAmong('jobs.job_id', jobIds))
    .orderBy('packs.position')
    .execute();
}

/** Batches that went into a job, pulled and not brought back, or in a plate of the last mock-up of a pack. */
export function batchesOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .select(['batches.batch_id', 'batches.part_id', 'parts.number', 'mark', 'document', 'received_on'])
    .where('batches.batch_id', 'in', batchesInto(reading, amongIds([jobId])).select('batch_id'))
    .orderBy('batches.batch_id')
    .execute();
}

/** Which of these jobs had which of these batches in them. */
export function goingsOf(reading: Reading, jobIds: readonly number[], batchIds: readonly number[]) {
  return batchesInto(reading, amongIds(jobIds)).selectAll().where(isAmong('batch_id', batchIds)).execute();
}

/** The newest word on each cause, over all packs; the surest one counts. */
export function causesOf(reading: Reading, comebackId: number) {
  return reading
    .selectFrom('causes_as_known')
    .select(['cause', 'certainty'])
    .where('comeback_id', '=', comebackId)
    .execute();
}
