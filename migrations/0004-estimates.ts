// What a job comes to: its lines, the estimates given, who approved them, what was paid ahead; and the shop's rates.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const day = "glob '[0-9][0-9][0-9][0-9]-[0-9][0-9]-[0-9][0-9]'";

const terms = [
  // The newest row counts; a closed job keeps those it was closed under. 8.875 % is 8875 per hundred thousand.
  `create table money_terms (
  money_terms_id integer primary key,
  labour_rate_cents integer check (labour_rate_cents >= 0),
  tax_label text not null check (tax_label <> ''),
  tax_per_hundred_thousand integer not null check (tax_per_hundred_thousand between 0 and 100000),
  is_labour_taxable integer not null check (is_labour_taxable in (0, 1)),
  set_at text not null,
  set_by integer not null references people
) strict`,
  ...appendOnly('money_terms'),
];

const lines = [
  // Hours and pieces in hundredths. The cost is the shop's own and stands on no paper.
  `create table job_lines (
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
) strict`,
  'create index job_lines_of_job on job_lines (job_id)',
  'create index job_lines_of_batch on job_lines (batch_id) where batch_id is not null',
  ...appendOnly('job_lines'),
  // A line that holds no more: taken off, or replaced by a later one.
  `create table job_line_ends (
  job_line_id integer primary key references job_lines,
  replaced_by_id integer unique references job_lines check (replaced_by_id > job_line_id),
  reason text not null,
  ended_at text not null,
  ended_by integer not null references people
) strict`,
  ...appendOnly('job_line_ends'),
];

const estimates = [
  // What was told the customer, as it was told.
  `create table estimates (
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
) strict`,
  ...appendOnly('estimates'),
  `create table estimate_lines (
  estimate_id integer not null references estimates,
  position integer not null check (position > 0),
  job_line_id integer not null references job_lines,
  primary key (estimate_id, position),
  unique (estimate_id, job_line_id)
) strict, without rowid`,
  'create index estimate_lines_of_line on estimate_lines (job_line_id)',
  ...appendOnly('estimate_lines'),
  `create table approvals (
  approval_id integer primary key,
  estimate_id integer not null references estimates,
  approved_by text not null check (approved_by <> ''),
  how text not null check (how in ('in person', 'phone', 'message')),
  up_to_cents integer not null check (up_to_cents >= 0),
  approved_on text not null check (approved_on ${day}),
  note text not null,
  recorded_at text not null,
  recorded_by integer not null references people
) strict`,
  'create index approvals_of_estimate on approvals (estimate_id)',
  ...appendOnly('approvals'),
];

const deposits = [
  // Below zero: given back.
  `create table deposits (
  deposit_id integer primary key,
  job_id integer not null references jobs,
  amount_cents integer not null check (amount_cents <> 0),
  how text not null check (how in ('cash', 'card', 'check', 'transfer', 'other')),
  note text not null,
  received_at text not null,
  received_by integer not null references people
) strict`,
  'create index deposits_of_job on deposits (job_id, amount_cents)',
  ...appendOnly('deposits'),
  `create trigger deposits_never_below_zero before insert on deposits
when new.amount_cents < 0
  and (select coalesce(sum(amount_cents), 0) from deposits where job_id = new.job_id) + new.amount_cents < 0
begin select raise(abort, 'below zero: deposits'); end`,
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of [...terms, ...lines, ...estimates, ...deposits]) await sql.raw(statement).execute(database);
  await sql.raw('pragma user_version = 4').execute(database);
}
