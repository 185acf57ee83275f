// The built host on a shop file, as `npm start` runs it, with a look into its event loop and its memory beside it.
import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import type { Input, MethodName, Output } from '../../../app/contract/contract.ts';
import type { Reply } from '../../../app/contract/reply.ts';

const root = join(import.meta.dirname, '../../..');
/** A copy of what was built, so that a build meanwhile changes nothing; beside the packages, where it finds them. */
export const built = join(root, 'node_modules/.cache/thoubook-bench');

/** The flags of `npm start`: the young heap is looked through more often and stays small. */
const asStarted = ['--max-semi-space-size=4'];

/** Takes the copy; false where nothing was built. */
export function takeBuilt(): boolean {
  if (!existsSync(join(root, 'dist/main/serve.js'))) return false;
  rmSync(built, { recursive: true, force: true });
  cpSync(join(root, 'dist'), built, { recursive: true });
  return true;
}

/** What the host's event loop waited since it was asked last, and what the process holds, in bytes. */
export type Pulse = {
  readonly p99_ms: number;
  readonly longest_ms: number;
  readonly now_bytes: number;
  readonly most_bytes: number;
};

export type YearsHost = {
  /** Opens the book once in a browser. */
  readonly address: string;
  call<M extends MethodName>(method: M, input: Input<M>): Promise<Output<M>>;
  /** From the call to its whole answer, in milliseconds. */
  timed<M extends MethodName>(
    method: M,
    input: Input<M>,
  ): Promise<{ readonly took: number; readonly reply: Reply<Output<M>> }>;
  pulse(): Promise<Pulse>;
  stop(): Promise<void>;
};

/** Spends the address, so no browser can open the book afterwards. */
export async function startHost(folder: string): Promise<YearsHost> {
  const { child, address } = await startBare(folder, ['--import', join(import.meta.dirname, 'watch-loop.mjs')]);
  const { origin } = new URL(address);
  const opened = await fetch(address, { redirect: 'manual' });
  const cookie = opened.headers.get('set-cookie')?.split(';')[0] ?? '';
  const headers = { 'content-type': 'application/json', cookie };
  async function timed<M extends MethodName>(method: M, input: Input<M>) {
    const start = performance.now();
    const response = await fetch(`${origin}/rpc/${method}`, { method: 'POST', headers, body: JSON.stringify(input) });
    const answer = await response.text();
    const took = performance.now() - start;
    const reply = JSON.parse(answer) as Reply<Output<typeof method>>;
    return { took, reply };
  }
  return {
    address,
    timed,
    call: async (method, input) => answerOf(method, input, (await timed(method, input)).reply),
    pulse: () =>
      new Promise((told) => {
        child.once('message', (pulse) => told(pulse as Pulse));
        child.send('pulse');
      }),
    stop: () => stop(child),
  };
}

/** What was answered; nothing that is measured here may be refused. */
export function answerOf<T>(method: MethodName, input: unknown, reply: Reply<T>): T {
  if (!reply.ok) throw new Error(`${method} ${JSON.stringify(input)}: ${reply.error.message}`);
  return reply.value;
}

/** Starts it as it is and waits until it says its address. */
export async function startBare(
  folder: string,
  flags: readonly string[] = [],
): Promise<{ readonly child: ChildProcess; readonly address: string }> {
  const child = spawn(process.execPath, [...asStarted, ...flags, join(built, 'main/serve.js')], {
    env: { ...process.env, THOUBOOK_FOLDER: folder, THOUBOOK_WINDOW: 'none', THOUBOOK_PORT: '0' },
    stdio: ['ignore', 'pipe', 'inherit', 'ipc'],
  });
  for await (const line of createInterface({ input: child.stdout as NodeJS.ReadableStream })) {
    if (line.startsWith('http://127.0.0.1:')) return { child, address: line };
  }
  throw new Error('the host stopped before it said its address');
}

export async function stop(child: ChildProcess): Promise<void> {
  const ended = new Promise((exited) => child.once('exit', exited));
  child.kill('SIGTERM');
  await ended;
}
