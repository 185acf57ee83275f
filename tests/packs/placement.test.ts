// Which slot a piece goes into: the example unit's rule, every order tried by hand, refusals.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  brokenRules,
  type PieceToPlace,
  placePieces,
  ruleSentence,
  type SlotToFill,
} from '../../app/packs/placement.ts';
import type { PlacementRule } from '../../app/specs/spec-sheet.ts';

const inThou = (height_nm: number) => (height_nm / 25_400).toFixed(1);
const steel = (id: string, thou: number): PieceToPlace => ({
  id,
  kind: 'steel',
  outline: 'D',
  height_nm: thou * 25_400,
});
const steelSlot: SlotToFill = { kind: 'steel', outline: 'D' };
const frictionSlot: SlotToFill = { kind: 'friction', outline: 'D' };
const friction = (id: string): PieceToPlace => ({ ...steel(id, 84), kind: 'friction' });
const direct: PlacementRule = { kind: 'thinnest-in', pieceKind: 'steel', places: [2, 3] };

const idsOf = (placement: ReturnType<typeof placePieces>) =>
  placement.ok ? placement.value.pieces.map(({ id }) => id) : placement.refusal.message;

test('Direct: the 84.0 may not stay in slot 1, and goes to 2 by moving one steel', () => {
  // Frictions lie between the steels: places count steels only. 92.0 91.0 92.5 91.5; the 91.0 of place 2 was taken out.
  const slots = [steelSlot, frictionSlot, steelSlot, frictionSlot, steelSlot, frictionSlot, steelSlot];
  const kept = [
    steel('92.0', 92),
    friction('a'),
    null,
    friction('b'),
    steel('92.5', 92.5),
    friction('c'),
    steel('91.5', 91.5),
  ];
  const placement = placePieces(slots, kept, [steel('84.0', 84)], [direct], inThou);
  expect(idsOf(placement)).toEqual(['92.0', 'a', '84.0', 'b', '92.5', 'c', '91.5']);
  expect(placement.ok && placement.value.moved).toEqual([]);

  const emptyFirst = [
    null,
    friction('a'),
    steel('91.0', 91),
    friction('b'),
    steel('92.5', 92.5),
    friction('c'),
    steel('91.5', 91.5),
  ];
  const moved = placePieces(slots, emptyFirst, [steel('84.0', 84)], [direct], inThou);
  expect(idsOf(moved)).toEqual(['91.0', 'a', '84.0', 'b', '92.5', 'c', '91.5']);
  expect(moved.ok && moved.value.moved).toEqual([{ id: '91.0', fromSlot: 2, toSlot: 0 }]);

  const heights = [84, 84, 91, 84, 92.5, 84, 91.5].map((thou) => thou * 25_400);
  expect(brokenRules(slots, heights, [direct], inThou)).toEqual([
    'The thinnest steel (84.0) must sit in slot 2 or 3, not in slot 1.',
  ]);
  expect(ruleSentence(direct)).toBe('The thinnest steel sits in slot 2 or 3, counted from the piston.');
});

test('equally thin steels satisfy the rule if one of them sits right; an unknown height is not judged', () => {
  const slots = [steelSlot, steelSlot, steelSlot];
  expect(brokenRules(slots, [70, 70, 71], [direct], String)).toEqual([]);
  expect(brokenRules(slots, [70, 71, 71], [direct], String)).toHaveLength(1);
  expect(brokenRules(slots, [70, null, 71], [direct], String)).toEqual([]);
  expect(brokenRules([frictionSlot], [70], [direct], String)).toEqual([]);
});

test('all equal, and a thickest place', () => {
  const equal: PlacementRule = { kind: 'all-equal', pieceKind: 'steel' };
  const thickest: PlacementRule = { kind: 'thickest-in', pieceKind: 'steel', places: [1] };
  expect(brokenRules([steelSlot, steelSlot], [70, 70], [equal, thickest], String)).toEqual([]);
  expect(brokenRules([steelSlot, steelSlot], [70, 71], [equal, thickest], String)).toEqual([
    'All steels must have the same height, not 70 to 71.',
    'The thickest steel (71) must sit in slot 1, not in slot 2.',
  ]);
  expect(idsOf(placePieces([steelSlot, steelSlot], [steel('a', 70), null], [steel('b', 71)], [equal], inThou))).toBe(
    'All steels must have the same height, not 70.0 to 71.0.',
  );
});

