// The labels beside a stack: each wants to stand level with its piece, and none may lie on another.
import type { Medium, PaintRole, Shape, TextSize, TextStyle } from './shapes.ts';
import { line, round, text, textSizes } from './shapes.ts';
import { spread } from './spread.ts';

/** One label beside the stack: how tall it is, the height it wants, and how it is drawn where it ends up. */
export type StackLabel = {
  readonly wanted: number;
  readonly height: number;
  readonly draw: (y: number) => readonly Shape[];
};

const lineHeight = 1.15;

/** The height of `lines` lines of text, with a hair of air round them. */
export function blockHeight(medium: Medium, size: TextSize, lines = 1): number {
  return textSizes[medium][size] * (lineHeight * (lines - 1) + 1) + 1;
}

/** Lines of text centred on `y`. */
export function textBlock(
  x: number,
  y: number,
  lines: readonly string[],
  medium: Medium,
  style: TextStyle,
): readonly Shape[] {
  const size = textSizes[medium][style.size ?? 'small'];
  const first = y - ((lines.length - 1) / 2) * lineHeight * size + 0.27 * size;
  return lines.map((words, index) => text(x, round(first + index * lineHeight * size), words, style));
}

/** A fine line from the piece to a label that had to move away from it. */
export function leader(fromX: number, fromY: number, toX: number, toY: number, unit: number): readonly Shape[] {
  if (Math.abs(toY - fromY) <= 2 * unit) return [];
  const role: PaintRole = 'mark';
  return [line(fromX, round(fromY), toX, round(toY), { stroke: role, strokeWidth: 0.75 * unit })];
}

/** The labels, given from top to bottom, drawn as near as they can stand to where they want to. */
export function drawLabels(labels: readonly StackLabel[], height: number): readonly Shape[] {
  const halves = labels.map(({ wanted, height: own }) => ({ wanted, before: own / 2, after: own / 2 }));
  const places = spread(halves, 0, height);
  return labels.flatMap((label, index) => label.draw(places[index]!));
}

/** The least height in which these labels stand clear of each other. */
export function heightOfLabels(labels: readonly StackLabel[]): number {
  return labels.reduce((sum, label) => sum + label.height, 0);
}
