// Clutch figures of packs and loads of jobs, in and out of the file.
import type { ClutchFigures, ClutchLoad } from '../../app/clutch/clutch.contract.ts';
import { among } from '../database/among.ts';
import type { Reading, Writing } from '../database/tables.ts';
import type { ClutchFiguresTable } from './clutch.tables.ts';

export async function insertClutchFigures(
  writing: Writing,
  packId: number,
  figures: ClutchFigures | null,
): Promise<void> {
  if (figures === null) return;
  await writing
    .insertInto('clutch_figures')
    .values({
      pack_id: packId,
      piston_outside_nm: figures.pistonOutside_nm,
      piston_inside_nm: figures.pistonInside_nm,
      springs_mn: figures.springs_mN,
      spring_rate_mn_m: figures.springRate_mN_m,
      friction_outside_nm: figures.frictionOutside_nm,
      friction_inside_nm: figures.frictionInside_nm,
      friction_millionths: figures.friction_millionths,
      apply_pressure_pa: figures.applyPressure_Pa,
      gear_share_millionths: figures.gearShare_millionths,
      flow_ul_min: figures.flow_uL_min,
      inertia1_mg_m2: figures.inertia1_mg_m2,
      inertia2_mg_m2: figures.inertia2_mg_m2,
      speed1_rpm: figures.speed1_rpm,
      speed2_rpm: figures.speed2_rpm,
      steel_mass_mg: figures.steelMass_mg,
    })
    .execute();
}

/** Comes before the packs of the revision go. */
export async function deleteClutchFigures(writing: Writing, revisionId: number): Promise<void> {
  const packIds = writing.selectFrom('packs').select('pack_id').where('revision_id', '=', revisionId);
  await writing.deleteFrom('clutch_figures').where('pack_id', 'in', packIds).execute();
}

/** By pack; a pack without figures is left out. */
export async function clutchFiguresOfPacks(
  reading: Reading,
  packIds: readonly number[],
): Promise<Map<number, ClutchFigures>> {
  const rows = await reading.selectFrom('clutch_figures').selectAll().where('pack_id', 'in', among(packIds)).execute();
  return new Map(rows.map((row) => [row.pack_id, figuresOfRow(row)]));
}

function figuresOfRow(row: ClutchFiguresTable): ClutchFigures {
  return {
    pistonOutside_nm: row.piston_outside_nm,
    pistonInside_nm: row.piston_inside_nm,
    springs_mN: row.springs_mn,
    springRate_mN_m: row.spring_rate_mn_m,
    frictionOutside_nm: row.friction_outside_nm,
    frictionInside_nm: row.friction_inside_nm,
    friction_millionths: row.friction_millionths,
    applyPressure_Pa: row.apply_pressure_pa,
    gearShare_millionths: row.gear_share_millionths,
    flow_uL_min: row.flow_ul_min,
    inertia1_mg_m2: row.inertia1_mg_m2,
    inertia2_mg_m2: row.inertia2_mg_m2,
    speed1_rpm: row.speed1_rpm,
    speed2_rpm: row.speed2_rpm,
    steelMass_mg: row.steel_mass_mg,
  };
}

export async function insertLoad(
  writing: Writing,
  row: ClutchLoad & { jobId: number; reason: string; by: number; now: string },
): Promise<void> {
  await writing
    .insertInto('clutch_loads')
    .values({
      job_id: row.jobId,
      engine_torque_mnm: row.engineTorque_mNm,
      converter_ratio_millionths: row.converterRatio_millionths,
      reason: row.reason,
      stated_at: row.now,
      stated_by: row.by,
    })
    .execute();
}

/** The oldest first; the last one counts. */
export async function listLoads(reading: Reading, jobId: number) {
  const rows = await reading
    .selectFrom('clutch_loads')
    .innerJoin('people', 'people.person_id', 'clutch_loads.stated_by')
    .selectAll('clutch_loads')
    .select('people.initials')
    .where('job_id', '=', jobId)
    .orderBy('clutch_load_id')
    .execute();
  return rows.map((row) => ({
    engineTorque_mNm: row.engine_torque_mnm,
    converterRatio_millionths: row.converter_ratio_millionths,
    at: row.stated_at,
    by: row.initials,
    reason: row.reason,
  }));
}
