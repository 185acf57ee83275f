// The shop's gauges: what is known of each, its checks, which take it read, repeat tests, and pairs of two methods.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const register = [
  `create table gauges (
  gauge_id integer primary key,
  kind text not null check (kind in
    ('dial plunger', 'dial lever', 'micrometer', 'depth gauge', 'feeler set', 'pressure gauge', 'torque wrench')),
  added_at text not null,
  added_by integer not null references people
) strict`,
  ...appendOnly('gauges'),
  // Each row is the whole card; the newest counts. Amounts are base units of the kind's quantity: nm, Pa, mN·m.
  `create table gauge_cards (
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
) strict`,
  'create index gauge_cards_of_gauge on gauge_cards (gauge_id)',
  ...appendOnly('gauge_cards'),
  `create view gauges_as_known as
select gauges.kind, gauge_cards.*
from gauges join gauge_cards on gauge_card_id =
  (select max(newest.gauge_card_id) from gauge_cards as newest where newest.gauge_id = gauges.gauge_id)`,
  // Judged by the permitted error of its day.
  `create table gauge_checks (
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
) strict`,
  'create index gauge_checks_of_gauge on gauge_checks (gauge_id)',
  ...appendOnly('gauge_checks'),
  // What it should have said, and what it said.
  `create table gauge_check_points (
  gauge_check_id integer not null references gauge_checks,
  position integer not null check (position > 0),
  nominal_amount integer not null,
  read_amount integer not null,
  nominal_typed text not null check (nominal_typed <> ''),
  read_typed text not null check (read_typed <> ''),
  primary key (gauge_check_id, position)
) strict, without rowid`,
  ...appendOnly('gauge_check_points'),
  // The gauge a take was read with, and what was known of it when the take began.
  `create table take_gauges (
  take_id integer primary key references takes,
  gauge_id integer not null references gauges,
  permitted_error_amount integer check (permitted_error_amount > 0),
  off_square_degrees integer not null check (off_square_degrees between 0 and 60)
) strict`,
  'create index take_gauges_of_gauge on take_gauges (gauge_id)',
  ...appendOnly('take_gauges'),
];

const studies = [
  // The order it hands out is drawn from its seed, so that it can be drawn again.
  `create table studies (
  study_id integer primary key,
  name text not null check (name <> ''),
  method text not null check (method in ('air', 'dial', 'direct')),
  gauge_id integer references gauges,
  trials integer not null check (trials between 2 and 10),
  tolerance_nm integer check (tolerance_nm > 0),
  seed integer not null,
  started_at text not null,
  started_by integer not null references people
) strict`,
  ...appendOnly('studies'),
  `create table study_parts (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  name text not null check (name <> ''),
  primary key (study_id, position),
  unique (study_id, name)
) strict, without rowid`,
  ...appendOnly('study_parts'),
  `create table study_people (
  study_id integer not null references studies,
  position integer not null check (position > 0),
  person_id integer not null references people,
  primary key (study_id, position),
  unique (study_id, person_id)
) strict, without rowid`,
  ...appendOnly('study_people'),
  // place: where in the order handed out. Who, which part and which trial follow from it and the seed.
  `create table study_reads (
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
) strict`,
  'create unique index study_reads_in_order on study_reads (study_id, place) where supersedes_id is null',
  ...appendOnly('study_reads'),
];

const pairs = [
  // The same thing in the same state, read two ways.
  `create table method_pairs (
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
) strict`,
  ...appendOnly('method_pairs'),
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...register, ...studies, ...pairs]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 7').execute(database);
}
