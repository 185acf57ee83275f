// A newer version of the program: looked for where the shop says, fetched after a yes, put in place at the end after a
// backup. Where it is looked for is a matter of this machine, so it is kept beside the shop file.
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  type BackupBefore,
  feedFrom,
  isLookDue,
  mayPutInPlace,
  toFetch,
  whyItFailed,
} from '../../app/updates/update-policy.ts';
import type { UpdateStanding, Updates as UpdatesTold } from '../../app/updates/updates.contract.ts';
import { makePinnedBackup } from '../backups/backups.service.ts';
import { accepted, storageErrorOf } from '../database/errors.ts';
import { writeWhole } from '../ports/disk.ts';
import type { Desk } from '../shop/desk.ts';

/** Who can look, fetch and put in place; each failure may carry a `code`. */
export type UpdateSource = {
  /** Of the program that runs. */
  readonly version: string;
  /** What is newer at this address, or null. */
  look(feed: string): Promise<{ readonly version: string; readonly notes: string } | null>;
  /** Fetches what was looked up last, and checks it; `onPart` hears from 0 to 1. */
  fetch(onPart: (part: number) => void): Promise<void>;
  /** Starts what puts it in place of this program, which must end right after. */
  putInPlace(): void;
};

const noteFile = 'updates.json';

type Note = { readonly feed: string | null; readonly keptBack: string };

export class Updates {
  readonly #desk: Desk;
  readonly #source: UpdateSource;
  #note: Note;
  #standing: UpdateStanding;

  constructor(desk: Desk, source: UpdateSource) {
    this.#desk = desk;
    this.#source = source;
    this.#note = readNote(desk);
    // As long ago as can be, so that a look is due.
    this.#standing = this.#note.feed === null ? { kind: 'no feed' } : { kind: 'newest', lookedAt: longAgo };
  }

  tell(): UpdatesTold {
    return { version: this.#source.version, ...this.#note, standing: this.#standing };
  }

  /** Asks this address from now on, and right away. */
  async nameFeed(typed: string): Promise<void> {
    const feed = accepted(feedFrom(typed), 'address');
    this.#write({ ...this.#note, feed });
    this.#standing = { kind: 'no feed' };
    await this.look();
  }

  async lookIfDue(): Promise<void> {
    if (isLookDue(this.#standing, this.#desk.clock())) await this.look();
  }

  async look(): Promise<void> {
    const { feed } = this.#note;
    if (feed === null || ['looking', 'fetching', 'fetched'].includes(this.#standing.kind)) return;
    this.#stand({ kind: 'looking' });
    try {
      const newer = await this.#source.look(feed);
      const lookedAt = this.#desk.clock();
      this.#stand(newer === null ? { kind: 'newest', lookedAt } : { kind: 'offered', lookedAt, ...newer });
    } catch (thrown) {
      this.#fail(thrown);
    }
  }

  /** Begins to fetch; how far it is stands in `tell`. */
  fetch(version: string): void {
    const offer = accepted(toFetch(this.#standing, version));
    this.#write({ ...this.#note, keptBack: '' });
    this.#stand({ kind: 'fetching', ...offer, hundredths: 0 });
    const onPart = (part: number) => {
      const hundredths = Math.max(0, Math.min(100, Math.floor(100 * part)));
      const before = this.#standing;
      if (before.kind === 'fetching' && before.hundredths < hundredths) this.#stand({ ...before, hundredths });
    };
    this.#source.fetch(onPart).then(
      () => this.#stand({ kind: 'fetched', ...offer }),
      (thrown) => this.#fail(thrown),
    );
  }

  /** While the shop file is still open: makes the backup before, and answers whether the new version may take its place. */
  async mayPutInPlace(): Promise<boolean> {
    if (this.#standing.kind !== 'fetched') return false;
    const { may, keptBack } = mayPutInPlace(this.#standing, await this.#backUp());
    if (!may) this.#write({ ...this.#note, keptBack });
    return may;
  }

  putInPlace(): void {
    this.#source.putInPlace();
  }

  async #backUp(): Promise<BackupBefore> {
    try {
      await makePinnedBackup(this.#desk);
      return { isSafe: true };
    } catch (thrown) {
      const storage = storageErrorOf(thrown);
      if (!storage) this.#desk.logFault('backup before a version', thrown);
      return { isSafe: false, why: storage?.message ?? 'Something went wrong inside.' };
    }
  }

  #fail(thrown: unknown): void {
    const code = thrown instanceof Error && 'code' in thrown ? String(thrown.code) : undefined;
    this.#stand({ kind: 'failed', lookedAt: this.#desk.clock(), why: whyItFailed(code) });
  }

  #stand(standing: UpdateStanding): void {
    this.#standing = standing;
    this.#desk.announceChange();
  }

  #write(note: Note): void {
    this.#note = note;
    writeWhole(join(this.#desk.folder, noteFile), JSON.stringify(note));
  }
}

const longAgo = '1970-01-01T00:00:00.000Z';

/** Whoever runs this machine may write the file by hand; what is no address in it counts for none. */
function readNote(desk: Desk): Note {
  const nothing: Note = { feed: null, keptBack: '' };
  const file = join(desk.folder, noteFile);
  if (!existsSync(file)) return nothing;
  try {
    const { feed, keptBack } = JSON.parse(readFileSync(file, 'utf8')) as Partial<Note>;
    const address = feedFrom(typeof feed === 'string' ? feed : '');
    return { feed: address.ok ? address.value : null, keptBack: String(keptBack ?? '') };
  } catch {
    return nothing;
  }
}

const offered = new WeakMap<Desk, Updates>();

/** Lets the desk's windows update the program from this source; without it they say nothing of updates. */
export function offerUpdates(desk: Desk, source: UpdateSource): Updates {
  const updates = new Updates(desk, source);
  offered.set(desk, updates);
  return updates;
}

export function updatesOf(desk: Desk): Updates | undefined {
  return offered.get(desk);
}

/** Looks now and every `interval_ms` whether a look is due, until the answered function is called. */
export function keepLooking(updates: Updates, interval_ms: number): () => void {
  void updates.lookIfDue();
  const timer = setInterval(() => void updates.lookIfDue(), interval_ms);
  return () => clearInterval(timer);
}
