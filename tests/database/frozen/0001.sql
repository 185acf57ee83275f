pragma application_id = 1413638961;
pragma user_version = 1;
CREATE TABLE "kysely_migration" ("name" varchar(255) not null primary key, "timestamp" varchar(255) not null);
CREATE TABLE "kysely_migration_lock" ("id" varchar(255) not null primary key, "is_locked" integer default 0 not null);
CREATE TABLE people (
  person_id integer primary key,
  initials text not null unique check (length(initials) between 1 and 4),
  name text not null check (name <> ''),
  retired_at text
) strict;
CREATE TABLE settings (
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
) strict;
CREATE TABLE customers (
  customer_id integer primary key,
  name text not null check (name <> ''),
  phone text not null,
  email text not null,
  note text not null
) strict;
CREATE TABLE families (
  family_id integer primary key,
  name text not null unique check (name <> '')
) strict;
CREATE TABLE units (
  unit_id integer primary key,
  family_id integer not null references families,
  serial text not null,
  vehicle text not null,
  use text not null check (use in ('street', 'tow', 'competition'))
) strict;
CREATE TABLE revisions (
  revision_id integer primary key,
  family_id integer not null references families,
  number integer not null check (number > 0),
  source_note text not null,
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, number)
) strict;
CREATE TABLE packs (
  pack_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  name text not null check (name <> ''),
  note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict;
CREATE TABLE slots (
  slot_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  nominal_nm integer check (nominal_nm > 0),
  is_adjuster integer not null check (is_adjuster in (0, 1)),
  outline text not null,
  facing text not null,
  unique (pack_id, position)
) strict;
CREATE TABLE slot_catalogue (
  slot_id integer not null references slots,
  height_nm integer not null check (height_nm > 0),
  primary key (slot_id, height_nm)
) strict, without rowid;
CREATE TABLE placement_rules (
  placement_rule_id integer primary key,
  pack_id integer not null references packs,
  position integer not null,
  rule text not null check (rule in ('thinnest-in', 'thickest-in', 'all-equal')),
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  unique (pack_id, position)
) strict;
CREATE TABLE placement_rule_places (
  placement_rule_id integer not null references placement_rules,
  place integer not null check (place > 0),
  primary key (placement_rule_id, place)
) strict, without rowid;
CREATE TABLE checks (
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
) strict;
CREATE TABLE check_variants (
  check_id integer not null references checks,
  position integer not null,
  name text not null check (name <> ''),
  nominal_amount integer not null,
  within_amount integer not null check (within_amount > 0),
  primary key (check_id, position)
) strict, without rowid;
CREATE TABLE check_shims (
  check_id integer not null references checks,
  height_nm integer not null check (height_nm > 0),
  primary key (check_id, height_nm)
) strict, without rowid;
CREATE TABLE stages (
  stage_id integer primary key,
  position integer not null unique,
  name text not null unique,
  is_closed integer not null check (is_closed in (0, 1))
) strict;
CREATE TABLE jobs (
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
) strict;
CREATE TABLE stage_entries (
  stage_entry_id integer primary key,
  job_id integer not null references jobs,
  stage_id integer not null references stages,
  entered_at text not null,
  entered_by integer not null references people
) strict;
CREATE TABLE overrides (
  override_id integer primary key,
  job_id integer not null references jobs,
  check_id integer not null references checks,
  reason text not null check (reason <> ''),
  overridden_at text not null,
  overridden_by integer not null references people
) strict;
CREATE TABLE pieces (
  piece_id integer primary key,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  outline text not null,
  tag text not null,
  can_id integer references cans,
  added_at text not null,
  added_by integer not null references people
) strict;
CREATE TABLE piece_heights (
  piece_height_id integer primary key,
  piece_id integer not null references pieces,
  height_nm integer not null check (height_nm > 0),
  height_from text not null check (height_from in ('measured', 'nominal', 'catalogue')),
  typed text not null,
  reason text not null,
  measured_at text not null,
  measured_by integer not null references people
) strict;
CREATE TABLE discards (
  piece_id integer primary key references pieces,
  reason text not null check (reason <> ''),
  discarded_at text not null,
  discarded_by integer not null references people
) strict;
CREATE TABLE cans (
  can_id integer primary key,
  kind text not null check (kind in ('apply plate', 'wave plate', 'steel', 'friction', 'backing plate', 'snap ring')),
  outline text not null check (outline <> ''),
  height_nm integer not null check (height_nm > 0),
  unique (kind, outline, height_nm)
) strict;
CREATE TABLE can_movements (
  can_movement_id integer primary key,
  can_id integer not null references cans,
  change integer not null,
  reason text not null check (reason <> ''),
  moved_at text not null,
  moved_by integer not null references people
) strict;
CREATE TABLE mock_ups (
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
) strict;
CREATE TABLE mock_up_pieces (
  mock_up_id integer not null references mock_ups,
  slot_id integer not null references slots,
  piece_id integer not null references pieces,
  primary key (mock_up_id, slot_id),
  unique (mock_up_id, piece_id)
) strict, without rowid;
CREATE TABLE setups (
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
) strict;
CREATE TABLE takes (
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
) strict;
CREATE TABLE readings (
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
) strict;
CREATE TABLE spot_notes (
  spot_note_id integer primary key,
  take_id integer not null references takes,
  spot integer not null check (spot between 1 and 12),
  what text not null check (what in ('lost zero', 'not back to zero', 'will not hold air', 'plates re-clocked', 'enough')),
  noted_at text not null,
  noted_by integer not null references people
) strict;
insert into "kysely_migration" values
  ('0001-one-unit', '2026-12-01T07:29:46.632Z');
insert into "kysely_migration_lock" values
  ('migration_lock', 0);
insert into "people" values
  (1, 'RA', 'Rosa Aldane', NULL);
insert into "settings" values
  (1, 1, 'Harrow Lane Transmission', 'thou', '.', 'letter', '', 25400, 50800, 101600, 17780, 12700, 2540, 50, 25400, 25400, 25400, 25400, 5080, 'guarded');
insert into "customers" values
  (1, 'Tam Okoro', '555 0117', '', ''),
  (2, 'Ilse Brandvold', '555 0144', '', '');
insert into "families" values
  (1, 'KX3');
insert into "units" values
  (1, 1, 'KX3-19-2214', 'half-ton pickup', 'tow'),
  (2, 1, 'KX3-20-0417', 'delivery van', 'street');
insert into "revisions" values
  (1, 1, 1, 'invented, for the demo', '2031-03-03T08:01:00.000Z', 1);
insert into "packs" values
  (1, 1, 0, 'Forward', 'Fixed snap ring. Backing plate at the ring end.'),
  (2, 1, 1, 'Direct', 'Fixed snap ring. The thinnest steel goes to the middle.'),
  (3, 1, 2, 'Low/reverse', 'In the case. The wave plate counts at its hand-pressed height.');
insert into "slots" values
  (1, 1, 1, 'steel', NULL, 1, 'KX3 forward', ''),
  (2, 1, 2, 'friction', 2032000, 0, '', ''),
  (3, 1, 3, 'steel', NULL, 1, 'KX3 forward', ''),
  (4, 1, 4, 'friction', 2032000, 0, '', ''),
  (5, 1, 5, 'steel', NULL, 1, 'KX3 forward', ''),
  (6, 1, 6, 'friction', 2032000, 0, '', ''),
  (7, 1, 7, 'steel', NULL, 1, 'KX3 forward', ''),
  (8, 1, 8, 'friction', 2032000, 0, '', ''),
  (9, 1, 9, 'backing plate', 6350000, 0, '', ''),
  (10, 2, 1, 'steel', NULL, 1, 'KX3 direct', ''),
  (11, 2, 2, 'friction', 2139950, 0, '', ''),
  (12, 2, 3, 'steel', NULL, 1, 'KX3 direct', ''),
  (13, 2, 4, 'friction', 2139950, 0, '', ''),
  (14, 2, 5, 'steel', NULL, 1, 'KX3 direct', ''),
  (15, 2, 6, 'friction', 2139950, 0, '', ''),
  (16, 2, 7, 'steel', NULL, 1, 'KX3 direct', ''),
  (17, 2, 8, 'friction', 2139950, 0, '', ''),
  (18, 2, 9, 'backing plate', 7874000, 0, '', ''),
  (19, 3, 1, 'wave plate', 2159000, 0, '', ''),
  (20, 3, 2, 'steel', NULL, 1, 'KX3 low/reverse', ''),
  (21, 3, 3, 'friction', 2032000, 0, '', ''),
  (22, 3, 4, 'steel', NULL, 1, 'KX3 low/reverse', ''),
  (23, 3, 5, 'friction', 2032000, 0, '', ''),
  (24, 3, 6, 'steel', NULL, 1, 'KX3 low/reverse', ''),
  (25, 3, 7, 'friction', 2032000, 0, '', ''),
  (26, 3, 8, 'steel', NULL, 1, 'KX3 low/reverse', ''),
  (27, 3, 9, 'friction', 2032000, 0, '', ''),
  (28, 3, 10, 'steel', NULL, 1, 'KX3 low/reverse', ''),
  (29, 3, 11, 'friction', 2032000, 0, '', ''),
  (30, 3, 12, 'backing plate', 5080000, 0, '', ''),
  (31, 3, 13, 'snap ring', NULL, 1, 'KX3 low/reverse ring', '');
insert into "slot_catalogue" values
  (31, 1574800),
  (31, 1879600),
  (31, 2184400),
  (31, 2489200);
insert into "placement_rules" values
  (1, 2, 0, 'thinnest-in', 'steel');
insert into "placement_rule_places" values
  (1, 2),
  (1, 3);
insert into "checks" values
  (1, 1, 0, 1, 'Forward clearance', 'Clearance', 'air', 'length', 'thou', 'target', 508000, 635000, 762000, 'mean and tightest', 'none', 4, 'invented sheet KX3, page 1'),
  (2, 1, 1, 2, 'Direct clearance', 'Clearance', 'air', 'length', 'thou', 'target', 1016000, 1143000, 1270000, 'mean and tightest', 'none', 4, 'invented sheet KX3, page 1'),
  (3, 1, 2, 3, 'Low/reverse clearance', 'Clearance', 'air', 'length', 'thou', 'target', 1143000, 1473200, 1778000, 'mean and tightest', 'in', 1, 'invented sheet KX3, page 1'),
  (4, 1, 3, NULL, 'Front end play', 'End play', 'dial', 'length', 'thou', 'target', 254000, 457200, 609600, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (5, 1, 4, NULL, 'Rear end play', 'End play', 'dial', 'length', 'thou', 'range', 101600, NULL, 482600, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (6, 1, 5, NULL, 'Pump gear side', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 20320, NULL, 50800, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (7, 1, 6, NULL, 'Outer gear to pocket', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 76200, NULL, 177800, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (8, 1, 7, NULL, 'Inner gear to crescent', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 127000, NULL, 254000, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (9, 1, 8, NULL, 'Stator bushing', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 25400, NULL, 88900, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (10, 1, 9, NULL, 'Converter hub to pump bushing', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 50800, NULL, 114300, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (11, 1, 10, NULL, 'Sealing-ring groove width', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'variants', NULL, NULL, NULL, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (12, 1, 11, NULL, 'Sealing ring side', 'Pump, bushings, rings', 'direct', 'length', 'thou', 'range', 38100, NULL, 101600, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (13, 1, 12, NULL, 'Servo travel', 'Servo and band', 'dial', 'length', 'thou', 'range', 2540000, NULL, 3810000, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (14, 1, 13, NULL, 'Converter hub depth', 'Converter', 'direct', 'length', 'in', 'minimum', 28575000, NULL, NULL, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (15, 1, 14, NULL, 'Converter pull-out', 'Converter', 'direct', 'length', 'in', 'range', 3175000, NULL, 4762500, 'mean', 'none', 1, 'invented sheet KX3, page 2'),
  (16, 1, 15, NULL, 'Port A, Forward', 'Leak-down, 40 psi, 10 s', 'drop', 'pressure', 'psi', 'maximum', NULL, NULL, 68948, 'mean', 'none', 1, 'invented sheet KX3, page 3'),
  (17, 1, 16, NULL, 'Port B, Direct', 'Leak-down, 40 psi, 10 s', 'drop', 'pressure', 'psi', 'maximum', NULL, NULL, 68948, 'mean', 'none', 1, 'invented sheet KX3, page 3'),
  (18, 1, 17, NULL, 'Port C3, Low/reverse', 'Leak-down, 40 psi, 10 s', 'drop', 'pressure', 'psi', 'maximum', NULL, NULL, 68948, 'mean', 'none', 1, 'invented sheet KX3, page 3'),
  (19, 1, 18, NULL, 'Port C4, servo apply', 'Leak-down, 40 psi, 10 s', 'drop', 'pressure', 'psi', 'maximum', NULL, NULL, 68948, 'mean', 'none', 1, 'invented sheet KX3, page 3'),
  (20, 1, 19, NULL, 'Line, idle, P/N', 'Line pressure', 'direct', 'pressure', 'psi', 'range', 482633, NULL, 620528, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (21, 1, 20, NULL, 'Line, idle, D', 'Line pressure', 'direct', 'pressure', 'psi', 'range', 482633, NULL, 620528, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (22, 1, 21, NULL, 'Line, idle, R', 'Line pressure', 'direct', 'pressure', 'psi', 'range', 758423, NULL, 965266, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (23, 1, 22, NULL, 'Line, full throttle, D', 'Line pressure', 'direct', 'pressure', 'psi', 'range', 1034214, NULL, 1206583, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (24, 1, 23, NULL, 'Line, full throttle, R', 'Line pressure', 'direct', 'pressure', 'psi', 'range', 1654742, NULL, 1930532, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (25, 1, 24, NULL, 'Cooler flow in 30 s', 'Cooler', 'direct', 'volume', 'qt', 'minimum', 946353, NULL, NULL, 'mean', 'none', 1, 'invented sheet KX3, page 4'),
  (26, 1, 25, NULL, 'Pump bolts', 'Torque', 'direct', 'torque', 'lb-ft', 'target', 23184, 24405, 25625, 'mean', 'none', 1, 'invented sheet KX3, page 5'),
  (27, 1, 26, NULL, 'Extension housing', 'Torque', 'direct', 'torque', 'lb-ft', 'target', 30913, 32540, 34167, 'mean', 'none', 1, 'invented sheet KX3, page 5'),
  (28, 1, 27, NULL, 'Band locknut', 'Torque', 'direct', 'torque', 'lb-ft', 'target', 45081, 47454, 49826, 'mean', 'none', 1, 'invented sheet KX3, page 5'),
  (29, 1, 28, NULL, 'Valve body', 'Torque', 'direct', 'torque', 'lb-in', 'target', 10734, 11298, 11863, 'mean', 'none', 1, 'invented sheet KX3, page 5'),
  (30, 1, 29, NULL, 'Pan', 'Torque', 'direct', 'torque', 'lb-in', 'target', 12880, 13558, 14236, 'mean', 'none', 1, 'invented sheet KX3, page 5');
insert into "check_variants" values
  (11, 0, '90 wide', 2286000, 76200),
  (11, 1, '118 wide', 2997200, 76200);
insert into "check_shims" values
  (4, 1524000),
  (4, 1676400),
  (4, 1828800),
  (4, 1981200),
  (4, 2133600);
insert into "stages" values
  (1, 1, 'Checked in', 0),
  (2, 2, 'As found', 0),
  (3, 3, 'Teardown', 0),
  (4, 4, 'Waiting', 0),
  (5, 5, 'Build', 0),
  (6, 6, 'Final check', 0),
  (7, 7, 'Ready', 0),
  (8, 8, 'Picked up', 0),
  (9, 9, 'Closed', 1);
insert into "jobs" values
  (1, 1, 1, 1, 1, 'Slips 2–3 when hot.', '1', 118400, 'miles', '2031-03-03T08:05:00.000Z', 1),
  (2, 2, 2, 2, 1, 'Late into third when cold.', '2', 91250, 'miles', '2031-03-03T08:12:20.000Z', 1);
insert into "stage_entries" values
  (1, 1, 1, '2031-03-03T08:05:00.000Z', 1),
  (2, 2, 1, '2031-03-03T08:12:20.000Z', 1);
insert into "overrides" values
  (1, 1, 1, 'as the customer wants it', '2031-03-04T09:03:00.000Z', 1);
insert into "pieces" values
  (1, 'steel', 'KX3 forward', 'A41', NULL, '2031-03-03T08:01:20.000Z', 1),
  (2, 'steel', 'KX3 forward', 'A42', NULL, '2031-03-03T08:01:40.000Z', 1),
  (3, 'steel', 'KX3 forward', 'A43', NULL, '2031-03-03T08:02:00.000Z', 1),
  (4, 'steel', 'KX3 forward', 'A44', NULL, '2031-03-03T08:02:20.000Z', 1),
  (5, 'steel', 'KX3 forward', 'A45', NULL, '2031-03-03T08:02:40.000Z', 1),
  (6, 'steel', 'KX3 forward', 'A47', NULL, '2031-03-03T08:03:00.000Z', 1),
  (7, 'steel', 'KX3 direct', 'B21', NULL, '2031-03-03T08:03:20.000Z', 1),
  (8, 'steel', 'KX3 direct', 'B22', NULL, '2031-03-03T08:03:40.000Z', 1),
  (9, 'steel', 'KX3 direct', 'B23', NULL, '2031-03-03T08:04:00.000Z', 1),
  (10, 'steel', 'KX3 direct', 'B24', NULL, '2031-03-03T08:04:20.000Z', 1),
  (11, 'steel', 'KX3 direct', 'B25', NULL, '2031-03-03T08:04:40.000Z', 1),
  (12, 'steel', 'KX3 forward', 'A31', NULL, '2031-03-03T08:11:20.000Z', 1),
  (13, 'friction', '', '', NULL, '2031-03-03T08:11:20.000Z', 1),
  (14, 'steel', 'KX3 forward', 'A32', NULL, '2031-03-03T08:11:20.000Z', 1),
  (15, 'friction', '', '', NULL, '2031-03-03T08:11:20.000Z', 1),
  (16, 'steel', 'KX3 forward', 'A33', NULL, '2031-03-03T08:11:20.000Z', 1),
  (17, 'friction', '', '', NULL, '2031-03-03T08:11:20.000Z', 1),
  (18, 'steel', 'KX3 forward', 'A34', NULL, '2031-03-03T08:11:20.000Z', 1),
  (19, 'friction', '', '', NULL, '2031-03-03T08:11:20.000Z', 1),
  (20, 'backing plate', '', '', NULL, '2031-03-03T08:11:20.000Z', 1),
  (21, 'steel', 'KX3 direct', 'B11', NULL, '2031-03-03T08:11:40.000Z', 1),
  (22, 'friction', '', '', NULL, '2031-03-03T08:11:40.000Z', 1),
  (23, 'steel', 'KX3 direct', 'B12', NULL, '2031-03-03T08:11:40.000Z', 1),
  (24, 'friction', '', '', NULL, '2031-03-03T08:11:40.000Z', 1),
  (25, 'steel', 'KX3 direct', 'B13', NULL, '2031-03-03T08:11:40.000Z', 1),
  (26, 'friction', '', '', NULL, '2031-03-03T08:11:40.000Z', 1),
  (27, 'steel', 'KX3 direct', 'B14', NULL, '2031-03-03T08:11:40.000Z', 1),
  (28, 'friction', '', '', NULL, '2031-03-03T08:11:40.000Z', 1),
  (29, 'backing plate', '', '', NULL, '2031-03-03T08:11:40.000Z', 1),
  (30, 'wave plate', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (31, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (32, 'friction', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (33, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (34, 'friction', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (35, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (36, 'friction', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (37, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (38, 'friction', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (39, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (40, 'friction', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (41, 'backing plate', '', '', NULL, '2031-03-03T08:12:00.000Z', 1),
  (42, 'snap ring', 'KX3 low/reverse ring', '', NULL, '2031-03-03T08:12:00.000Z', 1);
insert into "piece_heights" values
  (1, 1, 1879600, 'measured', '74.0', '', '2031-03-03T08:01:20.000Z', 1),
  (2, 2, 1917700, 'measured', '75.5', '', '2031-03-03T08:01:40.000Z', 1),
  (3, 3, 1993900, 'measured', '78.5', '', '2031-03-03T08:02:00.000Z', 1),
  (4, 4, 2019300, 'measured', '79.5', '', '2031-03-03T08:02:20.000Z', 1),
  (5, 5, 2044700, 'measured', '80.5', '', '2031-03-03T08:02:40.000Z', 1),
  (6, 6, 2108200, 'measured', '83.0', '', '2031-03-03T08:03:00.000Z', 1),
  (7, 7, 2133600, 'measured', '84.0', '', '2031-03-03T08:03:20.000Z', 1),
  (8, 8, 2209800, 'measured', '87.0', '', '2031-03-03T08:03:40.000Z', 1),
  (9, 9, 2273300, 'measured', '89.5', '', '2031-03-03T08:04:00.000Z', 1),
  (10, 10, 2286000, 'measured', '90.0', '', '2031-03-03T08:04:20.000Z', 1),
  (11, 11, 2362200, 'measured', '93.0', '', '2031-03-03T08:04:40.000Z', 1),
  (12, 12, 1955800, 'measured', '77.0', '', '2031-03-03T08:11:20.000Z', 1),
  (13, 13, 2019300, 'measured', '79.5', '', '2031-03-03T08:11:20.000Z', 1),
  (14, 14, 1943100, 'measured', '76.5', '', '2031-03-03T08:11:20.000Z', 1),
  (15, 15, 2032000, 'measured', '80.0', '', '2031-03-03T08:11:20.000Z', 1),
  (16, 16, 1981200, 'measured', '78.0', '', '2031-03-03T08:11:20.000Z', 1),
  (17, 17, 2032000, 'measured', '80.0', '', '2031-03-03T08:11:20.000Z', 1),
  (18, 18, 1968500, 'measured', '77.5', '', '2031-03-03T08:11:20.000Z', 1),
  (19, 19, 2044700, 'measured', '80.5', '', '2031-03-03T08:11:20.000Z', 1),
  (20, 20, 6350000, 'measured', '250.0', '', '2031-03-03T08:11:20.000Z', 1),
  (21, 21, 2336800, 'measured', '92.0', '', '2031-03-03T08:11:40.000Z', 1),
  (22, 22, 2133600, 'measured', '84.0', '', '2031-03-03T08:11:40.000Z', 1),
  (23, 23, 2311400, 'measured', '91.0', '', '2031-03-03T08:11:40.000Z', 1),
  (24, 24, 2146300, 'measured', '84.5', '', '2031-03-03T08:11:40.000Z', 1),
  (25, 25, 2349500, 'measured', '92.5', '', '2031-03-03T08:11:40.000Z', 1),
  (26, 26, 2133600, 'measured', '84.0', '', '2031-03-03T08:11:40.000Z', 1),
  (27, 27, 2324100, 'measured', '91.5', '', '2031-03-03T08:11:40.000Z', 1),
  (28, 28, 2146300, 'measured', '84.5', '', '2031-03-03T08:11:40.000Z', 1),
  (29, 29, 7874000, 'measured', '310.0', '', '2031-03-03T08:11:40.000Z', 1),
  (30, 30, 2159000, 'measured', '85.0', '', '2031-03-03T08:12:00.000Z', 1),
  (31, 31, 1778000, 'measured', '70.0', '', '2031-03-03T08:12:00.000Z', 1),
  (32, 32, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:00.000Z', 1),
  (33, 33, 1790700, 'measured', '70.5', '', '2031-03-03T08:12:00.000Z', 1),
  (34, 34, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:00.000Z', 1),
  (35, 35, 1765300, 'measured', '69.5', '', '2031-03-03T08:12:00.000Z', 1),
  (36, 36, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:00.000Z', 1),
  (37, 37, 1778000, 'measured', '70.0', '', '2031-03-03T08:12:00.000Z', 1),
  (38, 38, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:00.000Z', 1),
  (39, 39, 1778000, 'measured', '70.0', '', '2031-03-03T08:12:00.000Z', 1),
  (40, 40, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:00.000Z', 1),
  (41, 41, 5080000, 'measured', '200.0', '', '2031-03-03T08:12:00.000Z', 1),
  (42, 42, 1879600, 'measured', '74.0', '', '2031-03-03T08:12:00.000Z', 1);
insert into "discards" values
  (11, 'blued, 0.3 dished', '2031-03-04T09:02:00.000Z', 1);
insert into "cans" values
  (1, 'steel', 'KX3-F', 1955800);
insert into "can_movements" values
  (1, 1, 12, 'a box of twelve', '2031-03-04T09:00:00.000Z', 1),
  (2, 1, -2, 'counted', '2031-03-04T09:01:00.000Z', 1);
insert into "mock_ups" values
  (1, 1, 1, 0, '', NULL, NULL, '2031-03-03T08:11:20.000Z', 1),
  (2, 1, 2, 0, '', NULL, NULL, '2031-03-03T08:11:40.000Z', 1),
  (3, 1, 3, 0, '', NULL, NULL, '2031-03-03T08:12:00.000Z', 1);
insert into "mock_up_pieces" values
  (1, 1, 12),
  (1, 2, 13),
  (1, 3, 14),
  (1, 4, 15),
  (1, 5, 16),
  (1, 6, 17),
  (1, 7, 18),
  (1, 8, 19),
  (1, 9, 20),
  (2, 10, 21),
  (2, 11, 22),
  (2, 12, 23),
  (2, 13, 24),
  (2, 14, 25),
  (2, 15, 26),
  (2, 16, 27),
  (2, 17, 28),
  (2, 18, 29),
  (3, 19, 30),
  (3, 20, 31),
  (3, 21, 32),
  (3, 22, 33),
  (3, 23, 34),
  (3, 24, 35),
  (3, 25, 36),
  (3, 26, 37),
  (3, 27, 38),
  (3, 28, 39),
  (3, 29, 40),
  (3, 30, 41),
  (3, 31, 42);
insert into "setups" values
  (1, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (2, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (3, 'drum', 1, 275790, 'A', 'in', 'soaked', 1, 'plunger', 100, 'paint dot on the drum');
insert into "takes" values
  (1, 1, 1, 'as found', 'final', 'air', NULL, 1, '', '2031-03-03T08:05:20.000Z', 1),
  (2, 1, 2, 'as found', 'final', 'air', NULL, 2, '', '2031-03-03T08:07:00.000Z', 1),
  (3, 1, 3, 'as found', 'final', 'air', NULL, 3, '', '2031-03-03T08:08:40.000Z', 1),
  (4, 1, 4, 'as found', 'final', 'dial', NULL, NULL, '', '2031-03-03T08:09:20.000Z', 1),
  (5, 1, 5, 'as found', 'final', 'dial', NULL, NULL, '', '2031-03-03T08:10:00.000Z', 1),
  (6, 1, 10, 'as found', 'final', 'direct', NULL, NULL, '', '2031-03-03T08:10:40.000Z', 1);
insert into "readings" values
  (1, 1, 1, 'air', '4 27', 101600, 685800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:05:40.000Z', 1),
  (2, 1, 2, 'air', '5 27', 127000, 685800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:06:00.000Z', 1),
  (3, 1, 3, 'air', '5 28', 127000, 711200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:06:20.000Z', 1),
  (4, 1, 4, 'air', '4 28', 101600, 711200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:06:40.000Z', 1),
  (5, 2, 1, 'air', '5 32', 127000, 812800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:07:20.000Z', 1),
  (6, 2, 2, 'air', '5 33', 127000, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:07:40.000Z', 1),
  (7, 2, 3, 'air', '6 33', 152400, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:08:00.000Z', 1),
  (8, 2, 4, 'air', '5 33', 127000, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:08:20.000Z', 1),
  (9, 3, 1, 'air', '12 60', 304800, 1524000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:09:00.000Z', 1),
  (10, 4, 1, 'dial', '31', NULL, NULL, 0, 0, 0, NULL, NULL, '', 787400, NULL, '', '2031-03-03T08:09:40.000Z', 1),
  (11, 5, 1, 'dial', '11', NULL, NULL, 0, 0, 0, NULL, NULL, '', 279400, NULL, '', '2031-03-03T08:10:20.000Z', 1),
  (12, 6, 1, 'direct', '5.0', NULL, NULL, 0, 0, 0, NULL, NULL, '', 127000, NULL, '', '2031-03-03T08:11:00.000Z', 1);
insert into "spot_notes" values
  (1, 1, 2, 'lost zero', '2031-03-04T09:04:00.000Z', 1);
CREATE INDEX units_of_family on units (family_id);
CREATE TRIGGER revisions_frozen_update before update on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end;
CREATE TRIGGER revisions_frozen_delete before delete on revisions
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: revisions'); end;
CREATE TRIGGER packs_frozen_update before update on packs
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: packs'); end;
CREATE TRIGGER packs_frozen_delete before delete on packs
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: packs'); end;
CREATE TRIGGER checks_frozen_update before update on checks
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: checks'); end;
CREATE TRIGGER checks_frozen_delete before delete on checks
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: checks'); end;
CREATE INDEX jobs_of_unit on jobs (unit_id);
CREATE INDEX jobs_of_customer on jobs (customer_id);
CREATE INDEX jobs_of_revision on jobs (revision_id);
CREATE INDEX stage_entries_of_job on stage_entries (job_id);
CREATE TRIGGER stage_entries_no_update before update on stage_entries
begin select raise(abort, 'append-only: stage_entries'); end;
CREATE TRIGGER stage_entries_no_delete before delete on stage_entries
begin select raise(abort, 'append-only: stage_entries'); end;
CREATE INDEX overrides_of_job on overrides (job_id);
CREATE TRIGGER overrides_no_update before update on overrides
begin select raise(abort, 'append-only: overrides'); end;
CREATE TRIGGER overrides_no_delete before delete on overrides
begin select raise(abort, 'append-only: overrides'); end;
CREATE INDEX pieces_of_outline on pieces (outline, kind);
CREATE UNIQUE INDEX pieces_by_tag on pieces (outline, tag) where tag <> '';
CREATE TRIGGER pieces_no_update before update on pieces
begin select raise(abort, 'append-only: pieces'); end;
CREATE TRIGGER pieces_no_delete before delete on pieces
begin select raise(abort, 'append-only: pieces'); end;
CREATE INDEX piece_heights_of_piece on piece_heights (piece_id);
CREATE TRIGGER piece_heights_no_update before update on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;
CREATE TRIGGER piece_heights_no_delete before delete on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;
CREATE VIEW pieces_as_known as
select pieces.*, height_nm, height_from
from pieces join piece_heights on piece_height_id =
  (select max(newest.piece_height_id) from piece_heights as newest where newest.piece_id = pieces.piece_id);
CREATE TRIGGER discards_no_update before update on discards
begin select raise(abort, 'append-only: discards'); end;
CREATE TRIGGER discards_no_delete before delete on discards
begin select raise(abort, 'append-only: discards'); end;
CREATE INDEX can_movements_of_can on can_movements (can_id);
CREATE TRIGGER can_movements_no_update before update on can_movements
begin select raise(abort, 'append-only: can_movements'); end;
CREATE TRIGGER can_movements_no_delete before delete on can_movements
begin select raise(abort, 'append-only: can_movements'); end;
CREATE TRIGGER mock_ups_no_update before update on mock_ups
begin select raise(abort, 'append-only: mock_ups'); end;
CREATE TRIGGER mock_ups_no_delete before delete on mock_ups
begin select raise(abort, 'append-only: mock_ups'); end;
CREATE INDEX mock_ups_of_piece on mock_up_pieces (piece_id);
CREATE TRIGGER mock_up_pieces_no_update before update on mock_up_pieces
begin select raise(abort, 'append-only: mock_up_pieces'); end;
CREATE TRIGGER mock_up_pieces_no_delete before delete on mock_up_pieces
begin select raise(abort, 'append-only: mock_up_pieces'); end;
CREATE TRIGGER setups_no_update before update on setups
begin select raise(abort, 'append-only: setups'); end;
CREATE TRIGGER setups_no_delete before delete on setups
begin select raise(abort, 'append-only: setups'); end;
CREATE INDEX takes_of_job on takes (job_id, check_id);
CREATE TRIGGER takes_no_update before update on takes
begin select raise(abort, 'append-only: takes'); end;
CREATE TRIGGER takes_no_delete before delete on takes
begin select raise(abort, 'append-only: takes'); end;
CREATE INDEX readings_of_take on readings (take_id);
CREATE TRIGGER readings_no_update before update on readings
begin select raise(abort, 'append-only: readings'); end;
CREATE TRIGGER readings_no_delete before delete on readings
begin select raise(abort, 'append-only: readings'); end;
CREATE INDEX spot_notes_of_take on spot_notes (take_id);
CREATE TRIGGER spot_notes_no_update before update on spot_notes
begin select raise(abort, 'append-only: spot_notes'); end;
CREATE TRIGGER spot_notes_no_delete before delete on spot_notes
begin select raise(abort, 'append-only: spot_notes'); end;
