// Where two pictures carry the same checks the other way round, said in words: left on the one is right on the other.
import type { Picture } from './spec-sheet.ts';

/** Closer than this across the picture nothing is called left or right of the other. */
const sideBySide_permille = 50;

type Carried = { readonly checkName: string; readonly label: string; readonly x_permille: number };

/**
 * A sentence for every two pictures on which checks change sides, from where their points stand: "Port A lies left on
 * Pump face (A) and right on Case (C2); Port B the other way round." Nothing where left is left on both.
 */
export function swappedSides(pictures: ReadonlyArray<Pick<Picture, 'title' | 'points'>>): string[] {
  return pictures.flatMap((one, index) => pictures.slice(index + 1).flatMap((other) => sentenceOf(one, other) ?? []));
}

function sentenceOf(
  one: Pick<Picture, 'title' | 'points'>,
  other: Pick<Picture, 'title' | 'points'>,
): string | undefined {
  const shared = carriedOnce(one).flatMap((here) => {
    const there = carriedOnce(other).find(({ checkName }) => checkName === here.checkName);
    return there ? [{ here, there }] : [];
  });
  const fromLeft = shared.toSorted((a, b) => a.here.x_permille - b.here.x_permille);
  const changing = fromLeft.filter((each) => fromLeft.some((beside) => changesSides(each, beside)));
  const [first, second, ...more] = changing;
  if (!first || !second) return undefined;
  if (more.length > 0) {
    const names = changing.map(({ here, there }) => `${here.checkName} (${here.label}, ${there.label})`).join('; ');
    return `Left and right change between ${one.title} and ${other.title}: ${names}.`;
  }
  const [left, right] = [
    `left on ${one.title} (${first.here.label})`,
    `right on ${other.title} (${first.there.label})`,
  ];
  return `${first.here.checkName} lies ${left} and ${right}; ${second.here.checkName} the other way round.`;
}

type Shared = { readonly here: Carried; readonly there: Carried };

function changesSides(one: Shared, other: Shared): boolean {
  const here = one.here.x_permille - other.here.x_permille;
  const there = one.there.x_permille - other.there.x_permille;
  return here * there < 0 && Math.min(Math.abs(here), Math.abs(there)) >= sideBySide_permille;
}

/** A check on two points of one picture lies on no side of it. */
function carriedOnce({ points }: Pick<Picture, 'points'>): Carried[] {
  return points.flatMap(({ checkName, label, x_permille }) =>
    checkName !== null && points.filter((each) => each.checkName === checkName).length === 1
      ? [{ checkName, label, x_permille }]
      : [],
  );
}
