// The height of a plate as typed: one number, or several around it with blanks between; and the class it falls into.
import { accept, type Result, refuse } from '../base/result.ts';
import { type DecimalMark, formatLength } from '../quantities/format-amount.ts';
import { parseAmount } from '../quantities/parse-amount.ts';
import type { LengthUnit } from '../quantities/units.ts';
import type { PieceKind } from '../specs/spec-sheet.ts';

/** How the shop reads and writes lengths. */
export type LengthWords = { readonly lengthUnit: LengthUnit; readonly decimalMark: DecimalMark };

export type PlateHeight = {
  /** The mean of the points, to the nearest nanometre. */
  readonly height_nm: number;
  /** As typed, where there were several; empty where there was one. */
  readonly points_nm: readonly number[];
};

// Common practice, no source: outside of these a unit or a figure was mistyped. Plates between a fiftieth and four tenths
// of an inch; backing plates, apply plates and rings up to an inch.
const thinnest_nm = 508_000;
const thickestPlate_nm = 10_160_000;
const thickestPart_nm = 25_400_000;
const isPlate = (kind: PieceKind): boolean => kind === 'steel' || kind === 'friction' || kind === 'wave plate';

const mostPoints = 12;

/**
 * The height meant by `typed`: "77.0", "1 3/16 in", or points around the plate such as "77.0 77.5 77.0", where a unit
 * at the end counts for all. Refuses what is no length, what no plate of this kind can be, and more than 12 points.
 */
export function parsePlateHeight(typed: string, kind: PieceKind, words: LengthWords): Result<PlateHeight> {
  const whole = parsePoint(typed, kind, words);
  const parts = typed.trim().split(/\s+/);
  const unit = /\d/.test(parts.at(-1) ?? '') ? '' : (parts.pop() ?? '');
  if (whole.ok || parts.length < 2) {
    return whole.ok ? accept({ height_nm: whole.value, points_nm: [] }) : whole;
  }
  if (parts.length > mostPoints) return refuse('too-many', `Type at most ${mostPoints} points around a plate.`);
  const points_nm: number[] = [];
  for (const part of parts) {
    const point = parsePoint(`${part} ${unit}`.trim(), kind, words);
    if (!point.ok) return point;
    points_nm.push(point.value);
  }
  return accept({
    height_nm: Math.round(points_nm.reduce((sum, point) => sum + point, 0) / points_nm.length),
    points_nm,
  });
}

function parsePoint(typed: string, kind: PieceKind, { lengthUnit, decimalMark }: LengthWords): Result<number> {
  const height = parseAmount(typed, {
    quantity: 'length',
    unit: lengthUnit,
    decimalMark,
    largest: isPlate(kind) ? thickestPlate_nm : thickestPart_nm,
    what: `a ${kind}`,
  });
  if (height.ok && height.value < thinnest_nm) {
    const shown = `${formatLength(height.value, lengthUnit, undefined, decimalMark)} ${lengthUnit}`;
    return refuse('implausible', `“${typed}” would be ${shown}, too thin for a ${kind}: check it.`);
  }
  return height;
}

/** The whole class of this width nearest to a height; half way goes up. Lengths are whole nanometres above zero. */
export function classOfHeight(height_nm: number, class_nm: number): number {
  return Math.floor((2 * height_nm + class_nm) / (2 * class_nm)) * class_nm;
}
