// One unit from check-in to build report: shop, customers, units, specs, jobs, readings, packs, loose plates.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

/** "TBk1": says that a file is a shop file of this program. */
export const applicationId = 0x54426b31;

const shop = [
  `create table people (
  person_id integer primary key,
  initials text not null unique check (length(initials) between 1 and 4),
  name text not null check (name <> ''),
  retired_at text
) strict`,
  // One row: what every reading leans on. Lengths in nanometres.
  `create table settings (
  settings_id integer primary key check (settings_id = 1),
  is_demo integer not null check (is_demo in (0, 1)),
  shop_name text not null,
  length_unit text not null check (length_unit in ('thou', 'mm')),
  decimal_mark text not null check (decimal_mark in ('.', ',')),
  paper text not null check (paper in ('letter', 'A4')),
  warranty text not null,
  zero_return_limit_nm integer not null check (zero_return_limit_nm > 0),
  repeat_limit_nm integer not null check (repeat_limit_nm > 0),
  uneven_limit_nm integer not null check (uneven_limit_nm > 0),
  repeatability_nm integer not null check (repeatability_nm > 0),
  dial_repeatability_nm integer not null check (dial_repeatability_nm > 0),
  direct_repeatability_nm integer not null check (direct_repeatability_nm > 0),
  repeatability_degrees_of_freedom integer not null check (repeatability_degrees_of_freedom > 0),
  hand_force_half_width_nm integer not null check (hand_force_half_width_nm >= 0),
  base_on_pump_half_width_nm integer not null check (base_on_pump_half_width_nm >= 0),
  dial_resolution_nm integer not null check (dial_resolution_nm > 0),
  restack_nm integer not null check (restack_nm >= 0),
  micrometer_uncertainty_nm integer not null check (micrometer_uncertainty_nm > 0),
  decision_rule text not null check (decision_rule in ('simple', 'guarded'))
) strict`,
];

const customersAndUnits = [
  `create table customers (
  customer_id integer primary key,
  name text not null check (name <> ''),
  phone text not null,
  email text not null,
  note text not null
) strict`,
  `create table families (
  family_id integer primary key,
  name text not null unique check (name <> '')
) strict`,
  `create table units (
  unit_id integer primary key,
  family_id integer not null references families,
  serial text not null,
  vehicle text not null,
  use text not null check (use in ('street', 'tow', 'competition'))
) strict`,
  'create index units_of_family on units (family_id)',
];

const pieceKind = `check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring'))`;

const specs = [
  // A revision is frozen from the first job checked in under it; until then saving replaces it.
  `create table revisions (
  revision_id integer primary key,
  family_id integer not null references families,
  number integer not null check (number > 0),
  source_note text not null,
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, number)
) strict`,
  `create table packs (
  pack_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  name text not null check (name <> ''),
  note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict`,
  // Position 1 lies on the piston, the last one is at the snap ring end.
  `create table slots (
  slot_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  kind text not null ${pieceKind},
  nominal_nm integer check (nominal_nm > 0),
  is_adjuster integer not null check (is_adjuster in (0, 1)),
  outline text not null,
  facing text not null,
  unique (pack_id, position)
) strict`,
  `create table slot_catalogue (
  slot_id integer not null references slots,
  height_nm integer not null check (height_nm > 0),
  primary key (slot_id, height_nm)
) strict, without rowid`,
  `create table placement_rules (
  placement_rule_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  rule text not null check (rule in ('thinnest-in', 'thickest-in', 'all-equal')),
  kind text not null ${pieceKind},
  unique (pack_id, position)
) strict`,
  `create table placement_rule_places (
  placement_rule_id integer not null references placement_rules,
  place integer not null check (place > 0),
  primary key (placement_rule_id, place)
) strict, without rowid`,
  // Amounts are base units of the quantity: nm, Pa, mN·m, µL, degrees, ones.
  `create table checks (
  check_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  pack_id integer references packs,
  name text not null check (name <> ''),
  heading text not null check (heading <> ''),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  quantity text not null check (quantity in ('length', 'pressure', 'torque', 'volume', 'angle', 'count')),
  unit text not null,
  limit_kind text not null check (limit_kind in ('range', 'target', 'minimum', 'maximum', 'variants')),
  low_amount integer check ((low_amount is not null) = (limit_kind in ('range', 'target', 'minimum'))),
  target_amount integer check ((target_amount is not null) = (limit_kind = 'target')),
  high_amount integer check ((high_amount is not null) = (limit_kind in ('range', 'target', 'maximum'))),
  holds_for text not null check (holds_for in ('mean and tightest', 'mean', 'tightest spot', 'every spot')),
  wave_state text not null check (wave_state in ('none', 'in', 'flattened', 'left out')),
  spots integer not null check (spots between 1 and 12),
  source_note text not null,
  check (low_amount is null or high_amount is null or low_amount < high_amount),
  check (target_amount is null or target_amount between low_amount and high_amount),
  unique (revision_id, position),
  unique (revision_id, name)
) strict`,
  `create table check_variants (
  check_id integer not null references checks,
  position integer not null,
  name text not null check (name <> ''),
  nominal_amount integer not null,
  within_amount integer not null check (within_amount > 0),
  primary key (check_id, position)
) strict, without rowid`,
  `create table check_shims (
  check_id integer not null references checks,
  height_nm integer not null check (height_nm > 0),
  primary key (check_id, height_nm)
) strict, without rowid`,
  `create trigger revisions_frozen_update before update on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end`,
  `create trigger revisions_frozen_delete before delete on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end`,
  ...['packs', 'checks'].flatMap((table) =>
    ['update', 'delete'].map(
      (act) => `create trigger ${table}_frozen_${act} before ${act} on ${table}
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: ${table}'); end`,
    ),
  ),
];

