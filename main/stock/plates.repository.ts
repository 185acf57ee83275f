// Single plates in and out of the file, with their heights and what was seen of them. Where a plate is, is read off the
// newest mock-up that names it.
import type { Piece } from '../../app/packs/packs.contract.ts';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { listCans } from './cans.repository.ts';
import type { PieceLooksTable, PiecesAsKnownView } from './stock.tables.ts';

type LookRow = Omit<PieceLooksTable, 'piece_look_id'>;

/** Single plates that may go into a pack: in none now, not discarded or rejected, not among others in a can. */
export async function listLoosePieces(reading: Reading, outline: string): Promise<Piece[]> {
  const rows = await reading
    .selectFrom('plates_as_known')
    .selectAll()
    .where('state', 'in', ['free', 'read again'])
    .where('outline', outline === '' ? '<>' : '=', outline)
    .orderBy('height_nm')
    .orderBy('piece_id')
    .execute();
  return rows.map(pieceOfRow);
}

/** Where a plate is and whether it may be used, with the ticket and the pack it sits in now. */
export function findStanding(reading: Reading, pieceId: number) {
  return reading
    .selectFrom('plates_as_known')
    .leftJoin('mock_ups', 'mock_ups.mock_up_id', 'plates_as_known.mock_up_id')
    .leftJoin('jobs', 'jobs.job_id', 'mock_ups.job_id')
    .leftJoin('packs', 'packs.pack_id', 'mock_ups.pack_id')
    .selectAll('plates_as_known')
    .select([
      'mock_ups.job_id',
      'mock_ups.pack_id',
      'jobs.number as job_number',
      'jobs.unit_id',
      'packs.name as pack_name',
    ])
    .where('plates_as_known.piece_id', '=', pieceId)
    .executeTakeFirst();
}

export type Standing = NonNullable<Awaited<ReturnType<typeof findStanding>>>;

export async function findPiece(reading: Reading, pieceId: number): Promise<Piece | undefined> {
  const row = await reading
    .selectFrom('pieces_as_known')
    .selectAll()
    .where('piece_id', '=', pieceId)
    .executeTakeFirst();
  return row && pieceOfRow(row);
}

/** The plate of an outline with this tag; one written down by mistake gave its tag back. */
export function findPieceTagged(reading: Reading, outline: string, tag: string) {
  return reading
    .selectFrom('pieces')
    .leftJoin('discards', 'discards.piece_id', 'pieces.piece_id')
    .select('pieces.piece_id')
    .where('outline', '=', outline)
    .where('tag', '=', tag)
    .where((row) => row.or([row('was_mistyped', 'is', null), row('was_mistyped', '=', 0)]))
    .executeTakeFirst();
}

export type NewHeight = {
  height_nm: number;
  heightFrom: Piece['heightFrom'];
  typed: string;
  points_nm?: readonly number[];
  micrometer?: string;
  standardUncertainty_nm?: number | null;
  by: number;
  now: string;
};

