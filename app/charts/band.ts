// Readings against their limits on one axis, large: on the bench and on a pack's page.
import { ticks } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import { type AmountWords, bandStretch } from './amounts.ts';
import { type Axis, arrow, type BandFacts, bandSentence, bar, beyond, clamp, type NamedAmount } from './band-axis.ts';
import {
  type Chart,
  circle,
  line,
  type Medium,
  type PaintRole,
  path,
  rect,
  round,
  type Shape,
  type Text,
  text,
  textSizes,
} from './shapes.ts';
import { boxesOverlap, textBox, textWidth } from './text-box.ts';

/** Room kept for an arrow where something lies off the scale. */
const edge = 12;
const markerPitch = 34;

/**
 * The large band: limits heavy, target dashed, hatched within `guard` of a limit, every reading a dot on the axis, and
 * above them *now* solid, *after the swap* open and dashed, *as found* an open dot, each with its ± bar.
 */
export function band(
  facts: BandFacts,
  words: AmountWords,
  { width, medium }: { readonly width: number; readonly medium: Medium },
): Chart {
  const unit = medium === 'paper' ? 0.61 : 1;
  const axis = largeAxis(facts, words, width, edge * unit);
  const markers = markersOf(facts);
  const rows = packRows(markers, axis, medium, unit);
  const base = (rows.count === 0 ? 8 : 28 + (rows.count - 1) * markerPitch) * unit;
  const floor = base + 44 * unit;
  const shapes: Shape[] = [
    ...bandGround(facts, axis, base, floor, unit),
    ...axisTicks(facts, axis, words, floor, unit),
    ...limitStrokes(facts, axis, base, floor, unit),
    ...axisLabels(facts, axis, words, floor, unit, { medium, width }),
    ...markers.flatMap((marker, index) => markerShapes(marker, axis, rows.row[index]!, unit)),
    ...stackedDots(facts.readings, axis, floor, unit),
  ];
  return { medium, width, height: round(floor + 56 * unit), title: bandSentence(facts, words), shapes };
}

function largeAxis(facts: BandFacts, words: AmountWords, width: number, margin: number): Axis {
  const sure = [facts.now, facts.predicted].filter((each) => each !== null);
  const asFound = facts.asFound === null ? [] : [facts.asFound];
  const shown = [...facts.readings, ...asFound, ...sure.map((each) => each.value)];
  const stretch = bandStretch(facts.limits, facts.target, shown, words.perUnit);
  const size = stretch.high - stretch.low;
  const ends = sure.flatMap((each) => [each.value - (each.expanded ?? 0), each.value + (each.expanded ?? 0)]);
  const from = Math.max(stretch.low - size, Math.min(stretch.low - 0.4 * size, ...shown, ...ends));
  const to = Math.min(stretch.high + size, Math.max(stretch.high + 0.4 * size, ...shown, ...ends));
  const scale = scaleLinear([from, to], [margin, width - margin]);
  return { x: (amount) => round(scale(amount)), left: margin, right: width - margin };
}

function bandGround(facts: BandFacts, axis: Axis, base: number, floor: number, unit: number): readonly Shape[] {
  const { low, high } = facts.limits;
  if (low === null && high === null) return [];
  const [from, to] = [low === null ? axis.left : axis.x(low), high === null ? axis.right : axis.x(high)];
  const top = base + 8 * unit;
  const shapes: Shape[] = [rect(from, top, to - from, floor - top, { fill: 'well' })];
  if (facts.guard === null || facts.guard <= 0) return shapes;
  // Where the two hatches meet the whole band is too close to call and is hatched once.
  const reach = Math.min(Math.abs(axis.x(facts.guard) - axis.x(0)), to - from);
  const fromLow = low === null ? [] : [[from, Math.min(from + reach, to)] as const];
  const fromHigh = high === null ? [] : [[Math.max(to - reach, fromLow[0]?.[1] ?? from), to] as const];
  for (const [start, end] of [...fromLow, ...fromHigh]) {
    if (end > start) shapes.push(rect(start, top, end - start, floor - top, { depicts: 'guard', hatch: 'guard' }));
  }
  return shapes;
}

