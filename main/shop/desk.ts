// What is open on this desk: the shop's own file or the demo's, never both. Both shells hold one desk.
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { Refused, type StorageError, storageErrorOf } from '../database/errors.ts';
import { type OpenShop, openShop } from '../database/open-shop.ts';
import { LiveLines } from '../indicators/live-lines.service.ts';
import type { Clock } from '../ports/clock.ts';
import { writeWhole } from '../ports/disk.ts';
import { appendToLog } from '../ports/log-file.ts';
import { FleetQuestions } from '../workers/ask-fleet.ts';

const ownFile = 'shop.thoubook';
const demoFile = 'demo.thoubook';
const choiceFile = 'open.json';

export class Desk {
  readonly folder: string;
  readonly clock: Clock;
  /** The gauges' lines that are open now. */
  readonly lines = new LiveLines();
  /** The question about the fleet that runs now. */
  readonly fleet = new FleetQuestions();
  #shop: OpenShop | undefined;
  #trouble: StorageError | undefined;
  #faults = 0;
  readonly #listeners = new Set<() => void>();

  constructor(folder: string, clock: Clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** A desk whose drawers are `folder`, with the file open that was open last; a file that cannot be opened is told of. */
  static async at(folder: string, clock: Clock): Promise<Desk> {
    mkdirSync(folder, { recursive: true });
    const desk = new Desk(folder, clock);
    const file = desk.#lastChoice();
    if (file !== undefined) await desk.#openOrTell(file);
    return desk;
  }

  /** A desk for one given file, as a shell command wants it. */
  static over(shop: OpenShop, folder: string): Desk {
    const desk = new Desk(folder, shop.clock);
    desk.#shop = shop;
    return desk;
  }

  /** The open shop, or a refusal. */
  shop(): OpenShop {
    if (!this.#shop) throw new Refused('no-shop', 'No shop is open: start one or open the demo first.');
    return this.#shop;
  }

  openShopOrNone(): OpenShop | undefined {
    return this.#shop;
  }

  /** Why the file that was to be open is not; undefined while all is well. */
  trouble(): StorageError | undefined {
    return this.#trouble;
  }

  ownFile(): string {
    return join(this.folder, ownFile);
  }

  hasOwnFile(): boolean {
    return existsSync(this.ownFile());
  }

  /** Lets `act` put another file in place of the shop's own, which is closed meanwhile and open afterwards. */
  async replaceOwn<T>(act: () => Promise<T> | T): Promise<T> {
    await this.close();
    try {
      return await act();
    } finally {
      if (this.hasOwnFile()) await this.#openOrTell(ownFile);
    }
  }

  async openOwn(): Promise<void> {
    if (!this.hasOwnFile()) throw new Refused('no-shop', 'There is no shop file yet: start one first.');
    await this.#open(ownFile);
  }

  /** Makes the shop's own file, filled by `fill`; when that fails nothing stays behind. */
  async makeOwn(fill: (shop: OpenShop) => Promise<void>): Promise<void> {
    if (this.hasOwnFile()) throw new Refused('shop-exists', 'There is already a shop file here: open it instead.');
    await this.#make(ownFile, fill);
  }

  async openDemo(fill: (shop: OpenShop) => Promise<void>): Promise<void> {
    if (existsSync(join(this.folder, demoFile))) await this.#open(demoFile);
    else await this.#make(demoFile, fill);
  }

  async #make(name: string, fill: (shop: OpenShop) => Promise<void>): Promise<void> {
    const file = join(this.folder, name);
    const shop = await openShop(file, 'write', this.clock);
    try {
      await fill(shop);
    } catch (thrown) {
      await shop.close();
      for (const rest of ['', '-wal', '-shm']) rmSync(`${file}${rest}`, { force: true });
      throw thrown;
    }
    await this.#become(shop, name);
  }

  async #openOrTell(name: string): Promise<void> {
    try {
      await this.#open(name);
    } catch (thrown) {
      this.#trouble = storageErrorOf(thrown);
      if (!this.#trouble) throw thrown;
    }
  }

  async #open(name: string): Promise<void> {
    await this.#become(await openShop(join(this.folder, name), 'write', this.clock), name);
  }

  async #become(shop: OpenShop, name: string): Promise<void> {
    await this.#leaveFile();
    this.#shop = shop;
    this.#trouble = undefined;
    this.#noteChoice(name);
  }

  #noteChoice(name: string): void {
    if (this.#choice() === name) return;
    try {
      writeWhole(join(this.folder, choiceFile), JSON.stringify({ open: name }));
    } catch {
      // The disk is full or may not be written to: the shop is open all the same, the next start opens the one before.
    }
  }

  #choice(): string {
    const choice = join(this.folder, choiceFile);
    return existsSync(choice) && readFileSync(choice, 'utf8').includes(demoFile) ? demoFile : ownFile;
  }

  #lastChoice(): string | undefined {
    const last = this.#choice();
    return [last, ownFile].find((name) => existsSync(join(this.folder, name)));
  }

  /** Calls `listener` after every write, until the answered function is called. */
  onChange(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Looks every `interval_ms` whether another process wrote to the file, until the answered function is called. */
  watchOthers(interval_ms: number): () => void {
    const timer = setInterval(() => {
      // The figures of builds that a question puts on the shelf are no news; what else came meanwhile is told after it.
      if (!this.fleet.isReckoning && this.#shop?.wasWrittenElsewhere()) this.announceChange();
    }, interval_ms);
    return () => clearInterval(timer);
  }

  announceChange(): void {
    for (const listener of this.#listeners) listener();
  }

  faultLog(): string {
    return join(this.folder, 'faults.log');
  }

  /** Writes a bug down beside the shop file and answers the number a person can quote. */
  logFault(where: string, thrown: unknown): string {
    this.#faults += 1;
    const at = this.clock();
    const id = `${at.slice(0, 19).replace(/\D/g, '')}-${this.#faults}`;
    const what = thrown instanceof Error ? (thrown.stack ?? thrown.message) : String(thrown);
    const entry = `${id} ${where}\n${what}\n`;
    try {
      appendToLog(this.faultLog(), entry);
    } catch {
      // The disk may be what failed; the entry then goes to the terminal alone.
    }
    console.error(entry);
    return id;
  }

  async close(): Promise<void> {
    await this.#leaveFile();
    this.#shop = undefined;
  }

  async #leaveFile(): Promise<void> {
    await this.lines.leaveAll();
    await this.fleet.leave();
    await this.#shop?.close();
  }
}
