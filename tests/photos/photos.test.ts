import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../papers/read-pdf.ts';
import { shopWithParts } from '../stock/shop-with-parts.ts';
import { greyJpeg, phoneJpeg } from './small-jpeg.ts';

const grey = greyJpeg.toString('base64');

async function shopWithPhotos() {
  const shop = await shopWithParts();
  const photo = { jobId: shop.jobId, caption: '', jpegBase64: grey, smallBase64: grey, folderName: null, by: shop.by };
  return { ...shop, photo, pictures: join(shop.folder, 'photos') };
}

describe('photos are kept beside the shop file, each once', () => {
  test('a photo comes back as it was kept, without the place it was taken at', async () => {
    const { call, photo, pictures } = await shopWithPhotos();
    const phone = phoneJpeg.toString('base64');
    const { photoId } = await call('photos.addPhoto', { ...photo, jpegBase64: phone, smallBase64: phone });
    expect((await call('photos.getPhoto', { photoId, size: 'full' })).jpegBase64).toBe(grey);
    expect(readdirSync(pictures)).toHaveLength(1);
  });

  test('the history of the ticket tells of it, with its caption', async () => {
    const { call, photo, jobId } = await shopWithPhotos();
    await call('photos.addPhoto', { ...photo, caption: 'Pan, dark, fines' });
    expect((await call('jobs.getHistory', { jobId })).at(-1)).toMatchObject({
      kind: 'photo',
      says: 'Photo taken in',
      more: 'Pan, dark, fines',
      by: 'RA',
    });
  });

  test('the same picture again is the same photo, and taken off it can come back', async () => {
    const { call, photo, jobId, by } = await shopWithPhotos();
    const { photoId } = await call('photos.addPhoto', photo);
    expect(await call('photos.addPhoto', photo)).toEqual({ photoId, isNew: false });
    await call('photos.removePhoto', { photoId, by });
    expect(await call('photos.listPhotos', { jobId })).toEqual([]);
    expect(await call('photos.addPhoto', photo)).toMatchObject({ isNew: true });
  });

  test('broken data is refused in one sentence and leaves nothing behind', async () => {
    const { call, refusal, photo, jobId, pictures } = await shopWithPhotos();
    const broken = { ...photo, jpegBase64: greyJpeg.subarray(0, 90).toString('base64') };
    expect(await refusal('photos.addPhoto', broken)).toMatchObject({ code: 'cut-off' });
    const noPicture = { ...photo, jpegBase64: Buffer.from('<svg/>').toString('base64') };
    expect(await refusal('photos.addPhoto', noPicture)).toMatchObject({ code: 'not-a-photo' });
    expect(await refusal('photos.addPhoto', { ...photo, jpegBase64: '…' })).toMatchObject({ code: 'input' });
    expect(await call('photos.listPhotos', { jobId })).toEqual([]);
    expect(() => readdirSync(pictures)).toThrow();
  });

  test('a file that was changed or is gone says so instead of showing something else', async () => {
    const { call, refusal, photo, pictures } = await shopWithPhotos();
    const { photoId } = await call('photos.addPhoto', photo);
    const [name = ''] = readdirSync(pictures);
    writeFileSync(join(pictures, name), readFileSync(join(pictures, name)).subarray(0, 100));
    expect(await refusal('photos.getPhoto', { photoId, size: 'full' })).toMatchObject({ code: 'photo-changed' });
  });

  test('a closed ticket takes no photo and keeps those it has', async () => {
    const { call, refusal, photo, jobId, by, closeJob } = await shopWithPhotos();
    const { photoId } = await call('photos.addPhoto', photo);
    await closeJob();
    expect(await refusal('photos.addPhoto', photo)).toMatchObject({ code: 'job-closed' });
    expect(await refusal('photos.removePhoto', { photoId, by })).toMatchObject({ code: 'job-closed' });
    expect(await call('photos.listPhotos', { jobId })).toHaveLength(1);
  });
});

