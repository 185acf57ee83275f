// Taking readings: begin a take, append a line, supersede a misread one, and say what a take amounts to.

import { movedLimits } from '../../app/gauges/moved-limits.ts';
import type { HeardTrace } from '../../app/indicators/indicators.contract.ts';
import { evaluateTake, type TakeToEvaluate } from '../../app/readings/evaluate-take.ts';
import { lineField } from '../../app/readings/line-field.ts';
import type { NoteKind, Phase, Setup, Take } from '../../app/readings/readings.contract.ts';
import {
  type LineField,
  parseLine,
  sayBack,
  type TypedReading,
  valueOfReading,
} from '../../app/readings/typed-line.ts';
import { nameVariant } from '../../app/readings/variant.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { ReadingMethod } from '../../app/specs/spec-sheet.ts';
import type { SavedCheck } from '../../app/specs/specs.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { gaugeAtHand } from '../gauges/register.service.ts';
import { findGaugeOfTake, insertGaugeOfTake } from '../gauges/take-gauges.repository.ts';
import { keepTrace } from '../indicators/indicators.service.ts';
import { checkOfJobRow, getJobRow, jobAtBench, jobAtWork } from '../jobs/jobs.service.ts';
import { newestMockUpId } from '../packs/packs.repository.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { findCheck } from '../specs/specs.repository.ts';
import * as repository from './readings.repository.ts';
import { getTakeFigures, insertTakeFigures } from './take-figures.repository.ts';
import { figuresAtStart } from './take-figures.service.ts';

export async function lastSetup(reading: Reading, input: { jobId: number; checkId: number }): Promise<Setup | null> {
  return (await repository.lastSetup(reading, input.jobId, input.checkId)) ?? null;
}

export async function latestTake(reading: Reading, input: { jobId: number; checkId: number }): Promise<Take | null> {
  return (await listTakes(reading, input)).at(-1) ?? null;
}

export async function listTakes(reading: Reading, input: { jobId: number; checkId: number }): Promise<Take[]> {
  const job = await getJobRow(reading, input.jobId);
  const check = await checkOfJobRow(reading, job, input.checkId);
  const settings = await getSettings(reading);
  const rows = await repository.listTakes(reading, input.jobId, input.checkId);
  return Promise.all(rows.map((row) => takeOfRow(reading, row, check, settings)));
}

export async function getTake(reading: Reading, { takeId }: { takeId: number }): Promise<Take> {
  const row = found(await repository.findTake(reading, takeId), 'take');
  const check = found(await findCheck(reading, row.check_id), 'check');
  return takeOfRow(reading, row, check, await getSettings(reading));
}

/** Every take of a job, by check, oldest first: what the ticket and the report stand on. */
export async function takesOfJob(
  reading: Reading,
  jobId: number,
  checks: readonly SavedCheck[],
): Promise<Map<number, Take[]>> {
  const settings = await getSettings(reading);
  const takes = new Map<number, Take[]>(checks.map((check) => [check.checkId, []]));
  for (const row of await repository.listTakesOfJob(reading, jobId)) {
    const check = checks.find((each) => each.checkId === row.check_id);
    if (check) takes.get(check.checkId)?.push(await takeOfRow(reading, row, check, settings));
  }
  return takes;
}

