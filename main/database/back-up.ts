// A whole copy of a shop file, through SQLite's backup interface: copying the file alone loses what is in the WAL.
import { createHash } from 'node:crypto';
import { createReadStream, mkdirSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import Sqlite from 'better-sqlite3';
import { syncFile, syncFolder } from '../ports/disk.ts';
import { StorageError } from './errors.ts';

/** What is known of a backup without opening it. It lies beside the copy as JSON. */
export type BackupCard = {
  readonly at: string;
  readonly isPinned: boolean;
  readonly schema: number;
  readonly bytes: number;
  readonly sha256: string;
  /** Rows of every table. */
  readonly rows: Readonly<Record<string, number>>;
};

/** Tables that only ever grow: a copy that holds less of them than the file did when it began is not whole. */
const onlyGrow = ['jobs', 'takes', 'readings', 'movements', 'photos'];

/**
 * Copies `connection`'s file into `folder` under its name and the instant, checks the copy, writes its card beside it,
 * and answers its path. The copy takes its final name only when it is whole and on the disk.
 */
export async function backUp(
  connection: Sqlite.Database,
  folder: string,
  now: string,
  { isPinned }: { isPinned: boolean },
): Promise<string> {
  mkdirSync(folder, { recursive: true });
  const extension = extname(connection.name);
  const target = join(folder, `${basename(connection.name, extension)} ${now.replaceAll(':', '-')}${extension}`);
  const unfinished = `${target}.unfinished`;
  const before = rowsOf(connection);
  try {
    await connection.backup(unfinished);
    leaveLogging(unfinished);
    const checked = checkCopy(unfinished);
    const isLess = onlyGrow.some((table) => (checked.rows[table] ?? 0) < (before[table] ?? 0));
    if (isLess) throw new StorageError('backup', 'The backup came out short and was thrown away.');
    syncFile(unfinished);
    const card: BackupCard = {
      at: now,
      isPinned,
      ...checked,
      bytes: statSync(unfinished).size,
      sha256: await sha256Of(unfinished),
    };
    writeFileSync(cardBeside(unfinished), JSON.stringify(card));
    syncFile(cardBeside(unfinished));
    renameSync(cardBeside(unfinished), cardBeside(target));
    renameSync(unfinished, target);
    syncFolder(folder);
  } finally {
    for (const rest of ['', '-wal', '-shm', '.json']) rmSync(`${unfinished}${rest}`, { force: true });
  }
  return target;
}

export function cardBeside(copy: string): string {
  return `${copy}.json`;
}

/** A copy that nobody writes to needs no log, and opened for reading it then gets no companions. */
function leaveLogging(file: string): void {
  const copy = new Sqlite(file);
  copy.pragma('journal_mode = delete');
  copy.close();
}

function checkCopy(file: string): Pick<BackupCard, 'schema' | 'rows'> {
  const copy = new Sqlite(file, { readonly: true });
  try {
    const verdict = copy.pragma('quick_check(1)', { simple: true });
    if (verdict !== 'ok') throw new StorageError('backup', 'The backup came out damaged and was thrown away.');
    return { schema: Number(copy.pragma('user_version', { simple: true })), rows: rowsOf(copy) };
  } finally {
    copy.close();
  }
}

/** How many rows each table holds, but for the tables that carry the search words. */
export function rowsOf(connection: Sqlite.Database): Record<string, number> {
  const tables = connection
    .prepare("select name from sqlite_schema where type = 'table' and sql not like 'create virtual%' order by name")
    .pluck()
    .all() as string[];
  return Object.fromEntries(
    tables
      .filter((name) => !name.startsWith('sqlite_') && !name.startsWith('job_words'))
      .map((name) => [name, Number(connection.prepare(`select count(*) from "${name}"`).pluck().get())]),
  );
}

export async function sha256Of(file: string): Promise<string> {
  const hash = createHash('sha256');
  await pipeline(createReadStream(file), hash);
  return hash.digest('hex');
}

/** The backups lie in a folder of their own beside the shop file. */
export function backupFolderOf(shopFile: string): string {
  return join(dirname(shopFile), 'backups');
}
