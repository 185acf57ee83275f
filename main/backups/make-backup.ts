// Makes a backup from start to end: the copy, its photos, what is thrown away, the second place, the one file of all.
import { existsSync, readFileSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { backUp, backupFolderOf } from '../database/back-up.ts';
import { openConnection } from '../database/connection.ts';
import { StorageError } from '../database/errors.ts';
import { syncFile, syncFolder } from '../ports/disk.ts';
import { bringPhotos, copyBackup, photoFolderBeside, photosNamedBy, pruneBackups } from './backup-files.ts';

/** A place elsewhere, and the folder of ours in it. */
export type SecondPlace = { readonly place: string; readonly folder: string };

/** Answers the backup's path, and why it did not reach the second place; empty: it did, or there is none. */
export async function makeBackup(
  shopFile: string,
  second: SecondPlace | null,
  now: string,
  isPinned: boolean,
): Promise<{ file: string; trouble: string }> {
  const folder = backupFolderOf(shopFile);
  const file = await copyOf(shopFile, folder, now, isPinned);
  const photos = photosNamedBy(file);
  bringPhotos(photos, photoFolderBeside(shopFile), join(folder, 'photos'));
  pruneBackups(folder, basename(shopFile), now);
  return { file, trouble: second === null ? '' : carryTo(second, file, photos, basename(shopFile), now) };
}

async function copyOf(shopFile: string, folder: string, now: string, isPinned: boolean): Promise<string> {
  // A connection of its own: copied in one go, it keeps no writer waiting and no writer makes it begin anew.
  const connection = openConnection(shopFile, 'read');
  try {
    return await backUp(connection, folder, now, { isPinned });
  } finally {
    connection.close();
  }
}

function carryTo(
  second: SecondPlace,
  backup: string,
  photos: readonly string[],
  shopName: string,
  now: string,
): string {
  // Never made: where a stick is not plugged in, its folder would come to lie on this very disk.
  if (!existsSync(second.place)) return 'The second place for backups cannot be reached: is the stick plugged in?';
  try {
    copyBackup(backup, second.folder);
    bringPhotos(photos, photoFolderBeside(backup), photoFolderBeside(join(second.folder, basename(backup))));
    pruneBackups(second.folder, shopName, now);
    return '';
  } catch (thrown) {
    const why = thrown instanceof Error && 'code' in thrown && thrown.code === 'ENOSPC' ? 'it is full' : 'it failed';
    return `The backup did not get to the second place: ${why}.`;
  }
}

/**
 * One file that holds all: a shop file with its photos in a table. It is a shop file like any other, so that what
 * brings it back needs no other reader.
 */
export async function makeWholeBackup(
  shopFile: string,
  folder: string,
  now: string,
): Promise<{ file: string; bytes: number; photos: number }> {
  if (!existsSync(folder)) throw new StorageError('no-folder', 'There is no such folder.');
  // Under no name that somebody could take for a backup, until it is whole.
  const unfinished = join(folder, 'whole backup.unfinished');
  rmSync(unfinished, { recursive: true, force: true });
  try {
    const copy = await copyOf(shopFile, unfinished, now, false);
    const target = join(folder, basename(copy).replace(/( [^ ]*)$/, ' whole$1'));
    const photos = layPhotosInto(copy, photoFolderBeside(shopFile));
    syncFile(copy);
    renameSync(copy, target);
    syncFolder(folder);
    return { file: target, bytes: statSync(target).size, photos };
  } finally {
    rmSync(unfinished, { recursive: true, force: true });
  }
}

/** Between opening and closing a whole backup its photos lie in this table. */
export const photosWithin = 'photos_within';

function layPhotosInto(copy: string, photoFolder: string): number {
  const names = photosNamedBy(copy).filter((name) => existsSync(join(photoFolder, `${name}.jpg`)));
  const connection = openConnection(copy, 'write');
  try {
    connection.exec(`create table ${photosWithin} (sha256 text primary key, jpeg blob not null) strict`);
    const put = connection.prepare(`insert into ${photosWithin} values (?, ?)`);
    connection.transaction(() => {
      for (const name of names) put.run(name, readFileSync(join(photoFolder, `${name}.jpg`)));
    })();
    connection.pragma('journal_mode = delete');
    return names.length;
  } finally {
    connection.close();
  }
}
