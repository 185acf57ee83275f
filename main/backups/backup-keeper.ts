// Makes a backup by itself on the first look of every day, and remembers what went wrong.
import { basename } from 'node:path';
import { backupFolderOf } from '../database/back-up.ts';
import { storageErrorOf } from '../database/errors.ts';
import { dayHere } from '../ports/clock.ts';
import type { Desk } from '../shop/desk.ts';
import { inBackupWorker } from '../workers/backups.ts';
import { listBackups, throwLeftoversAway } from './backup-files.ts';
import { secondPlaceOf } from './second-place.ts';

export class BackupKeeper {
  readonly #desk: Desk;
  #making: Promise<{ file: string; trouble: string }> | undefined;
  #trouble = '';
  #broughtBack = '';

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  trouble(): string {
    return this.#trouble;
  }

  /** What was restored or salvaged since the start, for the window that asked is gone by then. */
  broughtBack(): string {
    return this.#broughtBack;
  }

  noteBroughtBack(words: string): void {
    this.#broughtBack = words;
  }

  /** Makes a backup of the file that is open, or waits for the one that is being made. */
  async make(): Promise<{ file: string; trouble: string }> {
    const shop = this.#desk.shop();
    this.#making ??= (async () => {
      try {
        const second = await secondPlaceOf(this.#desk);
        const made = await inBackupWorker({ act: 'makeBackup', given: [shop.file, second, shop.clock(), false] });
        this.#trouble = made.trouble;
        return made;
      } catch (thrown) {
        this.#trouble = `The last backup failed. ${storageErrorOf(thrown)?.message ?? 'Something went wrong inside.'}`;
        throw thrown;
      } finally {
        this.#making = undefined;
      }
    })();
    return this.#making;
  }

  /** Waits until no backup is being made. */
  async isOver(): Promise<void> {
    await this.#making?.catch(() => undefined);
  }

  /** A backup when the shop's own file is open and none was made on this day of the shop. */
  async lookIfDue(): Promise<void> {
    const shop = this.#desk.openShopOrNone();
    if (!shop || shop.file !== this.#desk.ownFile() || this.#making) return;
    throwLeftoversAway(this.#desk.folder, shop.clock());
    const today = dayHere(shop.clock());
    // Of any of them, not of the newest: a clock that went wrong may have made one for a day to come.
    if (listBackups(backupFolderOf(shop.file), basename(shop.file)).some(({ at }) => dayHere(at) === today)) return;
    await this.make();
    this.#desk.announceChange();
  }
}

const keepers = new WeakMap<Desk, BackupKeeper>();

export function keeperOf(desk: Desk): BackupKeeper {
  const known = keepers.get(desk) ?? new BackupKeeper(desk);
  keepers.set(desk, known);
  return known;
}

/** Looks now and every `interval_ms` whether a backup is due, until the answered function is called. */
export function keepBackups(desk: Desk, interval_ms: number): () => void {
  const look = () => {
    keeperOf(desk)
      .lookIfDue()
      .catch((thrown) => {
        // What has words stands in the keeper's trouble; anything else is a bug to be written down.
        if (!storageErrorOf(thrown)) desk.logFault('backup', thrown);
        desk.announceChange();
      });
  };
  look();
  const timer = setInterval(look, interval_ms);
  return () => clearInterval(timer);
}
