pragma application_id = 1413638961;
pragma user_version = 16;
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
, warranty_months integer check (warranty_months > 0), warranty_distance integer check (warranty_distance > 0), warranty_distance_unit text not null default 'miles'
  check (warranty_distance_unit in ('miles', 'km')), warranty_passes integer check (warranty_passes > 0)) strict;
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
, batch_id integer references batches) strict;
CREATE TABLE piece_heights (
  piece_height_id integer primary key,
  piece_id integer not null references pieces,
  height_nm integer not null check (height_nm > 0),
  height_from text not null check (height_from in ('measured', 'nominal', 'catalogue')),
  typed text not null,
  reason text not null,
  measured_at text not null,
  measured_by integer not null references people
, micrometer text not null default '', standard_uncertainty_nm integer check (standard_uncertainty_nm > 0)) strict;
CREATE TABLE discards (
  piece_id integer primary key references pieces,
  reason text not null check (reason <> ''),
  discarded_at text not null,
  discarded_by integer not null references people
, was_mistyped integer not null default 0 check (was_mistyped in (0, 1))) strict;
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
, typed text not null default '', batch_id integer references batches, takes_back_id integer references can_movements) strict;
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
  taken_by integer not null references people, first_amount integer
  check (first_amount is null or method in ('dial', 'direct', 'drop')), second_amount integer
  check ((second_amount is null) = (first_amount is null)
    and (second_amount is null or amount = abs(first_amount - second_amount))),
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
CREATE TABLE take_figures (
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
) strict;
CREATE TABLE parts (
  part_id integer primary key,
  number text not null collate nocase unique check (number <> ''),
  description text not null check (description <> ''),
  kind text not null check (kind in ('steel', 'friction', 'pressure plate', 'snap ring', 'seal', 'bushing', 'washer',
    'valve-body part', 'fluid', 'kit', 'other')),
  supplier text not null,
  unit_of_issue text not null check (unit_of_issue <> ''),
  bin text not null,
  cost_cents integer check (cost_cents >= 0),
  price_cents integer check (price_cents >= 0),
  core_charge_cents integer check (core_charge_cents > 0),
  reorder_point integer check (reorder_point >= 0),
  reorder_quantity integer check (reorder_quantity > 0),
  is_retired integer not null check (is_retired in (0, 1))
) strict;
CREATE TABLE part_families (
  part_id integer not null references parts,
  family_id integer not null references families,
  primary key (part_id, family_id)
) strict, without rowid;
CREATE TABLE kit_lines (
  kit_id integer not null references parts,
  part_id integer not null references parts check (part_id <> kit_id),
  quantity integer not null check (quantity > 0),
  primary key (kit_id, part_id)
) strict, without rowid;
CREATE TABLE batches (
  batch_id integer primary key,
  part_id integer not null references parts,
  kit_batch_id integer references batches,
  mark text not null,
  document text not null,
  received_on text not null check (received_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  unit_cost_cents integer check (unit_cost_cents >= 0),
  received_at text not null,
  received_by integer not null references people,
  check (mark <> '' or document <> '' or kit_batch_id is not null)
) strict;
CREATE TABLE kit_batch_lines (
  batch_id integer not null references batches,
  part_id integer not null references parts,
  quantity integer not null check (quantity > 0),
  primary key (batch_id, part_id)
) strict, without rowid;
CREATE TABLE movements (
  movement_id integer primary key,
  batch_id integer not null references batches,
  kind text not null check (kind in ('receive', 'pull', 'return', 'scrap', 'count', 'open', 'sort')),
  change integer not null check (change <> 0),
  job_id integer references jobs check (job_id is not null or kind not in ('pull', 'return'))
    check (job_id is null or kind in ('pull', 'return', 'receive')),
  price_cents integer check (price_cents >= 0) check (price_cents is null or kind = 'pull'),
  reason text not null,
  moved_at text not null,
  moved_by integer not null references people,
  check (kind in ('count', 'sort') or (change > 0) = (kind in ('receive', 'return'))),
  check (kind not in ('scrap', 'count') or reason <> '')
) strict;
CREATE TABLE cores (
  core_id integer primary key,
  direction text not null check (direction in ('to send back', 'due to us')),
  what text not null check (what <> ''),
  quantity integer not null check (quantity > 0),
  charge_cents integer check (charge_cents >= 0),
  due_on text check (due_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  batch_id integer references batches,
  job_id integer references jobs,
  opened_at text not null,
  opened_by integer not null references people
) strict;
CREATE TABLE core_settlements (
  core_id integer primary key references cores,
  how text not null check (how in ('sent back', 'came back', 'charged', 'written off')),
  note text not null,
  settled_at text not null,
  settled_by integer not null references people
) strict;
CREATE TABLE piece_height_points (
  piece_height_id integer not null references piece_heights,
  point integer not null check (point between 1 and 12),
  height_nm integer not null check (height_nm > 0),
  primary key (piece_height_id, point)
) strict, without rowid;
CREATE TABLE piece_looks (
  piece_look_id integer primary key,
  piece_id integer not null references pieces,
  flat text not null check (flat in ('flat', 'not flat', 'not tried')),
  off_flat_nm integer check (off_flat_nm > 0) check (off_flat_nm is null or flat = 'not flat'),
  has_hot_spots integer not null check (has_hot_spots in (0, 1)),
  is_glazed integer not null check (is_glazed in (0, 1)),
  is_coned integer not null check (is_coned in (0, 1)),
  is_usable integer not null check (is_usable in (0, 1)),
  note text not null,
  looked_at text not null,
  looked_by integer not null references people
) strict;
CREATE TABLE can_returns (
  piece_id integer primary key references pieces,
  can_id integer not null references cans,
  returned_at text not null,
  returned_by integer not null references people
) strict;
CREATE TABLE label_sizes (
  label_size_id integer primary key,
  name text not null unique check (name <> ''),
  width_um integer not null check (width_um between 10000 and 300000),
  height_um integer not null check (height_um between 10000 and 300000)
) strict;
CREATE TABLE money_terms (
  money_terms_id integer primary key,
  labour_rate_cents integer check (labour_rate_cents >= 0),
  tax_label text not null check (tax_label <> ''),
  tax_per_hundred_thousand integer not null check (tax_per_hundred_thousand between 0 and 100000),
  is_labour_taxable integer not null check (is_labour_taxable in (0, 1)),
  set_at text not null,
  set_by integer not null references people
) strict;
CREATE TABLE job_lines (
  job_line_id integer primary key,
  job_id integer not null references jobs,
  kind text not null check (kind in ('labour', 'part', 'kit', 'sublet', 'core charge', 'other')),
  description text not null check (description <> ''),
  quantity_hundredths integer not null check (quantity_hundredths > 0),
  unit_price_cents integer not null check (unit_price_cents >= 0 or kind in ('core charge', 'other')),
  unit_cost_cents integer check (unit_cost_cents >= 0),
  is_taxable integer not null check (is_taxable in (0, 1)),
  batch_id integer references batches check (batch_id is null or kind in ('part', 'kit')),
  added_at text not null,
  added_by integer not null references people
) strict;
CREATE TABLE job_line_ends (
  job_line_id integer primary key references job_lines,
  replaced_by_id integer unique references job_lines check (replaced_by_id > job_line_id),
  reason text not null,
  ended_at text not null,
  ended_by integer not null references people
) strict;
CREATE TABLE estimates (
  estimate_id integer primary key,
  job_id integer not null references jobs,
  number integer not null check (number > 0),
  what_was_found text not null,
  tax_label text not null,
  tax_per_hundred_thousand integer not null check (tax_per_hundred_thousand between 0 and 100000),
  taxable_cents integer not null,
  tax_cents integer not null,
  total_cents integer not null,
  deposited_cents integer not null check (deposited_cents >= 0),
  given_at text not null,
  given_by integer not null references people,
  unique (job_id, number)
) strict;
CREATE TABLE estimate_lines (
  estimate_id integer not null references estimates,
  position integer not null check (position > 0),
  job_line_id integer not null references job_lines,
  primary key (estimate_id, position),
  unique (estimate_id, job_line_id)
) strict, without rowid;
CREATE TABLE approvals (
  approval_id integer primary key,
  estimate_id integer not null references estimates,
  approved_by text not null check (approved_by <> ''),
  how text not null check (how in ('in person', 'phone', 'message')),
  up_to_cents integer not null check (up_to_cents >= 0),
  approved_on text not null check (approved_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  note text not null,
  recorded_at text not null,
  recorded_by integer not null references people
) strict;
CREATE TABLE deposits (
  deposit_id integer primary key,
  job_id integer not null references jobs,
  amount_cents integer not null check (amount_cents <> 0),
  how text not null check (how in ('cash', 'card', 'check', 'transfer', 'other')),
  note text not null,
  received_at text not null,
  received_by integer not null references people
) strict;
CREATE TABLE intakes (
  intake_id integer primary key,
  job_id integer not null references jobs,
  complaint text not null,
  codes text not null,
  fluid_level text not null check (fluid_level in ('not looked at', 'none on the stick', 'low', 'full', 'over full')),
  fluid_colour text not null
    check (fluid_colour in ('not looked at', 'clear red', 'dark red', 'brown', 'black', 'milky')),
  fluid_smell text not null check (fluid_smell in ('not looked at', 'none', 'sharp', 'burnt')),
  pan text not null,
  installed_by text not null,
  vehicle_changes text not null,
  written_at text not null,
  written_by integer not null references people
) strict;
CREATE TABLE promises (
  promise_id integer primary key,
  job_id integer not null references jobs,
  promised_on text not null check (promised_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  reason text not null,
  promised_at text not null,
  promised_by integer not null references people
) strict;
CREATE TABLE calls (
  call_id integer primary key,
  job_id integer not null references jobs,
  direction text not null check (direction in ('they called', 'we called')),
  with_whom text not null check (with_whom <> ''),
  said text not null check (said <> ''),
  logged_at text not null,
  logged_by integer not null references people
) strict;
CREATE TABLE sign_offs (
  sign_off_id integer primary key,
  job_id integer not null references jobs,
  place text not null check (place in ('on stand', 'in vehicle')),
  note text not null,
  signed_at text not null,
  signed_by integer not null references people
) strict;
CREATE TABLE jobs_in_stages (
  job_id integer primary key references jobs,
  stage_id integer not null references stages,
  stage_entry_id integer not null references stage_entries
) strict;
CREATE VIRTUAL TABLE job_words using fts5 (words, tokenize = 'trigram remove_diacritics 1');
CREATE TABLE photos (
  photo_id integer primary key,
  job_id integer not null references jobs,
  sha256 text not null check (length(sha256) = 64),
  small_sha256 text not null check (length(small_sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  caption text not null,
  check_id integer references checks,
  is_in_report integer not null check (is_in_report in (0, 1)),
  folder_name text,
  added_at text not null,
  added_by integer not null references people,
  removed_at text
) strict;
CREATE TABLE photo_folder (
  photo_folder_id integer primary key check (photo_folder_id = 1),
  folder text not null
) strict;
CREATE TABLE gauges (
  gauge_id integer primary key,
  kind text not null check (kind in
    ('dial plunger', 'dial lever', 'micrometer', 'depth gauge', 'feeler set', 'pressure gauge', 'torque wrench')),
  added_at text not null,
  added_by integer not null references people
) strict;
CREATE TABLE gauge_cards (
  gauge_card_id integer primary key,
  gauge_id integer not null references gauges,
  tag text not null check (tag <> ''),
  unit text not null,
  resolution_amount integer not null check (resolution_amount > 0),
  permitted_error_amount integer check (permitted_error_amount > 0),
  stated_in text not null,
  off_square_degrees integer not null check (off_square_degrees between 0 and 60),
  serial text not null,
  interval_days integer check (interval_days > 0),
  is_retired integer not null check (is_retired in (0, 1)),
  written_at text not null,
  written_by integer not null references people
) strict;
CREATE TABLE gauge_checks (
  gauge_check_id integer primary key,
  gauge_id integer not null references gauges,
  against text not null check (against in ('blocks', 'leaves', 'ring', 'another gauge')),
  checked_on text not null check (checked_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  permitted_error_amount integer check (permitted_error_amount > 0),
  note text not null,
  supersedes_id integer unique references gauge_checks,
  reason text not null,
  checked_at text not null,
  checked_by integer not null references people,
  check ((supersedes_id is null) = (reason = ''))
) strict;
CREATE TABLE gauge_check_points (
  gauge_check_id integer not null references gauge_checks,
  position integer not null check (position > 0),
  nominal_amount integer not null,
  read_amount integer not null,
  nominal_typed text not null check (nominal_typed <> ''),
  read_typed text not null check (read_typed <> ''),
  primary key (gauge_check_id, position)
) strict, without rowid;
CREATE TABLE take_gauges (
  take_id integer primary key references takes,
  gauge_id integer not null references gauges,
  permitted_error_amount integer check (permitted_error_amount > 0),
  off_square_degrees integer not null check (off_square_degrees between 0 and 60)
) strict;
CREATE TABLE studies (
  study_id integer primary key,
  name text not null check (name <> ''),
  method text not null check (method in ('air', 'dial', 'direct')),
  gauge_id integer references gauges,
  trials integer not null check (trials between 2 and 10),
  tolerance_nm integer check (tolerance_nm > 0),
  seed integer not null,
  started_at text not null,
  started_by integer not null references people
) strict;
CREATE TABLE study_parts (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  name text not null check (name <> ''),
  primary key (study_id, position),
  unique (study_id, name)
) strict, without rowid;
CREATE TABLE study_people (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  person_id integer not null references people,
  primary key (study_id, position),
  unique (study_id, person_id)
) strict, without rowid;
CREATE TABLE study_reads (
  study_read_id integer primary key,
  study_id integer not null references studies,
  place integer not null check (place > 0),
  typed text not null check (typed <> ''),
  amount_nm integer not null,
  supersedes_id integer unique references study_reads,
  reason text not null,
  taken_at text not null,
  taken_by integer not null references people,
  check ((supersedes_id is null) = (reason = ''))
) strict;
CREATE TABLE method_pairs (
  method_pair_id integer primary key,
  what text not null check (what <> ''),
  first_method text not null check (first_method in ('air', 'feeler', 'dial', 'direct')),
  second_method text not null check (second_method in ('air', 'feeler', 'dial', 'direct')),
  first_nm integer not null,
  second_nm integer not null,
  first_typed text not null check (first_typed <> ''),
  second_typed text not null check (second_typed <> ''),
  supersedes_id integer unique references method_pairs,
  reason text not null,
  paired_at text not null,
  paired_by integer not null references people,
  check (first_method <> second_method),
  check ((supersedes_id is null) = (reason = ''))
) strict;
CREATE TABLE gauge_lines (
  gauge_line_id integer primary key,
  name text not null check (name <> ''),
  source text not null check (source in ('serial', 'practice')),
  path text,
  baud_rate integer check (baud_rate > 0),
  data_bits integer check (data_bits in (7, 8)),
  parity text check (parity in ('none', 'even', 'odd')),
  stop_bits integer check (stop_bits in (1, 2)),
  request text,
  practice text check (practice in ('steady', 'noisy', 'drifts', 'bounces', 'will not hold')),
  pattern text not null check (pattern <> ''),
  unit text not null check (unit in ('mm', 'in')),
  is_reversed integer not null check (is_reversed in (0, 1)),
  step_nm integer not null check (step_nm > 0),
  still_within_steps integer not null check (still_within_steps > 0),
  still_for_ms integer not null check (still_for_ms > 0),
  every_ms integer not null check (every_ms > 0),
  is_retired integer not null check (is_retired in (0, 1)),
  check ((source = 'serial') = (path is not null and baud_rate is not null and data_bits is not null
    and parity is not null and stop_bits is not null and request is not null)),
  check ((source = 'practice') = (practice is not null))
) strict;
CREATE TABLE reading_traces (
  reading_id integer primary key references readings,
  line_name text not null check (line_name <> ''),
  is_practice integer not null check (is_practice in (0, 1)),
  samples blob not null check (length(samples) > 0),
  heard integer not null check (heard > 0),
  rest_nm integer,
  pressed_nm integer,
  air_nm integer
) strict;
CREATE TABLE lists (
  list_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  pack_id integer references packs,
  name text not null check (name <> ''),
  gone_through text not null check (gone_through in ('as found', 'teardown', 'build', 'final', 'delivery')),
  source_note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict;
CREATE TABLE list_lines (
  list_line_id integer primary key,
  list_id integer not null references lists,
  position integer not null,
  words text not null check (words <> ''),
  asks text not null check (asks in ('tick', 'count', 'choice', 'words', 'change', 'stall')),
  expected_count integer check (expected_count >= 0) check ((expected_count is not null) = (asks = 'count')),
  low_rpm integer check ((low_rpm is not null) = (asks = 'stall')),
  high_rpm integer check ((high_rpm is not null) = (asks = 'stall')),
  longest_seconds integer check (longest_seconds > 0) check ((longest_seconds is not null) = (asks = 'stall')),
  check (low_rpm is null or low_rpm < high_rpm),
  unique (list_id, position),
  unique (list_id, words)
) strict;
CREATE TABLE list_line_options (
  list_line_id integer not null references list_lines,
  position integer not null,
  words text not null check (words <> ''),
  is_good integer not null check (is_good in (0, 1)),
  primary key (list_line_id, position),
  unique (list_line_id, words)
) strict, without rowid;
CREATE TABLE list_answers (
  list_answer_id integer primary key,
  job_id integer not null references jobs,
  list_line_id integer not null references list_lines,
  says text not null check (says in
    ('done', 'not so', 'does not apply', 'counted', 'chosen', 'written', 'changed', 'stalled')),
  words text not null check ((words <> '') = (says in ('chosen', 'written', 'changed'))),
  became text not null check ((became <> '') = (says = 'changed')),
  number integer check (number >= 0) check ((number is not null) = (says in ('counted', 'stalled'))),
  seconds integer check (seconds > 0) check ((seconds is not null) = (says = 'stalled')),
  reason text not null,
  answered_at text not null,
  answered_by integer not null references people
) strict;
CREATE TABLE stage_needs (
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  primary key (stage_id, need)
) strict, without rowid;
CREATE TABLE needs_passed_over (
  stage_entry_id integer not null references stage_entries,
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  what text not null check (what <> ''),
  reason text not null check (reason <> ''),
  primary key (stage_entry_id, stage_id, need)
) strict, without rowid;
CREATE TABLE findings (
  finding_id integer primary key,
  job_id integer not null references jobs
) strict;
CREATE TABLE finding_cards (
  finding_card_id integer primary key,
  finding_id integer not null references findings,
  part text not null check (part <> ''),
  pack_id integer references packs,
  slot_id integer references slots,
  place text check (place in ('piston end', 'middle', 'ring end')),
  condition text not null check (condition in ('good', 'worn', 'burnt', 'glazed', 'flaked', 'warped', 'heat-spotted',
    'scored', 'cracked', 'loose', 'stuck', 'leaking', 'broken', 'missing')),
  thickness_nm integer check (thickness_nm > 0),
  thickness_typed text not null check ((thickness_typed = '') = (thickness_nm is null)),
  check_id integer references checks,
  note text not null,
  is_withdrawn integer not null check (is_withdrawn in (0, 1)),
  reason text not null check (is_withdrawn = 0 or reason <> ''),
  written_at text not null,
  written_by integer not null references people,
  check (pack_id is not null or (slot_id is null and place is null)),
  check (slot_id is null or place is not null)
) strict;
CREATE TABLE finding_decisions (
  finding_decision_id integer primary key,
  finding_id integer not null references findings,
  decision text not null check (decision in ('not decided yet', 'reuse', 'replace', 'machine')),
  note text not null,
  decided_at text not null,
  decided_by integer not null references people
) strict;
CREATE TABLE finding_photos (
  finding_photo_id integer primary key,
  finding_id integer not null references findings,
  photo_id integer not null references photos,
  is_pinned integer not null check (is_pinned in (0, 1)),
  pinned_at text not null,
  pinned_by integer not null references people
) strict;
CREATE TABLE finding_lines (
  finding_id integer not null references findings,
  job_line_id integer not null references job_lines,
  linked_at text not null,
  linked_by integer not null references people,
  primary key (finding_id, job_line_id)
) strict, without rowid;
CREATE TABLE deliveries (
  delivery_id integer primary key,
  job_id integer not null references jobs,
  delivered_to text not null check ((delivered_to = '') = (delivered_on is null)),
  delivered_on text check (delivered_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  handed_over_by integer not null references people,
  reason text not null check (reason <> '' or delivered_on is not null),
  recorded_at text not null,
  recorded_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;
CREATE TABLE warranties (
  warranty_id integer primary key,
  job_id integer not null references jobs,
  in_service_on text check (in_service_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  months integer check (months > 0),
  distance_amount integer check (distance_amount > 0),
  distance_unit text check (distance_unit in ('miles', 'km')),
  passes integer check (passes > 0),
  reason text not null,
  set_at text not null,
  set_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;
CREATE TABLE small_jobs (
  small_job_id integer primary key,
  family_id integer not null references families,
  name text not null check (name <> ''),
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, name)
) strict;
CREATE TABLE small_job_stages (
  small_job_id integer not null references small_jobs on delete cascade,
  stage_id integer not null references stages,
  primary key (small_job_id, stage_id)
) strict, without rowid;
CREATE TABLE small_job_parts (
  small_job_id integer not null references small_jobs on delete cascade,
  kind text not null check (kind in ('check', 'list')),
  name text not null check (name <> ''),
  primary key (small_job_id, kind, name)
) strict, without rowid;
CREATE TABLE job_extents (
  job_id integer primary key references jobs,
  name text not null check (name <> '')
) strict;
CREATE TABLE job_extent_stages (
  job_id integer not null references job_extents,
  stage_id integer not null references stages,
  primary key (job_id, stage_id)
) strict, without rowid;
CREATE TABLE job_extent_parts (
  job_id integer not null references job_extents,
  kind text not null check (kind in ('check', 'list')),
  name text not null check (name <> ''),
  primary key (job_id, kind, name)
) strict, without rowid;
CREATE TABLE jobs_widened (
  job_id integer primary key references job_extents,
  reason text not null check (reason <> ''),
  widened_at text not null,
  widened_by integer not null references people
) strict;
CREATE TABLE pictures (
  picture_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  title text not null check (title <> ''),
  sha256 text not null check (length(sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  unique (revision_id, position),
  unique (revision_id, title)
) strict;
CREATE TABLE picture_points (
  picture_id integer not null references pictures,
  position integer not null,
  label text not null check (label <> ''),
  note text not null,
  x_permille integer not null check (x_permille between 0 and 1000),
  y_permille integer not null check (y_permille between 0 and 1000),
  check_id integer references checks,
  list_line_id integer references list_lines,
  check (check_id is null or list_line_id is null),
  primary key (picture_id, position),
  unique (picture_id, label)
) strict, without rowid;
CREATE TABLE clutch_figures (
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
) strict;
CREATE TABLE clutch_loads (
  clutch_load_id integer primary key,
  job_id integer not null references jobs,
  engine_torque_mnm integer not null check (engine_torque_mnm > 0),
  converter_ratio_millionths integer not null check (converter_ratio_millionths > 0),
  reason text not null,
  stated_at text not null,
  stated_by integer not null references people
) strict;
CREATE TABLE comebacks (
  comeback_id integer primary key,
  job_id integer not null references jobs,
  built_job_id integer not null references jobs,
  logged_at text not null,
  logged_by integer not null references people,
  check (job_id <> built_job_id)
) strict;
CREATE TABLE comeback_cards (
  comeback_card_id integer primary key,
  comeback_id integer not null references comebacks,
  came_back_on text not null check (came_back_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  customer_says text not null,
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  outcome text not null check (outcome in ('not known yet', 'ours', 'not our part', 'no fault found', 'logged by mistake')),
  covered text not null check (covered in ('not decided yet', 'in warranty', 'out of goodwill', 'not covered')),
  covered_note text not null,
  cost_cents integer check (cost_cents >= 0),
  note text not null,
  reason text not null,
  written_at text not null,
  written_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict;
CREATE TABLE comeback_causes (
  comeback_cause_id integer primary key,
  comeback_id integer not null references comebacks,
  cause text not null check (cause <> ''),
  pack_id integer references packs,
  certainty text not null check (certainty in ('known', 'suspected', 'not found', 'taken back')),
  note text not null,
  written_at text not null,
  written_by integer not null references people
) strict;
CREATE TABLE units_to_call (
  unit_to_call_id integer primary key,
  job_id integer not null references jobs,
  shares text not null check (shares in ('batch', 'plate', 'gauge', 'finding', 'other')),
  what text not null check (what <> ''),
  what_to_check text not null,
  reason text not null check (reason <> ''),
  added_at text not null,
  added_by integer not null references people
) strict;
CREATE TABLE units_called (
  unit_called_id integer primary key,
  unit_to_call_id integer not null references units_to_call,
  came_of_it text not null check (came_of_it in ('reached', 'not reached', 'comes in', 'looked at', 'taken off')),
  note text not null,
  called_at text not null,
  called_by integer not null references people
) strict;
CREATE TABLE as_built (
  job_id integer primary key references jobs,
  reckoning integer not null,
  builder integer references people
) strict;
CREATE TABLE as_built_checks (
  job_id integer not null references as_built on delete cascade,
  check_id integer not null references checks,
  take_id integer not null references takes,
  amount real,
  lowest real,
  highest real,
  expanded real,
  verdict text not null check (verdict in ('in', 'tight', 'loose', 'too close to call', 'not judged')),
  outside_by real,
  primary key (job_id, check_id)
) strict, without rowid;
CREATE TABLE as_built_packs (
  job_id integer not null references as_built on delete cascade,
  pack_id integer not null references packs,
  mock_ups integer not null check (mock_ups >= 0),
  reused_plates integer not null check (reused_plates >= 0),
  primary key (job_id, pack_id)
) strict, without rowid;
CREATE TABLE line_gauges (
  gauge_line_id integer primary key references gauge_lines,
  gauge_id integer not null references gauges
) strict;
insert into "kysely_migration" values
  ('0001-one-unit', '2026-12-01T07:23:45.389Z'),
  ('0002-what-a-take-leans-on', '2026-12-01T07:23:45.397Z'),
  ('0003-stock', '2026-12-01T07:23:45.405Z'),
  ('0004-estimates', '2026-12-01T07:23:45.406Z'),
  ('0005-door-to-door', '2026-12-01T07:23:45.413Z'),
  ('0006-photos', '2026-12-01T07:23:45.414Z'),
  ('0007-gauges', '2026-12-01T07:23:45.416Z'),
  ('0008-gauge-lines', '2026-12-01T07:23:45.417Z'),
  ('0009-lists', '2026-12-01T07:23:45.427Z'),
  ('0010-findings', '2026-12-01T07:23:45.432Z'),
  ('0011-delivery', '2026-12-01T07:23:45.441Z'),
  ('0012-pictures', '2026-12-01T07:23:45.442Z'),
  ('0013-clutch-figures', '2026-12-01T07:23:45.443Z'),
  ('0014-comebacks', '2026-12-01T07:23:45.444Z'),
  ('0015-gauge-of-a-line', '2026-12-01T07:23:45.445Z'),
  ('0016-looked-up', '2026-12-01T12:37:55.736Z');
insert into "kysely_migration_lock" values
  ('migration_lock', 0);
insert into "people" values
  (1, 'RA', 'Rosa Aldane', NULL),
  (2, 'JH', 'Jonas Hale', NULL),
  (3, 'MT', 'Mira Tolland', '2031-03-03T09:15:00.000Z');
insert into "settings" values
  (1, 1, 'Harrow Lane Transmission', 'thou', '.', 'letter', '', 25400, 50800, 101600, 17780, 12700, 2540, 50, 25400, 25400, 25400, 25400, 5080, 'guarded', 12, 12000, 'miles', NULL);
insert into "customers" values
  (1, 'Tam Okoro', '555 0117', '', ''),
  (2, 'Ilse Brandvold', '555 0144', '', ''),
  (3, 'Edda Rastall', '555 0205', '', ''),
  (4, 'Inge Gantry', '555 0206', '', ''),
  (5, 'Gita Quillan', '555 0207', '', ''),
  (6, 'Customer 465401409', '555 0117', '', ''),
  (7, 'Customer 793508246', '555 0117', '', ''),
  (8, 'Customer 227032516', '555 0117', '', ''),
  (9, 'Customer 658331928', '555 0117', '', ''),
  (10, 'Customer 613221712', '555 0117', '', ''),
  (11, 'Customer 290194112', '555 0117', '', ''),
  (12, 'Customer 555515750', '555 0117', '', ''),
  (13, 'Customer 365915661', '555 0117', '', ''),
  (14, 'Customer 673989342', '555 0117', '', ''),
  (15, 'Customer 890317241', '555 0117', '', ''),
  (16, 'Customer 513899161', '555 0117', '', ''),
  (17, 'Customer 269776637', '555 0117', '', ''),
  (18, 'Customer 576553682', '555 0117', '', ''),
  (19, 'Customer 105794832', '555 0117', '', ''),
  (20, 'Customer 774494749', '555 0117', '', ''),
  (21, 'Customer 761040910', '555 0117', '', ''),
  (22, 'Customer 567778482', '555 0117', '', '');
insert into "families" values
  (1, 'KX3');
insert into "units" values
  (1, 1, 'KX3-19-2214', 'half-ton pickup', 'tow'),
  (2, 1, 'KX3-20-0417', 'delivery van', 'street'),
  (3, 1, 'KX3-28-0001', 'estate car', 'street'),
  (4, 1, 'KX3-29-0002', 'estate car', 'street'),
  (5, 1, 'KX3-31-0003', 'sedan', 'street'),
  (6, 1, 'KX3-465401409', '', 'tow'),
  (7, 1, 'KX3-793508246', '', 'tow'),
  (8, 1, 'KX3-227032516', '', 'tow'),
  (9, 1, 'KX3-658331928', '', 'tow'),
  (10, 1, 'KX3-613221712', '', 'tow'),
  (11, 1, 'KX3-290194112', '', 'tow'),
  (12, 1, 'KX3-555515750', '', 'tow'),
  (13, 1, 'KX3-365915661', '', 'tow'),
  (14, 1, 'KX3-673989342', '', 'tow'),
  (15, 1, 'KX3-890317241', '', 'tow'),
  (16, 1, 'KX3-513899161', '', 'tow'),
  (17, 1, 'KX3-269776637', '', 'tow'),
  (18, 1, 'KX3-576553682', '', 'tow'),
  (19, 1, 'KX3-105794832', '', 'tow'),
  (20, 1, 'KX3-774494749', '', 'tow'),
  (21, 1, 'KX3-761040910', '', 'tow'),
  (22, 1, 'KX3-567778482', '', 'tow');
insert into "revisions" values
  (1, 1, 1, 'invented, for the demo', '2031-03-03T08:01:20.000Z', 1);
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
  (1, 1, 1, 1, 1, '1', 118400, 'miles', '2031-03-03T08:06:00.000Z', 1),
  (2, 2, 2, 2, 1, '2', 91250, 'miles', '2031-03-03T09:14:00.000Z', 1),
  (3, 3, 3, 3, 1, '', 51000, 'miles', '2028-06-30T14:00:00.000Z', 1),
  (4, 4, 4, 4, 1, '', 115000, 'miles', '2029-07-17T14:00:00.000Z', 1),
  (5, 5, 5, 5, 1, '', 111000, 'miles', '2031-01-10T14:00:00.000Z', 1),
  (6, 6, 6, 6, 1, '', 118400, 'miles', '2026-12-01T07:26:38.345Z', 1),
  (7, 7, 7, 7, 1, '', 118400, 'miles', '2026-12-01T07:26:38.379Z', 1),
  (8, 8, 8, 8, 1, '', 118400, 'miles', '2026-12-01T07:26:38.804Z', 1),
  (9, 9, 9, 9, 1, '', 118400, 'miles', '2026-12-01T07:26:38.848Z', 1),
  (10, 10, 10, 10, 1, '', 118400, 'miles', '2026-12-01T07:26:38.973Z', 1),
  (11, 11, 7, 7, 1, '', 118400, 'miles', '2026-12-01T07:26:39.156Z', 1),
  (12, 12, 11, 11, 1, '', 118400, 'miles', '2026-12-01T07:26:39.550Z', 1),
  (13, 13, 10, 10, 1, '', 118400, 'miles', '2026-12-01T07:26:39.574Z', 1),
  (14, 14, 12, 12, 1, '', 118400, 'miles', '2026-12-01T07:26:39.622Z', 1),
  (15, 15, 13, 13, 1, '', 118400, 'miles', '2026-12-01T07:26:39.812Z', 1),
  (16, 16, 14, 14, 1, '', 118400, 'miles', '2026-12-01T07:26:39.940Z', 1),
  (17, 17, 15, 15, 1, '', 118400, 'miles', '2026-12-01T07:26:39.988Z', 1),
  (18, 18, 16, 16, 1, '', 118400, 'miles', '2026-12-01T07:26:40.000Z', 1),
  (19, 19, 8, 8, 1, '', 118400, 'miles', '2026-12-01T07:26:40.118Z', 1),
  (20, 20, 17, 17, 1, '', 118400, 'miles', '2026-12-01T07:26:40.388Z', 1),
  (21, 21, 18, 18, 1, '', 118400, 'miles', '2026-12-01T07:26:40.656Z', 1),
  (22, 22, 19, 19, 1, '', 118400, 'miles', '2026-12-01T07:26:40.689Z', 1),
  (23, 23, 10, 10, 1, '', 118400, 'miles', '2026-12-01T07:26:40.757Z', 1),
  (24, 24, 20, 20, 1, '', 118400, 'miles', '2026-12-01T07:26:40.868Z', 1),
  (25, 25, 21, 21, 1, '', 118400, 'miles', '2026-12-01T07:26:40.941Z', 1),
  (26, 26, 22, 22, 1, '', 118400, 'miles', '2026-12-01T07:26:41.022Z', 1),
  (27, 27, 11, 11, 1, '', 118400, 'miles', '2026-12-01T07:26:41.355Z', 1),
  (28, 28, 7, 7, 1, '', 118400, 'miles', '2026-12-01T07:26:41.452Z', 1),
  (29, 29, 10, 10, 1, '', 118400, 'miles', '2026-12-01T07:26:41.749Z', 1),
  (30, 30, 18, 18, 1, '', 118400, 'miles', '2026-12-01T07:26:41.836Z', 1);
insert into "stage_entries" values
  (1, 1, 1, '2031-03-03T08:06:00.000Z', 1),
  (2, 1, 2, '2031-03-03T08:06:20.000Z', 1),
  (3, 1, 3, '2031-03-03T08:13:40.000Z', 1),
  (4, 2, 1, '2031-03-03T09:14:00.000Z', 1),
  (5, 3, 1, '2028-06-30T14:00:00.000Z', 1),
  (6, 3, 3, '2028-07-01T14:00:00.000Z', 3),
  (7, 3, 5, '2028-07-03T12:00:00.000Z', 3),
  (8, 3, 9, '2028-07-06T14:00:00.000Z', 1),
  (9, 4, 1, '2029-07-17T14:00:00.000Z', 1),
  (10, 4, 3, '2029-07-18T14:00:00.000Z', 2),
  (11, 4, 5, '2029-07-20T12:00:00.000Z', 2),
  (12, 4, 9, '2029-07-23T14:00:00.000Z', 1),
  (13, 5, 1, '2031-01-10T14:00:00.000Z', 1),
  (14, 5, 3, '2031-01-11T14:00:00.000Z', 1),
  (15, 5, 5, '2031-01-13T12:00:00.000Z', 1),
  (16, 5, 9, '2031-01-17T14:00:00.000Z', 1),
  (17, 6, 1, '2026-12-01T07:26:38.345Z', 1),
  (18, 7, 1, '2026-12-01T07:26:38.379Z', 1),
  (19, 8, 1, '2026-12-01T07:26:38.804Z', 1),
  (20, 9, 1, '2026-12-01T07:26:38.848Z', 1),
  (21, 10, 1, '2026-12-01T07:26:38.973Z', 1),
  (22, 11, 1, '2026-12-01T07:26:39.156Z', 1),
  (23, 12, 1, '2026-12-01T07:26:39.550Z', 1),
  (24, 13, 1, '2026-12-01T07:26:39.574Z', 1),
  (25, 14, 1, '2026-12-01T07:26:39.622Z', 1),
  (26, 15, 1, '2026-12-01T07:26:39.812Z', 1),
  (27, 16, 1, '2026-12-01T07:26:39.940Z', 1),
  (28, 17, 1, '2026-12-01T07:26:39.988Z', 1),
  (29, 18, 1, '2026-12-01T07:26:40.000Z', 1),
  (30, 19, 1, '2026-12-01T07:26:40.118Z', 1),
  (31, 20, 1, '2026-12-01T07:26:40.388Z', 1),
  (32, 21, 1, '2026-12-01T07:26:40.656Z', 1),
  (33, 22, 1, '2026-12-01T07:26:40.689Z', 1),
  (34, 23, 1, '2026-12-01T07:26:40.757Z', 1),
  (35, 24, 1, '2026-12-01T07:26:40.868Z', 1),
  (36, 25, 1, '2026-12-01T07:26:40.941Z', 1),
  (37, 26, 1, '2026-12-01T07:26:41.022Z', 1),
  (38, 27, 1, '2026-12-01T07:26:41.355Z', 1),
  (39, 28, 1, '2026-12-01T07:26:41.452Z', 1),
  (40, 29, 1, '2026-12-01T07:26:41.749Z', 1),
  (41, 30, 1, '2026-12-01T07:26:41.836Z', 1);
insert into "overrides" values
  (1, 1, 1, 'as the customer wants it', '2031-03-04T09:03:00.000Z', 1),
  (2, 1, 4, 'as the customer wants it', '2026-12-01T07:26:38.486Z', 1),
  (3, 7, 4, 'as the customer wants it', '2026-12-01T07:26:38.761Z', 1),
  (4, 10, 4, 'as the customer wants it', '2026-12-01T07:26:39.035Z', 1),
  (5, 2, 4, 'as the customer wants it', '2026-12-01T07:26:39.350Z', 1),
  (6, 12, 4, 'as the customer wants it', '2026-12-01T07:26:39.649Z', 1),
  (7, 9, 4, 'as the customer wants it', '2026-12-01T07:26:40.597Z', 1),
  (8, 23, 4, 'as the customer wants it', '2026-12-01T07:26:40.807Z', 1),
  (9, 15, 4, 'as the customer wants it', '2026-12-01T07:26:40.930Z', 1),
  (10, 6, 4, 'as the customer wants it', '2026-12-01T07:26:41.088Z', 1),
  (11, 24, 4, 'as the customer wants it', '2026-12-01T07:26:41.334Z', 1);
insert into "pieces" values
  (1, 'steel', 'KX3 forward', 'A41', NULL, '2031-03-03T08:02:00.000Z', 1, NULL),
  (2, 'steel', 'KX3 forward', 'A42', NULL, '2031-03-03T08:02:20.000Z', 1, NULL),
  (3, 'steel', 'KX3 forward', 'A43', NULL, '2031-03-03T08:02:40.000Z', 1, NULL),
  (4, 'steel', 'KX3 forward', 'A44', NULL, '2031-03-03T08:03:00.000Z', 1, NULL),
  (5, 'steel', 'KX3 forward', 'A45', NULL, '2031-03-03T08:03:20.000Z', 1, NULL),
  (6, 'steel', 'KX3 forward', 'A47', NULL, '2031-03-03T08:03:40.000Z', 1, NULL),
  (7, 'steel', 'KX3 direct', 'B21', NULL, '2031-03-03T08:04:00.000Z', 1, NULL),
  (8, 'steel', 'KX3 direct', 'B22', NULL, '2031-03-03T08:04:20.000Z', 1, NULL),
  (9, 'steel', 'KX3 direct', 'B23', NULL, '2031-03-03T08:04:40.000Z', 1, NULL),
  (10, 'steel', 'KX3 direct', 'B24', NULL, '2031-03-03T08:05:00.000Z', 1, NULL),
  (11, 'steel', 'KX3 direct', 'B25', NULL, '2031-03-03T08:05:20.000Z', 1, NULL),
  (12, 'steel', 'KX3 forward', 'A31', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (13, 'friction', '', '', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (14, 'steel', 'KX3 forward', 'A32', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (15, 'friction', '', '', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (16, 'steel', 'KX3 forward', 'A33', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (17, 'friction', '', '', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (18, 'steel', 'KX3 forward', 'A34', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (19, 'friction', '', '', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (20, 'backing plate', '', '', NULL, '2031-03-03T08:12:40.000Z', 1, NULL),
  (21, 'steel', 'KX3 direct', 'B11', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (22, 'friction', '', '', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (23, 'steel', 'KX3 direct', 'B12', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (24, 'friction', '', '', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (25, 'steel', 'KX3 direct', 'B13', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (26, 'friction', '', '', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (27, 'steel', 'KX3 direct', 'B14', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (28, 'friction', '', '', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (29, 'backing plate', '', '', NULL, '2031-03-03T08:13:00.000Z', 1, NULL),
  (30, 'wave plate', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (31, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (32, 'friction', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (33, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (34, 'friction', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (35, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (36, 'friction', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (37, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (38, 'friction', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (39, 'steel', 'KX3 low/reverse', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (40, 'friction', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (41, 'backing plate', '', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (42, 'snap ring', 'KX3 low/reverse ring', '', NULL, '2031-03-03T08:13:20.000Z', 1, NULL),
  (43, 'steel', 'KX3 low/reverse', 'R01', NULL, '2031-03-03T08:21:40.000Z', 1, NULL),
  (44, 'steel', 'KX3 low/reverse', 'R02', NULL, '2031-03-03T08:22:00.000Z', 1, NULL),
  (45, 'steel', 'KX3 low/reverse', 'R03', NULL, '2031-03-03T08:22:20.000Z', 1, NULL),
  (46, 'steel', 'KX3 low/reverse', 'R04', NULL, '2031-03-03T08:22:40.000Z', 1, NULL),
  (47, 'steel', 'KX3 low/reverse', 'R05', NULL, '2031-03-03T08:23:00.000Z', 1, NULL),
  (48, 'steel', 'KX3 low/reverse', 'R06', NULL, '2031-03-03T08:23:20.000Z', 1, NULL),
  (49, 'steel', 'KX3 low/reverse', 'R07', NULL, '2031-03-03T08:23:40.000Z', 1, NULL),
  (50, 'steel', 'KX3 low/reverse', 'R08', NULL, '2031-03-03T08:24:00.000Z', 1, NULL),
  (51, 'steel', 'KX3 low/reverse', 'R09', NULL, '2031-03-03T08:24:20.000Z', 1, NULL),
  (52, 'steel', 'KX3 low/reverse', 'R10', NULL, '2031-03-03T08:24:40.000Z', 1, NULL),
  (53, 'steel', 'KX3 low/reverse', 'R11', NULL, '2031-03-03T08:25:00.000Z', 1, NULL),
  (54, 'steel', 'KX3 low/reverse', 'R12', NULL, '2031-03-03T08:25:20.000Z', 1, NULL),
  (55, 'steel', 'KX3 low/reverse', 'R13', NULL, '2031-03-03T08:25:40.000Z', 1, NULL),
  (56, 'steel', 'KX3 low/reverse', 'R14', NULL, '2031-03-03T08:26:00.000Z', 1, NULL),
  (57, 'steel', 'KX3 low/reverse', 'R15', NULL, '2031-03-03T08:26:20.000Z', 1, NULL),
  (58, 'steel', 'KX3 low/reverse', 'R16', NULL, '2031-03-03T08:26:40.000Z', 1, NULL),
  (59, 'steel', 'KX3 low/reverse', 'R17', NULL, '2031-03-03T08:27:00.000Z', 1, NULL),
  (60, 'steel', 'KX3 low/reverse', 'R18', NULL, '2031-03-03T08:27:20.000Z', 1, NULL),
  (61, 'steel', 'KX3 low/reverse', 'R19', NULL, '2031-03-03T08:27:40.000Z', 1, NULL),
  (62, 'steel', 'KX3 low/reverse', 'R20', NULL, '2031-03-03T08:28:00.000Z', 1, NULL),
  (63, 'steel', 'KX3 low/reverse', 'R21', NULL, '2031-03-03T08:28:20.000Z', 1, NULL),
  (64, 'steel', 'KX3 low/reverse', 'R22', NULL, '2031-03-03T08:28:40.000Z', 1, NULL),
  (65, 'steel', 'KX3 low/reverse', 'R23', NULL, '2031-03-03T08:29:00.000Z', 1, NULL),
  (66, 'steel', 'KX3 low/reverse', 'R24', NULL, '2031-03-03T08:29:20.000Z', 1, NULL),
  (67, 'steel', 'KX3 low/reverse', 'R25', NULL, '2031-03-03T08:29:40.000Z', 1, NULL),
  (68, 'steel', 'KX3 low/reverse', 'R26', NULL, '2031-03-03T08:30:00.000Z', 1, NULL),
  (69, 'steel', 'KX3 low/reverse', 'R27', NULL, '2031-03-03T08:30:20.000Z', 1, NULL),
  (70, 'steel', 'KX3 low/reverse', 'R28', NULL, '2031-03-03T08:30:40.000Z', 1, NULL),
  (71, 'steel', 'KX3 low/reverse', 'R29', NULL, '2031-03-03T08:31:00.000Z', 1, NULL),
  (72, 'steel', 'KX3 low/reverse', 'R30', NULL, '2031-03-03T08:31:20.000Z', 1, NULL),
  (73, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (74, 'friction', '', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (75, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (76, 'friction', '', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (77, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (78, 'friction', '', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (79, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (80, 'friction', '', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (81, 'backing plate', '', '', NULL, '2026-12-01T07:26:38.273Z', 1, NULL),
  (82, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (83, 'friction', '', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (84, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (85, 'friction', '', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (86, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (87, 'friction', '', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (88, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (89, 'friction', '', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (90, 'backing plate', '', '', NULL, '2026-12-01T07:26:38.726Z', 1, NULL),
  (91, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (92, 'friction', '', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (93, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (94, 'friction', '', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (95, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (96, 'friction', '', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (97, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (98, 'friction', '', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (99, 'backing plate', '', '', NULL, '2026-12-01T07:26:39.508Z', 1, NULL),
  (100, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (101, 'friction', '', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (102, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (103, 'friction', '', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (104, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (105, 'friction', '', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (106, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (107, 'friction', '', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (108, 'backing plate', '', '', NULL, '2026-12-01T07:26:40.443Z', 1, NULL),
  (109, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (110, 'friction', '', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (111, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (112, 'friction', '', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (113, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (114, 'friction', '', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (115, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (116, 'friction', '', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (117, 'backing plate', '', '', NULL, '2026-12-01T07:26:40.894Z', 1, NULL),
  (118, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (119, 'friction', '', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (120, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (121, 'friction', '', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (122, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (123, 'friction', '', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (124, 'steel', 'KX3 forward', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (125, 'friction', '', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL),
  (126, 'backing plate', '', '', NULL, '2026-12-01T07:26:41.127Z', 1, NULL);
insert into "piece_heights" values
  (1, 1, 1879600, 'measured', '74.0', '', '2031-03-03T08:02:00.000Z', 1, '', 5080),
  (2, 2, 1917700, 'measured', '75.5', '', '2031-03-03T08:02:20.000Z', 1, '', 5080),
  (3, 3, 1993900, 'measured', '78.5', '', '2031-03-03T08:02:40.000Z', 1, '', 5080),
  (4, 4, 2019300, 'measured', '79.5', '', '2031-03-03T08:03:00.000Z', 1, '', 5080),
  (5, 5, 2044700, 'measured', '80.5', '', '2031-03-03T08:03:20.000Z', 1, '', 5080),
  (6, 6, 2108200, 'measured', '83.0', '', '2031-03-03T08:03:40.000Z', 1, '', 5080),
  (7, 7, 2133600, 'measured', '84.0', '', '2031-03-03T08:04:00.000Z', 1, '', 5080),
  (8, 8, 2209800, 'measured', '87.0', '', '2031-03-03T08:04:20.000Z', 1, '', 5080),
  (9, 9, 2273300, 'measured', '89.5', '', '2031-03-03T08:04:40.000Z', 1, '', 5080),
  (10, 10, 2286000, 'measured', '90.0', '', '2031-03-03T08:05:00.000Z', 1, '', 5080),
  (11, 11, 2362200, 'measured', '93.0', '', '2031-03-03T08:05:20.000Z', 1, '', 5080),
  (12, 12, 1955800, 'measured', '77.0', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (13, 13, 2019300, 'measured', '79.5', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (14, 14, 1943100, 'measured', '76.5', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (15, 15, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (16, 16, 1981200, 'measured', '78.0', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (17, 17, 2032000, 'measured', '80.0', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (18, 18, 1968500, 'measured', '77.5', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (19, 19, 2044700, 'measured', '80.5', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (20, 20, 6350000, 'measured', '250.0', '', '2031-03-03T08:12:40.000Z', 1, '', 5080),
  (21, 21, 2336800, 'measured', '92.0', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (22, 22, 2133600, 'measured', '84.0', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (23, 23, 2311400, 'measured', '91.0', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (24, 24, 2146300, 'measured', '84.5', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (25, 25, 2349500, 'measured', '92.5', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (26, 26, 2133600, 'measured', '84.0', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (27, 27, 2324100, 'measured', '91.5', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (28, 28, 2146300, 'measured', '84.5', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (29, 29, 7874000, 'measured', '310.0', '', '2031-03-03T08:13:00.000Z', 1, '', 5080),
  (30, 30, 2159000, 'measured', '85.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (31, 31, 1778000, 'measured', '70.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (32, 32, 2032000, 'measured', '80.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (33, 33, 1790700, 'measured', '70.5', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (34, 34, 2032000, 'measured', '80.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (35, 35, 1765300, 'measured', '69.5', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (36, 36, 2032000, 'measured', '80.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (37, 37, 1778000, 'measured', '70.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (38, 38, 2032000, 'measured', '80.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (39, 39, 1778000, 'measured', '70.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (40, 40, 2032000, 'measured', '80.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (41, 41, 5080000, 'measured', '200.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (42, 42, 1879600, 'measured', '74.0', '', '2031-03-03T08:13:20.000Z', 1, '', 5080),
  (43, 43, 1778000, 'measured', '70.0', '', '2031-03-03T08:21:40.000Z', 1, '', 5080),
  (44, 44, 1689100, 'measured', '66.5', '', '2031-03-03T08:22:00.000Z', 1, '', 5080),
  (45, 45, 1828800, 'measured', '72.0', '', '2031-03-03T08:22:20.000Z', 1, '', 5080),
  (46, 46, 1739900, 'measured', '68.5', '', '2031-03-03T08:22:40.000Z', 1, '', 5080),
  (47, 47, 1892300, 'measured', '74.5', '', '2031-03-03T08:23:00.000Z', 1, '', 5080),
  (48, 48, 1790700, 'measured', '70.5', '', '2031-03-03T08:23:20.000Z', 1, '', 5080),
  (49, 49, 1714500, 'measured', '67.5', '', '2031-03-03T08:23:40.000Z', 1, '', 5080),
  (50, 50, 1765300, 'measured', '69.5', '', '2031-03-03T08:24:00.000Z', 1, '', 5080),
  (51, 51, 1854200, 'measured', '73.0', '', '2031-03-03T08:24:20.000Z', 1, '', 5080),
  (52, 52, 1752600, 'measured', '69.0', '', '2031-03-03T08:24:40.000Z', 1, '', 5080),
  (53, 53, 1803400, 'measured', '71.0', '', '2031-03-03T08:25:00.000Z', 1, '', 5080),
  (54, 54, 1816100, 'measured', '71.5', '', '2031-03-03T08:25:20.000Z', 1, '', 5080),
  (55, 55, 1701800, 'measured', '67.0', '', '2031-03-03T08:25:40.000Z', 1, '', 5080),
  (56, 56, 1778000, 'measured', '70.0', '', '2031-03-03T08:26:00.000Z', 1, '', 5080),
  (57, 57, 1866900, 'measured', '73.5', '', '2031-03-03T08:26:20.000Z', 1, '', 5080),
  (58, 58, 1790700, 'measured', '70.5', '', '2031-03-03T08:26:40.000Z', 1, '', 5080),
  (59, 59, 1739900, 'measured', '68.5', '', '2031-03-03T08:27:00.000Z', 1, '', 5080),
  (60, 60, 1765300, 'measured', '69.5', '', '2031-03-03T08:27:20.000Z', 1, '', 5080),
  (61, 61, 1828800, 'measured', '72.0', '', '2031-03-03T08:27:40.000Z', 1, '', 5080),
  (62, 62, 1727200, 'measured', '68.0', '', '2031-03-03T08:28:00.000Z', 1, '', 5080),
  (63, 63, 1790700, 'measured', '70.5', '', '2031-03-03T08:28:20.000Z', 1, '', 5080),
  (64, 64, 1778000, 'measured', '70.0', '', '2031-03-03T08:28:40.000Z', 1, '', 5080),
  (65, 65, 1841500, 'measured', '72.5', '', '2031-03-03T08:29:00.000Z', 1, '', 5080),
  (66, 66, 1752600, 'measured', '69.0', '', '2031-03-03T08:29:20.000Z', 1, '', 5080),
  (67, 67, 1769533, 'measured', '69.5 70.0 69.5', '', '2031-03-03T08:29:40.000Z', 1, '', 5080),
  (68, 68, 1803400, 'measured', '71.0', '', '2031-03-03T08:30:00.000Z', 1, '', 5080),
  (69, 69, 1727200, 'measured', '68.0', '', '2031-03-03T08:30:20.000Z', 1, '', 5080),
  (70, 70, 1816100, 'measured', '71.5', '', '2031-03-03T08:30:40.000Z', 1, '', 5080),
  (71, 71, 1778000, 'measured', '70.0', '', '2031-03-03T08:31:00.000Z', 1, '', 5080),
  (72, 72, 1790700, 'measured', '70.5', '', '2031-03-03T08:31:20.000Z', 1, '', 5080),
  (73, 73, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (74, 74, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (75, 75, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (76, 76, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (77, 77, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (78, 78, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (79, 79, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (80, 80, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (81, 81, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:38.273Z', 1, '', 5080),
  (82, 82, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (83, 83, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (84, 84, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (85, 85, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (86, 86, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (87, 87, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (88, 88, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (89, 89, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (90, 90, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:38.726Z', 1, '', 5080),
  (91, 91, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (92, 92, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (93, 93, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (94, 94, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (95, 95, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (96, 96, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (97, 97, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (98, 98, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (99, 99, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:39.508Z', 1, '', 5080),
  (100, 100, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (101, 101, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (102, 102, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (103, 103, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (104, 104, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (105, 105, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (106, 106, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (107, 107, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (108, 108, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:40.443Z', 1, '', 5080),
  (109, 109, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (110, 110, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (111, 111, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (112, 112, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (113, 113, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (114, 114, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (115, 115, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (116, 116, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (117, 117, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:40.894Z', 1, '', 5080),
  (118, 118, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (119, 119, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (120, 120, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (121, 121, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (122, 122, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (123, 123, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (124, 124, 1955800, 'measured', '77.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (125, 125, 2032000, 'measured', '80.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080),
  (126, 126, 6350000, 'measured', '250.0', '', '2026-12-01T07:26:41.127Z', 1, '', 5080);
insert into "discards" values
  (72, 'blued, 0.3 dished', '2031-03-04T09:02:00.000Z', 1, 0);
insert into "cans" values
  (1, 'steel', 'KX3 low/reverse', 1752600),
  (2, 'steel', 'KX3 low/reverse', 1765300),
  (3, 'steel', 'KX3 low/reverse', 1778000),
  (4, 'steel', 'KX3 low/reverse', 1790700),
  (5, 'steel', 'KX3 low/reverse', 1803400),
  (6, 'steel', 'KX3 low/reverse', 1816100),
  (7, 'steel', 'KX3 low/reverse', 1841500);
insert into "can_movements" values
  (1, 1, 4, 'first count', '2031-03-03T08:19:20.000Z', 1, '', NULL, NULL),
  (2, 2, 9, 'first count', '2031-03-03T08:19:40.000Z', 1, '', NULL, NULL),
  (3, 3, 12, 'first count', '2031-03-03T08:20:00.000Z', 1, '', NULL, NULL),
  (4, 4, 11, 'first count', '2031-03-03T08:20:20.000Z', 1, '', NULL, NULL),
  (5, 5, 7, 'first count', '2031-03-03T08:20:40.000Z', 1, '', NULL, NULL),
  (6, 6, 3, 'first count', '2031-03-03T08:21:00.000Z', 1, '', NULL, NULL),
  (7, 7, 2, 'first count', '2031-03-03T08:21:20.000Z', 1, '', NULL, NULL),
  (8, 1, 12, 'a box of twelve', '2031-03-04T09:00:00.000Z', 1, '', NULL, NULL),
  (9, 1, -2, 'counted', '2031-03-04T09:01:00.000Z', 1, '', NULL, NULL);
insert into "mock_ups" values
  (1, 1, 1, 0, '', NULL, NULL, '2031-03-03T08:12:40.000Z', 1),
  (2, 1, 2, 0, '', NULL, NULL, '2031-03-03T08:13:00.000Z', 1),
  (3, 1, 3, 0, '', NULL, NULL, '2031-03-03T08:13:20.000Z', 1),
  (4, 2, 1, 0, '', NULL, NULL, '2026-12-01T07:26:38.273Z', 1),
  (5, 6, 1, 0, '', NULL, NULL, '2026-12-01T07:26:38.726Z', 1),
  (6, 11, 1, 0, '', NULL, NULL, '2026-12-01T07:26:39.508Z', 1),
  (7, 17, 1, 0, '', NULL, NULL, '2026-12-01T07:26:40.443Z', 1),
  (8, 20, 1, 0, '', NULL, NULL, '2026-12-01T07:26:40.894Z', 1),
  (9, 9, 1, 0, '', NULL, NULL, '2026-12-01T07:26:41.127Z', 1);
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
  (3, 31, 42),
  (4, 1, 73),
  (4, 2, 74),
  (4, 3, 75),
  (4, 4, 76),
  (4, 5, 77),
  (4, 6, 78),
  (4, 7, 79),
  (4, 8, 80),
  (4, 9, 81),
  (5, 1, 82),
  (5, 2, 83),
  (5, 3, 84),
  (5, 4, 85),
  (5, 5, 86),
  (5, 6, 87),
  (5, 7, 88),
  (5, 8, 89),
  (5, 9, 90),
  (6, 1, 91),
  (6, 2, 92),
  (6, 3, 93),
  (6, 4, 94),
  (6, 5, 95),
  (6, 6, 96),
  (6, 7, 97),
  (6, 8, 98),
  (6, 9, 99),
  (7, 1, 100),
  (7, 2, 101),
  (7, 3, 102),
  (7, 4, 103),
  (7, 5, 104),
  (7, 6, 105),
  (7, 7, 106),
  (7, 8, 107),
  (7, 9, 108),
  (8, 1, 109),
  (8, 2, 110),
  (8, 3, 111),
  (8, 4, 112),
  (8, 5, 113),
  (8, 6, 114),
  (8, 7, 115),
  (8, 8, 116),
  (8, 9, 117),
  (9, 1, 118),
  (9, 2, 119),
  (9, 3, 120),
  (9, 4, 121),
  (9, 5, 122),
  (9, 6, 123),
  (9, 7, 124),
  (9, 8, 125),
  (9, 9, 126);
insert into "setups" values
  (1, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (2, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (3, 'drum', 1, 275790, 'A', 'in', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (4, 'drum', 1, 275790, 'A', 'none', 'dry', 1, 'plunger', 100, 'paint dot on the drum'),
  (5, 'drum', 1, 275790, 'B', 'none', 'dry', 1, 'plunger', 100, 'paint dot on the drum'),
  (6, 'drum', 1, 275790, 'C3', 'in', 'dry', 1, 'plunger', 100, 'paint dot on the drum'),
  (7, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (8, 'drum', 1, 275790, 'B', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (9, 'drum', 1, 275790, 'C3', 'in', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (10, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (11, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (12, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (13, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (14, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (15, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (16, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (17, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (18, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (19, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (20, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (21, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (22, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (23, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (24, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (25, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (26, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (27, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (28, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (29, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (30, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (31, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (32, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (33, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum'),
  (34, 'drum', 1, 275790, 'A', 'none', 'soaked', 1, 'plunger', 100, 'paint dot on the drum');
insert into "takes" values
  (1, 1, 1, 'as found', 'final', 'air', NULL, 1, '', '2031-03-03T08:06:40.000Z', 1),
  (2, 1, 2, 'as found', 'final', 'air', NULL, 2, '', '2031-03-03T08:08:20.000Z', 1),
  (3, 1, 3, 'as found', 'final', 'air', NULL, 3, '', '2031-03-03T08:10:00.000Z', 1),
  (4, 1, 4, 'as found', 'final', 'dial', NULL, NULL, '', '2031-03-03T08:10:40.000Z', 1),
  (5, 1, 5, 'as found', 'final', 'dial', NULL, NULL, '', '2031-03-03T08:11:20.000Z', 1),
  (6, 1, 10, 'as found', 'final', 'direct', NULL, NULL, '', '2031-03-03T08:12:00.000Z', 1),
  (7, 3, 1, 'final', 'final', 'air', NULL, 4, '', '2028-07-03T12:08:00.000Z', 3),
  (8, 3, 2, 'final', 'final', 'air', NULL, 5, '', '2028-07-03T12:12:00.000Z', 3),
  (9, 3, 3, 'final', 'final', 'air', NULL, 6, '', '2028-07-03T12:16:00.000Z', 3),
  (10, 3, 4, 'final', 'final', 'dial', NULL, NULL, '', '2028-07-03T12:20:00.000Z', 3),
  (11, 3, 5, 'final', 'final', 'dial', NULL, NULL, '', '2028-07-03T12:24:00.000Z', 3),
  (12, 3, 10, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T12:28:00.000Z', 3),
  (13, 3, 12, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T12:32:00.000Z', 3),
  (14, 3, 21, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T12:36:00.000Z', 3),
  (15, 3, 23, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T12:40:00.000Z', 3),
  (16, 3, 24, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T12:44:00.000Z', 3),
  (17, 3, 16, 'final', 'final', 'drop', NULL, NULL, '', '2028-07-03T12:48:00.000Z', 3),
  (18, 3, 17, 'final', 'final', 'drop', NULL, NULL, '', '2028-07-03T12:52:00.000Z', 3),
  (19, 3, 18, 'final', 'final', 'drop', NULL, NULL, '', '2028-07-03T12:56:00.000Z', 3),
  (20, 3, 25, 'final', 'final', 'direct', NULL, NULL, '', '2028-07-03T13:00:00.000Z', 3),
  (21, 4, 1, 'final', 'final', 'air', NULL, 7, '', '2029-07-20T12:08:00.000Z', 2),
  (22, 4, 2, 'final', 'final', 'air', NULL, 8, '', '2029-07-20T12:12:00.000Z', 2),
  (23, 4, 3, 'final', 'final', 'air', NULL, 9, '', '2029-07-20T12:16:00.000Z', 2),
  (24, 4, 4, 'final', 'final', 'dial', NULL, NULL, '', '2029-07-20T12:20:00.000Z', 2),
  (25, 4, 5, 'final', 'final', 'dial', NULL, NULL, '', '2029-07-20T12:24:00.000Z', 2),
  (26, 4, 10, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T12:28:00.000Z', 2),
  (27, 4, 12, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T12:32:00.000Z', 2),
  (28, 4, 21, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T12:36:00.000Z', 2),
  (29, 4, 23, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T12:40:00.000Z', 2),
  (30, 4, 24, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T12:44:00.000Z', 2),
  (31, 4, 16, 'final', 'final', 'drop', NULL, NULL, '', '2029-07-20T12:48:00.000Z', 2),
  (32, 4, 17, 'final', 'final', 'drop', NULL, NULL, '', '2029-07-20T12:52:00.000Z', 2),
  (33, 4, 18, 'final', 'final', 'drop', NULL, NULL, '', '2029-07-20T12:56:00.000Z', 2),
  (34, 4, 25, 'final', 'final', 'direct', NULL, NULL, '', '2029-07-20T13:00:00.000Z', 2),
  (35, 5, 2, 'as found', 'final', 'air', NULL, 8, '', '2031-01-11T15:00:00.000Z', 1),
  (36, 5, 1, 'final', 'final', 'air', NULL, 7, '', '2031-01-13T12:08:00.000Z', 1),
  (37, 5, 2, 'final', 'final', 'air', NULL, 8, '', '2031-01-13T12:12:00.000Z', 1),
  (38, 5, 3, 'final', 'final', 'air', NULL, 9, '', '2031-01-13T12:16:00.000Z', 1),
  (39, 5, 4, 'final', 'final', 'dial', NULL, NULL, '', '2031-01-13T12:20:00.000Z', 1),
  (40, 5, 5, 'final', 'final', 'dial', NULL, NULL, '', '2031-01-13T12:24:00.000Z', 1),
  (41, 5, 10, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T12:28:00.000Z', 1),
  (42, 5, 12, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T12:32:00.000Z', 1),
  (43, 5, 21, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T12:36:00.000Z', 1),
  (44, 5, 23, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T12:40:00.000Z', 1),
  (45, 5, 24, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T12:44:00.000Z', 1),
  (46, 5, 16, 'final', 'final', 'drop', NULL, NULL, '', '2031-01-13T12:48:00.000Z', 1),
  (47, 5, 17, 'final', 'final', 'drop', NULL, NULL, '', '2031-01-13T12:52:00.000Z', 1),
  (48, 5, 18, 'final', 'final', 'drop', NULL, NULL, '', '2031-01-13T12:56:00.000Z', 1),
  (49, 5, 25, 'final', 'final', 'direct', NULL, NULL, '', '2031-01-13T13:00:00.000Z', 1),
  (50, 7, 1, 'as found', 'final', 'air', NULL, 10, '', '2026-12-01T07:26:38.399Z', 1),
  (51, 1, 1, 'as found', 'final', 'air', NULL, 11, '', '2026-12-01T07:26:38.525Z', 1),
  (52, 2, 1, 'as found', 'final', 'air', NULL, 12, '', '2026-12-01T07:26:38.630Z', 1),
  (53, 2, 1, 'as found', 'final', 'air', NULL, 13, '', '2026-12-01T07:26:38.689Z', 1),
  (54, 7, 1, 'as found', 'final', 'air', NULL, 14, '', '2026-12-01T07:26:38.713Z', 1),
  (55, 7, 1, 'as found', 'final', 'air', NULL, 15, '', '2026-12-01T07:26:38.869Z', 1),
  (56, 9, 1, 'as found', 'final', 'air', NULL, 16, '', '2026-12-01T07:26:39.180Z', 1),
  (57, 11, 1, 'as found', 'final', 'air', NULL, 17, '', '2026-12-01T07:26:39.368Z', 1),
  (58, 13, 1, 'as found', 'final', 'air', NULL, 18, '', '2026-12-01T07:26:39.683Z', 1),
  (59, 9, 1, 'as found', 'final', 'air', NULL, 19, '', '2026-12-01T07:26:39.706Z', 1),
  (60, 14, 1, 'as found', 'final', 'air', NULL, 20, '', '2026-12-01T07:26:39.745Z', 1),
  (61, 13, 1, 'as found', 'final', 'air', NULL, 21, '', '2026-12-01T07:26:39.878Z', 1),
  (62, 15, 1, 'as found', 'final', 'air', NULL, 22, '', '2026-12-01T07:26:39.907Z', 1),
  (63, 15, 1, 'as found', 'final', 'air', NULL, 23, '', '2026-12-01T07:26:40.058Z', 1),
  (64, 15, 1, 'as found', 'final', 'air', NULL, 24, '', '2026-12-01T07:26:40.247Z', 1),
  (65, 19, 1, 'as found', 'final', 'air', NULL, 25, '', '2026-12-01T07:26:40.286Z', 1),
  (66, 20, 1, 'as found', 'final', 'air', NULL, 26, '', '2026-12-01T07:26:40.479Z', 1),
  (67, 15, 1, 'as found', 'final', 'air', NULL, 27, '', '2026-12-01T07:26:40.619Z', 1),
  (68, 18, 1, 'as found', 'final', 'air', NULL, 28, '', '2026-12-01T07:26:40.880Z', 1),
  (69, 13, 1, 'as found', 'final', 'air', NULL, 29, '', '2026-12-01T07:26:41.149Z', 1),
  (70, 6, 1, 'as found', 'final', 'air', NULL, 30, '', '2026-12-01T07:26:41.508Z', 1),
  (71, 16, 1, 'as found', 'final', 'air', NULL, 31, '', '2026-12-01T07:26:41.521Z', 1),
  (72, 2, 1, 'as found', 'final', 'air', NULL, 32, '', '2026-12-01T07:26:41.852Z', 1),
  (73, 24, 1, 'as found', 'final', 'air', NULL, 33, '', '2026-12-01T07:26:41.866Z', 1),
  (74, 6, 1, 'as found', 'final', 'air', NULL, 34, '', '2026-12-01T07:26:41.879Z', 1);
insert into "readings" values
  (1, 1, 1, 'air', '4 27', 101600, 685800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:07:00.000Z', 1, NULL, NULL),
  (2, 1, 2, 'air', '5 27', 127000, 685800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:07:20.000Z', 1, NULL, NULL),
  (3, 1, 3, 'air', '5 28', 127000, 711200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:07:40.000Z', 1, NULL, NULL),
  (4, 1, 4, 'air', '4 28', 101600, 711200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:08:00.000Z', 1, NULL, NULL),
  (5, 2, 1, 'air', '5 32', 127000, 812800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:08:40.000Z', 1, NULL, NULL),
  (6, 2, 2, 'air', '5 33', 127000, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:09:00.000Z', 1, NULL, NULL),
  (7, 2, 3, 'air', '6 33', 152400, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:09:20.000Z', 1, NULL, NULL),
  (8, 2, 4, 'air', '5 33', 127000, 838200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:09:40.000Z', 1, NULL, NULL),
  (9, 3, 1, 'air', '-0.305 1.524 mm', 305000, 1524000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-03-03T08:10:20.000Z', 1, NULL, NULL),
  (10, 4, 1, 'dial', '31', NULL, NULL, 0, 0, 0, NULL, NULL, '', 787400, NULL, '', '2031-03-03T08:11:00.000Z', 1, NULL, NULL),
  (11, 5, 1, 'dial', '11', NULL, NULL, 0, 0, 0, NULL, NULL, '', 279400, NULL, '', '2031-03-03T08:11:40.000Z', 1, NULL, NULL),
  (12, 6, 1, 'direct', '5.0', NULL, NULL, 0, 0, 0, NULL, NULL, '', 127000, NULL, '', '2031-03-03T08:12:20.000Z', 1, NULL, NULL),
  (13, 7, 1, 'air', '4 23', 101600, 584200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:08:00.000Z', 3, NULL, NULL),
  (14, 7, 2, 'air', '6 21', 152400, 533400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:08:00.000Z', 3, NULL, NULL),
  (15, 7, 3, 'air', '6 20', 152400, 508000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:08:00.000Z', 3, NULL, NULL),
  (16, 7, 4, 'air', '3 24', 76200, 609600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:08:00.000Z', 3, NULL, NULL),
  (17, 7, 1, 'air', '6 22', 152400, 558800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:08:00.000Z', 3, NULL, NULL),
  (18, 8, 1, 'air', '4 37', 101600, 939800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:12:00.000Z', 3, NULL, NULL),
  (19, 8, 2, 'air', '3 40', 76200, 1016000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:12:00.000Z', 3, NULL, NULL),
  (20, 8, 3, 'air', '6 38', 152400, 965200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:12:00.000Z', 3, NULL, NULL),
  (21, 8, 4, 'air', '6 37', 152400, 939800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:12:00.000Z', 3, NULL, NULL),
  (22, 9, 1, 'air', '4 46', 101600, 1168400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2028-07-03T12:16:00.000Z', 3, NULL, NULL),
  (23, 10, 1, 'dial', '28', NULL, NULL, 0, 0, 0, NULL, NULL, '', 711200, NULL, '', '2028-07-03T12:20:00.000Z', 3, NULL, NULL),
  (24, 10, 1, 'dial', '18', NULL, NULL, 0, 0, 0, NULL, NULL, '', 457200, 23, 'misread by ten on the face', '2028-07-03T12:20:00.000Z', 3, NULL, NULL),
  (25, 11, 1, 'dial', '10', NULL, NULL, 0, 0, 0, NULL, NULL, '', 254000, NULL, '', '2028-07-03T12:24:00.000Z', 3, NULL, NULL),
  (26, 12, 1, 'direct', '2.7', NULL, NULL, 0, 0, 0, NULL, NULL, '', 68580, NULL, '', '2028-07-03T12:28:00.000Z', 3, NULL, NULL),
  (27, 13, 1, 'direct', '2.6', NULL, NULL, 0, 0, 0, NULL, NULL, '', 66040, NULL, '', '2028-07-03T12:32:00.000Z', 3, NULL, NULL),
  (28, 14, 1, 'direct', '82', NULL, NULL, 0, 0, 0, NULL, NULL, '', 565370, NULL, '', '2028-07-03T12:36:00.000Z', 3, NULL, NULL),
  (29, 15, 1, 'direct', '158', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1089372, NULL, '', '2028-07-03T12:40:00.000Z', 3, NULL, NULL),
  (30, 16, 1, 'direct', '257', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1771953, NULL, '', '2028-07-03T12:44:00.000Z', 3, NULL, NULL),
  (31, 17, 1, 'drop', '3', NULL, NULL, 0, 0, 0, NULL, NULL, '', 20684, NULL, '', '2028-07-03T12:48:00.000Z', 3, NULL, NULL),
  (32, 18, 1, 'drop', '3', NULL, NULL, 0, 0, 0, NULL, NULL, '', 20684, NULL, '', '2028-07-03T12:52:00.000Z', 3, NULL, NULL),
  (33, 19, 1, 'drop', '3', NULL, NULL, 0, 0, 0, NULL, NULL, '', 20684, NULL, '', '2028-07-03T12:56:00.000Z', 3, NULL, NULL),
  (34, 20, 1, 'direct', '1.26', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1192405, NULL, '', '2028-07-03T13:00:00.000Z', 3, NULL, NULL),
  (35, 21, 1, 'air', '3 27', 76200, 685800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:08:00.000Z', 2, NULL, NULL),
  (36, 21, 2, 'air', '3 26', 76200, 660400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:08:00.000Z', 2, NULL, NULL),
  (37, 21, 3, 'air', '3 26', 76200, 660400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:08:00.000Z', 2, NULL, NULL),
  (38, 21, 4, 'air', '6 24', 152400, 609600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:08:00.000Z', 2, NULL, NULL),
  (39, 22, 1, 'air', '3 42', 76200, 1066800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:12:00.000Z', 2, NULL, NULL),
  (40, 22, 2, 'air', '4 41', 101600, 1041400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:12:00.000Z', 2, NULL, NULL),
  (41, 22, 3, 'air', '6 40', 152400, 1016000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:12:00.000Z', 2, NULL, NULL),
  (42, 22, 4, 'air', '5 39', 127000, 990600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:12:00.000Z', 2, NULL, NULL),
  (43, 23, 1, 'air', '6 54', 152400, 1371600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2029-07-20T12:16:00.000Z', 2, NULL, NULL),
  (44, 24, 1, 'dial', '20', NULL, NULL, 0, 0, 0, NULL, NULL, '', 508000, NULL, '', '2029-07-20T12:20:00.000Z', 2, NULL, NULL),
  (45, 25, 1, 'dial', '12', NULL, NULL, 0, 0, 0, NULL, NULL, '', 304800, NULL, '', '2029-07-20T12:24:00.000Z', 2, NULL, NULL),
  (46, 26, 1, 'direct', '2.8', NULL, NULL, 0, 0, 0, NULL, NULL, '', 71120, NULL, '', '2029-07-20T12:28:00.000Z', 2, NULL, NULL),
  (47, 27, 1, 'direct', '2.4', NULL, NULL, 0, 0, 0, NULL, NULL, '', 60960, NULL, '', '2029-07-20T12:32:00.000Z', 2, NULL, NULL),
  (48, 28, 1, 'direct', '82', NULL, NULL, 0, 0, 0, NULL, NULL, '', 565370, NULL, '', '2029-07-20T12:36:00.000Z', 2, NULL, NULL),
  (49, 29, 1, 'direct', '160', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1103161, NULL, '', '2029-07-20T12:40:00.000Z', 2, NULL, NULL),
  (50, 30, 1, 'direct', '262', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1806426, NULL, '', '2029-07-20T12:44:00.000Z', 2, NULL, NULL),
  (51, 31, 1, 'drop', '3', NULL, NULL, 0, 0, 0, NULL, NULL, '', 20684, NULL, '', '2029-07-20T12:48:00.000Z', 2, NULL, NULL),
  (52, 32, 1, 'drop', '5', NULL, NULL, 0, 0, 0, NULL, NULL, '', 34474, NULL, '', '2029-07-20T12:52:00.000Z', 2, NULL, NULL),
  (53, 33, 1, 'drop', '2', NULL, NULL, 0, 0, 0, NULL, NULL, '', 13790, NULL, '', '2029-07-20T12:56:00.000Z', 2, NULL, NULL),
  (54, 34, 1, 'direct', '1.32', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1249186, NULL, '', '2029-07-20T13:00:00.000Z', 2, NULL, NULL),
  (55, 35, 1, 'air', '3 59', 76200, 1498600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-11T15:00:00.000Z', 1, NULL, NULL),
  (56, 35, 2, 'air', '5 56', 127000, 1422400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-11T15:00:00.000Z', 1, NULL, NULL),
  (57, 35, 3, 'air', '4 58', 101600, 1473200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-11T15:00:00.000Z', 1, NULL, NULL),
  (58, 35, 4, 'air', '5 56', 127000, 1422400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-11T15:00:00.000Z', 1, NULL, NULL),
  (59, 36, 1, 'air', '3 21', 76200, 533400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:08:00.000Z', 1, NULL, NULL),
  (60, 36, 2, 'air', '5 18', 127000, 457200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:08:00.000Z', 1, NULL, NULL),
  (61, 36, 3, 'air', '5 18', 127000, 457200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:08:00.000Z', 1, NULL, NULL),
  (62, 36, 4, 'air', '3 20', 76200, 508000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:08:00.000Z', 1, NULL, NULL),
  (63, 37, 1, 'air', '4 43', 101600, 1092200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:12:00.000Z', 1, NULL, NULL),
  (64, 37, 2, 'air', '5 41', 127000, 1041400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:12:00.000Z', 1, NULL, NULL),
  (65, 37, 3, 'air', '6 40', 152400, 1016000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:12:00.000Z', 1, NULL, NULL),
  (66, 37, 4, 'air', '5 42', 127000, 1066800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:12:00.000Z', 1, NULL, NULL),
  (67, 38, 1, 'air', '4 62', 101600, 1574800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2031-01-13T12:16:00.000Z', 1, NULL, NULL),
  (68, 39, 1, 'dial', '18', NULL, NULL, 0, 0, 0, NULL, NULL, '', 457200, NULL, '', '2031-01-13T12:20:00.000Z', 1, NULL, NULL),
  (69, 40, 1, 'dial', '12', NULL, NULL, 0, 0, 0, NULL, NULL, '', 304800, NULL, '', '2031-01-13T12:24:00.000Z', 1, NULL, NULL),
  (70, 41, 1, 'direct', '3.5', NULL, NULL, 0, 0, 0, NULL, NULL, '', 88900, NULL, '', '2031-01-13T12:28:00.000Z', 1, NULL, NULL),
  (71, 42, 1, 'direct', '2.7', NULL, NULL, 0, 0, 0, NULL, NULL, '', 68580, NULL, '', '2031-01-13T12:32:00.000Z', 1, NULL, NULL),
  (72, 43, 1, 'direct', '82', NULL, NULL, 0, 0, 0, NULL, NULL, '', 565370, NULL, '', '2031-01-13T12:36:00.000Z', 1, NULL, NULL),
  (73, 44, 1, 'direct', '159', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1096266, NULL, '', '2031-01-13T12:40:00.000Z', 1, NULL, NULL),
  (74, 45, 1, 'direct', '259', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1785742, NULL, '', '2031-01-13T12:44:00.000Z', 1, NULL, NULL),
  (75, 46, 1, 'drop', '3', NULL, NULL, 0, 0, 0, NULL, NULL, '', 20684, NULL, '', '2031-01-13T12:48:00.000Z', 1, NULL, NULL),
  (76, 47, 1, 'drop', '2', NULL, NULL, 0, 0, 0, NULL, NULL, '', 13790, NULL, '', '2031-01-13T12:52:00.000Z', 1, NULL, NULL),
  (77, 48, 1, 'drop', '4', NULL, NULL, 0, 0, 0, NULL, NULL, '', 27579, NULL, '', '2031-01-13T12:56:00.000Z', 1, NULL, NULL),
  (78, 49, 1, 'direct', '1.28', NULL, NULL, 0, 0, 0, NULL, NULL, '', 1211332, NULL, '', '2031-01-13T13:00:00.000Z', 1, NULL, NULL),
  (79, 1, 4, 'air', '6 22', 152400, 558800, 0, 0, 0, NULL, NULL, '', NULL, 4, 'misread', '2026-12-01T07:26:38.596Z', 1, NULL, NULL),
  (80, 5, 2, 'dial', '5 23', NULL, NULL, 0, 0, 0, NULL, NULL, '', 457200, NULL, '', '2026-12-01T07:26:39.023Z', 1, 127000, 584200),
  (81, 2, 1, 'air', '6 39', 152400, 990600, 0, 0, 0, NULL, NULL, '', NULL, 5, 'misread', '2026-12-01T07:26:39.133Z', 1, NULL, NULL),
  (82, 51, 1, 'air', '6 28', 152400, 711200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:39.277Z', 1, NULL, NULL),
  (83, 4, 1, 'dial', '3 22', NULL, NULL, 0, 0, 0, NULL, NULL, '', 482600, 10, 'misread', '2026-12-01T07:26:39.431Z', 1, 76200, 558800),
  (84, 2, 1, 'air', '6 24', 152400, 609600, 0, 0, 0, NULL, NULL, '', NULL, 81, 'misread', '2026-12-01T07:26:39.473Z', 1, NULL, NULL),
  (85, 1, 4, 'air', '3 24', 76200, 609600, 0, 0, 0, NULL, NULL, '', NULL, 79, 'misread', '2026-12-01T07:26:39.597Z', 1, NULL, NULL),
  (86, 3, 2, 'air', '6 35', 152400, 889000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:39.767Z', 1, NULL, NULL),
  (87, 5, 1, 'dial', '4 24', NULL, NULL, 0, 0, 0, NULL, NULL, '', 508000, 11, 'misread', '2026-12-01T07:26:39.898Z', 1, 101600, 609600),
  (88, 52, 1, 'air', '5 24', 127000, 609600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:39.925Z', 1, NULL, NULL),
  (89, 52, 1, 'air', '4 20', 101600, 508000, 0, 0, 0, NULL, NULL, '', NULL, 88, 'misread', '2026-12-01T07:26:39.952Z', 1, NULL, NULL),
  (90, 51, 2, 'air', '5 20', 127000, 508000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:40.181Z', 1, NULL, NULL),
  (91, 52, 1, 'air', '4 25', 101600, 635000, 0, 0, 0, NULL, NULL, '', NULL, 89, 'misread', '2026-12-01T07:26:40.217Z', 1, NULL, NULL),
  (92, 51, 2, 'air', '3 22', 76200, 558800, 0, 0, 0, NULL, NULL, '', NULL, 90, 'misread', '2026-12-01T07:26:40.232Z', 1, NULL, NULL),
  (93, 53, 1, 'air', '6 20', 152400, 508000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:40.271Z', 1, NULL, NULL),
  (94, 61, 1, 'air', '3 23', 76200, 584200, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:40.300Z', 1, NULL, NULL),
  (95, 5, 2, 'dial', '6 24', NULL, NULL, 0, 0, 0, NULL, NULL, '', 457200, 80, 'misread', '2026-12-01T07:26:40.416Z', 1, 152400, 609600),
  (96, 2, 2, 'air', '4 40', 101600, 1016000, 0, 0, 0, NULL, NULL, '', NULL, 6, 'misread', '2026-12-01T07:26:40.466Z', 1, NULL, NULL),
  (97, 58, 1, 'air', '6 22', 152400, 558800, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:40.536Z', 1, NULL, NULL),
  (98, 1, 2, 'air', '4 22', 101600, 558800, 0, 0, 0, NULL, NULL, '', NULL, 2, 'misread', '2026-12-01T07:26:40.638Z', 1, NULL, NULL),
  (99, 58, 1, 'air', '6 40', 152400, 1016000, 0, 0, 0, NULL, NULL, '', NULL, 97, 'misread', '2026-12-01T07:26:40.744Z', 1, NULL, NULL),
  (100, 2, 2, 'air', '4 31', 101600, 787400, 0, 0, 0, NULL, NULL, '', NULL, 96, 'misread', '2026-12-01T07:26:40.783Z', 1, NULL, NULL),
  (101, 1, 3, 'air', '3 27', 76200, 685800, 0, 0, 0, NULL, NULL, '', NULL, 3, 'misread', '2026-12-01T07:26:40.916Z', 1, NULL, NULL),
  (102, 51, 3, 'air', '6 35', 152400, 889000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:41.034Z', 1, NULL, NULL),
  (103, 67, 1, 'air', '3 36', 76200, 914400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:41.075Z', 1, NULL, NULL),
  (104, 51, 2, 'air', '5 22', 127000, 558800, 0, 0, 0, NULL, NULL, '', NULL, 92, 'misread', '2026-12-01T07:26:41.163Z', 1, NULL, NULL),
  (105, 69, 1, 'air', '3 30', 76200, 762000, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:41.234Z', 1, NULL, NULL),
  (106, 52, 1, 'air', '5 32', 127000, 812800, 0, 0, 0, NULL, NULL, '', NULL, 91, 'misread', '2026-12-01T07:26:41.249Z', 1, NULL, NULL),
  (107, 5, 3, 'dial', '6 35', NULL, NULL, 0, 0, 0, NULL, NULL, '', 736600, NULL, '', '2026-12-01T07:26:41.265Z', 1, 152400, 889000),
  (108, 4, 2, 'dial', '3 37', NULL, NULL, 0, 0, 0, NULL, NULL, '', 863600, NULL, '', '2026-12-01T07:26:41.296Z', 1, 76200, 939800),
  (109, 5, 3, 'dial', '6 31', NULL, NULL, 0, 0, 0, NULL, NULL, '', 635000, 107, 'misread', '2026-12-01T07:26:41.321Z', 1, 152400, 787400),
  (110, 53, 2, 'air', '3 24', 76200, 609600, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:41.547Z', 1, NULL, NULL),
  (111, 66, 1, 'air', '5 31', 127000, 787400, 0, 0, 0, NULL, NULL, '', NULL, NULL, '', '2026-12-01T07:26:41.736Z', 1, NULL, NULL),
  (112, 51, 3, 'air', '6 31', 152400, 787400, 0, 0, 0, NULL, NULL, '', NULL, 102, 'misread', '2026-12-01T07:26:41.909Z', 1, NULL, NULL);
insert into "spot_notes" values
  (1, 1, 2, 'lost zero', '2031-03-04T09:04:00.000Z', 1);
insert into "take_figures" values
  (1, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (2, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (3, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (4, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (5, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (6, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (7, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (8, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (9, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (10, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (11, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (12, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (13, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (14, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (15, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (16, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (17, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (18, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (19, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (20, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (21, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (22, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (23, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (24, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (25, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (26, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (27, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (28, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (29, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (30, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (31, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (32, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (33, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (34, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (35, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (36, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (37, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (38, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (39, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (40, 12700, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (41, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (42, 2540, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (43, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (44, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (45, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (46, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (47, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (48, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (49, NULL, NULL, NULL, 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (50, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (51, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (52, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (53, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (54, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (55, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (56, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (57, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (58, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (59, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (60, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (61, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (62, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (63, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (64, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (65, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (66, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (67, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (68, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (69, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (70, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (71, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (72, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (73, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL),
  (74, 17780, 50, 'stated', 25400, 25400, 25400, 5080, 50800, 101600, 'guarded', NULL, NULL, NULL);
insert into "parts" values
  (1, 'KX3-FR-080', 'Forward friction, 80 thou', 'friction', 'Brightwater Friction', 'each', 'C4', 410, 750, NULL, 8, 12, 0),
  (2, 'KX3-FR-084', 'Direct friction, 84 thou', 'friction', 'Brightwater Friction', 'each', 'C4', 435, 790, NULL, 8, 12, 0),
  (3, 'KX3-FR-080L', 'Low/reverse friction, 80 thou', 'friction', 'Brightwater Friction', 'each', 'C5', 520, 940, NULL, 10, 10, 0),
  (4, 'KX3-ST-070', 'Low/reverse steel, 70 thou', 'steel', 'Brightwater Friction', 'each', 'D1', 210, 400, NULL, 10, 20, 0),
  (5, 'KX3-ST-077', 'Forward steel, 77 thou', 'steel', 'Brightwater Friction', 'each', 'D1', 230, 440, NULL, 10, 20, 0),
  (6, 'KX3-ST-092', 'Direct steel, 92 thou', 'steel', 'Brightwater Friction', 'each', 'D2', 245, 460, NULL, 10, 20, 0),
  (7, 'KX3-WP-085', 'Low/reverse wave plate, 85 thou', 'steel', 'Brightwater Friction', 'each', 'D3', 680, 1250, NULL, 2, 4, 0),
  (8, 'KX3-PP-250', 'Forward pressure plate, 250 thou', 'pressure plate', 'Brightwater Friction', 'each', 'D4', 1800, 3200, NULL, 1, 2, 0),
  (9, 'KX3-PP-310', 'Direct pressure plate, 310 thou', 'pressure plate', 'Brightwater Friction', 'each', 'D4', 1950, 3400, NULL, 1, 2, 0),
  (10, 'KX3-SR-074', 'Low/reverse snap ring, 74 thou', 'snap ring', 'Ostrander Supply', 'each', 'E1', 310, 600, NULL, 2, 5, 0),
  (11, 'KX3-SR-080', 'Low/reverse snap ring, 80 thou', 'snap ring', 'Ostrander Supply', 'each', 'E1', 310, 600, NULL, 2, 5, 0),
  (12, 'KX3-SR-086', 'Low/reverse snap ring, 86 thou', 'snap ring', 'Ostrander Supply', 'each', 'E1', 310, 600, NULL, 2, 5, 0),
  (13, 'KX3-SR-F62', 'Forward snap ring, 62 thou', 'snap ring', 'Ostrander Supply', 'each', 'E2', 280, 550, NULL, NULL, NULL, 0),
  (14, 'KX3-SL-11', 'Forward piston seal, inner', 'seal', 'Ostrander Supply', 'each', 'F1', 115, 260, NULL, 6, 10, 0),
  (15, 'KX3-SL-12', 'Forward piston seal, outer', 'seal', 'Ostrander Supply', 'each', 'F1', 145, 310, NULL, 6, 10, 0),
  (16, 'KX3-SL-21', 'Direct piston seal, inner', 'seal', 'Ostrander Supply', 'each', 'F1', 115, 260, NULL, 6, 10, 0),
  (17, 'KX3-SL-22', 'Direct piston seal, outer', 'seal', 'Ostrander Supply', 'each', 'F1', 145, 310, NULL, 6, 10, 0),
  (18, 'KX3-SL-31', 'Pump seal, front', 'seal', 'Ostrander Supply', 'each', 'F2', 490, 980, NULL, 4, 6, 0),
  (19, 'KX3-SL-41', 'Extension housing seal', 'seal', 'Ostrander Supply', 'each', 'F2', 560, 1090, NULL, 3, 6, 0),
  (20, 'KX3-SL-51', 'Turbine shaft ring, teflon', 'seal', 'Ostrander Supply', 'each', 'F3', 95, 220, NULL, 12, 24, 0),
  (21, 'KX3-GS-01', 'Pan gasket', 'seal', 'Ostrander Supply', 'each', 'F4', 620, 1200, NULL, 4, 6, 0),
  (22, 'KX3-GS-02', 'Pump gasket', 'seal', 'Ostrander Supply', 'each', 'F4', 340, 720, NULL, 4, 6, 0),
  (23, 'KX3-GS-03', 'Valve body gaskets, pair', 'seal', 'Ostrander Supply', 'pair', 'F4', 810, 1550, NULL, 3, 4, 0),
  (24, 'KX3-BU-01', 'Pump body bushing', 'bushing', 'Ostrander Supply', 'each', 'G1', 375, 800, NULL, 3, 6, 0),
  (25, 'KX3-BU-02', 'Stator bushing', 'bushing', 'Ostrander Supply', 'each', 'G1', 330, 700, NULL, 3, 6, 0),
  (26, 'KX3-BU-03', 'Direct drum bushing', 'bushing', 'Ostrander Supply', 'each', 'G1', 410, 860, NULL, 3, 6, 0),
  (27, 'KX3-BU-04', 'Extension housing bushing', 'bushing', 'Ostrander Supply', 'each', 'G2', 460, 920, NULL, NULL, NULL, 0),
  (28, 'KX3-TW-066', 'Front end play washer, 66 thou', 'washer', 'Ostrander Supply', 'each', 'G3', 220, 480, NULL, NULL, NULL, 0),
  (29, 'KX3-TW-072', 'Front end play washer, 72 thou', 'washer', 'Ostrander Supply', 'each', 'G3', 220, 480, NULL, NULL, NULL, 0),
  (30, 'KX3-TW-078', 'Front end play washer, 78 thou', 'washer', 'Ostrander Supply', 'each', 'G3', 220, 480, NULL, 2, 4, 0),
  (31, 'KX3-VB-10', 'Pressure regulator spring', 'valve-body part', 'Ostrander Supply', 'each', 'H1', 290, 650, NULL, 2, 4, 0),
  (32, 'KX3-VB-11', 'Boost valve and sleeve', 'valve-body part', 'Ostrander Supply', 'each', 'H1', 2700, 4800, NULL, 1, 2, 0),
  (33, 'KX3-VB-12', 'Check balls, set of 7', 'valve-body part', 'Ostrander Supply', 'set', 'H2', 210, 500, NULL, NULL, NULL, 0),
  (34, 'KX3-FL-01', 'Filter, pan side', 'other', 'Ostrander Supply', 'each', 'H3', 940, 1850, NULL, 4, 6, 0),
  (35, 'KX3-TC-11', 'Torque converter, 11 in, rebuilt', 'other', 'Ostrander Supply', 'each', 'floor', 16500, 28900, 6000, NULL, NULL, 0),
  (36, 'FLUID-M3', 'Transmission fluid, multi-vehicle', 'fluid', 'Ostrander Supply', 'quart', 'drum', 390, 850, NULL, 48, 96, 0),
  (37, 'GEL-12', 'Assembly gel, 12 oz tub', 'fluid', 'Ostrander Supply', 'tub', 'bench', 780, 1400, NULL, 2, 6, 0),
  (38, 'CLN-20', 'Parts cleaner, aerosol', 'fluid', 'Ostrander Supply', 'can', 'bench', 320, 650, NULL, 6, 12, 0),
  (39, 'CP-38', 'Cup plug, 3/8 in', 'other', 'Ostrander Supply', 'each', 'H4', 40, 120, NULL, NULL, NULL, 0),
  (40, 'KX3-KIT-M', 'Master kit', 'kit', 'Brightwater Friction', 'each', 'A1', 9600, 16900, NULL, 1, 2, 0),
  (41, 'KX3-FR-DI20', 'Direct friction, high energy', 'friction', 'Brightwater Friction', 'each', 'C6', 435, 790, NULL, NULL, NULL, 0),
  (42, 'FLUID-OR', 'Transmission fluid, Okerlund Red', 'fluid', 'Ostrander Supply', 'quart', 'drum', 390, 850, NULL, NULL, NULL, 0),
  (43, 'FLUID-T6', 'Transmission fluid, Tarnbrook 6', 'fluid', 'Ostrander Supply', 'quart', 'drum', 390, 850, NULL, NULL, NULL, 0);
insert into "part_families" values
  (1, 1),
  (2, 1),
  (3, 1),
  (4, 1),
  (5, 1),
  (6, 1),
  (7, 1),
  (8, 1),
  (9, 1),
  (10, 1),
  (11, 1),
  (12, 1),
  (13, 1),
  (14, 1),
  (15, 1),
  (16, 1),
  (17, 1),
  (18, 1),
  (19, 1),
  (20, 1),
  (21, 1),
  (22, 1),
  (23, 1),
  (24, 1),
  (25, 1),
  (26, 1),
  (27, 1),
  (28, 1),
  (29, 1),
  (30, 1),
  (31, 1),
  (32, 1),
  (33, 1),
  (34, 1),
  (35, 1),
  (40, 1),
  (41, 1);
insert into "kit_lines" values
  (40, 1, 4),
  (40, 2, 4),
  (40, 3, 5),
  (40, 14, 1),
  (40, 15, 1),
  (40, 16, 1),
  (40, 17, 1),
  (40, 18, 1),
  (40, 19, 1),
  (40, 20, 4),
  (40, 21, 1),
  (40, 22, 1),
  (40, 23, 1);
insert into "batches" values
  (1, 1, NULL, 'FB-1907', '', '2030-10-14', 410, '2031-03-03T08:45:40.000Z', 1),
  (2, 1, NULL, 'FB-2231', '', '2031-02-08', 410, '2031-03-03T08:46:00.000Z', 1),
  (3, 2, NULL, 'FB-2240', '', '2031-02-08', 435, '2031-03-03T08:46:40.000Z', 1),
  (4, 3, NULL, 'FB-2102', '', '2031-01-01', 520, '2031-03-03T08:47:20.000Z', 1),
  (5, 4, NULL, '', '8702', '2031-01-01', 210, '2031-03-03T08:48:00.000Z', 1),
  (6, 5, NULL, '', '7916', '2030-10-14', 230, '2031-03-03T08:48:40.000Z', 1),
  (7, 5, NULL, '', '8841', '2031-02-08', 230, '2031-03-03T08:49:00.000Z', 1),
  (8, 6, NULL, '', '8841', '2031-02-08', 245, '2031-03-03T08:49:40.000Z', 1),
  (9, 7, NULL, '', '8702', '2031-01-01', 680, '2031-03-03T08:50:20.000Z', 1),
  (10, 8, NULL, '', '8455', '2030-12-05', 1800, '2031-03-03T08:51:00.000Z', 1),
  (11, 9, NULL, '', '8455', '2030-12-05', 1950, '2031-03-03T08:51:40.000Z', 1),
  (12, 10, NULL, '', 'OS-5518', '2031-01-15', 310, '2031-03-03T08:52:20.000Z', 1),
  (13, 11, NULL, '', 'OS-5518', '2031-01-15', 310, '2031-03-03T08:53:00.000Z', 1),
  (14, 12, NULL, '', 'OS-5518', '2031-01-15', 310, '2031-03-03T08:53:40.000Z', 1),
  (15, 13, NULL, '', 'OS-5107', '2030-11-11', 280, '2031-03-03T08:54:20.000Z', 1),
  (16, 14, NULL, '', 'OS-5518', '2031-01-15', 115, '2031-03-03T08:55:00.000Z', 1),
  (17, 15, NULL, '', 'OS-5518', '2031-01-15', 145, '2031-03-03T08:55:40.000Z', 1),
  (18, 16, NULL, '', 'OS-5107', '2030-11-11', 115, '2031-03-03T08:56:20.000Z', 1),
  (19, 17, NULL, '', 'OS-5107', '2030-11-11', 145, '2031-03-03T08:57:00.000Z', 1),
  (20, 18, NULL, 'PS-0916', '', '2031-01-15', 490, '2031-03-03T08:57:40.000Z', 1),
  (21, 19, NULL, 'PS-0921', '', '2031-01-15', 560, '2031-03-03T08:58:20.000Z', 1),
  (22, 20, NULL, '', 'OS-5518', '2031-01-15', 95, '2031-03-03T08:59:00.000Z', 1),
  (23, 21, NULL, '', 'OS-5518', '2031-01-15', 620, '2031-03-03T08:59:40.000Z', 1),
  (24, 22, NULL, '', 'OS-5107', '2030-11-11', 340, '2031-03-03T09:00:20.000Z', 1),
  (25, 23, NULL, '', 'OS-5107', '2030-11-11', 810, '2031-03-03T09:01:00.000Z', 1),
  (26, 24, NULL, 'BW-340', '', '2031-01-15', 375, '2031-03-03T09:01:40.000Z', 1),
  (27, 25, NULL, 'BW-317', '', '2030-11-11', 330, '2031-03-03T09:02:20.000Z', 1),
  (28, 26, NULL, 'BW-318', '', '2030-11-11', 410, '2031-03-03T09:03:00.000Z', 1),
  (29, 28, NULL, '', 'OS-5107', '2030-11-11', 220, '2031-03-03T09:04:00.000Z', 1),
  (30, 29, NULL, '', 'OS-5107', '2030-11-11', 220, '2031-03-03T09:04:40.000Z', 1),
  (31, 30, NULL, '', 'OS-5107', '2030-11-11', 220, '2031-03-03T09:05:20.000Z', 1),
  (32, 31, NULL, 'SP-77', '', '2030-12-05', 290, '2031-03-03T09:06:00.000Z', 1),
  (33, 32, NULL, 'VS-208', '', '2030-12-05', 2700, '2031-03-03T09:06:40.000Z', 1),
  (34, 33, NULL, '', 'OS-5320', '2030-12-05', 210, '2031-03-03T09:07:20.000Z', 1),
  (35, 34, NULL, '', 'OS-5518', '2031-01-15', 940, '2031-03-03T09:08:00.000Z', 1),
  (36, 35, NULL, 'TC-4471', '', '2031-02-19', 16500, '2031-03-03T09:08:40.000Z', 1),
  (37, 36, NULL, 'L 26-311', '', '2031-02-01', 390, '2031-03-03T09:09:20.000Z', 1),
  (38, 37, NULL, 'AG-0419', '', '2030-11-11', 780, '2031-03-03T09:10:00.000Z', 1),
  (39, 38, NULL, '', 'OS-5601', '2031-02-01', 320, '2031-03-03T09:10:40.000Z', 1),
  (40, 39, NULL, '', 'OS-5107', '2030-11-11', 40, '2031-03-03T09:11:20.000Z', 1),
  (41, 40, NULL, '', '7916', '2030-10-14', 9600, '2031-03-03T09:12:00.000Z', 1),
  (42, 40, NULL, '', '8841', '2031-02-08', 9600, '2031-03-03T09:12:20.000Z', 1),
  (43, 41, NULL, 'FB-28001', '', '2028-06-26', 435, '2028-06-26T14:00:00.000Z', 3),
  (44, 42, NULL, 'L-28002', '', '2028-06-26', 390, '2028-06-26T14:00:00.000Z', 3),
  (45, 43, NULL, 'L-29003', '', '2029-07-13', 390, '2029-07-13T14:00:00.000Z', 2),
  (46, 38, NULL, 'B-341519298', '', '2026-12-01', 320, '2026-12-01T07:26:38.458Z', 1),
  (47, 1, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (48, 3, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (49, 2, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (50, 21, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (51, 22, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (52, 23, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (53, 14, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (54, 15, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (55, 16, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (56, 17, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (57, 18, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (58, 19, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (59, 20, 42, '', '8841', '2031-02-08', NULL, '2026-12-01T07:26:38.538Z', 1),
  (60, 43, NULL, 'B-402979511', '', '2026-12-01', 390, '2026-12-01T07:26:38.679Z', 1),
  (61, 10, NULL, 'B-568944780', '', '2026-12-01', 310, '2026-12-01T07:26:38.859Z', 1),
  (62, 21, NULL, 'B-552807053', '', '2026-12-01', 620, '2026-12-01T07:26:39.200Z', 1),
  (63, 16, NULL, 'B-238524344', '', '2026-12-01', 115, '2026-12-01T07:26:39.291Z', 1),
  (64, 7, NULL, 'B-984015905', '', '2026-12-01', 680, '2026-12-01T07:26:39.587Z', 1),
  (65, 39, NULL, 'B-521736156', '', '2026-12-01', 40, '2026-12-01T07:26:39.609Z', 1),
  (66, 23, NULL, 'B-725605531', '', '2026-12-01', 810, '2026-12-01T07:26:39.615Z', 1),
  (67, 34, NULL, 'B-787580502', '', '2026-12-01', 940, '2026-12-01T07:26:39.715Z', 1),
  (68, 16, NULL, 'B-353597350', '', '2026-12-01', 115, '2026-12-01T07:26:39.780Z', 1),
  (69, 39, NULL, 'B-502772337', '', '2026-12-01', 40, '2026-12-01T07:26:40.206Z', 1),
  (70, 4, NULL, 'B-777399426', '', '2026-12-01', 210, '2026-12-01T07:26:40.586Z', 1),
  (71, 3, NULL, 'B-117813864', '', '2026-12-01', 520, '2026-12-01T07:26:40.679Z', 1),
  (72, 36, NULL, 'B-455595476', '', '2026-12-01', 390, '2026-12-01T07:26:41.310Z', 1),
  (73, 15, NULL, 'B-956977729', '', '2026-12-01', 145, '2026-12-01T07:26:41.407Z', 1),
  (74, 15, NULL, 'B-503535155', '', '2026-12-01', 145, '2026-12-01T07:26:41.497Z', 1),
  (75, 31, NULL, 'B-762751050', '', '2026-12-01', 290, '2026-12-01T07:26:41.604Z', 1),
  (76, 27, NULL, 'B-758312520', '', '2026-12-01', 460, '2026-12-01T07:26:41.788Z', 1),
  (77, 11, NULL, 'B-630077110', '', '2026-12-01', 310, '2026-12-01T07:26:41.825Z', 1),
  (78, 10, NULL, 'B-704105682', '', '2026-12-01', 310, '2026-12-01T07:26:41.979Z', 1);
insert into "kit_batch_lines" values
  (41, 1, 4),
  (41, 2, 4),
  (41, 3, 5),
  (41, 14, 1),
  (41, 15, 1),
  (41, 16, 1),
  (41, 17, 1),
  (41, 18, 1),
  (41, 19, 1),
  (41, 20, 4),
  (41, 21, 1),
  (41, 22, 1),
  (41, 23, 1),
  (42, 1, 4),
  (42, 2, 4),
  (42, 3, 5),
  (42, 14, 1),
  (42, 15, 1),
  (42, 16, 1),
  (42, 17, 1),
  (42, 18, 1),
  (42, 19, 1),
  (42, 20, 4),
  (42, 21, 1),
  (42, 22, 1),
  (42, 23, 1);
insert into "movements" values
  (1, 1, 'receive', 12, NULL, NULL, '', '2031-03-03T08:45:40.000Z', 1),
  (2, 2, 'receive', 12, NULL, NULL, '', '2031-03-03T08:46:00.000Z', 1),
  (3, 3, 'receive', 6, NULL, NULL, '', '2031-03-03T08:46:40.000Z', 1),
  (4, 4, 'receive', 20, NULL, NULL, '', '2031-03-03T08:47:20.000Z', 1),
  (5, 5, 'receive', 24, NULL, NULL, '', '2031-03-03T08:48:00.000Z', 1),
  (6, 6, 'receive', 5, NULL, NULL, '', '2031-03-03T08:48:40.000Z', 1),
  (7, 7, 'receive', 20, NULL, NULL, '', '2031-03-03T08:49:00.000Z', 1),
  (8, 8, 'receive', 14, NULL, NULL, '', '2031-03-03T08:49:40.000Z', 1),
  (9, 9, 'receive', 4, NULL, NULL, '', '2031-03-03T08:50:20.000Z', 1),
  (10, 10, 'receive', 2, NULL, NULL, '', '2031-03-03T08:51:00.000Z', 1),
  (11, 11, 'receive', 1, NULL, NULL, '', '2031-03-03T08:51:40.000Z', 1),
  (12, 12, 'receive', 5, NULL, NULL, '', '2031-03-03T08:52:20.000Z', 1),
  (13, 13, 'receive', 5, NULL, NULL, '', '2031-03-03T08:53:00.000Z', 1),
  (14, 14, 'receive', 2, NULL, NULL, '', '2031-03-03T08:53:40.000Z', 1),
  (15, 15, 'receive', 6, NULL, NULL, '', '2031-03-03T08:54:20.000Z', 1),
  (16, 16, 'receive', 10, NULL, NULL, '', '2031-03-03T08:55:00.000Z', 1),
  (17, 17, 'receive', 10, NULL, NULL, '', '2031-03-03T08:55:40.000Z', 1),
  (18, 18, 'receive', 4, NULL, NULL, '', '2031-03-03T08:56:20.000Z', 1),
  (19, 19, 'receive', 9, NULL, NULL, '', '2031-03-03T08:57:00.000Z', 1),
  (20, 20, 'receive', 6, NULL, NULL, '', '2031-03-03T08:57:40.000Z', 1),
  (21, 21, 'receive', 5, NULL, NULL, '', '2031-03-03T08:58:20.000Z', 1),
  (22, 22, 'receive', 24, NULL, NULL, '', '2031-03-03T08:59:00.000Z', 1),
  (23, 23, 'receive', 6, NULL, NULL, '', '2031-03-03T08:59:40.000Z', 1),
  (24, 24, 'receive', 6, NULL, NULL, '', '2031-03-03T09:00:20.000Z', 1),
  (25, 25, 'receive', 5, NULL, NULL, '', '2031-03-03T09:01:00.000Z', 1),
  (26, 26, 'receive', 6, NULL, NULL, '', '2031-03-03T09:01:40.000Z', 1),
  (27, 27, 'receive', 6, NULL, NULL, '', '2031-03-03T09:02:20.000Z', 1),
  (28, 28, 'receive', 3, NULL, NULL, '', '2031-03-03T09:03:00.000Z', 1),
  (29, 29, 'receive', 3, NULL, NULL, '', '2031-03-03T09:04:00.000Z', 1),
  (30, 30, 'receive', 3, NULL, NULL, '', '2031-03-03T09:04:40.000Z', 1),
  (31, 31, 'receive', 4, NULL, NULL, '', '2031-03-03T09:05:20.000Z', 1),
  (32, 32, 'receive', 4, NULL, NULL, '', '2031-03-03T09:06:00.000Z', 1),
  (33, 33, 'receive', 2, NULL, NULL, '', '2031-03-03T09:06:40.000Z', 1),
  (34, 34, 'receive', 8, NULL, NULL, '', '2031-03-03T09:07:20.000Z', 1),
  (35, 35, 'receive', 8, NULL, NULL, '', '2031-03-03T09:08:00.000Z', 1),
  (36, 36, 'receive', 1, NULL, NULL, '', '2031-03-03T09:08:40.000Z', 1),
  (37, 37, 'receive', 96, NULL, NULL, '', '2031-03-03T09:09:20.000Z', 1),
  (38, 38, 'receive', 2, NULL, NULL, '', '2031-03-03T09:10:00.000Z', 1),
  (39, 39, 'receive', 12, NULL, NULL, '', '2031-03-03T09:10:40.000Z', 1),
  (40, 40, 'receive', 50, NULL, NULL, '', '2031-03-03T09:11:20.000Z', 1),
  (41, 41, 'receive', 1, NULL, NULL, '', '2031-03-03T09:12:00.000Z', 1),
  (42, 42, 'receive', 3, NULL, NULL, '', '2031-03-03T09:12:20.000Z', 1),
  (43, 41, 'pull', -1, 1, 16900, '', '2031-03-03T09:12:40.000Z', 1),
  (44, 26, 'pull', -1, 1, 800, '', '2031-03-03T09:13:00.000Z', 1),
  (45, 14, 'pull', -1, 1, 600, '', '2031-03-03T09:13:20.000Z', 1),
  (46, 37, 'pull', -9, 1, 850, '', '2031-03-03T09:13:40.000Z', 1),
  (47, 43, 'receive', 24, NULL, NULL, '', '2028-06-26T14:00:00.000Z', 3),
  (48, 43, 'pull', -4, 3, 790, '', '2028-07-03T12:00:00.000Z', 3),
  (49, 44, 'receive', 200, NULL, NULL, '', '2028-06-26T14:00:00.000Z', 3),
  (50, 44, 'pull', -10, 3, 850, '', '2028-07-03T13:48:00.000Z', 3),
  (51, 43, 'pull', -4, 4, 790, '', '2029-07-20T12:00:00.000Z', 2),
  (52, 45, 'receive', 200, NULL, NULL, '', '2029-07-13T14:00:00.000Z', 2),
  (53, 45, 'pull', -10, 4, 850, '', '2029-07-20T13:48:00.000Z', 2),
  (54, 43, 'pull', -4, 5, 790, '', '2031-01-13T12:00:00.000Z', 1),
  (55, 44, 'pull', -10, 5, 850, '', '2031-01-13T13:48:00.000Z', 1),
  (56, 4, 'pull', -2, 1, 940, '', '2026-12-01T07:26:38.436Z', 1),
  (57, 46, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:38.458Z', 1),
  (58, 42, 'open', -1, NULL, NULL, '', '2026-12-01T07:26:38.538Z', 1),
  (59, 47, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (60, 48, 'receive', 5, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (61, 49, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (62, 50, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (63, 51, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (64, 52, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (65, 53, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (66, 54, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (67, 55, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (68, 56, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (69, 57, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (70, 58, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (71, 59, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.538Z', 1),
  (72, 4, 'return', 1, 1, NULL, '', '2026-12-01T07:26:38.656Z', 1),
  (73, 60, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:38.679Z', 1),
  (74, 47, 'pull', -2, 2, 750, '', '2026-12-01T07:26:38.751Z', 1),
  (75, 42, 'open', -1, NULL, NULL, '', '2026-12-01T07:26:38.771Z', 1),
  (76, 47, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (77, 48, 'receive', 5, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (78, 49, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (79, 50, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (80, 51, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (81, 52, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (82, 53, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (83, 54, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (84, 55, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (85, 56, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (86, 57, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (87, 58, 'receive', 1, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (88, 59, 'receive', 4, NULL, NULL, 'out of KX3-KIT-M', '2026-12-01T07:26:38.771Z', 1),
  (89, 61, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:38.859Z', 1),
  (90, 47, 'return', 1, 2, NULL, '', '2026-12-01T07:26:38.985Z', 1),
  (91, 47, 'return', 1, 2, NULL, '', '2026-12-01T07:26:39.045Z', 1),
  (92, 62, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.200Z', 1),
  (93, 63, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.291Z', 1),
  (94, 4, 'return', 1, 1, NULL, '', '2026-12-01T07:26:39.390Z', 1),
  (95, 64, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.587Z', 1),
  (96, 65, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.609Z', 1),
  (97, 66, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.615Z', 1),
  (98, 67, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.715Z', 1),
  (99, 68, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:39.780Z', 1),
  (100, 4, 'pull', -2, 9, 940, '', '2026-12-01T07:26:40.017Z', 1),
  (101, 4, 'return', 1, 9, NULL, '', '2026-12-01T07:26:40.093Z', 1),
  (102, 4, 'return', 1, 9, NULL, '', '2026-12-01T07:26:40.105Z', 1),
  (103, 69, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:40.206Z', 1),
  (104, 4, 'pull', -2, 19, 940, '', '2026-12-01T07:26:40.430Z', 1),
  (105, 4, 'return', 1, 19, NULL, '', '2026-12-01T07:26:40.575Z', 1),
  (106, 70, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:40.586Z', 1),
  (107, 71, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:40.679Z', 1),
  (108, 4, 'return', 1, 19, NULL, '', '2026-12-01T07:26:40.953Z', 1),
  (109, 72, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.310Z', 1),
  (110, 73, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.407Z', 1),
  (111, 74, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.497Z', 1),
  (112, 75, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.604Z', 1),
  (113, 76, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.788Z', 1),
  (114, 77, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.825Z', 1),
  (115, 78, 'receive', 20, NULL, NULL, '', '2026-12-01T07:26:41.979Z', 1);
insert into "cores" values
  (1, 'to send back', 'KX3-TC-11, Torque converter, 11 in, rebuilt', 1, 6000, NULL, 36, NULL, '2031-03-03T09:08:40.000Z', 1);
insert into "piece_height_points" values
  (67, 1, 1765300),
  (67, 2, 1778000),
  (67, 3, 1765300);
insert into "piece_looks" values
  (1, 46, 'not flat', 101600, 0, 0, 0, 0, '', '2031-03-03T08:31:40.000Z', 1),
  (2, 53, 'not tried', NULL, 1, 0, 0, 0, '', '2031-03-03T08:32:00.000Z', 1),
  (3, 60, 'flat', NULL, 0, 1, 0, 1, '', '2031-03-03T08:32:20.000Z', 1),
  (4, 65, 'not flat', 152400, 0, 0, 1, 0, '', '2031-03-03T08:32:40.000Z', 1),
  (5, 69, 'flat', NULL, 0, 0, 0, 1, '', '2031-03-03T08:33:00.000Z', 1);
insert into "label_sizes" values
  (1, 'Bin, 50 × 25 mm', 50000, 25000),
  (2, 'Plate, 40 × 15 mm', 40000, 15000),
  (3, 'Case, 80 × 50 mm', 80000, 50000);
insert into "job_lines" values
  (1, 6, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:38.883Z', 1),
  (2, 2, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.011Z', 1),
  (3, 9, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.109Z', 1),
  (4, 2, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.268Z', 1),
  (5, 2, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.488Z', 1),
  (6, 9, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.498Z', 1),
  (7, 2, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.791Z', 1),
  (8, 6, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.802Z', 1),
  (9, 13, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.846Z', 1),
  (10, 9, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:39.915Z', 1),
  (11, 15, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:40.712Z', 1),
  (12, 15, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:41.222Z', 1),
  (13, 28, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:41.626Z', 1),
  (14, 27, 'labour', 'Rebuild', 1800, 11500, NULL, 0, NULL, '2026-12-01T07:26:41.815Z', 1);
insert into "estimates" values
  (1, 6, 1, '', 'Sales tax', 0, 0, 0, 207000, 0, '2026-12-01T07:26:38.895Z', 1),
  (2, 9, 1, '', 'Sales tax', 0, 0, 0, 207000, 0, '2026-12-01T07:26:39.462Z', 1),
  (3, 9, 2, '', 'Sales tax', 0, 0, 0, 414000, 0, '2026-12-01T07:26:39.563Z', 1),
  (4, 6, 2, '', 'Sales tax', 0, 0, 0, 414000, 0, '2026-12-01T07:26:40.029Z', 1),
  (5, 9, 3, '', 'Sales tax', 0, 0, 0, 621000, 0, '2026-12-01T07:26:40.313Z', 1),
  (6, 2, 1, '', 'Sales tax', 0, 0, 0, 828000, 0, '2026-12-01T07:26:40.986Z', 1),
  (7, 13, 1, '', 'Sales tax', 0, 0, 0, 207000, 0, '2026-12-01T07:26:41.670Z', 1),
  (8, 28, 1, '', 'Sales tax', 0, 0, 0, 207000, 0, '2026-12-01T07:26:41.990Z', 1);
insert into "estimate_lines" values
  (1, 1, 1),
  (4, 1, 1),
  (6, 1, 2),
  (2, 1, 3),
  (3, 1, 3),
  (5, 1, 3),
  (6, 2, 4),
  (6, 3, 5),
  (3, 2, 6),
  (5, 2, 6),
  (6, 4, 7),
  (4, 2, 8),
  (7, 1, 9),
  (5, 3, 10),
  (8, 1, 13);
insert into "approvals" values
  (1, 1, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:39.066Z', 1),
  (2, 1, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:39.256Z', 1),
  (3, 1, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:39.359Z', 1),
  (4, 3, 'Tam Okoro', 'phone', 414000, '2026-12-01', '', '2026-12-01T07:26:39.692Z', 1),
  (5, 1, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:39.891Z', 1),
  (6, 1, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:39.966Z', 1),
  (7, 4, 'Tam Okoro', 'phone', 414000, '2026-12-01', '', '2026-12-01T07:26:40.492Z', 1),
  (8, 4, 'Tam Okoro', 'phone', 414000, '2026-12-01', '', '2026-12-01T07:26:40.734Z', 1),
  (9, 6, 'Tam Okoro', 'phone', 828000, '2026-12-01', '', '2026-12-01T07:26:41.176Z', 1),
  (10, 6, 'Tam Okoro', 'phone', 828000, '2026-12-01', '', '2026-12-01T07:26:41.396Z', 1),
  (11, 5, 'Tam Okoro', 'phone', 621000, '2026-12-01', '', '2026-12-01T07:26:41.571Z', 1),
  (12, 7, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:41.764Z', 1),
  (13, 7, 'Tam Okoro', 'phone', 207000, '2026-12-01', '', '2026-12-01T07:26:41.946Z', 1),
  (14, 4, 'Tam Okoro', 'phone', 414000, '2026-12-01', '', '2026-12-01T07:26:41.957Z', 1);
insert into "intakes" values
  (1, 1, 'Slips 2–3 when hot.', 'ratio, third gear', 'low', 'brown', 'burnt', 'dark fines, one curl of brass', 'the works, never out', 'trailer brakes added in spring', '2031-03-03T08:06:00.000Z', 1),
  (2, 2, 'Late into third when cold.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2031-03-03T09:14:00.000Z', 1),
  (3, 3, 'Flares 2–3.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2028-06-30T14:00:00.000Z', 1),
  (4, 4, 'Shudders uphill.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2029-07-17T14:00:00.000Z', 1),
  (5, 5, 'No reverse in the morning.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2031-01-10T14:00:00.000Z', 1),
  (6, 6, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:38.345Z', 1),
  (7, 7, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:38.379Z', 1),
  (8, 8, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:38.804Z', 1),
  (9, 9, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:38.848Z', 1),
  (10, 10, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:38.973Z', 1),
  (11, 11, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.156Z', 1),
  (12, 12, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.550Z', 1),
  (13, 13, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.574Z', 1),
  (14, 14, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.622Z', 1),
  (15, 15, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.812Z', 1),
  (16, 16, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.940Z', 1),
  (17, 17, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:39.988Z', 1),
  (18, 18, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.000Z', 1),
  (19, 19, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.118Z', 1),
  (20, 20, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.388Z', 1),
  (21, 21, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.656Z', 1),
  (22, 22, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.689Z', 1),
  (23, 23, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.757Z', 1),
  (24, 24, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.868Z', 1),
  (25, 25, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:40.941Z', 1),
  (26, 26, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:41.022Z', 1),
  (27, 27, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:41.355Z', 1),
  (28, 28, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:41.452Z', 1),
  (29, 29, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:41.749Z', 1),
  (30, 30, 'Slips 2–3 when hot.', '', 'not looked at', 'not looked at', 'not looked at', '', '', '', '2026-12-01T07:26:41.836Z', 1);
insert into "promises" values
  (1, 1, '2031-03-06', '', '2031-03-03T08:18:40.000Z', 1);
insert into "calls" values
  (1, 1, 'we called', 'Tam Okoro', 'Front end play is far out; told him a washer, not a case. Friday is fine with him.', '2031-03-03T08:19:00.000Z', 1);
insert into "sign_offs" values
  (1, 3, 'in vehicle', '', '2028-07-03T13:52:00.000Z', 3),
  (2, 4, 'in vehicle', '', '2029-07-20T13:52:00.000Z', 2),
  (3, 5, 'in vehicle', '', '2031-01-13T13:52:00.000Z', 1);
insert into "jobs_in_stages" values
  (1, 3, 3),
  (2, 1, 4),
  (3, 9, 8),
  (4, 9, 12),
  (5, 9, 16),
  (6, 1, 17),
  (7, 1, 18),
  (8, 1, 19),
  (9, 1, 20),
  (10, 1, 21),
  (11, 1, 22),
  (12, 1, 23),
  (13, 1, 24),
  (14, 1, 25),
  (15, 1, 26),
  (16, 1, 27),
  (17, 1, 28),
  (18, 1, 29),
  (19, 1, 30),
  (20, 1, 31),
  (21, 1, 32),
  (22, 1, 33),
  (23, 1, 34),
  (24, 1, 35),
  (25, 1, 36),
  (26, 1, 37),
  (27, 1, 38),
  (28, 1, 39),
  (29, 1, 40),
  (30, 1, 41);
insert into "job_words" (rowid, words) values
  (1, '1
1
Tam Okoro
555 0117
KX3
KX3-19-2214
half-ton pickup
Slips 2–3 when hot.
ratio, third gear
dark fines, one curl of brass
the works, never out
trailer brakes added in spring
A31
A32
A33
A34
B11
B12
B13
B14
dark fines, one curl of brass


steel 2
a thicker one goes in
friction 1

friction 2
lining whole, no glaze
steel 2
a thin one opens the clearance
snap ring
selective: a thicker one
converter hub bushing
5.0 thou, at most 4.5
front thrust washer
end play 31
reverse drum
band side, two light rings
Tam Okoro
Front end play is far out; told him a washer, not a case. Friday is fine with him.
KX3-KIT-M

KX3-BU-01
BW-340
KX3-SR-086

FLUID-M3
L 26-311
KX3-FR-080L
FB-2102'),
  (2, '2
2
Ilse Brandvold
555 0144
KX3
KX3-20-0417
delivery van
Late into third when cold.




KX3-FR-080
'),
  (3, '3

Edda Rastall
555 0205
KX3
KX3-28-0001
estate car
Flares 2–3.




Okerlund Red


KX3-FR-DI20
FB-28001
FLUID-OR
L-28002
Edda Rastall'),
  (4, '4

Inge Gantry
555 0206
KX3
KX3-29-0002
estate car
Shudders uphill.




Tarnbrook 6


KX3-FR-DI20
FB-28001
FLUID-T6
L-29003
Inge Gantry'),
  (5, '5

Gita Quillan
555 0207
KX3
KX3-31-0003
sedan
No reverse in the morning.




Okerlund Red


KX3-FR-DI20
FB-28001
FLUID-OR
L-28002
Gita Quillan'),
  (6, '6

Customer 465401409
555 0117
KX3
KX3-465401409

Slips 2–3 when hot.




pump bushing
'),
  (7, '7

Customer 793508246
555 0117
KX3
KX3-793508246

Slips 2–3 when hot.




pump bushing

Tam Okoro'),
  (8, '8

Customer 227032516
555 0117
KX3
KX3-227032516

Slips 2–3 when hot.




pump bushing

Tam Okoro'),
  (9, '9

Customer 658331928
555 0117
KX3
KX3-658331928

Slips 2–3 when hot.




pump bushing

KX3-FR-080L
FB-2102'),
  (10, '10

Customer 613221712
555 0117
KX3
KX3-613221712

Slips 2–3 when hot.




Tam Okoro'),
  (11, '11

Customer 793508246
555 0117
KX3
KX3-793508246

Slips 2–3 when hot.




Slips again.

pump bushing

Tam Okoro'),
  (12, '12

Customer 290194112
555 0117
KX3
KX3-290194112

Slips 2–3 when hot.




Tam Okoro'),
  (13, '13

Customer 613221712
555 0117
KX3
KX3-613221712

Slips 2–3 when hot.




Slips again.

pump bushing
'),
  (14, '14

Customer 555515750
555 0117
KX3
KX3-555515750

Slips 2–3 when hot.




Tam Okoro'),
  (15, '15

Customer 365915661
555 0117
KX3
KX3-365915661

Slips 2–3 when hot.




pump bushing

Tam Okoro'),
  (16, '16

Customer 673989342
555 0117
KX3
KX3-673989342

Slips 2–3 when hot.




pump bushing
'),
  (17, '17

Customer 890317241
555 0117
KX3
KX3-890317241

Slips 2–3 when hot.




Tam Okoro'),
  (18, '18

Customer 513899161
555 0117
KX3
KX3-513899161

Slips 2–3 when hot.




Tam Okoro'),
  (19, '19

Customer 227032516
555 0117
KX3
KX3-227032516

Slips 2–3 when hot.




Slips again.

KX3-FR-080L
FB-2102
pump bushing

Tam Okoro'),
  (20, '20

Customer 269776637
555 0117
KX3
KX3-269776637

Slips 2–3 when hot.



'),
  (21, '21

Customer 576553682
555 0117
KX3
KX3-576553682

Slips 2–3 when hot.




Tam Okoro'),
  (22, '22

Customer 105794832
555 0117
KX3
KX3-105794832

Slips 2–3 when hot.




Tam Okoro'),
  (23, '23

Customer 613221712
555 0117
KX3
KX3-613221712

Slips 2–3 when hot.




Slips again.

pump bushing
'),
  (24, '24

Customer 774494749
555 0117
KX3
KX3-774494749

Slips 2–3 when hot.



'),
  (25, '25

Customer 761040910
555 0117
KX3
KX3-761040910

Slips 2–3 when hot.



'),
  (26, '26

Customer 567778482
555 0117
KX3
KX3-567778482

Slips 2–3 when hot.




pump bushing
'),
  (27, '27

Customer 290194112
555 0117
KX3
KX3-290194112

Slips 2–3 when hot.




Slips again.

Tam Okoro'),
  (28, '28

Customer 793508246
555 0117
KX3
KX3-793508246

Slips 2–3 when hot.




Slips again.
'),
  (29, '29

Customer 613221712
555 0117
KX3
KX3-613221712

Slips 2–3 when hot.




Slips again.
'),
  (30, '30

Customer 576553682
555 0117
KX3
KX3-576553682

Slips 2–3 when hot.




Slips again.
');
insert into "photos" values
  (1, 1, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:38.388Z', 1, NULL),
  (2, 2, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:38.495Z', 1, NULL),
  (3, 7, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:38.575Z', 1, NULL),
  (4, 6, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:38.645Z', 1, NULL),
  (5, 8, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:38.963Z', 1, NULL),
  (6, 9, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:39.118Z', 1, NULL),
  (7, 11, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:39.171Z', 1, NULL),
  (8, 13, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:39.699Z', 1, NULL),
  (9, 14, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:39.731Z', 1, NULL),
  (10, 15, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:39.977Z', 1, NULL),
  (11, 18, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:40.083Z', 1, NULL),
  (12, 16, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:40.260Z', 1, NULL),
  (13, 17, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:40.549Z', 1, NULL),
  (14, 19, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:40.829Z', 1, NULL),
  (15, 23, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:41.115Z', 1, NULL),
  (16, 26, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:41.470Z', 1, NULL),
  (17, 24, 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 'e55e87521531409968dcf3686cbaba25d1c4f4b62d1f90f938ae0384240510cd', 8, 6, 'Pan', NULL, 0, NULL, '2026-12-01T07:26:41.487Z', 1, NULL);
insert into "gauges" values
  (1, 'dial plunger', '2031-03-03T08:34:00.000Z', 1),
  (2, 'dial lever', '2031-03-03T08:34:40.000Z', 1),
  (3, 'micrometer', '2031-03-03T08:35:20.000Z', 1),
  (4, 'feeler set', '2031-03-03T08:43:00.000Z', 1),
  (5, 'pressure gauge', '2031-03-03T08:43:40.000Z', 1),
  (6, 'dial plunger', '2026-12-01T07:26:38.669Z', 1),
  (7, 'dial plunger', '2026-12-01T07:26:38.829Z', 1),
  (8, 'dial plunger', '2026-12-01T07:26:38.928Z', 1),
  (9, 'dial plunger', '2026-12-01T07:26:39.191Z', 1),
  (10, 'dial plunger', '2026-12-01T07:26:39.245Z', 1),
  (11, 'dial plunger', '2026-12-01T07:26:39.399Z', 1),
  (12, 'dial plunger', '2026-12-01T07:26:39.722Z', 1),
  (13, 'dial plunger', '2026-12-01T07:26:39.824Z', 1),
  (14, 'dial plunger', '2026-12-01T07:26:39.867Z', 1),
  (15, 'dial plunger', '2026-12-01T07:26:40.196Z', 1),
  (16, 'dial plunger', '2026-12-01T07:26:40.360Z', 1),
  (17, 'dial plunger', '2026-12-01T07:26:40.668Z', 1),
  (18, 'dial plunger', '2026-12-01T07:26:40.975Z', 1),
  (19, 'dial plunger', '2026-12-01T07:26:41.345Z', 1),
  (20, 'dial plunger', '2026-12-01T07:26:41.417Z', 1),
  (21, 'dial plunger', '2026-12-01T07:26:41.659Z', 1),
  (22, 'dial plunger', '2026-12-01T07:26:41.700Z', 1);
insert into "gauge_cards" values
  (1, 1, 'Dial 1', 'thou', 25400, 12700, 'maker’s sheet', 3, 'HL-D-0117', 90, 0, '2031-03-03T08:34:00.000Z', 1),
  (2, 2, 'Lever 2', 'thou', 12700, 12700, 'certificate of the maker', 12, 'HL-L-0203', 90, 0, '2031-03-03T08:34:40.000Z', 1),
  (3, 3, 'Mike 0–1', 'thou', 2540, 2540, 'certificate of the maker', 0, 'HL-M-0031', 180, 0, '2031-03-03T08:35:20.000Z', 1),
  (4, 4, 'Leaves A', 'thou', 25400, 7620, 'stamped on the case', 0, '', 365, 0, '2031-03-03T08:43:00.000Z', 1),
  (5, 5, 'Bench air', 'psi', 6895, 13790, 'marked 2 % of 100 psi', 0, 'HL-P-0009', 365, 0, '2031-03-03T08:43:40.000Z', 1),
  (6, 6, 'D931717815', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:38.669Z', 1),
  (7, 7, 'D970342058', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:38.829Z', 1),
  (8, 8, 'D67460392', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:38.928Z', 1),
  (9, 9, 'D207256173', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.191Z', 1),
  (10, 10, 'D456355218', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.245Z', 1),
  (11, 11, 'D780821561', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.399Z', 1),
  (12, 12, 'D465879034', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.722Z', 1),
  (13, 13, 'D377280162', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.824Z', 1),
  (14, 14, 'D519775233', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:39.867Z', 1),
  (15, 15, 'D492547', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:40.196Z', 1),
  (16, 16, 'D907382109', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:40.360Z', 1),
  (17, 17, 'D85687108', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:40.668Z', 1),
  (18, 18, 'D442956656', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:40.975Z', 1),
  (19, 19, 'D647478129', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:41.345Z', 1),
  (20, 20, 'D510671375', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:41.417Z', 1),
  (21, 21, 'D177275260', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:41.659Z', 1),
  (22, 22, 'D645345066', 'thou', 25400, 12700, 'certificate', 5, '', 90, 0, '2026-12-01T07:26:41.700Z', 1);
insert into "gauge_checks" values
  (1, 1, 'blocks', '2031-02-01', 12700, '', NULL, '', '2031-03-03T08:34:20.000Z', 1),
  (2, 2, 'blocks', '2030-11-19', 12700, '', NULL, '', '2031-03-03T08:35:00.000Z', 1),
  (3, 3, 'blocks', '2031-01-21', 2540, '', NULL, '', '2031-03-03T08:35:40.000Z', 1),
  (4, 4, 'another gauge', '2031-01-21', 7620, '', NULL, '', '2031-03-03T08:43:20.000Z', 1),
  (5, 5, 'another gauge', '2031-02-19', 13790, '', NULL, '', '2031-03-03T08:44:00.000Z', 1),
  (6, 3, 'blocks', '2026-12-01', 2540, '', NULL, '', '2026-12-01T07:26:38.565Z', 1),
  (7, 3, 'blocks', '2026-12-01', 2540, '', NULL, '', '2026-12-01T07:26:39.084Z', 1),
  (8, 11, 'blocks', '2026-12-01', 12700, '', NULL, '', '2026-12-01T07:26:39.450Z', 1),
  (9, 5, 'blocks', '2026-12-01', 13790, '', NULL, '', '2026-12-01T07:26:39.526Z', 1),
  (10, 1, 'blocks', '2026-12-01', 12700, '', NULL, '', '2026-12-01T07:26:40.608Z', 1),
  (11, 5, 'blocks', '2026-12-01', 13790, '', NULL, '', '2026-12-01T07:26:40.964Z', 1),
  (12, 5, 'blocks', '2026-12-01', 13790, '', NULL, '', '2026-12-01T07:26:41.011Z', 1),
  (13, 5, 'blocks', '2026-12-01', 13790, '', NULL, '', '2026-12-01T07:26:41.211Z', 1),
  (14, 16, 'blocks', '2026-12-01', 12700, '', NULL, '', '2026-12-01T07:26:41.440Z', 1),
  (15, 14, 'blocks', '2026-12-01', 12700, '', NULL, '', '2026-12-01T07:26:41.593Z', 1),
  (16, 10, 'blocks', '2026-12-01', 12700, '', NULL, '', '2026-12-01T07:26:41.712Z', 1);
insert into "gauge_check_points" values
  (1, 1, 1270000, 1270000, '50', '50'),
  (1, 2, 2540000, 2545080, '100', '100.2'),
  (1, 3, 5080000, 5087620, '200', '200.3'),
  (2, 1, 254000, 254000, '10', '10'),
  (2, 2, 762000, 769620, '30', '30.3'),
  (3, 1, 1270000, 1270000, '50', '50'),
  (3, 2, 2540000, 2540000, '100', '100'),
  (3, 3, 12700000, 12702540, '500', '500.1'),
  (4, 1, 254000, 254000, '10', '10'),
  (4, 2, 510540, 508000, '20.1', '20'),
  (4, 3, 762000, 762000, '30', '30'),
  (5, 1, 275790, 296475, '40', '43'),
  (5, 2, 413685, 441264, '60', '64'),
  (6, 1, 254000, 254000, '10', '10'),
  (6, 2, 1270000, 1270000, '50', '50'),
  (7, 1, 254000, 254000, '10', '10'),
  (7, 2, 1270000, 1270000, '50', '50'),
  (8, 1, 254000, 254000, '10', '10'),
  (8, 2, 1270000, 1270000, '50', '50'),
  (9, 1, 68948, 68948, '10', '10'),
  (9, 2, 344738, 344738, '50', '50'),
  (10, 1, 254000, 254000, '10', '10'),
  (10, 2, 1270000, 1270000, '50', '50'),
  (11, 1, 68948, 68948, '10', '10'),
  (11, 2, 344738, 344738, '50', '50'),
  (12, 1, 68948, 68948, '10', '10'),
  (12, 2, 344738, 344738, '50', '50'),
  (13, 1, 68948, 68948, '10', '10'),
  (13, 2, 344738, 344738, '50', '50'),
  (14, 1, 254000, 254000, '10', '10'),
  (14, 2, 1270000, 1270000, '50', '50'),
  (15, 1, 254000, 254000, '10', '10'),
  (15, 2, 1270000, 1270000, '50', '50'),
  (16, 1, 254000, 254000, '10', '10'),
  (16, 2, 1270000, 1270000, '50', '50');
insert into "studies" values
  (1, 'Mike on reaction steels', 'direct', 3, 2, 101600, 780368863, '2031-03-03T08:36:00.000Z', 1);
insert into "study_parts" values
  (1, 1, 'R1'),
  (1, 2, 'R2'),
  (1, 3, 'R3'),
  (1, 4, 'R4'),
  (1, 5, 'R5');
insert into "study_people" values
  (1, 1, 1),
  (1, 2, 2);
insert into "study_reads" values
  (1, 1, 1, '79.5', 2019300, NULL, '', '2031-03-03T08:36:20.000Z', 1),
  (2, 1, 2, '78.6', 1996440, NULL, '', '2031-03-03T08:36:40.000Z', 1),
  (3, 1, 3, '77.9', 1978660, NULL, '', '2031-03-03T08:37:00.000Z', 1),
  (4, 1, 4, '77.5', 1968500, NULL, '', '2031-03-03T08:37:20.000Z', 1),
  (5, 1, 5, '76.8', 1950720, NULL, '', '2031-03-03T08:37:40.000Z', 1),
  (6, 1, 6, '78.4', 1991360, NULL, '', '2031-03-03T08:38:00.000Z', 1),
  (7, 1, 7, '76.6', 1945640, NULL, '', '2031-03-03T08:38:20.000Z', 1),
  (8, 1, 8, '79.3', 2014220, NULL, '', '2031-03-03T08:38:40.000Z', 1),
  (9, 1, 9, '77.7', 1973580, NULL, '', '2031-03-03T08:39:00.000Z', 1),
  (10, 1, 10, '77.3', 1963420, NULL, '', '2031-03-03T08:39:20.000Z', 1),
  (11, 1, 11, '77.1', 1958340, NULL, '', '2031-03-03T08:39:40.000Z', 1),
  (12, 1, 12, '78.2', 1986280, NULL, '', '2031-03-03T08:40:00.000Z', 1),
  (13, 1, 13, '79.3', 2014220, NULL, '', '2031-03-03T08:40:20.000Z', 1),
  (14, 1, 14, '78.4', 1991360, NULL, '', '2031-03-03T08:40:40.000Z', 1),
  (15, 1, 15, '77.3', 1963420, NULL, '', '2031-03-03T08:41:00.000Z', 1),
  (16, 1, 16, '76.9', 1953260, NULL, '', '2031-03-03T08:41:20.000Z', 1),
  (17, 1, 17, '78.2', 1986280, NULL, '', '2031-03-03T08:41:40.000Z', 1),
  (18, 1, 18, '77.1', 1958340, NULL, '', '2031-03-03T08:42:00.000Z', 1),
  (19, 1, 19, '79.1', 2009140, NULL, '', '2031-03-03T08:42:20.000Z', 1),
  (20, 1, 20, '78.0', 1981200, NULL, '', '2031-03-03T08:42:40.000Z', 1);
insert into "gauge_lines" values
  (1, 'Practice gauge', 'practice', NULL, NULL, NULL, NULL, NULL, NULL, 'steady', '{number}', 'mm', 0, 1000, 5, 500, 50, 0);
insert into "reading_traces" values
  (9, 'Practice gauge', 1, X'0000640064006400640064006400640064006400640064006400640064006400640064006400640064006481D90C64C1A6086491BF0564E1D40364C1B8026491CB0164817D64E15D64C13E64A11F64A11F64F12E640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064E0AA1164C0A3096480F10464E0D70264C0BB0164E05D64F02E64C03E6400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064809F4964F0A72C6490FD1A64E0AD1064D0F10964D0FD0564E0D40364A0990264F0AB0164D0890264006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400640064006400', 170, 0, -305000, 1524000);
insert into "lists" values
  (1, 1, 0, NULL, 'Teardown', 'teardown', 'invented sheet KX3, page 6'),
  (2, 1, 1, 1, 'Forward before the snap ring', 'build', 'invented sheet KX3, page 6'),
  (3, 1, 2, 2, 'Direct before the snap ring', 'build', 'invented sheet KX3, page 6'),
  (4, 1, 3, 3, 'Low/reverse before the snap ring', 'build', 'invented sheet KX3, page 6'),
  (5, 1, 4, NULL, 'Valve body', 'build', 'invented sheet KX3, page 6'),
  (6, 1, 5, NULL, 'Converter', 'build', 'invented sheet KX3, page 6'),
  (7, 1, 6, NULL, 'Cooler', 'final', 'invented sheet KX3, page 6'),
  (8, 1, 7, NULL, 'Final', 'final', 'invented sheet KX3, page 6');
insert into "list_lines" values
  (1, 1, 0, 'What lay in the pan and on the magnet', 'words', NULL, NULL, NULL, NULL),
  (2, 1, 1, 'Pump faces', 'choice', NULL, NULL, NULL, NULL),
  (3, 1, 2, 'Sealing-ring lands', 'choice', NULL, NULL, NULL, NULL),
  (4, 1, 3, 'Case looked over for cracks', 'tick', NULL, NULL, NULL, NULL),
  (5, 2, 0, 'Frictions', 'count', 4, NULL, NULL, NULL),
  (6, 2, 1, 'Steels', 'count', 4, NULL, NULL, NULL),
  (7, 2, 2, 'Backing plate at the ring end', 'tick', NULL, NULL, NULL, NULL),
  (8, 2, 3, 'Ring seated all round', 'tick', NULL, NULL, NULL, NULL),
  (9, 3, 0, 'Frictions', 'count', 4, NULL, NULL, NULL),
  (10, 3, 1, 'Steels', 'count', 4, NULL, NULL, NULL),
  (11, 3, 2, 'Thinnest steel in slot 2 or 3', 'tick', NULL, NULL, NULL, NULL),
  (12, 3, 3, 'Backing plate at the ring end', 'tick', NULL, NULL, NULL, NULL),
  (13, 3, 4, 'Ring seated all round', 'tick', NULL, NULL, NULL, NULL),
  (14, 4, 0, 'Frictions', 'count', 5, NULL, NULL, NULL),
  (15, 4, 1, 'Steels', 'count', 5, NULL, NULL, NULL),
  (16, 4, 2, 'Wave plates', 'count', 1, NULL, NULL, NULL),
  (17, 4, 3, 'Backing plate at the ring end', 'tick', NULL, NULL, NULL, NULL),
  (18, 4, 4, 'Ring seated all round', 'tick', NULL, NULL, NULL, NULL),
  (19, 5, 0, 'Separator plate', 'words', NULL, NULL, NULL, NULL),
  (20, 5, 1, 'Check balls', 'count', 5, NULL, NULL, NULL),
  (21, 5, 2, 'Ball 1', 'tick', NULL, NULL, NULL, NULL),
  (22, 5, 3, 'Ball 2', 'tick', NULL, NULL, NULL, NULL),
  (23, 5, 4, 'Ball 3', 'tick', NULL, NULL, NULL, NULL),
  (24, 5, 5, 'Ball 4', 'tick', NULL, NULL, NULL, NULL),
  (25, 5, 6, 'Ball 5', 'tick', NULL, NULL, NULL, NULL),
  (26, 5, 7, 'Direct feed hole, in', 'change', NULL, NULL, NULL, NULL),
  (27, 5, 8, 'Pressure valve spring', 'change', NULL, NULL, NULL, NULL),
  (28, 5, 9, 'Third-gear feed', 'choice', NULL, NULL, NULL, NULL),
  (29, 6, 0, 'Source', 'choice', NULL, NULL, NULL, NULL),
  (30, 7, 0, 'Cooler and lines', 'choice', NULL, NULL, NULL, NULL),
  (31, 8, 0, 'Fluid', 'words', NULL, NULL, NULL, NULL),
  (32, 8, 1, 'Fluid put in', 'words', NULL, NULL, NULL, NULL),
  (33, 8, 2, 'Stall, D', 'stall', NULL, 2100, 2400, 5),
  (34, 8, 3, 'Shift 1–2', 'choice', NULL, NULL, NULL, NULL),
  (35, 8, 4, 'Shift 2–3', 'choice', NULL, NULL, NULL, NULL),
  (36, 8, 5, 'Leaks when hot', 'choice', NULL, NULL, NULL, NULL),
  (37, 8, 6, 'Driven warm and cold through every gear', 'tick', NULL, NULL, NULL, NULL);
insert into "list_line_options" values
  (2, 0, 'smooth', 1),
  (2, 1, 'scored', 0),
  (3, 0, 'smooth', 1),
  (3, 1, 'scored', 0),
  (3, 2, 'cracked', 0),
  (28, 0, 'as made', 1),
  (28, 1, 'opened', 1),
  (28, 2, 'blocked', 0),
  (29, 0, 'new', 1),
  (29, 1, 'rebuilt', 1),
  (29, 2, 'as it came out', 0),
  (30, 0, 'flushed', 1),
  (30, 1, 'replaced', 1),
  (30, 2, 'left as they were', 0),
  (34, 0, 'right', 1),
  (34, 1, 'soft', 0),
  (34, 2, 'late', 0),
  (34, 3, 'flares', 0),
  (35, 0, 'right', 1),
  (35, 1, 'soft', 0),
  (35, 2, 'late', 0),
  (35, 3, 'flares', 0),
  (36, 0, 'none', 1),
  (36, 1, 'seeps', 0),
  (36, 2, 'drips', 0);
insert into "list_answers" values
  (1, 1, 1, 'written', 'dark fines, one curl of brass', '', NULL, NULL, '', '2031-03-03T08:14:00.000Z', 1),
  (2, 1, 2, 'chosen', 'smooth', '', NULL, NULL, '', '2031-03-03T08:14:20.000Z', 1),
  (3, 1, 3, 'chosen', 'smooth', '', NULL, NULL, '', '2031-03-03T08:14:40.000Z', 1),
  (4, 1, 4, 'done', '', '', NULL, NULL, '', '2031-03-03T08:15:00.000Z', 1),
  (5, 3, 5, 'counted', '', '', 4, NULL, '', '2028-07-03T13:04:00.000Z', 3),
  (6, 3, 6, 'counted', '', '', 4, NULL, '', '2028-07-03T13:08:00.000Z', 3),
  (7, 3, 9, 'counted', '', '', 4, NULL, '', '2028-07-03T13:12:00.000Z', 3),
  (8, 3, 10, 'counted', '', '', 4, NULL, '', '2028-07-03T13:16:00.000Z', 3),
  (9, 3, 14, 'counted', '', '', 5, NULL, '', '2028-07-03T13:20:00.000Z', 3),
  (10, 3, 15, 'counted', '', '', 5, NULL, '', '2028-07-03T13:24:00.000Z', 3),
  (11, 3, 28, 'chosen', 'as made', '', NULL, NULL, '', '2028-07-03T13:28:00.000Z', 3),
  (12, 3, 29, 'chosen', 'rebuilt', '', NULL, NULL, '', '2028-07-03T13:32:00.000Z', 3),
  (13, 3, 30, 'chosen', 'replaced', '', NULL, NULL, '', '2028-07-03T13:36:00.000Z', 3),
  (14, 3, 31, 'written', 'Okerlund Red', '', NULL, NULL, '', '2028-07-03T13:40:00.000Z', 3),
  (15, 3, 36, 'chosen', 'none', '', NULL, NULL, '', '2028-07-03T13:44:00.000Z', 3),
  (16, 4, 5, 'counted', '', '', 4, NULL, '', '2029-07-20T13:04:00.000Z', 2),
  (17, 4, 6, 'counted', '', '', 4, NULL, '', '2029-07-20T13:08:00.000Z', 2),
  (18, 4, 9, 'counted', '', '', 4, NULL, '', '2029-07-20T13:12:00.000Z', 2),
  (19, 4, 10, 'counted', '', '', 4, NULL, '', '2029-07-20T13:16:00.000Z', 2),
  (20, 4, 14, 'counted', '', '', 5, NULL, '', '2029-07-20T13:20:00.000Z', 2),
  (21, 4, 15, 'counted', '', '', 5, NULL, '', '2029-07-20T13:24:00.000Z', 2),
  (22, 4, 28, 'chosen', 'as made', '', NULL, NULL, '', '2029-07-20T13:28:00.000Z', 2),
  (23, 4, 29, 'chosen', 'rebuilt', '', NULL, NULL, '', '2029-07-20T13:32:00.000Z', 2),
  (24, 4, 30, 'chosen', 'flushed', '', NULL, NULL, '', '2029-07-20T13:36:00.000Z', 2),
  (25, 4, 31, 'written', 'Tarnbrook 6', '', NULL, NULL, '', '2029-07-20T13:40:00.000Z', 2),
  (26, 4, 36, 'chosen', 'none', '', NULL, NULL, '', '2029-07-20T13:44:00.000Z', 2),
  (27, 5, 5, 'counted', '', '', 4, NULL, '', '2031-01-13T13:04:00.000Z', 1),
  (28, 5, 6, 'counted', '', '', 4, NULL, '', '2031-01-13T13:08:00.000Z', 1),
  (29, 5, 9, 'counted', '', '', 4, NULL, '', '2031-01-13T13:12:00.000Z', 1),
  (30, 5, 10, 'counted', '', '', 4, NULL, '', '2031-01-13T13:16:00.000Z', 1),
  (31, 5, 14, 'counted', '', '', 5, NULL, '', '2031-01-13T13:20:00.000Z', 1),
  (32, 5, 15, 'counted', '', '', 5, NULL, '', '2031-01-13T13:24:00.000Z', 1),
  (33, 5, 28, 'chosen', 'opened', '', NULL, NULL, '', '2031-01-13T13:28:00.000Z', 1),
  (34, 5, 29, 'chosen', 'new', '', NULL, NULL, '', '2031-01-13T13:32:00.000Z', 1),
  (35, 5, 30, 'chosen', 'flushed', '', NULL, NULL, '', '2031-01-13T13:36:00.000Z', 1),
  (36, 5, 31, 'written', 'Okerlund Red', '', NULL, NULL, '', '2031-01-13T13:40:00.000Z', 1),
  (37, 5, 36, 'chosen', 'none', '', NULL, NULL, '', '2031-01-13T13:44:00.000Z', 1),
  (38, 7, 11, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:38.415Z', 1),
  (39, 1, 33, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:38.424Z', 1),
  (40, 8, 5, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:38.938Z', 1),
  (41, 1, 8, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:38.952Z', 1),
  (42, 1, 15, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.210Z', 1),
  (43, 2, 12, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.220Z', 1),
  (44, 9, 18, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.235Z', 1),
  (45, 8, 13, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.311Z', 1),
  (46, 11, 29, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.330Z', 1),
  (47, 6, 33, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.379Z', 1),
  (48, 6, 22, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.668Z', 1),
  (49, 13, 21, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.676Z', 1),
  (50, 14, 25, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:39.738Z', 1),
  (51, 1, 6, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:40.348Z', 1),
  (52, 20, 35, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:40.400Z', 1),
  (53, 19, 14, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:40.845Z', 1),
  (54, 2, 6, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.048Z', 1),
  (55, 17, 29, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.187Z', 1),
  (56, 26, 29, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.284Z', 1),
  (57, 9, 14, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.428Z', 1),
  (58, 26, 5, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.615Z', 1),
  (59, 16, 30, 'does not apply', '', '', NULL, NULL, '', '2026-12-01T07:26:41.638Z', 1);
insert into "stage_needs" values
  (1, 'complaint said'),
  (2, 'as-found clearances read'),
  (3, 'packs entered as found'),
  (3, 'teardown lists done'),
  (4, 'date promised'),
  (5, 'build lists done'),
  (5, 'pack checks settled'),
  (6, 'all checks settled'),
  (6, 'final lists done'),
  (6, 'signed off'),
  (7, 'delivery recorded'),
  (8, 'cores settled'),
  (8, 'plates measured again');
insert into "needs_passed_over" values
  (16, 2, 'as-found clearances read', 'Forward clearance has no reading', 'it came in on a pallet');
insert into "findings" values
  (1, 1),
  (2, 1),
  (3, 1),
  (4, 1),
  (5, 1),
  (6, 1),
  (7, 1),
  (8, 1),
  (9, 1),
  (10, 6),
  (11, 6),
  (12, 7),
  (13, 6),
  (14, 6),
  (15, 7),
  (16, 8),
  (17, 7),
  (18, 9),
  (19, 9),
  (20, 11),
  (21, 19),
  (22, 26),
  (23, 13),
  (24, 15),
  (25, 23),
  (26, 15),
  (27, 16);
insert into "finding_cards" values
  (1, 1, 'steel 2', 1, 3, 'middle', 'heat-spotted', 1943100, '76.5', NULL, 'a thicker one goes in', 0, '', '2031-03-03T08:15:20.000Z', 1),
  (2, 2, 'friction 1', 1, 2, 'piston end', 'good', 2019300, '79.5', NULL, '', 0, '', '2031-03-03T08:15:40.000Z', 1),
  (3, 3, 'friction 2', 1, 4, 'middle', 'worn', 2032000, '80.0', NULL, 'lining whole, no glaze', 0, '', '2031-03-03T08:16:00.000Z', 1),
  (4, 4, 'steel 2', 2, 12, 'middle', 'good', 2311400, '91.0', NULL, 'a thin one opens the clearance', 0, '', '2031-03-03T08:16:20.000Z', 1),
  (5, 5, 'friction 2', 2, 13, 'middle', 'good', 2146300, '84.5', NULL, '', 0, '', '2031-03-03T08:16:40.000Z', 1),
  (6, 6, 'snap ring', 3, 31, 'ring end', 'good', 1879600, '74.0', NULL, 'selective: a thicker one', 0, '', '2031-03-03T08:17:00.000Z', 1),
  (7, 7, 'converter hub bushing', NULL, NULL, NULL, 'loose', NULL, '', 10, '5.0 thou, at most 4.5', 0, '', '2031-03-03T08:17:20.000Z', 1),
  (8, 8, 'front thrust washer', NULL, NULL, NULL, 'worn', 1676400, '66', NULL, 'end play 31', 0, '', '2031-03-03T08:17:40.000Z', 1),
  (9, 9, 'reverse drum', NULL, NULL, NULL, 'scored', NULL, '', NULL, 'band side, two light rings', 0, '', '2031-03-03T08:18:00.000Z', 1),
  (10, 10, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.356Z', 1),
  (11, 11, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.365Z', 1),
  (12, 12, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.445Z', 1),
  (13, 13, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.514Z', 1),
  (14, 14, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.585Z', 1),
  (15, 15, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.701Z', 1),
  (16, 16, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.818Z', 1),
  (17, 17, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:38.838Z', 1),
  (18, 18, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:39.102Z', 1),
  (19, 19, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:39.300Z', 1),
  (20, 20, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:39.629Z', 1),
  (21, 21, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:40.512Z', 1),
  (22, 22, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.099Z', 1),
  (23, 23, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.199Z', 1),
  (24, 24, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.371Z', 1),
  (25, 25, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.535Z', 1),
  (26, 26, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.723Z', 1),
  (27, 27, 'pump bushing', NULL, NULL, NULL, 'worn', NULL, '', NULL, '', 0, '', '2026-12-01T07:26:41.775Z', 1);
insert into "finding_decisions" values
  (1, 1, 'replace', '', '2031-03-03T08:15:20.000Z', 1),
  (2, 2, 'reuse', '', '2031-03-03T08:15:40.000Z', 1),
  (3, 3, 'reuse', '', '2031-03-03T08:16:00.000Z', 1),
  (4, 4, 'replace', '', '2031-03-03T08:16:20.000Z', 1),
  (5, 5, 'reuse', '', '2031-03-03T08:16:40.000Z', 1),
  (6, 6, 'replace', '', '2031-03-03T08:17:00.000Z', 1),
  (7, 7, 'replace', '', '2031-03-03T08:17:20.000Z', 1),
  (8, 8, 'replace', '', '2031-03-03T08:17:40.000Z', 1),
  (9, 9, 'not decided yet', '', '2031-03-03T08:18:00.000Z', 1),
  (10, 10, 'replace', '', '2026-12-01T07:26:38.356Z', 1),
  (11, 11, 'replace', '', '2026-12-01T07:26:38.365Z', 1),
  (12, 12, 'replace', '', '2026-12-01T07:26:38.445Z', 1),
  (13, 11, 'reuse', '', '2026-12-01T07:26:38.469Z', 1),
  (14, 10, 'reuse', '', '2026-12-01T07:26:38.505Z', 1),
  (15, 13, 'replace', '', '2026-12-01T07:26:38.514Z', 1),
  (16, 14, 'replace', '', '2026-12-01T07:26:38.585Z', 1),
  (17, 15, 'replace', '', '2026-12-01T07:26:38.701Z', 1),
  (18, 10, 'reuse', '', '2026-12-01T07:26:38.790Z', 1),
  (19, 16, 'replace', '', '2026-12-01T07:26:38.818Z', 1),
  (20, 17, 'replace', '', '2026-12-01T07:26:38.838Z', 1),
  (21, 4, 'reuse', '', '2026-12-01T07:26:38.918Z', 1),
  (22, 10, 'reuse', '', '2026-12-01T07:26:39.075Z', 1),
  (23, 1, 'reuse', '', '2026-12-01T07:26:39.094Z', 1),
  (24, 18, 'replace', '', '2026-12-01T07:26:39.102Z', 1),
  (25, 19, 'replace', '', '2026-12-01T07:26:39.300Z', 1),
  (26, 4, 'reuse', '', '2026-12-01T07:26:39.321Z', 1),
  (27, 13, 'reuse', '', '2026-12-01T07:26:39.411Z', 1),
  (28, 8, 'reuse', '', '2026-12-01T07:26:39.540Z', 1),
  (29, 20, 'replace', '', '2026-12-01T07:26:39.629Z', 1),
  (30, 6, 'reuse', '', '2026-12-01T07:26:39.857Z', 1),
  (31, 6, 'reuse', '', '2026-12-01T07:26:40.042Z', 1),
  (32, 14, 'reuse', '', '2026-12-01T07:26:40.072Z', 1),
  (33, 8, 'reuse', '', '2026-12-01T07:26:40.327Z', 1),
  (34, 18, 'reuse', '', '2026-12-01T07:26:40.337Z', 1),
  (35, 21, 'replace', '', '2026-12-01T07:26:40.512Z', 1),
  (36, 8, 'reuse', '', '2026-12-01T07:26:40.525Z', 1),
  (37, 6, 'reuse', '', '2026-12-01T07:26:40.564Z', 1),
  (38, 3, 'reuse', '', '2026-12-01T07:26:40.702Z', 1),
  (39, 11, 'reuse', '', '2026-12-01T07:26:40.773Z', 1),
  (40, 5, 'reuse', '', '2026-12-01T07:26:40.797Z', 1),
  (41, 2, 'reuse', '', '2026-12-01T07:26:40.858Z', 1),
  (42, 22, 'replace', '', '2026-12-01T07:26:41.099Z', 1),
  (43, 23, 'replace', '', '2026-12-01T07:26:41.199Z', 1),
  (44, 24, 'replace', '', '2026-12-01T07:26:41.371Z', 1),
  (45, 25, 'replace', '', '2026-12-01T07:26:41.535Z', 1),
  (46, 10, 'reuse', '', '2026-12-01T07:26:41.561Z', 1),
  (47, 24, 'reuse', '', '2026-12-01T07:26:41.583Z', 1),
  (48, 24, 'reuse', '', '2026-12-01T07:26:41.649Z', 1),
  (49, 26, 'replace', '', '2026-12-01T07:26:41.723Z', 1),
  (50, 27, 'replace', '', '2026-12-01T07:26:41.775Z', 1),
  (51, 19, 'reuse', '', '2026-12-01T07:26:41.898Z', 1),
  (52, 5, 'reuse', '', '2026-12-01T07:26:41.968Z', 1);
insert into "deliveries" values
  (1, 3, 'Edda Rastall', '2028-07-06', 51000, 'miles', 1, '', '2028-07-06T14:00:00.000Z', 1),
  (2, 4, 'Inge Gantry', '2029-07-23', 115000, 'miles', 1, '', '2029-07-23T14:00:00.000Z', 1),
  (3, 5, 'Gita Quillan', '2031-01-17', 111000, 'miles', 1, '', '2031-01-17T14:00:00.000Z', 1),
  (4, 7, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:38.907Z', 1),
  (5, 10, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:39.054Z', 1),
  (6, 8, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:39.340Z', 1),
  (7, 12, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:39.658Z', 1),
  (8, 14, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:39.755Z', 1),
  (9, 11, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:40.375Z', 1),
  (10, 22, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:40.722Z', 1),
  (11, 21, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:40.817Z', 1),
  (12, 19, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:40.999Z', 1),
  (13, 18, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:41.384Z', 1),
  (14, 17, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:41.688Z', 1),
  (15, 15, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:41.799Z', 1),
  (16, 27, 'Tam Okoro', '2026-12-01', NULL, NULL, 1, '', '2026-12-01T07:26:41.923Z', 1);
insert into "warranties" values
  (1, 3, '2028-07-13', 24, NULL, NULL, NULL, '', '2028-07-06T14:00:00.000Z', 1),
  (2, 4, '2029-08-01', 24, NULL, NULL, NULL, '', '2029-07-23T14:00:00.000Z', 1),
  (3, 5, '2031-01-22', 24, NULL, NULL, NULL, '', '2031-01-17T14:00:00.000Z', 1),
  (4, 7, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:38.907Z', 1),
  (5, 10, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:39.054Z', 1),
  (6, 8, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:39.340Z', 1),
  (7, 12, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:39.658Z', 1),
  (8, 14, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:39.755Z', 1),
  (9, 11, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:40.375Z', 1),
  (10, 22, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:40.722Z', 1),
  (11, 21, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:40.817Z', 1),
  (12, 19, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:40.999Z', 1),
  (13, 18, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:41.384Z', 1),
  (14, 17, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:41.688Z', 1),
  (15, 15, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:41.799Z', 1),
  (16, 27, '2026-12-01', 12, NULL, NULL, NULL, '', '2026-12-01T07:26:41.923Z', 1);
insert into "small_jobs" values
  (1, 1, 'Reseal', '2031-03-03T08:01:40.000Z', 1);
insert into "small_job_stages" values
  (1, 4),
  (1, 5),
  (1, 6),
  (1, 7),
  (1, 8);
insert into "small_job_parts" values
  (1, 'check', 'Cooler flow in 30 s'),
  (1, 'check', 'Extension housing'),
  (1, 'check', 'Front end play'),
  (1, 'check', 'Pan'),
  (1, 'check', 'Pump bolts');
insert into "pictures" values
  (1, 1, 0, 'Pump face', '531476cb420851f4b0a2b6f5aeec0d8394edfbb3286fd79c3c7f19d4508cec15', 720, 540),
  (2, 1, 1, 'Case', '10cdd8b83386e5a7057a99b409bad5e09390288a12c515811b762f566702f4c1', 720, 540),
  (3, 1, 2, 'Valve body', 'd8125d59ce96271fe30277d76aa94544b34ddcb630dd32fa8b9f833cc88c6d77', 720, 540);
insert into "picture_points" values
  (1, 0, 'A', '', 289, 519, 16, NULL),
  (1, 1, 'B', '', 711, 519, 17, NULL),
  (2, 0, 'C1', '', 306, 352, 17, NULL),
  (2, 1, 'C2', '', 694, 352, 16, NULL),
  (2, 2, 'C3', '', 278, 667, 18, NULL),
  (2, 3, 'C4', '', 778, 648, 19, NULL),
  (2, 4, 'C5', 'servo release', 500, 241, NULL, NULL),
  (2, 5, 'C6', 'lube: flows, no clutch', 597, 593, NULL, NULL),
  (3, 0, '1', '', 208, 278, NULL, 21),
  (3, 1, '2', '', 583, 398, NULL, 22),
  (3, 2, '3', '', 806, 444, NULL, 23),
  (3, 3, '4', '', 208, 611, NULL, 24),
  (3, 4, '5', '', 389, 731, NULL, 25),
  (3, 5, '6', 'stays without a ball', 639, 704, NULL, NULL),
  (3, 6, '7', 'stays without a ball', 778, 593, NULL, NULL);
insert into "clutch_figures" values
  (1, 127000000, 76200000, 854059, NULL, 152400000, 127000000, 140000, 1103161, 1000000, 1892706, NULL, NULL, NULL, NULL, NULL);
insert into "comebacks" values
  (1, 11, 7, '2026-12-01T07:26:39.156Z', 1),
  (2, 13, 10, '2026-12-01T07:26:39.574Z', 1),
  (3, 19, 8, '2026-12-01T07:26:40.118Z', 1),
  (4, 23, 10, '2026-12-01T07:26:40.757Z', 1),
  (5, 27, 12, '2026-12-01T07:26:41.355Z', 1),
  (6, 28, 7, '2026-12-01T07:26:41.452Z', 1),
  (7, 29, 10, '2026-12-01T07:26:41.749Z', 1),
  (8, 30, 21, '2026-12-01T07:26:41.836Z', 1);
insert into "comeback_cards" values
  (1, 1, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:39.156Z', 1),
  (2, 2, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:39.574Z', 1),
  (3, 3, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:40.118Z', 1),
  (4, 4, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:40.757Z', 1),
  (5, 5, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:41.355Z', 1),
  (6, 6, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:41.452Z', 1),
  (7, 7, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:41.749Z', 1),
  (8, 8, '2026-12-01', 'Slips again.', NULL, NULL, 'not known yet', 'in warranty', '', NULL, '', '', '2026-12-01T07:26:41.836Z', 1);
insert into "comeback_causes" values
  (1, 1, 'too tight', NULL, 'suspected', '', '2026-12-01T07:26:39.421Z', 1),
  (2, 2, 'too tight', NULL, 'suspected', '', '2026-12-01T07:26:39.637Z', 1),
  (3, 3, 'too tight', NULL, 'suspected', '', '2026-12-01T07:26:40.502Z', 1),
  (4, 5, 'too tight', NULL, 'suspected', '', '2026-12-01T07:26:41.935Z', 1);
insert into "line_gauges" values
  (1, 1);
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
CREATE TRIGGER pieces_no_update before update on pieces
begin select raise(abort, 'append-only: pieces'); end;
CREATE TRIGGER pieces_no_delete before delete on pieces
begin select raise(abort, 'append-only: pieces'); end;
CREATE INDEX piece_heights_of_piece on piece_heights (piece_id);
CREATE TRIGGER piece_heights_no_update before update on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;
CREATE TRIGGER piece_heights_no_delete before delete on piece_heights
begin select raise(abort, 'append-only: piece_heights'); end;
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
CREATE TRIGGER take_figures_no_update before update on take_figures
begin select raise(abort, 'append-only: take_figures'); end;
CREATE TRIGGER take_figures_no_delete before delete on take_figures
begin select raise(abort, 'append-only: take_figures'); end;
CREATE INDEX takes_of_method on takes (method);
CREATE INDEX part_families_of_family on part_families (family_id);
CREATE INDEX kit_lines_of_part on kit_lines (part_id);
CREATE INDEX batches_of_part on batches (part_id);
CREATE INDEX batches_of_kit_batch on batches (kit_batch_id);
CREATE TRIGGER batches_no_update before update on batches
begin select raise(abort, 'append-only: batches'); end;
CREATE TRIGGER batches_no_delete before delete on batches
begin select raise(abort, 'append-only: batches'); end;
CREATE INDEX kit_batch_lines_of_part on kit_batch_lines (part_id);
CREATE TRIGGER kit_batch_lines_no_update before update on kit_batch_lines
begin select raise(abort, 'append-only: kit_batch_lines'); end;
CREATE TRIGGER kit_batch_lines_no_delete before delete on kit_batch_lines
begin select raise(abort, 'append-only: kit_batch_lines'); end;
CREATE INDEX movements_of_batch on movements (batch_id, change);
CREATE INDEX movements_of_job on movements (job_id, batch_id) where job_id is not null;
CREATE TRIGGER movements_no_update before update on movements
begin select raise(abort, 'append-only: movements'); end;
CREATE TRIGGER movements_no_delete before delete on movements
begin select raise(abort, 'append-only: movements'); end;
CREATE TRIGGER movements_never_below_zero before insert on movements
when new.change < 0
  and (select coalesce(sum(change), 0) from movements where batch_id = new.batch_id) + new.change < 0
begin select raise(abort, 'below zero: movements'); end;
CREATE TRIGGER movements_return_what_was_pulled before insert on movements
when new.kind = 'return'
  and (select coalesce(sum(change), 0) from movements
    where job_id = new.job_id and batch_id = new.batch_id and kind in ('pull', 'return')) + new.change > 0
begin select raise(abort, 'more than was pulled: movements'); end;
CREATE INDEX cores_of_job on cores (job_id);
CREATE TRIGGER cores_no_update before update on cores
begin select raise(abort, 'append-only: cores'); end;
CREATE TRIGGER cores_no_delete before delete on cores
begin select raise(abort, 'append-only: cores'); end;
CREATE TRIGGER core_settlements_no_update before update on core_settlements
begin select raise(abort, 'append-only: core_settlements'); end;
CREATE TRIGGER core_settlements_no_delete before delete on core_settlements
begin select raise(abort, 'append-only: core_settlements'); end;
CREATE TRIGGER piece_height_points_no_update before update on piece_height_points
begin select raise(abort, 'append-only: piece_height_points'); end;
CREATE TRIGGER piece_height_points_no_delete before delete on piece_height_points
begin select raise(abort, 'append-only: piece_height_points'); end;
CREATE INDEX pieces_of_batch on pieces (batch_id);
CREATE INDEX pieces_of_can on pieces (can_id);
CREATE VIEW pieces_as_known as
select pieces.*, height_nm, height_from, micrometer, standard_uncertainty_nm, measured_at, measured_by
from pieces join piece_heights on piece_height_id =
  (select max(newest.piece_height_id) from piece_heights as newest where newest.piece_id = pieces.piece_id);
CREATE INDEX piece_looks_of_piece on piece_looks (piece_id);
CREATE TRIGGER piece_looks_no_update before update on piece_looks
begin select raise(abort, 'append-only: piece_looks'); end;
CREATE TRIGGER piece_looks_no_delete before delete on piece_looks
begin select raise(abort, 'append-only: piece_looks'); end;
CREATE TRIGGER can_returns_no_update before update on can_returns
begin select raise(abort, 'append-only: can_returns'); end;
CREATE TRIGGER can_returns_no_delete before delete on can_returns
begin select raise(abort, 'append-only: can_returns'); end;
CREATE UNIQUE INDEX can_movements_taken_back on can_movements (takes_back_id) where takes_back_id is not null;
CREATE INDEX pieces_by_tag on pieces (outline, tag) where tag <> '';
CREATE TRIGGER pieces_tag_once before insert on pieces
when new.tag <> '' and exists (select 1 from pieces
  where outline = new.outline and tag = new.tag and piece_id <> new.piece_id
  and piece_id not in (select piece_id from discards where was_mistyped))
begin select raise(abort, 'tag taken: pieces'); end;
CREATE VIEW plates_as_known as
select piece.*,
  case
    when returned.piece_id is not null or discarded.piece_id is not null or look.is_usable = 0 then 'do not use'
    when sits.mock_up_id is not null and without.mock_up_id is null then 'in a unit'
    when without.made_at > piece.measured_at then 'read again'
    else 'free'
  end as state,
  returned.piece_id is null and coalesce(discarded.was_mistyped, 0) = 0 as is_single,
  iif(without.mock_up_id is null, sits.mock_up_id, null) as mock_up_id,
  returned.can_id as returned_can_id,
  discarded.reason as discard_reason,
  look.piece_look_id
from pieces_as_known as piece
left join mock_ups as sits on sits.mock_up_id =
  (select max(mock_up_id) from mock_up_pieces where mock_up_pieces.piece_id = piece.piece_id)
left join mock_ups as without
  on without.job_id = sits.job_id and without.pack_id = sits.pack_id and without.number = sits.number + 1
left join discards as discarded on discarded.piece_id = piece.piece_id
left join can_returns as returned on returned.piece_id = piece.piece_id
left join piece_looks as look on look.piece_look_id =
  (select max(newest.piece_look_id) from piece_looks as newest where newest.piece_id = piece.piece_id);
CREATE TRIGGER can_movements_never_below_zero before insert on can_movements
when new.change < 0
  and (select coalesce(sum(change), 0) from can_movements where can_id = new.can_id) + new.change < 0
begin select raise(abort, 'below zero: can_movements'); end;
CREATE TRIGGER money_terms_no_update before update on money_terms
begin select raise(abort, 'append-only: money_terms'); end;
CREATE TRIGGER money_terms_no_delete before delete on money_terms
begin select raise(abort, 'append-only: money_terms'); end;
CREATE INDEX job_lines_of_job on job_lines (job_id);
CREATE INDEX job_lines_of_batch on job_lines (batch_id) where batch_id is not null;
CREATE TRIGGER job_lines_no_update before update on job_lines
begin select raise(abort, 'append-only: job_lines'); end;
CREATE TRIGGER job_lines_no_delete before delete on job_lines
begin select raise(abort, 'append-only: job_lines'); end;
CREATE TRIGGER job_line_ends_no_update before update on job_line_ends
begin select raise(abort, 'append-only: job_line_ends'); end;
CREATE TRIGGER job_line_ends_no_delete before delete on job_line_ends
begin select raise(abort, 'append-only: job_line_ends'); end;
CREATE TRIGGER estimates_no_update before update on estimates
begin select raise(abort, 'append-only: estimates'); end;
CREATE TRIGGER estimates_no_delete before delete on estimates
begin select raise(abort, 'append-only: estimates'); end;
CREATE INDEX estimate_lines_of_line on estimate_lines (job_line_id);
CREATE TRIGGER estimate_lines_no_update before update on estimate_lines
begin select raise(abort, 'append-only: estimate_lines'); end;
CREATE TRIGGER estimate_lines_no_delete before delete on estimate_lines
begin select raise(abort, 'append-only: estimate_lines'); end;
CREATE INDEX approvals_of_estimate on approvals (estimate_id);
CREATE TRIGGER approvals_no_update before update on approvals
begin select raise(abort, 'append-only: approvals'); end;
CREATE TRIGGER approvals_no_delete before delete on approvals
begin select raise(abort, 'append-only: approvals'); end;
CREATE INDEX deposits_of_job on deposits (job_id, amount_cents);
CREATE TRIGGER deposits_no_update before update on deposits
begin select raise(abort, 'append-only: deposits'); end;
CREATE TRIGGER deposits_no_delete before delete on deposits
begin select raise(abort, 'append-only: deposits'); end;
CREATE TRIGGER deposits_never_below_zero before insert on deposits
when new.amount_cents < 0
  and (select coalesce(sum(amount_cents), 0) from deposits where job_id = new.job_id) + new.amount_cents < 0
begin select raise(abort, 'below zero: deposits'); end;
CREATE INDEX intakes_of_job on intakes (job_id);
CREATE TRIGGER intakes_no_update before update on intakes
begin select raise(abort, 'append-only: intakes'); end;
CREATE TRIGGER intakes_no_delete before delete on intakes
begin select raise(abort, 'append-only: intakes'); end;
CREATE INDEX promises_of_job on promises (job_id);
CREATE TRIGGER promises_no_update before update on promises
begin select raise(abort, 'append-only: promises'); end;
CREATE TRIGGER promises_no_delete before delete on promises
begin select raise(abort, 'append-only: promises'); end;
CREATE INDEX calls_of_job on calls (job_id);
CREATE TRIGGER calls_no_update before update on calls
begin select raise(abort, 'append-only: calls'); end;
CREATE TRIGGER calls_no_delete before delete on calls
begin select raise(abort, 'append-only: calls'); end;
CREATE INDEX sign_offs_of_job on sign_offs (job_id);
CREATE TRIGGER sign_offs_no_update before update on sign_offs
begin select raise(abort, 'append-only: sign_offs'); end;
CREATE TRIGGER sign_offs_no_delete before delete on sign_offs
begin select raise(abort, 'append-only: sign_offs'); end;
CREATE INDEX units_by_serial on units (serial collate nocase);
CREATE INDEX jobs_in_stages_by_stage on jobs_in_stages (stage_id);
CREATE TRIGGER stage_entries_move_the_job after insert on stage_entries
begin
  insert into jobs_in_stages values (new.job_id, new.stage_id, new.stage_entry_id)
  on conflict (job_id) do update set stage_id = excluded.stage_id, stage_entry_id = excluded.stage_entry_id;
end;
CREATE TRIGGER jobs_to_words after insert on jobs
begin
  insert into job_words (rowid, words)
  select new.job_id, concat_ws(char(10), new.number, new.case_tag, customers.name, customers.phone, families.name, serial, vehicle)
  from customers, units join families using (family_id)
  where customers.customer_id = new.customer_id and units.unit_id = new.unit_id;
end;
CREATE TRIGGER intakes_to_words after insert on intakes
when new.job_id is not null and trim(new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes) > 0)
begin
  update job_words set words = words || char(10) || new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes where rowid = new.job_id;
end;
CREATE TRIGGER calls_to_words after insert on calls
when new.job_id is not null and trim(new.with_whom || char(10) || new.said, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.with_whom || char(10) || new.said) > 0)
begin
  update job_words set words = words || char(10) || new.with_whom || char(10) || new.said where rowid = new.job_id;
end;
CREATE TRIGGER takes_to_words after insert on takes
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;
CREATE TRIGGER mock_ups_to_words after insert on mock_ups
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;
CREATE TRIGGER sign_offs_to_words after insert on sign_offs
when new.job_id is not null and trim(new.note, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.note where rowid = new.job_id;
end;
CREATE TRIGGER mock_up_pieces_to_words after insert on mock_up_pieces
when (select job_id from mock_ups where mock_up_id = new.mock_up_id) is not null and trim((select tag from pieces where piece_id = new.piece_id), char(10)) <> ''
  and not exists (select 1 from job_words where rowid = (select job_id from mock_ups where mock_up_id = new.mock_up_id) and instr(words, char(10) || (select tag from pieces where piece_id = new.piece_id)) > 0)
begin
  update job_words set words = words || char(10) || (select tag from pieces where piece_id = new.piece_id) where rowid = (select job_id from mock_ups where mock_up_id = new.mock_up_id);
end;
CREATE TRIGGER movements_to_words after insert on movements
when new.job_id is not null and trim((select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id), char(10)) <> ''
  and not exists (select 1 from job_words where rowid = new.job_id and instr(words, char(10) || (select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id)) > 0)
begin
  update job_words set words = words || char(10) || (select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id) where rowid = new.job_id;
end;
CREATE UNIQUE INDEX photos_once_a_job on photos (job_id, sha256) where removed_at is null;
CREATE TRIGGER photos_no_delete before delete on photos
begin select raise(abort, 'append-only: photos'); end;
CREATE TRIGGER gauges_no_update before update on gauges
begin select raise(abort, 'append-only: gauges'); end;
CREATE TRIGGER gauges_no_delete before delete on gauges
begin select raise(abort, 'append-only: gauges'); end;
CREATE INDEX gauge_cards_of_gauge on gauge_cards (gauge_id);
CREATE TRIGGER gauge_cards_no_update before update on gauge_cards
begin select raise(abort, 'append-only: gauge_cards'); end;
CREATE TRIGGER gauge_cards_no_delete before delete on gauge_cards
begin select raise(abort, 'append-only: gauge_cards'); end;
CREATE VIEW gauges_as_known as
select gauges.kind, gauge_cards.*
from gauges join gauge_cards on gauge_card_id =
  (select max(newest.gauge_card_id) from gauge_cards as newest where newest.gauge_id = gauges.gauge_id);
CREATE INDEX gauge_checks_of_gauge on gauge_checks (gauge_id);
CREATE TRIGGER gauge_checks_no_update before update on gauge_checks
begin select raise(abort, 'append-only: gauge_checks'); end;
CREATE TRIGGER gauge_checks_no_delete before delete on gauge_checks
begin select raise(abort, 'append-only: gauge_checks'); end;
CREATE TRIGGER gauge_check_points_no_update before update on gauge_check_points
begin select raise(abort, 'append-only: gauge_check_points'); end;
CREATE TRIGGER gauge_check_points_no_delete before delete on gauge_check_points
begin select raise(abort, 'append-only: gauge_check_points'); end;
CREATE INDEX take_gauges_of_gauge on take_gauges (gauge_id);
CREATE TRIGGER take_gauges_no_update before update on take_gauges
begin select raise(abort, 'append-only: take_gauges'); end;
CREATE TRIGGER take_gauges_no_delete before delete on take_gauges
begin select raise(abort, 'append-only: take_gauges'); end;
CREATE TRIGGER studies_no_update before update on studies
begin select raise(abort, 'append-only: studies'); end;
CREATE TRIGGER studies_no_delete before delete on studies
begin select raise(abort, 'append-only: studies'); end;
CREATE TRIGGER study_parts_no_update before update on study_parts
begin select raise(abort, 'append-only: study_parts'); end;
CREATE TRIGGER study_parts_no_delete before delete on study_parts
begin select raise(abort, 'append-only: study_parts'); end;
CREATE TRIGGER study_people_no_update before update on study_people
begin select raise(abort, 'append-only: study_people'); end;
CREATE TRIGGER study_people_no_delete before delete on study_people
begin select raise(abort, 'append-only: study_people'); end;
CREATE UNIQUE INDEX study_reads_in_order on study_reads (study_id, place) where supersedes_id is null;
CREATE TRIGGER study_reads_no_update before update on study_reads
begin select raise(abort, 'append-only: study_reads'); end;
CREATE TRIGGER study_reads_no_delete before delete on study_reads
begin select raise(abort, 'append-only: study_reads'); end;
CREATE TRIGGER method_pairs_no_update before update on method_pairs
begin select raise(abort, 'append-only: method_pairs'); end;
CREATE TRIGGER method_pairs_no_delete before delete on method_pairs
begin select raise(abort, 'append-only: method_pairs'); end;
CREATE TRIGGER reading_traces_no_update before update on reading_traces
begin select raise(abort, 'append-only: reading_traces'); end;
CREATE TRIGGER reading_traces_no_delete before delete on reading_traces
begin select raise(abort, 'append-only: reading_traces'); end;
CREATE TRIGGER lists_frozen_update before update on lists
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: lists'); end;
CREATE TRIGGER list_lines_frozen_update before update on list_lines
when exists (select 1 from lists join jobs using (revision_id) where lists.list_id = old.list_id)
begin select raise(abort, 'frozen: list_lines'); end;
CREATE TRIGGER lists_frozen_delete before delete on lists
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: lists'); end;
CREATE TRIGGER list_lines_frozen_delete before delete on list_lines
when exists (select 1 from lists join jobs using (revision_id) where lists.list_id = old.list_id)
begin select raise(abort, 'frozen: list_lines'); end;
CREATE INDEX list_answers_of_job on list_answers (job_id, list_line_id);
CREATE TRIGGER list_answers_no_update before update on list_answers
begin select raise(abort, 'append-only: list_answers'); end;
CREATE TRIGGER list_answers_no_delete before delete on list_answers
begin select raise(abort, 'append-only: list_answers'); end;
CREATE TRIGGER list_answers_to_words after insert on list_answers
when new.says in ('written', 'changed') or new.reason <> ''
begin
  update job_words
  set words = words || char(10) || concat_ws(char(10), iif(new.says in ('written', 'changed'), new.words, null), new.became, new.reason)
  where rowid = new.job_id;
end;
CREATE TRIGGER needs_passed_over_no_update before update on needs_passed_over
begin select raise(abort, 'append-only: needs_passed_over'); end;
CREATE TRIGGER needs_passed_over_no_delete before delete on needs_passed_over
begin select raise(abort, 'append-only: needs_passed_over'); end;
CREATE INDEX findings_of_job on findings (job_id);
CREATE TRIGGER findings_no_update before update on findings
begin select raise(abort, 'append-only: findings'); end;
CREATE TRIGGER findings_no_delete before delete on findings
begin select raise(abort, 'append-only: findings'); end;
CREATE INDEX finding_cards_of_finding on finding_cards (finding_id);
CREATE INDEX finding_cards_by_part on finding_cards (part);
CREATE TRIGGER finding_cards_no_update before update on finding_cards
begin select raise(abort, 'append-only: finding_cards'); end;
CREATE TRIGGER finding_cards_no_delete before delete on finding_cards
begin select raise(abort, 'append-only: finding_cards'); end;
CREATE INDEX finding_decisions_of_finding on finding_decisions (finding_id);
CREATE TRIGGER finding_decisions_no_update before update on finding_decisions
begin select raise(abort, 'append-only: finding_decisions'); end;
CREATE TRIGGER finding_decisions_no_delete before delete on finding_decisions
begin select raise(abort, 'append-only: finding_decisions'); end;
CREATE INDEX finding_photos_of_finding on finding_photos (finding_id);
CREATE TRIGGER finding_photos_no_update before update on finding_photos
begin select raise(abort, 'append-only: finding_photos'); end;
CREATE TRIGGER finding_photos_no_delete before delete on finding_photos
begin select raise(abort, 'append-only: finding_photos'); end;
CREATE TRIGGER finding_lines_no_update before update on finding_lines
begin select raise(abort, 'append-only: finding_lines'); end;
CREATE TRIGGER finding_lines_no_delete before delete on finding_lines
begin select raise(abort, 'append-only: finding_lines'); end;
CREATE VIEW findings_as_known as
select findings.job_id, finding_cards.*, decision
from findings
join finding_cards on finding_card_id =
  (select max(newest.finding_card_id) from finding_cards as newest where newest.finding_id = findings.finding_id)
join finding_decisions on finding_decision_id =
  (select max(newest.finding_decision_id) from finding_decisions as newest where newest.finding_id = findings.finding_id)
where is_withdrawn = 0;
CREATE TRIGGER finding_cards_to_words after insert on finding_cards
when not exists (select 1 from job_words where rowid = (select job_id from findings where finding_id = new.finding_id) and instr(words, char(10) || new.part || char(10) || new.note) > 0)
begin
  update job_words set words = words || char(10) || new.part || char(10) || new.note where rowid = (select job_id from findings where finding_id = new.finding_id);
end;
CREATE INDEX deliveries_of_job on deliveries (job_id);
CREATE TRIGGER deliveries_no_update before update on deliveries
begin select raise(abort, 'append-only: deliveries'); end;
CREATE TRIGGER deliveries_no_delete before delete on deliveries
begin select raise(abort, 'append-only: deliveries'); end;
CREATE INDEX warranties_of_job on warranties (job_id);
CREATE TRIGGER warranties_no_update before update on warranties
begin select raise(abort, 'append-only: warranties'); end;
CREATE TRIGGER warranties_no_delete before delete on warranties
begin select raise(abort, 'append-only: warranties'); end;
CREATE TRIGGER deliveries_to_words after insert on deliveries
when new.delivered_to <> ''
begin
  update job_words set words = words || char(10) || new.delivered_to where rowid = new.job_id;
end;
CREATE TRIGGER job_extents_no_update before update on job_extents
begin select raise(abort, 'append-only: job_extents'); end;
CREATE TRIGGER job_extents_no_delete before delete on job_extents
begin select raise(abort, 'append-only: job_extents'); end;
CREATE TRIGGER job_extent_stages_no_update before update on job_extent_stages
begin select raise(abort, 'append-only: job_extent_stages'); end;
CREATE TRIGGER job_extent_stages_no_delete before delete on job_extent_stages
begin select raise(abort, 'append-only: job_extent_stages'); end;
CREATE TRIGGER job_extent_parts_no_update before update on job_extent_parts
begin select raise(abort, 'append-only: job_extent_parts'); end;
CREATE TRIGGER job_extent_parts_no_delete before delete on job_extent_parts
begin select raise(abort, 'append-only: job_extent_parts'); end;
CREATE TRIGGER jobs_widened_no_update before update on jobs_widened
begin select raise(abort, 'append-only: jobs_widened'); end;
CREATE TRIGGER jobs_widened_no_delete before delete on jobs_widened
begin select raise(abort, 'append-only: jobs_widened'); end;
CREATE TRIGGER pictures_frozen_update before update on pictures
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: pictures'); end;
CREATE TRIGGER picture_points_frozen_update before update on picture_points
when exists (select 1 from pictures join jobs using (revision_id) where pictures.picture_id = old.picture_id)
begin select raise(abort, 'frozen: picture_points'); end;
CREATE TRIGGER pictures_frozen_delete before delete on pictures
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: pictures'); end;
CREATE TRIGGER picture_points_frozen_delete before delete on picture_points
when exists (select 1 from pictures join jobs using (revision_id) where pictures.picture_id = old.picture_id)
begin select raise(abort, 'frozen: picture_points'); end;
CREATE TRIGGER clutch_figures_frozen_update before update on clutch_figures
when exists (select 1 from packs join jobs using (revision_id) where packs.pack_id = old.pack_id)
begin select raise(abort, 'frozen: clutch_figures'); end;
CREATE TRIGGER clutch_figures_frozen_delete before delete on clutch_figures
when exists (select 1 from packs join jobs using (revision_id) where packs.pack_id = old.pack_id)
begin select raise(abort, 'frozen: clutch_figures'); end;
CREATE INDEX clutch_loads_of_job on clutch_loads (job_id);
CREATE TRIGGER clutch_loads_no_update before update on clutch_loads
begin select raise(abort, 'append-only: clutch_loads'); end;
CREATE TRIGGER clutch_loads_no_delete before delete on clutch_loads
begin select raise(abort, 'append-only: clutch_loads'); end;
CREATE INDEX comebacks_of_build on comebacks (built_job_id);
CREATE INDEX comebacks_by_job on comebacks (job_id);
CREATE TRIGGER comebacks_no_update before update on comebacks
begin select raise(abort, 'append-only: comebacks'); end;
CREATE TRIGGER comebacks_no_delete before delete on comebacks
begin select raise(abort, 'append-only: comebacks'); end;
CREATE INDEX comeback_cards_of_comeback on comeback_cards (comeback_id);
CREATE TRIGGER comeback_cards_no_update before update on comeback_cards
begin select raise(abort, 'append-only: comeback_cards'); end;
CREATE TRIGGER comeback_cards_no_delete before delete on comeback_cards
begin select raise(abort, 'append-only: comeback_cards'); end;
CREATE INDEX comeback_causes_of_comeback on comeback_causes (comeback_id);
CREATE TRIGGER comeback_causes_no_update before update on comeback_causes
begin select raise(abort, 'append-only: comeback_causes'); end;
CREATE TRIGGER comeback_causes_no_delete before delete on comeback_causes
begin select raise(abort, 'append-only: comeback_causes'); end;
CREATE TRIGGER comeback_cards_to_words after insert on comeback_cards
begin
  update job_words set words = words || char(10) || new.customer_says || char(10) || new.note
  where rowid = (select job_id from comebacks where comeback_id = new.comeback_id);
end;
CREATE INDEX units_to_call_by_job on units_to_call (job_id);
CREATE TRIGGER units_to_call_no_update before update on units_to_call
begin select raise(abort, 'append-only: units_to_call'); end;
CREATE TRIGGER units_to_call_no_delete before delete on units_to_call
begin select raise(abort, 'append-only: units_to_call'); end;
CREATE INDEX units_called_of_unit on units_called (unit_to_call_id);
CREATE TRIGGER units_called_no_update before update on units_called
begin select raise(abort, 'append-only: units_called'); end;
CREATE TRIGGER units_called_no_delete before delete on units_called
begin select raise(abort, 'append-only: units_called'); end;
CREATE INDEX as_built_checks_by_check on as_built_checks (check_id);
CREATE TRIGGER takes_off_the_shelf after insert on takes
begin delete from as_built where job_id = new.job_id; end;
CREATE TRIGGER mock_ups_off_the_shelf after insert on mock_ups
begin delete from as_built where job_id = new.job_id; end;
CREATE TRIGGER readings_off_the_shelf after insert on readings
begin delete from as_built where job_id = (select job_id from takes where take_id = new.take_id); end;
CREATE TRIGGER spot_notes_off_the_shelf after insert on spot_notes
begin delete from as_built where job_id = (select job_id from takes where take_id = new.take_id); end;
CREATE VIEW builds_as_delivered as
select jobs.job_id, jobs.number, jobs.customer_id, jobs.unit_id, jobs.revision_id, family_id,
  delivered_on, delivery.distance_amount, delivery.distance_unit, in_service_on, months
from jobs
join revisions on revisions.revision_id = jobs.revision_id
join deliveries as delivery on delivery_id =
  (select max(newest.delivery_id) from deliveries as newest where newest.job_id = jobs.job_id)
left join warranties on warranty_id =
  (select max(newest.warranty_id) from warranties as newest where newest.job_id = jobs.job_id)
where delivered_on is not null;
CREATE VIEW comebacks_as_known as
select comebacks.job_id, built_job_id, logged_at, logged_by, card.*
from comebacks join comeback_cards as card on comeback_card_id =
  (select max(newest.comeback_card_id) from comeback_cards as newest
   where newest.comeback_id = comebacks.comeback_id);
CREATE VIEW causes_as_known as
select * from comeback_causes
where certainty <> 'taken back' and not exists
  (select 1 from comeback_causes as newer
   where newer.comeback_id = comeback_causes.comeback_id and newer.cause = comeback_causes.cause
     and newer.pack_id is comeback_causes.pack_id and newer.comeback_cause_id > comeback_causes.comeback_cause_id);
CREATE INDEX units_of_family_by_serial on units (family_id, serial);
CREATE INDEX takes_of_check on takes (check_id);
CREATE INDEX photos_from_folder on photos (folder_name) where folder_name is not null;
CREATE INDEX can_movements_of_batch on can_movements (batch_id) where batch_id is not null;
