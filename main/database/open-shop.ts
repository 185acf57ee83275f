// A shop file, opened: refused if it is not ours or newer, backed up before it is migrated, checked, then lent out
// one transaction at a time.
import { closeSync, existsSync, openSync, readSync, statSync } from 'node:fs';
import type Sqlite from 'better-sqlite3';
import { type Kysely, sql } from 'kysely';
import { applicationId, migrations } from '../../migrations/index.ts';
import type { Clock } from '../ports/clock.ts';
import { backUp, backupFolderOf } from './back-up.ts';
import { breathing } from './breathing.ts';
import { openConnection, queriesOn } from './connection.ts';
import { StorageError } from './errors.ts';
import { migrate } from './migrate.ts';
import type { Reading, Tables, Writing } from './tables.ts';

export type OpenShop = {
  readonly file: string;
  readonly clock: Clock;
  /** Runs `act` on one unchanging view of the file. */
  read<T>(act: (reading: Reading) => Promise<T>): Promise<T>;
  /** The same over a connection of its own: a long read that keeps nobody waiting. */
  readApart<T>(act: (reading: Reading) => Promise<T>): Promise<T>;
  /** Runs `act` in one transaction: all of it is kept, or nothing when it throws. */
  write<T>(act: (writing: Writing, now: string) => Promise<T>): Promise<T>;
  /**
   * Runs an `act` that reads for long and writes at its end, in one transaction that keeps nobody waiting while it reads.
   * When somebody else wrote meanwhile, what was read no longer holds and the act runs anew.
   */
  writeAfterReading<T>(act: (writing: Writing) => Promise<T>): Promise<T>;
  /** True once after another process wrote to the file. */
  wasWrittenElsewhere(): boolean;
  close(): Promise<void>;
};

/**
 * Opens `file` for writing (making it if it is not there) or for reading only.
 * Throws a StorageError: foreign, newer, damaged, cannot-open; the file is then as it was.
 */
export async function openShop(
  file: string,
  mode: 'read' | 'write',
  clock: Clock,
  history = migrations,
): Promise<OpenShop> {
  // Each migration sets `user_version` to its own number.
  const newestSchema = Object.keys(history).length;
  const schema = existsSync(file) ? schemaOf(file, newestSchema) : 0;
  if (mode === 'read' && schema < newestSchema) {
    throw new StorageError(
      'older',
      'This shop file is from an older Thoubook: open it for writing once to bring it up to date.',
    );
  }
  const connection = openConnection(file, mode);
  try {
    if (mode === 'write' && schema < newestSchema) {
      if (schema > 0) await backUp(connection, backupFolderOf(file), clock(), { isPinned: true });
      await migrate(queriesOn(connection), history);
    }
    assertSound(connection);
    return lend(connection, queriesOn(connection), clock);
  } catch (thrown) {
    connection.close();
    throw thrown;
  }
}

/** A further connection to a file that is open, and so was looked over, already. */
export function openBeside(file: string, clock: Clock): OpenShop {
  const connection = openConnection(file, 'write');
  return lend(connection, queriesOn(connection), clock);
}

/** The schema number of a shop file, looking without touching. An empty file counts as not there yet. */
function schemaOf(file: string, newestSchema: number): number {
  if (statSync(file).size === 0) return 0;
  const header = headerOf(file);
  if (header !== 'SQLite format 3\0') throw new StorageError('foreign', 'This file is not a shop file.');
  const connection = openConnection(file, 'read');
  try {
    if (connection.pragma('application_id', { simple: true }) !== applicationId) {
      throw new StorageError('foreign', 'This file is a database, but not a shop file.');
    }
    const schema = Number(connection.pragma('user_version', { simple: true }));
    if (schema > newestSchema) {
      throw new StorageError(
        'newer',
        'This shop file is from a newer Thoubook: update Thoubook to open it. Nothing was changed.',
      );
    }
    return schema;
  } finally {
    connection.close();
  }
}

/** The first sixteen bytes; the file may hold a hundred megabytes behind them. */
function headerOf(file: string): string {
  const handle = openSync(file, 'r');
  try {
    const header = Buffer.alloc(16);
    return header.toString('latin1', 0, readSync(handle, header));
  } finally {
    closeSync(handle);
  }
}

function assertSound(connection: Sqlite.Database): void {
  const verdict = connection.pragma('quick_check(1)', { simple: true });
  if (verdict !== 'ok') {
    throw new StorageError('damaged', 'The shop file is damaged: restore the newest backup.');
  }
}

function lend(connection: Sqlite.Database, database: Kysely<Tables>, clock: Clock): OpenShop {
  // Changes only when another connection writes.
  let seenVersion = connection.pragma('data_version', { simple: true });
  return {
    file: connection.name,
    clock,
    read: (act) => inside(connection, database, 'begin', act),
    readApart: async (act) => {
      const apart = openConnection(connection.name, 'read');
      try {
        return await inside(apart, queriesOn(apart).withPlugin(breathing()), 'begin', act);
      } finally {
        apart.close();
      }
    },
    // `begin immediate` takes the write lock at once, so a second window waits instead of failing half way.
    write: (act) =>
      inside(connection, database, 'begin immediate', (executor) =>
        act(executor as Kysely<Tables> & { writes: true }, clock()),
      ),
    writeAfterReading: async (act) => {
      for (;;) {
        try {
          return await inside(connection, database, 'begin', (executor) =>
            act(executor as Kysely<Tables> & { writes: true }),
          );
        } catch (thrown) {
          if (!isOvertaken(thrown)) throw thrown;
        }
      }
    },
    wasWrittenElsewhere: () => {
      const version = connection.pragma('data_version', { simple: true });
      const isNew = version !== seenVersion;
      seenVersion = version;
      return isNew;
    },
    close: async () => {
      await database.destroy();
      // Kysely closes only what it was asked something on.
      connection.close();
    },
  };
}

/** SQLite's word for a transaction that would write on top of what it has not seen. */
function isOvertaken(thrown: unknown): boolean {
  return thrown instanceof Error && 'code' in thrown && thrown.code === 'SQLITE_BUSY_SNAPSHOT';
}

function inside<T>(
  connection: Sqlite.Database,
  database: Kysely<Tables>,
  begin: 'begin' | 'begin immediate',
  act: (executor: Kysely<Tables>) => Promise<T>,
): Promise<T> {
  return database.connection().execute(async (executor) => {
    await sql.raw(begin).execute(executor);
    try {
      const value = await act(executor);
      await sql.raw('commit').execute(executor);
      return value;
    } catch (thrown) {
      if (connection.inTransaction) await sql.raw('rollback').execute(executor);
      throw thrown;
    }
  });
}
