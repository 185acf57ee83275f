// Batches and what moved in them. What a batch has on hand is the sum of its changes, and triggers keep it from going
// below zero.
import type { MovementKind } from '../../app/stock/parts.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

function batches(reading: Reading) {
  return reading
    .selectFrom('batches')
    .innerJoin('people', 'people.person_id', 'batches.received_by')
    .leftJoin('batches as kit_batches', 'kit_batches.batch_id', 'batches.kit_batch_id')
    .leftJoin('parts as kits', 'kits.part_id', 'kit_batches.part_id')
    .selectAll('batches')
    .select([
      'people.initials',
      'kits.number as kit_number',
      'kit_batches.mark as kit_mark',
      'kit_batches.document as kit_document',
      'kit_batches.received_on as kit_received_on',
    ])
    .select((row) =>
      row
        .selectFrom('movements')
        .whereRef('movements.batch_id', '=', 'batches.batch_id')
        .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('on_hand'))
        .as('on_hand'),
    );
}

export type BatchRow = NonNullable<Awaited<ReturnType<typeof findBatch>>>;

export function findBatch(reading: Reading, batchId: number) {
  return batches(reading).where('batches.batch_id', '=', batchId).executeTakeFirst();
}

/** Oldest first: the order in which they are used up. */
export function listBatches(reading: Reading, partId: number) {
  return batches(reading)
    .where('batches.part_id', '=', partId)
    .orderBy('batches.received_on')
    .orderBy('batches.batch_id')
    .execute();
}

/** The batch of a part that came out of this kit, if one was laid out already. */
export function findBatchOutOf(reading: Reading, kitBatchId: number, partId: number) {
  return batches(reading)
    .where('batches.kit_batch_id', '=', kitBatchId)
    .where('batches.part_id', '=', partId)
    .executeTakeFirst();
}

export async function insertBatch(
  writing: Writing,
  batch: {
    partId: number;
    kitBatchId: number | null;
    mark: string;
    document: string;
    receivedOn: string;
    unitCost_cents: number | null;
    by: number;
    now: string;
  },
): Promise<number> {
  const { batch_id } = await writing
    .insertInto('batches')
    .values({
      part_id: batch.partId,
      kit_batch_id: batch.kitBatchId,
      mark: batch.mark,
      document: batch.document,
      received_on: batch.receivedOn,
      unit_cost_cents: batch.unitCost_cents,
      received_at: batch.now,
      received_by: batch.by,
    })
    .returning('batch_id')
    .executeTakeFirstOrThrow();
  return batch_id;
}

export async function insertKitBatchLine(
  writing: Writing,
  line: { batchId: number; partId: number; quantity: number },
): Promise<void> {
  await writing
    .insertInto('kit_batch_lines')
    .values({ batch_id: line.batchId, part_id: line.partId, quantity: line.quantity })
    .execute();
}

/** What lay in one kit of this batch. */
export function listKitBatchLines(reading: Reading, batchId: number) {
  return reading
    .selectFrom('kit_batch_lines')
    .innerJoin('parts', 'parts.part_id', 'kit_batch_lines.part_id')
    .select(['parts.part_id as partId', 'parts.number', 'parts.description', 'kit_batch_lines.quantity'])
    .where('batch_id', '=', batchId)
    .orderBy('parts.number')
    .execute();
}

/** How many of a part were left over of the kits of a batch that this job pulled. */
export async function leftOverOfKit(
  reading: Reading,
  left: { jobId: number; kitBatchId: number; partId: number },
): Promise<number> {
  const row = await reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .where('movements.job_id', '=', left.jobId)
    .where('movements.kind', '=', 'receive')
    .where('batches.kit_batch_id', '=', left.kitBatchId)
    .where('batches.part_id', '=', left.partId)
    .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('change'))
    .executeTakeFirstOrThrow();
  return row.change;
}

export type Move = {
  batchId: number;
  kind: MovementKind;
  change: number;
  jobId?: number;
  price_cents?: number | null;
  reason?: string;
  by: number;
  now: string;
};

export async function insertMovement(writing: Writing, move: Move): Promise<void> {
  await writing
    .insertInto('movements')
    .values({
      batch_id: move.batchId,
      kind: move.kind,
      change: move.change,
      job_id: move.jobId ?? null,
      price_cents: move.price_cents ?? null,
      reason: move.reason ?? '',
      moved_at: move.now,
      moved_by: move.by,
    })
    .execute();
}

function movements(reading: Reading) {
  return reading
    .selectFrom('movements')
    .innerJoin('people', 'people.person_id', 'movements.moved_by')
    .leftJoin('jobs', 'jobs.job_id', 'movements.job_id')
    .selectAll('movements')
    .select(['people.initials', 'jobs.number as job_number']);
}

export function listMovementsOfPart(reading: Reading, partId: number, limit: number) {
  return movements(reading)
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .where('batches.part_id', '=', partId)
    .orderBy('movement_id', 'desc')
    .limit(limit)
    .execute();
}

/** What a ticket holds of each batch: pulled less returned, with when and by whom it was first pulled. */
export function listHeldByJob(reading: Reading, jobId: number) {
  return reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .innerJoin('people', 'people.person_id', 'movements.moved_by')
    .where('movements.job_id', '=', jobId)
    .where('movements.kind', 'in', ['pull', 'return'])
    .groupBy('movements.batch_id')
    .select((row) => [
      'movements.batch_id',
      'batches.part_id',
      'batches.mark',
      'batches.document',
      'batches.received_on',
      'batches.unit_cost_cents',
      'parts.number',
      'parts.description',
      'parts.kind',
      'parts.unit_of_issue',
      // With a single min() SQLite takes the plain columns beside it from that row: the first pull and its hand.
      row.fn.min('movements.moved_at').as('pulled_at'),
      'people.initials',
      row.fn.coalesce('movements.price_cents', 'parts.price_cents').as('price_cents'),
      row.fn.sum<number>('movements.change').as('change'),
    ])
    .orderBy('parts.number')
    .orderBy('movements.batch_id')
    .execute();
}

export async function heldByJob(reading: Reading, jobId: number, batchId: number): Promise<number> {
  const row = await reading
    .selectFrom('movements')
    .where('job_id', '=', jobId)
    .where('batch_id', '=', batchId)
    .where('kind', 'in', ['pull', 'return'])
    .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('change'))
    .executeTakeFirstOrThrow();
  return -row.change;
}
