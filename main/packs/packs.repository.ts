// Mock-ups in and out of the file.
import type { Piece } from '../../app/packs/packs.contract.ts';
import { among } from '../database/among.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { pieceOfRow } from '../stock/plates.repository.ts';

export async function newestMockUpId(reading: Reading, jobId: number, packId: number): Promise<number | undefined> {
  const row = await reading
    .selectFrom('mock_ups')
    .select('mock_up_id')
    .where('job_id', '=', jobId)
    .where('pack_id', '=', packId)
    .orderBy('number', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row?.mock_up_id;
}

export function listMockUps(reading: Reading, jobId: number, packId: number) {
  return reading
    .selectFrom('mock_ups')
    .innerJoin('people', 'people.person_id', 'mock_ups.made_by')
    .selectAll('mock_ups')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .where('pack_id', '=', packId)
    .orderBy('number')
    .execute();
}

export async function listMockUpPieces(
  reading: Reading,
  mockUpId: number,
): Promise<Array<{ slotId: number; piece: Piece }>> {
  return (await piecesOfMockUps(reading, [mockUpId])).get(mockUpId) ?? [];
}

/** What lies in each of these mock-ups, slot by slot. */
export async function piecesOfMockUps(
  reading: Reading,
  mockUpIds: readonly number[],
): Promise<Map<number, Array<{ slotId: number; piece: Piece }>>> {
  const rows = await reading
    .selectFrom('mock_up_pieces')
    .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'mock_up_pieces.piece_id')
    .innerJoin('slots', 'slots.slot_id', 'mock_up_pieces.slot_id')
    .selectAll('pieces_as_known')
    .select(['mock_up_id', 'slots.slot_id'])
    .where('mock_up_id', 'in', among(mockUpIds))
    .orderBy('slots.position')
    .execute();
  const byMockUp = Map.groupBy(rows, (row) => row.mock_up_id);
  return new Map(
    [...byMockUp].map(([mockUpId, of]) => [
      mockUpId,
      of.map((row) => ({ slotId: row.slot_id, piece: pieceOfRow(row) })),
    ]),
  );
}

/** The mock-ups of these packs on these jobs, by number. */
export function mockUpsOfPacks(reading: Reading, jobIds: readonly number[], packIds: readonly number[]) {
  return reading
    .selectFrom('mock_ups')
    .select(['mock_up_id', 'job_id', 'pack_id', 'number'])
    .where('job_id', 'in', among(jobIds))
    .where('pack_id', 'in', among(packIds))
    .orderBy('number')
    .execute();
}

export async function insertMockUp(
  writing: Writing,
  mockUp: {
    jobId: number;
    packId: number;
    number: number;
    note: string;
    predicted: { mean_nm: number; standardDeviation_nm: number } | null;
    pieces: ReadonlyArray<{ slotId: number; pieceId: number }>;
    by: number;
    now: string;
  },
): Promise<number> {
  const { mock_up_id } = await writing
    .insertInto('mock_ups')
    .values({
      job_id: mockUp.jobId,
      pack_id: mockUp.packId,
      number: mockUp.number,
      note: mockUp.note,
      predicted_mean_nm: mockUp.predicted?.mean_nm ?? null,
      predicted_standard_deviation_nm: mockUp.predicted?.standardDeviation_nm ?? null,
      made_at: mockUp.now,
      made_by: mockUp.by,
    })
    .returning('mock_up_id')
    .executeTakeFirstOrThrow();
  for (const { slotId, pieceId } of mockUp.pieces) {
    await writing.insertInto('mock_up_pieces').values({ mock_up_id, slot_id: slotId, piece_id: pieceId }).execute();
  }
  return mock_up_id;
}

/** What is in each pack of a job now, for the ticket. */
export function newestMockUpNumbers(reading: Reading, jobId: number) {
  return reading
    .selectFrom('mock_ups')
    .select((row) => ['pack_id', row.fn.max('number').as('number')])
    .where('job_id', '=', jobId)
    .groupBy('pack_id')
    .execute();
}
