// Takes out of the file with all that stands in them: a handful of statements however many takes they are.
import type { NoteKind, Phase, Setup } from '../../app/readings/readings.contract.ts';
import type { TakeFigures } from '../../app/readings/take-figures.ts';
import type { TypedReading } from '../../app/readings/typed-line.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import { among } from '../database/among.ts';
import type { Reading } from '../database/tables.ts';
import { gaugesOfTakes } from '../gauges/take-gauges.repository.ts';
import { readingsWithTheirHand, setupsNumbered, type TakeRow, takes, typedReadingOf } from './readings.repository.ts';
import { figuresOfRow } from './take-figures.repository.ts';

export type WholeTake = {
  readonly takeId: number;
  readonly jobId: number;
  readonly checkId: number;
  readonly phase: Phase;
  readonly mode: 'quick' | 'final';
  readonly method: ReadingMethod;
  /** null: of no mock-up. */
  readonly mockUpNumber: number | null;
  readonly note: string;
  readonly startedAt: string;
  readonly startedBy: number;
  /** The initials of who began it. */
  readonly by: string;
  readonly setup: Setup | null;
  readonly gauge: { readonly gaugeId: number; readonly tag: string } | null;
  readonly figures: TakeFigures;
  /** Every line that was typed, superseded ones with what took their place. */
  readonly lines: ReadonlyArray<{ readonly row: ReadingRow; readonly reading: TypedReading }>;
  /** In the order they were typed, superseded ones left out. */
  readonly readings: ReadonlyArray<{ readonly spot: number; readonly reading: TypedReading }>;
  readonly notes: ReadonlyArray<{
    readonly spot: number;
    readonly what: NoteKind;
    readonly at: string;
    readonly by: string;
  }>;
  readonly willNotHold: boolean;
};

export async function findWholeTake(reading: Reading, takeId: number): Promise<WholeTake | undefined> {
  const rows = await takes(reading).where('take_id', '=', takeId).execute();
  return (await filled(reading, rows))[0];
}

/** In the order they began. */
export async function wholeTakes(reading: Reading, takeIds: readonly number[]): Promise<WholeTake[]> {
  return filled(reading, await takes(reading).where('take_id', 'in', among(takeIds)).orderBy('take_id').execute());
}

/** In the order they began. */
export async function wholeTakesOfCheck(reading: Reading, jobId: number, checkId: number): Promise<WholeTake[]> {
  const ofJob = takes(reading).where('takes.job_id', '=', jobId);
  return filled(reading, await ofJob.where('check_id', '=', checkId).orderBy('take_id').execute());
}

/** Of these checks on these jobs, in the order they began. */
export async function wholeTakesOfChecks(
  reading: Reading,
  jobIds: readonly number[],
  checkIds: readonly number[],
): Promise<WholeTake[]> {
  const rows = takes(reading).where('takes.job_id', 'in', among(jobIds)).where('check_id', 'in', among(checkIds));
  return filled(reading, await rows.orderBy('take_id').execute());
}

/** In the order they began. */
export async function wholeTakesOfJobs(reading: Reading, jobIds: readonly number[]): Promise<WholeTake[]> {
  return filled(reading, await takes(reading).where('takes.job_id', 'in', among(jobIds)).orderBy('take_id').execute());
}

async function filled(reading: Reading, rows: readonly TakeRow[]): Promise<WholeTake[]> {
  if (rows.length === 0) return [];
  const takeIds = rows.map((row) => row.take_id);
  const setups = await setupsNumbered(
    reading,
    rows.flatMap(({ setup_id }) => (setup_id === null ? [] : [setup_id])),
  );
  const gauges = new Map((await gaugesOfTakes(reading, takeIds)).map((row) => [row.take_id, row]));
  const figures = new Map((await figureRows(reading, takeIds)).map((row) => [row.take_id, row]));
  const lines = Map.groupBy(await readingRows(reading, takeIds), (row) => row.take_id);
  const notes = Map.groupBy(await noteRows(reading, takeIds), (row) => row.take_id);
  return rows.map((row) => {
    const gauge = gauges.get(row.take_id);
    const typed = (lines.get(row.take_id) ?? []).map((line) => ({ row: line, reading: typedReadingOf(line) }));
    const noted = notes.get(row.take_id) ?? [];
    return {
      takeId: row.take_id,
      jobId: row.job_id,
      checkId: row.check_id,
      phase: row.phase,
      mode: row.mode,
      method: row.method,
      mockUpNumber: row.mock_up_number,
      note: row.note,
      startedAt: row.started_at,
      startedBy: row.started_by,
      by: row.initials,
      setup: row.setup_id === null ? null : (setups.get(row.setup_id) ?? null),
      gauge: gauge ? { gaugeId: gauge.gauge_id, tag: gauge.tag } : null,
      // Every take has its figures since the moment it began.
      figures: figuresOfRow(figures.get(row.take_id)!, gauge),
      lines: typed,
      readings: typed
        .filter((line) => line.row.superseded_by_id === null)
        .map((line) => ({ spot: line.row.spot, reading: line.reading })),
      notes: noted.map((note) => ({ spot: note.spot, what: note.what, at: note.noted_at, by: note.initials })),
      willNotHold: noted.some((note) => note.what === 'will not hold air'),
    };
  });
}

export type ReadingRow = Awaited<ReturnType<typeof readingRows>>[number];

function readingRows(reading: Reading, takeIds: readonly number[]) {
  return readingsWithTheirHand(reading)
    .where('readings.take_id', 'in', among(takeIds))
    .orderBy('readings.reading_id')
    .execute();
}

function figureRows(reading: Reading, takeIds: readonly number[]) {
  return reading.selectFrom('take_figures').selectAll().where('take_id', 'in', among(takeIds)).execute();
}

function noteRows(reading: Reading, takeIds: readonly number[]) {
  return reading
    .selectFrom('spot_notes')
    .innerJoin('people', 'people.person_id', 'spot_notes.noted_by')
    .select(['take_id', 'spot', 'what', 'noted_at', 'initials'])
    .where('take_id', 'in', among(takeIds))
    .orderBy('spot_note_id')
    .execute();
}
