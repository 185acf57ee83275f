// Gauges on a serial line as they are set, and the traces kept with readings that came over one.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const statements = [
  // A setting, not an act: it changes with the machine. What came over a line carries the line's name with it.
  `create table gauge_lines (
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
) strict`,
  // Times and levels as differences, packed; heard says how many readings they were before they were thinned.
  `create table reading_traces (
  reading_id integer primary key references readings,
  line_name text not null check (line_name <> ''),
  is_practice integer not null check (is_practice in (0, 1)),
  samples blob not null check (length(samples) > 0),
  heard integer not null check (heard > 0),
  rest_nm integer,
  pressed_nm integer,
  air_nm integer
) strict`,
  ...appendOnly('reading_traces'),
  'pragma user_version = 8',
];

export async function up(db: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(db);
}
