// Pieces and cans in and out of the file. Where a piece is, is read off the newest mock-up of each pack.
import type { Piece } from '../../app/packs/packs.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { PiecesAsKnownView } from './stock.tables.ts';

/** The pieces that sit in a pack now: those of the newest mock-up of each pack of each job. */
export function piecesInPacks(reading: Reading) {
  return reading
    .selectFrom('mock_up_pieces')
    .innerJoin('mock_ups', 'mock_ups.mock_up_id', 'mock_up_pieces.mock_up_id')
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
    );
}

export async function listLoosePieces(reading: Reading, outline: string): Promise<Piece[]> {
  const rows = await reading
    .selectFrom('pieces_as_known')
    .selectAll()
    .where('piece_id', 'not in', piecesInPacks(reading).select('mock_up_pieces.piece_id'))
    .where('piece_id', 'not in', reading.selectFrom('discards').select('discards.piece_id'))
    .where('outline', outline === '' ? '<>' : '=', outline)
    .orderBy('height_nm')
    .orderBy('piece_id')
    .execute();
  return rows.map(pieceOfRow);
}

/** The pack a piece sits in now, if it sits in one. */
export function whereabouts(reading: Reading, pieceId: number) {
  return piecesInPacks(reading)
    .innerJoin('jobs', 'jobs.job_id', 'mock_ups.job_id')
    .innerJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .select(['mock_ups.job_id', 'mock_ups.pack_id', 'jobs.number as job_number', 'packs.name as pack_name'])
    .where('mock_up_pieces.piece_id', '=', pieceId)
    .executeTakeFirst();
}

export async function findPiece(reading: Reading, pieceId: number): Promise<Piece | undefined> {
  const row = await reading
    .selectFrom('pieces_as_known')
    .selectAll()
    .where('piece_id', '=', pieceId)
    .executeTakeFirst();
  return row && pieceOfRow(row);
}

export function findPieceTagged(reading: Reading, outline: string, tag: string) {
  return reading
    .selectFrom('pieces')
    .select('piece_id')
    .where('outline', '=', outline)
    .where('tag', '=', tag)
    .executeTakeFirst();
}

export async function insertPiece(
  writing: Writing,
  piece: {
    kind: PieceKind;
    outline: string;
    tag: string;
    height_nm: number;
    heightFrom: Piece['heightFrom'];
    typed: string;
    canId: number | null;
    by: number;
    now: string;
  },
): Promise<number> {
  const { piece_id } = await writing
    .insertInto('pieces')
    .values({
      kind: piece.kind,
      outline: piece.outline,
      tag: piece.tag,
      can_id: piece.canId,
      added_at: piece.now,
      added_by: piece.by,
    })
    .returning('piece_id')
    .executeTakeFirstOrThrow();
  await insertHeight(writing, { ...piece, pieceId: piece_id, reason: '' });
  return piece_id;
}

/** The newest height of a piece is the one that counts; the others stay on record. */
export async function insertHeight(
  writing: Writing,
  height: {
    pieceId: number;
    height_nm: number;
    heightFrom: Piece['heightFrom'];
    typed: string;
    reason: string;
    by: number;
    now: string;
  },
): Promise<void> {
  await writing
    .insertInto('piece_heights')
    .values({
      piece_id: height.pieceId,
      height_nm: height.height_nm,
      height_from: height.heightFrom,
      typed: height.typed,
      reason: height.reason,
      measured_at: height.now,
      measured_by: height.by,
    })
    .execute();
}

export function findDiscard(reading: Reading, pieceId: number) {
  return reading.selectFrom('discards').select('reason').where('piece_id', '=', pieceId).executeTakeFirst();
}

export async function insertDiscard(
  writing: Writing,
  discard: { pieceId: number; reason: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('discards')
    .values({
      piece_id: discard.pieceId,
      reason: discard.reason,
      discarded_at: discard.now,
      discarded_by: discard.by,
    })
    .execute();
}

export function pieceOfRow(row: PiecesAsKnownView): Piece {
  return {
    pieceId: row.piece_id,
    kind: row.kind,
    outline: row.outline,
    tag: row.tag,
    height_nm: row.height_nm,
    heightFrom: row.height_from,
  };
}

function cans(reading: Reading) {
  return reading
    .selectFrom('cans')
    .select(['can_id as canId', 'kind', 'outline', 'height_nm'])
    .select((row) =>
      row
        .selectFrom('can_movements')
        .whereRef('can_movements.can_id', '=', 'cans.can_id')
        .select((sum) => sum.fn.coalesce(sum.fn.sum<number>('change'), sum.lit(0)).as('count'))
        .as('count'),
    );
}

export async function listCans(reading: Reading, outline: string) {
  const rows = await cans(reading)
    .where('outline', outline === '' ? '<>' : '=', outline)
    .orderBy('height_nm')
    .execute();
  return rows.map((row) => ({ ...row, count: row.count ?? 0 }));
}

export async function findCan(reading: Reading, canId: number) {
  const row = await cans(reading).where('can_id', '=', canId).executeTakeFirst();
  return row && { ...row, count: row.count ?? 0 };
}

export function findCanOf(reading: Reading, kind: PieceKind, outline: string, height_nm: number) {
  return cans(reading)
    .where('kind', '=', kind)
    .where('outline', '=', outline)
    .where('height_nm', '=', height_nm)
    .executeTakeFirst();
}

export async function insertCan(
  writing: Writing,
  can: { kind: PieceKind; outline: string; height_nm: number },
): Promise<number> {
  const { can_id } = await writing.insertInto('cans').values(can).returning('can_id').executeTakeFirstOrThrow();
  return can_id;
}

export async function moveInCan(
  writing: Writing,
  move: { canId: number; change: number; reason: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('can_movements')
    .values({ can_id: move.canId, change: move.change, reason: move.reason, moved_at: move.now, moved_by: move.by })
    .execute();
}

export async function listOutlines(reading: Reading): Promise<string[]> {
  const rows = await reading
    .selectFrom('pieces')
    .select('outline')
    .union(reading.selectFrom('cans').select('outline'))
    .union(reading.selectFrom('slots').select('outline'))
    .execute();
  return rows
    .map((row) => row.outline)
    .filter((outline) => outline !== '')
    .toSorted();
}