const jobs = [
  `create table stages (
  stage_id integer primary key,
  position integer not null unique,
  name text not null unique,
  is_closed integer not null check (is_closed in (0, 1))
) strict`,
  `insert into stages (position, name, is_closed) values
  (1, 'Checked in', 0), (2, 'As found', 0), (3, 'Teardown', 0), (4, 'Waiting', 0), (5, 'Build', 0),
  (6, 'Final check', 0), (7, 'Ready', 0), (8, 'Picked up', 0), (9, 'Closed', 1)`,
  `create table jobs (
  job_id integer primary key,
  number integer not null unique check (number > 0),
  customer_id integer not null references customers,
  unit_id integer not null references units,
  revision_id integer not null references revisions,
  complaint text not null,
  case_tag text not null,
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  opened_at text not null,
  opened_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict`,
  'create index jobs_of_unit on jobs (unit_id)',
  'create index jobs_of_customer on jobs (customer_id)',
  'create index jobs_of_revision on jobs (revision_id)',
  `create table stage_entries (
  stage_entry_id integer primary key,
  job_id integer not null references jobs,
  stage_id integer not null references stages,
  entered_at text not null,
  entered_by integer not null references people
) strict`,
  'create index stage_entries_of_job on stage_entries (job_id)',
  ...appendOnly('stage_entries'),
  `create table overrides (
  override_id integer primary key,
  job_id integer not null references jobs,
  check_id integer not null references checks,
  reason text not null check (reason <> ''),
  overridden_at text not null,
  overridden_by integer not null references people
) strict`,
  'create index overrides_of_job on overrides (job_id)',
  ...appendOnly('overrides'),
];

const packsAndPieces = [
  // One physical plate or ring.
  `create table pieces (
  piece_id integer primary key,
  kind text not null ${pieceKind},
  outline text not null,
  tag text not null,
  can_id integer references cans,
  added_at text not null,
  added_by integer not null references people
) strict`,
  'create index pieces_of_outline on pieces (outline, kind)',
  `create unique index pieces_by_tag on pieces (outline, tag) where tag <> ''`,
  ...appendOnly('pieces'),
  // A height is a reading: measuring again adds a row, and the newest counts. What nobody measured stands at its
  // nominal or catalogue height and says so.
  `create table piece_heights (
  piece_height_id integer primary key,
  piece_id integer not null references pieces,
  height_nm integer not null check (height_nm > 0),
  height_from text not null check (height_from in ('measured', 'nominal', 'catalogue')),
  typed text not null,
  reason text not null,
  measured_at text not null,
  measured_by integer not null references people
) strict`,
  'create index piece_heights_of_piece on piece_heights (piece_id)',
  ...appendOnly('piece_heights'),
  `create view pieces_as_known as
select pieces.*, height_nm, height_from
from pieces join piece_heights on piece_height_id =
  (select max(newest.piece_height_id) from piece_heights as newest where newest.piece_id = pieces.piece_id)`,
  `create table discards (
  piece_id integer primary key references pieces,
  reason text not null check (reason <> ''),
  discarded_at text not null,
  discarded_by integer not null references people
) strict`,
  ...appendOnly('discards'),
  `create table cans (
  can_id integer primary key,
  kind text not null ${pieceKind},
  outline text not null check (outline <> ''),
  height_nm integer not null check (height_nm > 0),
  unique (kind, outline, height_nm)
) strict`,
  // What is in a can is the sum of its movements.
  `create table can_movements (
  can_movement_id integer primary key,
  can_id integer not null references cans,
  change integer not null,
  reason text not null check (reason <> ''),
  moved_at text not null,
  moved_by integer not null references people
) strict`,
  'create index can_movements_of_can on can_movements (can_id)',
  ...appendOnly('can_movements'),
  // Number 0 is the pack as it was found.
  `create table mock_ups (
  mock_up_id integer primary key,
  job_id integer not null references jobs,
  pack_id integer not null references packs,
  number integer not null check (number >= 0),
  note text not null,
  predicted_mean_nm real,
  predicted_standard_deviation_nm real check ((predicted_standard_deviation_nm is null) = (predicted_mean_nm is null)),
  made_at text not null,
  made_by integer not null references people,
  unique (job_id, pack_id, number)
) strict`,
  ...appendOnly('mock_ups'),
  `create table mock_up_pieces (
  mock_up_id integer not null references mock_ups,
  slot_id integer not null references slots,
  piece_id integer not null references pieces,
  primary key (mock_up_id, slot_id),
  unique (mock_up_id, piece_id)
) strict, without rowid`,
  'create index mock_ups_of_piece on mock_up_pieces (piece_id)',
  ...appendOnly('mock_up_pieces'),
];

