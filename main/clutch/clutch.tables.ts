// The rows of the clutch room: figures of a sheet's packs, and what a job's vehicle asks of them.
import type { Generated } from 'kysely';

export interface ClutchFiguresTable {
  pack_id: number;
  piston_outside_nm: number | null;
  piston_inside_nm: number | null;
  springs_mn: number | null;
  spring_rate_mn_m: number | null;
  friction_outside_nm: number | null;
  friction_inside_nm: number | null;
  friction_millionths: number | null;
  apply_pressure_pa: number | null;
  gear_share_millionths: number | null;
  flow_ul_min: number | null;
  inertia1_mg_m2: number | null;
  inertia2_mg_m2: number | null;
  speed1_rpm: number | null;
  speed2_rpm: number | null;
  steel_mass_mg: number | null;
}

export interface ClutchLoadsTable {
  clutch_load_id: Generated<number>;
  job_id: number;
  engine_torque_mnm: number;
  converter_ratio_millionths: number;
  reason: string;
  stated_at: string;
  stated_by: number;
}

export type ClutchTables = {
  clutch_figures: ClutchFiguresTable;
  clutch_loads: ClutchLoadsTable;
};
