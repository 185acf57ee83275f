// The acts on the lists of a typed sheet. Each gives a new sheet.
import type { SpecList } from '../../../app/specs/spec-list.ts';
import { replaced } from './sheet-edits.ts';
import { type TypedList, type TypedSheet, typedLine } from './typed-sheet.ts';

export function addList(sheet: TypedSheet, name: string): TypedSheet {
  const when = sheet.lists.at(-1)?.when ?? 'build';
  const list: TypedList = { key: sheet.lastKey + 1, name, when, packKey: null, lines: [], sourceNote: '' };
  return { ...sheet, lists: [...sheet.lists, list], lastKey: list.key };
}

export function changeList(sheet: TypedSheet, list: TypedList): TypedSheet {
  return { ...sheet, lists: replaced(sheet.lists, list) };
}

/** A line after the others, to be ticked until something else is chosen. */
export function addLineTo(sheet: TypedSheet, list: TypedList, words: string): TypedSheet {
  const line = { key: sheet.lastKey + 1, words, kind: 'tick', expects: '' } as const;
  return { ...changeList(sheet, { ...list, lines: [...list.lines, line] }), lastKey: line.key };
}

/** Ready lists after those the sheet has. */
export function layInLists(sheet: TypedSheet, lists: readonly SpecList[]): TypedSheet {
  let lastKey = sheet.lastKey;
  const key = () => ++lastKey;
  const laidIn = lists.map(
    ({ name, when, packName, lines, sourceNote }): TypedList => ({
      key: key(),
      ...{ name, when, sourceNote },
      packKey: sheet.packs.find((pack) => pack.name.trim() === packName)?.key ?? null,
      lines: lines.map((line) => typedLine(line, key())),
    }),
  );
  return { ...sheet, lists: [...sheet.lists, ...laidIn], lastKey };
}
