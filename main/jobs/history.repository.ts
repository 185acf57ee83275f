// What happened on a job beside its stages and its door, out of the file.
import type { Reading } from '../database/tables.ts';

/** Every pull and return of parts, with the part. */
export function listPartMovements(reading: Reading, jobId: number) {
  return reading
    .selectFrom('movements')
    .innerJoin('batches', 'batches.batch_id', 'movements.batch_id')
    .innerJoin('parts', 'parts.part_id', 'batches.part_id')
    .innerJoin('people', 'people.person_id', 'movements.moved_by')
    .select([
      'movements.kind',
      'movements.change',
      'movements.moved_at',
      'parts.number',
      'parts.description',
      'batches.mark',
      'batches.document',
      'people.initials',
    ])
    .where('movements.job_id', '=', jobId)
    .orderBy('movement_id')
    .execute();
}

export function listCoresOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('cores')
    .innerJoin('people', 'people.person_id', 'cores.opened_by')
    .leftJoin('core_settlements', 'core_settlements.core_id', 'cores.core_id')
    .leftJoin('people as settlers', 'settlers.person_id', 'core_settlements.settled_by')
    .select([
      'cores.what',
      'cores.direction',
      'cores.opened_at',
      'people.initials',
      'core_settlements.how',
      'core_settlements.note',
      'core_settlements.settled_at',
      'settlers.initials as settled_initials',
    ])
    .where('cores.job_id', '=', jobId)
    .orderBy('cores.core_id')
    .execute();
}

export function listEstimatesOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('estimates')
    .innerJoin('people', 'people.person_id', 'estimates.given_by')
    .select(['estimate_id', 'number', 'total_cents', 'given_at', 'people.initials'])
    .where('job_id', '=', jobId)
    .orderBy('estimate_id')
    .execute();
}

export function listApprovalsOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('approvals')
    .innerJoin('estimates', 'estimates.estimate_id', 'approvals.estimate_id')
    .innerJoin('people', 'people.person_id', 'approvals.recorded_by')
    .select(['estimates.number', 'approved_by', 'how', 'note', 'recorded_at', 'people.initials'])
    .where('estimates.job_id', '=', jobId)
    .orderBy('approval_id')
    .execute();
}

/** Every mock-up with what sits in it, in the order of the pack. */
export function listMockUpsOf(reading: Reading, jobId: number) {
  return reading
    .selectFrom('mock_ups')
    .innerJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .innerJoin('people', 'people.person_id', 'mock_ups.made_by')
    .select(['mock_up_id', 'mock_ups.pack_id', 'packs.name', 'mock_ups.number', 'mock_ups.note', 'made_at', 'initials'])
    .where('job_id', '=', jobId)
    .orderBy('mock_up_id')
    .execute();
}
