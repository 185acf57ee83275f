// The three ways a call can fail on this side: a refusal somebody reads, a storage error classified once, a fault.
import type { Refusal, Result } from '../../app/base/result.ts';

/** Thrown inside a service to roll its transaction back and tell the person one plain sentence. */
export class Refused extends Error {
  readonly code: string;
  readonly field: string | undefined;

  constructor(code: string, message: string, field?: string) {
    super(message);
    this.code = code;
    this.field = field;
  }
}

/** The value, or the refusal of `app` thrown as one of this side. */
export function accepted<T>(result: Result<T>, field?: string): T {
  if (result.ok) return result.value;
  throw refusedBy(result.refusal, field);
}

export function refusedBy(refusal: Refusal, field?: string): Refused {
  return new Refused(refusal.code, refusal.message, field);
}

/** What was looked up, or a refusal naming what is not there. */
export function found<T>(row: T | undefined, what: string): T {
  if (row === undefined) throw new Refused('not-found', `There is no such ${what}.`);
  return row;
}

/** A failure of the disk or the file, in words a person can act on. */
export class StorageError extends Error {
  readonly code: string;

  constructor(code: string, message: string, cause?: unknown) {
    super(message, { cause });
    this.code = code;
  }
}

const sentences: ReadonlyArray<readonly [prefix: string, code: string, message: string]> = [
  ['SQLITE_FULL', 'disk-full', 'The disk is full: nothing was written. Make room and try again.'],
  ['SQLITE_BUSY', 'busy', 'Another window is writing to this shop file: try again.'],
  ['SQLITE_LOCKED', 'busy', 'Another window is writing to this shop file: try again.'],
  ['SQLITE_CORRUPT', 'damaged', 'The shop file is damaged: close Thoubook and restore the newest backup.'],
  ['SQLITE_NOTADB', 'foreign', 'This file is not a shop file.'],
  ['SQLITE_READONLY', 'read-only', 'The shop file cannot be written to here: nothing was written.'],
  ['SQLITE_CANTOPEN', 'cannot-open', 'The shop file cannot be opened: check its folder and its permissions.'],
  ['SQLITE_IOERR', 'disk', 'The disk failed: nothing was written. Check the disk before going on.'],
  // Of files beside the shop file: photos, backups, folders that leave the book.
  ['ENOSPC', 'disk-full', 'The disk is full: make room and try again.'],
  ['EDQUOT', 'disk-full', 'The disk is full: make room and try again.'],
  ['EROFS', 'read-only', 'This place cannot be written to: choose another folder, or look at its permissions.'],
  ['EACCES', 'read-only', 'This place cannot be written to: choose another folder, or look at its permissions.'],
  ['EPERM', 'read-only', 'This place cannot be written to: choose another folder, or look at its permissions.'],
  ['EIO', 'disk', 'The disk failed: check it before going on.'],
];

/** The storage error behind a thrown thing, if it is one. */
export function storageErrorOf(thrown: unknown): StorageError | undefined {
  if (thrown instanceof StorageError) return thrown;
  const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : '';
  const known = sentences.find(([prefix]) => code.startsWith(prefix));
  return known && new StorageError(known[1], known[2], thrown);
}
