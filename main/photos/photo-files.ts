// The pictures themselves, beside the shop file: each named after what is in it, so none is there twice or half.
import { createHash } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readFileSync, renameSync, writeSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { StorageError } from '../database/errors.ts';

function folderBeside(shopFile: string): string {
  return join(dirname(shopFile), 'photos');
}

/** Writes the picture, whole and on the disk, before its name stands; answers the name. */
export function keepPicture(shopFile: string, bytes: Uint8Array): string {
  const sha256 = createHash('sha256').update(bytes).digest('hex');
  const target = pathOf(shopFile, sha256);
  if (existsSync(target)) return sha256;
  mkdirSync(folderBeside(shopFile), { recursive: true });
  const unfinished = `${target}.unfinished`;
  const file = openSync(unfinished, 'w');
  try {
    writeSync(file, bytes);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
  renameSync(unfinished, target);
  return sha256;
}

/** The picture, or a storage error in words when its file is gone or was changed. */
export function readPicture(shopFile: string, sha256: string): Buffer {
  let bytes: Buffer;
  try {
    bytes = readFileSync(pathOf(shopFile, sha256));
  } catch (cause) {
    throw new StorageError('photo-gone', 'The file of this photo is not in the photos folder any more.', cause);
  }
  if (createHash('sha256').update(bytes).digest('hex') !== sha256) {
    throw new StorageError('photo-changed', 'The file of this photo was changed or damaged.');
  }
  return bytes;
}

export function isPictureKept(shopFile: string, sha256: string): boolean {
  return existsSync(pathOf(shopFile, sha256));
}

function pathOf(shopFile: string, sha256: string): string {
  return join(folderBeside(shopFile), `${sha256}.jpg`);
}
