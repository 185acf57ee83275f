// The plates of an outline by height: one square a plate, so that each can be counted, on an axis of thickness.
import { tickStep } from 'd3-array';
import type { AmountWords } from './amounts.ts';
import { type PlateMark, plateMarkShapes, plateMarks } from './plate-mark.ts';
import { type Chart, line, round, type Shape, text, textSizes } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type PlateCount = { readonly height_nm: number; readonly mark: PlateMark; readonly count: number };

export type HistogramRoom = {
  readonly width: number;
  /** The most room for the squares above the axis, at least five of them (80); few plates take less. */
  readonly height: number;
  /** The narrowest class a column may stand for; columns get wider when the plates spread further. */
  readonly class_nm: number;
};

/** A column stands for the heights nearer to its middle than to the next one's; half way goes up. */
type Column = { readonly middle_nm: number; readonly counts: ReadonlyMap<PlateMark, number>; readonly count: number };

const cell = 16;
const room = { axis: 28, side: 8 } as const;
const leastSquares = 5;
const widerBy = [1, 2, 4, 10, 20, 40, 100, 200, 400, 1000];

/**
 * Squares over an axis of thickness, the usable ones at the foot of a column. Where a column is taller than the room,
 * a square stands for 2, 5, 10 … plates and the picture says so; a begun square is drawn whole.
 */
export function plateHistogram(
  plates: readonly PlateCount[],
  words: AmountWords,
  { width, height, class_nm }: HistogramRoom,
): Chart {
  const present = plates.filter((each) => each.count > 0);
  const heights = present.map((each) => each.height_nm);
  const [least, most] = heights.length === 0 ? [0, 0] : [Math.min(...heights), Math.max(...heights)];
  const fits = Math.max(1, Math.floor((width - 2 * room.side) / cell));
  const column_nm = class_nm * columnFactor((most - least) / class_nm, fits);
  const columns = columnsOf(present, column_nm);
  const counts = columns.map((column) => [...column.counts.values()]);
  const each = platesPerSquare(counts, Math.floor(height / cell));
  const highest = Math.max(leastSquares, ...counts.map((column) => squaresHigh(column, each)));
  const foot = Math.min(height, highest * cell);
  const axis = axisOf(least, most, column_nm, fits);
  const x = (amount: number) => round(room.side + ((amount - axis.from) / column_nm) * cell);

  const shapes: Shape[] = columns.flatMap((column) => {
    let stacked = 0;
    return plateMarks.flatMap((mark) =>
      Array.from({ length: squaresHigh([column.counts.get(mark) ?? 0], each) }, () => {
        stacked += 1;
        return plateMarkShapes(mark, x(column.middle_nm) - 7, foot - stacked * cell, 14);
      }).flat(),
    );
  });
  const base = foot + 0.5;
  shapes.push(line(0, base, width, base, { stroke: 'ink', strokeWidth: 1 }), ...ticks(axis, x, base, words, width));
  if (each > 1) shapes.push(text(0, textSizes.screen.small, `one square: ${each} plates`, { role: 'quiet' }));
  return { medium: 'screen', width, height: foot + room.axis, title: sentence(columns, each, words), shapes };
}

/**
 * How many plates a square must stand for so that every column, begun squares whole, is at most `squares` high:
 * 1, 2, 5, 10, 20, 50 … Each column is its counts by mark; `squares` is at least the number of marks.
 */
export function platesPerSquare(columns: readonly (readonly number[])[], squares: number): number {
  const heightAt = (each: number) => Math.max(0, ...columns.map((counts) => squaresHigh(counts, each)));
  for (let decade = 1; ; decade *= 10) {
    for (const step of [1, 2, 5]) if (heightAt(step * decade) <= squares) return step * decade;
  }
}

function squaresHigh(counts: readonly number[], each: number): number {
  return counts.reduce((sum, count) => sum + Math.ceil(count / each), 0);
}

function columnFactor(classes: number, fits: number): number {
  return widerBy.find((factor) => classes / factor + 1 <= fits) ?? widerBy.at(-1)!;
}

function columnsOf(plates: readonly PlateCount[], column_nm: number): readonly Column[] {
  const byColumn = new Map<number, Map<PlateMark, number>>();
  for (const { height_nm, mark, count } of plates) {
    const middle_nm = Math.floor(height_nm / column_nm + 0.5) * column_nm;
    const counts = byColumn.get(middle_nm) ?? new Map<PlateMark, number>();
    counts.set(mark, (counts.get(mark) ?? 0) + count);
    byColumn.set(middle_nm, counts);
  }
  return [...byColumn]
    .map(([middle_nm, counts]) => ({
      middle_nm,
      counts,
      count: [...counts.values()].reduce((sum, each) => sum + each, 0),
    }))
    .toSorted((one, other) => one.middle_nm - other.middle_nm);
}

type ThicknessAxis = { readonly from: number; readonly to: number; readonly column_nm: number };

/** As many columns as fit, the plates in the middle of them, beginning at a whole column. */
function axisOf(least: number, most: number, column_nm: number, fits: number): ThicknessAxis {
  const [first, last] = [Math.floor(least / column_nm + 0.5), Math.floor(most / column_nm + 0.5)];
  const spare = Math.max(0, fits - (last - first + 1));
  const from = Math.max(0, first - Math.floor(spare / 2)) * column_nm;
  return { from: from - column_nm / 2, to: from + (fits - 0.5) * column_nm, column_nm };
}

function ticks(
  { from, to, column_nm }: ThicknessAxis,
  x: (amount: number) => number,
  base: number,
  words: AmountWords,
  width: number,
): readonly Shape[] {
  const widest = textWidth(words.short(to), textSizes.screen.small) + 16;
  const room_nm = (widest / cell) * column_nm;
  // A round figure of the shop's unit, no closer than its label is wide.
  const wanted = tickStep(0, (to - from) / words.perUnit, Math.max(1, (to - from) / room_nm));
  const step = Math.max(wanted * words.perUnit, column_nm);
  const shapes: Shape[] = [];
  for (let index = Math.ceil((2 * from) / step); (index * step) / 2 <= to; index += 1) {
    const at = (index * step) / 2;
    const isNamed = index % 2 === 0;
    shapes.push(line(x(at), base, x(at), base + (isNamed ? 8 : 4), { stroke: 'ink', strokeWidth: 1 }));
    const name = words.short(at);
    const half = textWidth(name, textSizes.screen.small) / 2;
    if (isNamed && x(at) - half >= 0 && x(at) + half <= width) {
      shapes.push(text(x(at), base + 24, name, { role: 'quiet', anchor: 'middle' }));
    }
  }
  return shapes;
}

function sentence(columns: readonly Column[], each: number, words: AmountWords): string {
  const total = columns.reduce((sum, column) => sum + column.count, 0);
  const [first, last] = [columns[0], columns.at(-1)];
  if (!first || !last) return 'No plates to show.';
  const parts = plateMarks.flatMap((mark) => {
    const count = columns.reduce((sum, column) => sum + (column.counts.get(mark) ?? 0), 0);
    return count === 0 ? [] : [`${count} ${mark}`];
  });
  const span =
    first === last
      ? `at ${words.short(first.middle_nm)}`
      : `from ${words.short(first.middle_nm)} to ${words.short(last.middle_nm)}`;
  const scale = each === 1 ? '' : ` One square is ${each} plates.`;
  return `${total} ${total === 1 ? 'plate' : 'plates'} ${span}: ${parts.join(', ')}.${scale}`;
}
