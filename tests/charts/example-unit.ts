// The invented unit KX3 as charts see it: heights and limits in thou, turned into nanometres (1 thou = 25 400 nm).

import type { Chart, Rect, Text } from '../../app/charts/shapes.ts';
import type { PieceKind, StackPiece } from '../../app/charts/stack.ts';
import { boxesOverlap, textBox } from '../../app/charts/text-box.ts';

export const thou = (amount: number): number => Math.round(amount * 25_400);

export function piece(kind: PieceKind, height: number, more: Partial<StackPiece> = {}): StackPiece {
  return { kind, label: kind, height_nm: thou(height), ...more };
}

/** Forward as found: 911.0 − 320.0 − 309.0 − 250.0 = 32.0. */
export const forwardAsFound: readonly StackPiece[] = [
  piece('steel', 77, { label: 'steel 1', tag: 'A31' }),
  piece('friction', 79.5, { label: 'friction 1' }),
  piece('steel', 76.5, { label: 'steel 2', tag: 'A32', change: 'leaves' }),
  piece('friction', 80, { label: 'friction 2' }),
  piece('steel', 78, { label: 'steel 3', tag: 'A33' }),
  piece('friction', 80, { label: 'friction 3' }),
  piece('steel', 77.5, { label: 'steel 4', tag: 'A34' }),
  piece('friction', 80.5, { label: 'friction 4' }),
  piece('backing plate', 250),
];

/** One swap, 76.5 → 83.0, leaves 25.5. */
export const forwardPlanned: readonly StackPiece[] = forwardAsFound.map((each) =>
  each.change === 'leaves' ? piece('steel', 83, { label: 'steel 2', tag: 'A47', change: 'enters' }) : each,
);

export function textsOf(chart: Chart): readonly Text[] {
  return chart.shapes.filter((shape) => shape.kind === 'text');
}

export function piecesOf(chart: Chart): readonly Rect[] {
  return chart.shapes.filter((shape): shape is Rect => shape.kind === 'rect' && shape.depicts === 'piece');
}

/** Pairs of labels that lie on each other, as words. */
export function overlaps(chart: Chart): readonly string[] {
  const texts = textsOf(chart);
  return texts.flatMap((one, index) =>
    texts
      .slice(index + 1)
      .filter((other) => boxesOverlap(textBox(one, chart.medium), textBox(other, chart.medium)))
      .map((other) => `${one.text} on ${other.text}`),
  );
}

/** Labels that leave the chart at a side, as words. */
export function overhangs(chart: Chart): readonly string[] {
  return textsOf(chart)
    .filter((line) => {
      const box = textBox(line, chart.medium);
      return box.left < 0 || box.right > chart.width + 1e-9;
    })
    .map((line) => line.text);
}
