// Tickets in and out of the file.
import { type ExpressionBuilder, sql } from 'kysely';
import type { Reading, Tables, Writing } from '../database/tables.ts';

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
    .selectFrom('jobs_in_stages')
    .innerJoin('stages', 'stages.stage_id', 'jobs_in_stages.stage_id')
    .selectAll('stages')
    .where('job_id', '=', jobId)
    .executeTakeFirstOrThrow();
}

export function listStageEntries(reading: Reading, jobId: number) {
  return reading
    .selectFrom('stage_entries')
    .innerJoin('people', 'people.person_id', 'stage_entries.entered_by')
    .innerJoin('stages', 'stages.stage_id', 'stage_entries.stage_id')
    .select(['stage_entry_id', 'stage_entries.stage_id', 'stages.name', 'entered_at', 'initials'])
    .where('job_id', '=', jobId)
    .orderBy('stage_entry_id')
    .execute();
}

/** Jobs by what is written down of them, newest first. Every word must be held somewhere; none holds for all. */
export function listJobs(reading: Reading, filter: { words: readonly string[]; includeClosed: boolean }) {
  const [word, ...more] = filter.words;
  const number = word !== undefined && more.length === 0 && /^[1-9]\d{0,8}$/.test(word) ? Number(word) : null;
  const { indexed, short } = byLength(filter.words);
  return (
    reading
      .selectFrom('jobs')
      .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
      .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
      .innerJoin('families', 'families.family_id', 'units.family_id')
      .innerJoin('jobs_in_stages', 'jobs_in_stages.job_id', 'jobs.job_id')
      .innerJoin('stages', 'stages.stage_id', 'jobs_in_stages.stage_id')
      .innerJoin('stage_entries', 'stage_entries.stage_entry_id', 'jobs_in_stages.stage_entry_id')
      .innerJoin('people', 'people.person_id', 'stage_entries.entered_by')
      .select([
        'jobs.job_id as jobId',
        'jobs.number',
        'stages.stage_id as stageId',
        'stages.name as stageName',
        'stages.is_closed',
        'jobs.opened_at as openedAt',
        'stage_entries.entered_at as enteredAt',
        'people.initials as enteredBy',
        'customers.name as customerName',
        'families.name as familyName',
        'units.serial',
        'units.vehicle',
        'units.use',
      ])
      .select((row) => [
        newestComplaint(row).as('complaint'),
        newestPromise(row).as('promisedOn'),
        newestDelivery(row).as('deliveredOn'),
        row.fn.coalesce(nameOfExtent(row), row.val('')).as('extentName'),
      ])
      .$if(indexed.length > 0, (query) => query.where('jobs.job_id', 'in', (row) => jobsHolding(row, indexed)))
      .$if(short.length > 0, (query) =>
        query.where((row) =>
          row.exists(
            row
              .selectFrom('job_words')
              .select('job_words.rowid')
              .whereRef('job_words.rowid', '=', 'jobs.job_id')
              .where((held) => held.and(short.map(holdsShort))),
          ),
        ),
      )
      .$if(!filter.includeClosed, (query) => query.where('stages.is_closed', '=', 0))
      // A number typed alone is the job's own before it is a piece of anything else.
      .$if(number !== null, (query) => query.orderBy((row) => row('jobs.number', '=', number), 'desc'))
      .orderBy('jobs.job_id', 'desc')
      .limit(500)
      .execute()
  );
}

/** The numbers in the book of the newest jobs that hold each of the words, without looking at the older ones. */
export async function newestJobsHolding(reading: Reading, words: readonly string[], limit: number): Promise<number[]> {
  const { indexed, short } = byLength(words);
  const rows = await reading
    .selectFrom('job_words')
    .select('rowid')
    .$if(indexed.length > 0, (query) => query.where(holdsIndexed(indexed)))
    .where((held) => held.and(short.map(holdsShort)))
    .orderBy('rowid', 'desc')
    .limit(limit)
    .execute();
  return rows.map(({ rowid }) => rowid);
}

/** The words that the search has in its index, and those that are too short for it. */
function byLength(words: readonly string[]) {
  const isIndexed = (word: string) => [...word].length >= 3;
  return { indexed: words.filter(isIndexed), short: words.filter((word) => !isIndexed(word)) };
}

type Within = ExpressionBuilder<Tables, 'jobs'>;

function jobsHolding(row: Pick<Within, 'selectFrom'>, words: readonly string[]) {
  return row.selectFrom('job_words').select('job_words.rowid').where(holdsIndexed(words));
}

function holdsIndexed(words: readonly string[]) {
  const all = words.map((word) => `"${word.replaceAll('"', '""')}"`).join(' AND ');
  return sql<boolean>`job_words match ${all}`;
}

function holdsShort(word: string) {
  const fragment = `%${word.replace(/[\\%_]/g, '\\$&')}%`;
  return sql<boolean>`job_words.words like ${fragment} escape '\\'`;
}

// Every job has an intake from the moment it is opened.
function newestComplaint(row: Within) {
  const newest = row
    .selectFrom('intakes')
    .select('intakes.complaint')
    .whereRef('intakes.job_id', '=', 'jobs.job_id')
    .orderBy('intakes.intake_id', 'desc')
    .limit(1);
  return row.fn.coalesce(newest, row.val(''));
}

function newestPromise(row: Within) {
  return row
    .selectFrom('promises')
    .select('promises.promised_on')
    .whereRef('promises.job_id', '=', 'jobs.job_id')
    .orderBy('promises.promise_id', 'desc')
    .limit(1);
}

function newestDelivery(row: Within) {
  return row
    .selectFrom('deliveries')
    .select('deliveries.delivered_on')
    .whereRef('deliveries.job_id', '=', 'jobs.job_id')
    .orderBy('deliveries.delivery_id', 'desc')
    .limit(1);
}

function nameOfExtent(row: Within) {
  return row
    .selectFrom('job_extents')
    .leftJoin('jobs_widened', 'jobs_widened.job_id', 'job_extents.job_id')
    .select('job_extents.name')
    .whereRef('job_extents.job_id', '=', 'jobs.job_id')
    .where('jobs_widened.job_id', 'is', null);
}

/** Every visit of these units, newest first. */
export function listVisits(reading: Reading, of: { unitId: number | null; serial: string }) {
  return reading
    .selectFrom('jobs')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .innerJoin('jobs_in_stages', 'jobs_in_stages.job_id', 'jobs.job_id')
    .innerJoin('stages', 'stages.stage_id', 'jobs_in_stages.stage_id')
    .select([
      'jobs.job_id as jobId',
      'jobs.number',
      'jobs.opened_at as openedAt',
      'stages.name as stageName',
      'stages.is_closed',
      'customers.name as customerName',
    ])
    .select((row) => newestComplaint(row).as('complaint'))
    .where('jobs.unit_id', 'in', (units) =>
      units
        .selectFrom('units as same')
        .select('same.unit_id')
        .where('same.unit_id', '=', of.unitId ?? 0)
        .union(
          units
            .selectFrom('units as same')
            .select('same.unit_id')
            .where(sql`same.serial collate nocase`, '=', of.serial)
            .where('same.serial', '<>', ''),
        ),
    )
    .orderBy('jobs.job_id', 'desc')
    .limit(50)
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
