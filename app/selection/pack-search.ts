// One pack laid out for the search: every way to empty slots, and every sum that can be put into them.
import { type Draw, type Lot, type ReachableSums, reachableSums, type Take } from './reachable-sums.ts';
import type { AdjusterGroup, LoosePiece } from './swap-question.ts';

/** One way to take fitted pieces out. */
export type Removal = {
  readonly changes: number;
  readonly removed: readonly string[];
  /** Bits of the fitted pieces that stay, in the caller's order. */
  readonly kept: number;
  readonly perGroup: readonly number[];
  /** Equal for removals that take out the same heights of the same groups. */
  readonly heights: string;
  /** The clearance before anything is added. */
  readonly clearance: number;
};

export type AddedPiece = { readonly id: string; readonly group: string; readonly height: number };

export type PackSearch = {
  readonly groups: readonly AdjusterGroup[];
  /** Fewest first; among equally many, those that take out thinner pieces come first. */
  readonly removals: readonly Removal[];
  readonly reachable: ReachableSums;
  /** Every draw with so many pieces of each group. */
  readonly drawsOf: (perGroup: readonly number[]) => readonly Draw[];
  /** The loose pieces behind a set of lots, thinnest first; equal ones in the order of their names. */
  readonly piecesOf: (set: readonly Take[]) => readonly AddedPiece[];
};

/** Lays out the search, or null where the heights are too finely divided for it. */
export function layOut(
  askedGroups: readonly AdjusterGroup[],
  clearanceKeeping: (kept: number) => number,
): PackSearch | null {
  // Sorted by name and height, so that the order in which things were listed never decides a tie.
  const groups = askedGroups.toSorted((a, b) => compareText(a.name, b.name));
  const slots = groups.map((group) => group.fitted.length);
  const bins = collectLots(groups);
  const classes = 1 + Math.max(0, ...bins.map(({ lot }) => lot.uncertaintyClass));
  const lots = bins.map(({ lot }) => lot);
  const reachable = reachableSums(lots, slots, classes);
  if (reachable === null) return null;
  const loose = new Map(bins.map(({ lot, pieces }) => [lot, pieces]));
  const draws = Map.groupBy(reachable.draws, ({ perGroup }) => perGroup.join());
  return {
    groups,
    removals: listRemovals(askedGroups, groups, clearanceKeeping),
    reachable,
    drawsOf: (perGroup) => draws.get(perGroup.join()) ?? [],
    piecesOf: (set) =>
      set.toReversed().flatMap(({ lot: index, pieces }) => {
        const lot = reachable.lots[index]!;
        const group = groups[lot.group]!.name;
        return firstPieces(loose.get(lot)!, pieces).map((id) => ({ id, group, height: lot.height }));
      }),
  };
}

function collectLots(groups: readonly AdjusterGroup[]): { lot: Lot; pieces: readonly LoosePiece[] }[] {
  return groups.flatMap(({ loose, fitted }, group) => {
    if (fitted.length === 0) return [];
    const equal = Map.groupBy(loose, ({ height, uncertaintyClass }) => `${height} ${uncertaintyClass}`);
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

function listRemovals(
  askedGroups: readonly AdjusterGroup[],
  groups: readonly AdjusterGroup[],
  clearanceKeeping: (kept: number) => number,
): Removal[] {
  const fitted = askedGroups
    .flatMap(({ name, fitted }) => fitted.map((piece) => ({ ...piece, group: name })))
    .map((piece, place) => ({ ...piece, place, groupIndex: groups.findIndex(({ name }) => name === piece.group) }))
    .toSorted((a, b) => a.height - b.height || a.groupIndex - b.groupIndex || compareText(a.id, b.id));
  const removals: Removal[] = [];
  const all = 2 ** fitted.length - 1;
  const takeOut = (from: number, removed: readonly (typeof fitted)[number][], wanted: number, kept: number) => {
    if (removed.length === wanted) {
      removals.push({
        changes: wanted,
        removed: removed.map(({ id }) => id),
        kept,
        perGroup: groups.map((_, group) => removed.filter(({ groupIndex }) => groupIndex === group).length),
        heights: removed.map(({ groupIndex, height }) => `${groupIndex}:${height}`).join(' '),
        clearance: clearanceKeeping(kept),
      });
      return;
    }
    for (let index = from; index <= fitted.length - wanted + removed.length; index++) {
      const piece = fitted[index]!;
      takeOut(index + 1, [...removed, piece], wanted, kept & ~(1 << piece.place));
    }
  };
  for (let changes = 0; changes <= fitted.length; changes++) takeOut(0, [], changes, all);
  return removals;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
