// One value after another in the order they came, with the limits drawn from how they change.
import { scaleLinear } from 'd3-scale';
import type { AmountWords } from './amounts.ts';
import { type Chart, circle, line, path, round, type Shape, text } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type IndividualsFacts = {
  readonly points: ReadonlyArray<{ readonly name: string; readonly value: number; readonly isOutside: boolean }>;
  /** null while there are too few. */
  readonly limits: { readonly mean: number; readonly lower: number; readonly upper: number } | null;
};

const room = { top: 24, bottom: 32, left: 8 };

/** At least one point. What lies outside is ringed and named. */
export function individuals(
  { points, limits }: IndividualsFacts,
  words: AmountWords,
  { width, height }: { readonly width: number; readonly height: number },
): Chart {
  const lines = limits ? [limits.upper, limits.mean, limits.lower] : [];
  const right = width - Math.max(0, ...lines.map((at) => textWidth(words.full(at), 14))) - 16;
  const values = [...points.map(({ value }) => value), ...lines];
  const margin = Math.max((Math.max(...values) - Math.min(...values)) * 0.1, words.perUnit / 2);
  const y = scaleLinear([Math.min(...values) - margin, Math.max(...values) + margin], [height - room.bottom, room.top]);
  const x = scaleLinear([0, Math.max(1, points.length - 1)], [room.left + 12, right - 12]);
  const at = points.map(({ value }, index) => [round(x(index)), round(y(value))] as const);
  const shapes: Shape[] = lines.flatMap((amount, index) => {
    const isMean = index === 1;
    const paint = { stroke: 'ink', strokeWidth: 1, ...(isMean ? {} : { dash: [6, 4] }) } as const;
    return [
      line(room.left, round(y(amount)), right, round(y(amount)), { depicts: isMean ? 'fit' : 'limit', ...paint }),
      text(right + 8, round(y(amount)) + 5, words.full(amount), { weight: isMean ? 'semibold' : 'regular' }),
    ];
  });
  if (at.length > 1)
    shapes.push(path(`M${at.map(([px, py]) => `${px} ${py}`).join('L')}`, { stroke: 'mark', strokeWidth: 1 }));
  const widest = Math.max(...points.map(({ name }) => textWidth(name, 14))) + 12;
  const every = Math.max(1, Math.ceil((widest * Math.max(1, points.length - 1)) / Math.max(1, right - room.left - 24)));
  for (const [index, { name, value, isOutside }] of points.entries()) {
    const [px, py] = at[index] ?? [0, 0];
    shapes.push(circle(px, py, 4, { depicts: 'reading', fill: 'ink' }));
    if (isOutside) {
      shapes.push(
        circle(px, py, 9, { stroke: 'out', strokeWidth: 2 }),
        text(px, py - 14, words.full(value), { anchor: 'middle', weight: 'semibold', halo: 'ground' }),
      );
    }
    if (index % every === 0) shapes.push(text(px, height - 8, name, { role: 'quiet', anchor: 'middle' }));
  }
  return { medium: 'screen', width, height, title: sentence(points, limits, words), shapes };
}

function sentence(points: IndividualsFacts['points'], limits: IndividualsFacts['limits'], words: AmountWords): string {
  const count = `${points.length} ${points.length === 1 ? 'build' : 'builds'}`;
  if (!limits) return `${count}, no limits yet.`;
  const outside = points.filter(({ isOutside }) => isOutside);
  const named = outside.length === 0 ? 'none outside' : `outside: ${outside.map(({ name }) => name).join(', ')}`;
  return `${count}, mean ${words.full(limits.mean)}, limits ${words.full(limits.lower)} and ${words.full(limits.upper)}, ${named}.`;
}
