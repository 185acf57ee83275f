// Photos of a ticket: kept as files named after their content, with a row that says what they show.
import type { Picture } from '../../app/papers/paper.ts';
import { plainJpeg } from '../../app/photos/jpeg.ts';
import type { Photo } from '../../app/photos/photos.contract.ts';
import { accepted, found } from '../database/errors.ts';
import type { Reading, Writing } from '../database/tables.ts';
import { checkOfJobRow, getJobRow, jobAtWork } from '../jobs/jobs.service.ts';
import { personAtWork } from '../shop/shop.service.ts';
import { assertFolder, listFolder } from './phone-folder.ts';
import { isPictureKept, keepPicture, readPicture } from './photo-files.ts';

export async function listPhotos(reading: Reading, { jobId }: { jobId: number }): Promise<Photo[]> {
  const rows = await photos(reading).where('job_id', '=', jobId).orderBy('photo_id').execute();
  return rows.map((row) => ({
    photoId: row.photo_id,
    caption: row.caption,
    checkId: row.check_id,
    isInReport: row.is_in_report === 1,
    width: row.width,
    height: row.height,
    at: row.added_at,
    by: row.initials,
  }));
}

export type PictureOnDisk = { readonly sha256: string; readonly width: number; readonly height: number };

/** Puts a picture on the disk, without anything but the picture in it. Comes before the row: a row never lacks its file. */
export function keepJpeg(shopFile: string, base64: string): PictureOnDisk {
  const { bytes, width, height } = accepted(plainJpeg(Buffer.from(base64, 'base64')));
  return { sha256: keepPicture(shopFile, bytes), width, height };
}

/** What was kept, as base64; a storage error in words when its file is gone or was changed. */
export function readJpeg(shopFile: string, sha256: string): string {
  return readPicture(shopFile, sha256).toString('base64');
}

export function isJpegKept(shopFile: string, sha256: string): boolean {
  return isPictureKept(shopFile, sha256);
}

export async function addPhoto(
  writing: Writing,
  now: string,
  input: {
    jobId: number;
    caption: string;
    folderName: string | null;
    by: number;
    picture: PictureOnDisk;
    small: PictureOnDisk;
  },
) {
  await personAtWork(writing, input.by);
  await jobAtWork(writing, input.jobId);
  const { picture, small, jobId, caption, folderName, by } = input;
  const same = await photos(writing)
    .where('job_id', '=', jobId)
    .where('sha256', '=', picture.sha256)
    .executeTakeFirst();
  if (same) return { photoId: same.photo_id, isNew: false };
  const { photo_id } = await writing
    .insertInto('photos')
    .values({
      job_id: jobId,
      sha256: picture.sha256,
      small_sha256: small.sha256,
      width: picture.width,
      height: picture.height,
      caption,
      check_id: null,
      is_in_report: 0,
      folder_name: folderName,
      added_at: now,
      added_by: by,
      removed_at: null,
    })
    .returning('photo_id')
    .executeTakeFirstOrThrow();
  return { photoId: photo_id, isNew: true };
}

export async function describePhoto(
  writing: Writing,
  input: { photoId: number; caption: string; checkId: number | null; isInReport: boolean; by: number },
) {
  await personAtWork(writing, input.by);
  const photo = await photoAtWork(writing, input.photoId);
  if (input.checkId !== null) await checkOfJobRow(writing, await getJobRow(writing, photo.job_id), input.checkId);
  await writing
    .updateTable('photos')
    .set({ caption: input.caption, check_id: input.checkId, is_in_report: input.isInReport ? 1 : 0 })
    .where('photo_id', '=', input.photoId)
    .execute();
  return {};
}

export async function removePhoto(writing: Writing, now: string, input: { photoId: number; by: number }) {
  await personAtWork(writing, input.by);
  await photoAtWork(writing, input.photoId);
  await writing.updateTable('photos').set({ removed_at: now }).where('photo_id', '=', input.photoId).execute();
  return {};
}

/** The names of the files of a photo. */
export async function filesOfPhoto(reading: Reading, photoId: number): Promise<{ full: string; small: string }> {
  const row = found(await photos(reading).where('photo_id', '=', photoId).executeTakeFirst(), 'photo');
  return { full: row.sha256, small: row.small_sha256 };
}

/** A photo's own picture, for whoever shows it elsewhere. */
export async function pictureOfPhoto(reading: Reading, photoId: number): Promise<PictureOnDisk> {
  const { sha256, width, height } = found(
    await photos(reading).where('photo_id', '=', photoId).executeTakeFirst(),
    'photo',
  );
  return { sha256, width, height };
}

/** The pictures that a person chose for the report, oldest first, ready to print. */
export async function picturesForReport(reading: Reading, shopFile: string, jobId: number): Promise<Picture[]> {
  const rows = await photos(reading)
    .where('job_id', '=', jobId)
    .where('is_in_report', '=', 1)
    .orderBy('photo_id')
    .execute();
  return rows.map(({ sha256, width, height, caption }) => ({
    jpegBase64: readJpeg(shopFile, sha256),
    width,
    height,
    caption,
  }));
}

export async function watchedFolder(reading: Reading): Promise<string> {
  return (await reading.selectFrom('photo_folder').select('folder').executeTakeFirst())?.folder ?? '';
}

export async function getFolder(reading: Reading) {
  const folder = await watchedFolder(reading);
  const { trouble, files } = listFolder(folder);
  const kept = await reading
    .selectFrom('photos')
    .select('folder_name')
    .distinct()
    .where('folder_name', 'is not', null)
    .execute();
  const names = new Set(kept.map((row) => row.folder_name));
  const named = files.map((file) => ({ ...file, folderName: `${file.name} ${file.at}` }));
  return { folder, trouble, files: named.filter((file) => !names.has(file.folderName)) };
}

export async function watchFolder(writing: Writing, input: { folder: string; by: number }) {
  await personAtWork(writing, input.by);
  assertFolder(input.folder);
  await writing
    .insertInto('photo_folder')
    .values({ photo_folder_id: 1, folder: input.folder })
    .onConflict((row) => row.column('photo_folder_id').doUpdateSet({ folder: input.folder }))
    .execute();
  return {};
}

async function photoAtWork(reading: Reading, photoId: number) {
  const photo = found(await photos(reading).where('photo_id', '=', photoId).executeTakeFirst(), 'photo');
  await jobAtWork(reading, photo.job_id);
  return photo;
}

function photos(reading: Reading) {
  return reading
    .selectFrom('photos')
    .innerJoin('people', 'people.person_id', 'photos.added_by')
    .selectAll('photos')
    .select('people.initials')
    .where('removed_at', 'is', null);
}
