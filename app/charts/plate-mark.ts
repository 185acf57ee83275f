// The square that says what may be done with a plate before its word does. These squares mean nothing else anywhere.
import { type Chart, type PaintRole, path, rect, round, type Shape } from './shapes.ts';

/** planned: singled out for the hand's next act. The others are what is known of a plate. */
export const plateMarks = ['free', 'planned', 'in a unit', 'read again', 'do not use'] as const;
export type PlateMark = (typeof plateMarks)[number];

/**
 * The shapes in a square of `size` with its corner at `x`, `y`: filled free, ringed with a core planned, open in a
 * unit, dashed read again, open with one stroke do not use.
 */
export function plateMarkShapes(mark: PlateMark, x: number, y: number, size: number): readonly Shape[] {
  const at = (share: number) => round(share * size);
  const square = (inset: number, paint: Parameters<typeof rect>[4]) =>
    rect(round(x + at(inset)), round(y + at(inset)), at(1 - 2 * inset), at(1 - 2 * inset), {
      depicts: 'piece',
      ...paint,
    });
  const open = (stroke: PaintRole, strokeWidth: number, dash?: readonly number[]) =>
    square(1.5 / 14, { stroke, strokeWidth: at(strokeWidth / 14), ...(dash && { dash }) });
  switch (mark) {
    case 'free':
      return [square(1 / 14, { fill: 'ink' })];
    case 'planned':
      return [
        square(2 / 14, { stroke: 'act', strokeWidth: at(2 / 14) }),
        rect(round(x + at(5 / 14)), round(y + at(5 / 14)), at(4 / 14), at(4 / 14), { fill: 'act' }),
      ];
    case 'in a unit':
      return [open('mark', 1)];
    case 'read again':
      return [open('ink', 1.5, [at(3 / 14), at(2 / 14)])];
    case 'do not use': {
      const [near, far] = [at(1.5 / 14), at(12.5 / 14)];
      const stroke = `M${round(x + near)} ${round(y + far)}L${round(x + far)} ${round(y + near)}`;
      return [open('quiet', 1), path(stroke, { stroke: 'quiet', strokeWidth: at(1 / 14) })];
    }
  }
}

/** The square as a chart of its own; its title is empty because the word always stands beside it. */
export function plateMark(mark: PlateMark, size: number): Chart {
  return { medium: 'screen', width: size, height: size, title: '', shapes: plateMarkShapes(mark, 0, 0, size) };
}
