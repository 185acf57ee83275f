// One figure over the clearance, with the limits, and where the pack stands today.
import { scaleLinear } from 'd3-scale';
import type { AmountWords, Limits } from './amounts.ts';
import { type Chart, circle, line, path, rect, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type OverClearanceFacts = {
  /** What is drawn: "Fill volume". */
  readonly name: string;
  /** At least two, from the smallest clearance on. */
  readonly points: ReadonlyArray<{ readonly clearance_nm: number; readonly value: number }>;
  readonly today: { readonly clearance_nm: number; readonly value: number };
  readonly limits: Limits;
  readonly write: (value: number) => string;
};

const room = { top: 28, bottom: 44, right: 16 };
const ticks = 4;

/** The line from nothing up, the limits as a band behind it, today as a ringed point with its value. */
export function overClearance(
  { name, points, today, limits, write }: OverClearanceFacts,
  words: AmountWords & { readonly unit: string },
  { width, height }: { readonly width: number; readonly height: number },
): Chart {
  const [first, last] = [points[0]?.clearance_nm ?? 0, points.at(-1)?.clearance_nm ?? 1];
  const most = Math.max(today.value, ...points.map(({ value }) => value));
  const y = scaleLinear([0, most * 1.1], [height - room.bottom, room.top]).nice(ticks);
  const marks = y.ticks(ticks);
  const left = Math.ceil(Math.max(...marks.map((mark) => textWidth(write(mark), 14)))) + 12;
  const x = scaleLinear([first, last], [left, width - room.right]);
  const floor = height - room.bottom;
  const shapes: Shape[] = [];
  const { low, high } = limits;
  if (low !== null || high !== null) {
    const from = round(x(low ?? first));
    const to = round(x(high ?? last));
    shapes.push(rect(from, room.top, to - from, floor - room.top, { depicts: 'limit', fill: 'well' }));
  }
  for (const mark of marks) {
    shapes.push(
      line(left, round(y(mark)), width - room.right, round(y(mark)), { stroke: 'line', strokeWidth: 1 }),
      text(left - 6, round(y(mark)) + 5, write(mark), { role: 'quiet', anchor: 'end' }),
    );
  }
  const inUnit = x.copy().domain([first / words.perUnit, last / words.perUnit]);
  for (const mark of inUnit.ticks(Math.max(2, Math.floor(width / 90)))) {
    shapes.push(
      line(round(inUnit(mark)), floor, round(inUnit(mark)), floor + 4, { stroke: 'mark', strokeWidth: 1 }),
      text(round(inUnit(mark)), floor + 19, words.short(mark * words.perUnit), { role: 'quiet', anchor: 'middle' }),
    );
  }
  const outline = points.map(({ clearance_nm, value }) => `${round(x(clearance_nm))} ${round(y(value))}`).join('L');
  const [atX, atY] = [round(x(today.clearance_nm)), round(y(today.value))];
  // Above the line on the side it comes up from, so that the words do not cross it.
  const isRising = (points.at(-1)?.value ?? 0) > (points[0]?.value ?? 0);
  const said = `today ${write(today.value)}`;
  const isLeft = isRising ? atX - 10 - textWidth(said, 14) > left : atX + 10 + textWidth(said, 14) > width - room.right;
  shapes.push(
    line(left, floor, width - room.right, floor, { stroke: 'mark', strokeWidth: 1 }),
    path(`M${outline}`, { depicts: 'fit', stroke: 'ink', strokeWidth: 2 }),
    circle(atX, atY, 6, { depicts: 'now', fill: 'ink', stroke: 'ground', strokeWidth: 2 }),
    text(isLeft ? atX - 10 : atX + 10, atY - 12, said, {
      weight: 'semibold',
      anchor: isLeft ? 'end' : 'start',
      halo: 'ground',
    }),
    text(0, 14, name, { weight: 'semibold' }),
    text(width - room.right, height - 6, `clearance, ${words.unit}`, { role: 'quiet', anchor: 'end' }),
  );
  const ends = [points[0], points.at(-1)].map((end) =>
    end ? `${write(end.value)} at ${words.full(end.clearance_nm)}` : '',
  );
  const title = `${name} over clearance: ${ends.join(', ')}; today ${write(today.value)} at ${words.full(today.clearance_nm)} ${words.unit}.`;
  return { medium: 'screen', width, height, title, shapes };
}
