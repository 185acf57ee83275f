// What a take leans on, written down when it begins, so that a setting changed later leaves old verdicts as they were.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const statements = [
  // Lengths in nanometres. repeatability: of one reading by the take's method; null where none is stated for it.
  // feeler: what its reading has to be judged by air; a bias stands only where there were enough pairs.
  `create table take_figures (
  take_id integer primary key references takes,
  repeatability_nm integer check (repeatability_nm >= 0),
  repeatability_degrees_of_freedom integer check (repeatability_degrees_of_freedom > 0),
  repeatability_from text check (repeatability_from in ('stated', 'repeats')),
  hand_force_half_width_nm integer not null check (hand_force_half_width_nm >= 0),
  base_on_pump_half_width_nm integer not null check (base_on_pump_half_width_nm >= 0),
  dial_resolution_nm integer not null check (dial_resolution_nm > 0),
  micrometer_uncertainty_nm integer not null check (micrometer_uncertainty_nm > 0),
  repeat_limit_nm integer not null check (repeat_limit_nm > 0),
  uneven_limit_nm integer not null check (uneven_limit_nm > 0),
  decision_rule text not null check (decision_rule in ('simple', 'guarded')),
  feeler_pairs integer check (feeler_pairs >= 0),
  feeler_bias_nm integer,
  feeler_bias_standard_uncertainty_nm integer check (feeler_bias_standard_uncertainty_nm >= 0),
  check ((repeatability_degrees_of_freedom is null) = (repeatability_nm is null)),
  check ((repeatability_from is null) = (repeatability_nm is null)),
  check ((feeler_bias_standard_uncertainty_nm is null) = (feeler_bias_nm is null)),
  check (feeler_bias_nm is null or feeler_pairs > 1)
) strict`,
  // Takes from before: the settings as they stand, which is what they were judged by until now.
  `insert into take_figures
select
  takes.take_id,
  stated.repeatability_nm,
  iif(stated.repeatability_nm is null, null, settings.repeatability_degrees_of_freedom),
  iif(stated.repeatability_nm is null, null, 'stated'),
  settings.hand_force_half_width_nm,
  settings.base_on_pump_half_width_nm,
  settings.dial_resolution_nm,
  settings.micrometer_uncertainty_nm,
  settings.repeat_limit_nm,
  settings.uneven_limit_nm,
  settings.decision_rule,
  null,
  null,
  null
from takes
join checks using (check_id)
join settings
left join (
  select 'air' as method, repeatability_nm from settings
  union all select 'dial', dial_repeatability_nm from settings
  union all select 'direct', direct_repeatability_nm from settings
) as stated on stated.method = takes.method and checks.quantity = 'length'`,
  ...appendOnly('take_figures'),
  // The newest takes by one method, whatever the job.
  'create index takes_of_method on takes (method)',
  'pragma user_version = 2',
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(database);
}
