// One search over every room: what holds the words typed, and what a scanned code means.
import { writeDay } from '../../app/papers/dates.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { FoundGroup, Noun, Place } from '../../app/shop/find.contract.ts';
import type { Reading } from '../database/tables.ts';
import { listJobs } from '../jobs/jobs.service.ts';
import { findCode } from '../stock/tracing.service.ts';
import * as repository from './find-anything.repository.ts';
import { getSettings } from './shop.service.ts';

type Found = FoundGroup['found'][number];

const mostOfANoun = 8;

/** The first one found is what is most likely meant: the code itself, else the job of that number, else the newest. */
export async function findAnything(reading: Reading, { text }: { text: string }): Promise<FoundGroup[]> {
  const words = text.split(/\s+/).filter((word) => word !== '');
  if (words.length === 0) return [];
  const sought = { words, limit: mostOfANoun };
  const groups: ReadonlyArray<readonly [Noun, readonly Found[]]> = [
    ['code', await code(reading, text)],
    ['job', await jobs(reading, text)],
    ['customer', await customers(reading, sought)],
    ['unit', await units(reading, sought)],
    ['part', await parts(reading, sought)],
    ['batch', await batches(reading, sought)],
    ['plate', await plates(reading, sought)],
    ['family', await families(reading, sought)],
  ];
  return groups.flatMap(([noun, found]) => (found.length === 0 ? [] : [{ noun, found: [...found] }]));
}

/** A label's code, a part's whole number, a plate's whole tag; a whole number is a job's before it is any of these. */
async function code(reading: Reading, text: string): Promise<Found[]> {
  const isJobNumber = /^\d+$/.test(text) && (await jobNumbered(reading, Number(text))) !== undefined;
  const meant = isJobNumber ? null : await findCode(reading, { code: text });
  if (!meant) return [];
  return [{ place: placeOf(meant), title: text, more: `this very ${meant.kind}` }];
}

function placeOf(meant: NonNullable<Awaited<ReturnType<typeof findCode>>>): Place {
  return meant.kind === 'batch' ? { kind: 'part', partId: meant.partId } : meant;
}

function jobNumbered(reading: Reading, number: number) {
  return reading.selectFrom('jobs').select('job_id').where('number', '=', number).executeTakeFirst();
}

async function jobs(reading: Reading, text: string): Promise<Found[]> {
  const lines = await listJobs(reading, { text, includeClosed: true, limit: mostOfANoun });
  return lines.map(({ jobId, number, customerName, familyName, serial, vehicle, stageName }) => ({
    place: { kind: 'job', jobId },
    title: `Job ${number}`,
    more: listed(customerName, `${familyName} ${serial}`.trim(), vehicle, stageName),
  }));
}

async function customers(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findCustomers(reading, sought);
  return rows.flatMap(({ name, phone, job_id, jobs: count }) => {
    if (job_id === null) return [];
    const visits = count === 1 ? 'one job' : `the newest of ${count} jobs`;
    return [{ place: { kind: 'job', jobId: job_id }, title: name, more: listed(phone, visits) }];
  });
}

async function units(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findUnits(reading, sought);
  return rows.flatMap(({ family_name, serial, vehicle, job_id }) => {
    if (job_id === null) return [];
    const title = `${family_name} ${serial}`.trim();
    return [{ place: { kind: 'job', jobId: job_id }, title, more: listed(vehicle, 'its newest job') }];
  });
}

async function parts(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findParts(reading, sought);
  return rows.map(({ part_id, number, description, kind, is_retired }) => ({
    place: { kind: 'part', partId: part_id },
    title: number,
    more: listed(description, kind === 'kit' ? 'kit' : '', is_retired === 1 ? 'retired' : ''),
  }));
}

async function batches(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findBatches(reading, sought);
  return rows.map(({ part_id, mark, document, received_on, number }) => ({
    place: { kind: 'part', partId: part_id },
    title: mark || document,
    more: listed(`of ${number}`, `came in ${writeDay(received_on)}`),
  }));
}

async function plates(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const { lengthUnit, decimalMark } = await getSettings(reading);
  const rows = await repository.findPlates(reading, sought);
  return rows.map(({ piece_id, tag, outline, kind, height_nm }) => ({
    place: { kind: 'plate', pieceId: piece_id, outline },
    title: tag,
    more: listed(
      height_nm === null ? '' : `${formatLength(height_nm, lengthUnit, undefined, decimalMark)} ${lengthUnit}`,
      kind,
      outline,
    ),
  }));
}

async function families(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findFamilies(reading, sought);
  return rows.map(({ family_id, name }) => ({
    place: { kind: 'family', familyId: family_id },
    title: name,
    more: 'spec sheet',
  }));
}

function listed(...facts: readonly string[]): string {
  return facts.filter((fact) => fact !== '').join(', ');
}
