// Parts, batches, kits, cores and labels; and more of what is known about a plate.
import { type Kysely, sql } from 'kysely';
import { appendOnly } from './append-only.ts';

const parts = [
  `create table parts (
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
) strict`,
  `create table part_families (
  part_id integer not null references parts,
  family_id integer not null references families,
  primary key (part_id, family_id)
) strict, without rowid`,
  'create index part_families_of_family on part_families (family_id)',
  // What lies in one kit.
  `create table kit_lines (
  kit_id integer not null references parts,
  part_id integer not null references parts check (part_id <> kit_id),
  quantity integer not null check (quantity > 0),
  primary key (kit_id, part_id)
) strict, without rowid`,
  'create index kit_lines_of_part on kit_lines (part_id)',
];

const batches = [
  // What came in at once. Frictions often come unmarked: then the kit they lay in, its document and date tell them apart.
  `create table batches (
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
) strict`,
  'create index batches_of_part on batches (part_id)',
  'create index batches_of_kit_batch on batches (kit_batch_id)',
  ...appendOnly('batches'),
  // What lay in each kit of a batch, as it was when it came in.
  `create table kit_batch_lines (
  batch_id integer not null references batches,
  part_id integer not null references parts,
  quantity integer not null check (quantity > 0),
  primary key (batch_id, part_id)
) strict, without rowid`,
  'create index kit_batch_lines_of_part on kit_batch_lines (part_id)',
  ...appendOnly('kit_batch_lines'),
  // The ledger. What is on hand is the sum of the changes. open: a kit taken apart into its parts; sort: plates
  // measured into cans or tagged. A receipt names a job where a part of a kit pulled for it was left over.
  // price_cents: of one when it was pulled, so that a price list taken in later changes no ticket.
  `create table movements (
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
) strict`,
  'create index movements_of_batch on movements (batch_id, change)',
  'create index movements_of_job on movements (job_id, batch_id) where job_id is not null',
  ...appendOnly('movements'),
  `create trigger movements_never_below_zero before insert on movements
when new.change < 0
  and (select coalesce(sum(change), 0) from movements where batch_id = new.batch_id) + new.change < 0
begin select raise(abort, 'below zero: movements'); end`,
  // No more comes back from a job than went to it.
  `create trigger movements_return_what_was_pulled before insert on movements
when new.kind = 'return'
  and (select coalesce(sum(change), 0) from movements
    where job_id = new.job_id and batch_id = new.batch_id and kind in ('pull', 'return')) + new.change > 0
begin select raise(abort, 'more than was pulled: movements'); end`,
];

const cores = [
  `create table cores (
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
) strict`,
  'create index cores_of_job on cores (job_id)',
  ...appendOnly('cores'),
  `create table core_settlements (
  core_id integer primary key references cores,
  how text not null check (how in ('sent back', 'came back', 'charged', 'written off')),
  note text not null,
  settled_at text not null,
  settled_by integer not null references people
) strict`,
  ...appendOnly('core_settlements'),
];

const plates = [
  // A height typed as several numbers around the plate: the points beside their mean.
  `alter table piece_heights add column micrometer text not null default ''`,
  'alter table piece_heights add column standard_uncertainty_nm integer check (standard_uncertainty_nm > 0)',
  `create table piece_height_points (
  piece_height_id integer not null references piece_heights,
  point integer not null check (point between 1 and 12),
  height_nm integer not null check (height_nm > 0),
  primary key (piece_height_id, point)
) strict, without rowid`,
  ...appendOnly('piece_height_points'),
  'alter table pieces add column batch_id integer references batches',
  'create index pieces_of_batch on pieces (batch_id)',
  'create index pieces_of_can on pieces (can_id)',
  'drop view pieces_as_known',
  `create view pieces_as_known as
select pieces.*, height_nm, height_from, micrometer, standard_uncertainty_nm, measured_at, measured_by
from pieces join piece_heights on piece_height_id =
  (select max(newest.piece_height_id) from piece_heights as newest where newest.piece_id = pieces.piece_id)`,
  // Looked over on the flat plate; the newest look counts.
  `create table piece_looks (
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
) strict`,
  'create index piece_looks_of_piece on piece_looks (piece_id)',
  ...appendOnly('piece_looks'),
  // A plate that came out of a pack and went back among the others of a can: from then on it is one of them.
  `create table can_returns (
  piece_id integer primary key references pieces,
  can_id integer not null references cans,
  returned_at text not null,
  returned_by integer not null references people
) strict`,
  ...appendOnly('can_returns'),
  `alter table can_movements add column typed text not null default ''`,
  'alter table can_movements add column batch_id integer references batches',
  // The movement that this one takes back, once: what was measured into the can was mistyped.
  'alter table can_movements add column takes_back_id integer references can_movements',
  `create unique index can_movements_taken_back on can_movements (takes_back_id) where takes_back_id is not null`,
  // Written down by mistake: such a plate never was, and its tag may be given again.
  'alter table discards add column was_mistyped integer not null default 0 check (was_mistyped in (0, 1))',
  'drop index pieces_by_tag',
  `create index pieces_by_tag on pieces (outline, tag) where tag <> ''`,
  `create trigger pieces_tag_once before insert on pieces
when new.tag <> '' and exists (select 1 from pieces
  where outline = new.outline and tag = new.tag and piece_id <> new.piece_id
  and piece_id not in (select piece_id from discards where was_mistyped))
begin select raise(abort, 'tag taken: pieces'); end`,
  // Each plate with where it is and whether it may be used. It sits in the newest mock-up that names it, unless that
  // pack has a newer one without it; then it left the pack when that one was made. is_single: told apart from others.
  `create view plates_as_known as
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
  (select max(newest.piece_look_id) from piece_looks as newest where newest.piece_id = piece.piece_id)`,
  `create trigger can_movements_never_below_zero before insert on can_movements
when new.change < 0
  and (select coalesce(sum(change), 0) from can_movements where can_id = new.can_id) + new.change < 0
begin select raise(abort, 'below zero: can_movements'); end`,
];

const labels = [
  `create table label_sizes (
  label_size_id integer primary key,
  name text not null unique check (name <> ''),
  width_um integer not null check (width_um between 10000 and 300000),
  height_um integer not null check (height_um between 10000 and 300000)
) strict`,
  `insert into label_sizes (name, width_um, height_um) values
  ('Bin, 50 × 25 mm', 50000, 25000), ('Plate, 40 × 15 mm', 40000, 15000), ('Case, 80 × 50 mm', 80000, 50000)`,
];

export async function up(db: Kysely<unknown>): Promise<void> {
  for (const statement of [...parts, ...batches, ...cores, ...plates, ...labels]) await sql.raw(statement).execute(db);
  await sql.raw('pragma user_version = 3').execute(db);
}
