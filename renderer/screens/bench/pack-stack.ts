// A mock-up as the drawings want it: each piece with its slot's name, and what a planned swap takes out and puts in.
import type { Stack, StackPiece } from '../../../app/charts/stack.ts';
import type { MockUp, PackOfJob } from '../../../app/packs/packs.contract.ts';
import { slotName } from '../../../app/packs/slot-name.ts';

/** What a slot will hold; a piece that only moves there from another slot is not new. */
export type Change = {
  readonly slotId: number;
  readonly height_nm: number;
  readonly tag: string;
  readonly isMoved?: boolean;
};

/** What sits in the pack, with what leaves and what stays marked. */
export function stackNow(
  pack: PackOfJob,
  mockUp: MockUp,
  clearance_nm: number | null,
  changes: readonly Change[],
): Stack {
  return stackOf(pack, clearance_nm, (slotId) => {
    const placed = mockUp.pieces.find((each) => each.slotId === slotId);
    if (!placed) return null;
    const leaves = changes.some((change) => change.slotId === slotId && !change.isMoved);
    const { height_nm, tag } = placed.piece;
    return { height_nm, tag, ...(leaves ? { change: 'leaves' as const } : {}) };
  });
}

/** What the last rebuild put in is marked. */
export function stackBuilt(pack: PackOfJob, mockUp: MockUp, clearance_nm: number | null): Stack {
  return stackOf(pack, clearance_nm, (slotId) => {
    const placed = mockUp.pieces.find((each) => each.slotId === slotId);
    if (!placed) return null;
    const { height_nm, tag } = placed.piece;
    return { height_nm, tag, ...(placed.isNew ? { change: 'enters' as const } : {}) };
  });
}

export function stackAfter(
  pack: PackOfJob,
  mockUp: MockUp,
  clearance_nm: number | null,
  changes: readonly Change[],
): Stack {
  return stackOf(pack, clearance_nm, (slotId) => {
    const change = changes.find((each) => each.slotId === slotId);
    if (change) {
      const { height_nm, tag, isMoved } = change;
      return { height_nm, tag, ...(isMoved ? {} : { change: 'enters' as const }) };
    }
    const piece = mockUp.pieces.find((each) => each.slotId === slotId)?.piece;
    return piece ? { height_nm: piece.height_nm, tag: piece.tag } : null;
  });
}

type Placed = { height_nm: number; tag: string; change?: 'leaves' | 'enters' };

export function stackOf(
  pack: Pick<PackOfJob, 'slots'>,
  clearance_nm: number | null,
  pieceIn: (slotId: number) => Placed | null,
): Stack {
  const pieces = pack.slots.flatMap((slot, index): StackPiece[] => {
    const placed = pieceIn(slot.slotId);
    if (!placed) return [];
    const { tag, ...rest } = placed;
    return [{ kind: slot.kind, label: slotName(pack.slots, index), ...rest, ...(tag === '' ? {} : { tag }) }];
  });
  return { pieces, clearance_nm };
}

/** All that sits in it, so that gap − sum = clearance can be said. */
export function heightsOf(stack: Stack): number {
  return stack.pieces.reduce((sum, piece) => sum + piece.height_nm, 0);
}
