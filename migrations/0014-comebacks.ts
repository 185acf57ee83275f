// Units that came back: on which build, why, what it cost, whom to call; and a shelf of what each delivered build was
// found to be, so that thousands of them can be held beside one another without judging every reading again.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const day = "glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'";

const comebacks = [
  // The ticket a unit came back on, and the build it is held against. A ticket logged by mistake against one build may
  // be held against another.
  `create table comebacks (
  comeback_id integer primary key,
  job_id integer not null references jobs,
  built_job_id integer not null references jobs,
  logged_at text not null,
  logged_by integer not null references people,
  check (job_id <> built_job_id)
) strict`,
  'create index comebacks_of_build on comebacks (built_job_id)',
  'create index comebacks_by_job on comebacks (job_id)',
  ...appendOnly('comebacks'),
  // Each row is the whole card; the newest counts.
  `create table comeback_cards (
  comeback_card_id integer primary key,
  comeback_id integer not null references comebacks,
  came_back_on text not null check (came_back_on ${day}),
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
) strict`,
  'create index comeback_cards_of_comeback on comeback_cards (comeback_id)',
  ...appendOnly('comeback_cards'),
  // The newest word on a cause in a pack counts. The pack is one of the recorded build's.
  `create table comeback_causes (
  comeback_cause_id integer primary key,
  comeback_id integer not null references comebacks,
  cause text not null check (cause <> ''),
  pack_id integer references packs,
  certainty text not null check (certainty in ('known', 'suspected', 'not found', 'taken back')),
  note text not null,
  written_at text not null,
  written_by integer not null references people
) strict`,
  'create index comeback_causes_of_comeback on comeback_causes (comeback_id)',
  ...appendOnly('comeback_causes'),
  `create trigger comeback_cards_to_words after insert on comeback_cards
begin
  update job_words set words = words || char(10) || new.customer_says || char(10) || new.note
  where rowid = (select job_id from comebacks where comeback_id = new.comeback_id);
end`,
  // A person puts a build on the list, with a reason; what it shares is written beside it.
  `create table units_to_call (
  unit_to_call_id integer primary key,
  job_id integer not null references jobs,
  shares text not null check (shares in ('batch', 'plate', 'gauge', 'finding', 'other')),
  what text not null check (what <> ''),
  what_to_check text not null,
  reason text not null check (reason <> ''),
  added_at text not null,
  added_by integer not null references people
) strict`,
  'create index units_to_call_by_job on units_to_call (job_id)',
  ...appendOnly('units_to_call'),
  // What came of it, call after call; the newest counts.
  `create table units_called (
  unit_called_id integer primary key,
  unit_to_call_id integer not null references units_to_call,
  came_of_it text not null check (came_of_it in ('reached', 'not reached', 'comes in', 'looked at', 'taken off')),
  note text not null,
  called_at text not null,
  called_by integer not null references people
) strict`,
  'create index units_called_of_unit on units_called (unit_to_call_id)',
  ...appendOnly('units_called'),
];

// Derived, so it may go at any time: whatever is put right under a build takes its figures off the shelf.
const shelf = [
  `create table as_built (
  job_id integer primary key references jobs,
  reckoning integer not null,
  builder integer references people
) strict`,
  `create table as_built_checks (
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
) strict, without rowid`,
  'create index as_built_checks_by_check on as_built_checks (check_id)',
  `create table as_built_packs (
  job_id integer not null references as_built on delete cascade,
  pack_id integer not null references packs,
  mock_ups integer not null check (mock_ups >= 0),
  reused_plates integer not null check (reused_plates >= 0),
  primary key (job_id, pack_id)
) strict, without rowid`,
  ...[
    ['takes', 'new.job_id'],
    ['mock_ups', 'new.job_id'],
    ['readings', '(select job_id from takes where take_id = new.take_id)'],
    ['spot_notes', '(select job_id from takes where take_id = new.take_id)'],
  ].map(
    ([table, jobId]) => `create trigger ${table}_off_the_shelf after insert on ${table}
begin delete from as_built where job_id = ${jobId}; end`,
  ),
];

const views = [
  // As the newest delivery and the newest warranty say; a delivery taken back is none.
  `create view builds_as_delivered as
select jobs.job_id, jobs.number, jobs.customer_id, jobs.unit_id, jobs.revision_id, family_id,
  delivered_on, delivery.distance_amount, delivery.distance_unit, in_service_on, months
from jobs
join revisions on revisions.revision_id = jobs.revision_id
join deliveries as delivery on delivery_id =
  (select max(newest.delivery_id) from deliveries as newest where newest.job_id = jobs.job_id)
left join warranties on warranty_id =
  (select max(newest.warranty_id) from warranties as newest where newest.job_id = jobs.job_id)
where delivered_on is not null`,
  `create view comebacks_as_known as
select comebacks.job_id, built_job_id, logged_at, logged_by, card.*
from comebacks join comeback_cards as card on comeback_card_id =
  (select max(newest.comeback_card_id) from comeback_cards as newest
   where newest.comeback_id = comebacks.comeback_id)`,
  `create view causes_as_known as
select * from comeback_causes
where certainty <> 'taken back' and not exists
  (select 1 from comeback_causes as newer
   where newer.comeback_id = comeback_causes.comeback_id and newer.cause = comeback_causes.cause
     and newer.pack_id is comeback_causes.pack_id and newer.comeback_cause_id > comeback_causes.comeback_cause_id)`,
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...comebacks, ...shelf, ...views]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 14').execute(database);
}
