// Takes and their readings in and out of the file; only ever appended.
import type { NoteKind, Phase, Setup } from '../../app/readings/readings.contract.ts';
import type { TypedReading } from '../../app/readings/typed-line.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import { among } from '../database/among.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { ReadingsTable, SetupsTable } from './readings.tables.ts';

export function findTake(reading: Reading, takeId: number) {
  return takes(reading).where('take_id', '=', takeId).executeTakeFirst();
}

/** With who began them, and of which mock-up. */
export function takes(reading: Reading) {
  return reading
    .selectFrom('takes')
    .innerJoin('people', 'people.person_id', 'takes.started_by')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'takes.mock_up_id')
    .selectAll('takes')
    .select(['people.initials', 'mock_ups.number as mock_up_number']);
}

export type TakeRow = NonNullable<Awaited<ReturnType<typeof findTake>>>;

export async function insertTake(
  writing: Writing,
  take: {
    jobId: number;
    checkId: number;
    phase: Phase;
    mode: 'quick' | 'final';
    method: ReadingMethod;
    mockUpId: number | null;
    setup: Setup | null;
    note: string;
    by: number;
    now: string;
  },
): Promise<number> {
  const setupId = take.setup && (await insertSetup(writing, take.setup));
  const { take_id } = await writing
    .insertInto('takes')
    .values({
      job_id: take.jobId,
      check_id: take.checkId,
      phase: take.phase,
      mode: take.mode,
      method: take.method,
      mock_up_id: take.mockUpId,
      setup_id: setupId,
      note: take.note,
      started_at: take.now,
      started_by: take.by,
    })
    .returning('take_id')
    .executeTakeFirstOrThrow();
  return take_id;
}

async function insertSetup(writing: Writing, setup: Setup): Promise<number> {
  const { setup_id } = await writing
    .insertInto('setups')
    .values(rowOfSetup(setup))
    .returning('setup_id')
    .executeTakeFirstOrThrow();
  return setup_id;
}

export function rowOfSetup(setup: Setup) {
  return {
    dial_base: setup.dialBase,
    is_piston_seated: setup.isPistonSeated ? 1 : 0,
    air_pa: setup.air_pa,
    port: setup.port,
    wave_state: setup.waveState,
    plates: setup.plates,
    is_open_end_up: setup.isOpenEndUp ? 1 : 0,
    dial_type: setup.dialType,
    dial_face_counts: setup.dialFaceCounts,
    mark: setup.mark,
  };
}

export async function findSetup(reading: Reading, setupId: number): Promise<Setup | undefined> {
  const row = await reading.selectFrom('setups').selectAll().where('setup_id', '=', setupId).executeTakeFirst();
  return row && setupOfRow(row);
}

export async function setupsNumbered(reading: Reading, setupIds: readonly number[]): Promise<Map<number, Setup>> {
  const rows = await reading.selectFrom('setups').selectAll().where('setup_id', 'in', among(setupIds)).execute();
  return new Map(rows.map((row) => [row.setup_id, setupOfRow(row)]));
}

/** The setup card of the newest take of this check, or of the newest take of the job that has one. */
export async function lastSetup(reading: Reading, jobId: number, checkId: number): Promise<Setup | undefined> {
  const newest = reading
    .selectFrom('takes')
    .innerJoin('setups', 'setups.setup_id', 'takes.setup_id')
    .selectAll('setups')
    .where('job_id', '=', jobId)
    .orderBy('take_id', 'desc')
    .limit(1);
  const row = (await newest.where('check_id', '=', checkId).executeTakeFirst()) ?? (await newest.executeTakeFirst());
  return row && setupOfRow(row);
}

export function setupOfRow(row: Omit<SetupsTable, 'setup_id'>): Setup {
  return {
    dialBase: row.dial_base,
    isPistonSeated: row.is_piston_seated === 1,
    air_pa: row.air_pa,
    port: row.port,
    waveState: row.wave_state,
    plates: row.plates,
    isOpenEndUp: row.is_open_end_up === 1,
    dialType: row.dial_type,
    dialFaceCounts: row.dial_face_counts,
    mark: row.mark,
  };
}

export type ReadingToKeep = {
  takeId: number;
  spot: number;
  typed: string;
  reading: TypedReading;
  supersedesId: number | null;
  reason: string;
  by: number;
  now: string;
};

export async function insertReading(writing: Writing, toKeep: ReadingToKeep): Promise<number> {
  const { reading_id } = await writing
    .insertInto('readings')
    .values(rowOfReading(toKeep))
    .returning('reading_id')
    .executeTakeFirstOrThrow();
  return reading_id;
}

export function rowOfReading({ reading, ...row }: ReadingToKeep) {
  const air = reading.method === 'air' ? reading : undefined;
  const feeler = reading.method === 'feeler' ? reading : undefined;
  const between = 'between' in reading ? reading.between : undefined;
  return {
    take_id: row.takeId,
    spot: row.spot,
    method: reading.method,
    typed: row.typed,
    push_amount: air?.push ?? null,
    air_amount: air?.air ?? null,
    is_zeroed_again: air?.isZeroedAgain ? 1 : 0,
    is_air_only: air?.isAirOnly ? 1 : 0,
    waver_amount: air?.waver ?? 0,
    goes_amount: feeler?.goes ?? null,
    stops_amount: feeler?.stops ?? null,
    feel: feeler?.feel ?? ('' as const),
    amount: 'amount' in reading ? reading.amount : null,
    first_amount: between?.first ?? null,
    second_amount: between?.second ?? null,
    supersedes_id: row.supersedesId,
    reason: row.reason,
    taken_at: row.now,
    taken_by: row.by,
  };
}

export function findReading(reading: Reading, readingId: number) {
  return readingsWithTheirHand(reading).where('readings.reading_id', '=', readingId).executeTakeFirst();
}

/** With who typed them, and what superseded them. */
export function readingsWithTheirHand(reading: Reading) {
  return reading
    .selectFrom('readings')
    .innerJoin('people', 'people.person_id', 'readings.taken_by')
    .leftJoin('readings as later', 'later.supersedes_id', 'readings.reading_id')
    .selectAll('readings')
    .select(['people.initials', 'later.reading_id as superseded_by_id']);
}

/** The columns that hold what was typed. */
export const typedColumns = [
  'readings.method',
  'readings.push_amount',
  'readings.air_amount',
  'readings.is_zeroed_again',
  'readings.is_air_only',
  'readings.waver_amount',
  'readings.goes_amount',
  'readings.stops_amount',
  'readings.feel',
  'readings.amount',
] as const;

type TypedColumn = (typeof typedColumns)[number] extends `readings.${infer Name}` ? Name : never;

/** The columns back as what was typed; the table's CHECKs promise that each method has its own. */
export function typedReadingOf(row: Pick<ReadingsTable, TypedColumn>): TypedReading {
  switch (row.method) {
    case 'air':
      return {
        method: 'air',
        push: row.push_amount,
        air: row.air_amount ?? 0,
        isZeroedAgain: row.is_zeroed_again === 1,
        isAirOnly: row.is_air_only === 1,
        waver: row.waver_amount,
      };
    case 'feeler':
      return { method: 'feeler', goes: row.goes_amount ?? 0, stops: row.stops_amount ?? 0, feel: row.feel };
    default:
      return { method: row.method, amount: row.amount ?? 0 };
  }
}

export async function insertSpotNote(
  writing: Writing,
  note: { takeId: number; spot: number; what: NoteKind; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('spot_notes')
    .values({ take_id: note.takeId, spot: note.spot, what: note.what, noted_at: note.now, noted_by: note.by })
    .execute();
}
