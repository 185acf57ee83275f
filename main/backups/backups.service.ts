// Backups listed, made, carried elsewhere, rehearsed, and brought back with the old file set aside.
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Backups } from '../../app/backups/backups.contract.ts';
import { backupFolderOf } from '../database/back-up.ts';
import { openConnection } from '../database/connection.ts';
import { Refused, storageErrorOf } from '../database/errors.ts';
import { syncFile, syncFolder } from '../ports/disk.ts';
import type { Desk } from '../shop/desk.ts';
import { inBackupWorker } from '../workers/backups.ts';
import {
  type BackupFile,
  bringingBackIn,
  bringPhotos,
  listBackups,
  photoFolderBeside,
  photosNamedBy,
  setAsideIn,
} from './backup-files.ts';
import { keeperOf } from './backup-keeper.ts';
import type { BroughtBack } from './bring-back.ts';
import { choosePlace, chosenPlace, secondPlaceOf } from './second-place.ts';

/** Of the file that is open; where none can be opened, of the shop's own. */
function fileAtHand(desk: Desk): string {
  return desk.openShopOrNone()?.file ?? desk.ownFile();
}

export async function getBackups(desk: Desk): Promise<Backups> {
  const file = fileAtHand(desk);
  const folder = backupFolderOf(file);
  return {
    folder,
    backups: listBackups(folder, basename(file)).map(toTell),
    secondPlace: await tellSecondPlace(desk, basename(file)),
    trouble: keeperOf(desk).trouble(),
    broughtBack: keeperOf(desk).broughtBack(),
  };
}

function toTell({ file, at, isPinned, bytes, rows }: BackupFile): Backups['backups'][number] {
  return { file, at, isPinned, bytes, jobs: rows.jobs ?? 0, readings: rows.readings ?? 0 };
}

async function tellSecondPlace(desk: Desk, shopName: string): Promise<Backups['secondPlace']> {
  const place = chosenPlace(desk);
  if (place === null) return null;
  const second = desk.openShopOrNone() ? await secondPlaceOf(desk) : null;
  const [newest] = second ? listBackups(second.folder, shopName) : [];
  return { folder: place, newestAt: newest?.at ?? null, isReachable: existsSync(place) };
}

export async function chooseSecondPlace(desk: Desk, { folder }: { folder: string | null }): Promise<void> {
  if (folder !== null && !existsSync(folder)) {
    throw new Refused('no-folder', 'There is no such folder: plug the stick in, or make the folder first.', 'folder');
  }
  choosePlace(desk, folder);
}

/** A backup of the shop's own file that is never thrown away, whatever else is open; nothing where there is none. */
export async function makePinnedBackup(desk: Desk): Promise<void> {
  if (!desk.hasOwnFile()) return;
  await inBackupWorker({ act: 'makeBackup', given: [desk.ownFile(), null, desk.clock(), true] });
}

export function makeWholeBackup(desk: Desk, { folder }: { folder: string }) {
  if (!existsSync(folder)) throw new Refused('no-folder', 'There is no such folder: make it first.', 'folder');
  const shop = desk.shop();
  return inBackupWorker({ act: 'makeWholeBackup', given: [shop.file, folder, shop.clock()] });
}

