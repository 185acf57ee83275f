// A small job that turned out to be the whole rebuild.
import { Refused } from '../database/errors.ts';
import type { Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { insertWidened, standingExtent } from './extent.repository.ts';
import { jobAtBench } from './jobs.service.ts';

export async function widenJob(writing: Writing, now: string, input: { jobId: number; reason: string; by: number }) {
  await personAtWork(writing, input.by);
  const job = await jobAtBench(writing, input.jobId);
  const standing = await standingExtent(writing, input.jobId);
  if (standing === null || standing.widened !== null)
    throw new Refused('whole', `Job ${job.number} is the whole rebuild already.`);
  await insertWidened(writing, { ...input, now });
  return {};
}
