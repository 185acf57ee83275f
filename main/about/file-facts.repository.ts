// How big the shop file is and how much stands in each of its tables.
import { existsSync, statSync } from 'node:fs';
import type { Diagnostics } from '../../app/about/diagnostics.ts';
import { openConnection } from '../database/connection.ts';

type FileFacts = Omit<NonNullable<Diagnostics['shop']>, 'isDemo' | 'set'>;

/** Over a connection of its own: what is asked here is asked of SQLite itself, not of the book's tables. */
export function fileFacts(file: string): FileFacts {
  const connection = openConnection(file, 'read');
  try {
    const one = (question: string) => connection.prepare(question).pluck().get();
    const tables = connection
      .prepare<[], string>(
        `select name from sqlite_schema where type = 'table' and name not like 'sqlite%' and name not like 'kysely%' order by name`,
      )
      .pluck()
      .all();
    const log = `${file}-wal`;
    return {
      sqlite: String(one('select sqlite_version()')),
      schema: Number(one('pragma user_version')),
      file_bytes: statSync(file).size,
      log_bytes: existsSync(log) ? statSync(log).size : 0,
      freePages: Number(one('pragma freelist_count')),
      rows: tables.map((table) => [table, Number(one(`select count(*) from "${table}"`))] as const),
    };
  } finally {
    connection.close();
  }
}
