// Rounds of a real process that writes and is killed at a random moment; after each, the file is opened and looked over.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import Sqlite from 'better-sqlite3';
import { seeded } from '../bench/seeded.ts';
import { type Fingerprint, fingerprintOf } from './fingerprint.ts';
import { lookOver } from './look-over.ts';
import type { Rows } from './random-acts.ts';
import { shopToKill } from './shop-to-kill.ts';

export type KillSum = {
  readonly rounds: number;
  readonly acknowledged: number;
  readonly kills: number;
  /** Acts under way when the kill came that were in the file all the same, each whole. */
  readonly unacknowledgedYetWhole: number;
  /** What was wrong, one sentence each. */
  readonly losses: readonly string[];
};

type Told =
  | { readonly method: string; readonly writes: Rows }
  | { readonly acknowledged: Fingerprint }
  // It wrote nothing, which the next look at the file holds it to.
  | { readonly refused: string };

/** A file that has grown too long makes every act slower to look over. */
const roundsOfOneFile = 10;

export async function killRounds(rounds: number, seed: number, say: (line: string) => void): Promise<KillSum> {
  const draw = seeded(seed);
  const folder = mkdtempSync(join(tmpdir(), 'thoubook-kill-'));
  const losses: string[] = [];
  let acknowledged = 0;
  let kills = 0;
  let unacknowledgedYetWhole = 0;
  try {
    let file = '';
    let stands: Fingerprint | undefined;
    for (let round = 0; round < rounds; round += 1) {
      if (round % roundsOfOneFile === 0) {
        file = await shopToKill(join(folder, `shop ${round / roundsOfOneFile}`));
        stands = read(file);
      }
      if (!stands) throw new Error('there is no file yet');
      const killed = await killOnce(file, draw.whole(1, 1_000_000_000), folder, {
        lines: draw.whole(1, 40),
        delay_ms: draw.whole(0, 12),
      });
      acknowledged += killed.acknowledged.length;
      kills += 1;
      let before = stands;
      // Each acknowledged act wrote what it is known to write.
      for (const { act, after } of killed.acknowledged) {
        const wrong = unlike(before.rows, after.rows, act.writes);
        if (wrong !== '') losses.push(`round ${round}: ${act.method} wrote ${wrong}`);
        before = after;
      }
      const found = read(file);
      if (found.hash !== before.hash) {
        const { underWay } = killed;
        const wrong = underWay
          ? unlike(before.rows, found.rows, underWay.writes)
          : 'something though no act was under way';
        if (wrong === '') unacknowledgedYetWhole += 1;
        else losses.push(`round ${round}: after the kill ${underWay?.method ?? 'no act'} had left ${wrong}`);
      }
      for (const wrong of await lookOver(file)) losses.push(`round ${round}: ${wrong}`);
      // Looking over must not have changed anything either.
      stands = read(file);
      if (stands.hash !== found.hash) losses.push(`round ${round}: opening the file changed it`);
      say(
        `round ${round + 1}: ${killed.acknowledged.length} acknowledged, ${losses.length} losses so far${losses.length > 0 ? ` (${losses.at(-1)})` : ''}`,
      );
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  return { rounds, acknowledged, kills, unacknowledgedYetWhole, losses };
}

function read(file: string): Fingerprint {
  const connection = new Sqlite(file, { readonly: true });
  try {
    return fingerprintOf(connection);
  } finally {
    connection.close();
  }
}

/** Where the tables grew by something else than `writes`; empty: nowhere. */
function unlike(before: Rows, after: Rows, writes: Rows): string {
  const tables = new Set([...Object.keys(before), ...Object.keys(after), ...Object.keys(writes)]);
  return [...tables]
    .map((table) => ({ table, grew: (after[table] ?? 0) - (before[table] ?? 0), whole: writes[table] ?? 0 }))
    .filter(({ grew, whole }) => grew !== whole)
    .map(({ table, grew, whole }) => `${grew} rows of ${table} instead of ${whole}`)
    .join(', ');
}

type Act = Extract<Told, { method: string }>;

type Killed = {
  readonly acknowledged: ReadonlyArray<{ readonly act: Act; readonly after: Fingerprint }>;
  readonly underWay: Act | undefined;
};

/** Lets it tell so many lines, waits a moment more, and kills it. */
async function killOnce(
  file: string,
  seed: number,
  folder: string,
  when: { readonly lines: number; readonly delay_ms: number },
): Promise<Killed> {
  const busy = spawn(process.execPath, [join(import.meta.dirname, 'busy-shop.ts'), file, String(seed)], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, NODE_COMPILE_CACHE: join(folder, 'compiled') },
  });
  const ended = new Promise<NodeJS.Signals | null>((exited) => busy.once('exit', (_, signal) => exited(signal)));
  const acknowledged: Array<{ act: Act; after: Fingerprint }> = [];
  let underWay: Act | undefined;
  let lines = 0;
  for await (const line of createInterface({ input: busy.stdout })) {
    const told = JSON.parse(line) as Told;
    if ('method' in told) underWay = told;
    else if (underWay) {
      if ('acknowledged' in told) acknowledged.push({ act: underWay, after: told.acknowledged });
      underWay = undefined;
    }
    lines += 1;
    if (lines === when.lines) setTimeout(() => busy.kill('SIGKILL'), when.delay_ms);
  }
  if ((await ended) !== 'SIGKILL') throw new Error(`the busy process ended by itself (seed ${seed})`);
  return { acknowledged, underWay };
}
