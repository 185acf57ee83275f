// Asks a worker for the PDF of a paper or of labels, so that the window goes on while it is painted.
import { Worker } from 'node:worker_threads';
import type { LabelSheet } from '../../app/papers/labels.ts';
import type { Paper } from '../../app/papers/paper.ts';

// From source the worker is a TypeScript file beside this one; in the bundle it stands beside the entries.
const worker = new URL(
  import.meta.url.endsWith('.ts') ? './paint-paper.worker.ts' : './paint-paper.worker.js',
  import.meta.url,
);

/** The bytes of a tagged PDF with its fonts embedded. */
export function paintInWorker(toPaint: Paper | LabelSheet): Promise<Buffer> {
  return new Promise((painted, failed) => {
    const painting = new Worker(worker, { workerData: toPaint });
    painting.once('message', (bytes: Uint8Array) => painted(Buffer.from(bytes)));
    painting.once('error', failed);
    painting.once('exit', () => failed(new Error('the painter stopped before it was done')));
  });
}
