// A whole copy of a shop file, through SQLite's backup interface: copying the file alone loses what is in the WAL.
import { mkdirSync, renameSync, rmSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { StorageError } from './errors.ts';

/**
 * Copies `connection`'s file into `folder` under its name and the instant, checks the copy, and answers its path.
 * The copy takes its final name only when it is whole.
 */
export async function backUp(connection: Sqlite.Database, folder: string, now: string): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const extension = extname(connection.name);
  const target = join(folder, `${basename(connection.name, extension)} ${now.replaceAll(':', '-')}${extension}`);
  const unfinished = `${target}.unfinished`;
  try {
    await connection.backup(unfinished);
    const copy = new Sqlite(unfinished, { readonly: true });
    const verdict = copy.pragma('quick_check', { simple: true });
    copy.close();
    if (verdict !== 'ok') throw new StorageError('backup', 'The backup came out damaged and was thrown away.');
    renameSync(unfinished, target);
  } finally {
    for (const rest of ['', '-wal', '-shm']) rmSync(`${unfinished}${rest}`, { force: true });
  }
  return target;
}
