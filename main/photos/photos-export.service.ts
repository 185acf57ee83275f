// Photos as files with names a person can read.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { storageErrorOf } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { plainName } from '../exports/export-folder.ts';
import { readPicture } from './photo-files.ts';

/**
 * Puts the photos of one job into `folder`, or of all jobs, each job in a folder of its own, where `jobId` is null.
 * Answers how many, and one sentence for each whose file is gone or damaged: that stops none of the others.
 */
export async function copyPhotos(
  reading: Reading,
  shopFile: string,
  folder: string,
  jobId: number | null,
  watch: (photos: number) => void,
): Promise<{ count: number; troubles: string[] }> {
  let photos = reading
    .selectFrom('photos')
    .innerJoin('jobs', 'jobs.job_id', 'photos.job_id')
    .select(['photo_id', 'sha256', 'caption', 'jobs.number'])
    .orderBy('photo_id');
  photos = jobId === null ? photos : photos.where('photos.job_id', '=', jobId).where('removed_at', 'is', null);
  const troubles: string[] = [];
  let count = 0;
  for await (const photo of photos.stream()) {
    const into = jobId === null ? join(folder, `job ${photo.number}`) : folder;
    const name = `${plainName(`${photo.photo_id} ${photo.caption || 'no caption'}`)}.jpg`;
    try {
      const picture = readPicture(shopFile, photo.sha256);
      await mkdir(into, { recursive: true });
      await writeFile(join(into, name), picture, { flag: 'wx' });
      count += 1;
    } catch (thrown) {
      const trouble = storageErrorOf(thrown);
      if (!trouble) throw thrown;
      troubles.push(`photo ${photo.photo_id} of job ${photo.number}: ${trouble.message}`);
    }
    watch(1);
  }
  return { count, troubles };
}
