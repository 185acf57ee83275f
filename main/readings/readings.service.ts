// Taking readings: begin a take, append a line, supersede a misread one, and say what a take amounts to.

import { movedLimits } from '../../app/gauges/moved-limits.ts';
import type { HeardTrace } from '../../app/indicators/indicators.contract.ts';
import { evaluateTake } from '../../app/readings/evaluate-take.ts';
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
import { insertGaugeOfTake } from '../gauges/take-gauges.repository.ts';
import { keepTrace } from '../indicators/indicators.service.ts';
import { checkOfJobRow, getJobRow, jobAtBench, jobAtWork } from '../jobs/jobs.service.ts';
import { newestMockUpId } from '../packs/packs.repository.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { findCheck, findChecks } from '../specs/checks-of-sheets.repository.ts';
import * as repository from './readings.repository.ts';
import { insertTakeFigures } from './take-figures.repository.ts';
import { figuresAtStart } from './take-figures.service.ts';
import {
  findWholeTake,
  type ReadingRow,
  type WholeTake,
  wholeTakes,
  wholeTakesOfCheck,
  wholeTakesOfChecks,
  wholeTakesOfJobs,
} from './whole-takes.repository.ts';

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
  const takes = await wholeTakesOfCheck(reading, input.jobId, input.checkId);
  return takes.map((take) => takeOf(take, check, settings));
}

export async function getTake(reading: Reading, { takeId }: { takeId: number }): Promise<Take> {
  const take = found(await findWholeTake(reading, takeId), 'take');
  const check = found(await findCheck(reading, take.checkId), 'check');
  return takeOf(take, check, await getSettings(reading));
}

/** The takes of these checks on these jobs, oldest first, by job. */
export async function takesOfChecks(
  reading: Reading,
  jobIds: readonly number[],
  checks: readonly SavedCheck[],
): Promise<Map<number, Take[]>> {
  const settings = await getSettings(reading);
  const byId = new Map(checks.map((check) => [check.checkId, check]));
  const takes = await wholeTakesOfChecks(reading, jobIds, [...byId.keys()]);
  return Map.groupBy(
    takes.map((take) => takeOf(take, byId.get(take.checkId)!, settings)),
    (take) => take.jobId,
  );
}

/** Those of these takes that are there, by number. */
export async function takesNumbered(reading: Reading, takeIds: readonly number[]): Promise<Map<number, Take>> {
  const settings = await getSettings(reading);
  const takes = await wholeTakes(reading, takeIds);
  const checks = await checksOfTakes(reading, takes);
  return new Map(takes.map((take) => [take.takeId, takeOf(take, checks.get(take.checkId)!, settings)]));
}

async function checksOfTakes(reading: Reading, takes: readonly WholeTake[]): Promise<Map<number, SavedCheck>> {
  const checks = await findChecks(reading, [...new Set(takes.map((take) => take.checkId))]);
  return new Map(checks.map((check) => [check.checkId, check]));
}

/** Every take of a job, by check, oldest first: what the ticket and the report stand on. */
export async function takesOfJob(
  reading: Reading,
  jobId: number,
  checks: readonly SavedCheck[],
): Promise<Map<number, Take[]>> {
  const settings = await getSettings(reading);
  const takes = new Map<number, Take[]>(checks.map((check) => [check.checkId, []]));
  for (const take of await wholeTakesOfJobs(reading, [jobId])) {
    const check = checks.find((each) => each.checkId === take.checkId);
    if (check) takes.get(check.checkId)?.push(takeOf(take, check, settings));
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
 * Takes as they stand, in the order they began, and the verdicts each would have had, had its gauge read too much by each
 * of `errors`, in base units of its check.
 */
export async function takesHadTheirGaugeErred(reading: Reading, takeIds: readonly number[], errors: readonly number[]) {
  const settings = await getSettings(reading);
  const takes = await wholeTakes(reading, takeIds);
  const checks = await checksOfTakes(reading, takes);
  return takes.map((take) => {
    const check = checks.get(take.checkId)!;
    const words = errors.map((error) => {
      // Too much by so much is judged as it was read against limits moved by as much.
      const moved = { ...check, limits: movedLimits(check.limits, error) };
      return evaluateTake({ ...take, check: moved, settings }).verdict.word;
    });
    return { take: takeOf(take, check, settings), check, words };
  });
}

function takeOf(take: WholeTake, check: SavedCheck, settings: Settings): Take {
  const field = lineField(check, take.method, take.setup, settings);
  return {
    takeId: take.takeId,
    jobId: take.jobId,
    checkId: take.checkId,
    phase: take.phase,
    mode: take.mode,
    method: take.method,
    mockUpNumber: take.phase === 'as found' && check.packId !== null ? 0 : take.mockUpNumber,
    note: take.note,
    setup: take.setup,
    gauge: take.gauge,
    startedAt: take.startedAt,
    by: take.by,
    readings: take.lines.map(({ row, reading }) => readingOf(row, reading, field)),
    notes: [...take.notes],
    evaluation: evaluateTake({ ...take, check, settings }),
  };
}

function readingOf(
  line: ReadingRow,
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
