// Lines and kept traces in and out of the file.
import type { GaugeLine, KeptTrace, LineSettings, Trace } from '../../app/indicators/indicators.contract.ts';
import { packTrace, unpackTrace } from '../../app/indicators/kept-trace.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { GaugeLinesTable } from './indicators.tables.ts';

export async function listLines(reading: Reading): Promise<GaugeLine[]> {
  const rows = await linesWithGauge(reading).orderBy('gauge_lines.gauge_line_id').execute();
  return rows.map(lineOfRow);
}

export async function findLine(reading: Reading, lineId: number): Promise<GaugeLine | undefined> {
  const row = await linesWithGauge(reading).where('gauge_lines.gauge_line_id', '=', lineId).executeTakeFirst();
  return row && lineOfRow(row);
}

function linesWithGauge(reading: Reading) {
  return reading
    .selectFrom('gauge_lines')
    .leftJoin('line_gauges', 'line_gauges.gauge_line_id', 'gauge_lines.gauge_line_id')
    .selectAll('gauge_lines')
    .select('line_gauges.gauge_id');
}

export async function insertLine(writing: Writing, settings: LineSettings): Promise<number> {
  const { gauge_line_id } = await writing
    .insertInto('gauge_lines')
    .values({ ...columnsOf(settings), is_retired: 0 })
    .returning('gauge_line_id')
    .executeTakeFirstOrThrow();
  await setGauge(writing, gauge_line_id, settings);
  return gauge_line_id;
}

export async function changeLine(writing: Writing, lineId: number, settings: LineSettings): Promise<void> {
  await writing.updateTable('gauge_lines').set(columnsOf(settings)).where('gauge_line_id', '=', lineId).execute();
  await setGauge(writing, lineId, settings);
}

async function setGauge(writing: Writing, lineId: number, { gaugeId }: LineSettings): Promise<void> {
  await writing.deleteFrom('line_gauges').where('gauge_line_id', '=', lineId).execute();
  if (gaugeId === null) return;
  await writing.insertInto('line_gauges').values({ gauge_line_id: lineId, gauge_id: gaugeId }).execute();
}

export async function retireLine(writing: Writing, lineId: number): Promise<void> {
  await writing.updateTable('gauge_lines').set({ is_retired: 1 }).where('gauge_line_id', '=', lineId).execute();
}

function columnsOf(settings: LineSettings) {
  const serial = settings.source === 'serial' ? settings : null;
  return {
    name: settings.name,
    source: settings.source,
    path: serial?.path ?? null,
    baud_rate: serial?.baudRate ?? null,
    data_bits: serial?.dataBits ?? null,
    parity: serial?.parity ?? null,
    stop_bits: serial?.stopBits ?? null,
    request: serial?.request ?? null,
    practice: settings.source === 'practice' ? settings.practice : null,
    pattern: settings.pattern,
    unit: settings.unit,
    is_reversed: settings.isReversed ? 1 : 0,
    step_nm: settings.step_nm,
    still_within_steps: settings.stillWithin_steps,
    still_for_ms: settings.stillFor_ms,
    every_ms: settings.every_ms,
  };
}

type LineRow = Omit<GaugeLinesTable, 'gauge_line_id'> & { gauge_line_id: number; gauge_id: number | null };

function lineOfRow(row: LineRow): GaugeLine {
  const says = {
    lineId: row.gauge_line_id,
    isRetired: row.is_retired === 1,
    name: row.name,
    pattern: row.pattern,
    unit: row.unit,
    isReversed: row.is_reversed === 1,
    step_nm: row.step_nm,
    stillWithin_steps: row.still_within_steps,
    stillFor_ms: row.still_for_ms,
    every_ms: row.every_ms,
    gaugeId: row.gauge_id,
  };
  // The table's CHECK promises that a line has the columns of its source.
  if (row.source === 'practice') return { ...says, source: 'practice', practice: row.practice ?? 'steady' };
  return {
    ...says,
    source: 'serial',
    path: row.path ?? '',
    baudRate: row.baud_rate ?? 0,
    dataBits: row.data_bits ?? 8,
    parity: row.parity ?? 'none',
    stopBits: row.stop_bits ?? 1,
    request: row.request ?? '',
  };
}

export async function insertTrace(writing: Writing, readingId: number, trace: Trace): Promise<void> {
  await writing
    .insertInto('reading_traces')
    .values({
      reading_id: readingId,
      line_name: trace.lineName,
      is_practice: trace.isPractice ? 1 : 0,
      samples: packTrace(trace.samples.map(([at_ms, value_nm]) => ({ at_ms, value_nm }))),
      heard: trace.heard,
      rest_nm: trace.rest_nm,
      pressed_nm: trace.pressed_nm,
      air_nm: trace.air_nm,
    })
    .execute();
}

export async function tracesOfTake(reading: Reading, takeId: number): Promise<KeptTrace[]> {
  const rows = await reading
    .selectFrom('reading_traces')
    .innerJoin('readings', 'readings.reading_id', 'reading_traces.reading_id')
    .selectAll('reading_traces')
    .where('readings.take_id', '=', takeId)
    .orderBy('reading_traces.reading_id')
    .execute();
  return rows.map((row) => ({
    readingId: row.reading_id,
    lineName: row.line_name,
    isPractice: row.is_practice === 1,
    samples: unpackTrace(row.samples).map(({ at_ms, value_nm }): [number, number] => [at_ms, value_nm]),
    heard: row.heard,
    rest_nm: row.rest_nm,
    pressed_nm: row.pressed_nm,
    air_nm: row.air_nm,
  }));
}