export async function insertPiece(
  writing: Writing,
  piece: NewHeight & {
    kind: PieceKind;
    outline: string;
    tag: string;
    canId: number | null;
    batchId?: number | null;
  },
): Promise<number> {
  const { piece_id } = await writing
    .insertInto('pieces')
    .values({
      kind: piece.kind,
      outline: piece.outline,
      tag: piece.tag,
      can_id: piece.canId,
      batch_id: piece.batchId ?? null,
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
  height: NewHeight & { pieceId: number; reason: string },
): Promise<void> {
  const { piece_height_id } = await writing
    .insertInto('piece_heights')
    .values({
      piece_id: height.pieceId,
      height_nm: height.height_nm,
      height_from: height.heightFrom,
      typed: height.typed,
      reason: height.reason,
      micrometer: height.micrometer ?? '',
      standard_uncertainty_nm: height.standardUncertainty_nm ?? null,
      measured_at: height.now,
      measured_by: height.by,
    })
    .returning('piece_height_id')
    .executeTakeFirstOrThrow();
  for (const [index, height_nm] of (height.points_nm ?? []).entries()) {
    await writing
      .insertInto('piece_height_points')
      .values({ piece_height_id, point: index + 1, height_nm })
      .execute();
  }
}

export async function insertDiscard(
  writing: Writing,
  discard: { pieceId: number; reason: string; wasMistyped: boolean; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('discards')
    .values({
      piece_id: discard.pieceId,
      reason: discard.reason,
      was_mistyped: discard.wasMistyped ? 1 : 0,
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
    standardUncertainty_nm: row.standard_uncertainty_nm,
  };
}

/** What was seen of a plate, newest first. */
export async function listLooks(reading: Reading, pieceId: number) {
  const rows = await reading
    .selectFrom('piece_looks')
    .innerJoin('people', 'people.person_id', 'piece_looks.looked_by')
    .selectAll('piece_looks')
    .select('people.initials')
    .where('piece_id', '=', pieceId)
    .orderBy('piece_look_id', 'desc')
    .execute();
  return rows.map((row) => ({ ...lookOfRow(row), at: row.looked_at, by: row.initials }));
}

export async function newestLook(reading: Reading, pieceId: number) {
  return (await listLooks(reading, pieceId))[0];
}

export function lookOfRow(row: LookRow) {
  return {
    flat: row.flat,
    offFlat_nm: row.off_flat_nm,
    hasHotSpots: row.has_hot_spots === 1,
    isGlazed: row.is_glazed === 1,
    isConed: row.is_coned === 1,
    isUsable: row.is_usable === 1,
    note: row.note,
  };
}

export async function insertLook(
  writing: Writing,
  look: ReturnType<typeof lookOfRow> & { pieceId: number; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('piece_looks')
    .values({
      piece_id: look.pieceId,
      flat: look.flat,
      off_flat_nm: look.offFlat_nm,
      has_hot_spots: look.hasHotSpots ? 1 : 0,
      is_glazed: look.isGlazed ? 1 : 0,
      is_coned: look.isConed ? 1 : 0,
      is_usable: look.isUsable ? 1 : 0,
      note: look.note,
      looked_at: look.now,
      looked_by: look.by,
    })
    .execute();
}

export async function insertCanReturn(
  writing: Writing,
  put: { pieceId: number; canId: number; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('can_returns')
    .values({ piece_id: put.pieceId, can_id: put.canId, returned_at: put.now, returned_by: put.by })
    .execute();
}

/** Heights of an outline and kind as they stand: single plates, cans, and what the spec sheets expect. */
export async function listKnownHeights(
  reading: Reading,
  kind: PieceKind,
  outline: string,
): Promise<Array<{ height_nm: number; count: number }>> {
  const plates = await reading
    .selectFrom('plates_as_known')
    .select((row) => ['height_nm', row.fn.countAll<number>().as('count')])
    .where('kind', '=', kind)
    .where('outline', '=', outline)
    .where('is_single', '=', 1)
    .groupBy('height_nm')
    .execute();
  const cans = (await listCans(reading, outline)).filter((can) => can.kind === kind && can.count > 0);
  const nominals = await reading
    .selectFrom('slots')
    .select('nominal_nm as height_nm')
    .distinct()
    .where('kind', '=', kind)
    .where('outline', '=', outline)
    .where('nominal_nm', 'is not', null)
    .execute();
  const expected = nominals.flatMap(({ height_nm }) => (height_nm === null ? [] : [{ height_nm, count: 1 }]));
  return [...plates, ...cans.map(({ height_nm, count }) => ({ height_nm, count })), ...expected];
}

/** Whether a plate ever sat in a pack. */
export async function wasEverFitted(reading: Reading, pieceId: number): Promise<boolean> {
  const row = await reading
    .selectFrom('mock_up_pieces')
    .select('mock_up_id')
    .where('piece_id', '=', pieceId)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
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
