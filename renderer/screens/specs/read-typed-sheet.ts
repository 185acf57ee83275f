// What a typed sheet means, or what is wrong with it and where: the same readings stand beside the fields and at Save.
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import { unitNamed } from '../../../app/quantities/units.ts';
import { parseAsks } from '../../../app/specs/asks-text.ts';
import { parseHeights } from '../../../app/specs/heights-text.ts';
import { parseLimits } from '../../../app/specs/limits-text.ts';
import { lineProblem, listProblem } from '../../../app/specs/list-problems.ts';
import { checkProblem, packProblem } from '../../../app/specs/sheet-problems.ts';
import type { ListLine, SpecList } from '../../../app/specs/spec-list.ts';
import type { Check, Pack, PlacementRule, Slot, SpecSheet } from '../../../app/specs/spec-sheet.ts';
import { readClutch } from './typed-clutch.ts';
import { type Figures, heightField, limitsField, washersField } from './typed-figures.ts';
import { readPicture, type TypedPicture } from './typed-pictures.ts';
import type { TypedCheck, TypedLine, TypedList, TypedPack, TypedRule, TypedSheet, TypedSlot } from './typed-sheet.ts';

/** `value` is null while a field of it cannot be read; `problems` holds a sentence for each field that is wrong. */
export type Typed<T, F extends string> = { readonly value: T | null; readonly problems: Partial<Record<F, string>> };

export function readSlot(slot: TypedSlot, figures: Figures): Typed<Slot, 'height' | 'catalogue'> {
  const field = heightField(figures);
  const height = oneHeight(parseHeights(slot.height, field));
  const catalogue = parseHeights(slot.catalogue, field);
  if (!height.ok || !catalogue.ok) return unread({ height: said(height), catalogue: said(catalogue) });
  const { kind, isAdjuster, outline, facing } = slot;
  return sound({ kind, nominal_nm: height.value, isAdjuster, outline, catalogue_nm: catalogue.value, facing });
}

function oneHeight(heights: Result<readonly number[]>): Result<number | null> {
  if (!heights.ok) return heights;
  const [height = null, ...more] = heights.value;
  return more.length > 0 ? refuse('one-height', 'Type one height, or none when it is measured.') : accept(height);
}

export function readRule(rule: TypedRule): Typed<PlacementRule, 'places'> {
  const { kind, pieceKind } = rule;
  if (kind === 'all-equal') return sound({ kind, pieceKind });
  const places = wholeNumbers(rule.places);
  const isSaid = places.length > 0 && places.every((place) => place >= 1);
  return isSaid
    ? sound({ kind, pieceKind, places })
    : unread({ places: 'Type the places, counted from the piston, such as 2 3.' });
}

export function readPack(pack: TypedPack, sheet: TypedSheet): Typed<Pack, 'name' | 'slots' | 'whole'> {
  const slots = pack.slots.map((slot) => readSlot(slot, sheet));
  const rules = pack.rules.map(readRule);
  const clutch = readClutch(pack.clutch, sheet);
  const name = pack.name.trim();
  const wrongSlot = slots.findIndex((slot) => slot.value === null);
  const wrongRule = rules.find((rule) => rule.value === null);
  const problems = {
    name: name === '' ? 'Give the pack a name.' : null,
    slots: pack.slots.length === 0 ? `${name || 'The pack'} holds nothing yet: lay it out first.` : null,
    whole:
      wrongSlot >= 0
        ? `Slot ${wrongSlot + 1}: ${firstOf(slots[wrongSlot])}`
        : (firstOf(wrongRule) ?? clutchWords(Object.values(clutch.problems)[0])),
  };
  if (Object.values(problems).some((each) => each !== null)) return unread(problems);
  const value = { name, slots: valuesOf(slots), rules: valuesOf(rules), note: pack.note, clutch: clutch.value };
  return sound(value, { whole: packProblem(value) });
}

function clutchWords(problem: string | undefined): string | null {
  return problem === undefined ? null : `Clutch: ${problem}`;
}

export function readCheck(
  check: TypedCheck,
  sheet: TypedSheet,
): Typed<Check, 'name' | 'group' | 'limits' | 'spots' | 'shims' | 'whole'> {
  const limits = parseLimits(check.limits, limitsField(check, sheet));
  const shims = parseHeights(check.shims, washersField(check, sheet));
  const [spots = 0, ...more] = wholeNumbers(check.spots);
  const isSpots = spots >= 1 && spots <= 12 && more.length === 0;
  const [name, group] = [check.name.trim(), check.group.trim()];
  if (!limits.ok || !shims.ok || !isSpots || name === '' || group === '') {
    return unread({
      name: name === '' ? 'Give the check a name.' : null,
      group: group === '' ? 'Type the heading it stands under.' : null,
      limits: said(limits),
      spots: isSpots ? null : 'Spots are a number from 1 to 12.',
      shims: said(shims),
    });
  }
  const { method, unit, holdsFor, waveState, sourceNote } = check;
  const pack = sheet.packs.find(({ key }) => key === check.packKey);
  const value: Check = {
    ...{ name, group, method, unit, holdsFor, waveState, spots, sourceNote },
    packName: pack === undefined ? null : pack.name.trim(),
    quantity: unitNamed(unit).quantity,
    limits: limits.value,
    shims_nm: shims.value,
  };
  return sound(value, { whole: checkProblem(value, sheet.packs) });
}

