// The pictures of a sheet: kept as files before their rows, frozen with a revision, carried into the next one.
import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Picture, SpecSheet } from '../../app/specs/spec-sheet.ts';
import { swappedSides } from '../../app/specs/swapped-sides.ts';
import { openConnection } from '../../main/database/connection.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { greyJpeg, phoneJpeg } from '../photos/small-jpeg.ts';

const point = (
  label: string,
  x_permille: number,
  checkName: string | null,
  more: Partial<Picture['points'][number]> = {},
) => ({
  ...{ label, note: '', x_permille, y_permille: 500, checkName, listName: null, lineWords: null },
  ...more,
});

async function shopWithPicture() {
  const at = await shopWithKx3();
  const kept = await at.call('specs.keepPicture', { of: { jpegBase64: phoneJpeg.toString('base64') }, by: 1 });
  const picture = (points: Picture['points'], title = 'Pump face') => ({ title, ...kept, points });
  const save = (sheet: Partial<SpecSheet>) => ({
    familyId: at.familyId,
    sheet: { ...kx3Sheet, ...sheet },
    sourceNote: '',
    by: 1,
  });
  return { ...at, kept, picture, save };
}

const checkIn = (familyId: number) => ({
  customer: { name: 'Tam Okoro', phone: '', email: '' },
  unit: { familyId, serial: 'KX3-1', vehicle: '', use: 'tow' },
  complaint: '',
  caseTag: '',
  distance: null,
  by: 1,
});

test('a picture is kept as the picture alone, and its points come back with what they name', async () => {
  const { call, familyId, kept, picture, save } = await shopWithPicture();
  // The JPEG of 8 × 6 points, without the place and the camera the phone wrote into it.
  expect(kept).toMatchObject({ width: 8, height: 6 });
  const { jpegBase64 } = await call('specs.getPicture', { sha256: kept.sha256 });
  expect(Buffer.from(jpegBase64, 'base64')).toEqual(greyJpeg);
  const lists: SpecSheet['lists'] = [
    {
      name: 'Balls',
      when: 'build',
      packName: null,
      sourceNote: '',
      lines: [{ words: 'ball 1', asks: { kind: 'tick' } }],
    },
  ];
  const points = [
    point('A', 250, 'Port A, Forward', { note: 'under the gauge' }),
    point('1', 800, null, { listName: 'Balls', lineWords: 'ball 1' }),
    point('C6', 0, null),
  ];
  await call('specs.saveSheet', save({ lists, pictures: [picture(points)] }));
  const { checks, lists: saved, pictures } = await call('specs.getRevision', { familyId });
  const portA = checks.find(({ name }) => name === 'Port A, Forward')?.checkId;
  expect(pictures[0]?.points).toEqual([
    { ...points[0], checkId: portA, lineId: null },
    { ...points[1], checkId: null, lineId: saved[0]?.lines[0]?.lineId },
    { ...points[2], checkId: null, lineId: null },
  ]);
});

test('a photo of a ticket becomes a picture without being copied', async () => {
  const { call, familyId, kept } = await shopWithPicture();
  const { jobId } = await call('jobs.checkIn', checkIn(familyId));
  const jpeg = greyJpeg.toString('base64');
  const photo = { jobId, caption: '', jpegBase64: jpeg, smallBase64: jpeg, folderName: null, by: 1 };
  const { photoId } = await call('photos.addPhoto', photo);
  expect(await call('specs.keepPicture', { of: { photoId }, by: 1 })).toEqual(kept);
});

test('a revision in use keeps its pictures, and the next one carries them on', async () => {
  const { call, familyId, desk, picture, save } = await shopWithPicture();
  await call('specs.saveSheet', save({ pictures: [picture([point('A', 250, 'Port A, Forward')])] }));
  await call('jobs.checkIn', checkIn(familyId));
  const { pictures } = await call('specs.getRevision', { familyId });
  const next = await call('specs.saveSheet', save({ pictures: [picture([point('A', 300, 'Port A, Forward')])] }));
  expect(next.number).toBe(2);
  expect((await call('specs.getRevision', { familyId, number: 1 })).pictures).toEqual(pictures);
  expect((await call('specs.getRevision', { familyId })).pictures[0]?.points[0]?.x_permille).toBe(300);
  const connection = openConnection(desk.shop().file, 'write');
  for (const table of ['pictures', 'picture_points']) {
    expect(() => connection.exec(`update ${table} set position = 9`)).toThrow(`frozen: ${table}`);
    expect(() => connection.exec(`delete from ${table}`)).toThrow(`frozen: ${table}`);
  }
  connection.close();
});

