// Setting a gauge's line, and keeping what came over it with the reading that was accepted from it.
import type { GaugeLine, HeardTrace, KeptTrace, LineSettings } from '../../app/indicators/indicators.contract.ts';
import { parsePattern } from '../../app/indicators/reading-pattern.ts';
import { requestBytes } from '../../app/indicators/request-bytes.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { gaugeOnLine } from '../gauges/register.service.ts';
import { getShop } from '../shop/shop.service.ts';
import * as repository from './indicators.repository.ts';

export function listLines(reading: Reading): Promise<GaugeLine[]> {
  return repository.listLines(reading);
}

/** The traces of a take's readings, in the order of reading. */
export function listTraces(reading: Reading, { takeId }: { takeId: number }): Promise<KeptTrace[]> {
  return repository.tracesOfTake(reading, takeId);
}

/** A line in use. */
export async function getLine(reading: Reading, lineId: number): Promise<GaugeLine> {
  const line = found(await repository.findLine(reading, lineId), 'gauge’s line');
  if (line.isRetired) throw new Refused('retired', `${line.name} is no longer used.`);
  return line;
}

export async function addLine(writing: Writing, settings: LineSettings) {
  await assertSound(writing, settings, null);
  return { lineId: await repository.insertLine(writing, settings) };
}

export async function changeLine(writing: Writing, { lineId, settings }: { lineId: number; settings: LineSettings }) {
  await getLine(writing, lineId);
  await assertSound(writing, settings, lineId);
  await repository.changeLine(writing, lineId, settings);
  return {};
}

export async function retireLine(writing: Writing, { lineId }: { lineId: number }) {
  await getLine(writing, lineId);
  await repository.retireLine(writing, lineId);
  return {};
}

async function assertSound(reading: Reading, settings: LineSettings, lineId: number | null): Promise<void> {
  accepted(parsePattern(settings.pattern), 'pattern');
  if (settings.source === 'serial') accepted(requestBytes(settings.request), 'request');
  const others = (await repository.listLines(reading)).filter((line) => !line.isRetired && line.lineId !== lineId);
  if (others.some((line) => line.name === settings.name)) {
    throw new Refused('name', `There is already a line called ${settings.name}.`, 'name');
  }
  if (settings.gaugeId !== null) await gaugeOnLine(reading, settings.gaugeId);
}

/** Keeps the trace beside its reading. What the practice gauge made up is kept in the demo shop only, marked. */
export async function keepTrace(writing: Writing, readingId: number, { lineId, ...heard }: HeardTrace): Promise<void> {
  const line = await getLine(writing, lineId);
  const isPractice = line.source === 'practice';
  if (isPractice && !(await getShop(writing)).isDemo) {
    throw new Refused('practice', 'The practice gauge reads nothing into a real job: practise in the demo shop.');
  }
  await repository.insertTrace(writing, readingId, { ...heard, lineName: line.name, isPractice });
}
