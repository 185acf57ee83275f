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
import { type BackupCard, cardBeside, syncFile, syncFolder } from '../database/back-up.ts';
import { dayHere } from '../ports/clock.ts';

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

/** Throws away what need not be kept any longer. Photos stay: an older copy may name them. */
export function pruneBackups(folder: string, shopName: string): void {
  const backups = listBackups(folder, shopName);
  const [newest] = backups;
  if (!newest) return;
  const kept = backupsToKeep(backups.map((each) => ({ ...each, name: each.file, day: dayHere(each.at) })));
  for (const { file } of backups) {
    if (kept.has(file)) continue;
    rmSync(file, { force: true });
    rmSync(cardBeside(file), { force: true });
  }
  for (const name of readdirSync(folder)) {
    const file = join(folder, name);
    // What a crash left half done; a younger one may still be in another window's hands.
    if (name.includes('.unfinished') && statSync(file).mtimeMs < Date.parse(newest.at) - day_ms) rmSync(file);
  }
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
