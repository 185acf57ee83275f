// The book's records of a pack put as a question to the optimiser: heights in whole steps, what is known as variances.
import { assert } from '../base/assert.ts';
import { accept, type Result } from '../base/result.ts';
import { formatLength } from '../quantities/format-amount.ts';
import { nextSwaps, type SwapAnswer } from '../selection/next-swaps.ts';
import type { SwapQuestion } from '../selection/swap-question.ts';
import { problemsInSwaps } from '../selection/verify.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { PieceKind } from '../specs/spec-sheet.ts';
import type { SavedPack } from '../specs/specs.contract.ts';
import { type Limits as Bounds, probabilityInside } from '../statistics/conformity.ts';
import { clearanceWithLoose, type GapKnowledge, type SpaceLeft, spaceLeftBy } from './gap.ts';
import { heightUncertainty_nm, type MockUpRecord, pieceName } from './pack-evidence.ts';
import type { Piece, PieceSource } from './packs.contract.ts';
import { targetOf } from './target-of-pack.ts';

export type PackToPlan = {
  readonly pack: SavedPack;
  readonly bounds: Bounds;
  readonly target: number | null;
  readonly fitted: ReadonlyArray<{ readonly slotId: number; readonly piece: Piece }>;
  readonly loosePieces: readonly Piece[];
  readonly cans: ReadonlyArray<{ canId: number; kind: PieceKind; outline: string; height_nm: number; count: number }>;
  /** Every mock-up of the pack, oldest first. */
  readonly records: readonly MockUpRecord[];
  readonly settings: Settings;
};

/** A loose piece the optimiser may choose, and where it comes from. */
export type Choice = {
  readonly id: string;
  readonly kind: PieceKind;
  readonly outline: string;
  readonly height_nm: number;
  readonly count: number;
  readonly heightFrom: Piece['heightFrom'];
  readonly label: string;
  readonly from: PieceSource;
};

/** How many equally good sets are named, to be weighed against the family's placement rules. */
const setsWeighed = 24;

/** Everything loose that fits an adjuster slot of the pack. */
export function choicesOf({ pack, loosePieces, cans, settings }: PackToPlan): Choice[] {
  const shown = (height_nm: number) => formatLength(height_nm, settings.lengthUnit, undefined, settings.decimalMark);
  const adjusters = pack.slots.filter((slot) => slot.isAdjuster);
  const fits = (each: { kind: PieceKind; outline: string }) =>
    adjusters.some((slot) => slot.kind === each.kind && slot.outline === each.outline);
  const pieces = loosePieces.filter(fits).map(
    (piece): Choice => ({
      ...piece,
      id: pieceName(piece.pieceId),
      count: 1,
      label: piece.tag || 'loose',
      from: { pieceId: piece.pieceId },
    }),
  );
  const fromCans = cans.filter(fits).map(
    (can): Choice => ({
      ...can,
      id: `can ${can.canId}`,
      heightFrom: 'measured',
      label: `can ${shown(can.height_nm)}`,
      from: { canId: can.canId },
    }),
  );
  const seen = new Set<string>();
  const catalogue = adjusters.flatMap(({ kind, outline, catalogue_nm }) =>
    catalogue_nm.flatMap((height_nm): Choice[] => {
      const id = `catalogue ${kind} ${outline} ${height_nm}`;
      if (seen.has(id)) return [];
      seen.add(id);
      const count = adjusters.filter((slot) => slot.kind === kind && slot.outline === outline).length;
      return [
        {
          id,
          kind,
          outline,
          height_nm,
          count,
          heightFrom: 'catalogue',
          label: 'catalogue',
          from: { catalogue_nm: height_nm },
        },
      ];
    }),
  );
  return [...pieces, ...fromCans, ...catalogue];
}

const classOf = (heightFrom: Piece['heightFrom']): number => (heightFrom === 'measured' ? 0 : 1);

/**
 * So many pieces of a pack are weighed one by one, fitted ones and those read before together: the time doubles with
 * each. Beyond it a loose piece counts at its measured height, as one that was never read.
 */
const mostNamed = 12;

