// A job and the whole shop leave the book as folders, read back here by another reader than the one that wrote them.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Papa from 'papaparse';
import { afterAll, describe, expect, test } from 'vitest';
import { writeSheet } from '../../main/exports/csv-sheet.ts';
import { fillFolder } from '../../main/exports/export-folder.ts';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { buildKx3 } from '../../main/shop/demo/kx3-build.ts';
import { moveTo, openJob } from '../../main/shop/demo/kx3-job.ts';
import { answerLists } from '../../main/shop/demo/kx3-lists.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { type DeskForTest, shopWithKx3, temporaryFolder } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

type Row = Record<string, string>;

/** The rows of a list by its headings. */
function readList(folder: string, name: string, delimiter = ','): Row[] {
  const text = readFileSync(join(folder, `${name}.csv`), 'utf8');
  const { data, errors } = Papa.parse<Row>(text.replace(/^\ufeff/, ''), {
    header: true,
    delimiter,
    newline: '\r\n',
    skipEmptyLines: true,
  });
  expect(errors).toEqual([]);
  return data;
}

function kept(folder: string, sha256: string): Buffer {
  return readFileSync(join(folder, 'photos', `${sha256}.jpg`));
}

function addPhoto(call: DeskForTest['call'], jobId: number, by: number) {
  const grey = greyJpeg.toString('base64');
  const picture = { caption: 'pan: dark/fines', jpegBase64: grey, smallBase64: grey, folderName: null };
  return call('photos.addPhoto', { jobId, ...picture, by });
}

async function builtShop() {
  const shop = await shopWithKx3();
  const { call, familyId, by } = shop;
  await layOutLooseSteels(call, by);
  const job = await openJob(call, familyId, by);
  await measureAsFound(job);
  await call('jobs.promiseDay', { jobId: job.jobId, on: '2026-11-27', reason: '', by });
  await answerLists(job, 'teardown');
  await moveTo(job, 'Build');
  await buildKx3(
    job,
    () => undefined,
    async (method, input) => (await shop.refusal(method, input)).message,
  );
  await addPhoto(call, job.jobId, by);
  await call('jobs.logCall', {
    jobId: job.jobId,
    direction: 'they called',
    withWhom: 'Tam Okoro',
    said: '=HYPERLINK("when is it done?")',
    by,
  });
  const into = temporaryFolder();
  return { ...shop, jobId: job.jobId, into };
}

/** One job of two, exported once for every test that only looks at what came out. */
let exportedOnce: Promise<string> | undefined;
const keptFolder = mkdtempSync(join(tmpdir(), 'thoubook-'));
afterAll(() => rmSync(keptFolder, { recursive: true, force: true }));

function exportedJob(): Promise<string> {
  exportedOnce ??= (async () => {
    const { call, familyId, jobId, by } = await builtShop();
    const other = await openJob(call, familyId, by);
    const { checks } = await call('jobs.getJob', { jobId: other.jobId });
    const checkId = checks.find(({ name }) => name === 'Servo travel')?.checkId;
    const take = { jobId: other.jobId, checkId, phase: 'final', mode: 'quick', setup: null, note: '', by };
    const { takeId } = await call('readings.startTake', take);
    await call('readings.recordReading', { takeId, spot: 1, typed: '125', by });
    return (await call('jobs.exportJob', { jobId, folder: keptFolder })).folder;
  })();
  return exportedOnce;
}

