// The book started twice on one machine: two hosts as processes of their own, on one shop file.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, onTestFinished, test } from 'vitest';
import type { Reply } from '../../app/contract/reply.ts';
import { deskIn, temporaryFolder } from '../desk.ts';

const serve = join(import.meta.dirname, '../../main/shells/headless/serve.ts');

async function startOn(folder: string) {
  const host = spawn(process.execPath, [serve], {
    // Both ask for the same port; the one that comes second takes another.
    env: { ...process.env, THOUBOOK_FOLDER: folder, THOUBOOK_WINDOW: 'none', THOUBOOK_PORT: '48391' },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  onTestFinished(() => end(host));
  for await (const line of createInterface({ input: host.stdout })) {
    if (!line.startsWith('http://127.0.0.1:')) continue;
    const entered = await fetch(line, { redirect: 'manual' });
    const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? '';
    const { origin } = new URL(line);
    return {
      origin,
      end: () => end(host),
      call: async (method: string, input: unknown): Promise<Reply<unknown>> => {
        const headers = { 'content-type': 'application/json', cookie };
        const answer = await fetch(`${origin}/rpc/${method}`, { method: 'POST', headers, body: JSON.stringify(input) });
        return answer.json() as Promise<Reply<unknown>>;
      },
    };
  }
  throw new Error('the host stopped before it said its address');
}

async function end(host: ChildProcess): Promise<void> {
  if (host.exitCode !== null || host.signalCode !== null) return;
  host.kill('SIGTERM');
  await once(host, 'exit');
}

test('started twice, both write at once and back up at once, and nothing that was acknowledged is lost', async () => {
  const folder = temporaryFolder();
  const before = await deskIn(folder);
  await before.call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  await before.desk.close();
  const hosts = await Promise.all([startOn(folder), startOn(folder)]);
  expect(new Set(hosts.map(({ origin }) => origin)).size).toBe(2);
  const writes = hosts.flatMap(({ call }, at) =>
    Array.from({ length: 40 }, (_, place) => call('specs.addFamily', { name: `KX${at}-${place}`, by: 1 })),
  );
  const backups = hosts.map(({ call }) => call('backups.makeBackup', {}));
  const replies = await Promise.all([...writes, ...backups]);
  expect(replies.filter(({ ok }) => !ok)).toEqual([]);
  // Each sees what the other wrote.
  for (const { call } of hosts) expect(await call('specs.listFamilies', {})).toHaveProperty('value.length', 80);
  // The same name from both: one of them has it.
  const same = await Promise.all(hosts.map(({ call }) => call('specs.addFamily', { name: 'QT4', by: 1 })));
  expect(same.map(({ ok }) => ok).toSorted()).toEqual([false, true]);
  expect(same.find(({ ok }) => !ok)).toMatchObject({ error: { message: 'There is already a family called QT4.' } });
  await Promise.all(hosts.map((host) => host.end()));
  const after = await deskIn(folder);
  expect(await after.call('specs.listFamilies', {})).toHaveLength(81);
});
