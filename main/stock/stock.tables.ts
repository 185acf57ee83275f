// The rows of the stock room: pieces one by one with their heights, and cans by their movements.
import type { Generated } from 'kysely';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';

export interface PiecesTable {
  piece_id: Generated<number>;
  kind: PieceKind;
  outline: string;
  tag: string;
  can_id: number | null;
  added_at: string;
  added_by: number;
}

export interface PieceHeightsTable {
  piece_height_id: Generated<number>;
  piece_id: number;
  height_nm: number;
  height_from: 'measured' | 'nominal' | 'catalogue';
  typed: string;
  reason: string;
  measured_at: string;
  measured_by: number;
}

/** Each piece with its newest height. */
export interface PiecesAsKnownView {
  piece_id: number;
  kind: PieceKind;
  outline: string;
  tag: string;
  can_id: number | null;
  added_at: string;
  added_by: number;
  height_nm: number;
  height_from: 'measured' | 'nominal' | 'catalogue';
}

export interface DiscardsTable {
  piece_id: number;
  reason: string;
  discarded_at: string;
  discarded_by: number;
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

export type StockTables = {
  pieces: PiecesTable;
  piece_heights: PieceHeightsTable;
  pieces_as_known: PiecesAsKnownView;
  discards: DiscardsTable;
  cans: CansTable;
  can_movements: CanMovementsTable;
};
