// Asks a worker for the PDF of a paper or of labels, so that the window goes on while it is painted. The worker is kept:
// it has the fonts open and knows the words of earlier papers.
import { Worker } from 'node:worker_threads';
import type { LabelSheet } from '../../app/papers/labels.ts';
import type { Paper } from '../../app/papers/paper.ts';
import { resourceLimits } from './resource-limits.ts';

// From source the worker is a TypeScript file beside this one; in the bundle it stands beside the entries.
const script = new URL(
  import.meta.url.endsWith('.ts') ? './paint-paper.worker.ts' : './paint-paper.worker.js',
  import.meta.url,
);

export type ToPaint = { readonly order: number; readonly paper: Paper | LabelSheet };
export type Painted = { readonly order: number } & ({ readonly bytes: Uint8Array } | { readonly failure: Error });

type Waiting = { readonly painted: (bytes: Buffer) => void; readonly failed: (thrown: unknown) => void };

let painter: { readonly thread: Worker; readonly waiting: Map<number, Waiting> } | null = null;
let orders = 0;

/** The bytes of a tagged PDF with its fonts embedded. */
export function paintInWorker(paper: Paper | LabelSheet): Promise<Buffer> {
  painter ??= startPainter();
  const { thread, waiting } = painter;
  orders += 1;
  const message: ToPaint = { order: orders, paper };
  return new Promise((painted, failed) => {
    waiting.set(message.order, { painted, failed });
    thread.ref();
    thread.postMessage(message);
  });
}

function startPainter() {
  const thread = new Worker(script, { resourceLimits });
  const waiting = new Map<number, Waiting>();
  const lose = (thrown: unknown) => {
    if (painter?.thread === thread) painter = null;
    for (const { failed } of waiting.values()) failed(thrown);
    waiting.clear();
  };
  thread.on('message', (done: Painted) => {
    const asked = waiting.get(done.order);
    waiting.delete(done.order);
    // An idle painter keeps nobody from leaving.
    if (waiting.size === 0) thread.unref();
    if ('bytes' in done) asked?.painted(Buffer.from(done.bytes));
    else asked?.failed(done.failure);
  });
  thread.on('error', lose);
  thread.on('exit', () => lose(new Error('the painter stopped before it was done')));
  return { thread, waiting };
}
