// Bring a shop file to the newest schema, all of it or nothing.
import { type Kysely, sql } from 'kysely';
import { type Migration, Migrator } from 'kysely/migration';
import { migrations as allMigrations } from '../../migrations/index.ts';
import { StorageError } from './errors.ts';
import type { Tables } from './tables.ts';

/** Runs what is missing in one transaction; a migration that fails leaves the file as it was. */
export async function migrate(
  database: Kysely<Tables>,
  migrations: Record<string, Migration> = allMigrations,
): Promise<void> {
  const migrator = new Migrator({ db: database, provider: { getMigrations: async () => migrations } });
  const { error } = await migrator.migrateToLatest();
  if (error)
    throw new StorageError('migration', 'The shop file could not be brought up to date; it is unchanged.', error);
  const broken = await sql`pragma foreign_key_check`.execute(database);
  if (broken.rows.length > 0) {
    throw new StorageError('damaged', 'The shop file holds rows that point nowhere: restore the newest backup.');
  }
}
