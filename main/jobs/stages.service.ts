// Jobs on their way from stage to stage: what a stage asks for, what a job went on without, and the sign-off.

import { stagesWithin } from '../../app/jobs/extent.ts';
import type { Need } from '../../app/jobs/needs.ts';
import { missingAt, missingForMove, sayMissing, stagesPassed } from '../../app/jobs/stage-moves.ts';
import type { SignOff } from '../../app/jobs/stages.contract.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { extentOf } from './extent.repository.ts';
import { currentStage } from './jobs.repository.ts';
import { getJobRow, jobAtBench } from './jobs.service.ts';
import { coresOpenOn, needFactsOf, platesOutOf } from './need-facts.service.ts';
import * as repository from './stages.repository.ts';

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
  const move = { fromId: current.stage_id, toId: stage.stageId };
  const asked = stagesPassed(stages, move.fromId, move.toId).flatMap(({ needs }) => needs);
  const missing = missingForMove(stages, move, await needFactsOf(writing, job, { asked }));
  if (missing.length > 0 && input.reason === '')
    throw new Refused('missing', sayMissing(stage.name, missing), 'reason');
  const stageEntryId = await repository.enterStage(writing, { ...input, now });
  for (const each of missing) await repository.insertPassedOver(writing, stageEntryId, each, input.reason);
  return {};
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
