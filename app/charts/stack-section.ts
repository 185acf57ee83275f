// The drawn parts of a stack in section: plates, ring, and the two lines that hold the clearance.
import { type Hatch, line, type Medium, type PaintRole, path, type Rect, rect, round, type Shape } from './shapes.ts';
import type { PieceKind, PlacedPiece } from './stack.ts';

const fills: Record<PieceKind, { readonly fill: PaintRole; readonly hatch?: Hatch }> = {
  'apply plate': { fill: 'metal', hatch: 'backing' },
  'backing plate': { fill: 'metal', hatch: 'backing' },
  'wave plate': { fill: 'metal' },
  'snap ring': { fill: 'metal' },
  steel: { fill: 'steel', hatch: 'steel' },
  friction: { fill: 'friction', hatch: 'friction' },
};

/**
 * A piece cut through between two sides. What leaves is an empty dashed outline; what enters is solid in the colour of
 * the next act, on paper a heavy outline round its own hatch.
 */
export function pieceInSection(
  { piece, top, bottom }: PlacedPiece,
  left: number,
  right: number,
  { medium, unit }: { readonly medium: Medium; readonly unit: number },
): readonly Shape[] {
  const outline = (paint: Omit<Rect, 'kind' | 'x' | 'y' | 'width' | 'height'>) =>
    rect(round(left), round(top), round(right - left), round(bottom - top), { depicts: 'piece', ...paint });
  if (piece.change === 'leaves') return [outline({ stroke: 'ink', strokeWidth: 2 * unit, dash: [5 * unit, 3 * unit] })];
  const isNew = piece.change === 'enters';
  if (isNew && medium === 'screen') return [outline({ fill: 'act', stroke: 'act', strokeWidth: 2 * unit })];
  const shape = outline({
    ...fills[piece.kind],
    stroke: isNew ? 'ink' : 'quiet',
    strokeWidth: (isNew ? 2 : 1) * unit,
  });
  return piece.kind === 'wave plate' ? [shape, wave(left, right, top, bottom, unit)] : [shape];
}

/** The line that tells a wave plate from a flat one. */
function wave(left: number, right: number, top: number, bottom: number, unit: number): Shape {
  const middle = (top + bottom) / 2;
  const swing = (bottom - top) * 0.6;
  const step = (right - left) / 4;
  const bends = [0, 1, 2, 3].map((index) => {
    const turn = middle + (index % 2 === 0 ? -swing : swing);
    return `Q${round(left + (index + 0.5) * step)} ${round(turn)} ${round(left + (index + 1) * step)} ${round(middle)}`;
  });
  return path(`M${round(left)} ${round(middle)}${bends.join('')}`, { stroke: 'quiet', strokeWidth: 1.25 * unit });
}

/** The two lines across the ends of the clearance, drawn out to where its figure stands. */
export function clearanceLines(
  { top, bottom }: { readonly top: number; readonly bottom: number },
  fromX: number,
  toX: number,
  stroke: PaintRole,
  unit: number,
): readonly Shape[] {
  return [top, bottom].map((y) =>
    line(fromX, round(y), toX, round(y), { depicts: 'clearance', stroke, strokeWidth: unit }),
  );
}

/** Arrows that measure the clearance: inside it where it is wide enough for both heads, else pressing on it from outside. */
export function clearanceArrows(
  { top, bottom }: { readonly top: number; readonly bottom: number },
  x: number,
  stroke: PaintRole,
  unit: number,
): readonly Shape[] {
  const [shaft, head] = [clearanceArrow * unit, 4 * unit];
  const isInside = bottom - top >= 2 * shaft;
  const arrow = (tip: number, up: boolean) => {
    const back = up ? shaft : -shaft;
    const barb = up ? 1.5 * head : -1.5 * head;
    const outline = `M${x} ${round(tip + back)}V${round(tip)}m${-head} ${barb}l${head} ${-barb}l${head} ${barb}`;
    return path(outline, { stroke, strokeWidth: unit });
  };
  return isInside ? [arrow(top, true), arrow(bottom, false)] : [arrow(top, false), arrow(bottom, true)];
}

/** How far the arrows stand out above and below a clearance. */
export function clearanceReach(
  { top, bottom }: { readonly top: number; readonly bottom: number },
  unit: number,
): number {
  return bottom - top >= 2 * clearanceArrow * unit ? 0 : clearanceArrow * unit;
}

const clearanceArrow = 13;

/** A level arrow from one place to another, for what goes out and what comes in. */
export function levelArrow(fromX: number, toX: number, y: number, stroke: PaintRole, unit: number): Shape {
  const head = (fromX < toX ? -5 : 5) * unit;
  const outline = `M${fromX} ${round(y)}H${toX}m${head} ${-4 * unit}l${-head} ${4 * unit}l${head} ${4 * unit}`;
  return path(outline, { stroke, strokeWidth: 2 * unit });
}
