// Comebacks with what they cost, and deliveries counted by quarter, out of the file.
import { sql } from 'kysely';
import type { Reading } from '../database/tables.ts';

/** Every comeback that was not logged by mistake, under the family of its build. */
export function listCostly(reading: Reading) {
  return reading
    .selectFrom('comebacks_as_known')
    .innerJoin('jobs', 'jobs.job_id', 'built_job_id')
    .innerJoin('revisions', 'revisions.revision_id', 'jobs.revision_id')
    .select(['comeback_id', 'family_id', 'came_back_on', 'outcome', 'covered', 'cost_cents'])
    .where('outcome', '<>', 'logged by mistake')
    .execute();
}

export function listStandingCauses(reading: Reading) {
  return reading
    .selectFrom('causes_as_known')
    .select(['comeback_id', 'cause'])
    .where('certainty', 'in', ['known', 'suspected'])
    .orderBy('comeback_cause_id')
    .execute();
}

/** Units that left, by family and the quarter of the day they left. */
export function countDelivered(reading: Reading) {
  const quarter = sql<string>`substr(delivered_on, 1, 4) || ' Q' || ((substr(delivered_on, 6, 2) + 2) / 3)`;
  return reading
    .selectFrom('builds_as_delivered')
    .select((row) => ['family_id as familyId', quarter.as('quarter'), row.fn.countAll<number>().as('count')])
    .groupBy(['family_id', quarter])
    .execute();
}

export function listFamilyNames(reading: Reading) {
  return reading.selectFrom('families').select(['family_id as familyId', 'name']).orderBy('name').execute();
}
