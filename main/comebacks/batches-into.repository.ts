// What went into builds, for all who hold one build against others.
import type { Expression } from 'kysely';
import type { Reading } from '../database/tables.ts';

/**
 * Which batches went into these jobs, as rows of job and batch: pulled and not all brought back, or in a plate of the
 * last mock-up of a pack.
 */
export function batchesInto(reading: Reading, jobIds: Expression<number>) {
  const pulled = reading
    .selectFrom('movements')
    .select(['movements.job_id', 'movements.batch_id'])
    .where('movements.job_id', 'in', jobIds)
    .where('movements.kind', 'in', ['pull', 'return'])
    .groupBy(['movements.job_id', 'movements.batch_id'])
    .having((row) => row.fn.sum('change'), '<', 0)
    .$narrowType<{ job_id: number }>();
  const plates = reading
    .selectFrom('mock_ups')
    .innerJoin('mock_up_pieces', 'mock_up_pieces.mock_up_id', 'mock_ups.mock_up_id')
    .innerJoin('pieces', 'pieces.piece_id', 'mock_up_pieces.piece_id')
    .select(['mock_ups.job_id', 'pieces.batch_id'])
    .where('mock_ups.job_id', 'in', jobIds)
    .where('pieces.batch_id', 'is not', null)
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('mock_ups as later')
            .select('later.mock_up_id')
            .whereRef('later.job_id', '=', 'mock_ups.job_id')
            .whereRef('later.pack_id', '=', 'mock_ups.pack_id')
            .whereRef('later.number', '>', 'mock_ups.number'),
        ),
      ),
    )
    .$narrowType<{ batch_id: number }>();
  return reading.selectFrom(pulled.union(plates).as('goings'));
}
