// Label sizes in and out of the file, and what stands on the label of each thing.
import type { Reading, Writing } from '../database/tables.ts';

export function listSizes(reading: Reading) {
  return reading.selectFrom('label_sizes').selectAll().orderBy('label_size_id').execute();
}

export type SizeToSave = { name: string; width_um: number; height_um: number };

export async function insertSize(writing: Writing, size: SizeToSave): Promise<number> {
  const { label_size_id } = await writing
    .insertInto('label_sizes')
    .values(size)
    .returning('label_size_id')
    .executeTakeFirstOrThrow();
  return label_size_id;
}

export async function replaceSize(writing: Writing, labelSizeId: number, size: SizeToSave): Promise<void> {
  await writing.updateTable('label_sizes').set(size).where('label_size_id', '=', labelSizeId).execute();
}

export function findPart(reading: Reading, partId: number) {
  return reading
    .selectFrom('parts')
    .select(['number', 'description', 'bin', 'supplier'])
    .where('part_id', '=', partId)
    .executeTakeFirst();
}

export function findBatch(reading: Reading, batchId: number) {
  return reading
    .selectFrom('batches')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .select(['parts.number', 'parts.description', 'parts.bin', 'mark', 'document', 'received_on'])
    .where('batch_id', '=', batchId)
    .executeTakeFirst();
}

export function findCan(reading: Reading, canId: number) {
  return reading
    .selectFrom('cans')
    .select(['kind', 'outline', 'height_nm'])
    .where('can_id', '=', canId)
    .executeTakeFirst();
}

export function findPlate(reading: Reading, pieceId: number) {
  return reading
    .selectFrom('pieces_as_known')
    .select(['kind', 'outline', 'tag', 'height_nm'])
    .where('piece_id', '=', pieceId)
    .executeTakeFirst();
}

export function findJob(reading: Reading, jobId: number) {
  return reading
    .selectFrom('jobs')
    .innerJoin('units', 'units.unit_id', 'jobs.unit_id')
    .innerJoin('families', 'families.family_id', 'units.family_id')
    .innerJoin('customers', 'customers.customer_id', 'jobs.customer_id')
    .select([
      'jobs.number',
      'jobs.case_tag',
      'families.name as family_name',
      'units.serial',
      'customers.name as customer_name',
    ])
    .where('jobs.job_id', '=', jobId)
    .executeTakeFirst();
}
