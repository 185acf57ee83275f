// Jobs on their way from stage to stage: what a stage asks for, what a job went on without, and the sign-off.

import { stagesWithin } from '../../app/jobs/extent.ts';
import type { Need } from '../../app/jobs/needs.ts';
import { missingAt, missingForMove, sayMissing, stagesPassed } from '../../app/jobs/stage-moves.ts';
import type { SignOff, Stage } from '../../app/jobs/stages.contract.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { extentOf } from './extent.repository.ts';
import { currentStage } from './jobs.repository.ts';
import { getJobRow, jobAtBench } from './jobs.service.ts';
import { coresOpenOn, needFactsOf, platesOutOf } from './need-facts.service.ts';
import * as repository from './stages.repository.ts';

type JobRow = Awaited<ReturnType<typeof getJobRow>>;

export async function listStages(reading: Reading) {
  return repository.listStages(reading);
}

export async function changeStageNeeds(
  writing: Writing,
  input: { stageId: number; needs: readonly Need[]; by: number },
) {
  await personAtWork(writing, input.by);
  const stages = await repository.listStages(writing);
  found(
    stages.find((each) => each.stageId === input.stageId),
    'stage',
  );
  await repository.replaceStageNeeds(writing, input.stageId, input.needs);
  return {};
}

/** Back at any time; forward only with nothing missing, or with a reason that stays beside what was missing. */
export async function moveToStage(
  writing: Writing,
  now: string,
  input: { jobId: number; stageId: number; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  const job = await getJobRow(writing, input.jobId);
  const all = await repository.listStages(writing);
  const stages = stagesWithin(all, await extentOf(writing, input.jobId));
  const stage = found(
    all.find((each) => each.stageId === input.stageId),
    'stage',
  );
  if (!stages.includes(stage)) throw new Refused('not-taken', `Job ${job.number} does not go through ${stage.name}.`);
  const current = await currentStage(writing, input.jobId);
  if (current.stage_id === stage.stageId)
    throw new Refused('same-stage', `Job ${job.number} is in ${stage.name} already.`);
  await goOn(writing, now, { job, stages, fromId: current.stage_id, stage, reason: input.reason, by: input.by });
  return {};
}

/**
 * The ticket of a unit that was handed over goes on past the stage that asks for that, under the same needs as any move;
 * nothing where it is past it already, or where no stage asks.
 */
export async function goOnFromHandover(
  writing: Writing,
  now: string,
  { job, reason, by }: { job: JobRow; reason: string; by: number },
): Promise<void> {
  const stages = stagesWithin(await repository.listStages(writing), await extentOf(writing, job.job_id));
  const { stage_id: fromId } = await currentStage(writing, job.job_id);
  const at = stages.findIndex((each) => each.stageId === fromId);
  const stage = stages[stages.findIndex(({ needs }) => needs.includes('delivery recorded')) + 1];
  if (stage && stages.indexOf(stage) > at && stages.indexOf(stage) > 0)
    await goOn(writing, now, { job, stages, fromId, stage, reason, by });
}

/** Back to the stage that asks for the handover, where the ticket went past it. */
export async function goBackToHandover(
  writing: Writing,
  now: string,
  { job, by }: { job: JobRow; by: number },
): Promise<void> {
  const stages = stagesWithin(await repository.listStages(writing), await extentOf(writing, job.job_id));
  const { stage_id: fromId } = await currentStage(writing, job.job_id);
  const at = stages.findIndex((each) => each.stageId === fromId);
  const asks = stages.findIndex(({ needs }) => needs.includes('delivery recorded'));
  const stage = stages[asks];
  if (stage && at > asks) await repository.enterStage(writing, { jobId: job.job_id, stageId: stage.stageId, by, now });
}

async function goOn(
  writing: Writing,
  now: string,
  move: { job: JobRow; stages: readonly Stage[]; fromId: number; stage: Stage; reason: string; by: number },
): Promise<void> {
  const { job, stages, fromId, stage, reason, by } = move;
  const toId = stage.stageId;
  const asked = stagesPassed(stages, fromId, toId).flatMap(({ needs }) => needs);
  const missing = missingForMove(stages, { fromId, toId }, await needFactsOf(writing, job, { asked }));
  if (missing.length > 0 && reason === '') throw new Refused('missing', sayMissing(stage.name, missing), 'reason');
  const stageEntryId = await repository.enterStage(writing, { jobId: job.job_id, stageId: toId, by, now });
  for (const each of missing) await repository.insertPassedOver(writing, stageEntryId, each, reason);
}

export async function listMissing(reading: Reading, { jobIds }: { jobIds: readonly number[] }) {
  const all = await repository.listStages(reading);
  const answers = [];
  for (const jobId of jobIds) {
    const job = await getJobRow(reading, jobId);
    const { stage_id } = await currentStage(reading, jobId);
    const stages = stagesWithin(all, await extentOf(reading, jobId));
    const at = stages.findIndex((each) => each.stageId === stage_id);
    const stage = found(stages[at], 'stage');
    const facts = await needFactsOf(reading, job, { asked: stage.needs });
    answers.push({ jobId, nextStageId: stages[at + 1]?.stageId ?? null, missing: missingAt(stage, facts) });
  }
  return answers;
}

export async function listWithStock(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  return { cores: await coresOpenOn(reading, jobId), plates: await platesOutOf(reading, jobId) };
}

export async function signOff(
  writing: Writing,
  now: string,
  input: { jobId: number; place: SignOff['place']; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  await jobAtBench(writing, input.jobId);
  await repository.insertSignOff(writing, { ...input, now });
  return {};
}
