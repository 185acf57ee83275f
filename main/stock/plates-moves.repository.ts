// The newest events of each sort for the plates and cans of an outline.
import type { Reading } from '../database/tables.ts';
import { canReasons } from './cans.repository.ts';

/** Heights written down by themselves; of a plate first typed at the bench its way into the pack says it already. */
export function newestHeights(reading: Reading, outline: string, limit: number) {
  return reading
    .selectFrom('piece_heights')
    .innerJoin('pieces', 'pieces.piece_id', 'piece_heights.piece_id')
    .innerJoin('people', 'people.person_id', 'piece_heights.measured_by')
    .where('pieces.outline', '=', outline)
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('mock_up_pieces')
            .innerJoin('mock_ups', 'mock_ups.mock_up_id', 'mock_up_pieces.mock_up_id')
            .whereRef('mock_up_pieces.piece_id', '=', 'pieces.piece_id')
            .whereRef('mock_ups.made_at', '=', 'piece_heights.measured_at')
            .select('mock_ups.mock_up_id'),
        ),
      ),
    )
    .select([
      'pieces.tag',
      'piece_heights.height_nm',
      'piece_heights.typed',
      'piece_heights.reason',
      'measured_at as at',
      'people.initials as by',
    ])
    .orderBy('piece_height_id', 'desc')
    .limit(limit)
    .execute();
}

export function newestLooks(reading: Reading, outline: string, limit: number) {
  return reading
    .selectFrom('piece_looks')
    .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'piece_looks.piece_id')
    .innerJoin('people', 'people.person_id', 'piece_looks.looked_by')
    .where('outline', '=', outline)
    .selectAll('piece_looks')
    .select(['tag', 'height_nm', 'looked_at as at', 'people.initials as by'])
    .orderBy('piece_look_id', 'desc')
    .limit(limit)
    .execute();
}

export function newestDiscards(reading: Reading, outline: string, limit: number) {
  return reading
    .selectFrom('discards')
    .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'discards.piece_id')
    .innerJoin('people', 'people.person_id', 'discards.discarded_by')
    .where('outline', '=', outline)
    .select(['tag', 'height_nm', 'reason', 'was_mistyped', 'discarded_at as at', 'people.initials as by'])
    .orderBy('discarded_at', 'desc')
    .limit(limit)
    .execute();
}

export function newestCanReturns(reading: Reading, outline: string, limit: number) {
  return reading
    .selectFrom('can_returns')
    .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'can_returns.piece_id')
    .innerJoin('cans', 'cans.can_id', 'can_returns.can_id')
    .innerJoin('people', 'people.person_id', 'can_returns.returned_by')
    .where('pieces_as_known.outline', '=', outline)
    .select([
      'tag',
      'pieces_as_known.height_nm',
      'cans.height_nm as can_nm',
      'returned_at as at',
      'people.initials as by',
    ])
    .orderBy('returned_at', 'desc')
    .limit(limit)
    .execute();
}

/** Counts, and plates measured into cans; what went into a pack or came back from one is told by the plate. */
export function newestCanMovements(reading: Reading, outline: string, limit: number) {
  return reading
    .selectFrom('can_movements')
    .innerJoin('cans', 'cans.can_id', 'can_movements.can_id')
    .innerJoin('people', 'people.person_id', 'can_movements.moved_by')
    .where('outline', '=', outline)
    .where('reason', 'not in', [canReasons.intoPack, canReasons.putBack])
    .select(['height_nm', 'change', 'reason', 'typed', 'moved_at as at', 'people.initials as by'])
    .orderBy('can_movement_id', 'desc')
    .limit(limit)
    .execute();
}

/** Plates that a mock-up has and the one before it had not. */
export function newestFittings(reading: Reading, outline: string, limit: number) {
  return mockUpPieces(reading, outline)
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('mock_ups as neighbour')
            .innerJoin('mock_up_pieces as there', 'there.mock_up_id', 'neighbour.mock_up_id')
            .whereRef('neighbour.job_id', '=', 'mock_ups.job_id')
            .whereRef('neighbour.pack_id', '=', 'mock_ups.pack_id')
            .where((each) => each('neighbour.number', '=', each('mock_ups.number', '-', each.lit(1))))
            .whereRef('there.piece_id', '=', 'mock_up_pieces.piece_id')
            .select('neighbour.mock_up_id'),
        ),
      ),
    )
    .select(['mock_ups.made_at as at', 'people.initials as by'])
    .orderBy('mock_ups.mock_up_id', 'desc')
    .orderBy('mock_up_pieces.slot_id')
    .limit(limit)
    .execute();
}

/** Plates that a mock-up had and the next one has not. */
export function newestRemovals(reading: Reading, outline: string, limit: number) {
  return mockUpPieces(reading, outline)
    .innerJoin('mock_ups as next', (join) =>
      join
        .onRef('next.job_id', '=', 'mock_ups.job_id')
        .onRef('next.pack_id', '=', 'mock_ups.pack_id')
        .on((row) => row('next.number', '=', row('mock_ups.number', '+', row.lit(1)))),
    )
    .innerJoin('people as remover', 'remover.person_id', 'next.made_by')
    .where((row) =>
      row.not(
        row.exists(
          row
            .selectFrom('mock_up_pieces as there')
            .whereRef('there.mock_up_id', '=', 'next.mock_up_id')
            .whereRef('there.piece_id', '=', 'mock_up_pieces.piece_id')
            .select('there.piece_id'),
        ),
      ),
    )
    .select(['next.made_at as at', 'remover.initials as by'])
    .orderBy('next.mock_up_id', 'desc')
    .orderBy('mock_up_pieces.slot_id')
    .limit(limit)
    .execute();
}

function mockUpPieces(reading: Reading, outline: string) {
  return reading
    .selectFrom('mock_up_pieces')
    .innerJoin('mock_ups', 'mock_ups.mock_up_id', 'mock_up_pieces.mock_up_id')
    .innerJoin('pieces_as_known', 'pieces_as_known.piece_id', 'mock_up_pieces.piece_id')
    .innerJoin('jobs', 'jobs.job_id', 'mock_ups.job_id')
    .innerJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .innerJoin('people', 'people.person_id', 'mock_ups.made_by')
    .where('pieces_as_known.outline', '=', outline)
    .select(['tag', 'height_nm', 'jobs.number as job_number', 'packs.name as pack_name']);
}