/** The optimiser's answer, its clearances in steps of `step_nm`. */
export function searchSwaps(
  asked: PackToPlan,
  knowledge: GapKnowledge,
  choices: readonly Choice[],
): Result<{ answer: SwapAnswer; step_nm: number }> {
  const { bounds, settings } = asked;
  const { groups, staying } = groupsOf(asked, choices);
  const heights_nm = groups.flatMap(({ fitted, readBefore, loose }) =>
    [...fitted, ...readBefore, ...loose].map((each) => each.height_nm),
  );
  const step_nm = heights_nm.reduce(greatestCommonDivisor, 0) || 1;
  const inSteps = <T extends { height_nm: number }>({ height_nm, ...rest }: T) => ({
    ...rest,
    height: height_nm / step_nm,
  });
  // The optimiser counts the named pieces through the groups, in each the fitted ones and then those read before.
  const named = groups.flatMap(({ fitted, readBefore }) => [...fitted, ...readBefore]);
  const spaces = new Map<number, SpaceLeft>();
  const spaceAbove = (inPack: number): SpaceLeft => {
    const known = spaces.get(inPack);
    if (known) return known;
    const names = named.filter((_, i) => (inPack >> i) & 1).map(({ id }) => id);
    const space = spaceLeftBy(knowledge, [...staying, ...names]);
    // Every named piece was in a mock-up that is evidence, so only a bug could be refused here.
    if (!space.ok) throw new Error(space.refusal.message);
    spaces.set(inPack, space.value);
    return space.value;
  };
  const ownVariance_nm2 = (['measured', 'catalogue'] as const).map((from) => heightUncertainty_nm(from, settings) ** 2);
  const [lower, upper] = [bounds.lower, bounds.upper].map((limit) => (limit === null ? null : limit / step_nm)) as [
    number | null,
    number | null,
  ];
  const question: SwapQuestion = {
    groups: groups.map(({ name, fitted, readBefore, loose }) => ({
      name,
      fitted: fitted.map(inSteps),
      readBefore: readBefore.map(inSteps),
      loose: loose.map(inSteps),
    })),
    predict: (inPack, addedPerClass) => {
      const space = spaceAbove(inPack);
      const count = addedPerClass.reduce((sum, added) => sum + added, 0);
      const variances = addedPerClass.reduce((sum, added, i) => sum + added * (ownVariance_nm2[i] ?? 0), 0);
      const { mean, standardDeviation } = clearanceWithLoose(space, { count, heights: 0, variances });
      return { spaceLeft: mean / step_nm, variance: (standardDeviation / step_nm) ** 2 };
    },
    band: {
      lower,
      upper,
      chance: (clearance, variance) => probabilityInside(clearance, Math.sqrt(variance), { lower, upper }),
    },
    target: targetOf(asked) / step_nm,
    setsWanted: setsWeighed,
  };
  const answer = nextSwaps(question);
  if (!answer.ok) return answer;
  // Added up again by code that shares nothing with the search: a plan that does not add up never reaches the bench.
  const problems = problemsInSwaps(question, answer.value);
  assert(problems.length === 0, problems.join(' '));
  return accept({ answer: answer.value, step_nm });
}

function groupsOf({ pack, fitted, records }: PackToPlan, choices: readonly Choice[]) {
  const inPack = pack.slots.flatMap((slot) => {
    const piece = fitted.find((each) => each.slotId === slot.slotId)?.piece;
    return piece ? [{ isAdjuster: slot.isAdjuster, piece }] : [];
  });
  const adjusters = inPack.filter(({ isAdjuster }) => isAdjuster).map(({ piece }) => piece);
  const groupName = (each: { kind: PieceKind; outline: string }) => `${each.outline} ${each.kind}`;
  const wasRead = new Set(
    records.flatMap((record) => (record.read ? record.pieces : [])).map((piece) => pieceName(piece.pieceId)),
  );
  const readBefore = choices
    .filter((choice) => wasRead.has(choice.id))
    .slice(0, Math.max(0, mostNamed - adjusters.length));
  const plain = choices.filter((choice) => !readBefore.includes(choice));
  return {
    staying: inPack.filter(({ isAdjuster }) => !isAdjuster).map(({ piece }) => pieceName(piece.pieceId)),
    groups: [...new Set(adjusters.map(groupName))].map((name) => ({
      name,
      fitted: adjusters
        .filter((piece) => groupName(piece) === name)
        .map((piece) => ({ id: pieceName(piece.pieceId), height_nm: piece.height_nm })),
      readBefore: readBefore
        .filter((choice) => groupName(choice) === name)
        .map(({ id, height_nm }) => ({ id, height_nm })),
      loose: plain
        .filter((choice) => groupName(choice) === name)
        .map(({ id, height_nm, count, heightFrom }) => ({
          id,
          height_nm,
          count,
          uncertaintyClass: classOf(heightFrom),
        })),
    })),
  };
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