function axisTicks(facts: BandFacts, axis: Axis, words: AmountWords, floor: number, unit: number): readonly Shape[] {
  const stroke = { stroke: 'ink', strokeWidth: unit } as const;
  const shapes: Shape[] = [line(axis.left, floor, axis.right, floor, stroke)];
  for (const [count, length] of [
    [20, 6],
    [5, 12],
  ] as const) {
    for (const amount of tickAmounts(facts, axis, words, count)) {
      shapes.push(line(axis.x(amount), floor, axis.x(amount), floor + length * unit, stroke));
    }
  }
  return shapes;
}

/** Round amounts of the shown unit along the axis, about `count` of them. */
function tickAmounts(facts: BandFacts, axis: Axis, words: AmountWords, count: number): readonly number[] {
  const stretch = bandStretch(facts.limits, facts.target, facts.readings, words.perUnit);
  // The axis is linear: two amounts give it back.
  const perPixel = (stretch.high - stretch.low) / (axis.x(stretch.high) - axis.x(stretch.low));
  const at = (x: number) => stretch.low + (x - axis.x(stretch.low)) * perPixel;
  return ticks(at(axis.left) / words.perUnit, at(axis.right) / words.perUnit, count).map(
    (each) => each * words.perUnit,
  );
}

function limitStrokes(facts: BandFacts, axis: Axis, base: number, floor: number, unit: number): readonly Shape[] {
  const shapes: Shape[] = [];
  if (facts.target !== null && beyond(axis, facts.target) === null) {
    const x = axis.x(facts.target);
    shapes.push(
      line(x, base + 8 * unit, x, floor + 12 * unit, {
        depicts: 'target',
        stroke: 'ink',
        strokeWidth: unit,
        dash: [4 * unit, 3 * unit],
      }),
    );
  }
  for (const limit of [facts.limits.low, facts.limits.high]) {
    if (limit === null) continue;
    const x = axis.x(limit);
    shapes.push(line(x, base, x, floor + 14 * unit, { depicts: 'limit', stroke: 'ink', strokeWidth: 2 * unit }));
  }
  return shapes;
}

/** Figures and words under the axis. A label that would lie on a more important one is left out. */
function axisLabels(
  facts: BandFacts,
  axis: Axis,
  words: AmountWords,
  floor: number,
  unit: number,
  { medium, width }: { readonly medium: Medium; readonly width: number },
): readonly Shape[] {
  const { low, high } = facts.limits;
  const wanted: Array<{ amount: number; word: string | null }> = [];
  if (low !== null) wanted.push({ amount: low, word: 'low limit' });
  if (high !== null) wanted.push({ amount: high, word: 'high limit' });
  if (facts.target !== null && beyond(axis, facts.target) === null)
    wanted.push({ amount: facts.target, word: 'target' });
  for (const amount of tickAmounts(facts, axis, words, 5)) wanted.push({ amount, word: null });
  const placed: Text[] = [];
  for (const { amount, word } of wanted) {
    const x = axis.x(amount);
    const named = word !== null;
    const labels = [
      text(x, floor + 32 * unit, words.short(amount), {
        anchor: 'middle',
        size: 'body',
        weight: named ? 'semibold' : 'regular',
        role: named ? 'ink' : 'quiet',
      }),
      ...(named ? [text(x, floor + 50 * unit, word, { anchor: 'middle', role: 'quiet' })] : []),
    ];
    const fits = labels.every((label) => {
      const box = textBox(label, medium);
      const wide = { ...box, left: box.left - 8 * unit, right: box.right + 8 * unit };
      return box.left >= 0 && box.right <= width && !placed.some((other) => boxesOverlap(wide, textBox(other, medium)));
    });
    if (fits) placed.push(...labels);
  }
  return placed;
}

type Marker = {
  readonly amount: NamedAmount;
  readonly depicts: 'now' | 'predicted' | 'as found';
};

function markersOf({ now, predicted, asFound }: BandFacts): readonly Marker[] {
  const found = asFound === null ? null : { value: asFound, expanded: null, label: 'as found' };
  const all = [
    { amount: now, depicts: 'now' },
    { amount: predicted, depicts: 'predicted' },
    { amount: found, depicts: 'as found' },
  ] as const;
  return all.flatMap(({ amount, depicts }) => (amount === null ? [] : [{ amount, depicts }]));
}

