// One search over every room: what holds the words typed, and what a scanned code means.
import { writeDay } from '../../app/papers/dates.ts';
import { formatLength } from '../../app/quantities/format-amount.ts';
import type { FoundGroup, Noun, Place } from '../../app/shop/find.contract.ts';
import { readLabelCode } from '../../app/stock/label-code.ts';
import type { Reading } from '../database/tables.ts';
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
  const number = /^[1-9]\d{0,8}$/.test(text) ? Number(text) : null;
  const jobsFound = readLabelCode(text) ? [] : await repository.findJobs(reading, number, sought);
  const isJobNumber = jobsFound[0]?.number === number;
  const groups: Array<readonly [Noun, readonly Found[]]> = [
    ['code', isJobNumber ? [] : await code(reading, text)],
    ['job', jobsFound.map(job)],
  ];
  // A label means one thing.
  if (!readLabelCode(text)) {
    groups.push(
      ['customer', await customers(reading, sought)],
      ['unit', await units(reading, sought)],
      ['part', await parts(reading, sought)],
      ['batch', await batches(reading, sought)],
      ['plate', await plates(reading, sought)],
      ['gauge', await gauges(reading, sought)],
      ['family', await families(reading, sought)],
    );
  }
  return groups.flatMap(([noun, found]) => (found.length === 0 ? [] : [{ noun, found: [...found] }]));
}

/** What a label’s code, a part’s whole number or a plate’s whole tag means. */
async function code(reading: Reading, text: string): Promise<Found[]> {
  const meant = await findCode(reading, { code: text });
  return meant ? [{ place: placeOf(meant), title: text, more: `this very ${meant.kind}` }] : [];
}

function placeOf(meant: NonNullable<Awaited<ReturnType<typeof findCode>>>): Place {
  return meant.kind === 'batch' ? { kind: 'part', partId: meant.partId } : meant;
}

type JobRow = Awaited<ReturnType<typeof repository.findJobs>>[number];

function job({ job_id, number, customer_name, family_name, serial, vehicle, stage_name }: JobRow): Found {
  return {
    place: { kind: 'job', jobId: job_id },
    title: `Job ${number}`,
    more: listed(customer_name, `${family_name} ${serial}`.trim(), vehicle, stage_name),
  };
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

async function gauges(reading: Reading, sought: repository.Sought): Promise<Found[]> {
  const rows = await repository.findGauges(reading, sought);
  return rows.map(({ gauge_id, tag, kind, serial, is_retired }) => ({
    place: { kind: 'gauge', gaugeId: gauge_id },
    title: tag,
    more: listed(kind, serial, is_retired === 1 ? 'retired' : ''),
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
