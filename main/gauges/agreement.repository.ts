// Pairs of methods and the builds of a family, out of the file and into it.
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { MethodPairsTable, PairableMethod } from './gauges.tables.ts';

/** So many takes hold more pairs than a plot can show apart. */
const takesLookedThrough = 1000;

/** Takes of packs by either method that may pair: what was not mocked up has no state to be alike in. Oldest first. */
export async function pairableTakes(reading: Reading, methods: readonly ReadingMethod[]) {
  // One method at a time: the index on it gives the newest first, and looks no further than is asked for.
  const takes = await Promise.all(methods.map((method) => pairableTakesBy(reading, method)));
  return takes
    .flat()
    .toSorted((a, b) => a.take_id - b.take_id)
    .slice(-takesLookedThrough);
}

function pairableTakesBy(reading: Reading, method: ReadingMethod) {
  return reading
    .selectFrom('takes')
    .innerJoin('checks', 'checks.check_id', 'takes.check_id')
    .innerJoin('packs', 'packs.pack_id', 'checks.pack_id')
    .innerJoin('jobs', 'jobs.job_id', 'takes.job_id')
    .innerJoin('people', 'people.person_id', 'takes.started_by')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'takes.mock_up_id')
    .select([
      'takes.take_id',
      'takes.job_id',
      'takes.method',
      'takes.phase',
      'takes.started_at',
      'packs.pack_id',
      'packs.name as pack',
      'jobs.number as job_number',
      'people.initials',
      'mock_ups.number',
    ])
    .where('takes.method', '=', method)
    .where('checks.quantity', '=', 'length')
    .where((where) => where.or([where('takes.phase', '=', 'as found'), where('mock_ups.number', 'is not', null)]))
    .where((where) =>
      where.not(
        where.exists(
          where
            .selectFrom('spot_notes')
            .select('spot_note_id')
            .whereRef('spot_notes.take_id', '=', 'takes.take_id')
            .where('what', '=', 'will not hold air'),
        ),
      ),
    )
    .orderBy('takes.take_id', 'desc')
    .limit(takesLookedThrough)
    .execute();
}

export type PairableTakeRow = Awaited<ReturnType<typeof pairableTakes>>[number];

/** Entered pairs of these two methods, either way round; superseded ones left out. */
export function enteredPairs(reading: Reading, methods: readonly PairableMethod[]) {
  return reading
    .selectFrom('method_pairs')
    .innerJoin('people', 'people.person_id', 'method_pairs.paired_by')
    .leftJoin('method_pairs as later', 'later.supersedes_id', 'method_pairs.method_pair_id')
    .selectAll('method_pairs')
    .select('people.initials')
    .where('method_pairs.first_method', 'in', methods)
    .where('method_pairs.second_method', 'in', methods)
    .where('later.method_pair_id', 'is', null)
    .orderBy('method_pairs.method_pair_id')
    .execute();
}

export function isSuperseded(reading: Reading, methodPairId: number) {
  return reading
    .selectFrom('method_pairs')
    .leftJoin('method_pairs as later', 'later.supersedes_id', 'method_pairs.method_pair_id')
    .select('later.method_pair_id')
    .where('method_pairs.method_pair_id', '=', methodPairId)
    .executeTakeFirst();
}

export async function insertPair(writing: Writing, pair: Omit<MethodPairsTable, 'method_pair_id'>): Promise<number> {
  const { method_pair_id } = await writing
    .insertInto('method_pairs')
    .values(pair)
    .returning('method_pair_id')
    .executeTakeFirstOrThrow();
  return method_pair_id;
}

/** The newest final take of a check of this name on each job of the family that holds a reading; newest job first. */
export function finalTakes(reading: Reading, familyId: number, checkName: string, most: number) {
  return reading
    .selectFrom('takes')
    .innerJoin('checks', 'checks.check_id', 'takes.check_id')
    .innerJoin('jobs', 'jobs.job_id', 'takes.job_id')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .select((select) => [select.fn.max<number>('takes.take_id').as('take_id'), 'jobs.number as job_number'])
    .where('units.family_id', '=', familyId)
    .where('checks.name', '=', checkName)
    .where('takes.phase', '=', 'final')
    .where((where) =>
      where.exists(
        where.selectFrom('readings').select('reading_id').whereRef('readings.take_id', '=', 'takes.take_id'),
      ),
    )
    .groupBy('jobs.job_id')
    .orderBy('take_id', 'desc')
    .limit(most)
    .execute();
}
