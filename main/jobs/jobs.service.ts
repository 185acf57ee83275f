// The ticket as a thing that is opened and looked for. What its readings say is in ticket.service, how it moves on in
// stages.service.
import type { Distance } from '../../app/jobs/distance.contract.ts';
import type { Diagnosis } from '../../app/jobs/door.contract.ts';
import { checksWithin } from '../../app/jobs/extent.ts';
import { writeDay } from '../../app/papers/dates.ts';
import type { Use } from '../../app/units/units.contract.ts';
import { customerAtCheckIn } from '../customers/customers.service.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { findCheck } from '../specs/checks-of-sheets.repository.ts';
import { findSmallJob } from '../specs/small-jobs.service.ts';
import { newestRevision } from '../specs/specs.repository.ts';
import { unitAtCheckIn } from '../units/units.service.ts';
import { deliveredOn } from './delivery.repository.ts';
import { insertIntake, insertPromise } from './door.repository.ts';
import { extentOf, insertExtent } from './extent.repository.ts';
import * as repository from './jobs.repository.ts';
import { enterStage, listStages } from './stages.repository.ts';

export async function listJobs(reading: Reading, input: { text: string; includeClosed: boolean }) {
  const words = input.text.split(/\s+/).filter((word) => word !== '');
  const rows = await repository.listJobs(reading, { ...input, words });
  return rows.map(({ is_closed, ...row }) => ({ ...row, isClosed: is_closed === 1 }));
}

export async function checkIn(
  writing: Writing,
  now: string,
  input: {
    customer: { customerId: number } | { name: string; phone: string; email: string };
    unit: { unitId: number } | { familyId: number; serial: string; vehicle: string; use: Use };
    complaint: string;
    caseTag: string;
    distance: Distance | null;
    diagnosis: Diagnosis;
    promisedOn: string | null;
    smallJobId: number | null;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  const customerId = await customerAtCheckIn(writing, input.customer);
  const unit = await unitAtCheckIn(writing, input.unit);
  const revision = found(await newestRevision(writing, unit.familyId), 'spec sheet');
  const number = await repository.nextNumber(writing);
  const { complaint, diagnosis, promisedOn, caseTag, distance, by } = input;
  const jobId = await repository.insertJob(writing, {
    number,
    customerId,
    unitId: unit.unitId,
    revisionId: revision.revision_id,
    caseTag,
    distance,
    by,
    now,
  });
  await insertIntake(writing, { jobId, complaint, diagnosis, by, now });
  if (promisedOn !== null) await insertPromise(writing, { jobId, on: promisedOn, reason: '', by, now });
  if (input.smallJobId !== null) await insertExtent(writing, jobId, await smallJobOf(writing, unit, input.smallJobId));
  const [first] = await listStages(writing);
  await enterStage(writing, { jobId, stageId: found(first, 'stage').stageId, by, now });
  return { jobId, number };
}

async function smallJobOf(reading: Reading, { familyId }: { familyId: number }, smallJobId: number) {
  const smallJob = await findSmallJob(reading, smallJobId);
  if (smallJob.familyId === familyId) return smallJob;
  throw new Refused('other-family', `${smallJob.name} belongs to another family of units.`, 'smallJobId');
}

export async function overrideCheck(
  writing: Writing,
  now: string,
  input: { jobId: number; checkId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await jobAtBench(writing, input.jobId);
  await checkOfJobRow(writing, job, input.checkId);
  await repository.insertOverride(writing, { ...input, now });
  return {};
}

export async function getJobRow(reading: Reading, jobId: number) {
  return found(await repository.findJob(reading, jobId), 'job');
}

/** The job, or a refusal when it is closed: a closed job takes no more entries. */
export async function jobAtWork(reading: Reading, jobId: number) {
  const job = await getJobRow(reading, jobId);
  const stage = await repository.currentStage(reading, jobId);
  if (stage.is_closed === 1) {
    throw new Refused('job-closed', `Job ${job.number} is closed: move it to an open stage to write to it.`);
  }
  return job;
}

/** The job, or a refusal when its unit has left: what was read and built on it stays as it went out of the door. */
export async function jobAtBench(reading: Reading, jobId: number) {
  const job = await jobAtWork(reading, jobId);
  const day = await deliveredOn(reading, jobId);
  if (day !== null) {
    const sentence = `Job ${job.number} was handed over on ${writeDay(day)}: check the unit in again, or take the delivery back.`;
    throw new Refused('delivered', sentence);
  }
  return job;
}

/** A check that the job takes, of its own spec revision, or a refusal. */
export async function checkOfJobRow(
  reading: Reading,
  job: { job_id: number; number: number; revision_id: number },
  checkId: number,
) {
  const row = await reading
    .selectFrom('checks')
    .select('revision_id')
    .where('check_id', '=', checkId)
    .executeTakeFirst();
  const check = row?.revision_id === job.revision_id ? await findCheck(reading, checkId) : undefined;
  if (!check) throw new Refused('not-found', `Job ${job.number} has no such check.`);
  if (checksWithin([check], await extentOf(reading, job.job_id)).length === 0) {
    const sentence = `Job ${job.number} does not take ${check.name}: make it the whole rebuild first.`;
    throw new Refused('not-taken', sentence);
  }
  return check;
}