describe('the report carries the photos a person chose', () => {
  test('with their captions, and no others', async () => {
    const { call, photo, jobId, by } = await shopWithPhotos();
    const { photoId } = await call('photos.addPhoto', { ...photo, caption: 'Pan, dark, fines' });
    const print = async () => {
      const { pdfBase64 } = await call('jobs.printBuildReport', { jobId, copy: 'customer', paper: 'letter' });
      return (await readPdf(Buffer.from(pdfBase64, 'base64'))).text;
    };
    expect(await print()).not.toContain('Pan, dark');
    await call('photos.describePhoto', { photoId, caption: 'Pan, dark, fines', checkId: null, isInReport: true, by });
    expect(await print()).toContain('Pan, dark, fines');
  });
});

describe('what a phone puts into its folder is offered once', () => {
  test('new pictures are listed, one that was kept is not, and a name used again is', async () => {
    const { call, photo, folder, by } = await shopWithPhotos();
    const phone = join(folder, 'phone');
    mkdirSync(phone);
    for (const name of ['a.jpg', 'b.HEIC', 'notes.txt', '.hidden.jpg']) writeFileSync(join(phone, name), greyJpeg);
    await call('photos.watchFolder', { folder: phone, by });
    const { files } = await call('photos.getFolder', {});
    expect(files.map((file) => file.name).toSorted()).toEqual(['a.jpg', 'b.HEIC']);
    const first = files.find((file) => file.name === 'a.jpg');
    expect((await call('photos.readFromFolder', { name: 'a.jpg' })).base64).toBe(grey);
    await call('photos.addPhoto', { ...photo, folderName: first?.folderName });
    expect((await call('photos.getFolder', {})).files.map((file) => file.name)).toEqual(['b.HEIC']);
  });

  test('a folder that is not there is refused, one that went away is said, and no path leads out of it', async () => {
    const { call, refusal, folder, by } = await shopWithPhotos();
    const gone = join(folder, 'gone');
    expect(await refusal('photos.watchFolder', { folder: gone, by })).toMatchObject({ field: 'folder' });
    mkdirSync(gone);
    await call('photos.watchFolder', { folder: gone, by });
    writeFileSync(join(folder, 'secret.jpg'), greyJpeg);
    for (const name of ['../secret.jpg', join(folder, 'secret.jpg'), 'none.jpg', '..']) {
      expect(await refusal('photos.readFromFolder', { name })).toMatchObject({ code: 'no-such-photo' });
    }
  });
});

describe('five hundred photos on one ticket', () => {
  /** As many different pictures: the first two steps of the table they are coarsened by differ. */
  const picture = (number: number) => {
    const bytes = Buffer.from(greyJpeg);
    bytes[25] = 1 + (number % 250);
    bytes[26] = 1 + Math.floor(number / 250);
    return bytes.toString('base64');
  };

  test('all are listed and come back each by itself; the report carries the few that were chosen', async () => {
    const { call, photo, jobId, by } = await shopWithPhotos();
    const ids: number[] = [];
    for (let number = 1; number <= 500; number += 1) {
      const shown = picture(number);
      const caption = `plate ${number} of many`;
      ids.push((await call('photos.addPhoto', { ...photo, caption, jpegBase64: shown, smallBase64: shown })).photoId);
    }
    const listed = await call('photos.listPhotos', { jobId });
    expect(listed.map(({ photoId }) => photoId)).toEqual(ids);
    expect(new Set(ids).size).toBe(500);
    for (const number of [1, 250, 251, 500]) {
      const { jpegBase64 } = await call('photos.getPhoto', { photoId: ids[number - 1], size: 'small' });
      expect(jpegBase64).toBe(picture(number));
    }
    for (const number of [7, 499]) {
      const chosen = { photoId: ids[number - 1], caption: `plate ${number} of many`, checkId: null };
      await call('photos.describePhoto', { ...chosen, isInReport: true, by });
    }
    const { pdfBase64 } = await call('jobs.printBuildReport', { jobId, copy: 'customer', paper: 'letter' });
    const { text } = await readPdf(Buffer.from(pdfBase64, 'base64'));
    expect([...text.matchAll(/plate (\d+) of many/g)].map(([, number]) => number)).toEqual(['7', '499']);
    const { folder } = await call('shop.exportEverything', { folder: '', withPhotos: true });
    expect(readdirSync(join(folder, 'photos', 'job 1'))).toHaveLength(500);
  });
});
