// At the door: corrections, earlier visits, promised days and calls.
import type { Call, Diagnosis, Visit } from '../../app/jobs/door.contract.ts';
import { Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { listDeliveries, listWarranties } from './delivery.repository.ts';
import * as repository from './door.repository.ts';
import { listVisits as visitsOf } from './jobs.repository.ts';
import { getJobRow, jobAtWork } from './jobs.service.ts';

export async function listIntakes(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  return repository.listIntakes(reading, jobId);
}

export async function correctIntake(
  writing: Writing,
  now: string,
  input: { jobId: number; complaint: string; diagnosis: Diagnosis; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const [newest] = await repository.listIntakes(writing, input.jobId);
  const { complaint, diagnosis } = input;
  if (newest && isSameAs(newest, input)) {
    throw new Refused('nothing-changed', 'That is what stands there already: nothing was written.');
  }
  await repository.insertIntake(writing, { jobId: input.jobId, complaint, diagnosis, by: input.by, now });
  return {};
}

type Card = { complaint: string; diagnosis: Diagnosis };

function isSameAs(one: Card, other: Card): boolean {
  const keys = Object.keys(one.diagnosis) as Array<keyof Diagnosis>;
  return one.complaint === other.complaint && keys.every((key) => one.diagnosis[key] === other.diagnosis[key]);
}

export async function listVisits(reading: Reading, input: { unitId: number | null; serial: string }): Promise<Visit[]> {
  const rows = await visitsOf(reading, input);
  return Promise.all(
    rows.map(async ({ is_closed, ...row }) => ({
      ...row,
      isClosed: is_closed === 1,
      left: await howItLeft(reading, row.jobId),
    })),
  );
}

/** The delivery that stands and the warranty with it. */
async function howItLeft(reading: Reading, jobId: number): Promise<Visit['left']> {
  const [delivery] = await listDeliveries(reading, jobId);
  const [warranty] = await listWarranties(reading, jobId);
  if (!warranty || !delivery || delivery.deliveredOn === null) return null;
  const { terms, inServiceOn } = warranty;
  return { terms, inServiceOn, deliveredOn: delivery.deliveredOn, distanceAtDelivery: delivery.distance };
}

export async function listPromises(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  return repository.listPromises(reading, jobId);
}

export async function promiseDay(
  writing: Writing,
  now: string,
  input: { jobId: number; on: string; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const [standing] = await repository.listPromises(writing, input.jobId);
  if (standing?.on === input.on) throw new Refused('same-day', 'That day is promised already.', 'on');
  if (standing && input.reason === '') {
    throw new Refused('reason', 'Say why another day is promised.', 'reason');
  }
  await repository.insertPromise(writing, { ...input, now });
  return {};
}

export async function listCalls(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  return repository.listCalls(reading, jobId);
}

export async function logCall(
  writing: Writing,
  now: string,
  input: { jobId: number; direction: Call['direction']; withWhom: string; said: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  await repository.insertCall(writing, { ...input, now });
  return {};
}
