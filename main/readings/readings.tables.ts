// The rows of the readings room. Append-only, every one of them.
import type { Generated } from 'kysely';
import type { NoteKind, Phase, Setup } from '../../app/readings/readings.contract.ts';
import type { Settings } from '../../app/shop/shop.contract.ts';
import type { ReadingMethod, WaveState } from '../../app/specs/spec-sheet.ts';

export interface SetupsTable {
  setup_id: Generated<number>;
  dial_base: Setup['dialBase'];
  is_piston_seated: number;
  air_pa: number | null;
  port: string;
  wave_state: WaveState;
  plates: Setup['plates'];
  is_open_end_up: number;
  dial_type: Setup['dialType'];
  dial_face_counts: number;
  mark: string;
}

export interface TakesTable {
  take_id: Generated<number>;
  job_id: number;
  check_id: number;
  phase: Phase;
  mode: 'quick' | 'final';
  method: ReadingMethod;
  mock_up_id: number | null;
  setup_id: number | null;
  note: string;
  started_at: string;
  started_by: number;
}

export interface ReadingsTable {
  reading_id: Generated<number>;
  take_id: number;
  spot: number;
  method: ReadingMethod;
  typed: string;
  push_amount: number | null;
  air_amount: number | null;
  is_zeroed_again: number;
  is_air_only: number;
  waver_amount: number;
  goes_amount: number | null;
  stops_amount: number | null;
  feel: '' | 'tight' | 'easy';
  amount: number | null;
  first_amount: number | null;
  second_amount: number | null;
  supersedes_id: number | null;
  reason: string;
  taken_at: string;
  taken_by: number;
}

export interface SpotNotesTable {
  spot_note_id: Generated<number>;
  take_id: number;
  spot: number;
  what: NoteKind;
  noted_at: string;
  noted_by: number;
}

export interface TakeFiguresTable {
  take_id: number;
  repeatability_nm: number | null;
  repeatability_degrees_of_freedom: number | null;
  repeatability_from: 'stated' | 'repeats' | null;
  hand_force_half_width_nm: number;
  base_on_pump_half_width_nm: number;
  dial_resolution_nm: number;
  micrometer_uncertainty_nm: number;
  repeat_limit_nm: number;
  uneven_limit_nm: number;
  decision_rule: Settings['decisionRule'];
  feeler_pairs: number | null;
  feeler_bias_nm: number | null;
  feeler_bias_standard_uncertainty_nm: number | null;
}

export type ReadingsTables = {
  setups: SetupsTable;
  takes: TakesTable;
  take_figures: TakeFiguresTable;
  readings: ReadingsTable;
  spot_notes: SpotNotesTable;
};
