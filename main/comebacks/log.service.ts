// Logging a comeback, putting its card right, saying its causes. What was written first stays beside what superseded it.
import type { Cause, Certainty } from '../../app/comebacks/causes.ts';
import type { Comeback, ComebackFilter, ComebackLine } from '../../app/comebacks/log.contract.ts';
import { serviceUntil } from '../../app/comebacks/service-until.ts';
import type { ParsedInput } from '../../app/contract/contract.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import { writeDay } from '../../app/papers/dates.ts';
import { parseMoney } from '../../app/quantities/money.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { deliveredOn } from '../jobs/delivery.repository.ts';
import { getEstimate } from '../jobs/estimate.service.ts';
import { currentStage } from '../jobs/jobs.repository.ts';
import { checkIn, getJobRow, jobAtWork } from '../jobs/jobs.service.ts';
import { packsOfJob } from '../jobs/need-facts.service.ts';
import { dayHere } from '../ports/clock.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import { sameUnits } from './builds.repository.ts';
import { buildAsDelivered } from './builds.service.ts';
import * as repository from './log.repository.ts';

export async function logComeback(
  writing: Writing,
  now: string,
  input: ParsedInput<'comebacks.logComeback'>,
): Promise<{ comebackId: number; jobId: number; number: number }> {
  await personAtWork(writing, input.by);
  const { builtJobId, ticket, by } = input;
  const jobId = 'jobId' in ticket ? ticket.jobId : (await checkIn(writing, now, { ...ticket.checkIn, by })).jobId;
  const job = await jobAtWork(writing, jobId);
  await assertSameUnit(writing, job, builtJobId);
  await assertHeldOnce(writing, job, null);
  await checkDay(writing, now, builtJobId, input.cameBackOn);
  const comebackId = await repository.insertComeback(writing, { jobId, builtJobId, by, now });
  const { cameBackOn, customerSays, distance, covered, coveredNote } = input;
  await repository.insertCard(
    writing,
    {
      cameBackOn,
      customerSays,
      distance,
      covered,
      coveredNote,
      outcome: 'not known yet',
      cost_cents: null,
      note: '',
    },
    { comebackId, reason: '', by, now },
  );
  return { comebackId, jobId, number: job.number };
}

type JobRow = Awaited<ReturnType<typeof getJobRow>>;

async function assertSameUnit(writing: Writing, job: JobRow, builtJobId: number): Promise<void> {
  const built = await buildAsDelivered(writing, builtJobId);
  const units = await sameUnits(writing, built.unit);
  if (!units.includes(job.unit_id)) {
    const sentence = `Job ${job.number} is another unit than job ${built.number}: only its own build can have come back.`;
    throw new Refused('other-unit', sentence, 'ticket');
  }
  if (job.job_id <= builtJobId || dayHere(job.opened_at) < built.deliveredOn) {
    const sentence = `Job ${job.number} was opened before job ${built.number} left on ${writeDay(built.deliveredOn)}.`;
    throw new Refused('opened-before', sentence, 'ticket');
  }
}

/** A ticket is held against one build at a time; one that was logged by mistake holds it no more. */
async function assertHeldOnce(writing: Writing, job: JobRow, besidesId: number | null): Promise<void> {
  const comebacks = await repository.listComebacksOf(writing, [job.job_id]);
  const other = comebacks.find((each) => each.job_id === job.job_id && each.comeback_id !== besidesId);
  if (!other) return;
  const sentence = `Job ${job.number} is held against job ${other.built_number} already.`;
  throw new Refused('held-already', sentence, 'ticket');
}

async function checkDay(writing: Writing, now: string, builtJobId: number, cameBackOn: string): Promise<void> {
  const { deliveredOn: left, number } = await buildAsDelivered(writing, builtJobId);
  if (cameBackOn > dayHere(now)) throw new Refused('future', 'That day is still to come.', 'cameBackOn');
  if (cameBackOn < left) {
    const sentence = `Job ${number} left on ${writeDay(left)}: it cannot have come back before.`;
    throw new Refused('too-early', sentence, 'cameBackOn');
  }
}

