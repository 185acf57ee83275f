// Repeat tests and their readings in and out of the file.
import { repeatsOfStudy, studyRows } from '../../app/gauges/study-cells.ts';
import type { OwnRepeats } from '../../app/readings/repeatability.ts';
import type { PooledMethod } from '../../app/readings/take-figures.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { StudiesTable, StudyReadsTable } from './gauges.tables.ts';

/** Older tests are of other hands. */
const testsLookedBackOn = 20;

export function listStudies(reading: Reading) {
  return studies(reading).execute();
}

export function findStudy(reading: Reading, studyId: number) {
  return studies(reading).where('studies.study_id', '=', studyId).executeTakeFirst();
}

export type StudyRowOfFile = NonNullable<Awaited<ReturnType<typeof findStudy>>>;

function studies(reading: Reading) {
  return reading
    .selectFrom('studies')
    .innerJoin('people', 'people.person_id', 'studies.started_by')
    .leftJoin('gauges_as_known', 'gauges_as_known.gauge_id', 'studies.gauge_id')
    .selectAll('studies')
    .select(['people.initials', 'gauges_as_known.tag'])
    .orderBy('studies.study_id', 'desc');
}

export async function partsOfStudies(reading: Reading, studyIds: readonly number[]) {
  const rows = await reading
    .selectFrom('study_parts')
    .selectAll()
    .where('study_id', 'in', studyIds)
    .orderBy('study_id')
    .orderBy('position')
    .execute();
  return Map.groupBy(rows, (row) => row.study_id);
}

export async function peopleOfStudies(reading: Reading, studyIds: readonly number[]) {
  const rows = await reading
    .selectFrom('study_people')
    .innerJoin('people', 'people.person_id', 'study_people.person_id')
    .select(['study_people.study_id', 'people.person_id', 'people.initials', 'people.name'])
    .where('study_people.study_id', 'in', studyIds)
    .orderBy('study_people.study_id')
    .orderBy('study_people.position')
    .execute();
  return Map.groupBy(rows, (row) => row.study_id);
}

/** What stands, in the order it was asked for. */
export async function readsOfStudies(reading: Reading, studyIds: readonly number[]) {
  const rows = await reading
    .selectFrom('study_reads')
    .leftJoin('study_reads as later', 'later.supersedes_id', 'study_reads.study_read_id')
    .selectAll('study_reads')
    .where('study_reads.study_id', 'in', studyIds)
    .where('later.study_read_id', 'is', null)
    .orderBy('study_reads.study_id')
    .orderBy('study_reads.place')
    .execute();
  return Map.groupBy(rows, (row) => row.study_id);
}

export async function insertStudy(
  writing: Writing,
  study: Omit<StudiesTable, 'study_id'>,
  parts: readonly string[],
  people: readonly number[],
): Promise<number> {
  const { study_id } = await writing
    .insertInto('studies')
    .values(study)
    .returning('study_id')
    .executeTakeFirstOrThrow();
  await writing
    .insertInto('study_parts')
    .values(parts.map((name, index) => ({ study_id, position: index + 1, name })))
    .execute();
  await writing
    .insertInto('study_people')
    .values(people.map((person_id, index) => ({ study_id, position: index + 1, person_id })))
    .execute();
  return study_id;
}

export async function insertRead(writing: Writing, read: Omit<StudyReadsTable, 'study_read_id'>): Promise<void> {
  await writing.insertInto('study_reads').values(read).execute();
}

/** The repeats of the newest finished tests by this method, added up. */
export async function repeatsOfTests(reading: Reading, method: PooledMethod): Promise<OwnRepeats> {
  const newest = await studies(reading).where('studies.method', '=', method).limit(testsLookedBackOn).execute();
  const ids = newest.map(({ study_id }) => study_id);
  const [parts, people, reads] = [
    await partsOfStudies(reading, ids),
    await peopleOfStudies(reading, ids),
    await readsOfStudies(reading, ids),
  ];
  let sumOfSquares = 0;
  let degreesOfFreedom = 0;
  for (const { study_id, trials, seed } of newest) {
    const size = { parts: parts.get(study_id)?.length ?? 0, people: people.get(study_id)?.length ?? 0, trials };
    const amounts = (reads.get(study_id) ?? []).map((row) => row.amount_nm);
    if (amounts.length < size.parts * size.people * trials) continue;
    const repeats = repeatsOfStudy(studyRows(size, seed, amounts));
    sumOfSquares += repeats.sumOfSquares;
    degreesOfFreedom += repeats.degreesOfFreedom;
  }
  return { sumOfSquares, degreesOfFreedom };
}