describe('one job', () => {
  test('its papers, photos and readings, and a page that names every file', async () => {
    const folder = await exportedJob();
    const files = readdirSync(folder);
    const page = readFileSync(join(folder, 'README.txt'), 'utf8');
    expect(files.filter((name) => name !== 'README.txt' && !page.includes(name))).toEqual([]);
    const papers = ['build report, customer copy', 'build report, shop copy', 'build sheet'].map(
      (name) => `job 1 ${name}.pdf`,
    );
    expect(files.filter((name) => name.endsWith('.pdf'))).toEqual(papers);
    expect((await readPdf(readFileSync(join(folder, 'job 1 build sheet.pdf')))).text).toContain('KX3-19-2214');
    expect(readdirSync(join(folder, 'photos'))).toEqual(['1 pan dark fines.jpg']);
    expect(readFileSync(join(folder, 'photos', '1 pan dark fines.jpg'))).toEqual(greyJpeg);
    expect(readdirSync(keptFolder)).toHaveLength(1);
  });

  test('readings as typed and in figures, the misread one with the reason, takes with setup and verdict', async () => {
    const folder = await exportedJob();
    const readings = readList(folder, 'readings');
    // The example unit: Forward final, push and air as typed at four spots.
    const forward = readings.filter((row) => row.check === 'Forward clearance' && row.phase === 'final');
    expect(forward.map((row) => [row.typed, row['push, thou'], row['air, thou'], row['length, thou']])).toEqual([
      ['4 21', '4', '21', '25'],
      ['4 22', '4', '22', '26'],
      ['5 22', '5', '22', '27'],
      ['5 21', '5', '21', '26'],
    ]);
    // Front end play was first read as 12, then put right to 19 (example unit).
    const washer = readings.filter((row) => row.check === 'Front end play' && ['12', '19'].includes(row.typed ?? ''));
    expect(washer.map((row) => [row.typed, row['superseded by'], row['why superseded'], row['in place of']])).toEqual([
      ['12', washer[1]?.reading, 'misread by a number on the face', ''],
      ['19', '', '', washer[0]?.reading],
    ]);
    // 82 psi idle, 18 lb-ft of the pump bolts, 1.3 qt of the cooler (example unit).
    const figuresOf = (column: string) => readings.map((row) => row[column]).filter((figure) => figure !== '');
    expect(figuresOf('pressure, psi')).toContain('82');
    expect(figuresOf('torque, lb-ft')).toContain('18');
    expect(figuresOf('volume, qt')).toContain('1.3');
    const takes = readList(folder, 'takes').filter((row) => row.check === 'Forward clearance');
    expect(takes.map((row) => [row.phase, row.mean, row.lowest, row.highest, row.verdict, row['outside by']])).toEqual(
      expect.arrayContaining([
        ['as found', '32', '31', '33', 'loose', '2'],
        ['final', '26', '25', '27', 'in', ''],
      ]),
    );
    expect(takes[0]).toMatchObject({ unit: 'thou', 'air, psi': '40', port: 'A', by: 'RA' });
  });

  test('what a spreadsheet would calculate stands as text, and every row says whose it is', async () => {
    const folder = await exportedJob();
    expect(readList(folder, 'calls')).toMatchObject([
      { said: `'=HYPERLINK("when is it done?")`, 'job number': '1', 'logged_by initials': 'RA' },
    ]);
    expect(readList(folder, 'jobs')).toMatchObject([{ 'customer name': 'Tam Okoro', 'unit serial': 'KX3-19-2214' }]);
  });

  test('holds nothing of another job', async () => {
    const folder = await exportedJob();
    for (const name of readdirSync(folder).filter((file) => file.endsWith('.csv'))) {
      const rows = readList(folder, name.slice(0, -4));
      expect(rows.map((row) => row['job number'] ?? row.job ?? '1').filter((number) => number !== '1')).toEqual([]);
    }
    expect(readList(folder, 'mock up pieces').length).toBeGreaterThan(0);
  });
});

