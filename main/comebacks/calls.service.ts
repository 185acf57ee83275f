// The list of whom to call: who was put on it and why, what came of each call, and the list as a file and on paper.

import { callStanding, cameBackWords, isSettled, usedSoFar, warrantyToday } from '../../app/comebacks/call-words.ts';
import type { CameOfCall, UnitToCall } from '../../app/comebacks/calls.contract.ts';
import type { ParsedInput } from '../../app/contract/contract.ts';
import { callList } from '../../app/papers/call-list.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { delimiterFor, writeCsv } from '../../app/stock/csv-cells.ts';
import type { PrintedFile } from '../../app/stock/lists.contract.ts';
import { found, Refused } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { dayHere } from '../ports/clock.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { csvFile } from '../stock/lists.service.ts';
import { paintInWorker } from '../workers/paint-paper.ts';
import { buildAsDelivered } from './builds.service.ts';
import * as repository from './calls.repository.ts';
import { buildToCall } from './sharing.service.ts';

export async function putOnList(
  writing: Writing,
  now: string,
  { jobIds, ...input }: ParsedInput<'comebacks.putOnList'>,
) {
  await personAtWork(writing, input.by);
  for (const jobId of new Set(jobIds)) {
    const { number } = await buildAsDelivered(writing, jobId);
    if (await isWaiting(writing, jobId, input.what))
      throw new Refused('on-list', `Job ${number} is on the list for this already.`);
    await repository.insertUnitToCall(writing, { ...input, jobId, now });
  }
  return {};
}

async function isWaiting(reading: Reading, jobId: number, what: string): Promise<boolean> {
  const calls = await repository.listCalls(reading, jobId);
  const units = await repository.listUnitsToCall(reading, jobId);
  return units.some((unit) => unit.what === what && !isSettled({ calls: callsOf(calls, unit.unit_to_call_id) }));
}

type CallRow = Awaited<ReturnType<typeof repository.listCalls>>[number];

function callsOf(rows: readonly CallRow[], unitToCallId: number): UnitToCall['calls'] {
  return rows
    .filter((row) => row.unit_to_call_id === unitToCallId)
    .map((row) => ({ cameOfIt: row.came_of_it, note: row.note, at: row.called_at, by: row.initials }));
}

export async function noteCall(
  writing: Writing,
  now: string,
  input: { unitToCallId: number; cameOfIt: CameOfCall; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  found(await repository.findUnitToCall(writing, input.unitToCallId), 'entry on the list');
  if (input.cameOfIt === 'taken off' && input.note === '')
    throw new Refused('note', 'Say why nobody has to call any more.', 'note');
  await repository.insertCall(writing, { ...input, now });
  return {};
}

export async function listToCall(reading: Reading, today: string): Promise<UnitToCall[]> {
  const calls = await repository.listCalls(reading, null);
  const units: UnitToCall[] = [];
  for (const row of await repository.listUnitsToCall(reading, null)) {
    units.push({
      unitToCallId: row.unit_to_call_id,
      build: await buildToCall(reading, today, row.job_id),
      shares: row.shares,
      what: row.what,
      whatToCheck: row.what_to_check,
      reason: row.reason,
      at: row.added_at,
      by: row.initials,
      calls: callsOf(calls, row.unit_to_call_id),
    });
  }
  return [...units.filter((unit) => !isSettled(unit)), ...units.filter(isSettled)];
}

const headings = [
  'job',
  'family',
  'serial',
  'vehicle',
  'customer',
  'phone',
  'email',
  'handed over',
  'in service since',
  'days in service',
  'use',
  'warranty',
  'came back',
  'shares',
  'what to check',
  'reason',
  'stands',
  'note of the newest call',
];

/** The whole list as a CSV file, text guarded against being taken for a formula. */
export async function exportToCall(shop: OpenShop): Promise<PrintedFile> {
  const today = dayHere(shop.clock());
  return shop.read(async (reading) => {
    const { decimalMark } = await getSettings(reading);
    const writing = { decimalMark, sayDay: writeDay };
    const rows = (await listToCall(reading, today)).map((unit) => {
      const { build } = unit;
      return [
        build.number,
        build.unit.familyName,
        build.unit.serial,
        build.unit.vehicle,
        build.customer.name,
        build.customer.phone,
        build.customer.email,
        build.deliveredOn,
        build.left.inServiceOn ?? '',
        build.service.days,
        usedSoFar(build, writing),
        warrantyToday(build, today, writing),
        cameBackWords(build, writeDay),
        unit.what,
        unit.whatToCheck,
        unit.reason,
        callStanding(unit),
        unit.calls[0]?.note ?? '',
      ];
    });
    return csvFile(`whom to call ${today}.csv`, writeCsv([headings, ...rows], delimiterFor(decimalMark)));
  });
}

export async function printToCall(shop: OpenShop, input: { paper?: 'letter' | 'A4' | undefined }) {
  const today = dayHere(shop.clock());
  const paper = await shop.read(async (reading) => {
    const settings = await getSettings(reading);
    return callList({
      paper: input.paper ?? settings.paper,
      decimalMark: settings.decimalMark,
      shopName: settings.shopName,
      isDemo: settings.isDemo,
      printedOn: today,
      units: (await listToCall(reading, today)).filter((unit) => !isSettled(unit)),
    });
  });
  const pdf = await paintInWorker(paper);
  return { fileName: `whom to call ${today}.pdf`, pdfBase64: pdf.toString('base64') };
}
