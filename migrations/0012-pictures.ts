// Pictures of a spec sheet, whose files lie beside the shop file as photos do, with points that name what is there.
import { type Kysely, sql } from 'kysely';

const statements = [
  // The file is named after the hash of what is in it; it is on the disk before its row.
  `create table pictures (
  picture_id integer primary key,
  revision_id integer not null references revisions,
  position integer not null,
  title text not null check (title <> ''),
  sha256 text not null check (length(sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  unique (revision_id, position),
  unique (revision_id, title)
) strict`,
  `create table picture_points (
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
) strict, without rowid`,
  ...['update', 'delete'].flatMap((act) => [
    `create trigger pictures_frozen_${act} before ${act} on pictures
when exists (select 1 from jobs where jobs.revision_id = old.revision_id)
begin select raise(abort, 'frozen: pictures'); end`,
    `create trigger picture_points_frozen_${act} before ${act} on picture_points
when exists (select 1 from pictures join jobs using (revision_id) where pictures.picture_id = old.picture_id)
begin select raise(abort, 'frozen: picture_points'); end`,
  ]),
  'pragma user_version = 12',
];

export async function up(db: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(db);
}
