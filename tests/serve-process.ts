// The built host as a process of its own, as `npm start` runs it where there is no desktop runtime.
import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';

export type ServeProcess = {
  /** Opens the book once. */
  readonly address: string;
  /** Ends it at once, as a power cut would. */
  kill(): Promise<void>;
};

/** Starts `serve` (a path to a built serve.js) on the shop files in `folder`, at the port it usually takes. */
export async function startServe(serve: string, folder: string, port = ''): Promise<ServeProcess> {
  const host = spawn(process.execPath, [serve], {
    env: {
      ...process.env,
      THOUBOOK_FOLDER: folder,
      THOUBOOK_WINDOW: 'none',
      ...(port !== '' && { THOUBOOK_PORT: port }),
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  for await (const line of createInterface({ input: host.stdout })) {
    if (line.startsWith('http://127.0.0.1:')) return { address: line, kill: () => kill(host) };
  }
  throw new Error('the host stopped before it said its address');
}

async function kill(host: ChildProcess): Promise<void> {
  if (host.exitCode !== null || host.signalCode !== null) return;
  const ended = new Promise((exited) => host.once('exit', exited));
  host.kill('SIGKILL');
  await ended;
}
