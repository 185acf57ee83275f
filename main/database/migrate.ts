// Bring a shop file to the newest schema, all of it or nothing.
import { type Kysely, sql } from 'kysely';
import { type Migration, Migrator } from 'kysely/migration';
import { StorageError } from './errors.ts';
import type { Tables } from './tables.ts';

/** Runs what is missing in one transaction; a migration that fails leaves the file as it was. */
export async function migrate(database: Kysely<Tables>, history: Record<string, Migration>): Promise<void> {
  const provider = { getMigrations: async () => history };
  try {
    // Opened here, the transaction holds the migrator's own tables too.
    await database.transaction().execute(async (transaction) => {
      const { error } = await new Migrator({ db: transaction, provider }).migrateToLatest();
      if (error) throw error;
    });
  } catch (cause) {
    throw new StorageError('migration', 'The shop file could not be brought up to date; it is unchanged.', cause);
  }
  const broken = await sql`pragma foreign_key_check`.execute(database);
  if (broken.rows.length > 0) {
    throw new StorageError('damaged', 'The shop file holds rows that point nowhere: restore the newest backup.');
  }
}
