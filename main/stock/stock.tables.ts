// The rows of the stock room: plates one by one with their heights, cans by their movements, parts and their ledger.
import type { Generated } from 'kysely';
import type { PieceKind } from '../../app/specs/spec-sheet.ts';
import type { coreDirections, coreEndings, MovementKind, PartKind } from '../../app/stock/parts.contract.ts';
import type { Flatness, PlateState } from '../../app/stock/plates.contract.ts';

export interface PiecesTable {
  piece_id: Generated<number>;
  kind: PieceKind;
  outline: string;
  tag: string;
  can_id: number | null;
  batch_id: number | null;
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
  micrometer: Generated<string>;
  standard_uncertainty_nm: number | null;
  measured_at: string;
  measured_by: number;
}

export interface PieceHeightPointsTable {
  piece_height_id: number;
  point: number;
  height_nm: number;
}

/** Each piece with its newest height. */
export interface PiecesAsKnownView {
  piece_id: number;
  kind: PieceKind;
  outline: string;
  tag: string;
  can_id: number | null;
  batch_id: number | null;
  added_at: string;
  added_by: number;
  height_nm: number;
  height_from: 'measured' | 'nominal' | 'catalogue';
  micrometer: string;
  standard_uncertainty_nm: number | null;
  measured_at: string;
  measured_by: number;
}

/** Each piece with where it is and whether it may be used. */
export interface PlatesAsKnownView extends PiecesAsKnownView {
  state: PlateState;
  /** Told apart from others: not among those of a can, nor written down by mistake. */
  is_single: 0 | 1;
  /** The mock-up that it sits in now. */
  mock_up_id: number | null;
  returned_can_id: number | null;
  discard_reason: string | null;
  piece_look_id: number | null;
}

export interface PieceLooksTable {
  piece_look_id: Generated<number>;
  piece_id: number;
  flat: Flatness;
  off_flat_nm: number | null;
  has_hot_spots: 0 | 1;
  is_glazed: 0 | 1;
  is_coned: 0 | 1;
  is_usable: 0 | 1;
  note: string;
  looked_at: string;
  looked_by: number;
}

export interface DiscardsTable {
  piece_id: number;
  reason: string;
  was_mistyped: Generated<0 | 1>;
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
  typed: Generated<string>;
  batch_id: number | null;
  takes_back_id: number | null;
  moved_at: string;
  moved_by: number;
}

export interface CanReturnsTable {
  piece_id: number;
  can_id: number;
  returned_at: string;
  returned_by: number;
}

export interface PartsTable {
  part_id: Generated<number>;
  number: string;
  description: string;
  kind: PartKind;
  supplier: string;
  unit_of_issue: string;
  bin: string;
  cost_cents: number | null;
  price_cents: number | null;
  core_charge_cents: number | null;
  reorder_point: number | null;
  reorder_quantity: number | null;
  is_retired: 0 | 1;
}

export interface PartFamiliesTable {
  part_id: number;
  family_id: number;
}

export interface KitLinesTable {
  kit_id: number;
  part_id: number;
  quantity: number;
}

export interface BatchesTable {
  batch_id: Generated<number>;
  part_id: number;
  kit_batch_id: number | null;
  mark: string;
  document: string;
  received_on: string;
  unit_cost_cents: number | null;
  received_at: string;
  received_by: number;
}

export interface KitBatchLinesTable {
  batch_id: number;
  part_id: number;
  quantity: number;
}

export interface MovementsTable {
  movement_id: Generated<number>;
  batch_id: number;
  kind: MovementKind;
  change: number;
  job_id: number | null;
  price_cents: number | null;
  reason: string;
  moved_at: string;
  moved_by: number;
}

export interface CoresTable {
  core_id: Generated<number>;
  direction: (typeof coreDirections)[number];
  what: string;
  quantity: number;
  charge_cents: number | null;
  due_on: string | null;
  batch_id: number | null;
  job_id: number | null;
  opened_at: string;
  opened_by: number;
}

export interface CoreSettlementsTable {
  core_id: number;
  how: (typeof coreEndings)[number];
  note: string;
  settled_at: string;
  settled_by: number;
}

export interface LabelSizesTable {
  label_size_id: Generated<number>;
  name: string;
  width_um: number;
  height_um: number;
}

export type StockTables = {
  pieces: PiecesTable;
  piece_heights: PieceHeightsTable;
  pieces_as_known: PiecesAsKnownView;
  plates_as_known: PlatesAsKnownView;
  discards: DiscardsTable;
  cans: CansTable;
  can_movements: CanMovementsTable;
  piece_height_points: PieceHeightPointsTable;
  piece_looks: PieceLooksTable;
  can_returns: CanReturnsTable;
  parts: PartsTable;
  part_families: PartFamiliesTable;
  kit_lines: KitLinesTable;
  batches: BatchesTable;
  kit_batch_lines: KitBatchLinesTable;
  movements: MovementsTable;
  cores: CoresTable;
  core_settlements: CoreSettlementsTable;
  label_sizes: LabelSizesTable;
};
