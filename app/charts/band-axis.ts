// What the large and the small band share: their facts, the axis, what lies off it, and the sentence that says it all.
import { type AmountWords, type Limits, type SureAmount, writeLimits, writeSure } from './amounts.ts';
import { line, type PaintRole, type Path, path, type Shape } from './shapes.ts';

/** An amount with the word it is marked by. */
export type NamedAmount = SureAmount & { readonly label: string };

export type BandFacts = {
  readonly limits: Limits;
  readonly target: number | null;
  /** Within this of a limit it is too close to call. */
  readonly guard: number | null;
  readonly readings: readonly number[];
  /** What is known now: its label says of what, "now" on the bench and "as built" on paper. */
  readonly now: NamedAmount | null;
  readonly predicted: NamedAmount | null;
  readonly asFound: number | null;
};

/** A linear axis of the chart's own units; amounts beyond `left` and `right` are off the scale. */
export type Axis = {
  readonly x: (amount: number) => number;
  readonly left: number;
  readonly right: number;
};

/** Which end of the axis an amount lies beyond, if any. */
export function beyond(axis: Axis, amount: number): 'left' | 'right' | null {
  const x = axis.x(amount);
  if (x < axis.left) return 'left';
  return x > axis.right ? 'right' : null;
}

/** What lies off the scale: an arrow at that edge, pointing out. */
export function arrow(
  axis: Axis,
  side: 'left' | 'right',
  y: number,
  radius: number,
  paint: Omit<Path, 'kind' | 'outline'>,
): Shape {
  const tip = side === 'left' ? axis.left - radius : axis.right + radius;
  const back = side === 'left' ? axis.left + radius : axis.right - radius;
  return path(`M${back} ${y - radius}L${tip} ${y}L${back} ${y + radius}Z`, paint);
}

/** The ± bar, cut at the ends of the axis; an end that was cut has no cap. */
export function bar(
  axis: Axis,
  amount: SureAmount,
  y: number,
  cap: number,
  paint: { readonly stroke: PaintRole; readonly strokeWidth: number; readonly dash?: readonly number[] },
): readonly Shape[] {
  if (amount.expanded === null) return [];
  const ends = [axis.x(amount.value - amount.expanded), axis.x(amount.value + amount.expanded)] as const;
  const from = Math.max(ends[0], axis.left);
  const to = Math.min(ends[1], axis.right);
  if (to <= from) return [];
  const caps = cap === 0 ? [] : ends.filter((end) => end >= axis.left && end <= axis.right);
  const solid = { stroke: paint.stroke, strokeWidth: paint.strokeWidth };
  return [line(from, y, to, y, paint), ...caps.map((end) => line(end, y - cap, end, y + cap, solid))];
}

/** The chart in words, for those who do not see it. */
export function bandSentence(facts: Omit<BandFacts, 'guard'>, words: AmountWords): string {
  const target = facts.target === null ? '' : ` and target ${words.short(facts.target)}`;
  const against = `${writeLimits(facts.limits, words)}${target}`;
  const parts = [
    facts.readings.length === 0
      ? capitalised(against)
      : `${readingsInWords(facts.readings, words)}, against ${against}`,
  ];
  for (const amount of [facts.now, facts.predicted]) {
    if (amount !== null) parts.push(`${capitalised(amount.label)} ${writeSure(amount, words)}`);
  }
  if (facts.asFound !== null) parts.push(`As found ${words.full(facts.asFound)}`);
  return `${parts.join('. ')}.`;
}

function readingsInWords(readings: readonly number[], words: AmountWords): string {
  const [least, most] = [words.short(Math.min(...readings)), words.short(Math.max(...readings))];
  return readings.length === 1 ? `One reading, ${least}` : `${readings.length} readings, ${least} to ${most}`;
}

function capitalised(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

export function clamp(value: number, least: number, most: number): number {
  return Math.max(least, Math.min(most, value));
}
