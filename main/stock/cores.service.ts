// Cores: what has to go back to a supplier, and what a customer still owes the shop.
import { parseMoney } from '../../app/quantities/money.ts';
import type { Core } from '../../app/stock/parts.contract.ts';
import { accepted, found, Refused } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { getJobRow } from '../jobs/jobs.service.ts';
import { getSettings, personAtWork } from '../shop/shop.service.ts';
import type { PartRow } from './parts.repository.ts';

type Direction = Core['direction'];
type Ending = NonNullable<Core['settled']>['how'];

const endings: Readonly<Record<Direction, readonly Ending[]>> = {
  'to send back': ['sent back', 'charged', 'written off'],
  'due to us': ['came back', 'charged', 'written off'],
};

export async function listCores(
  reading: Reading,
  now: string,
  { includeSettled, jobId }: { includeSettled: boolean; jobId?: number | undefined },
): Promise<Core[]> {
  const today = now.slice(0, 10);
  const rows = await cores(reading)
    .$if(!includeSettled, (open) => open.where('core_settlements.core_id', 'is', null))
    .$if(jobId !== undefined, (own) => own.where('cores.job_id', '=', jobId ?? 0))
    // Those without a day come last.
    .orderBy('cores.due_on', (order) => order.asc().nullsLast())
    .orderBy('cores.core_id')
    .execute();
  return rows.map((row) => coreOfRow(row, today));
}

export async function openCore(
  writing: Writing,
  now: string,
  input: {
    direction: Direction;
    what: string;
    quantity: number;
    charge: string;
    dueOn: string | null;
    jobId: number | null;
    by: number;
  },
) {
  await personAtWork(writing, input.by);
  if (input.jobId !== null) await getJobRow(writing, input.jobId);
  const { decimalMark } = await getSettings(writing);
  const charge_cents = input.charge === '' ? null : accepted(parseMoney(input.charge, decimalMark), 'charge');
  return { coreId: await insertCore(writing, now, { ...input, charge_cents, batchId: null }) };
}

/** Parts with a core charge came in: their cores have to go back. */
export async function openCoreOfBatch(
  writing: Writing,
  now: string,
  part: PartRow,
  batch: { batchId: number; quantity: number; by: number },
): Promise<void> {
  await insertCore(writing, now, {
    ...batch,
    direction: 'to send back',
    what: `${part.number}, ${part.description}`,
    charge_cents: part.core_charge_cents,
    dueOn: null,
    jobId: null,
  });
}

async function insertCore(
  writing: Writing,
  now: string,
  core: {
    direction: Direction;
    what: string;
    quantity: number;
    charge_cents: number | null;
    dueOn: string | null;
    batchId: number | null;
    jobId: number | null;
    by: number;
  },
): Promise<number> {
  const { core_id } = await writing
    .insertInto('cores')
    .values({
      direction: core.direction,
      what: core.what,
      quantity: core.quantity,
      charge_cents: core.charge_cents,
      due_on: core.dueOn,
      batch_id: core.batchId,
      job_id: core.jobId,
      opened_at: now,
      opened_by: core.by,
    })
    .returning('core_id')
    .executeTakeFirstOrThrow();
  return core_id;
}

export async function settleCore(
  writing: Writing,
  now: string,
  input: { coreId: number; how: Ending; note: string; by: number },
) {
  await personAtWork(writing, input.by);
  const row = found(await cores(writing).where('cores.core_id', '=', input.coreId).executeTakeFirst(), 'core');
  if (row.how !== null) throw new Refused('settled', `That core is settled already: ${row.how}.`);
  if (!endings[row.direction].includes(input.how)) {
    throw new Refused('wrong-way', `A core ${row.direction} cannot end as “${input.how}”.`, 'how');
  }
  await writing
    .insertInto('core_settlements')
    .values({ core_id: input.coreId, how: input.how, note: input.note, settled_at: now, settled_by: input.by })
    .execute();
  return {};
}

function cores(reading: Reading) {
  return reading
    .selectFrom('cores')
    .innerJoin('people', 'people.person_id', 'cores.opened_by')
    .leftJoin('batches', 'batches.batch_id', 'cores.batch_id')
    .leftJoin('parts', 'parts.part_id', 'batches.part_id')
    .leftJoin('jobs', 'jobs.job_id', 'cores.job_id')
    .leftJoin('core_settlements', 'core_settlements.core_id', 'cores.core_id')
    .leftJoin('people as settlers', 'settlers.person_id', 'core_settlements.settled_by')
    .selectAll('cores')
    .select([
      'people.initials',
      'parts.part_id',
      'parts.number as part_number',
      'parts.supplier',
      'jobs.number as job_number',
      'core_settlements.how',
      'core_settlements.note',
      'core_settlements.settled_at',
      'settlers.initials as settled_initials',
    ]);
}

function coreOfRow(row: Awaited<ReturnType<ReturnType<typeof cores>['execute']>>[number], today: string): Core {
  return {
    coreId: row.core_id,
    direction: row.direction,
    what: row.what,
    quantity: row.quantity,
    charge_cents: row.charge_cents,
    dueOn: row.due_on,
    isOverdue: row.how === null && row.due_on !== null && row.due_on < today,
    part:
      row.part_id === null || row.part_number === null
        ? null
        : { partId: row.part_id, number: row.part_number, supplier: row.supplier ?? '' },
    job: row.job_id === null || row.job_number === null ? null : { jobId: row.job_id, number: row.job_number },
    openedAt: row.opened_at,
    by: row.initials,
    settled:
      row.how === null || row.settled_at === null || row.settled_initials === null
        ? null
        : { how: row.how, note: row.note ?? '', at: row.settled_at, by: row.settled_initials },
  };
}
