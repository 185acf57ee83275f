// Asks a worker for the PDF of a paper or of labels, so that the window goes on while it is painted. The worker is kept
// for a while: it has the fonts open and knows the words of earlier papers.
import { Worker } from 'node:worker_threads';
import type { LabelSheet } from '../../app/papers/labels.ts';
import type { Paper } from '../../app/papers/paper.ts';
import { idleUntil_ms, resourceLimits } from './resource-limits.ts';

// From source the worker is a TypeScript file beside this one; in the bundle it stands beside the entries.
const script = new URL(
  import.meta.url.endsWith('.ts') ? './paint-paper.worker.ts' : './paint-paper.worker.js',
  import.meta.url,
);

export type ToPaint = { readonly order: number; readonly paper: Paper | LabelSheet };
export type Painted = { readonly order: number } & ({ readonly bytes: Uint8Array } | { readonly failure: Error });

class Painter {
  readonly #thread = new Worker(script, { resourceLimits });
  readonly #waiting = new Map<number, { painted: (bytes: Buffer) => void; failed: (thrown: unknown) => void }>();
  readonly #left: () => void;
  #orders = 0;
  #leaving: NodeJS.Timeout | undefined;

  /** `left` is called when it takes no more orders. */
  constructor(left: () => void) {
    this.#left = left;
    this.#thread.on('message', (done: Painted) => this.#hand(done));
    this.#thread.on('error', (thrown) => this.#leave(thrown));
    this.#thread.on('exit', () => this.#leave(new Error('the painter stopped before it was done')));
  }

  paint(paper: Paper | LabelSheet): Promise<Buffer> {
    clearTimeout(this.#leaving);
    this.#orders += 1;
    const message: ToPaint = { order: this.#orders, paper };
    return new Promise((painted, failed) => {
      this.#waiting.set(message.order, { painted, failed });
      this.#thread.ref();
      this.#thread.postMessage(message);
    });
  }

  #hand(done: Painted): void {
    const asked = this.#waiting.get(done.order);
    this.#waiting.delete(done.order);
    if ('bytes' in done) asked?.painted(Buffer.from(done.bytes));
    else asked?.failed(done.failure);
    if (this.#waiting.size > 0) return;
    // An idle painter keeps nobody from leaving.
    this.#thread.unref();
    this.#leaving = setTimeout(() => {
      this.#left();
      void this.#thread.terminate();
    }, idleUntil_ms).unref();
  }

  #leave(why: unknown): void {
    this.#left();
    for (const { failed } of this.#waiting.values()) failed(why);
    this.#waiting.clear();
  }
}

let painter: Painter | null = null;

/** The bytes of a tagged PDF with its fonts embedded. */
export function paintInWorker(paper: Paper | LabelSheet): Promise<Buffer> {
  painter ??= hire();
  return painter.paint(paper);
}

function hire(): Painter {
  const hired = new Painter(() => {
    if (painter === hired) painter = null;
  });
  return hired;
}