test('refuses in one sentence what cannot be placed', () => {
  const place = (added: PieceToPlace[], rules: PlacementRule[] = []) =>
    idsOf(placePieces([steelSlot, steelSlot], [steel('a', 70), null], added, rules, inThou));
  expect(place([])).toBe('There are 0 steels for 1 empty slot.');
  expect(place([steel('b', 71), steel('c', 71)])).toBe('There are 2 steels for 1 empty slot.');
  expect(place([{ ...steel('b', 71), outline: 'F' }])).toBe('There are 0 steels for 1 empty slot.');
  expect(place([steel('b', 71), friction('c')])).toBe('This pack has no slot for a friction of that outline.');
  expect(place([steel('b', 71)], [{ kind: 'thinnest-in', pieceKind: 'steel', places: [3] }])).toBe(
    'The thinnest steel (70.0) must sit in slot 3, not in slot 1.',
  );
  const crossed: PlacementRule[] = [
    { kind: 'thinnest-in', pieceKind: 'steel', places: [1] },
    { kind: 'thickest-in', pieceKind: 'steel', places: [1] },
  ];
  expect(place([steel('b', 71)], crossed)).toMatch(/must sit in slot 1/);
});

const ruleForSteels: fc.Arbitrary<PlacementRule> = fc.record({
  kind: fc.constantFrom('thinnest-in' as const, 'thickest-in' as const),
  pieceKind: fc.constant('steel' as const),
  places: fc.array(fc.integer({ min: 1, max: 5 }), { minLength: 1, maxLength: 3 }),
});

const packToFill = fc.record({
  pieces: fc.array(
    fc.record({ outline: fc.constantFrom('D', 'F'), height: fc.integer({ min: 70, max: 73 }), isAdded: fc.boolean() }),
    {
      minLength: 1,
      maxLength: 5,
    },
  ),
  rules: fc.array(ruleForSteels, { maxLength: 3 }),
});

function orders<T>(items: readonly T[]): T[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((first, place) => orders(items.toSpliced(place, 1)).map((rest) => [first, ...rest]));
}

test('moves as few pieces as any order that keeps the rules, and refuses only where there is none', () => {
  fc.assert(
    fc.property(packToFill, ({ pieces, rules }) => {
      const named = pieces.map(({ outline, height, isAdded }, place) => {
        const piece: PieceToPlace = { ...steel(`${place}`, height), outline };
        return { piece, isAdded };
      });
      const slots = named.map(({ piece }) => ({ kind: piece.kind, outline: piece.outline }));
      const kept = named.map(({ piece, isAdded }) => (isAdded ? null : piece));
      const added = named.flatMap(({ piece, isAdded }) => (isAdded ? [piece] : [])).toReversed();
      const movesOf = (order: readonly PieceToPlace[]) =>
        order.filter((piece, slot) => kept.includes(piece) && kept[slot] !== piece).length;
      const allowed = orders(named.map(({ piece }) => piece)).filter(
        (order) =>
          order.every((piece, slot) => piece.outline === slots[slot]!.outline) &&
          brokenRules(
            slots,
            order.map((piece) => piece.height_nm),
            rules,
            String,
          ).length === 0,
      );
      const placement = placePieces(slots, kept, added, rules, String);
      expect(placement.ok).toBe(allowed.length > 0);
      if (!placement.ok) return;
      expect(allowed.map((order) => order.map(({ id }) => id))).toContainEqual(
        placement.value.pieces.map(({ id }) => id),
      );
      expect(placement.value.moved).toHaveLength(Math.min(...allowed.map(movesOf)));
    }),
    { numRuns: 500 },
  );
});
