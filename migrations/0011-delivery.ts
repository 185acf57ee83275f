// Units handed over and the warranty they left with, and small jobs: some of the stages, checks and lists of a family.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const day = "glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'";

const usualTerms = [
  'alter table settings add column warranty_months integer check (warranty_months > 0)',
  'alter table settings add column warranty_distance integer check (warranty_distance > 0)',
  `alter table settings add column warranty_distance_unit text not null default 'miles'
  check (warranty_distance_unit in ('miles', 'km'))`,
  'alter table settings add column warranty_passes integer check (warranty_passes > 0)',
];

const delivery = [
  // Each row is the whole of it; the newest counts. Without a day the delivery was taken back.
  `create table deliveries (
  delivery_id integer primary key,
  job_id integer not null references jobs,
  delivered_to text not null check ((delivered_to = '') = (delivered_on is null)),
  delivered_on text check (delivered_on ${day}),
  distance_amount integer check (distance_amount >= 0),
  distance_unit text check (distance_unit in ('miles', 'km', 'passes')),
  handed_over_by integer not null references people,
  reason text not null check (reason <> '' or delivered_on is not null),
  recorded_at text not null,
  recorded_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict`,
  'create index deliveries_of_job on deliveries (job_id)',
  ...appendOnly('deliveries'),
  `create table warranties (
  warranty_id integer primary key,
  job_id integer not null references jobs,
  in_service_on text check (in_service_on ${day}),
  months integer check (months > 0),
  distance_amount integer check (distance_amount > 0),
  distance_unit text check (distance_unit in ('miles', 'km')),
  passes integer check (passes > 0),
  reason text not null,
  set_at text not null,
  set_by integer not null references people,
  check ((distance_amount is null) = (distance_unit is null))
) strict`,
  'create index warranties_of_job on warranties (job_id)',
  ...appendOnly('warranties'),
  `create trigger deliveries_to_words after insert on deliveries
when new.delivered_to <> ''
begin
  update job_words set words = words || char(10) || new.delivered_to where rowid = new.job_id;
end`,
  // A new shop asks for it; one that is at work keeps asking for what it asked for.
  `insert into stage_needs
select stage_id, 'delivery recorded' from stages where name = 'Ready' and not exists (select 1 from settings)`,
];

// Checks and lists go by their names, so that a small job outlives the revisions of a sheet.
const partKinds = `check (kind in ('check', 'list'))`;

const smallJobs = [
  `create table small_jobs (
  small_job_id integer primary key,
  family_id integer not null references families,
  name text not null check (name <> ''),
  saved_at text not null,
  saved_by integer not null references people,
  unique (family_id, name)
) strict`,
  `create table small_job_stages (
  small_job_id integer not null references small_jobs on delete cascade,
  stage_id integer not null references stages,
  primary key (small_job_id, stage_id)
) strict, without rowid`,
  `create table small_job_parts (
  small_job_id integer not null references small_jobs on delete cascade,
  kind text not null ${partKinds},
  name text not null check (name <> ''),
  primary key (small_job_id, kind, name)
) strict, without rowid`,
  // What a job took on when it came in, copied, so that a small job changed later does not reach back.
  `create table job_extents (
  job_id integer primary key references jobs,
  name text not null check (name <> '')
) strict`,
  `create table job_extent_stages (
  job_id integer not null references job_extents,
  stage_id integer not null references stages,
  primary key (job_id, stage_id)
) strict, without rowid`,
  `create table job_extent_parts (
  job_id integer not null references job_extents,
  kind text not null ${partKinds},
  name text not null check (name <> ''),
  primary key (job_id, kind, name)
) strict, without rowid`,
  `create table jobs_widened (
  job_id integer primary key references job_extents,
  reason text not null check (reason <> ''),
  widened_at text not null,
  widened_by integer not null references people
) strict`,
  ...['job_extents', 'job_extent_stages', 'job_extent_parts', 'jobs_widened'].flatMap(appendOnly),
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...usualTerms, ...delivery, ...smallJobs]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 11').execute(database);
}
