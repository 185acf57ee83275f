// Photos of a ticket, whose files lie beside the shop file, and the folder a phone fills.
import { type Kysely, sql } from 'kysely';

const statements = [
  // Each file is named after the hash of what is in it. Taken off a ticket, a photo's row and files stay.
  `create table photos (
  photo_id integer primary key,
  job_id integer not null references jobs,
  sha256 text not null check (length(sha256) = 64),
  small_sha256 text not null check (length(small_sha256) = 64),
  width integer not null check (width > 0),
  height integer not null check (height > 0),
  caption text not null,
  check_id integer references checks,
  is_in_report integer not null check (is_in_report in (0, 1)),
  folder_name text,
  added_at text not null,
  added_by integer not null references people,
  removed_at text
) strict`,
  'create unique index photos_once_a_job on photos (job_id, sha256) where removed_at is null',
  `create trigger photos_no_delete before delete on photos
begin select raise(abort, 'append-only: photos'); end`,
  `create table photo_folder (
  photo_folder_id integer primary key check (photo_folder_id = 1),
  folder text not null
) strict`,
  'pragma user_version = 6',
];

export async function up(db: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(db);
}
