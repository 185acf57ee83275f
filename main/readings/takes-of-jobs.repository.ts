// The takes of many jobs at once, with what stands in them: a handful of statements however many jobs are asked for.
import type { NoteKind, Phase, Setup } from '../../app/readings/readings.contract.ts';
import type { TakeFigures } from '../../app/readings/take-figures.ts';
import type { TypedReading } from '../../app/readings/typed-line.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import type { Reading } from '../database/tables.ts';
import { setupOfRow, typedColumns, typedReadingOf } from './readings.repository.ts';
import { figuresOfRow } from './take-figures.repository.ts';

export type TakeOfJob = {
  readonly takeId: number;
  readonly jobId: number;
  readonly checkId: number;
  readonly phase: Phase;
  readonly method: ReadingMethod;
  readonly setup: Setup | null;
  readonly figures: TakeFigures;
  readonly startedBy: number;
  /** The initials of who began it. */
  readonly by: string;
  /** In the order they were typed, superseded ones left out. */
  readonly readings: ReadonlyArray<{ readonly spot: number; readonly reading: TypedReading }>;
  readonly notes: ReadonlyArray<{ readonly what: NoteKind }>;
};

/** In the order they began. */
export async function takesOfJobs(reading: Reading, jobIds: readonly number[]): Promise<TakeOfJob[]> {
  const rows = await reading
    .selectFrom('takes')
    .innerJoin('people', 'people.person_id', 'takes.started_by')
    .selectAll('takes')
    .select('people.initials')
    .where('takes.job_id', 'in', jobIds)
    .orderBy('takes.take_id')
    .execute();
  const setups = await setupsOf(reading, jobIds);
  const figures = await figuresOf(reading, jobIds);
  const readings = await standingReadings(reading, jobIds);
  const notes = await notesOf(reading, jobIds);
  return rows.map((row) => ({
    takeId: row.take_id,
    jobId: row.job_id,
    checkId: row.check_id,
    phase: row.phase,
    method: row.method,
    setup: row.setup_id === null ? null : (setups.get(row.setup_id) ?? null),
    // Every take has its figures since the moment it began.
    figures: figures.get(row.take_id)!,
    startedBy: row.started_by,
    by: row.initials,
    readings: readings.get(row.take_id) ?? [],
    notes: notes.get(row.take_id) ?? [],
  }));
}

async function setupsOf(reading: Reading, jobIds: readonly number[]): Promise<Map<number, Setup>> {
  const rows = await reading
    .selectFrom('takes')
    .innerJoin('setups', 'setups.setup_id', 'takes.setup_id')
    .selectAll('setups')
    .where('takes.job_id', 'in', jobIds)
    .execute();
  return new Map(rows.map((row) => [row.setup_id, setupOfRow(row)]));
}

async function figuresOf(reading: Reading, jobIds: readonly number[]): Promise<Map<number, TakeFigures>> {
  const gauges = await reading
    .selectFrom('takes')
    .innerJoin('take_gauges', 'take_gauges.take_id', 'takes.take_id')
    .innerJoin('gauges_as_known', 'gauges_as_known.gauge_id', 'take_gauges.gauge_id')
    .selectAll('take_gauges')
    .select('gauges_as_known.tag')
    .where('takes.job_id', 'in', jobIds)
    .execute();
  const gaugeOf = new Map(gauges.map((row) => [row.take_id, row]));
  const rows = await reading
    .selectFrom('takes')
    .innerJoin('take_figures', 'take_figures.take_id', 'takes.take_id')
    .selectAll('take_figures')
    .where('takes.job_id', 'in', jobIds)
    .execute();
  return new Map(rows.map((row) => [row.take_id, figuresOfRow(row, gaugeOf.get(row.take_id))]));
}

async function standingReadings(reading: Reading, jobIds: readonly number[]) {
  const rows = await reading
    .selectFrom('takes')
    .innerJoin('readings', 'readings.take_id', 'takes.take_id')
    .leftJoin('readings as later', 'later.supersedes_id', 'readings.reading_id')
    .select(['readings.take_id', 'readings.spot', ...typedColumns])
    .where('takes.job_id', 'in', jobIds)
    .where('later.reading_id', 'is', null)
    .orderBy('readings.reading_id')
    .execute();
  return byTake(rows, (row) => ({ spot: row.spot, reading: typedReadingOf(row) }));
}

async function notesOf(reading: Reading, jobIds: readonly number[]) {
  const rows = await reading
    .selectFrom('takes')
    .innerJoin('spot_notes', 'spot_notes.take_id', 'takes.take_id')
    .select(['takes.take_id', 'spot_notes.what'])
    .where('takes.job_id', 'in', jobIds)
    .execute();
  return byTake(rows, ({ what }) => ({ what }));
}

function byTake<Row extends { readonly take_id: number }, T>(
  rows: readonly Row[],
  read: (row: Row) => T,
): Map<number, T[]> {
  const values = new Map<number, T[]>();
  for (const row of rows) {
    const ofTake = values.get(row.take_id);
    if (ofTake) ofTake.push(read(row));
    else values.set(row.take_id, [read(row)]);
  }
  return values;
}