test('a picture whose file is gone or damaged says so and stays on the sheet; one never kept is refused', async () => {
  const { call, refusal, folder, desk, familyId, kept, picture, save } = await shopWithPicture();
  await call('specs.saveSheet', save({ pictures: [picture([])] }));
  const file = join(desk.shop().file, '..', 'photos', `${kept.sha256}.jpg`);
  expect(file.startsWith(folder)).toBe(true);
  writeFileSync(file, greyJpeg.subarray(0, 90));
  expect(await refusal('specs.getPicture', { sha256: kept.sha256 })).toMatchObject({
    kind: 'storage',
    code: 'photo-changed',
  });
  rmSync(file);
  expect(await refusal('specs.getPicture', { sha256: kept.sha256 })).toMatchObject({
    kind: 'storage',
    code: 'photo-gone',
  });
  await call('specs.saveSheet', save({ pictures: [picture([])] }));
  expect((await call('specs.getRevision', { familyId })).pictures).toHaveLength(1);
  const never = { ...picture([], 'Case'), sha256: 'a'.repeat(64) };
  expect(await refusal('specs.saveSheet', save({ pictures: [never] }))).toMatchObject({
    code: 'picture-gone',
    message: 'The picture Case is not kept yet: take it in again.',
  });
});

test.each<[string, (picture: (points: Picture['points'], title?: string) => Picture) => Picture[], string]>([
  [
    'two of one title',
    (picture) => [picture([]), picture([])],
    'There are two pictures called Pump face: give one another title.',
  ],
  [
    'two points of one label',
    (picture) => [picture([point('A', 1, null), point('A', 2, null)])],
    'Pump face has two points called A: give one another label.',
  ],
  [
    'a point for a check that is not there',
    (picture) => [picture([point('A', 1, 'Port Z')])],
    'Pump face, A: there is no check called Port Z on the sheet.',
  ],
  [
    'a point for a line that is not there',
    (picture) => [picture([point('1', 1, null, { listName: 'Balls', lineWords: 'ball 1' })])],
    'Pump face, 1: there is no list called Balls on the sheet.',
  ],
])('refuses %s', async (_, pictures, message) => {
  const { refusal, picture, save } = await shopWithPicture();
  expect(await refusal('specs.saveSheet', save({ pictures: pictures(picture) }))).toMatchObject({ message });
});

test('left and right that change between two pictures are said, by where the points stand', () => {
  // example-unit: A (left) Forward and B (right) Direct on the pump face; C1 (left) Direct and C2 (right) Forward in the case.
  const face = { title: 'Pump face', points: [point('A', 289, 'Forward'), point('B', 711, 'Direct')] };
  const inCase = (left: string, right: string) => ({
    title: 'Case',
    points: [point('C1', 306, left), point('C2', 694, right), point('C3', 100, 'Low/reverse'), point('C6', 500, null)],
  });
  expect(swappedSides([face, inCase('Direct', 'Forward')])).toEqual([
    'Forward lies left on Pump face (A) and right on Case (C2); Direct the other way round.',
  ]);
  expect(swappedSides([face, inCase('Forward', 'Direct')])).toEqual([]);
  const nearly = { title: 'Case', points: [point('C1', 480, 'Direct'), point('C2', 520, 'Forward')] };
  expect(swappedSides([face, nearly])).toEqual([]);
  const three = (xs: readonly number[], title: string) => ({
    title,
    points: ['P', 'Q', 'R'].map((name, index) => point(`${name}${title}`, xs[index] ?? 0, name)),
  });
  expect(swappedSides([three([100, 500, 900], '1'), three([900, 500, 100], '2')])).toEqual([
    'Left and right change between 1 and 2: P (P1, P2); Q (Q1, Q2); R (R1, R2).',
  ]);
});

test('the shop’s report carries the numbers on the pictures, the bench sheet empty places, and neither needs the file', async () => {
  const { call, desk, familyId, kept, picture, save } = await shopWithPicture();
  await call(
    'specs.saveSheet',
    save({ pictures: [picture([point('PX7', 250, 'Port A, Forward'), point('PX8', 700, null)])] }),
  );
  const { jobId } = await call('jobs.checkIn', checkIn(familyId));
  const { checks } = await call('jobs.getJob', { jobId });
  const checkId = checks.find(({ name }) => name === 'Port A, Forward')?.checkId;
  const take = { jobId, checkId, phase: 'final', mode: 'final', setup: null, note: '', by: 1 };
  const { takeId } = await call('readings.startTake', take);
  await call('readings.recordReading', { takeId, spot: 1, typed: '3', by: 1 });
  const textOf = async (base64: string) => (await readPdf(Buffer.from(base64, 'base64'))).text;
  const report = async (copy: 'shop' | 'customer') =>
    textOf((await call('jobs.printBuildReport', { jobId, copy })).pdfBase64);
  const bench = async () => textOf((await call('jobs.printBenchSheet', { of: { jobId } })).pdfBase64);
  expect(await report('shop')).toMatch(/PX7\s+3\.0 psi/);
  expect(await report('customer')).not.toContain('PX7');
  expect(await bench()).toContain('PX7');
  rmSync(join(desk.shop().file, '..', 'photos', `${kept.sha256}.jpg`));
  expect(await report('shop')).toContain('the file of this picture is gone or damaged');
  expect(await bench()).toContain('PX8');
});
