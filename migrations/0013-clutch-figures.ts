// What a sheet states about the clutch of a pack, and what the vehicle of a job asks of its clutches.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const statements = [
  // Whole base units, null where not stated: nm, mN, mN/m, millionths, Pa, µL/min, mg·m², rpm, mg.
  `create table clutch_figures (
  pack_id integer primary key references packs,
  piston_outside_nm integer check (piston_outside_nm > 0),
  piston_inside_nm integer check (piston_inside_nm >= 0),
  springs_mn integer check (springs_mn >= 0),
  spring_rate_mn_m integer check (spring_rate_mn_m > 0),
  friction_outside_nm integer check (friction_outside_nm > 0),
  friction_inside_nm integer check (friction_inside_nm >= 0),
  friction_millionths integer check (friction_millionths > 0),
  apply_pressure_pa integer check (apply_pressure_pa > 0),
  gear_share_millionths integer check (gear_share_millionths > 0),
  flow_ul_min integer check (flow_ul_min > 0),
  inertia1_mg_m2 integer check (inertia1_mg_m2 > 0),
  inertia2_mg_m2 integer check (inertia2_mg_m2 > 0),
  speed1_rpm integer,
  speed2_rpm integer,
  steel_mass_mg integer check (steel_mass_mg > 0),
  check (piston_inside_nm < piston_outside_nm),
  check (friction_inside_nm < friction_outside_nm)
) strict`,
  ...['update', 'delete'].map(
    (act) => `create trigger clutch_figures_frozen_${act} before ${act} on clutch_figures
when exists (select 1 from packs join jobs using (revision_id) where packs.pack_id = old.pack_id)
begin select raise(abort, 'frozen: clutch_figures'); end`,
  ),
  // The newest counts.
  `create table clutch_loads (
  clutch_load_id integer primary key,
  job_id integer not null references jobs,
  engine_torque_mnm integer not null check (engine_torque_mnm > 0),
  converter_ratio_millionths integer not null check (converter_ratio_millionths > 0),
  reason text not null,
  stated_at text not null,
  stated_by integer not null references people
) strict`,
  'create index clutch_loads_of_job on clutch_loads (job_id)',
  ...appendOnly('clutch_loads'),
  'pragma user_version = 13',
];

export async function up(db: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(db);
}
