// Rows put into the file by the thousand: one prepared statement a table, under the same CHECKs and triggers as any hand.
import type Sqlite from 'better-sqlite3';
import type { InsertObject } from 'kysely';
import type { Tables } from '../../../database/tables.ts';

export class BulkInserts {
  readonly #connection: Sqlite.Database;
  readonly #statements = new Map<string, Sqlite.Statement>();
  /** How many rows went into each table. */
  readonly counts = new Map<string, number>();

  constructor(connection: Sqlite.Database) {
    this.#connection = connection;
  }

  /** Answers the row’s number. Every row of a table names the same columns. */
  insert<T extends keyof Tables & string>(table: T, row: InsertObject<Tables, T>): number {
    this.counts.set(table, (this.counts.get(table) ?? 0) + 1);
    return Number(this.#statementFor(table, row).run(row).lastInsertRowid);
  }

  #statementFor(table: string, row: object): Sqlite.Statement {
    const known = this.#statements.get(table);
    if (known) return known;
    const columns = Object.keys(row);
    const statement = this.#connection.prepare(
      `insert into ${table} (${columns.join(', ')}) values (${columns.map((column) => `@${column}`).join(', ')})`,
    );
    this.#statements.set(table, statement);
    return statement;
  }
}
