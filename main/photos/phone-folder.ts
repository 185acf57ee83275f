// The folder a phone fills: looked into, never written to.
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { Refused } from '../database/errors.ts';

const pictures = /\.(jpe?g|png|webp|heic|heif)$/i;
const largestFile_bytes = 40_000_000;
const mostFiles = 200;

export type FolderFile = { readonly name: string; readonly bytes: number; readonly at: string };

/** Pictures that lie in it, newest first, at most 200; why not, if it cannot be looked into. */
export function listFolder(folder: string): { trouble: string; files: FolderFile[] } {
  if (folder === '') return { trouble: '', files: [] };
  try {
    const names = readdirSync(folder).filter((name) => pictures.test(name) && !name.startsWith('.'));
    const files = names.flatMap((name) => {
      const found = statSync(join(folder, name), { throwIfNoEntry: false });
      return found?.isFile() ? [{ name, bytes: found.size, at: found.mtime.toISOString() }] : [];
    });
    return { trouble: '', files: files.toSorted((a, b) => (a.at < b.at ? 1 : -1)).slice(0, mostFiles) };
  } catch {
    return { trouble: `The folder ${folder} cannot be looked into: check that it is there.`, files: [] };
  }
}

/** One picture of the folder; refuses anything but a plain name in it. */
export function readFromFolder(folder: string, name: string): Buffer {
  if (folder === '' || basename(name) !== name || !pictures.test(name)) {
    throw new Refused('no-such-photo', 'There is no such photo in the folder.');
  }
  const path = join(folder, name);
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found?.isFile()) throw new Refused('no-such-photo', `${name} is not in the folder any more.`);
  if (found.size > largestFile_bytes) throw new Refused('photo-too-large', `${name} is too large to take in.`);
  return readFileSync(path);
}

/** Refuses what is no folder. */
export function assertFolder(folder: string): void {
  if (folder === '') return;
  const { trouble } = listFolder(folder);
  if (trouble !== '') throw new Refused('no-folder', trouble, 'folder');
}