/** What was not known before needs no reason; whatever supersedes a thing that was known does. */
export async function writeCard(
  writing: Writing,
  now: string,
  { cost, reason, by, comebackId, ...typed }: ParsedInput<'comebacks.writeCard'>,
) {
  await personAtWork(writing, by);
  const before = found(await repository.findComeback(writing, comebackId), 'comeback');
  const { decimalMark } = await getSettings(writing);
  const cost_cents = cost === '' ? null : accepted(parseMoney(cost, decimalMark), 'cost');
  const card = { ...typed, cost_cents };
  await checkDay(writing, now, before.built_job_id, card.cameBackOn);
  if (card.outcome !== 'logged by mistake')
    await assertHeldOnce(writing, await getJobRow(writing, before.job_id), comebackId);
  const [standing] = await repository.listCards(writing, comebackId);
  const changed = changesOf(found(standing, 'card'), card);
  if (changed === 'nothing')
    throw new Refused('nothing-changed', 'That is what stands there already: nothing was written.');
  if (changed === 'something known' && reason === '')
    throw new Refused('reason', 'Say why what stood there is changed.', 'reason');
  await repository.insertCard(writing, card, { comebackId, reason, by, now });
  return {};
}

const blanks: ReadonlySet<unknown> = new Set([null, '', 'not known yet', 'not decided yet']);

function changesOf(
  before: repository.CardToKeep,
  after: repository.CardToKeep,
): 'nothing' | 'only blanks' | 'something known' {
  const keys = Object.keys(after) as Array<keyof repository.CardToKeep>;
  const changed = keys.filter((key) => !isSame(before[key], after[key]));
  if (changed.length === 0) return 'nothing';
  return changed.every((key) => blanks.has(before[key])) ? 'only blanks' : 'something known';
}

function isSame(one: string | number | Distance | null, other: string | number | Distance | null): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

