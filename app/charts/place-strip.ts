// Where one build lies among the others: a dot for each of them, stacked where they meet, and one that stands out.
import { scaleLinear } from 'd3-scale';
import { type AmountWords, type Limits, writeLimits } from './amounts.ts';
import { type Chart, circle, line, type Medium, path, round, type Shape } from './shapes.ts';

export type PlaceFacts = {
  readonly amount: number;
  /** At least one. */
  readonly others: readonly number[];
  readonly limits: Limits;
};

/** Limits are drawn where they lie near the builds; a far one would press them together. */
export function placeStrip(
  facts: PlaceFacts,
  words: AmountWords,
  { width, height, medium }: { readonly width: number; readonly height: number; readonly medium: Medium },
): Chart {
  const unit = medium === 'paper' ? 0.75 : 1;
  const values = [facts.amount, ...facts.others];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const spread = Math.max(most - least, words.perUnit);
  const near = [facts.limits.low, facts.limits.high].filter(
    (limit): limit is number => limit !== null && limit >= least - spread / 2 && limit <= most + spread / 2,
  );
  const margin = 8 * unit;
  const x = scaleLinear([Math.min(least, ...near), Math.max(most, ...near)], [margin, width - margin]);
  const place = (amount: number) => round(least === most && near.length === 0 ? width / 2 : x(amount));
  const base = round(height - 4 * unit);
  const radius = 2.25 * unit;
  const shapes: Shape[] = [line(0, base, width, base, { stroke: 'mark', strokeWidth: unit })];
  for (const limit of near) {
    shapes.push(
      line(place(limit), 2 * unit, place(limit), base, { depicts: 'limit', stroke: 'ink', strokeWidth: 1.75 * unit }),
    );
  }
  for (const [column, count] of columnsOf(facts.others.map(place), 2 * radius)) {
    // Where they stack higher than the strip they stand closer.
    const room = base - 2 * unit - radius;
    const step = Math.min(2 * radius, count > 1 ? (room - radius) / (count - 1) : 0);
    for (let each = 0; each < count; each++) {
      shapes.push(circle(column, round(base - radius - each * step), radius, { depicts: 'reading', fill: 'quiet' }));
    }
  }
  const at = place(facts.amount);
  const size = 5 * unit;
  shapes.push(
    line(at, round(size * 1.5), at, base, { stroke: 'act', strokeWidth: 1.5 * unit }),
    path(`M${round(at - size)} 1H${round(at + size)}L${at} ${round(size * 1.7)}Z`, { depicts: 'now', fill: 'act' }),
  );
  return { medium, width, height, title: sentence(facts, words), shapes };
}

/** Dots that would overlap share a column. */
function columnsOf(places: readonly number[], width: number): Map<number, number> {
  const columns = new Map<number, number>();
  for (const each of places) {
    const column = round((Math.floor(each / width) + 0.5) * width);
    columns.set(column, (columns.get(column) ?? 0) + 1);
  }
  return columns;
}

function sentence({ amount, others, limits }: PlaceFacts, words: AmountWords): string {
  const from = `${words.full(Math.min(...others))} to ${words.full(Math.max(...others))}`;
  const count = others.length === 1 ? '1 other build' : `${others.length} other builds`;
  return `${words.full(amount)} beside ${count} from ${from}, ${writeLimits(limits, words)}.`;
}
