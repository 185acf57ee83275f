// Handing a unit over, and the warranty it leaves with. What was written first stays beside what superseded it.

import type { Handover, WarrantyInService, WarrantyTerms } from '../../app/jobs/delivery.contract.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { listComebacksOf } from '../comebacks/log.repository.ts';
import { Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { dayHere } from '../ports/clock.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import * as repository from './delivery.repository.ts';
import { getJobRow } from './jobs.service.ts';
import { goBackToHandover, goOnFromHandover } from './stages.service.ts';

export async function getDelivery(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  const [newest, ...earlierDeliveries] = await repository.listDeliveries(reading, jobId);
  const [warranty = null, ...earlierWarranties] = await repository.listWarranties(reading, jobId);
  const isTakenBack = newest !== undefined && newest.deliveredOn === null;
  return {
    delivery: newest === undefined || newest.deliveredOn === null ? null : newest,
    earlierDeliveries: isTakenBack ? [newest, ...earlierDeliveries] : earlierDeliveries,
    warranty,
    earlierWarranties,
    usualTerms: await usualTerms(reading),
  };
}

async function usualTerms(reading: Reading): Promise<WarrantyTerms> {
  const { warrantyMonths, warrantyDistance, warrantyDistanceUnit, warrantyPasses } = await getSettings(reading);
  return {
    months: warrantyMonths,
    distance: warrantyDistance === null ? null : { amount: warrantyDistance, unit: warrantyDistanceUnit },
    passes: warrantyPasses,
  };
}

export async function deliver(
  writing: Writing,
  now: string,
  input: Handover & { jobId: number; warranty: WarrantyInService; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await getJobRow(writing, input.jobId);
  const standing = await repository.deliveredOn(writing, input.jobId);
  if (standing !== null)
    throw new Refused('delivered', `Job ${job.number} was handed over on ${writeDay(standing)}: correct that instead.`);
  await checkHandover(writing, now, job.opened_at, input);
  checkInService(now, input.deliveredOn, input.warranty.inServiceOn);
  await repository.insertDelivery(writing, { ...input, reason: '', now });
  const { jobId, by } = input;
  const [before] = await repository.listWarranties(writing, jobId);
  if (!before || !isSame(before, input.warranty))
    await repository.insertWarranty(writing, { jobId, ...input.warranty, reason: '', by, now });
  await goOnFromHandover(writing, now, { job, reason: input.reason, by });
  return {};
}

export async function correctDelivery(
  writing: Writing,
  now: string,
  input: Handover & { jobId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await getJobRow(writing, input.jobId);
  await standingDelivery(writing, job);
  await checkHandover(writing, now, job.opened_at, input);
  const [warranty] = await repository.listWarranties(writing, input.jobId);
  if (warranty?.inServiceOn != null && warranty.inServiceOn < input.deliveredOn) {
    const sentence = `It went into service on ${writeDay(warranty.inServiceOn)}: change that day first.`;
    throw new Refused('in-service', sentence, 'deliveredOn');
  }
  await repository.insertDelivery(writing, { ...input, now });
  return {};
}

export async function takeBackDelivery(
  writing: Writing,
  now: string,
  input: { jobId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await getJobRow(writing, input.jobId);
  await standingDelivery(writing, job);
  const cameBack = (await listComebacksOf(writing, [input.jobId])).find((each) => each.built_job_id === input.jobId);
  if (cameBack) {
    const sentence = `Job ${job.number} came back as job ${cameBack.number}: if that was logged by mistake, say so there first.`;
    throw new Refused('came-back', sentence);
  }
  await repository.insertTakenBack(writing, { ...input, now });
  await goBackToHandover(writing, now, { job, by: input.by });
  return {};
}

/** The first day in service needs no reason; whatever supersedes a thing that was known does. */
export async function changeWarranty(
  writing: Writing,
  now: string,
  input: WarrantyInService & { jobId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const day = await standingDelivery(writing, await getJobRow(writing, input.jobId));
  checkInService(now, day, input.inServiceOn);
  const [before] = await repository.listWarranties(writing, input.jobId);
  if (before && isSame(before, input))
    throw new Refused('nothing-changed', 'That is what stands there already: nothing was written.');
  const isOnlyBegun = before?.inServiceOn === null && isSame({ ...before, inServiceOn: input.inServiceOn }, input);
  if (before && !isOnlyBegun && input.reason === '')
    throw new Refused('reason', 'Say why the warranty is changed.', 'reason');
  await repository.insertWarranty(writing, { ...input, now });
  return {};
}

async function standingDelivery(reading: Reading, job: { job_id: number; number: number }): Promise<string> {
  const day = await repository.deliveredOn(reading, job.job_id);
  if (day === null) throw new Refused('not-delivered', `Job ${job.number} was not handed over yet.`);
  return day;
}

async function checkHandover(
  reading: Reading,
  now: string,
  openedAt: string,
  { deliveredOn, handedOverById }: Handover,
) {
  await personAtWork(reading, handedOverById);
  if (deliveredOn > dayHere(now))
    throw new Refused(
      'future',
      'That day is still to come: write the delivery down when it has happened.',
      'deliveredOn',
    );
  const opened = dayHere(openedAt);
  if (deliveredOn < opened)
    throw new Refused('too-early', `It came in on ${writeDay(opened)}: it cannot have left before.`, 'deliveredOn');
}

function checkInService(now: string, delivered: string, inServiceOn: string | null): void {
  if (inServiceOn === null) return;
  if (inServiceOn < delivered) {
    const sentence = `It was handed over on ${writeDay(delivered)}: it cannot have gone into service before.`;
    throw new Refused('too-early', sentence, 'inServiceOn');
  }
  if (inServiceOn > dayHere(now))
    throw new Refused('future', 'That day is still to come: leave it open until the unit runs.', 'inServiceOn');
}

function isSame(one: WarrantyInService, other: WarrantyInService): boolean {
  const isAsFar = (a: Distance | null, b: Distance | null) => a?.amount === b?.amount && a?.unit === b?.unit;
  return (
    one.inServiceOn === other.inServiceOn &&
    one.terms.months === other.terms.months &&
    one.terms.passes === other.terms.passes &&
    isAsFar(one.terms.distance, other.terms.distance)
  );
}
