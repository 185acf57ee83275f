// The pictures of a sheet while somebody edits it: points name checks and lines by their rows, whatever those are called.
import { pictureProblem } from '../../../app/specs/picture-problems.ts';
import type { Picture, PicturePoint } from '../../../app/specs/spec-sheet.ts';

export type TypedPoint = Pick<PicturePoint, 'label' | 'note' | 'x_permille' | 'y_permille'> & {
  readonly key: number;
  /** The row of a check, or of a line of a list; null where it names neither. */
  readonly namesKey: number | null;
};

export type TypedPicture = Pick<Picture, 'title' | 'sha256' | 'width' | 'height'> & {
  readonly key: number;
  readonly points: readonly TypedPoint[];
};

type Row = { readonly key: number; readonly name: string };
type Line = { readonly key: number; readonly words: string };

/** The rows of the sheet a point may name. */
type Rows = {
  readonly checks: readonly Row[];
  readonly lists: ReadonlyArray<Row & { readonly lines: readonly Line[] }>;
};

/** The saved pictures, ready to be edited beside these rows. */
export function typedPictures(pictures: readonly Picture[], rows: Rows, key: () => number): TypedPicture[] {
  const lines = rows.lists.flatMap((list) => list.lines.map((line) => ({ ...line, listName: list.name })));
  const keyOf = ({ checkName, listName, lineWords }: PicturePoint) =>
    rows.checks.find(({ name }) => name === checkName)?.key ??
    lines.find((line) => line.listName === listName && line.words === lineWords)?.key ??
    null;
  return pictures.map(({ title, sha256, width, height, points }) => ({
    ...{ key: key(), title, sha256, width, height },
    points: points.map((point) => {
      const { label, note, x_permille, y_permille } = point;
      return { key: key(), label, note, x_permille, y_permille, namesKey: keyOf(point) };
    }),
  }));
}

/** What a point may name, in the words of the sheet as it is typed. */
export function nameableRows({ checks, lists }: Rows): Array<{ key: number; words: string }> {
  return [
    ...checks.map(({ key, name }) => ({ key, words: name })),
    ...lists.flatMap((list) => list.lines.map(({ key, words }) => ({ key, words: `${list.name}: ${words}` }))),
  ];
}

type Read = {
  readonly value: Picture | null;
  readonly problems: { readonly title?: string; readonly whole?: string };
};

/** The picture as it will be saved, or what is wrong with it. */
export function readPicture(picture: TypedPicture, rows: Rows): Read {
  const { sha256, width, height } = picture;
  const title = picture.title.trim();
  const unlabelled = picture.points.findIndex(({ label }) => label.trim() === '');
  if (title === '') return { value: null, problems: { title: 'Give the picture a title.' } };
  if (unlabelled >= 0) return { value: null, problems: { whole: `Point ${unlabelled + 1}: give it a label.` } };
  const points = picture.points.map((point) => readPoint(point, rows));
  const value = { title, sha256, width, height, points };
  const whole = pictureProblem(value, namesOf(rows));
  return whole === undefined ? { value, problems: {} } : { value: null, problems: { whole } };
}

function readPoint(
  { label, note, x_permille, y_permille, namesKey }: TypedPoint,
  { checks, lists }: Rows,
): PicturePoint {
  const check = checks.find(({ key }) => key === namesKey);
  const list = lists.find(({ lines }) => lines.some(({ key }) => key === namesKey));
  return {
    ...{ label: label.trim(), note: note.trim(), x_permille, y_permille },
    checkName: check?.name.trim() ?? null,
    listName: list?.name.trim() ?? null,
    lineWords: list?.lines.find(({ key }) => key === namesKey)?.words.trim() ?? null,
  };
}

function namesOf({ checks, lists }: Rows) {
  return {
    checks: checks.map(({ name }) => ({ name: name.trim() })),
    lists: lists.map(({ name, lines }) => ({
      name: name.trim(),
      lines: lines.map(({ words }) => ({ words: words.trim() })),
    })),
  };
}
