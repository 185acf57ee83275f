// The part that has not come back over the time it was followed: steps with their limits, who was still at risk, and the
// line of wear through them.
import { scaleLinear } from 'd3-scale';
import { type Chart, line, path, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type SurvivalPoint = {
  readonly time: number;
  readonly survival: number;
  /** null where there are no limits. */
  readonly lower: number | null;
  readonly upper: number | null;
};

export type SurvivalFacts = {
  readonly curves: ReadonlyArray<{
    /** "" for one curve alone. */
    readonly name: string;
    readonly steps: readonly SurvivalPoint[];
    readonly until: number;
  }>;
  /** Drawn through a curve alone; null where none was fitted. */
  readonly wear: { readonly shape: number; readonly scale: number } | null;
  readonly ticks: ReadonlyArray<{ readonly time: number; readonly atRisk: number | null }>;
  /** "days in service". */
  readonly clock: string;
  readonly title: string;
};

const room = { top: 16, left: 56, right: 16 };
const dashes = [[], [8, 4], [2, 4], [12, 4, 2, 4], [4, 4], [14, 6]];

/** At least one curve and two ticks. `sayTime` writes a time, `sayShare` a share. */
export function survivalCurve(
  { curves, wear, ticks, clock, title }: SurvivalFacts,
  words: { readonly sayTime: (time: number) => string; readonly sayShare: (share: number) => string },
  { width, height }: { readonly width: number; readonly height: number },
): Chart {
  const until = Math.max(...curves.map((curve) => curve.until), ticks.at(-1)?.time ?? 0);
  const isAlone = curves.length === 1;
  const lowest = lowestOf(curves, isAlone);
  const hasRisk = ticks.some(({ atRisk }) => atRisk !== null);
  const bottom = height - (hasRisk ? 84 : 52);
  const names = Math.max(0, ...curves.map(({ name }) => textWidth(name, 14)));
  const right = width - room.right - (isAlone ? 0 : names + 8);
  const x = scaleLinear([0, until], [room.left, right]);
  const y = scaleLinear([lowest, 1], [bottom, room.top]);
  const shapes: Shape[] = [];
  for (const share of y.ticks(4)) {
    shapes.push(
      line(room.left, round(y(share)), right, round(y(share)), { stroke: 'line', strokeWidth: 1 }),
      text(room.left - 8, round(y(share)) + 5, words.sayShare(share), { anchor: 'end', role: 'quiet' }),
    );
  }
  for (const { time, atRisk } of ticks) {
    const at = round(x(time));
    shapes.push(
      line(at, bottom, at, bottom + 5, { stroke: 'ink', strokeWidth: 1 }),
      text(at, bottom + 22, words.sayTime(time), { anchor: 'middle', role: 'quiet' }),
    );
    if (atRisk !== null) shapes.push(text(at, height - 8, String(atRisk), { anchor: 'middle' }));
  }
  shapes.push(
    line(room.left, bottom, right, bottom, { stroke: 'ink', strokeWidth: 1 }),
    text(right, bottom + 42, clock, { anchor: 'end', role: 'quiet' }),
  );
  if (hasRisk) shapes.push(text(room.left - 8, bottom + 42, 'still followed, of these:', { role: 'quiet' }));
  const stepsTo = (steps: readonly SurvivalPoint[], end: number, read: (point: SurvivalPoint) => number | null) => {
    const points = [`${round(x(0))} ${round(y(1))}`];
    let last = 1;
    for (const step of steps) {
      points.push(`${round(x(step.time))} ${round(y(last))}`);
      last = Math.max(lowest, read(step) ?? last);
      points.push(`${round(x(step.time))} ${round(y(last))}`);
    }
    points.push(`${round(x(end))} ${round(y(last))}`);
    return { points, last };
  };
  if (isAlone) {
    for (const { steps, until: end } of curves) {
      const upper = stepsTo(steps, end, (step) => step.upper).points;
      const lower = stepsTo(steps, end, (step) => step.lower).points;
      const band = `M${upper.join('L')}L${lower.toReversed().join('L')}Z`;
      shapes.push(path(band, { depicts: 'guard', fill: 'well', stroke: 'line', strokeWidth: 1 }));
    }
  }
  if (isAlone && wear) {
    const survived = (time: number) => Math.max(lowest, Math.exp(-((time / wear.scale) ** wear.shape)));
    const points = Array.from({ length: 61 }, (_, i) => (i / 60) * until);
    const outline = points.map((time) => `${round(x(time))} ${round(y(survived(time)))}`).join('L');
    shapes.push(path(`M${outline}`, { depicts: 'fit', stroke: 'act', strokeWidth: 2, dash: [6, 4] }));
  }
  const ends = curves.map(({ name, steps, until: end }, i) => {
    const { points, last } = stepsTo(steps, end, (step) => step.survival);
    const dash = dashes[i % dashes.length] ?? [];
    shapes.push(path(`M${points.join('L')}`, { depicts: 'reading', stroke: 'ink', strokeWidth: 2, dash }));
    return { name, y: y(last) + 5, x: x(end) + 6 };
  });
  if (!isAlone) shapes.push(...labels(ends, room.top, bottom));
  return { medium: 'screen', width, height, title, shapes };
}

/** A little below the lowest that is drawn, on a round share. */
function lowestOf(curves: SurvivalFacts['curves'], isAlone: boolean): number {
  const drawn = curves.flatMap(({ steps }) =>
    steps.map(({ survival, lower }) => (isAlone ? (lower ?? survival) : survival)),
  );
  const least = Math.min(0.99, ...drawn);
  const step = least > 0.9 ? 0.02 : least > 0.6 ? 0.1 : 0.2;
  return Math.max(0, Math.floor((least - 0.001) / step) * step);
}

/** Names at the ends of their curves, moved apart where they would lie on each other. */
function labels(ends: ReadonlyArray<{ name: string; x: number; y: number }>, top: number, bottom: number): Shape[] {
  const apart = 18;
  const sorted = ends.toSorted((a, b) => a.y - b.y);
  let least = top + 10;
  const placed = sorted.map((end) => {
    const at = Math.max(least, end.y);
    least = at + apart;
    return { ...end, y: at };
  });
  const over = Math.max(0, least - apart - bottom);
  return placed.map(({ name, x, y }) => text(round(x), round(y - over), name));
}
