// One pack laid out for the search: every way to empty slots, and every sum that can be put into them.
import { type Draw, type Lot, type ReachableSums, reachableSums, type Take, thinnestFirst } from './reachable-sums.ts';
import type { AdjusterGroup, LoosePiece } from './swap-question.ts';

export type AddedPiece = { readonly id: string; readonly group: string; readonly height: number };

/** A piece that is or was in the pack, with its bit in the caller's order. */
export type NamedPiece = AddedPiece & { readonly groupIndex: number; readonly bit: number; readonly isFitted: boolean };

/** One way to take fitted pieces out, and to put back pieces that were in the pack before. */
export type Removal = {
  readonly changes: number;
  readonly removed: readonly NamedPiece[];
  readonly returned: readonly NamedPiece[];
  /** Bits of the named pieces that are in the pack then. */
  readonly inPack: number;
  /** The slots still to be filled. */
  readonly perGroup: readonly number[];
};

export type PackSearch = {
  readonly groups: readonly AdjusterGroup[];
  /** Fewest changes first; among equally many, those that take out thinner pieces, then those that put back fewer. */
  readonly removals: readonly Removal[];
  readonly reachable: ReachableSums;
  /** Every draw with so many pieces of each group. */
  readonly drawsOf: (perGroup: readonly number[]) => readonly Draw[];
  /** The pieces that fill the slots: those put back, then the loose ones, thinnest first and by name. */
  readonly comingIn: (removal: Removal, set: readonly Take[]) => readonly AddedPiece[];
};

/** Lays out the search, or null where the heights are too finely divided for it. */
export function layOut(askedGroups: readonly AdjusterGroup[]): PackSearch | null {
  // Sorted by name and height, so that the order in which things were listed never decides a tie.
  const groups = askedGroups.toSorted((a, b) => compareText(a.name, b.name));
  const slots = groups.map((group) => group.fitted.length);
  const classes =
    1 + groups.reduce((most, { loose }) => loose.reduce((m, p) => Math.max(m, p.uncertaintyClass), most), 0);
  const bins = collectLots(groups, classes);
  const lots = thinnestFirst(bins.map(({ lot }) => lot));
  const reachable = reachableSums(lots, slots, classes);
  if (reachable === null) return null;
  const loose = new Map(bins.map(({ lot, pieces }) => [lot, pieces]));
  const draws = Map.groupBy(reachable.draws, ({ perGroup }) => perGroup.join());
  return {
    groups,
    removals: listRemovals(askedGroups, groups),
    reachable,
    drawsOf: (perGroup) => draws.get(perGroup.join()) ?? [],
    comingIn: ({ returned }, set) => {
      const drawn = set.toReversed().flatMap(({ lot: index, pieces }) => {
        const lot = reachable.lots[index]!;
        const group = groups[lot.group]!.name;
        return firstPieces(loose.get(lot)!, pieces).map((id) => ({ id, group, height: lot.height }));
      });
      return [...returned.map(({ id, group, height }) => ({ id, group, height })), ...drawn];
    },
  };
}

function collectLots(groups: readonly AdjusterGroup[], classes: number): { lot: Lot; pieces: readonly LoosePiece[] }[] {
  return groups.flatMap(({ loose, fitted }, group) => {
    if (fitted.length === 0) return [];
    const equal = Map.groupBy(loose, ({ height, uncertaintyClass }) => height * classes + uncertaintyClass);
    return [...equal.values()].map((pieces) => {
      const { height, uncertaintyClass } = pieces[0]!;
      const count = pieces.reduce((sum, piece) => sum + piece.count, 0);
      return { lot: { group, uncertaintyClass, height, count }, pieces };
    });
  });
}

function firstPieces(loose: readonly LoosePiece[], wanted: number): string[] {
  const named: string[] = [];
  for (const { id, count } of loose.toSorted((a, b) => compareText(a.id, b.id))) {
    for (let piece = 0; piece < count && named.length < wanted; piece++) named.push(id);
  }
  return named;
}

function listRemovals(askedGroups: readonly AdjusterGroup[], groups: readonly AdjusterGroup[]): Removal[] {
  const named: NamedPiece[] = askedGroups
    .flatMap(({ name: group, fitted, readBefore = [] }) => [
      ...fitted.map((piece) => ({ ...piece, group, isFitted: true })),
      ...readBefore.map((piece) => ({ ...piece, group, isFitted: false })),
    ])
    .map((piece, place) => ({
      ...piece,
      bit: 1 << place,
      groupIndex: groups.findIndex(({ name }) => name === piece.group),
    }))
    .toSorted((a, b) => a.height - b.height || a.groupIndex - b.groupIndex || compareText(a.id, b.id));
  const fitted = named.filter(({ isFitted }) => isFitted);
  const readBefore = named.filter(({ isFitted }) => !isFitted);
  const nowInPack = fitted.reduce((bits, { bit }) => bits | bit, 0);
  const removals: Removal[] = [];
  for (let changes = 0; changes <= fitted.length; changes++) {
    for (const removed of choices(fitted, changes)) {
      const emptied = groups.map(() => 0);
      for (const { groupIndex } of removed) emptied[groupIndex]!++;
      for (let back = 0; back <= Math.min(changes, readBefore.length); back++) {
        for (const returned of choices(readBefore, back)) {
          const perGroup = emptied.slice();
          for (const { groupIndex } of returned) perGroup[groupIndex]!--;
          if (perGroup.some((slots) => slots < 0)) continue;
          removals.push({
            changes,
            removed,
            returned,
            inPack: [...removed, ...returned].reduce((bits, { bit }) => bits ^ bit, nowInPack),
            perGroup,
          });
        }
      }
    }
  }
  return removals;
}

/** Every choice of so many pieces, in the order of the list. */
function* choices<T>(from: readonly T[], size: number, start = 0): Generator<readonly T[]> {
  if (size === 0) yield [];
  for (let place = start; size > 0 && place <= from.length - size; place++) {
    for (const rest of choices(from, size - 1, place + 1)) yield [from[place]!, ...rest];
  }
}

export function idsOf(pieces: readonly NamedPiece[]): string[] {
  return pieces.map(({ id }) => id);
}

/** Equal for removals that take out and put back the same heights of the same groups. */
export function heightsOf({ removed, returned }: Removal): string {
  return [removed, returned]
    .map((pieces) => pieces.map(({ groupIndex, height }) => `${groupIndex}:${height}`).join(' '))
    .join(' < ');
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
