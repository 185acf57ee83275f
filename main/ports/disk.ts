// What has to be on the disk before something else may happen.
import { closeSync, fsyncSync, openSync, renameSync, rmSync, writeFileSync } from 'node:fs';

/** Waits until what was written to `file` is on the disk. */
export function syncFile(file: string): void {
  const handle = openSync(file, 'r+');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Waits until the names in `folder` are on the disk; Windows keeps them with the files and cannot be asked. */
export function syncFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}

/** Puts a small file in place whole, or leaves the one that was there. */
export function writeWhole(file: string, text: string): void {
  const unfinished = `${file}.unfinished`;
  try {
    writeFileSync(unfinished, text);
    syncFile(unfinished);
    renameSync(unfinished, file);
  } finally {
    rmSync(unfinished, { force: true });
  }
}
