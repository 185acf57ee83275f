// Two methods on the same things: each pair's difference over its mean, the bias, and between which limits 95 of 100 lie.
import { scaleLinear } from 'd3-scale';
import type { AmountWords } from './amounts.ts';
import { type Chart, circle, line, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

type Interval = readonly [lower: number, upper: number];

export type AgreementFacts = {
  readonly pairs: ReadonlyArray<{ readonly first: number; readonly second: number }>;
  /** Of first less second; null while nothing can be said. */
  readonly agreement: {
    readonly bias: number;
    readonly biasInterval: Interval;
    readonly limits: Interval;
    readonly lowerLimitInterval: Interval;
    readonly upperLimitInterval: Interval;
  } | null;
};

const room = { top: 16, bottom: 48, left: 56 };

/** At least one pair. The bars at the right are the 95 % intervals of the three lines. */
export function agreementPlot(
  { pairs, agreement }: AgreementFacts,
  words: AmountWords,
  { width, height, between }: { readonly width: number; readonly height: number; readonly between: string },
): Chart {
  const means = pairs.map(({ first, second }) => (first + second) / 2);
  const differences = pairs.map(({ first, second }) => first - second);
  const intervals = agreement
    ? [agreement.lowerLimitInterval, agreement.biasInterval, agreement.upperLimitInterval]
    : [];
  const named = agreement ? [agreement.limits[1], agreement.bias, agreement.limits[0]].map(words.full) : [];
  const right = width - Math.max(0, ...named.map((name) => textWidth(name, 14))) - 16;
  const foot = height - room.bottom;
  // Ticks are round in the unit that is shown.
  const across = scaleLinear(inUnits(stretch(means, words.perUnit), words), [room.left, right]).nice();
  const up = scaleLinear(inUnits(stretch([0, ...differences, ...intervals.flat()], words.perUnit), words), [
    foot,
    room.top,
  ]).nice();
  const x = (amount: number) => across(amount / words.perUnit);
  const y = (amount: number) => up(amount / words.perUnit);
  const shapes: Shape[] = [];
  // Side by side, because with few pairs they reach over each other.
  for (const [index, [low, high]] of intervals.entries()) {
    const at = right - 8 - 16 * index;
    const [top, bottom] = [round(y(high)), round(y(low))];
    const paint = { stroke: 'mark', strokeWidth: 1.5 } as const;
    shapes.push(
      line(at, top, at, bottom, paint),
      line(at - 4, top, at + 4, top, paint),
      line(at - 4, bottom, at + 4, bottom, paint),
    );
  }
  shapes.push(
    line(room.left, foot, right, foot, { stroke: 'ink', strokeWidth: 1 }),
    line(room.left, round(y(0)), right, round(y(0)), { stroke: 'mark', strokeWidth: 1 }),
  );
  for (const tick of up.ticks(5)) {
    shapes.push(
      text(room.left - 8, round(up(tick)) + 5, words.short(tick * words.perUnit), { role: 'quiet', anchor: 'end' }),
    );
  }
  for (const tick of across.ticks(6)) {
    shapes.push(
      line(round(across(tick)), foot, round(across(tick)), foot + 6, { stroke: 'ink', strokeWidth: 1 }),
      text(round(across(tick)), foot + 22, words.short(tick * words.perUnit), { role: 'quiet', anchor: 'middle' }),
    );
  }
  shapes.push(text(room.left, height - 4, between, { role: 'quiet' }));
  if (agreement) {
    for (const [index, at] of [agreement.limits[1], agreement.bias, agreement.limits[0]].entries()) {
      const isBias = index === 1;
      const paint = { stroke: 'ink', strokeWidth: isBias ? 2 : 1, ...(isBias ? {} : { dash: [6, 4] }) } as const;
      shapes.push(
        line(room.left, round(y(at)), right, round(y(at)), { depicts: isBias ? 'fit' : 'limit', ...paint }),
        text(right + 8, round(y(at)) + 5, words.full(at), { weight: isBias ? 'semibold' : 'regular' }),
      );
    }
  }
  for (const [index, mean] of means.entries()) {
    shapes.push(
      circle(round(x(mean)), round(y(differences[index] ?? 0)), 4, {
        depicts: 'reading',
        fill: 'face',
        stroke: 'ink',
        strokeWidth: 1.5,
      }),
    );
  }
  return { medium: 'screen', width, height, title: sentence(pairs.length, agreement, words), shapes };
}

function inUnits([low, high]: [number, number], { perUnit }: AmountWords): [number, number] {
  return [low / perUnit, high / perUnit];
}

/** A little wider than the values, and never nothing. */
function stretch(values: readonly number[], least: number): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const margin = Math.max((high - low) * 0.05, least / 2);
  return [low - margin, high + margin];
}

function sentence(n: number, agreement: AgreementFacts['agreement'], words: AmountWords): string {
  if (!agreement) return `${n} ${n === 1 ? 'pair' : 'pairs'}.`;
  const [low, high] = agreement.limits.map(words.full);
  return `${n} pairs: difference ${words.full(agreement.bias)} on average, 95 of 100 between ${low} and ${high}.`;
}
