// The rows of the specs room: a family's revisions with their packs, slots, rules, checks and lists.
import type { Generated } from 'kysely';
import type { Quantity } from '../../app/quantities/units.ts';
import type { Asks, ListTime } from '../../app/specs/spec-list.ts';
import type {
  HoldsFor,
  Limits,
  PieceKind,
  PlacementRule,
  ReadingMethod,
  WaveState,
} from '../../app/specs/spec-sheet.ts';
import type { SmallJobsTables } from './small-jobs.tables.ts';

export interface FamiliesTable {
  family_id: Generated<number>;
  name: string;
}

export interface RevisionsTable {
  revision_id: Generated<number>;
  family_id: number;
  number: number;
  source_note: string;
  saved_at: string;
  saved_by: number;
}

export interface PacksTable {
  pack_id: Generated<number>;
  revision_id: number;
  position: number;
  name: string;
  note: string;
}

export interface SlotsTable {
  slot_id: Generated<number>;
  pack_id: number;
  position: number;
  kind: PieceKind;
  nominal_nm: number | null;
  is_adjuster: number;
  outline: string;
  facing: string;
}

export interface SlotCatalogueTable {
  slot_id: number;
  height_nm: number;
}

export interface PlacementRulesTable {
  placement_rule_id: Generated<number>;
  pack_id: number;
  position: number;
  rule: PlacementRule['kind'];
  kind: PieceKind;
}

export interface PlacementRulePlacesTable {
  placement_rule_id: number;
  place: number;
}

export interface ChecksTable {
  check_id: Generated<number>;
  revision_id: number;
  position: number;
  pack_id: number | null;
  name: string;
  heading: string;
  method: ReadingMethod;
  quantity: Quantity;
  unit: string;
  limit_kind: Limits['kind'];
  low_amount: number | null;
  target_amount: number | null;
  high_amount: number | null;
  holds_for: HoldsFor;
  wave_state: WaveState;
  spots: number;
  source_note: string;
}

export interface CheckVariantsTable {
  check_id: number;
  position: number;
  name: string;
  nominal_amount: number;
  within_amount: number;
}

export interface CheckShimsTable {
  check_id: number;
  height_nm: number;
}

export interface ListsTable {
  list_id: Generated<number>;
  revision_id: number;
  position: number;
  pack_id: number | null;
  name: string;
  gone_through: ListTime;
  source_note: string;
}

export interface ListLinesTable {
  list_line_id: Generated<number>;
  list_id: number;
  position: number;
  words: string;
  asks: Asks['kind'];
  expected_count: number | null;
  low_rpm: number | null;
  high_rpm: number | null;
  longest_seconds: number | null;
}

export interface ListLineOptionsTable {
  list_line_id: number;
  position: number;
  words: string;
  is_good: number;
}

export interface PicturesTable {
  picture_id: Generated<number>;
  revision_id: number;
  position: number;
  title: string;
  /** The file is named after this. */
  sha256: string;
  width: number;
  height: number;
}

export interface PicturePointsTable {
  picture_id: number;
  position: number;
  label: string;
  note: string;
  x_permille: number;
  y_permille: number;
  check_id: number | null;
  list_line_id: number | null;
}

export type SpecsTables = SmallJobsTables & {
  families: FamiliesTable;
  revisions: RevisionsTable;
  packs: PacksTable;
  slots: SlotsTable;
  slot_catalogue: SlotCatalogueTable;
  placement_rules: PlacementRulesTable;
  placement_rule_places: PlacementRulePlacesTable;
  checks: ChecksTable;
  check_variants: CheckVariantsTable;
  check_shims: CheckShimsTable;
  pictures: PicturesTable;
  picture_points: PicturePointsTable;
  lists: ListsTable;
  list_lines: ListLinesTable;
  list_line_options: ListLineOptionsTable;
};
