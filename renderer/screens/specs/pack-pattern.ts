// A pack by its pattern: "4 × (steel, friction), backing plate", laid out from a few counts and said back.
import { accept, type Result, refuse } from '../../../app/base/result.ts';
import type { PieceKind, Slot } from '../../../app/specs/spec-sheet.ts';

export type PackPattern = {
  readonly steels: string;
  readonly frictions: string;
  /** Which of the two lies nearer to the piston. */
  readonly first: 'steel' | 'friction';
  readonly hasApplyPlate: boolean;
  readonly hasWavePlate: boolean;
  readonly hasBackingPlate: boolean;
  readonly hasSelectiveRing: boolean;
};

const mostPlates = 16;

/** The kinds of the pattern's slots from the piston on; where one of the two runs out the rest of the other follows. */
export function kindsOfPattern(pattern: PackPattern): Result<PieceKind[]> {
  const [steels, frictions] = [countTyped(pattern.steels), countTyped(pattern.frictions)];
  if (steels === null || frictions === null || steels + frictions === 0) {
    return refuse('count', `Type how many, from 0 to ${mostPlates}.`);
  }
  const second = pattern.first === 'steel' ? 'friction' : 'steel';
  const left = { steel: steels, friction: frictions };
  const plates: PieceKind[] = [];
  while (left.steel + left.friction > 0) {
    for (const kind of [pattern.first, second] as const) {
      if (left[kind] === 0) continue;
      plates.push(kind);
      left[kind] -= 1;
    }
  }
  const where = (is: boolean, kind: PieceKind) => (is ? [kind] : []);
  return accept([
    ...where(pattern.hasApplyPlate, 'apply plate'),
    ...where(pattern.hasWavePlate, 'wave plate'),
    ...plates,
    ...where(pattern.hasBackingPlate, 'backing plate'),
    ...where(pattern.hasSelectiveRing, 'snap ring'),
  ]);
}

function countTyped(typed: string): number | null {
  const count = /^\d{1,2}$/.test(typed.trim()) ? Number(typed) : null;
  return count !== null && count <= mostPlates ? count : null;
}

/** The kinds from the piston on, in few words: "wave plate, 5 × (steel, friction), backing plate". */
export function patternWords(kinds: readonly PieceKind[]): string {
  const words: string[] = [];
  for (let at = 0; at < kinds.length; ) {
    const [kind, next] = [kinds[at], kinds[at + 1]];
    const pairs = kind === next ? 0 : repeats(kinds.slice(at), [kind, next]);
    const alike = repeats(kinds.slice(at), [kind]);
    if (pairs > 1) words.push(`${pairs} × (${kind}, ${next})`);
    else words.push(alike > 1 ? `${alike} × ${kind}` : `${kind}`);
    at += pairs > 1 ? 2 * pairs : alike;
  }
  return words.join(', ');
}

/** How many times over the kinds begin with this unit. */
function repeats(kinds: readonly PieceKind[], unit: ReadonlyArray<PieceKind | undefined>): number {
  const differs = kinds.findIndex((kind, index) => kind !== unit[index % unit.length]);
  return Math.floor((differs === -1 ? kinds.length : differs) / unit.length);
}

/** The slots of one kind that ask for the same, once, by what they are called: "4 steels", "steel 1 3 4", "steel 2". */
export function alikeSlots(slots: readonly Slot[]): Array<{ readonly name: string; readonly slot: Slot }> {
  const alike = Map.groupBy(slots, ({ kind, nominal_nm, isAdjuster, outline, catalogue_nm, facing }) =>
    JSON.stringify([kind, nominal_nm, isAdjuster, outline, catalogue_nm, facing]),
  );
  return [...alike.values()].flatMap((members) => {
    const [slot] = members;
    if (slot === undefined) return [];
    const ofKind = slots.filter(({ kind }) => kind === slot.kind);
    const places = members.map((member) => ofKind.indexOf(member) + 1);
    const isAll = places.length === ofKind.length;
    const name = isAll
      ? places.length === 1
        ? slot.kind
        : `${places.length} ${slot.kind}s`
      : [slot.kind, ...places].join(' ');
    return [{ name, slot }];
  });
}
