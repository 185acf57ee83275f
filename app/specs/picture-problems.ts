// What is wrong with the pictures of a spec sheet, one plain sentence.
import type { Picture, PicturePoint } from './spec-sheet.ts';

/** What a point may name. */
type Nameable = {
  readonly checks: ReadonlyArray<{ readonly name: string }>;
  readonly lists: ReadonlyArray<{ readonly name: string; readonly lines: ReadonlyArray<{ readonly words: string }> }>;
};

/** Pictures are told apart by their titles. */
export function repeatedTitle(pictures: ReadonlyArray<Pick<Picture, 'title'>>): string | undefined {
  const titles = pictures.map(({ title }) => title);
  const twice = titles.find((title, index) => titles.indexOf(title) !== index);
  return twice === undefined ? undefined : `There are two pictures called ${twice}: give one another title.`;
}

/** What is wrong with a picture beside the checks and lists of its sheet, in one sentence that names it. */
export function pictureProblem(picture: Picture, sheet: Nameable): string | undefined {
  const labels = picture.points.map(({ label }) => label);
  const twice = labels.find((label, index) => labels.indexOf(label) !== index);
  if (twice !== undefined) return `${picture.title} has two points called ${twice}: give one another label.`;
  const problem = picture.points.map((point) => pointProblem(point, sheet)).find(Boolean);
  return problem && `${picture.title}, ${problem}`;
}

function pointProblem({ label, checkName, listName, lineWords }: PicturePoint, sheet: Nameable) {
  if (checkName !== null && listName !== null) return `${label}: a point names a check or a line of a list, not both.`;
  if ((listName === null) !== (lineWords === null)) return `${label}: a line of a list is named with its list.`;
  if (checkName !== null && !sheet.checks.some(({ name }) => name === checkName)) {
    return `${label}: there is no check called ${checkName} on the sheet.`;
  }
  if (listName === null) return undefined;
  const list = sheet.lists.find(({ name }) => name === listName);
  if (!list) return `${label}: there is no list called ${listName} on the sheet.`;
  if (!list.lines.some(({ words }) => words === lineWords)) return `${label}: ${listName} has no line “${lineWords}”.`;
  return undefined;
}
