// A pack of a spec sheet, drawn: to scale where every height is known, else in its order only, and it says which.
import type { Chart } from '../../../app/charts/shapes.ts';
import type { StackPiece } from '../../../app/charts/stack.ts';
import { stackUp } from '../../../app/charts/stack-up.ts';
import { slotName } from '../../../app/packs/slot-name.ts';
import type { Check, Pack } from '../../../app/specs/spec-sheet.ts';

const lineHeight = 22;
// Any one height: the drawing then tells the order and nothing else.
const evenHeight_nm = 2_000_000;

/** `clearance_nm` is what the sheet asks for, drawn where the pack is drawn to scale. */
export function drawPack(
  pack: Pick<Pack, 'name' | 'slots'>,
  clearance_nm: number | null,
  write: (length_nm: number) => string,
): { readonly chart: Chart; readonly caption: string } {
  const isToScale = pack.slots.every((slot) => slot.nominal_nm !== null);
  const pieces = pack.slots.map(
    (slot, index): StackPiece => ({
      kind: slot.kind,
      label: slotName(pack.slots, index),
      height_nm: (isToScale ? slot.nominal_nm : null) ?? evenHeight_nm,
    }),
  );
  const chart = stackUp(
    { pieces, clearance_nm: isToScale ? clearance_nm : null },
    {
      name: '',
      width: 248,
      height: lineHeight * (pieces.length + 2),
      medium: 'screen',
      write: isToScale ? write : () => '',
    },
  );
  if (isToScale) return { chart, caption: 'To scale, piston at the bottom.' };
  const names = pieces.map(({ label }) => label).join(', ');
  const title = `${pack.name} in its order, not to scale, from the piston up: ${names}.`;
  return { chart: { ...chart, title }, caption: 'Piston at the bottom. Order only: some heights are measured.' };
}

/** The clearance a pack's check aims at: its target, or the middle of its range. */
export function clearanceAsked(packName: string, checks: readonly Check[]): number | null {
  const check = checks.find((each) => each.packName === packName && each.quantity === 'length');
  if (check?.limits.kind === 'target') return check.limits.target;
  return check?.limits.kind === 'range' ? (check.limits.low + check.limits.high) / 2 : null;
}
