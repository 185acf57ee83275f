// What a mock-up changed in its pack.
import type { MockUp, Piece } from './packs.contract.ts';
import { slotName } from './slot-name.ts';

type Slots = ReadonlyArray<{ readonly slotId: number; readonly kind: string }>;
type Filled = ReadonlyArray<{ readonly slotId: number; readonly piece: Pick<Piece, 'pieceId' | 'height_nm'> }>;

/** "steel 2: 76.5 → 83.0", a slot each; none where nothing changed or nothing was there to change. */
export function changesBetween(
  slots: Slots,
  before: Filled,
  now: Filled,
  write: (height_nm: number) => string,
): string[] {
  return slots.flatMap(({ slotId }, index) => {
    const was = before.find((each) => each.slotId === slotId)?.piece;
    const is = now.find((each) => each.slotId === slotId)?.piece;
    if (!was || !is || was.pieceId === is.pieceId) return [];
    return [`${slotName(slots, index)}: ${write(was.height_nm)} → ${write(is.height_nm)}`];
  });
}

/** What the mock-up at this place changed, or what was noted where it changed no plate; nothing as found. */
export function changeLines(
  slots: Slots,
  mockUps: readonly Pick<MockUp, 'pieces' | 'note'>[],
  index: number,
  write: (height_nm: number) => string,
): string[] {
  const [before, now] = [mockUps[index - 1], mockUps[index]];
  if (!before || !now) return [];
  const changes = changesBetween(slots, before.pieces, now.pieces, write);
  return changes.length > 0 || now.note === '' ? changes : [now.note];
}