const readings = [
  // A setup card: how the gauge stood. Written once, one for each take that has it.
  `create table setups (
  setup_id integer primary key,
  dial_base text not null check (dial_base in ('drum', 'pump or lower drum')),
  is_piston_seated integer not null check (is_piston_seated in (0, 1)),
  air_pa integer check (air_pa > 0),
  port text not null,
  wave_state text not null check (wave_state in ('none', 'in', 'flattened', 'left out')),
  plates text not null check (plates in ('soaked', 'dry')),
  is_open_end_up integer not null check (is_open_end_up in (0, 1)),
  dial_type text not null check (dial_type in ('plunger', 'lever')),
  dial_face_counts integer not null check (dial_face_counts between 10 and 1000),
  mark text not null
) strict`,
  ...appendOnly('setups'),
  // One go at one check. Reading again after rework is a new take; a misread line is superseded inside its take.
  `create table takes (
  take_id integer primary key,
  job_id integer not null references jobs,
  check_id integer not null references checks,
  phase text not null check (phase in ('as found', 'mock-up', 'final')),
  mode text not null check (mode in ('quick', 'final')),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  mock_up_id integer references mock_ups,
  setup_id integer references setups,
  note text not null,
  started_at text not null,
  started_by integer not null references people
) strict`,
  'create index takes_of_job on takes (job_id, check_id)',
  ...appendOnly('takes'),
  // Amounts are base units of the check's quantity. air: dial states rest, pressed and air give push and travel.
  // feeler: the largest leaf that goes, the smallest that stops. Every other method: one amount.
  `create table readings (
  reading_id integer primary key,
  take_id integer not null references takes,
  spot integer not null check (spot between 1 and 12),
  method text not null check (method in ('air', 'feeler', 'dial', 'direct', 'count', 'drop')),
  typed text not null check (typed <> ''),
  push_amount integer,
  air_amount integer,
  is_zeroed_again integer not null default 0 check (is_zeroed_again in (0, 1)),
  is_air_only integer not null default 0 check (is_air_only in (0, 1)),
  waver_amount integer not null default 0 check (waver_amount >= 0),
  goes_amount integer,
  stops_amount integer,
  feel text not null default '' check (feel in ('', 'tight', 'easy')),
  amount integer,
  supersedes_id integer unique references readings,
  reason text not null default '',
  taken_at text not null,
  taken_by integer not null references people,
  check ((air_amount is not null) = (method = 'air')),
  check (method = 'air' or push_amount is null),
  check (method <> 'air' or push_amount is not null or is_air_only or is_zeroed_again),
  check ((goes_amount is not null and stops_amount is not null) = (method = 'feeler')),
  check (goes_amount is null or goes_amount < stops_amount),
  check ((amount is not null) = (method not in ('air', 'feeler'))),
  check ((supersedes_id is null) = (reason = ''))
) strict`,
  'create index readings_of_take on readings (take_id)',
  ...appendOnly('readings'),
  `create table spot_notes (
  spot_note_id integer primary key,
  take_id integer not null references takes,
  spot integer not null check (spot between 1 and 12),
  what text not null check (what in ('lost zero', 'not back to zero', 'will not hold air', 'plates re-clocked', 'enough')),
  noted_at text not null,
  noted_by integer not null references people
) strict`,
  'create index spot_notes_of_take on spot_notes (take_id)',
  ...appendOnly('spot_notes'),
];

export async function up(database: Kysely<unknown>): Promise<void> {
  const statements = [
    `pragma application_id = ${applicationId}`,
    ...shop,
    ...customersAndUnits,
    ...specs,
    ...jobs,
    ...packsAndPieces,
    ...readings,
    'pragma user_version = 1',
  ];
  for (const statement of statements) await sql.raw(statement).execute(database);
}
