// Which clearances as read one swap brings into the band, and what the last packs read: a strip with dots under it.
import { scaleLinear } from 'd3-scale';
import { type AmountWords, type Limits, writeLimits } from './amounts.ts';
import { type Chart, circle, line, rect, round, type Shape, text, textSizes } from './shapes.ts';
import { textWidth } from './text-box.ts';

export type Stretch = { readonly from_nm: number | null; readonly to_nm: number | null };

export type ReachFacts = {
  readonly limits: Limits;
  /** Clearances that need no swap or one; null at an end: without end. */
  readonly reach: readonly Stretch[];
  /** What the last packs read, and whether one swap would have done. */
  readonly packs: readonly { readonly clearance_nm: number; readonly isReached: boolean }[];
};

const strip = { top: 24, height: 16 } as const;
const dot = { radius: 3.5, apart: 9, deepest: 108 } as const;

/**
 * The strip is filled where one swap is enough and hatched where it is not, with the band as a bracket above it. Below
 * stands a dot for each pack: filled where one swap was enough, an open ring in the verdict's colour where it was not.
 */
export function reachStrip(facts: ReachFacts, words: AmountWords, width: number): Chart {
  const stretch = stretchOf(facts, words.perUnit);
  const scale = scaleLinear([stretch.low, stretch.high], [8, width - 8]);
  const x = (amount: number) => round(Math.max(0, Math.min(width, scale(amount))));
  const foot = strip.top + strip.height;
  const shapes: Shape[] = [rect(0, strip.top, width, strip.height, { hatch: 'guard' })];
  for (const { from_nm, to_nm } of facts.reach) {
    const [left, right] = [from_nm === null ? 0 : x(from_nm), to_nm === null ? width : x(to_nm)];
    if (right > left)
      shapes.push(rect(left, strip.top, round(right - left), strip.height, { depicts: 'clearance', fill: 'ink' }));
  }
  for (const y of [strip.top, foot]) shapes.push(line(0, y, width, y, { stroke: 'ink', strokeWidth: 1 }));
  shapes.push(...bracket(facts.limits, x, words, width));

  const places = Map.groupBy(facts.packs, (each) => Math.round(x(each.clearance_nm) / dot.apart) * dot.apart);
  const deepest = Math.max(1, ...[...places.values()].map((packs) => packs.length));
  // Where very many read the same they overlap rather than push the axis off the screen.
  const apart = Math.min(dot.apart, round(dot.deepest / deepest));
  for (const [place, packs] of places) {
    for (const [depth, { isReached }] of packs.entries()) {
      const paint = isReached
        ? ({ fill: 'quiet' } as const)
        : ({ fill: 'ground', stroke: 'out', strokeWidth: 2 } as const);
      shapes.push(circle(place, round(foot + 10 + depth * apart), dot.radius, { depicts: 'reading', ...paint }));
    }
  }
  const base = round(foot + 10 + deepest * apart);
  shapes.push(...ticks(stretch, x, base, words, width));
  return { medium: 'screen', width, height: base + 24, title: sentence(facts, words), shapes };
}

/** Everything that has a place: the band, the packs and the ends of what is reached, with some room at each side. */
function stretchOf({ limits, reach, packs }: ReachFacts, perUnit: number): { low: number; high: number } {
  const places = [
    limits.low,
    limits.high,
    ...reach.flatMap(({ from_nm, to_nm }) => [from_nm, to_nm]),
    ...packs.map((each) => each.clearance_nm),
  ].filter((each) => each !== null);
  const [least, most] = places.length === 0 ? [0, 0] : [Math.min(...places), Math.max(...places)];
  const spare = Math.max(perUnit, (most - least) / 20);
  return { low: least - spare, high: most + spare };
}

function bracket(
  { low, high }: Limits,
  x: (amount: number) => number,
  words: AmountWords,
  width: number,
): readonly Shape[] {
  if (low === null && high === null) return [];
  const [left, right] = [low === null ? 0 : x(low), high === null ? width : x(high)];
  const y = strip.top - 6;
  const shapes: Shape[] = [line(left, y, right, y, { stroke: 'ink', strokeWidth: 2 })];
  for (const limit of [low, high]) {
    if (limit === null) continue;
    shapes.push(line(x(limit), y - 4, x(limit), strip.top, { depicts: 'limit', stroke: 'ink', strokeWidth: 2 }));
  }
  const name = `band ${writeLimits({ low, high }, words).replace(/^limits (.*) and (.*)$/, '$1–$2')}`;
  const half = textWidth(name, textSizes.screen.small) / 2;
  const middle = Math.max(half, Math.min(width - half, (left + right) / 2));
  return [...shapes, text(round(middle), y - 6, name, { role: 'quiet', anchor: 'middle' })];
}

function ticks(
  { low, high }: { readonly low: number; readonly high: number },
  x: (amount: number) => number,
  base: number,
  words: AmountWords,
  width: number,
): readonly Shape[] {
  const inUnits = scaleLinear([low / words.perUnit, high / words.perUnit], [0, width]);
  return inUnits.ticks(Math.max(2, Math.floor(width / 64))).flatMap((tick) => {
    const at = tick * words.perUnit;
    const name = words.short(at);
    const half = textWidth(name, textSizes.screen.small) / 2;
    if (x(at) - half < 0 || x(at) + half > width) return [];
    return [
      line(x(at), base, x(at), base + 6, { stroke: 'mark', strokeWidth: 1 }),
      text(x(at), base + 20, name, { role: 'quiet', anchor: 'middle' }),
    ];
  });
}

function sentence({ limits, reach, packs }: ReachFacts, words: AmountWords): string {
  const stretches = reach.map(({ from_nm, to_nm }) => {
    if (from_nm === null) return to_nm === null ? 'every clearance' : `everything up to ${words.full(to_nm)}`;
    return to_nm === null ? `everything from ${words.full(from_nm)}` : `${words.full(from_nm)} to ${words.full(to_nm)}`;
  });
  const reached = stretches.length === 0 ? 'no clearance' : stretches.join(', ');
  const enough = packs.filter((each) => each.isReached).length;
  const last = packs.length === 0 ? '' : ` Of the last ${packs.length} packs, one swap reached ${enough}.`;
  return `One swap brings ${reached} to ${writeLimits(limits, words)}.${last}`;
}
