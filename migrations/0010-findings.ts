// What teardown found, part by part, with decisions, photos and lines of the estimate; and both numbers of a reading
// that is one less the other.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const findings = [
  `create table findings (
  finding_id integer primary key,
  job_id integer not null references jobs
) strict`,
  'create index findings_of_job on findings (job_id)',
  ...appendOnly('findings'),
  // Each row is the whole card; the newest counts. The place is kept with the slot, which it follows from.
  `create table finding_cards (
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
) strict`,
  'create index finding_cards_of_finding on finding_cards (finding_id)',
  'create index finding_cards_by_part on finding_cards (part)',
  ...appendOnly('finding_cards'),
  `create table finding_decisions (
  finding_decision_id integer primary key,
  finding_id integer not null references findings,
  decision text not null check (decision in ('not decided yet', 'reuse', 'replace', 'machine')),
  note text not null,
  decided_at text not null,
  decided_by integer not null references people
) strict`,
  'create index finding_decisions_of_finding on finding_decisions (finding_id)',
  ...appendOnly('finding_decisions'),
  `create table finding_photos (
  finding_photo_id integer primary key,
  finding_id integer not null references findings,
  photo_id integer not null references photos,
  is_pinned integer not null check (is_pinned in (0, 1)),
  pinned_at text not null,
  pinned_by integer not null references people
) strict`,
  'create index finding_photos_of_finding on finding_photos (finding_id)',
  ...appendOnly('finding_photos'),
  `create table finding_lines (
  finding_id integer not null references findings,
  job_line_id integer not null references job_lines,
  linked_at text not null,
  linked_by integer not null references people,
  primary key (finding_id, job_line_id)
) strict, without rowid`,
  ...appendOnly('finding_lines'),
  `create view findings_as_known as
select findings.job_id, finding_cards.*, decision
from findings
join finding_cards on finding_card_id =
  (select max(newest.finding_card_id) from finding_cards as newest where newest.finding_id = findings.finding_id)
join finding_decisions on finding_decision_id =
  (select max(newest.finding_decision_id) from finding_decisions as newest where newest.finding_id = findings.finding_id)
where is_withdrawn = 0`,
];

const words = 'new.part || char(10) || new.note';
const jobId = '(select job_id from findings where finding_id = new.finding_id)';

const search = [
  `create trigger finding_cards_to_words after insert on finding_cards
when not exists (select 1 from job_words where rowid = ${jobId} and instr(words, char(10) || ${words}) > 0)
begin
  update job_words set words = words || char(10) || ${words} where rowid = ${jobId};
end`,
];

// Bore and shaft, the pressure at the start and at the end, the dial at rest and moved; lines from before have them only
// as typed.
const readings = [
  `alter table readings add column first_amount integer
  check (first_amount is null or method in ('dial', 'direct', 'drop'))`,
  `alter table readings add column second_amount integer
  check ((second_amount is null) = (first_amount is null)
    and (second_amount is null or amount = abs(first_amount - second_amount)))`,
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...findings, ...search, ...readings]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 10').execute(database);
}
