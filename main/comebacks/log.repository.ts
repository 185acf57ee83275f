// What came back, in and out of the file; only ever appended, the newest counts.
import type { Cause, Certainty, Covering, Outcome } from '../../app/comebacks/causes.ts';
import type { ComebackFilter } from '../../app/comebacks/log.contract.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

type Stamp = { by: number; now: string };

export async function insertComeback(
  writing: Writing,
  row: Stamp & { jobId: number; builtJobId: number },
): Promise<number> {
  const { comeback_id } = await writing
    .insertInto('comebacks')
    .values({ job_id: row.jobId, built_job_id: row.builtJobId, logged_at: row.now, logged_by: row.by })
    .returning('comeback_id')
    .executeTakeFirstOrThrow();
  return comeback_id;
}

export type CardToKeep = {
  readonly cameBackOn: string;
  readonly customerSays: string;
  readonly distance: Distance | null;
  readonly outcome: Outcome;
  readonly covered: Covering;
  readonly coveredNote: string;
  readonly cost_cents: number | null;
  readonly note: string;
};

export async function insertCard(
  writing: Writing,
  card: CardToKeep,
  more: Stamp & { comebackId: number; reason: string },
): Promise<void> {
  await writing
    .insertInto('comeback_cards')
    .values({
      comeback_id: more.comebackId,
      came_back_on: card.cameBackOn,
      customer_says: card.customerSays,
      distance_amount: card.distance?.amount ?? null,
      distance_unit: card.distance?.unit ?? null,
      outcome: card.outcome,
      covered: card.covered,
      covered_note: card.coveredNote,
      cost_cents: card.cost_cents,
      note: card.note,
      reason: more.reason,
      written_at: more.now,
      written_by: more.by,
    })
    .execute();
}

export async function insertCause(
  writing: Writing,
  row: Stamp & {
    comebackId: number;
    cause: Cause;
    packId: number | null;
    certainty: Certainty | 'taken back';
    note: string;
  },
): Promise<void> {
  await writing
    .insertInto('comeback_causes')
    .values({
      comeback_id: row.comebackId,
      cause: row.cause,
      pack_id: row.packId,
      certainty: row.certainty,
      note: row.note,
      written_at: row.now,
      written_by: row.by,
    })
    .execute();
}

export function findComeback(reading: Reading, comebackId: number) {
  return reading.selectFrom('comebacks_as_known').selectAll().where('comeback_id', '=', comebackId).executeTakeFirst();
}

/** The comebacks a ticket or a build has part in, newest first, without those logged by mistake. */
export function listComebacksOf(reading: Reading, jobIds: readonly number[]) {
  return reading
    .selectFrom('comebacks_as_known')
    .innerJoin('jobs', 'jobs.job_id', 'comebacks_as_known.job_id')
    .innerJoin('jobs as built', 'built.job_id', 'built_job_id')
    .select([
      'comeback_id',
      'comebacks_as_known.job_id',
      'jobs.number',
      'built_job_id',
      'built.number as built_number',
      'came_back_on',
      'outcome',
    ])
    .where((row) => row.or([row('comebacks_as_known.job_id', 'in', jobIds), row('built_job_id', 'in', jobIds)]))
    .where('outcome', '<>', 'logged by mistake')
    .orderBy('comeback_id', 'desc')
    .execute();
}

/** Everything logged on a ticket or against its build, by mistake or not, in order. */
export function listLoggedOn(reading: Reading, jobId: number) {
  return reading
    .selectFrom('comebacks')
    .innerJoin('jobs', 'jobs.job_id', 'comebacks.job_id')
    .innerJoin('jobs as built', 'built.job_id', 'built_job_id')
    .innerJoin('people', 'people.person_id', 'logged_by')
    .select(['comeback_id', 'built_job_id', 'jobs.number', 'built.number as built_number', 'logged_at', 'initials'])
    .where((row) => row.or([row('comebacks.job_id', '=', jobId), row('built_job_id', '=', jobId)]))
    .orderBy('comeback_id')
    .execute();
}