/** Brings a backup back into a folder of its own and throws that away again. */
export async function rehearse(desk: Desk, { file }: { file: string }): Promise<BroughtBack> {
  const folder = emptyFolder(join(desk.folder, bringingBackIn.rehearsal));
  try {
    return await broughtInto(desk, file, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function emptyFolder(folder: string): string {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  return folder;
}

function broughtInto(desk: Desk, backup: string, folder: string): Promise<BroughtBack> {
  const own = desk.ownFile();
  return inBackupWorker({
    act: 'bringBack',
    given: [backup, folder, basename(own), photoFolderBeside(own), desk.clock()],
  });
}

/**
 * Puts a backup in place of the shop file. Nothing is touched before the backup is whole beside it; then the old file
 * is set aside and the new one takes its name in one step, so that there is a shop file at every moment.
 */
export async function restore(
  desk: Desk,
  { file }: { file: string },
): Promise<BroughtBack & { setAside: string | null }> {
  const folder = emptyFolder(join(desk.folder, bringingBackIn.restore));
  try {
    const brought = await broughtInto(desk, file, folder);
    const setAside = await desk.replaceOwn(() => takePlace(desk, folder));
    const old = setAside === null ? '' : ` The old file lies in ${setAside}`;
    keeperOf(desk).noteBroughtBack(`Brought back: ${brought.jobs} jobs, ${brought.readings} readings.${old}`);
    return { ...brought, setAside };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export async function salvageOwn(desk: Desk) {
  if (!desk.hasOwnFile()) throw new Refused('no-shop', 'There is no shop file here to save anything from.');
  const folder = emptyFolder(join(desk.folder, bringingBackIn.restore));
  const own = desk.ownFile();
  try {
    const backup = await newestSound(desk);
    const target = join(folder, basename(own));
    const saved = await inBackupWorker({ act: 'salvage', given: [own, backup, target, desk.clock()] });
    const setAside = await desk.replaceOwn(() => takePlace(desk, folder));
    const stands = backup === null ? 'No backup was sound' : `${basename(backup)} stands`;
    const short = saved.tablesCutShort.length === 0 ? '' : `, but not all of ${saved.tablesCutShort.join(', ')}`;
    keeperOf(desk).noteBroughtBack(
      `${stands}; ${saved.rowsSaved} rows of the damaged file were saved on top${short}. The damaged file lies in ${setAside}`,
    );
    return { backup, rowsSaved: saved.rowsSaved, tablesCutShort: [...saved.tablesCutShort], setAside: setAside ?? '' };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function newestSound(desk: Desk): Promise<string | null> {
  const own = desk.ownFile();
  for (const { file } of listBackups(backupFolderOf(own), basename(own))) {
    try {
      await rehearse(desk, { file });
      return file;
    } catch (thrown) {
      if (!storageErrorOf(thrown)) throw thrown;
    }
  }
  return null;
}

/** The file in `folder` becomes the shop's own; answers where the old one lies now. */
function takePlace(desk: Desk, folder: string): string | null {
  const own = desk.ownFile();
  const fresh = join(folder, basename(own));
  // Photos of both lie there together; whichever file a kill leaves in place finds its own.
  bringPhotos(photosNamedBy(fresh), photoFolderBeside(fresh), photoFolderBeside(own));
  const setAside = desk.hasOwnFile() ? setOldAside(desk) : null;
  renameSync(fresh, own);
  syncFolder(desk.folder);
  return setAside;
}

function setOldAside(desk: Desk): string {
  const own = desk.ownFile();
  const aside = join(desk.folder, setAsideIn, desk.clock().replaceAll(':', '-'));
  const unfinished = `${aside}.unfinished`;
  mkdirSync(unfinished, { recursive: true });
  for (const file of [own, `${own}-wal`, `${own}-shm`]) {
    if (!existsSync(file)) continue;
    copyFileSync(file, join(unfinished, basename(file)));
    syncFile(join(unfinished, basename(file)));
  }
  syncFolder(unfinished);
  assertAlone(own, unfinished);
  renameSync(unfinished, aside);
  syncFolder(dirname(aside));
  // The old log would be read into the new file, so it has to be gone from the disk before the new one comes.
  for (const rest of ['-wal', '-shm']) rmSync(`${own}${rest}`, { force: true });
  syncFolder(desk.folder);
  return aside;
}

/** Another window would go on writing into a file that is no longer the shop's. */
function assertAlone(own: string, aside: string): void {
  try {
    const connection = openConnection(own, 'write');
    try {
      // Only the last one at a file can leave write-ahead logging.
      connection.pragma('busy_timeout = 200');
      connection.pragma('journal_mode = delete');
    } finally {
      connection.close();
    }
  } catch (thrown) {
    if (storageErrorOf(thrown)?.code !== 'busy') return;
    rmSync(aside, { recursive: true });
    throw new Refused('in-use', 'Another window has the shop file open: close it first. Nothing was changed.');
  }
}
