// The rows of the shop room.
import type { Generated } from 'kysely';

export interface PeopleTable {
  person_id: Generated<number>;
  initials: string;
  name: string;
  retired_at: string | null;
}

export interface SettingsTable {
  settings_id: number;
  is_demo: number;
  shop_name: string;
  length_unit: 'thou' | 'mm';
  decimal_mark: '.' | ',';
  paper: 'letter' | 'A4';
  warranty: string;
  warranty_months: number | null;
  warranty_distance: number | null;
  warranty_distance_unit: 'miles' | 'km';
  warranty_passes: number | null;
  zero_return_limit_nm: number;
  repeat_limit_nm: number;
  uneven_limit_nm: number;
  repeatability_nm: number;
  dial_repeatability_nm: number;
  direct_repeatability_nm: number;
  repeatability_degrees_of_freedom: number;
  hand_force_half_width_nm: number;
  base_on_pump_half_width_nm: number;
  dial_resolution_nm: number;
  restack_nm: number;
  micrometer_uncertainty_nm: number;
  decision_rule: 'simple' | 'guarded';
}

export type ShopTables = { people: PeopleTable; settings: SettingsTable };
