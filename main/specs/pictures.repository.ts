// The pictures of spec sheets in and out of the file: titles and points. The JPEGs lie beside it.
import type { Picture, PicturePoint } from '../../app/specs/spec-sheet.ts';
import type { SavedPicture } from '../../app/specs/specs.contract.ts';
import type { Reading, Writing } from '../database/tables.ts';

/** Comes after the checks and lists of the revision: points name them. */
export async function insertPictures(
  writing: Writing,
  revisionId: number,
  pictures: readonly Picture[],
): Promise<void> {
  for (const [position, { title, sha256, width, height, points }] of pictures.entries()) {
    const { picture_id } = await writing
      .insertInto('pictures')
      .values({ revision_id: revisionId, position, title, sha256, width, height })
      .returning('picture_id')
      .executeTakeFirstOrThrow();
    for (const [place, point] of points.entries()) {
      const { label, note, x_permille, y_permille } = point;
      const named = await whatIsNamed(writing, revisionId, point);
      await writing
        .insertInto('picture_points')
        .values({ picture_id, position: place, label, note, x_permille, y_permille, ...named })
        .execute();
    }
  }
}

async function whatIsNamed(reading: Reading, revisionId: number, { checkName, listName, lineWords }: PicturePoint) {
  const check = await reading
    .selectFrom('checks')
    .select('check_id')
    .where('revision_id', '=', revisionId)
    .where('name', '=', checkName)
    .executeTakeFirst();
  const line = await reading
    .selectFrom('list_lines')
    .innerJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .select('list_line_id')
    .where('revision_id', '=', revisionId)
    .where('lists.name', '=', listName)
    .where('words', '=', lineWords)
    .executeTakeFirst();
  return { check_id: check?.check_id ?? null, list_line_id: line?.list_line_id ?? null };
}

/** Comes before the checks and lists of the revision go. */
export async function deletePictures(writing: Writing, revisionId: number): Promise<void> {
  const pictureIds = writing.selectFrom('pictures').select('picture_id').where('revision_id', '=', revisionId);
  await writing.deleteFrom('picture_points').where('picture_id', 'in', pictureIds).execute();
  await writing.deleteFrom('pictures').where('revision_id', '=', revisionId).execute();
}

export async function listPictures(reading: Reading, revisionId: number): Promise<SavedPicture[]> {
  const rows = await reading
    .selectFrom('pictures')
    .selectAll()
    .where('revision_id', '=', revisionId)
    .orderBy('position')
    .execute();
  if (rows.length === 0) return [];
  const points = await reading
    .selectFrom('picture_points')
    .innerJoin('pictures', 'pictures.picture_id', 'picture_points.picture_id')
    .leftJoin('checks', 'checks.check_id', 'picture_points.check_id')
    .leftJoin('list_lines', 'list_lines.list_line_id', 'picture_points.list_line_id')
    .leftJoin('lists', 'lists.list_id', 'list_lines.list_id')
    .selectAll('picture_points')
    .select(['checks.name as check_name', 'lists.name as list_name', 'list_lines.words as line_words'])
    .where('pictures.revision_id', '=', revisionId)
    .orderBy('picture_points.position')
    .execute();
  return rows.map(({ picture_id, title, sha256, width, height }) => ({
    pictureId: picture_id,
    title,
    sha256,
    width,
    height,
    points: points
      .filter((point) => point.picture_id === picture_id)
      .map((point) => ({
        label: point.label,
        note: point.note,
        x_permille: point.x_permille,
        y_permille: point.y_permille,
        checkId: point.check_id,
        checkName: point.check_name,
        lineId: point.list_line_id,
        listName: point.list_name,
        lineWords: point.line_words,
      })),
  }));
}
