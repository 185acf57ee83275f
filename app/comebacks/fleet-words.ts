// What was found of a fleet in plain sentences, and what would settle it. Association is not cause.
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { Factor } from './fleet-factors.ts';
import type { Shadow } from './fleet-shadows.ts';
import { type ShopWords, sayAmount } from './say-amount.ts';

/** "Forward clearance: 1.9 times as likely to come back at 21.0 as at 27.0 thou." */
export function factorSentence(factor: Factor, words: ShopWords): string {
  const { column, level, between, effect, inLevel, builds, events } = factor;
  const name = factorName(factor);
  const times = sayTimes(effect.ratio, words.decimalMark);
  if (level === null && between) {
    const [worse, better] = [between.worse, between.better];
    const unit = { unit: column.kind === 'number' ? column.unit : '' };
    return `${name}: ${times} as likely to come back at ${sayAmount(worse, unit, words, false)} as at ${sayAmount(better, unit, words)}.`;
  }
  const inside = inLevel ?? { builds: 0, events: 0 };
  if (effect.by === 'fisher') {
    const rest = { builds: builds - inside.builds, events: events - inside.events };
    return `${name}: ${ofThem(inside)} came back, ${ofThem(rest)} of the others.`;
  }
  return `${name}: ${times} as likely to come back as the others.`;
}

/** "Built by: RA", "Forward clearance". */
export function factorName({ column, level }: Pick<Factor, 'column' | 'level'>): string {
  return level === null ? column.name : `${column.name}: ${level}`;
}

/** "1.9 times", "12 times"; "endlessly" where no comeback stands against some. */
export function sayTimes(ratio: number | null, decimalMark: DecimalMark): string {
  if (ratio === null) return 'more times than can be told';
  const digits = ratio < 0.1 ? 2 : ratio < 9.95 ? 1 : 0;
  return `${sayNumber(ratio, digits, decimalMark)} times`;
}

/** "95 % sure of 1.3 to 2.8 times": what the interval of an effect says. */
export function intervalWords(
  [lower, upper]: readonly [lower: number | null, upper: number | null],
  decimalMark: DecimalMark,
): string {
  const low = sayNumber(lower ?? 0, (lower ?? 0) < 0.1 ? 2 : 1, decimalMark);
  return upper === null ? `${low} or more` : `${low} to ${sayNumber(upper, upper < 0.1 ? 2 : 1, decimalMark)}`;
}

/** A chance to two digits: "0.013"; "below 0.0001". */
export function sayChance(p: number, decimalMark: DecimalMark): string {
  if (p < 0.0001) return `below ${sayNumber(0.0001, 4, decimalMark)}`;
  return sayNumber(p, p < 0.001 ? 4 : p < 0.1 ? 3 : 2, decimalMark);
}

function sayNumber(value: number, decimals: number, decimalMark: DecimalMark): string {
  return value.toFixed(decimals).replace('.', decimalMark);
}

function ofThem({ builds, events }: { builds: number; events: number }): string {
  return `${events === 0 ? 'none' : events === builds ? 'all' : events} of ${builds}`;
}

/** Which of two finds that go together may be the other's shadow, and how it was looked at. */
export function shadowSentence({ each, correlation, builds }: Shadow, { decimalMark }: ShopWords): string {
  const [first, second] = each;
  const names = `${factorName(first.factor)} and ${factorName(second.factor)} go together (correlation ${sayNumber(correlation, 2, decimalMark).replace('-', '−')} in ${builds} builds)`;
  if (first.mayBeShadow && second.mayBeShadow)
    return `${names}: one may be the other’s shadow, and these builds cannot say which.`;
  if (!first.mayBeShadow && !second.mayBeShadow)
    return `${names}, but each tells inside the groups of the other: neither looks like a mere shadow.`;
  const [shadow, real] = first.mayBeShadow ? [first, second] : [second, first];
  return `${names}: ${factorName(shadow.factor)} may be the shadow of ${factorName(real.factor)}, because inside its groups it tells nothing by itself.`;
}

/** What to measure, read or keep from now on, so that a find is confirmed or cleared. */
export function settleSentence({ column, level }: Pick<Factor, 'column' | 'level'>): string {
  if (column.kind === 'number') {
    switch (column.tells) {
      case 'clearance':
        return `At the next teardowns read ${column.name} as found before anything comes apart, and measure the frictions: worn where it was built tight is one thing, worn everywhere another.`;
      case 'leak-down':
        return `Read ${column.name} on every build, and again as found when a unit comes back, before the pack is opened; look at its sealing rings and their grooves.`;
      case 'cooler flow':
        return `Measure ${column.name} when a unit comes back, before the cooler is flushed, and write the fluid’s smell and colour down.`;
      case 'line pressure':
        return `Read ${column.name} as found when a unit comes back, with the gauge checked that month.`;
      case 'reused plates':
        return `At the next teardowns tell new plates from reused ones, plate by plate: thickness left, hot spots, coning.`;
      default:
        return `Read ${column.name} as found at the next teardowns and hold it against what was built.`;
    }
  }
  switch (column.grouping) {
    case 'method':
      return `Read the next eight packs both ways in the same state, ${level} and the other: the pairs tell whether ${level} reads high or low.`;
    case 'plates':
      return 'Read the next eight packs dry and soaked in the same state, and build the pack by one way only.';
    case 'builder':
      return `Have somebody else read eight packs that ${level} has read, before they are closed, and hold a repeat test: hands, gauges and habits are told apart that way.`;
    case 'batch':
      return `Measure what is left of ${level}, keep it apart, and look at the plates of that batch in every unit that comes back.`;
    case 'installer':
      return 'When such a unit comes back look at cooler, fluid level, converter seating and cables before it is pulled.';
    case 'use':
      return 'Write miles or passes down at delivery and at return, so that harder use can be told from more of it.';
    default:
      return `Build the next ones of like kind by turns with and without “${level}”, and write down which.`;
  }
}
