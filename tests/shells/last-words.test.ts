import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { expect, test } from 'vitest';
import { temporaryFolder } from '../desk.ts';

const serve = join(import.meta.dirname, '../../main/shells/headless/serve.ts');

// Windows has no such signal to plant a failure with.
test.skipIf(process.platform === 'win32')(
  'a failure that nobody answers for is written down and said with its number, and the program ends',
  async () => {
    const folder = temporaryFolder();
    const planted = "process.on('SIGUSR2', () => Promise.reject(new TypeError('planted')))";
    const host = spawn(process.execPath, ['--import', `data:text/javascript,${planted}`, serve], {
      env: { ...process.env, THOUBOOK_FOLDER: folder, THOUBOOK_WINDOW: 'none', THOUBOOK_PORT: '0' },
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    const ended = once(host, 'exit');
    const said: string[] = [];
    for await (const line of createInterface({ input: host.stdout })) {
      said.push(line);
      if (line.startsWith('http://127.0.0.1:')) host.kill('SIGUSR2');
    }
    expect(await ended).toEqual([1, null]);
    const log = readFileSync(join(folder, 'faults.log'), 'utf8');
    const [, id] = /^(\S+) process\nTypeError: planted\n/.exec(log) ?? [];
    expect(said.at(-1)).toContain(`Thoubook has to stop (fault ${id}). Everything it acknowledged is in the shop file`);
  },
);
