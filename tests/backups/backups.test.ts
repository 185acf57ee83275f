// Backups on real disks: made by themselves, carried elsewhere, rehearsed, brought back, and salvaged.
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { expect, test } from 'vitest';
import { keeperOf } from '../../main/backups/backup-keeper.ts';
import { calendarClock, deskIn, shopWithKx3, temporaryFolder } from '../desk.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

type Shop = Awaited<ReturnType<typeof shopWithKx3>>;

async function checkIn({ call, familyId, by }: Shop, customer: string) {
  return call('jobs.checkIn', {
    customer: { name: customer, phone: '', email: '' },
    unit: { familyId, serial: customer, vehicle: '', use: 'tow' },
    complaint: 'slips',
    caseTag: '',
    distance: null,
    by,
  });
}

async function customersOf({ call }: Pick<Shop, 'call'>): Promise<string[]> {
  const jobs = await call('jobs.listJobs', { text: '', includeClosed: true });
  return jobs.map((job) => job.customerName).toSorted();
}

async function withPhoto(shop: Shop, jobId: number): Promise<void> {
  const jpeg = greyJpeg.toString('base64');
  await shop.call('photos.addPhoto', {
    jobId,
    jpegBase64: jpeg,
    smallBase64: jpeg,
    caption: '',
    folderName: null,
    by: shop.by,
  });
}

const copiesIn = (folder: string) => readdirSync(folder).filter((name) => name.endsWith('.thoubook'));

test('the first look of a day makes one backup, later looks make none, and the demo is left alone', async () => {
  const shop = await shopWithKx3();
  const folder = join(shop.folder, 'backups');
  await keeperOf(shop.desk).lookIfDue();
  await keeperOf(shop.desk).lookIfDue();
  expect(copiesIn(folder)).toHaveLength(1);
  await shop.call('shop.openDemoShop', {});
  await keeperOf(shop.desk).lookIfDue();
  expect(copiesIn(folder)).toHaveLength(1);
});

test('a clock set ahead and put right again, or set back, makes one backup for each day it shows and keeps them all', async () => {
  const clock = calendarClock('2026-11-23');
  const shop = await shopWithKx3(clock);
  const look = async (day: string) => {
    clock.setTo(day);
    await keeperOf(shop.desk).lookIfDue();
    await keeperOf(shop.desk).lookIfDue();
    return copiesIn(join(shop.folder, 'backups')).length;
  };
  expect(await look('2026-11-23')).toBe(1);
  expect(await look('2041-01-01')).toBe(2);
  expect(await look('2026-11-24')).toBe(3);
  expect(await look('2025-11-24')).toBe(4);
});

test('what a kill left of a restore or a backup is thrown away the day after, and not before', async () => {
  const clock = calendarClock('2026-11-23');
  const shop = await shopWithKx3(clock);
  await keeperOf(shop.desk).lookIfDue();
  const left = [
    join(shop.folder, 'restoring'),
    join(shop.folder, 'rehearsal'),
    join(shop.folder, 'backups', 'shop 2026-11-22T09-00-00.000Z.thoubook.json'),
    join(shop.folder, 'backups', 'shop 2026-11-22T09-00-00.000Z.thoubook.unfinished'),
  ];
  for (const each of left) {
    if (each.includes('shop 2026')) writeFileSync(each, 'half');
    else mkdirSync(each);
    const made = new Date('2026-11-24T08:00:00Z');
    utimesSync(each, made, made);
  }
  clock.setTo('2026-11-24');
  await keeperOf(shop.desk).lookIfDue();
  expect(left.filter((each) => !existsSync(each))).toEqual([]);
  clock.setTo('2026-11-25');
  await keeperOf(shop.desk).lookIfDue();
  expect(left.filter((each) => existsSync(each))).toEqual([]);
});

test('a backup made by hand is listed with what it holds, and no half file is left beside it', async () => {
  const shop = await shopWithKx3();
  await checkIn(shop, 'Tam Okoro');
  const { file } = await shop.call('backups.makeBackup', {});
  const { backups, trouble } = await shop.call('backups.getBackups', {});
  expect(backups).toMatchObject([{ file, jobs: 1, readings: 0, isPinned: false }]);
  expect(trouble).toBe('');
  await shop.call('backups.rehearse', { file });
  // The copy and its card, nothing half done and no companions, whatever has looked into it.
  const names = [basename(file), `${basename(file)}.json`, 'photos'];
  expect(readdirSync(join(shop.folder, 'backups')).toSorted()).toEqual(names.toSorted());
});

