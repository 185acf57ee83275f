// One connection to one SQLite file, with the pragmas this book relies on, read back and asserted on every open.
import Sqlite from 'better-sqlite3';
import { Kysely, SqliteAdapter, type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely';
import { StorageError } from './errors.ts';
import type { Tables } from './tables.ts';

// Kysely's migrator opens no transaction unless the adapter says that the dialect can roll back DDL. SQLite can.
class TransactionalSqliteAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): true {
    return true;
  }
}

class TransactionalSqliteDialect extends SqliteDialect {
  override createAdapter() {
    return new TransactionalSqliteAdapter();
  }
}

const busyTimeout_ms = 4000;

const promised: Record<string, number> = {
  foreign_keys: 1,
  // Without it INSERT OR REPLACE slips past the append-only triggers.
  recursive_triggers: 1,
  trusted_schema: 0,
  busy_timeout: busyTimeout_ms,
  // FULL. The build's default under WAL falls to NORMAL, which may lose the last readings in a power cut.
  synchronous: 2,
};

export function assertRuntime(): void {
  if (Number(process.versions.napi ?? 0) < 10) {
    throw new StorageError(
      'runtime',
      `Node ${process.versions.node} is too old for the database: run this through npm, or with Node 22.18 or newer.`,
    );
  }
}

export function openConnection(file: string, mode: 'read' | 'write'): Sqlite.Database {
  assertRuntime();
  const connection = new Sqlite(file, {
    readonly: mode === 'read',
    fileMustExist: mode === 'read',
    timeout: busyTimeout_ms,
  });
  if (mode === 'write') connection.pragma('journal_mode = WAL');
  for (const [name, value] of Object.entries(promised)) connection.pragma(`${name} = ${value}`);
  assertPragmas(connection);
  return connection;
}

/** Throws unless every pragma this book relies on is what it was set to. */
export function assertPragmas(connection: Sqlite.Database): void {
  for (const [name, value] of Object.entries(promised)) {
    const actual = connection.pragma(name, { simple: true });
    if (actual !== value) throw new Error(`pragma ${name} is ${String(actual)}, not ${value}`);
  }
}

/** The book asks some four hundred different things; a list of ids goes in as one parameter. */
const mostStatements = 500;

/** Typed queries on a connection. What was asked before is not compiled again: that took as long as answering it. */
export function queriesOn(connection: Sqlite.Database): Kysely<Tables> {
  const compiled = new Map<string, Sqlite.Statement<unknown[], unknown>>();
  const database: SqliteDatabase = {
    prepare: (text) => {
      const known = compiled.get(text);
      // One that is being gone through row by row cannot answer somebody else meanwhile.
      if (known !== undefined && !known.busy) return known as unknown as SqliteStatement;
      const statement = connection.prepare<unknown[], unknown>(text);
      if (compiled.size >= mostStatements) compiled.clear();
      compiled.set(text, statement);
      return statement as unknown as SqliteStatement;
    },
    close: () => connection.close(),
  };
  return new Kysely<Tables>({ dialect: new TransactionalSqliteDialect({ database }) });
}
