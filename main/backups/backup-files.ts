// The files of a place for backups: copies with their cards, and the photos they name, each kept once.
import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join, parse } from 'node:path';
import Sqlite from 'better-sqlite3';
import { backupsToKeep } from '../../app/backups/which-to-keep.ts';
import { type BackupCard, cardBeside } from '../database/back-up.ts';
import { dayHere } from '../ports/clock.ts';
import { syncFile, syncFolder } from '../ports/disk.ts';

const day_ms = 86_400_000;

export type BackupFile = BackupCard & { readonly file: string };

/**
 * The backups of the shop file called `shopName`, newest first. A copy without its card is not listed: it can still be
 * restored by its path.
 */
export function listBackups(folder: string, shopName: string): BackupFile[] {
  if (!existsSync(folder)) return [];
  const { name: stem, ext } = parse(shopName);
  return readdirSync(folder)
    .filter((name) => name.startsWith(`${stem} `) && name.endsWith(ext))
    .flatMap((name) => {
      const card = readCard(join(folder, name));
      return card ? [{ ...card, file: join(folder, name) }] : [];
    })
    .toSorted((one, other) => (one.at < other.at ? 1 : -1));
}

/** null: no card, or one that cannot be read. */
export function readCard(copy: string): BackupCard | null {
  try {
    return JSON.parse(readFileSync(cardBeside(copy), 'utf8')) as BackupCard;
  } catch {
    return null;
  }
}

/** Throws away what need not be kept any longer at `now`. Photos stay: an older copy may name them. */
export function pruneBackups(folder: string, shopName: string, now: string): void {
  const backups = listBackups(folder, shopName);
  const kept = backupsToKeep(
    backups.map((each) => ({ ...each, name: each.file, day: dayHere(each.at) })),
    dayHere(now),
  );
  for (const { file } of backups) {
    if (kept.has(file)) continue;
    rmSync(file, { force: true });
    rmSync(cardBeside(file), { force: true });
  }
  for (const name of readdirSync(folder)) {
    const file = join(folder, name);
    const isCardAlone = file.endsWith('.json') && !existsSync(file.slice(0, -'.json'.length));
    if ((isCardAlone || name.includes('.unfinished')) && isOld(file, now)) rmSync(file);
  }
}

/** Where a backup is brought back before it takes the shop file's place, and where that is only rehearsed. */
export const bringingBackIn = { restore: 'restoring', rehearsal: 'rehearsal' } as const;

/** Where the file that a backup took the place of lies afterwards. */
export const setAsideIn = 'set aside';

/** Throws away what a crash while bringing back left in the shop's folder. */
export function throwLeftoversAway(shopFolder: string, now: string): void {
  const aside = join(shopFolder, setAsideIn);
  const unfinished = (existsSync(aside) ? readdirSync(aside) : []).filter((name) => name.endsWith('.unfinished'));
  const left = [
    ...Object.values(bringingBackIn).map((name) => join(shopFolder, name)),
    ...unfinished.map((name) => join(aside, name)),
  ];
  for (const folder of left) {
    if (existsSync(folder) && isOld(folder, now)) rmSync(folder, { recursive: true, force: true });
  }
}

/** What a crash left half done is thrown away after a day; a younger one may still be in another window's hands. */
function isOld(file: string, now: string): boolean {
  return statSync(file).mtimeMs < Date.parse(now) - day_ms;
}

/** Puts a backup with its card into another folder, whole or not at all. */
export function copyBackup(backup: string, folder: string): void {
  mkdirSync(folder, { recursive: true });
  for (const file of [cardBeside(backup), backup]) {
    const target = join(folder, basename(file));
    if (existsSync(target)) continue;
    const unfinished = `${target}.unfinished`;
    try {
      copyFileSync(file, unfinished);
      syncFile(unfinished);
      renameSync(unfinished, target);
    } finally {
      rmSync(unfinished, { force: true });
    }
  }
  syncFolder(folder);
}

/** The photos a shop file names. Each is called after what is in it, so its name proves it. */
export function photosNamedBy(shopFile: string): string[] {
  const connection = new Sqlite(shopFile, { readonly: true });
  try {
    return connection
      .prepare('select sha256 from photos union select small_sha256 from photos union select sha256 from pictures')
      .pluck()
      .all() as string[];
  } finally {
    connection.close();
  }
}

export function photoFolderBeside(shopFile: string): string {
  return join(dirname(shopFile), 'photos');
}

/**
 * Brings the named photos that are missing in `to` over from `from`; answers how many are in neither. On one disk a
 * second name is enough: a photo's file is never written to again.
 */
export function bringPhotos(names: readonly string[], from: string, to: string): number {
  let missing = 0;
  mkdirSync(to, { recursive: true });
  for (const name of names) {
    const file = `${name}.jpg`;
    if (existsSync(join(to, file))) continue;
    if (!existsSync(join(from, file))) {
      missing += 1;
      continue;
    }
    linkOrCopy(join(from, file), join(to, file));
  }
  syncFolder(to);
  return missing;
}

function linkOrCopy(source: string, target: string): void {
  try {
    linkSync(source, target);
  } catch {
    // Another disk, or a file system without second names.
    const unfinished = `${target}.unfinished`;
    copyFileSync(source, unfinished);
    syncFile(unfinished);
    renameSync(unfinished, target);
  }
}