test('the second place takes every backup with its photos; unplugged, the first place goes on and says so', async () => {
  const shop = await shopWithKx3();
  const { jobId } = await checkIn(shop, 'Tam Okoro');
  await withPhoto(shop, jobId);
  const stick = temporaryFolder();
  await shop.call('backups.chooseSecondPlace', { folder: stick });
  await shop.call('backups.makeBackup', {});
  const there = join(stick, 'Thoubook backups Harrow Lane Transmission');
  expect(copiesIn(there)).toHaveLength(1);
  expect(readdirSync(join(there, 'photos'))).toEqual(readdirSync(join(shop.folder, 'photos')));
  const { secondPlace, backups } = await shop.call('backups.getBackups', {});
  expect(secondPlace).toEqual({ folder: stick, newestAt: backups[0]?.at, isReachable: true });

  rmSync(stick, { recursive: true });
  await shop.call('backups.makeBackup', {});
  const after = await shop.call('backups.getBackups', {});
  expect(after.backups).toHaveLength(2);
  expect(after.secondPlace).toMatchObject({ isReachable: false });
  expect(after.trouble).toContain('is the stick plugged in?');
  expect(existsSync(stick)).toBe(false);
  expect((await shop.refusal('backups.chooseSecondPlace', { folder: join(stick, 'gone') })).message).toContain(
    'There is no such folder',
  );
});

test('a rehearsal says what a backup would bring back and changes nothing', async () => {
  const shop = await shopWithKx3();
  const { jobId } = await checkIn(shop, 'Tam Okoro');
  await withPhoto(shop, jobId);
  const { file } = await shop.call('backups.makeBackup', {});
  await checkIn(shop, 'Ilse Brandvold');
  const before = readdirSync(shop.folder).toSorted();
  expect(await shop.call('backups.rehearse', { file })).toMatchObject({ jobs: 1, photos: 1, photosMissing: 0 });
  expect(readdirSync(shop.folder).toSorted()).toEqual(before);
  expect(await customersOf(shop)).toEqual(['Ilse Brandvold', 'Tam Okoro']);

  for (const folder of ['photos', 'backups/photos']) rmSync(join(shop.folder, folder), { recursive: true });
  expect(await shop.call('backups.rehearse', { file })).toMatchObject({ photos: 1, photosMissing: 1 });
});

test('a restore puts the backup in place, sets the old file aside, and the photos are there', async () => {
  const shop = await shopWithKx3();
  const { jobId } = await checkIn(shop, 'Tam Okoro');
  await withPhoto(shop, jobId);
  const { file } = await shop.call('backups.makeBackup', {});
  await checkIn(shop, 'Ilse Brandvold');
  rmSync(join(shop.folder, 'photos'), { recursive: true });
  const { setAside } = await shop.call('backups.restore', { file });
  expect(await customersOf(shop)).toEqual(['Tam Okoro']);
  expect(readdirSync(join(shop.folder, 'photos'))).toHaveLength(1);
  expect(existsSync(join(shop.folder, 'restoring'))).toBe(false);

  // What was set aside is a whole shop file: brought back by its path, the later ticket is there again.
  await shop.call('backups.restore', { file: join(setAside ?? '', 'shop.thoubook') });
  expect(await customersOf(shop)).toEqual(['Ilse Brandvold', 'Tam Okoro']);
});

test('a backup that was damaged since, a foreign file and a missing one are refused before anything is touched', async () => {
  const shop = await shopWithKx3();
  await checkIn(shop, 'Tam Okoro');
  const { file } = await shop.call('backups.makeBackup', {});
  const bytes = readFileSync(file);
  writeFileSync(file, bytes.fill(0x5a, bytes.length - 200, bytes.length - 100));
  const note = join(temporaryFolder(), 'note.txt');
  writeFileSync(note, 'this is a list of things to buy on Friday');
  for (const [path, code] of [
    [file, 'damaged'],
    [note, 'foreign'],
    [join(shop.folder, 'nowhere'), 'no-backup'],
  ]) {
    expect(await shop.refusal('backups.restore', { file: path })).toMatchObject({ kind: 'storage', code });
  }
  expect(await customersOf(shop)).toEqual(['Tam Okoro']);
  expect(existsSync(join(shop.folder, 'set aside'))).toBe(false);
});

