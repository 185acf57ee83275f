// When a newer version is looked for, fetched and put in place, and what is said when it is not.
import { accept, type Result, refuse } from '../base/result.ts';
import type { UpdateStanding } from './updates.contract.ts';

/**
 * The address to ask, from what was typed; null: none. Refuses what others on the way could change (anything but https)
 * and what would be kept in plain sight (a name and a password).
 */
export function feedFrom(typed: string): Result<string | null> {
  if (typed === '') return accept(null);
  const address = /^https:\/\/(?<rest>[^\s?#]+)$/i.exec(typed)?.groups?.rest;
  if (address === undefined) {
    return refuse('feed', 'An address begins with https:// and has no ? or # in it. Empty: none is asked.');
  }
  if (address.includes('@')) return refuse('feed', 'Leave the name and the password out of the address.');
  return accept(typed.replace(/\/+$/, ''));
}

/** At the start, and on every day after; never while one is looked for, comes in, or waits to be put in place. */
export function isLookDue(standing: UpdateStanding, now: string): boolean {
  switch (standing.kind) {
    case 'no feed':
    case 'looking':
    case 'fetching':
    case 'fetched':
      return false;
    case 'newest':
    case 'offered':
    case 'failed':
      // Another day either way: a clock that was set back must not keep it from looking.
      return standing.lookedAt.slice(0, 10) !== now.slice(0, 10);
  }
}

/** What is fetched after a yes to this version. Only what was offered by its number was agreed to. */
export function toFetch(standing: UpdateStanding, version: string): Result<{ version: string; notes: string }> {
  if (standing.kind === 'offered' && standing.version === version) return accept({ version, notes: standing.notes });
  if (standing.kind === 'fetching' || standing.kind === 'fetched') {
    return refuse('fetched', `Version ${standing.version} is here or on its way already.`);
  }
  return refuse('not-offered', `Version ${version} is not offered: look again.`);
}

/** What came of the backup that is made before a version is put in place. */
export type BackupBefore = { readonly isSafe: true } | { readonly isSafe: false; readonly why: string };

/** Whether a version is put in place now that the window is closed, and what is said at the next start if it is not. */
export function mayPutInPlace(
  standing: UpdateStanding,
  backup: BackupBefore,
): { readonly may: boolean; readonly keptBack: string } {
  if (standing.kind !== 'fetched') return { may: false, keptBack: '' };
  if (backup.isSafe) return { may: true, keptBack: '' };
  return {
    may: false,
    keptBack: `Version ${standing.version} was not put in place, because the backup before it failed. ${backup.why}`,
  };
}

/** What went wrong at the address, from the code of whoever asked it; what has none never answered. */
export function whyItFailed(code: string | undefined): string {
  switch (code) {
    case 'ERR_CHECKSUM_MISMATCH':
    case 'ERR_UPDATER_INVALID_SIGNATURE':
      return 'What came is not what the address had described, and was thrown away.';
    case 'ERR_UPDATER_CHANNEL_FILE_NOT_FOUND':
    case 'ERR_UPDATER_INVALID_UPDATE_INFO':
    case 'ERR_UPDATER_INVALID_VERSION':
    case 'ERR_UPDATER_NO_FILES_PROVIDED':
    case 'HTTP_ERROR_404':
      return 'At this address lies no version for this machine: is it spelled right?';
    case 'ENOSPC':
      return 'The disk is full: make room and look again.';
    default:
      return 'The address did not answer. It is asked again tomorrow.';
  }
}