export async function sayCause(
  writing: Writing,
  now: string,
  input: { comebackId: number; cause: Cause; packId: number | null; certainty: Certainty; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  const comeback = found(await repository.findComeback(writing, input.comebackId), 'comeback');
  if (input.packId !== null) await assertPackOf(writing, comeback.built_job_id, input.packId);
  const standing = (await standingCauses(writing, input.comebackId)).find((each) => isOf(each, input));
  if (standing && standing.certainty === input.certainty && standing.note === input.note)
    throw new Refused('nothing-changed', 'That is what stands there already: nothing was written.');
  await repository.insertCause(writing, { ...input, now });
  return {};
}

export async function takeBackCause(
  writing: Writing,
  now: string,
  { reason, ...input }: { comebackId: number; cause: Cause; packId: number | null; reason: string; by: number },
) {
  await personAtWork(writing, input.by);
  found(await repository.findComeback(writing, input.comebackId), 'comeback');
  const standing = (await standingCauses(writing, input.comebackId)).find((each) => isOf(each, input));
  if (!standing) throw new Refused('not-said', 'Nobody said that cause of it, or it was taken back already.');
  await repository.insertCause(writing, { ...input, certainty: 'taken back', note: reason, now });
  return {};
}

type CauseRow = Awaited<ReturnType<typeof repository.listCauses>>[number];

function isOf(one: { cause: Cause; packId: number | null }, other: { cause: Cause; packId: number | null }): boolean {
  return one.cause === other.cause && one.packId === other.packId;
}

async function standingCauses(reading: Reading, comebackId: number): Promise<CauseRow[]> {
  return splitCauses(await repository.listCauses(reading, comebackId)).causes;
}

/** The newest word on a cause in a pack stands, unless it took the cause back. */
function splitCauses(rows: readonly CauseRow[]): { causes: CauseRow[]; earlierCauses: CauseRow[] } {
  const isNewest = (row: CauseRow, index: number) => rows.findIndex((each) => isOf(each, row)) === index;
  const stands = (row: CauseRow, index: number) => isNewest(row, index) && row.certainty !== 'taken back';
  const firstSaid = (row: CauseRow) => rows.findLastIndex((each) => isOf(each, row));
  return {
    causes: rows.filter(stands).toSorted((one, other) => firstSaid(other) - firstSaid(one)),
    earlierCauses: rows.filter((row, index) => !stands(row, index)),
  };
}

async function assertPackOf(reading: Reading, builtJobId: number, packId: number): Promise<void> {
  const job = await getJobRow(reading, builtJobId);
  const packs = await packsOfJob(reading, job);
  if (!packs.some((pack) => pack.packId === packId))
    throw new Refused('other-pack', `Job ${job.number} has no such pack.`, 'packId');
}

export async function getComeback(reading: Reading, { comebackId }: { comebackId: number }): Promise<Comeback> {
  const row = found(await repository.findComeback(reading, comebackId), 'comeback');
  const build = await buildAsDelivered(reading, row.built_job_id);
  const job = await getJobRow(reading, row.job_id);
  const stage = await currentStage(reading, row.job_id);
  const [card, ...earlierCards] = await repository.listCards(reading, comebackId);
  const standing = found(card, 'card');
  const packs = await packsOfJob(reading, await getJobRow(reading, row.built_job_id));
  const { lines, totals } = await getEstimate(reading, { jobId: row.job_id });
  return {
    comebackId,
    build,
    ticket: {
      jobId: row.job_id,
      number: job.number,
      stageName: stage.name,
      isClosed: stage.is_closed === 1,
      openedAt: job.opened_at,
      deliveredOn: await deliveredOn(reading, row.job_id),
    },
    service: serviceUntil({ ...build, ...build.left }, standing.cameBackOn, standing.distance),
    card: standing,
    earlierCards,
    ...splitCauses(await repository.listCauses(reading, comebackId)),
    packs: packs.map(({ packId, name }) => ({ packId, name })),
    lines_cents: lines.length === 0 ? null : totals.lines_cents,
    recorded: await repository.countRecorded(reading, row.job_id),
  };
}

export async function listComebacks(reading: Reading, { only }: { only: ComebackFilter }): Promise<ComebackLine[]> {
  const rows = await repository.listComebacks(reading, only);
  const ids = rows.map((row) => row.comeback_id);
  const causes = Map.groupBy(await repository.listStandingCauses(reading, ids), (row) => row.comeback_id);
  return rows.map((row) => ({
    comebackId: row.comeback_id,
    jobId: row.job_id,
    number: row.number,
    builtJobId: row.built_job_id,
    builtNumber: row.built_number,
    familyName: row.family_name,
    serial: row.serial,
    vehicle: row.vehicle,
    customerName: row.customer_name,
    cameBackOn: row.came_back_on,
    service: serviceUntil(
      {
        deliveredOn: row.delivered_on,
        inServiceOn: row.in_service_on,
        distanceAtDelivery: repository.distanceOf({ distance_amount: row.left_amount, distance_unit: row.left_unit }),
      },
      row.came_back_on,
      repository.distanceOf(row),
    ),
    outcome: row.outcome,
    covered: row.covered,
    cost_cents: row.cost_cents,
    causes: [...new Set((causes.get(row.comeback_id) ?? []).map((each) => each.cause))],
  }));
}

export async function listOfJob(reading: Reading, { jobId }: { jobId: number }) {
  await getJobRow(reading, jobId);
  const rows = await repository.listComebacksOf(reading, [jobId]);
  const held = rows.find((row) => row.job_id === jobId);
  return {
    heldAgainst: held
      ? {
          comebackId: held.comeback_id,
          jobId: held.built_job_id,
          number: held.built_number,
          outcome: held.outcome,
        }
      : null,
    cameBack: rows
      .filter((row) => row.built_job_id === jobId)
      .map((row) => ({
        comebackId: row.comeback_id,
        jobId: row.job_id,
        number: row.number,
        cameBackOn: row.came_back_on,
      })),
  };
}
