// What a book of twenty years looks up by, and went through from end to end for.
import { type Kysely, sql } from 'kysely';

const statements = [
  // A unit that comes again is found by its family and serial; the family alone is the beginning of it.
  'create index units_of_family_by_serial on units (family_id, serial)',
  'drop index units_of_family',
  'create index takes_of_check on takes (check_id)',
  'create index photos_from_folder on photos (folder_name) where folder_name is not null',
  'create index can_movements_of_batch on can_movements (batch_id) where batch_id is not null',
  'pragma user_version = 16',
];

export async function up(database: Kysely<unknown>): Promise<void> {
  for (const statement of statements) await sql.raw(statement).execute(database);
}
