// The rows of the gauges room. Append-only, every one of them.
import type { Generated } from 'kysely';
import type { GaugeKind } from '../../app/gauges/gauge-kinds.ts';
import type { GaugeCheck } from '../../app/gauges/register.contract.ts';
import type { PooledMethod } from '../../app/readings/take-figures.ts';

export interface GaugesTable {
  gauge_id: Generated<number>;
  kind: GaugeKind;
  added_at: string;
  added_by: number;
}

export interface GaugeCardsTable {
  gauge_card_id: Generated<number>;
  gauge_id: number;
  tag: string;
  unit: string;
  resolution_amount: number;
  permitted_error_amount: number | null;
  stated_in: string;
  off_square_degrees: number;
  serial: string;
  interval_days: number | null;
  is_retired: number;
  written_at: string;
  written_by: number;
}

export type GaugesAsKnownView = Omit<GaugeCardsTable, 'gauge_card_id'> & { gauge_card_id: number; kind: GaugeKind };

export interface GaugeChecksTable {
  gauge_check_id: Generated<number>;
  gauge_id: number;
  against: GaugeCheck['against'];
  checked_on: string;
  permitted_error_amount: number | null;
  note: string;
  supersedes_id: number | null;
  reason: string;
  checked_at: string;
  checked_by: number;
}

export interface GaugeCheckPointsTable {
  gauge_check_id: number;
  position: number;
  nominal_amount: number;
  read_amount: number;
  nominal_typed: string;
  read_typed: string;
}

export interface TakeGaugesTable {
  take_id: number;
  gauge_id: number;
  permitted_error_amount: number | null;
  off_square_degrees: number;
}

export interface StudiesTable {
  study_id: Generated<number>;
  name: string;
  method: PooledMethod;
  gauge_id: number | null;
  trials: number;
  tolerance_nm: number | null;
  seed: number;
  started_at: string;
  started_by: number;
}

export interface StudyPartsTable {
  study_id: number;
  position: number;
  name: string;
}

export interface StudyPeopleTable {
  study_id: number;
  position: number;
  person_id: number;
}

export interface StudyReadsTable {
  study_read_id: Generated<number>;
  study_id: number;
  place: number;
  typed: string;
  amount_nm: number;
  supersedes_id: number | null;
  reason: string;
  taken_at: string;
  taken_by: number;
}

export type PairableMethod = PooledMethod | 'feeler';

export interface MethodPairsTable {
  method_pair_id: Generated<number>;
  what: string;
  first_method: PairableMethod;
  second_method: PairableMethod;
  first_nm: number;
  second_nm: number;
  first_typed: string;
  second_typed: string;
  supersedes_id: number | null;
  reason: string;
  paired_at: string;
  paired_by: number;
}

export type GaugesTables = {
  gauges: GaugesTable;
  gauge_cards: GaugeCardsTable;
  gauges_as_known: GaugesAsKnownView;
  gauge_checks: GaugeChecksTable;
  gauge_check_points: GaugeCheckPointsTable;
  take_gauges: TakeGaugesTable;
  studies: StudiesTable;
  study_parts: StudyPartsTable;
  study_people: StudyPeopleTable;
  study_reads: StudyReadsTable;
  method_pairs: MethodPairsTable;
};
