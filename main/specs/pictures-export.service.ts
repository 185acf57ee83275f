// The pictures of spec sheets as files with names a person can read.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { storageErrorOf } from '../database/errors.ts';
import type { Reading } from '../database/tables.ts';
import { plainName } from '../exports/export-folder.ts';
import { readJpeg } from '../photos/photos.service.ts';

/**
 * Puts the pictures of one revision into `folder`, or of all, each family in a folder of its own, where `revisionId` is
 * null. Answers how many, and one sentence for each whose file is gone or damaged: that stops none of the others.
 */
export async function copyPictures(
  reading: Reading,
  shopFile: string,
  folder: string,
  revisionId: number | null,
  watch: (pictures: number) => void,
): Promise<{ count: number; troubles: string[] }> {
  let pictures = reading
    .selectFrom('pictures')
    .innerJoin('revisions', 'revisions.revision_id', 'pictures.revision_id')
    .innerJoin('families', 'families.family_id', 'revisions.family_id')
    .select(['picture_id', 'sha256', 'title', 'families.name'])
    .orderBy('picture_id');
  pictures = revisionId === null ? pictures : pictures.where('pictures.revision_id', '=', revisionId);
  const troubles: string[] = [];
  let count = 0;
  for (const { picture_id, sha256, title, name } of await pictures.execute()) {
    const into = revisionId === null ? join(folder, plainName(name)) : folder;
    try {
      const picture = Buffer.from(readJpeg(shopFile, sha256), 'base64');
      await mkdir(into, { recursive: true });
      await writeFile(join(into, `${plainName(`${picture_id} ${title}`)}.jpg`), picture, { flag: 'wx' });
      count += 1;
    } catch (thrown) {
      const trouble = storageErrorOf(thrown);
      if (!trouble) throw thrown;
      troubles.push(`picture ${picture_id} of ${name}, ${title}: ${trouble.message}`);
    }
    watch(1);
  }
  return { count, troubles };
}
