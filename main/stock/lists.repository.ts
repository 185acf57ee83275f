// Whole shelves at once, for files: parts with their families, batches with what is on hand, movements, plates, cans.
import type { Reading } from '../database/tables.ts';

/** Parts with what is on hand, by number; families come as their names. */
export async function listAllParts(reading: Reading) {
  const families = Map.groupBy(
    await reading
      .selectFrom('part_families')
      .innerJoin('families', 'families.family_id', 'part_families.family_id')
      .select(['part_id', 'families.name'])
      .orderBy('families.name')
      .execute(),
    (row) => row.part_id,
  );
  const onHand = await onHandByPart(reading);
  const parts = await reading.selectFrom('parts').selectAll().orderBy('number').execute();
  return parts.map((part) => ({
    ...part,
    families: (families.get(part.part_id) ?? []).map((family) => family.name),
    on_hand: onHand.get(part.part_id) ?? 0,
  }));
}

async function onHandByPart(reading: Reading): Promise<ReadonlyMap<number, number>> {
  const rows = await reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .groupBy('part_id')
    .select((row) => ['part_id', row.fn.sum<number>('change').as('on_hand')])
    .execute();
  return new Map(rows.map((row) => [row.part_id, row.on_hand]));
}

/** Batches with what is on hand, by the number of their part, the oldest first. */
export function listAllBatches(reading: Reading) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .innerJoin('people', 'people.person_id', 'batches.received_by')
    .leftJoin('batches as kit_batches', 'kit_batches.batch_id', 'batches.kit_batch_id')
    .leftJoin('parts as kits', 'kits.part_id', 'kit_batches.part_id')
    .leftJoin('movements', 'movements.batch_id', 'batches.batch_id')
    .groupBy('batches.batch_id')
    .orderBy('parts.number')
    .orderBy('batches.received_on')
    .orderBy('batches.batch_id')
    .select((row) => [
      'batches.batch_id',
      'batches.part_id',
      'parts.number',
      'parts.description',
      'parts.bin',
      'batches.mark',
      'batches.document',
      'batches.received_on',
      'batches.unit_cost_cents',
      'kits.number as kit_number',
      'people.initials',
      row.fn.coalesce(row.fn.sum<number>('movements.change'), row.lit(0)).as('on_hand'),
    ])
    .execute();
}

/** The whole ledger, the oldest first. */
export function listAllMovements(reading: Reading) {
  return reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .innerJoin('people', 'people.person_id', 'movements.moved_by')
    .leftJoin('jobs', 'jobs.job_id', 'movements.job_id')
    .orderBy('movement_id')
    .select([
      'movements.moved_at',
      'parts.number',
      'batches.mark',
      'batches.document',
      'movements.kind',
      'movements.change',
      'jobs.number as job_number',
      'movements.reason',
      'people.initials',
    ])
    .execute();
}

/** Every single plate with its newest height, by outline and height. */
export function listAllPlates(reading: Reading) {
  return reading
    .selectFrom('pieces_as_known')
    .innerJoin('people', 'people.person_id', 'pieces_as_known.measured_by')
    .leftJoin('discards', 'discards.piece_id', 'pieces_as_known.piece_id')
    .orderBy('outline')
    .orderBy('height_nm')
    .orderBy('pieces_as_known.piece_id')
    .select([
      'tag',
      'kind',
      'outline',
      'height_nm',
      'height_from',
      'micrometer',
      'measured_at',
      'people.initials',
      'discards.reason as discarded',
    ])
    .execute();
}

/** Cans with their count, by outline and height. */
export function listAllCans(reading: Reading) {
  return reading
    .selectFrom('cans')
    .leftJoin('can_movements', 'can_movements.can_id', 'cans.can_id')
    .groupBy('cans.can_id')
    .orderBy('outline')
    .orderBy('height_nm')
    .select((row) => [
      'kind',
      'outline',
      'height_nm',
      row.fn.coalesce(row.fn.sum<number>('change'), row.lit(0)).as('count'),
    ])
    .execute();
}
