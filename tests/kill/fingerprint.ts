// What a shop file holds in one word and in numbers: a hash over every row, and how many rows each table has.
import { createHash } from 'node:crypto';
import type Sqlite from 'better-sqlite3';
import { rowsOf } from '../../main/database/back-up.ts';

export type Fingerprint = { readonly hash: string; readonly rows: Readonly<Record<string, number>> };

export function fingerprintOf(connection: Sqlite.Database): Fingerprint {
  const hash = createHash('sha256');
  return connection.transaction(() => {
    const rows = rowsOf(connection);
    for (const table of Object.keys(rows)) {
      hash.update(`\n${table}`);
      const all = connection
        .prepare(`select * from "${table}" order by 1, 2`)
        .raw()
        .safeIntegers()
        .all() as unknown[][];
      for (const row of all) hash.update(`\n${row.map(String).join('\t')}`);
    }
    return { hash: hash.digest('hex'), rows };
  })();
}
