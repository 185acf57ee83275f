// A folder that leaves the book: filled under an unfinished name, renamed when it is whole, never over another.
import { existsSync } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { isAbsolute, join } from 'node:path';
import { Refused, StorageError } from '../database/errors.ts';

/**
 * Makes `name` in `parent` and answers its path; when there is one already, "name (2)". When `fill` fails nothing is
 * left behind. Refuses what is no folder or cannot be written into.
 */
export async function fillFolder(
  parent: string,
  name: string,
  fill: (folder: string) => Promise<void>,
): Promise<string> {
  await assertCanFill(parent);
  const target = freeName(parent, plainName(name));
  const unfinished = `${target}.unfinished`;
  try {
    await mkdir(unfinished).catch((thrown) => {
      if (isFull(thrown)) throw thrown;
      throw refused('not-writable', `Nothing can be written into ${parent}: choose another folder.`);
    });
    await fill(unfinished);
    await rename(unfinished, target);
  } catch (thrown) {
    await rm(unfinished, { recursive: true, force: true });
    throw isFull(thrown)
      ? new StorageError('disk-full', `The disk of ${parent} is full: nothing was kept there. Make room and try again.`)
      : thrown;
  }
  return target;
}

async function assertCanFill(folder: string): Promise<void> {
  if (!isAbsolute(folder)) {
    throw refused('no-folder', `Type the whole path of the folder: ${folder} is only a part of it.`);
  }
  const found = await stat(folder).catch(() => null);
  if (!found?.isDirectory()) {
    throw refused('no-folder', `There is no folder ${folder}: make it first, or choose another.`);
  }
}

function refused(code: string, sentence: string): Refused {
  return new Refused(code, sentence, 'folder');
}

function freeName(parent: string, name: string): string {
  for (let number = 1; ; number += 1) {
    const path = join(parent, number === 1 ? name : `${name} (${number})`);
    if (!existsSync(path) && !existsSync(`${path}.unfinished`)) return path;
  }
}

/** The text as a name that every file system takes: without what some forbid, and not too long. */
export function plainName(text: string): string {
  // A name that ends in a dot or a blank cannot be opened on Windows.
  const plain = text
    .replace(/[\\/:*?"<>|\p{Cc}\p{Cf}]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const short = [...plain]
    .slice(0, 100)
    .join('')
    .replace(/[. ]+$/, '');
  // Windows keeps these names for devices, whatever follows the dot.
  const isDevice = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i.test(short);
  return short === '' || isDevice ? `_${short}` : short;
}

function isFull(thrown: unknown): boolean {
  return thrown instanceof Error && 'code' in thrown && (thrown.code === 'ENOSPC' || thrown.code === 'EDQUOT');
}
