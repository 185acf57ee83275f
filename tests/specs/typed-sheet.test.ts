import { describe, expect, test } from 'vitest';
import { startingSettings } from '../../app/shop/starting-settings.ts';
import type { PieceKind, SpecSheet } from '../../app/specs/spec-sheet.ts';
import type { Revision } from '../../app/specs/specs.contract.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import {
  alikeSlots,
  kindsOfPattern,
  type PackPattern,
  patternWords,
} from '../../renderer/screens/specs/pack-pattern.ts';
import { readSheet } from '../../renderer/screens/specs/read-typed-sheet.ts';
import { type TypedSheet, typedSheet } from '../../renderer/screens/specs/typed-sheet.ts';

const revisionOf = (sheet: SpecSheet): Revision => ({
  revisionId: 1,
  familyId: 1,
  familyName: 'KX3',
  number: 1,
  isFrozen: false,
  sourceNote: '',
  savedAt: '2026-11-25T08:00:00Z',
  savedBy: 'RA',
  packs: sheet.packs.map((pack, index) => ({
    ...pack,
    packId: index + 1,
    slots: pack.slots.map((slot, place) => ({ ...slot, slotId: 100 * index + place + 1 })),
  })),
  checks: sheet.checks.map((check, index) => ({ ...check, checkId: index + 1, packId: null })),
  lists: sheet.lists.map((list, index) => ({
    ...list,
    listId: index + 1,
    packId: null,
    lines: list.lines.map((line, place) => ({ ...line, lineId: 100 * index + place + 1 })),
  })),
  pictures: sheet.pictures.map((picture, index) => ({
    ...picture,
    pictureId: index + 1,
    points: picture.points.map((point) => ({ ...point, checkId: null, lineId: null })),
  })),
});
const shop = { shopName: 'Harrow Lane Transmission', lengthUnit: 'thou', paper: 'letter' } as const;

describe('a sheet that is edited', () => {
  test.each([
    ['thou', '.'],
    ['mm', ','],
  ] as const)('comes back as it was when nothing is typed, in a shop of %s and “%s”', (lengthUnit, decimalMark) => {
    const settings = { ...startingSettings({ ...shop, lengthUnit }), decimalMark };
    const read = readSheet(typedSheet(revisionOf(kx3Sheet), settings));
    expect(read).toEqual({ value: kx3Sheet, problems: [] });
  });

  const typed = typedSheet(revisionOf(kx3Sheet), startingSettings(shop));
  const withCheck = (change: Partial<TypedSheet['checks'][number]>) =>
    readSheet({
      ...typed,
      checks: typed.checks.map((check) => (check.name === 'Rear end play' ? { ...check, ...change } : check)),
    });

  test.each([
    ['limits', '19-4', 'Rear end play: The low limit 19.0 is not below the high limit 4.0.'],
    ['spots', '13', 'Rear end play: Spots are a number from 1 to 12.'],
    ['shims', '60 x', 'Rear end play: “x” is not a unit for a height.'],
    ['name', ' ', 'A check: Give the check a name.'],
    ['group', '', 'Rear end play: Type the heading it stands under.'],
  ])('is not read while the %s of a check is “%s”, and says whose row it is', (field, text, sentence) => {
    const { value, problems } = withCheck({ [field]: text });
    expect(value).toBeNull();
    expect(problems.map((problem) => problem.sentence)).toEqual([sentence]);
  });

  test('takes a renamed pack’s checks along', () => {
    const packs = typed.packs.map((pack) => (pack.name === 'Direct' ? { ...pack, name: 'Third' } : pack));
    const { value } = readSheet({ ...typed, packs });
    expect(value?.checks.filter((check) => check.packName === 'Third').map(({ name }) => name)).toEqual([
      'Direct clearance',
    ]);
  });
});

describe('a pack by its pattern', () => {
  const pattern: PackPattern = {
    steels: '4',
    frictions: '4',
    first: 'steel',
    hasApplyPlate: false,
    hasWavePlate: false,
    hasBackingPlate: true,
    hasSelectiveRing: false,
  };
  const said = (change: Partial<PackPattern>) => {
    const kinds = kindsOfPattern({ ...pattern, ...change });
    return kinds.ok ? patternWords(kinds.value) : kinds.refusal.code;
  };

  test.each<[Partial<PackPattern>, string]>([
    [{}, '4 × (steel, friction), backing plate'],
    [{ first: 'friction' }, '4 × (friction, steel), backing plate'],
    [{ steels: '5' }, '4 × (steel, friction), steel, backing plate'],
    [{ steels: '1', frictions: '3' }, 'steel, 3 × friction, backing plate'],
    [
      { hasApplyPlate: true, hasWavePlate: true, hasBackingPlate: false, hasSelectiveRing: true },
      'apply plate, wave plate, 4 × (steel, friction), snap ring',
    ],
    [{ steels: '4.5' }, 'count'],
    [{ steels: '', frictions: '4' }, 'count'],
    [{ steels: '0', frictions: '0' }, 'count'],
    [{ steels: '17' }, 'count'],
  ])('%o is “%s”', (change, words) => {
    expect(said(change)).toBe(words);
  });

  test('slots that ask for the same are said once', () => {
    const slot = (kind: PieceKind, nominal_nm: number) => ({
      ...{ kind, nominal_nm, isAdjuster: false, outline: '', catalogue_nm: [], facing: '' },
    });
    const slots = [slot('steel', 1), slot('friction', 3), slot('steel', 2), slot('friction', 3), slot('steel', 1)];
    expect(alikeSlots(slots).map(({ name }) => name)).toEqual(['steel 1 3', '2 frictions', 'steel 2']);
  });
});
