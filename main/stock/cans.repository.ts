// Cans in and out of the file. What a can holds is the sum of its movements.

import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { Can } from '../../app/stock/plates.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

/** Reasons that stand in the file for acts which say more elsewhere. */
export const canReasons = {
  measured: 'measured',
  intoPack: 'into a pack',
  putBack: 'put back',
  mistyped: 'mistyped',
} as const;

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

/** Thinnest first; of every outline where it is empty. */
export async function listCans(reading: Reading, outline: string): Promise<Can[]> {
  const rows = await cans(reading)
    .where('outline', outline === '' ? '<>' : '=', outline)
    .orderBy('height_nm')
    .execute();
  return rows.map((row) => ({ ...row, count: row.count ?? 0 }));
}

export async function findCan(reading: Reading, canId: number): Promise<Can | undefined> {
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

/** The can of this height, made empty where there is none yet. */
export async function canOfHeight(
  writing: Writing,
  can: { kind: PieceKind; outline: string; height_nm: number },
): Promise<number> {
  const { kind, outline, height_nm } = can;
  const known = await findCanOf(writing, kind, outline, height_nm);
  return known?.canId ?? (await insertCan(writing, { kind, outline, height_nm }));
}

export async function moveInCan(
  writing: Writing,
  move: {
    canId: number;
    change: number;
    reason: string;
    typed?: string;
    batchId?: number | null;
    takesBackId?: number;
    by: number;
    now: string;
  },
): Promise<number> {
  const { can_movement_id } = await writing
    .insertInto('can_movements')
    .values({
      can_id: move.canId,
      change: move.change,
      reason: move.reason,
      typed: move.typed ?? '',
      batch_id: move.batchId ?? null,
      takes_back_id: move.takesBackId ?? null,
      moved_at: move.now,
      moved_by: move.by,
    })
    .returning('can_movement_id')
    .executeTakeFirstOrThrow();
  return can_movement_id;
}

/** One movement, and whether it was taken back. */
export function findCanMovement(reading: Reading, canMovementId: number) {
  return reading
    .selectFrom('can_movements')
    .selectAll()
    .select((row) =>
      row
        .exists(
          row
            .selectFrom('can_movements as back')
            .whereRef('back.takes_back_id', '=', 'can_movements.can_movement_id')
            .select('back.can_movement_id'),
        )
        .as('was_taken_back'),
    )
    .where('can_movement_id', '=', canMovementId)
    .executeTakeFirst();
}
