// Which tickets something went into: parts by their pulls, plates by the mock-ups they sat in.
import { among } from '../database/among.ts';
import type { Reading } from '../database/tables.ts';

/** Pulled less returned, for every ticket and batch; `batchIds` are few. */
export function pullsOfBatches(reading: Reading, batchIds: readonly number[]) {
  if (batchIds.length === 0) return Promise.resolve([]);
  return reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .where('movements.batch_id', 'in', batchIds)
    .where('movements.kind', 'in', ['pull', 'return'])
    .groupBy(['movements.job_id', 'movements.batch_id'])
    .select((row) => [
      'movements.job_id',
      'movements.batch_id',
      'parts.number',
      'parts.unit_of_issue',
      'batches.mark',
      'batches.document',
      row.fn.min('movements.moved_at').as('at'),
      row.fn.sum<number>('movements.change').as('change'),
    ])
    .execute();
}

function sittings(reading: Reading) {
  return reading
    .selectFrom('mock_up_pieces')
    .innerJoin('mock_ups', 'mock_ups.mock_up_id', 'mock_up_pieces.mock_up_id')
    .innerJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .innerJoin('slots', 'slots.slot_id', 'mock_up_pieces.slot_id')
    .innerJoin('pieces', 'pieces.piece_id', 'mock_up_pieces.piece_id')
    .select([
      'mock_ups.job_id',
      'mock_ups.made_at as at',
      'packs.name as pack_name',
      'slots.kind',
      'pieces.piece_id',
      'pieces.tag',
    ])
    .select((row) => [
      // Counted from the piston among the slots of its kind, as at the bench.
      row
        .selectFrom('slots as before')
        .whereRef('before.pack_id', '=', 'slots.pack_id')
        .whereRef('before.kind', '=', 'slots.kind')
        .whereRef('before.position', '<=', 'slots.position')
        .select((count) => count.fn.countAll<number>().as('place'))
        .as('place'),
      row
        .selectFrom('mock_ups as later')
        .whereRef('later.job_id', '=', 'mock_ups.job_id')
        .whereRef('later.pack_id', '=', 'mock_ups.pack_id')
        .whereRef('later.number', '>', 'mock_ups.number')
        .select((count) => count.fn.countAll<number>().as('later'))
        .as('later'),
    ])
    .orderBy('mock_ups.mock_up_id', 'desc');
}

export type Sitting = Awaited<ReturnType<ReturnType<typeof sittings>['execute']>>[number];

/** Every mock-up that a plate sat in, newest first. */
export function sittingsOfPlate(reading: Reading, pieceId: number): Promise<Sitting[]> {
  return sittings(reading).where('mock_up_pieces.piece_id', '=', pieceId).execute();
}

export function sittingsOutOfCan(reading: Reading, canId: number): Promise<Sitting[]> {
  return sittings(reading).where('pieces.can_id', '=', canId).execute();
}

export function sittingsOutOfBatches(reading: Reading, batchIds: readonly number[]): Promise<Sitting[]> {
  if (batchIds.length === 0) return Promise.resolve([]);
  return sittings(reading).where('pieces.batch_id', 'in', batchIds).execute();
}

export function batchesOutOf(reading: Reading, batchIds: readonly number[]) {
  if (batchIds.length === 0) return Promise.resolve([]);
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .where('batches.kit_batch_id', 'in', batchIds)
    .select(['batches.batch_id', 'parts.number', 'batches.document', 'batches.received_on'])
    .orderBy('batches.batch_id')
    .execute();
}

/** Batches of kits that held this part. */
export async function kitBatchesHolding(reading: Reading, partId: number): Promise<number[]> {
  const rows = await reading.selectFrom('kit_batch_lines').where('part_id', '=', partId).select('batch_id').execute();
  return rows.map((row) => row.batch_id);
}

/** Cans that plates of these batches were measured into. */
export function cansFilledFrom(reading: Reading, batchIds: readonly number[]) {
  if (batchIds.length === 0) return Promise.resolve([]);
  return reading
    .selectFrom('can_movements')
    .innerJoin('cans', 'cans.can_id', 'can_movements.can_id')
    .where('can_movements.batch_id', 'in', batchIds)
    .groupBy('cans.can_id')
    .select((row) => [
      'cans.can_id',
      'cans.outline',
      'cans.height_nm',
      row.fn.sum<number>('can_movements.change').as('count'),
    ])
    .execute();
}

/** Batches whose plates were measured into a can. */
export async function batchesInCan(reading: Reading, canId: number): Promise<number[]> {
  const rows = await reading
    .selectFrom('can_movements')
    .where('can_id', '=', canId)
    .where('batch_id', 'is not', null)
    .select('batch_id')
    .distinct()
    .execute();
  return rows.flatMap((row) => (row.batch_id === null ? [] : [row.batch_id]));
}

export function jobFacts(reading: Reading, jobIds: readonly number[]) {
  if (jobIds.length === 0) return Promise.resolve([]);
  return reading
    .selectFrom('jobs')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .where('jobs.job_id', 'in', jobIds)
    .select([
      'jobs.job_id',
      'jobs.number',
      'jobs.revision_id',
      'units.unit_id',
      'families.name as family_name',
      'units.serial',
      'units.vehicle',
      'customers.name as customer_name',
      'customers.phone',
    ])
    .select((row) =>
      row
        .selectFrom('stage_entries')
        .innerJoin('stages', 'stages.stage_id', 'stage_entries.stage_id')
        .whereRef('stage_entries.job_id', '=', 'jobs.job_id')
        .orderBy('stage_entry_id', 'desc')
        .limit(1)
        .select('stages.is_closed')
        .as('is_closed'),
    )
    .execute();
}

/** The newest take of every check on a pack's clearance that a ticket has. */
/** Of each of these jobs the newest take of each clearance, in the order of its sheet. */
export function newestClearances(reading: Reading, jobIds: readonly number[]) {
  return reading
    .selectFrom('takes')
    .innerJoin('checks', 'checks.check_id', 'takes.check_id')
    .innerJoin('packs', 'packs.pack_id', 'checks.pack_id')
    .where('takes.job_id', 'in', among(jobIds))
    .groupBy(['takes.job_id', 'takes.check_id'])
    .select((row) => [
      'takes.job_id',
      'checks.check_id',
      'packs.pack_id',
      'packs.name as pack_name',
      row.fn.max<number>('takes.take_id').as('take_id'),
    ])
    .orderBy('checks.position')
    .execute();
}

export async function findJobId(reading: Reading, jobId: number): Promise<number | undefined> {
  return (await reading.selectFrom('jobs').select('job_id').where('job_id', '=', jobId).executeTakeFirst())?.job_id;
}

export function platesTagged(reading: Reading, tag: string) {
  return reading
    .selectFrom('pieces')
    .leftJoin('discards', 'discards.piece_id', 'pieces.piece_id')
    .select(['pieces.piece_id', 'pieces.outline'])
    .where('pieces.tag', '=', tag)
    .where((row) => row.or([row('was_mistyped', 'is', null), row('was_mistyped', '=', 0)]))
    .limit(2)
    .execute();
}
