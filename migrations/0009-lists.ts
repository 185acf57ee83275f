// Lists of a spec sheet and what was answered to them on a job; and stages may ask for needs this file does not name.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const sheet = [
  `create table lists (
  list_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  pack_id integer references packs,
  name text not null check (name <> ''),
  gone_through text not null check (gone_through in ('as found', 'teardown', 'build', 'final', 'delivery')),
  source_note text not null,
  unique (revision_id, position),
  unique (revision_id, name)
) strict`,
  `create table list_lines (
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
) strict`,
  `create table list_line_options (
  list_line_id integer not null references list_lines,
  position integer not null,
  words text not null check (words <> ''),
  is_good integer not null check (is_good in (0, 1)),
  primary key (list_line_id, position),
  unique (list_line_id, words)
) strict, without rowid`,
  ...['update', 'delete'].flatMap((act) => [
    `create trigger lists_frozen_${act} before ${act} on lists
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: lists'); end`,
    `create trigger list_lines_frozen_${act} before ${act} on list_lines
when exists (select 1 from lists join jobs using (revision_id) where lists.list_id = old.list_id)
begin select raise(abort, 'frozen: list_lines'); end`,
  ]),
];

const answers = [
  // The newest counts. words: what was chosen or written, or stood before a change; became: what stands after it.
  // number: a count, or rpm.
  `create table list_answers (
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
) strict`,
  'create index list_answers_of_job on list_answers (job_id, list_line_id)',
  ...appendOnly('list_answers'),
  `create trigger list_answers_to_words after insert on list_answers
when new.says in ('written', 'changed') or new.reason <> ''
begin
  update job_words
  set words = words || char(10) || concat_ws(char(10), iif(new.says in ('written', 'changed'), new.words, null), new.became, new.reason)
  where rowid = new.job_id;
end`,
];

// What may be asked for stands in the program alone, so that a further need is no further migration. The two tables
// stand beside everything else: no row anywhere points at them.
const needs = [
  'alter table stage_needs rename to stage_needs_before',
  `create table stage_needs (
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  primary key (stage_id, need)
) strict, without rowid`,
  'insert into stage_needs select stage_id, need from stage_needs_before',
  'drop table stage_needs_before',
  'alter table needs_passed_over rename to needs_passed_over_before',
  `create table needs_passed_over (
  stage_entry_id integer not null references stage_entries,
  stage_id integer not null references stages,
  need text not null check (need <> ''),
  what text not null check (what <> ''),
  reason text not null check (reason <> ''),
  primary key (stage_entry_id, stage_id, need)
) strict, without rowid`,
  `insert into needs_passed_over
select stage_entry_id, stage_id, need, what, reason from needs_passed_over_before`,
  'drop table needs_passed_over_before',
  ...appendOnly('needs_passed_over'),
  // A new shop asks for its lists; one that is at work keeps asking for what it asked for.
  `insert into stage_needs
select stage_id, column2 from stages join (values
  ('Teardown', 'teardown lists done'), ('Build', 'build lists done'), ('Final check', 'final lists done')
) on column1 = stages.name
where not exists (select 1 from settings)`,
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...sheet, ...answers, ...needs]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 9').execute(database);
}