test('one file that holds all brings shop and photos to a machine that has nothing', async () => {
  const shop = await shopWithKx3();
  const { jobId } = await checkIn(shop, 'Tam Okoro');
  await withPhoto(shop, jobId);
  const folder = temporaryFolder();
  const whole = await shop.call('backups.makeWholeBackup', { folder });
  expect(whole.photos).toBe(1);
  expect(readdirSync(folder)).toHaveLength(1);

  const elsewhere = await deskIn();
  expect(await elsewhere.call('backups.restore', { file: whole.file })).toMatchObject({
    jobs: 1,
    photosMissing: 0,
    setAside: null,
  });
  expect(await customersOf(elsewhere)).toEqual(['Tam Okoro']);
  expect(readdirSync(join(elsewhere.folder, 'photos'))).toEqual(readdirSync(join(shop.folder, 'photos')));
});

test('another window at the shop file keeps a restore from taking its place', async () => {
  const shop = await shopWithKx3();
  const { file } = await shop.call('backups.makeBackup', {});
  await checkIn(shop, 'Tam Okoro');
  const other = await deskIn(shop.folder);
  expect((await shop.refusal('backups.restore', { file })).message).toContain('Another window');
  expect(await customersOf(shop)).toEqual(['Tam Okoro']);
  expect(await customersOf(other)).toEqual(['Tam Okoro']);
});

/** Overwrites the pages from the middle on, as a dying disk does. */
function damage(file: string): void {
  const bytes = readFileSync(file);
  writeFileSync(file, bytes.fill(0x5a, Math.floor(bytes.length / 2 / 4096) * 4096));
}

test('a damaged shop file is told of and never replaced by an empty shop; the newest backup brings it back', async () => {
  const shop = await shopWithKx3();
  await checkIn(shop, 'Tam Okoro');
  const { file } = await shop.call('backups.makeBackup', {});
  await shop.desk.close();
  damage(join(shop.folder, 'shop.thoubook'));

  const next = await deskIn(shop.folder);
  expect(await next.call('shop.getShop', {})).toMatchObject({
    open: false,
    hasShopFile: true,
    trouble: { code: 'damaged' },
  });
  expect((await next.call('backups.getBackups', {})).backups).toMatchObject([{ file, jobs: 1 }]);
  await next.call('backups.restore', { file });
  expect(await next.call('shop.getShop', {})).toMatchObject({ open: true });
  expect(await customersOf(next)).toEqual(['Tam Okoro']);
});

test('a salvage saves what was written since the newest backup, and search finds it', async () => {
  const shop = await shopWithKx3();
  await checkIn(shop, 'Tam Okoro');
  const { file } = await shop.call('backups.makeBackup', {});
  await checkIn(shop, 'Ilse Brandvold');
  await shop.desk.close();
  const own = join(shop.folder, 'shop.thoubook');
  // A shop file damaged where it can still be told that something is wrong: an index page that lies.
  const bytes = readFileSync(own);
  const pages = bytes.length / 4096;
  const root = indexRootOf(own);
  expect(root).toBeLessThanOrEqual(pages);
  writeFileSync(own, bytes.fill(0x5a, (root - 1) * 4096 + 8, root * 4096));

  const next = await deskIn(shop.folder);
  expect(await next.call('shop.getShop', {})).toMatchObject({ open: false, trouble: { code: 'damaged' } });
  const saved = await next.call('backups.salvage', {});
  expect(saved.backup).toBe(file);
  expect(saved.rowsSaved).toBeGreaterThan(0);
  expect(await customersOf(next)).toEqual(['Ilse Brandvold', 'Tam Okoro']);
  const found = await next.call('jobs.listJobs', { text: 'brandvold', includeClosed: false });
  expect(found).toHaveLength(1);
  // What was damaged is kept as it was.
  expect(readFileSync(join(saved.setAside, 'shop.thoubook'))).toEqual(bytes);
});

function indexRootOf(file: string): number {
  const copy = join(temporaryFolder(), 'copy.thoubook');
  mkdirSync(join(copy, '..'), { recursive: true });
  copyFileSync(file, copy);
  const connection = new Sqlite(copy, { readonly: true });
  const root = Number(
    connection.prepare("select rootpage from sqlite_schema where name = 'stage_entries_of_job'").pluck().get(),
  );
  connection.close();
  return root;
}
