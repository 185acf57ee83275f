// What a mock-up changed, with the plates of the example unit.
import { describe, expect, test } from 'vitest';
import { changeLines, changesBetween } from '../../app/packs/mock-up-changes.ts';
import type { Piece } from '../../app/packs/packs.contract.ts';

const slots = (['steel', 'friction', 'steel', 'backing plate'] as const).map((kind, index) => ({
  slotId: 11 + index,
  kind,
}));

function filled(...plates: readonly (readonly [pieceId: number, tenths: number])[]) {
  return plates.map(([pieceId, tenths], index) => {
    const piece: Piece = {
      pieceId,
      kind: 'steel',
      outline: '',
      tag: '',
      height_nm: tenths * 2540,
      heightFrom: 'measured',
      standardUncertainty_nm: null,
    };
    return { slotId: 11 + index, piece, isNew: false };
  });
}

const write = (height_nm: number) => (height_nm / 25_400).toFixed(1);
const found = filled([1, 770], [2, 795], [3, 765], [4, 2500]);

describe('what a mock-up changed', () => {
  test('names the slot as the bench does, with what left and what came', () => {
    expect(changesBetween(slots, found, filled([1, 770], [2, 795], [9, 830], [4, 2500]), write)).toEqual([
      'steel 2: 76.5 → 83.0',
    ]);
  });

  test('two plates that change places are two changes; a plate measured again is none', () => {
    expect(changesBetween(slots, found, filled([3, 765], [2, 800], [1, 770], [4, 2500]), write)).toEqual([
      'steel 1: 77.0 → 76.5',
      'steel 2: 76.5 → 77.0',
    ]);
  });

  test('where no plate changed the note says what did; as found nothing had', () => {
    const mockUps = [
      { pieces: found, note: 'as found' },
      { pieces: found, note: 'plates re-clocked' },
      { pieces: found, note: '' },
    ];
    expect(mockUps.map((_, index) => changeLines(slots, mockUps, index, write))).toEqual([
      [],
      ['plates re-clocked'],
      [],
    ]);
  });
});
