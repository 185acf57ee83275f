// What a disk and other programs can do to a shop file at work. A small disk is a tmpfs, which only root may mount; where
// nobody may, those tests say that they were skipped.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { describe, expect, onTestFinished, test } from 'vitest';
import { systemClock } from '../../main/ports/clock.ts';
import { Desk } from '../../main/shop/desk.ts';
import { type DeskForTest, deskIn, shopWithKx3, temporaryFolder } from '../desk.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

const run = (...command: [string, ...string[]]) => spawnSync(command[0], command.slice(1)).status === 0;

/** A disk of its own of so many megabytes, gone with the test. */
function smallDisk(size_mb: number): string {
  const folder = temporaryFolder();
  if (!run('mount', '-t', 'tmpfs', '-o', `size=${size_mb}m`, 'tmpfs', folder)) throw new Error('cannot mount');
  onTestFinished(() => {
    run('umount', '-l', folder);
  });
  return folder;
}

const mayMount = (() => {
  const folder = join('/tmp', `thoubook-mount-${process.pid}`);
  const mounted = run('mkdir', '-p', folder) && run('mount', '-t', 'tmpfs', '-o', 'size=1m', 'tmpfs', folder);
  if (mounted) run('umount', folder);
  run('rmdir', folder);
  return mounted;
})();

async function shopOn(folder: string) {
  const at = await deskIn(folder);
  await at.call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const { familyId } = await at.call('specs.addFamily', { name: 'KX3', by: 1 });
  return { ...at, checkIn: (serial: string) => checkIn(familyId, serial) };
}

const checkIn = (familyId: number, serial: string) => ({
  customer: { name: `Customer ${serial}`, phone: '', email: '' },
  unit: { familyId, serial, vehicle: '', use: 'tow' },
  complaint: `slips ${'when hot '.repeat(100)}`,
  caseTag: '',
  distance: null,
  by: 1,
});

const countJobs = async ({ call }: Pick<DeskForTest, 'call'>) =>
  (await call('jobs.listJobs', { text: '', includeClosed: true })).length;

/** Writes until the disk is full, and answers how to make room again. */
function fill(folder: string): () => void {
  const ballast = join(folder, 'ballast');
  for (let size = 4_000_000; size >= 4096; size = Math.floor(size / 2)) {
    try {
      for (let count = 0; ; count += 1) writeFileSync(`${ballast} ${size} ${count}`, Buffer.alloc(size));
    } catch {
      // No room for one more of this size.
    }
  }
  return () => {
    for (const name of readdirSync(folder)) if (name.startsWith('ballast')) rmSync(join(folder, name));
  };
}

describe.skipIf(!mayMount)('a disk that fills up or may not be written to', () => {
  test('each act is written whole or refused in words, reading goes on, and with room again so does writing', async () => {
    const folder = smallDisk(8);
    const shop = await shopOn(folder);
    writeFileSync(join(folder, 'a little room'), Buffer.alloc(400_000));
    const makeRoom = fill(folder);
    rmSync(join(folder, 'a little room'));
    let written = 0;
    let refused = '';
    for (let serial = 0; refused === '' && serial < 5000; serial += 1) {
      const reply = await shop.call('jobs.checkIn', shop.checkIn(`S${serial}`)).catch((thrown) => String(thrown));
      if (typeof reply === 'string') refused = reply;
      else written += 1;
    }
    expect(refused).toContain('The disk is full: nothing was written. Make room and try again.');
    expect(written).toBeGreaterThan(1);
    expect(await countJobs(shop)).toBe(written);
    makeRoom();
    await shop.call('jobs.checkIn', shop.checkIn('afterwards'));
    expect(await countJobs(shop)).toBe(written + 1);
    await shop.desk.close();
    const connection = new Sqlite(join(folder, 'shop.thoubook'), { readonly: true });
    expect(connection.pragma('integrity_check', { simple: true })).toBe('ok');
    connection.close();
  }, 60_000);

  test('a photo, a backup and an export that find no room say so and leave nothing by half', async () => {
    const folder = smallDisk(8);
    const shop = await shopOn(folder);
    const { jobId } = await shop.call('jobs.checkIn', shop.checkIn('S1'));
    // A file beside the shop file is what lacks room here, not the shop file's own log.
    fill(folder);
    const jpegBase64 = greyJpeg.toString('base64');
    const photo = { jobId, jpegBase64, smallBase64: jpegBase64, caption: '', folderName: null, by: 1 };
    expect((await shop.refusal('photos.addPhoto', photo)).message).toContain('The disk is full');
    expect(await shop.call('photos.listPhotos', { jobId })).toEqual([]);
    expect((await shop.refusal('backups.makeBackup', {})).message).toContain('The disk is full');
    const backups = join(folder, 'backups');
    expect(existsSync(backups) ? readdirSync(backups) : []).toEqual([]);
    const everything = await shop.refusal('shop.exportEverything', { folder, withPhotos: false });
    expect(everything).toMatchObject({ kind: 'storage', code: 'disk-full' });
  }, 60_000);

  test('a second place that is full is told of, and the backup here stands', async () => {
    const shop = await shopWithKx3();
    const stick = smallDisk(1);
    await shop.call('backups.chooseSecondPlace', { folder: stick });
    fill(stick);
    const { file } = await shop.call('backups.makeBackup', {});
    expect(existsSync(file)).toBe(true);
    const { trouble } = await shop.call('backups.getBackups', {});
    expect(trouble).toBe('The backup did not get to the second place: it is full.');
    const carried = readdirSync(stick, { recursive: true, encoding: 'utf8' });
    expect(carried.filter((name) => name.endsWith('.thoubook'))).toEqual([]);
  }, 60_000);

  test('a shop file where nobody may write is not opened, and says why; it opens once somebody may', async () => {
    const folder = smallDisk(16);
    const shop = await shopOn(folder);
    await shop.call('jobs.checkIn', shop.checkIn('S1'));
    await shop.desk.close();
    expect(run('mount', '-o', 'remount,ro', folder)).toBe(true);
    const desk = await Desk.at(folder, systemClock);
    expect(desk.openShopOrNone()).toBeUndefined();
    expect(desk.trouble()?.message).toBe('The shop file cannot be opened: check its folder and its permissions.');
    expect(run('mount', '-o', 'remount,rw', folder)).toBe(true);
    await desk.openOwn();
    expect(desk.trouble()).toBeUndefined();
    await desk.close();
  }, 60_000);
});

test('another program that holds the file longer than a hand waits: the act is refused, and taken once it lets go', async () => {
  const shop = await shopOn(temporaryFolder());
  const other = new Sqlite(join(shop.folder, 'shop.thoubook'));
  other.exec('begin immediate');
  expect(await shop.refusal('jobs.checkIn', shop.checkIn('S1'))).toMatchObject({
    kind: 'storage',
    code: 'busy',
    message: 'Another window is writing to this shop file: try again.',
  });
  expect(await countJobs(shop)).toBe(0);
  const { file } = await shop.call('backups.makeBackup', {});
  expect(existsSync(file)).toBe(true);
  other.exec('rollback');
  other.close();
  await shop.call('jobs.checkIn', shop.checkIn('S1'));
  expect(await countJobs(shop)).toBe(1);
}, 60_000);
