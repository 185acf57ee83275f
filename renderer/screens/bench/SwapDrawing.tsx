// The pack as it is and as a planned swap would leave it, in one section.
import type { SwapOption } from '../../../app/packs/packs.contract.ts';
import { usePack } from './at-check.ts';
import { PackDrawing } from './PackDrawing.tsx';
import { type Change, stackAfter, stackNow } from './pack-stack.ts';

export function SwapDrawing({ option }: { option: SwapOption }) {
  const pack = usePack();
  const mockUp = pack.mockUps.at(-1);
  if (!mockUp) return null;
  const pieces = mockUp.pieces.map(({ piece }) => piece);
  const moved = option.moved.flatMap(({ toSlotId, pieceId }): Change[] => {
    const piece = pieces.find((each) => each.pieceId === pieceId);
    return piece ? [{ slotId: toSlotId, height_nm: piece.height_nm, tag: piece.tag, isMoved: true }] : [];
  });
  const entering = option.in.map(({ slotId, height_nm, label }): Change => ({ slotId, height_nm, tag: label }));
  const leaving = option.out.map(({ slotId, piece }): Change => ({ slotId, height_nm: piece.height_nm, tag: '' }));
  return (
    <PackDrawing
      now={stackNow(pack, mockUp, mockUp.read?.mean_nm ?? null, leaving)}
      planned={stackAfter(pack, mockUp, option.predicted_nm, [...entering, ...moved])}
    />
  );
}
