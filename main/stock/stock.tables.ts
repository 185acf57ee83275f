// The rows of the stock room: pieces one by one, and cans by their movements.
import type { Generated } from 'kysely';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';

export interface PiecesTable {
  piece_id: Generated<number>;
  kind: PieceKind;
  outline: string;
  tag: string;
  height_nm: number;
  height_from: 'measured' | 'nominal' | 'catalogue';
  typed: string;
  can_id: number | null;
  added_at: string;
  added_by: number;
}

export interface CansTable {
  can_id: Generated<number>;
  kind: PieceKind;
  outline: string;
  height_nm: number;
}

export interface CanMovementsTable {
  can_movement_id: Generated<number>;
  can_id: number;
  change: number;
  reason: string;
  moved_at: string;
  moved_by: number;
}

export type StockTables = { pieces: PiecesTable; cans: CansTable; can_movements: CanMovementsTable };