export async function startTake(
  writing: Writing,
  now: string,
  input: {
    jobId: number;
    checkId: number;
    phase: Phase;
    mode: 'quick' | 'final';
    method?: ReadingMethod | undefined;
    setup: Setup | null;
    gaugeId: number | null;
    note: string;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const job = await jobAtBench(writing, input.jobId);
  const check = await checkOfJobRow(writing, job, input.checkId);
  const method = input.method ?? check.method;
  if (method === 'air' && input.setup === null) {
    throw new Refused('setup', 'Say how the dial stands first: the setup card.', 'setup');
  }
  if ((method === 'air' || method === 'feeler') && check.quantity !== 'length') {
    throw new Refused('method', `${check.name} cannot be read by ${method}.`, 'method');
  }
  const mockUpId =
    check.packId === null || input.phase === 'as found'
      ? null
      : ((await newestMockUpId(writing, input.jobId, check.packId)) ?? null);
  const gauge = input.gaugeId === null ? null : await gaugeAtHand(writing, input.gaugeId, check, method);
  const figures = await figuresAtStart(writing, check, method, input.by, gauge);
  const takeId = await repository.insertTake(writing, { ...input, method, mockUpId, now });
  await insertTakeFigures(writing, takeId, figures);
  if (gauge) await insertGaugeOfTake(writing, takeId, gauge);
  return { takeId };
}

export async function recordReading(
  writing: Writing,
  now: string,
  input: {
    takeId: number;
    spot: number;
    typed: string;
    isZeroedAgain: boolean;
    meaning: 'air only' | 'total' | null;
    heard: HeardTrace | null;
    by: number;
  },
) {
  const readingId = await append(writing, now, { ...input, supersedesId: null, reason: '' });
  if (input.heard) await keepTrace(writing, readingId, input.heard);
  return { readingId, take: await getTake(writing, input) };
}

export async function supersedeReading(
  writing: Writing,
  now: string,
  input: {
    readingId: number;
    typed: string;
    isZeroedAgain: boolean;
    meaning: 'air only' | 'total' | null;
    reason: string;
    heard: HeardTrace | null;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const misread = found(await repository.findReading(writing, input.readingId), 'reading');
  if (misread.superseded_by_id !== null) {
    throw new Refused('superseded', 'That reading was superseded already: supersede the one in its place.');
  }
  const { take_id: takeId, spot } = misread;
  const readingId = await append(writing, now, { ...input, takeId, spot, supersedesId: input.readingId });
  if (input.heard) await keepTrace(writing, readingId, input.heard);
  return { readingId, take: await getTake(writing, { takeId }) };
}

async function append(
  writing: Writing,
  now: string,
  line: {
    takeId: number;
    spot: number;
    typed: string;
    isZeroedAgain: boolean;
    meaning: 'air only' | 'total' | null;
    supersedesId: number | null;
    reason: string;
    by: number;
  },
): Promise<number> {
  await personAtWork(writing, line.by);
  const take = found(await repository.findTake(writing, line.takeId), 'take');
  // What was misread may be put right after the unit has left; nothing new is read on it.
  await (line.supersedesId === null ? jobAtBench : jobAtWork)(writing, take.job_id);
  const check = found(await findCheck(writing, take.check_id), 'check');
  const setup = take.setup_id === null ? null : ((await repository.findSetup(writing, take.setup_id)) ?? null);
  const field = lineField(check, take.method, setup, await getSettings(writing));
  const reading = accepted(
    parseLine(line.typed, { ...field, isZeroedAgain: line.isZeroedAgain, meaning: line.meaning }),
    'typed',
  );
  const value = valueOfReading(reading);
  if (check.limits.kind === 'variants' && value !== null) accepted(nameVariant(value, check), 'typed');
  return repository.insertReading(writing, { ...line, reading, now });
}

export async function noteAtSpot(
  writing: Writing,
  now: string,
  input: { takeId: number; spot: number; what: NoteKind; by: number },
) {
  await personAtWork(writing, input.by);
  const take = found(await repository.findTake(writing, input.takeId), 'take');
  await jobAtBench(writing, take.job_id);
  await repository.insertSpotNote(writing, { ...input, now });
  return {};
}

/**
 * A take as it stands, and the verdict it would have had, had its gauge read too much by each of `errors`, in base units
 * of its check.
 */
export async function takeHadItsGaugeErred(reading: Reading, takeId: number, errors: readonly number[]) {
  const row = found(await repository.findTake(reading, takeId), 'take');
  const check = found(await findCheck(reading, row.check_id), 'check');
  const { take, evaluated } = await knownTake(reading, row, check, await getSettings(reading));
  const words = errors.map((error) => {
    // Too much by so much is judged as it was read against limits moved by as much.
    const moved = { ...check, limits: movedLimits(check.limits, error) };
    return evaluateTake({ ...evaluated, check: moved }).verdict.word;
  });
  return { take, check, words };
}

async function takeOfRow(
  reading: Reading,
  row: repository.TakeRow,
  check: SavedCheck,
  settings: Settings,
): Promise<Take> {
  return (await knownTake(reading, row, check, settings)).take;
}

/** The take, and what its evaluation was made of. */
async function knownTake(
  reading: Reading,
  row: repository.TakeRow,
  check: SavedCheck,
  settings: Settings,
): Promise<{ take: Take; evaluated: TakeToEvaluate }> {
  const setup = row.setup_id === null ? null : ((await repository.findSetup(reading, row.setup_id)) ?? null);
  const gauge = await findGaugeOfTake(reading, row.take_id);
  const rows = await repository.listReadings(reading, row.take_id);
  const notes = await repository.listSpotNotes(reading, row.take_id);
  const field = lineField(check, row.method, setup, settings);
  const lines = rows.map((line) => ({ line, typed: repository.typedReadingOf(line) }));
  const standing = lines.filter(({ line }) => line.superseded_by_id === null);
  const evaluated: TakeToEvaluate = {
    check,
    method: row.method,
    setup,
    figures: await getTakeFigures(reading, row.take_id),
    settings,
    by: row.initials,
    readings: standing.map(({ line, typed }) => ({ spot: line.spot, reading: typed })),
    willNotHold: notes.some((note) => note.what === 'will not hold air'),
  };
  const take: Take = {
    takeId: row.take_id,
    jobId: row.job_id,
    checkId: row.check_id,
    phase: row.phase,
    mode: row.mode,
    method: row.method,
    mockUpNumber: row.phase === 'as found' && check.packId !== null ? 0 : row.mock_up_number,
    note: row.note,
    setup,
    gauge: gauge ? { gaugeId: gauge.gauge_id, tag: gauge.tag } : null,
    startedAt: row.started_at,
    by: row.initials,
    readings: lines.map(({ line, typed }) => readingOf(line, typed, field)),
    notes: notes.map((note) => ({ spot: note.spot, what: note.what, at: note.noted_at, by: note.initials })),
    evaluation: evaluateTake(evaluated),
  };
  return { take, evaluated };
}

function readingOf(
  line: repository.ReadingRow,
  typed: TypedReading,
  field: Pick<LineField, 'quantity' | 'unit' | 'decimalMark'>,
): Take['readings'][number] {
  return {
    readingId: line.reading_id,
    spot: line.spot,
    typed: line.typed,
    method: line.method,
    push: line.push_amount,
    air: line.air_amount,
    value: valueOfReading(typed),
    first: line.first_amount,
    second: line.second_amount,
    isAirOnly: line.is_air_only === 1,
    saidBack: sayBack(typed, field),
    at: line.taken_at,
    by: line.initials,
    supersededById: line.superseded_by_id,
    supersedesId: line.supersedes_id,
    reason: line.reason,
  };
}
