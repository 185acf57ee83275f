// From the door to the door: what was said and seen, calls, promised days, what stages ask for, sign-off, and the two
// tables that keep a long list of jobs quick: the stage each job is in, and its words to be searched.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const door = [
  // Each row is the whole card; the newest counts.
  `create table intakes (
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
) strict`,
  'create index intakes_of_job on intakes (job_id)',
  `insert into intakes
select null, job_id, complaint, '', 'not looked at', 'not looked at', 'not looked at', '', '', '', opened_at, opened_by
from jobs order by job_id`,
  ...appendOnly('intakes'),
  'alter table jobs drop column complaint',
  `create table promises (
  promise_id integer primary key,
  job_id integer not null references jobs,
  promised_on text not null check (promised_on glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'),
  reason text not null,
  promised_at text not null,
  promised_by integer not null references people
) strict`,
  'create index promises_of_job on promises (job_id)',
  ...appendOnly('promises'),
  `create table calls (
  call_id integer primary key,
  job_id integer not null references jobs,
  direction text not null check (direction in ('they called', 'we called')),
  with_whom text not null check (with_whom <> ''),
  said text not null check (said <> ''),
  logged_at text not null,
  logged_by integer not null references people
) strict`,
  'create index calls_of_job on calls (job_id)',
  ...appendOnly('calls'),
  `create table sign_offs (
  sign_off_id integer primary key,
  job_id integer not null references jobs,
  place text not null check (place in ('on stand', 'in vehicle')),
  note text not null,
  signed_at text not null,
  signed_by integer not null references people
) strict`,
  'create index sign_offs_of_job on sign_offs (job_id)',
  ...appendOnly('sign_offs'),
  'create index units_by_serial on units (serial collate nocase)',
];

const needNames = [
  'complaint said',
  'as-found clearances read',
  'packs entered as found',
  'date promised',
  'estimate approved',
  'pack checks settled',
  'all checks settled',
  'signed off',
  'cores settled',
  'plates measured again',
]
  .map((need) => `'${need}'`)
  .join(', ');

const stages = [
  // What a stage asks for before a job may move past it.
  `create table stage_needs (
  stage_id integer not null references stages,
  need text not null check (need in (${needNames})),
  primary key (stage_id, need)
) strict, without rowid`,
  `insert into stage_needs
select stage_id, column2 from stages join (values
  ('Checked in', 'complaint said'), ('As found', 'as-found clearances read'), ('Teardown', 'packs entered as found'),
  ('Waiting', 'date promised'), ('Build', 'pack checks settled'), ('Final check', 'all checks settled'),
  ('Final check', 'signed off'), ('Picked up', 'cores settled'), ('Picked up', 'plates measured again')
) on column1 = stages.name`,
  // What a move went on without. Who and when stand in the entry it made.
  `create table needs_passed_over (
  stage_entry_id integer not null references stage_entries,
  stage_id integer not null references stages,
  need text not null check (need in (${needNames})),
  what text not null check (what <> ''),
  reason text not null check (reason <> ''),
  primary key (stage_entry_id, stage_id, need)
) strict, without rowid`,
  ...appendOnly('needs_passed_over'),
  // The newest stage entry of each job, kept by its trigger and by nothing else.
  `create table jobs_in_stages (
  job_id integer primary key references jobs,
  stage_id integer not null references stages,
  stage_entry_id integer not null references stage_entries
) strict`,
  `insert into jobs_in_stages
select job_id, stage_id, max(stage_entry_id) from stage_entries group by job_id`,
  'create index jobs_in_stages_by_stage on jobs_in_stages (stage_id)',
  `create trigger stage_entries_move_the_job after insert on stage_entries
begin
  insert into jobs_in_stages values (new.job_id, new.stage_id, new.stage_entry_id)
  on conflict (job_id) do update set stage_id = excluded.stage_id, stage_entry_id = excluded.stage_entry_id;
end`,
];

// Where words of a job are written, and how they lead to it: the table, the words of a new row, its job.
const written = [
  [
    'intakes',
    `new.complaint || char(10) || new.codes || char(10) || new.pan || char(10) || new.installed_by || char(10) || new.vehicle_changes`,
    'new.job_id',
  ],
  ['calls', 'new.with_whom || char(10) || new.said', 'new.job_id'],
  ['takes', 'new.note', 'new.job_id'],
  ['mock_ups', 'new.note', 'new.job_id'],
  ['sign_offs', 'new.note', 'new.job_id'],
  [
    'mock_up_pieces',
    '(select tag from pieces where piece_id = new.piece_id)',
    '(select job_id from mock_ups where mock_up_id = new.mock_up_id)',
  ],
  [
    'movements',
    `(select number || char(10) || mark from batches join parts using (part_id) where batch_id = new.batch_id)`,
    'new.job_id',
  ],
] as const;

const search = [
  // One row a job, its rowid the job's: a fragment of three letters and more is found by trigrams.
  `create virtual table job_words using fts5 (words, tokenize = 'trigram remove_diacritics 1')`,
  `insert into job_words (rowid, words)
select jobs.job_id, concat_ws(char(10), jobs.number, case_tag, customers.name, customers.phone, families.name, serial, vehicle,
  (select group_concat(complaint, char(10)) from intakes where intakes.job_id = jobs.job_id),
  (select group_concat(note, char(10)) from takes where takes.job_id = jobs.job_id and note <> ''),
  (select group_concat(note, char(10)) from mock_ups where mock_ups.job_id = jobs.job_id and note <> ''),
  (select group_concat(distinct tag) from mock_ups join mock_up_pieces using (mock_up_id) join pieces using (piece_id)
    where mock_ups.job_id = jobs.job_id and tag <> ''),
  (select group_concat(number || char(10) || mark, char(10)) from movements join batches using (batch_id) join parts using (part_id)
    where movements.job_id = jobs.job_id))
from jobs join customers using (customer_id) join units using (unit_id) join families using (family_id)`,
  `create trigger jobs_to_words after insert on jobs
begin
  insert into job_words (rowid, words)
  select new.job_id, concat_ws(char(10), new.number, new.case_tag, customers.name, customers.phone, families.name, serial, vehicle)
  from customers, units join families using (family_id)
  where customers.customer_id = new.customer_id and units.unit_id = new.unit_id;
end`,
  ...written.map(
    ([table, words, jobId]) => `create trigger ${table}_to_words after insert on ${table}
when ${jobId} is not null and trim(${words}, char(10)) <> ''
  and not exists (select 1 from job_words where rowid = ${jobId} and instr(words, char(10) || ${words}) > 0)
begin
  update job_words set words = words || char(10) || ${words} where rowid = ${jobId};
end`,
  ),
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...door, ...stages, ...search]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 5').execute(database);
}