describe('everything', () => {
  test('one list for each table with rows, and all of them', async () => {
    const { desk, call, into } = await builtShop();
    const { folder } = await call('shop.exportEverything', { folder: into, withPhotos: true });
    const counted = await desk.shop().read(async (reading) => ({
      readings: (await reading.selectFrom('readings').select('reading_id').execute()).length,
      takes: (await reading.selectFrom('takes').select('take_id').execute()).length,
      pieces: (await reading.selectFrom('pieces').select('piece_id').execute()).length,
      checks: (await reading.selectFrom('checks').select('check_id').execute()).length,
    }));
    for (const [name, count] of Object.entries(counted)) expect(readList(folder, name)).toHaveLength(count);
    // The 84.0 of the Direct pack was laid out loose and stands in nanometres (84 × 25 400).
    expect(readList(folder, 'piece heights').map((row) => row.height_nm)).toContain('2133600');
    expect(readList(folder, 'settings')).toMatchObject([{ shop_name: 'Harrow Lane Transmission' }]);
    expect(readdirSync(join(folder, 'photos', 'job 1'))).toEqual(['1 pan dark fines.jpg']);
    const page = readFileSync(join(folder, 'README.txt'), 'utf8');
    expect(readdirSync(folder).filter((name) => name !== 'README.txt' && !page.includes(name))).toEqual([]);
  });

  test('a photo whose file is gone is named, and stops nothing', async () => {
    const { desk, call, familyId, by } = await shopWithKx3();
    const { jobId } = await openJob(call, familyId, by);
    await addPhoto(call, jobId, by);
    const photos = join(desk.folder, 'photos');
    for (const name of readdirSync(photos)) rmSync(join(photos, name));
    const { folder } = await call('shop.exportEverything', { folder: '', withPhotos: true });
    expect(existsSync(join(folder, 'photos'))).toBe(false);
    expect(readFileSync(join(folder, 'README.txt'), 'utf8')).toContain('photo 1 of job 1: The file of this photo');
  });

  test('the pictures of the sheets lie beside it by family and title; one whose file is gone is named', async () => {
    const { desk, call, familyId, by, into } = { ...(await shopWithKx3()), into: temporaryFolder() };
    const of = { jpegBase64: greyJpeg.toString('base64') };
    const picture = { title: 'Pump: face', ...(await call('specs.keepPicture', { of, by })), points: [] };
    await call('specs.saveSheet', { familyId, sheet: { ...kx3Sheet, pictures: [picture] }, sourceNote: '', by });
    const { jobId } = await openJob(call, familyId, by);
    const everything = () => call('shop.exportEverything', { folder: into, withPhotos: true });
    const { folder } = await everything();
    const [name = ''] = readdirSync(join(folder, 'pictures', 'KX3'));
    expect(name).toMatch(/^\d+ Pump face\.jpg$/);
    expect(readFileSync(join(folder, 'pictures', 'KX3', name)).equals(kept(desk.folder, picture.sha256))).toBe(true);
    const ofJob = await call('jobs.exportJob', { jobId, folder: into });
    expect(readdirSync(join(ofJob.folder, 'pictures'))).toEqual([name]);
    rmSync(join(desk.folder, 'photos', `${picture.sha256}.jpg`));
    const page = readFileSync(join((await everything()).folder, 'README.txt'), 'utf8');
    expect(page).toMatch(/picture \d+ of KX3, Pump: face: The file of this photo/);
  });

  test('in a shop that writes millimetres with a comma, so do its lists, with semicolons between', async () => {
    const { call, into } = await builtShop();
    await call('shop.changeSettings', { lengthUnit: 'mm', decimalMark: ',' });
    const { folder } = await call('shop.exportEverything', { folder: into, withPhotos: false });
    const forward = readList(folder, 'takes', ';').find((row) => row.check === 'Forward clearance');
    // 32 thou × 0.0254 mm = 0.8128 mm.
    expect(forward).toMatchObject({ unit: 'mm', mean: '0,8128' });
    expect(existsSync(join(folder, 'photos'))).toBe(false);
  });

  test('somebody else writes while it runs; stopped, it leaves nothing behind', async () => {
    const { desk, call, refusal, into } = await builtShop();
    const running = refusal('shop.exportEverything', { folder: into, withPhotos: false });
    await expect.poll(async () => (await call('shop.getExport', {}))?.written ?? 0).toBeGreaterThan(0);
    expect(await refusal('shop.exportEverything', { folder: into, withPhotos: false })).toMatchObject({
      code: 'export-runs',
    });
    await call('shop.addPerson', { name: 'Noor Vey', initials: 'NV' });
    await call('shop.stopExport', {});
    expect(await running).toMatchObject({ code: 'stopped' });
    expect(readdirSync(into)).toEqual([]);
    expect(await call('shop.getExport', {})).toBeNull();
    expect(existsSync(join(desk.folder, 'faults.log'))).toBe(false);
  });
});

describe('where to', () => {
  test('no folder named: beside the shop file; a second time never over the first', async () => {
    const { desk, call } = await shopWithKx3();
    const first = await call('shop.exportEverything', { folder: '', withPhotos: false });
    const second = await call('shop.exportEverything', { folder: '', withPhotos: false });
    expect(first.folder.startsWith(join(desk.folder, 'exports'))).toBe(true);
    expect(second.folder).toBe(`${first.folder} (2)`);
  });

  test('what is no folder is refused in one sentence at the field', async () => {
    const { refusal } = await shopWithKx3();
    const file = join(temporaryFolder(), 'a file');
    writeFileSync(file, '');
    for (const folder of ['exports', join(file, 'under it'), file]) {
      expect(await refusal('shop.exportEverything', { folder, withPhotos: false })).toMatchObject({
        kind: 'refusal',
        code: 'no-folder',
        field: 'folder',
      });
    }
  });

  // Of the kernel's: it takes no folder from anybody.
  test.runIf(existsSync('/proc/self'))('what takes nothing is refused too', async () => {
    const { refusal } = await shopWithKx3();
    expect(await refusal('shop.exportEverything', { folder: '/proc', withPhotos: false })).toMatchObject({
      code: 'not-writable',
      field: 'folder',
    });
  });

  test.runIf(existsSync('/dev/full'))('a full disk is said, and nothing half done stays', async () => {
    const parent = temporaryFolder();
    const filling = fillFolder(parent, 'job 1', async () => writeFileSync('/dev/full', 'more than there is room for'));
    await expect(filling).rejects.toMatchObject({ code: 'disk-full' });
    expect(readdirSync(parent)).toEqual([]);
  });

  test('a long list is written page by page', async () => {
    const folder = temporaryFolder();
    const pages: number[] = [];
    const rows = (async function* () {
      for (let number = 1; number <= 1200; number += 1) yield [number, '-12'];
    })();
    const sheet = { name: 'long', says: '', headings: ['number', 'text'], rows };
    expect(await writeSheet(folder, sheet, ',', (more) => pages.push(more))).toBe(1200);
    expect(pages).toEqual([500, 500, 200]);
    const list = readList(folder, 'long');
    expect(list.at(-1)).toEqual({ number: '1200', text: "'-12" });
    expect(list).toHaveLength(1200);
  });
});