/** Every card, newest first. */
export async function listCards(reading: Reading, comebackId: number) {
  const rows = await reading
    .selectFrom('comeback_cards')
    .innerJoin('people', 'people.person_id', 'comeback_cards.written_by')
    .selectAll('comeback_cards')
    .select('people.initials')
    .where('comeback_id', '=', comebackId)
    .orderBy('comeback_card_id', 'desc')
    .execute();
  return rows.map((row) => ({
    cameBackOn: row.came_back_on,
    customerSays: row.customer_says,
    distance: distanceOf(row),
    outcome: row.outcome,
    covered: row.covered,
    coveredNote: row.covered_note,
    cost_cents: row.cost_cents,
    note: row.note,
    reason: row.reason,
    at: row.written_at,
    by: row.initials,
  }));
}

/** Everything ever said of its causes, newest first. */
export async function listCauses(reading: Reading, comebackId: number) {
  const rows = await reading
    .selectFrom('comeback_causes')
    .innerJoin('people', 'people.person_id', 'comeback_causes.written_by')
    .leftJoin('packs', 'packs.pack_id', 'comeback_causes.pack_id')
    .selectAll('comeback_causes')
    .select(['people.initials', 'packs.name as pack_name'])
    .where('comeback_id', '=', comebackId)
    .orderBy('comeback_cause_id', 'desc')
    .execute();
  return rows.map((row) => ({
    cause: row.cause,
    packId: row.pack_id,
    packName: row.pack_name,
    certainty: row.certainty,
    note: row.note,
    at: row.written_at,
    by: row.initials,
  }));
}

const mostLines = 500;

export function listComebacks(reading: Reading, only: ComebackFilter) {
  return reading
    .selectFrom('comebacks_as_known')
    .innerJoin('jobs', 'jobs.job_id', 'comebacks_as_known.job_id')
    .innerJoin('jobs as built', 'built.job_id', 'built_job_id')
    .innerJoin('builds_as_delivered as build', 'build.job_id', 'built_job_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .select([
      'comeback_id',
      'comebacks_as_known.job_id',
      'jobs.number',
      'built_job_id',
      'built.number as built_number',
      'families.name as family_name',
      'units.serial',
      'units.vehicle',
      'customers.name as customer_name',
      'came_back_on',
      'comebacks_as_known.distance_amount',
      'comebacks_as_known.distance_unit',
      'build.delivered_on',
      'build.in_service_on',
      'build.distance_amount as left_amount',
      'build.distance_unit as left_unit',
      'outcome',
      'covered',
      'cost_cents',
    ])
    .$if(only === 'open', (query) => query.where('outcome', '=', 'not known yet'))
    .$if(only === 'ours', (query) => query.where('outcome', '=', 'ours'))
    .orderBy('came_back_on', 'desc')
    .orderBy('comeback_id', 'desc')
    .limit(mostLines)
    .execute();
}

/** Known and suspected causes of these comebacks. */
export function listStandingCauses(reading: Reading, comebackIds: readonly number[]) {
  return reading
    .selectFrom('causes_as_known')
    .select(['comeback_id', 'cause'])
    .where('comeback_id', 'in', comebackIds)
    .where('certainty', 'in', ['known', 'suspected'])
    .orderBy('comeback_cause_id')
    .execute();
}

/** What is recorded on a ticket: checks read as found, findings that stand, photos on it. */
export async function countRecorded(reading: Reading, jobId: number) {
  const asFound = await reading
    .selectFrom('takes')
    .innerJoin('readings', 'readings.take_id', 'takes.take_id')
    .select((row) => row.fn.count<number>('takes.check_id').distinct().as('count'))
    .where('job_id', '=', jobId)
    .where('phase', '=', 'as found')
    .executeTakeFirstOrThrow();
  const findings = await reading
    .selectFrom('findings_as_known')
    .select((row) => row.fn.countAll<number>().as('count'))
    .where('job_id', '=', jobId)
    .executeTakeFirstOrThrow();
  const photos = await reading
    .selectFrom('photos')
    .select((row) => row.fn.countAll<number>().as('count'))
    .where('job_id', '=', jobId)
    .where('removed_at', 'is', null)
    .executeTakeFirstOrThrow();
  return { asFoundChecks: asFound.count, findings: findings.count, photos: photos.count };
}

export function distanceOf<U extends Distance['unit']>(row: {
  distance_amount: number | null;
  distance_unit: U | null;
}) {
  return row.distance_amount === null || row.distance_unit === null
    ? null
    : { amount: row.distance_amount, unit: row.distance_unit };
}
