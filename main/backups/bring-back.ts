// Brings a backup back as a shop file in a folder: checked, brought up to date, its photos beside it.
import { createHash } from 'node:crypto';
import { copyFileSync, existsSync, mkdirSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type Sqlite from 'better-sqlite3';
import { sha256Of } from '../database/back-up.ts';
import { openConnection } from '../database/connection.ts';
import { StorageError } from '../database/errors.ts';
import { openShop } from '../database/open-shop.ts';
import { syncFile, syncFolder } from '../ports/disk.ts';
import { bringPhotos, photosNamedBy, readCard } from './backup-files.ts';
import { photosWithin } from './make-backup.ts';

export type BroughtBack = {
  readonly file: string;
  readonly at: string | null;
  readonly jobs: number;
  readonly readings: number;
  readonly photos: number;
  readonly photosMissing: number;
  readonly newestReadingAt: string | null;
};

/**
 * Makes `folder` hold what `backup` holds, under the name `name`, and says what came. Nothing outside `folder` is
 * touched; the backup is only read. Throws a StorageError when it is not whole, not ours, newer or damaged.
 */
export async function bringBack(
  backup: string,
  folder: string,
  name: string,
  /** Where photos lie that do not lie beside the backup. */
  otherPhotos: string,
  now: string,
): Promise<BroughtBack> {
  if (!existsSync(backup)) throw new StorageError('no-backup', 'There is no such file.');
  if (!statSync(backup).isFile()) throw new StorageError('no-backup', 'This is a folder: name the file in it.');
  const card = readCard(backup);
  if (card && (await sha256Of(backup)) !== card.sha256) {
    throw new StorageError('damaged', 'This backup was damaged since it was made: take another one.');
  }
  const file = join(folder, name);
  await copyWhole(backup, file);
  // Opening refuses what is foreign, newer or damaged, and brings what is older up to date.
  const shop = await openShop(file, 'write', () => now);
  await shop.close();
  const photoFolder = join(folder, 'photos');
  layOutPhotosWithin(file, photoFolder);
  const photos = photosNamedBy(file);
  bringPhotos(photos, join(dirname(backup), 'photos'), photoFolder);
  const photosMissing = bringPhotos(photos, otherPhotos, photoFolder);
  syncFile(file);
  syncFolder(folder);
  return { file: backup, at: card?.at ?? null, photos: photos.length, photosMissing, ...countIn(file) };
}

/** Through SQLite when it is a database with a log beside it, so that nothing in the log is lost. */
async function copyWhole(source: string, target: string): Promise<void> {
  if (!existsSync(`${source}-wal`)) return copyFileSync(source, target);
  const connection = openConnection(source, 'read');
  try {
    await connection.backup(target);
  } finally {
    connection.close();
  }
}

function layOutPhotosWithin(file: string, photoFolder: string): void {
  const connection = openConnection(file, 'write');
  try {
    if (!holds(connection, photosWithin)) return;
    mkdirSync(photoFolder, { recursive: true });
    const rows = connection.prepare<[], { sha256: string; jpeg: Buffer }>(`select * from ${photosWithin}`);
    for (const { sha256, jpeg } of rows.iterate()) {
      if (createHash('sha256').update(jpeg).digest('hex') !== sha256) continue;
      const target = join(photoFolder, `${sha256}.jpg`);
      if (existsSync(target)) continue;
      writeFileSync(target, jpeg);
      syncFile(target);
    }
    connection.exec(`drop table ${photosWithin}`);
    connection.exec('vacuum');
    connection.pragma('wal_checkpoint(truncate)');
  } finally {
    connection.close();
  }
}

function holds(connection: Sqlite.Database, table: string): boolean {
  return connection.prepare('select 1 from sqlite_schema where name = ?').get(table) !== undefined;
}

function countIn(file: string): Pick<BroughtBack, 'jobs' | 'readings' | 'newestReadingAt'> {
  const connection = openConnection(file, 'read');
  try {
    const one = (query: string) => connection.prepare(query).pluck().get();
    return {
      jobs: Number(one('select count(*) from jobs')),
      readings: Number(one('select count(*) from readings')),
      newestReadingAt: (one('select max(taken_at) from readings') as string | null) ?? null,
    };
  } finally {
    connection.close();
  }
}
