// Asks a worker about the fleet: one question at a time, a later one ends the one that runs. The worker is kept between
// questions for a while, and goes with the shop file it reads.
import { Worker } from 'node:worker_threads';
import type { FleetAnswer, FleetSelection } from '../../app/comebacks/fleet.contract.ts';
import type { FleetProgress } from '../../app/comebacks/fleet-progress.ts';
import { Refused } from '../database/errors.ts';
import type { OpenShop } from '../database/open-shop.ts';
import type { FromFleetWorker, ToFleetWorker } from './fleet-messages.ts';
import { idleUntil_ms, resourceLimits } from './resource-limits.ts';

// From source the worker is a TypeScript file beside this one; in the bundle it stands beside the entries.
const script = new URL(import.meta.url.endsWith('.ts') ? './fleet.worker.ts' : './fleet.worker.js', import.meta.url);

type Asked = {
  readonly question: number;
  readonly answered: (answer: FleetAnswer) => void;
  readonly failed: (thrown: unknown) => void;
};

export class FleetQuestions {
  readonly #listeners = new Set<(progress: FleetProgress) => void>();
  /** The number of the question that is wanted, which the worker reads while it works; 0 is none. */
  readonly #wanted = new Int32Array(new SharedArrayBuffer(4));
  #worker: { readonly thread: Worker; readonly file: string } | null = null;
  #running: Asked | null = null;
  #leaving: NodeJS.Timeout | undefined;
  #questions = 0;
  #isReckoning = false;

  /** While it fills the shelf the worker writes to the file, and nobody need hear of every lot. */
  get isReckoning(): boolean {
    return this.#isReckoning;
  }

  /** Ends the question that runs, and asks this one. */
  ask(shop: Pick<OpenShop, 'file' | 'clock'>, selection: FleetSelection): Promise<FleetAnswer> {
    this.#end(new Refused('overtaken', 'Another question was asked meanwhile.'));
    clearTimeout(this.#leaving);
    // At once, so that two windows that ask in one moment share one worker.
    const { thread } = this.#worker?.file === shop.file ? this.#worker : this.#startOn(shop.file);
    this.#questions += 1;
    const question = this.#questions;
    Atomics.store(this.#wanted, 0, question);
    const message: ToFleetWorker = { question, selection, at: shop.clock() };
    return new Promise((answered, failed) => {
      this.#running = { question, answered, failed };
      thread.ref();
      thread.postMessage(message);
    });
  }

  /** Ends the question that runs, if one does. */
  stop(): void {
    this.#end(new Refused('stopped', 'The question was ended.'));
  }

  /** Ends the worker with whatever it does. Resolves when its connection is closed. */
  async leave(): Promise<void> {
    clearTimeout(this.#leaving);
    this.#end(new Refused('stopped', 'The shop file was closed.'));
    const worker = this.#worker;
    this.#worker = null;
    await worker?.thread.terminate();
  }

  /** Calls `listener` while a question runs, until the answered function is called. */
  onProgress(listener: (progress: FleetProgress) => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  #startOn(file: string): { readonly thread: Worker; readonly file: string } {
    void this.leave();
    const thread = new Worker(script, { workerData: { file, wanted: this.#wanted }, resourceLimits });
    thread.on('message', (message: FromFleetWorker) => this.#hear(message));
    thread.on('error', (thrown) => this.#lose(thread, thrown));
    thread.on('exit', () => this.#lose(thread, new Error('the worker of the fleet stopped by itself')));
    this.#worker = { thread, file };
    return this.#worker;
  }

  #hear(message: FromFleetWorker): void {
    const running = this.#running;
    if (message.question !== running?.question) return;
    if ('progress' in message) {
      this.#isReckoning = true;
      this.#tell(message.progress);
      return;
    }
    this.#settle();
    if ('failure' in message) running.failed(Object.assign(new Error(), message.failure));
    else if (message.answer) running.answered(message.answer);
    else running.failed(new Refused('stopped', 'The question was ended.'));
  }

  #end(why: Refused): void {
    const running = this.#running;
    if (!running) return;
    Atomics.store(this.#wanted, 0, 0);
    this.#settle();
    running.failed(why);
  }

  #lose(thread: Worker, thrown: unknown): void {
    if (this.#worker?.thread !== thread) return;
    this.#worker = null;
    const running = this.#running;
    this.#settle();
    running?.failed(thrown);
  }

  #settle(): void {
    this.#running = null;
    this.#isReckoning = false;
    // An idle worker keeps nobody from leaving, and what it remembers is read again soon enough.
    this.#worker?.thread.unref();
    clearTimeout(this.#leaving);
    this.#leaving = setTimeout(() => void this.leave(), idleUntil_ms).unref();
    this.#tell({ done: 0, of: 0, isOver: true });
  }

  #tell(progress: FleetProgress): void {
    for (const listener of this.#listeners) listener(progress);
  }
}