/** The stretch of the page a marker takes, its label kept inside the axis. */
function extentOf(marker: Marker, axis: Axis, medium: Medium): { left: number; right: number; label: number } {
  const half = textWidth(marker.amount.label, textSizes[medium].small) / 2;
  const x = clamp(axis.x(marker.amount.value), axis.left, axis.right);
  const label = clamp(x, half, axis.left + axis.right - half);
  const reach = marker.amount.expanded ?? 0;
  return {
    label,
    left: Math.min(label - half, Math.max(axis.left, axis.x(marker.amount.value - reach))),
    right: Math.max(label + half, Math.min(axis.right, axis.x(marker.amount.value + reach))),
  };
}

/** The lowest row in which each marker touches none before it; *now* sits lowest, next to its dots. */
function packRows(markers: readonly Marker[], axis: Axis, medium: Medium, unit: number) {
  const extents = markers.map((marker) => extentOf(marker, axis, medium));
  const fromBottom: number[] = [];
  for (const [index, extent] of extents.entries()) {
    let row = 0;
    const isFree = (candidate: number) =>
      !fromBottom.some((taken, other) => {
        const before = extents[other]!;
        return (
          other < index &&
          taken === candidate &&
          extent.left < before.right + 8 * unit &&
          before.left - 8 * unit < extent.right
        );
      });
    while (!isFree(row)) row += 1;
    fromBottom.push(row);
  }
  const count = markers.length === 0 ? 0 : Math.max(...fromBottom) + 1;
  const row = fromBottom.map((each, index) => ({
    top: (count - 1 - each) * markerPitch * unit,
    label: extents[index]!.label,
  }));
  return { count, row };
}

function markerShapes(marker: Marker, axis: Axis, row: { top: number; label: number }, unit: number): readonly Shape[] {
  const role: PaintRole = marker.depicts === 'predicted' ? 'act' : 'ink';
  const y = row.top + 22 * unit;
  const side = beyond(axis, marker.amount.value);
  const outline = { depicts: marker.depicts, stroke: role, strokeWidth: 1.5 * unit } as const;
  const dash = marker.depicts === 'predicted' ? { dash: [5 * unit, 3 * unit] } : {};
  const shapes: Shape[] = [
    text(row.label, row.top + 12 * unit, marker.amount.label, { anchor: 'middle', role }),
    ...bar(axis, marker.amount, y, 5 * unit, { stroke: role, strokeWidth: 2 * unit, ...dash }),
  ];
  const fill = marker.depicts === 'now' ? role : 'face';
  const x = axis.x(marker.amount.value);
  if (side !== null) return [...shapes, arrow(axis, side, y, 6 * unit, { ...outline, fill })];
  if (marker.depicts === 'as found') return [...shapes, circle(x, y, 5 * unit, { ...outline, fill })];
  const pointer = `M${x - 6 * unit} ${y - 6 * unit}L${x + 6 * unit} ${y - 6 * unit}L${x} ${y + 8 * unit}Z`;
  return [...shapes, path(pointer, { ...outline, fill })];
}

/** Every reading one dot on the axis; equal ones stand on each other, smaller where they are many. */
function stackedDots(readings: readonly number[], axis: Axis, floor: number, unit: number): readonly Shape[] {
  const sorted = [...readings].sort((a, b) => a - b);
  const across = 13 * unit;
  const levels: number[] = [];
  const xs = sorted.map((each) => clamp(axis.x(each), axis.left, axis.right));
  for (const [index, x] of xs.entries()) {
    let level = 0;
    while (xs.some((other, before) => before < index && levels[before] === level && x - other < across)) level += 1;
    levels.push(level);
  }
  const shrink = Math.min(1, 3 / (Math.max(0, ...levels) + 1));
  return sorted.map((reading, index) => {
    const y = floor - (4 + (2 * levels[index]! + 1) * 6.2 * shrink) * unit;
    const radius = 6 * shrink * unit;
    const side = beyond(axis, reading);
    const paint = { depicts: 'reading', fill: 'ink', stroke: 'face', strokeWidth: 1.5 * shrink * unit } as const;
    return side === null ? circle(xs[index]!, y, radius, paint) : arrow(axis, side, y, radius, paint);
  });
}