export function readLine(line: TypedLine): Typed<ListLine, 'words' | 'expects'> {
  const asks = parseAsks(line.kind, line.expects);
  const words = line.words.trim();
  if (words === '' || !asks.ok) {
    return unread({ words: words === '' ? 'Say what is looked at.' : null, expects: said(asks) });
  }
  const value = { words, asks: asks.value };
  return sound(value, { expects: lineProblem(value) });
}

export function readList(list: TypedList, sheet: TypedSheet): Typed<SpecList, 'name' | 'whole'> {
  const lines = list.lines.map(readLine);
  const name = list.name.trim();
  const wrong = lines.findIndex((line) => line.value === null);
  if (name === '' || wrong >= 0) {
    return unread({
      name: name === '' ? 'Give the list a name.' : null,
      whole: wrong >= 0 ? `Line ${wrong + 1}: ${firstOf(lines[wrong])}` : null,
    });
  }
  const pack = sheet.packs.find(({ key }) => key === list.packKey);
  const { when, sourceNote } = list;
  const value = { name, when, packName: pack?.name.trim() ?? null, lines: valuesOf(lines), sourceNote };
  return sound(value, { whole: listProblem(value, sheet.packs) });
}

/** What keeps a sheet from being read, and whose row it is. */
export type SheetProblem = {
  readonly kind: 'pack' | 'check' | 'list' | 'picture';
  readonly key: number;
  readonly sentence: string;
};

/** The sheet to save, or what has to be put right first, in order. */
export function readSheet(sheet: TypedSheet): { value: SpecSheet | null; problems: readonly SheetProblem[] } {
  const packs = sheet.packs.map((pack) => readPack(pack, sheet));
  const checks = sheet.checks.map((check) => readCheck(check, sheet));
  const lists = sheet.lists.map((list) => readList(list, sheet));
  const pictures = sheet.pictures.map((picture) => readPicture(picture, sheet));
  const problems = [
    ...packs.flatMap((read, index) => problemOf('pack', sheet.packs[index]!, read)),
    ...checks.flatMap((read, index) => problemOf('check', sheet.checks[index]!, read)),
    ...lists.flatMap((read, index) => problemOf('list', sheet.lists[index]!, read)),
    ...pictures.flatMap((read, index) => problemOf('picture', named(sheet.pictures[index]!), read)),
  ];
  const value =
    problems.length === 0
      ? { packs: valuesOf(packs), checks: valuesOf(checks), lists: valuesOf(lists), pictures: valuesOf(pictures) }
      : null;
  return { value, problems };
}

function named({ key, title }: TypedPicture) {
  return { key, name: title };
}

function problemOf(
  kind: SheetProblem['kind'],
  { key, name }: { readonly key: number; readonly name: string },
  read: Typed<unknown, string>,
): SheetProblem[] {
  if (read.value !== null) return [];
  return [{ kind, key, sentence: `${name.trim() || `A ${kind}`}: ${firstOf(read)}` }];
}

function said(result: Result<unknown>): string | null {
  return result.ok ? null : result.refusal.message;
}

function firstOf(read: Typed<unknown, string> | undefined): string | undefined {
  return Object.values(read?.problems ?? {})[0];
}

function wholeNumbers(typed: string): number[] {
  const words = typed.split(/[\s,;]+/).filter((word) => word !== '');
  return words.map((word) => (/^\d{1,3}$/.test(word) ? Number(word) : 0));
}

function valuesOf<T>(reads: ReadonlyArray<Typed<T, string>>): T[] {
  return reads.flatMap(({ value }) => (value === null ? [] : [value]));
}

function sound<T, F extends string>(value: T, problems: Partial<Record<F, string | undefined>> = {}): Typed<T, F> {
  return { value, problems: withoutEmpty(problems) };
}

function unread<F extends string>(problems: Partial<Record<F, string | null>>): Typed<never, F> {
  return { value: null, problems: withoutEmpty(problems) };
}

function withoutEmpty<F extends string>(problems: Partial<Record<F, string | null | undefined>>) {
  return Object.fromEntries(Object.entries(problems).filter(([, sentence]) => sentence)) as Partial<Record<F, string>>;
}
