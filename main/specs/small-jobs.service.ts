// The small jobs of a family. They belong to the family, not to a revision: names are looked up on the newest sheet.
import type { SmallJob } from '../../app/specs/small-jobs.contract.ts';
import { found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { findFamily } from './specs.repository.ts';
import { getRevision } from './specs.service.ts';

export async function listSmallJobs(reading: Reading, { familyId }: { familyId: number }): Promise<SmallJob[]> {
  const rows = await reading
    .selectFrom('small_jobs')
    .select(['small_job_id', 'name'])
    .where('family_id', '=', familyId)
    .orderBy('name')
    .execute();
  return Promise.all(rows.map((row) => withParts(reading, row)));
}

export async function findSmallJob(reading: Reading, smallJobId: number) {
  const row = await reading
    .selectFrom('small_jobs')
    .select(['small_job_id', 'family_id', 'name'])
    .where('small_job_id', '=', smallJobId)
    .executeTakeFirst();
  const { family_id, ...rest } = found(row, 'small job');
  return { familyId: family_id, ...(await withParts(reading, rest)) };
}

async function withParts(reading: Reading, row: { small_job_id: number; name: string }): Promise<SmallJob> {
  const stages = await reading
    .selectFrom('small_job_stages')
    .select('stage_id')
    .where('small_job_id', '=', row.small_job_id)
    .execute();
  const parts = await reading
    .selectFrom('small_job_parts')
    .select(['kind', 'name'])
    .where('small_job_id', '=', row.small_job_id)
    .execute();
  const named = (kind: 'check' | 'list') => parts.filter((part) => part.kind === kind).map(({ name }) => name);
  return {
    smallJobId: row.small_job_id,
    name: row.name,
    stageIds: stages.map((stage) => stage.stage_id),
    checkNames: named('check'),
    listNames: named('list'),
  };
}

export async function saveSmallJob(
  writing: Writing,
  now: string,
  input: Omit<SmallJob, 'smallJobId'> & { familyId: number; smallJobId: number | null; by: number },
) {
  await personAtWork(writing, input.by);
  found(await findFamily(writing, input.familyId), 'family');
  const others = (await listSmallJobs(writing, input)).filter(({ smallJobId }) => smallJobId !== input.smallJobId);
  if (others.some(({ name }) => name.toLowerCase() === input.name.toLowerCase()))
    throw new Refused('name-taken', `There is already a small job called ${input.name}.`, 'name');
  if (input.checkNames.length + input.listNames.length === 0)
    throw new Refused('nothing-taken', `Choose at least one check or list that ${input.name} takes.`, 'checkNames');
  const sheet = await getRevision(writing, input);
  const missing =
    input.checkNames.find((name) => !sheet.checks.some((check) => check.name === name)) ??
    input.listNames.find((name) => !sheet.lists.some((list) => list.name === name));
  if (missing !== undefined)
    throw new Refused('not-on-sheet', `${missing} is not on the sheet any more: take it out.`, 'checkNames');
  const smallJobId = await upsertName(writing, now, input);
  await replaceParts(writing, smallJobId, input);
  return { smallJobId };
}

async function upsertName(
  writing: Writing,
  now: string,
  input: { familyId: number; smallJobId: number | null; name: string; by: number },
): Promise<number> {
  const stamp = { name: input.name, saved_at: now, saved_by: input.by };
  if (input.smallJobId === null) {
    const { small_job_id } = await writing
      .insertInto('small_jobs')
      .values({ family_id: input.familyId, ...stamp })
      .returning('small_job_id')
      .executeTakeFirstOrThrow();
    return small_job_id;
  }
  const known = await findSmallJob(writing, input.smallJobId);
  if (known.familyId !== input.familyId) throw new Refused('not-found', 'There is no such small job in this family.');
  await writing.updateTable('small_jobs').set(stamp).where('small_job_id', '=', input.smallJobId).execute();
  return input.smallJobId;
}

async function replaceParts(
  writing: Writing,
  smallJobId: number,
  { stageIds, checkNames, listNames }: Omit<SmallJob, 'smallJobId' | 'name'>,
): Promise<void> {
  await writing.deleteFrom('small_job_stages').where('small_job_id', '=', smallJobId).execute();
  await writing.deleteFrom('small_job_parts').where('small_job_id', '=', smallJobId).execute();
  const known = new Set((await writing.selectFrom('stages').select('stage_id').execute()).map((each) => each.stage_id));
  for (const stageId of new Set(stageIds)) {
    if (!known.has(stageId)) throw new Refused('not-found', 'There is no such stage.');
    await writing.insertInto('small_job_stages').values({ small_job_id: smallJobId, stage_id: stageId }).execute();
  }
  const parts = [
    ...[...new Set(checkNames)].map((name) => ({ kind: 'check' as const, name })),
    ...[...new Set(listNames)].map((name) => ({ kind: 'list' as const, name })),
  ];
  for (const part of parts)
    await writing
      .insertInto('small_job_parts')
      .values({ small_job_id: smallJobId, ...part })
      .execute();
}

export async function dropSmallJob(writing: Writing, input: { smallJobId: number; by: number }) {
  await personAtWork(writing, input.by);
  await findSmallJob(writing, input.smallJobId);
  // Its stages and parts go with it.
  await writing.deleteFrom('small_jobs').where('small_job_id', '=', input.smallJobId).execute();
  return {};
}
