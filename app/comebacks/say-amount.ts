// Amounts of a check in the shop's words, and the word for lying on one side of other builds.
import { type DecimalMark, formatAmount } from '../quantities/format-amount.ts';
import { type LengthUnit, shownUnit, unitNamed } from '../quantities/units.ts';
import type { Check } from '../specs/spec-sheet.ts';
import type { Telling } from './what-a-check-tells.ts';

export type ShopWords = { readonly lengthUnit: LengthUnit; readonly decimalMark: DecimalMark };

/** "21.0 thou", "9.0 psi"; the bare figure where `unit` is not wanted. */
export function sayAmount(amount: number, { unit }: Pick<Check, 'unit'>, words: ShopWords, withUnit = true): string {
  const shown = unitNamed(shownUnit(unit, words.lengthUnit));
  return `${formatAmount(amount, shown, words)}${withUnit && shown.name !== '' ? ` ${shown.name}` : ''}`;
}

const sides: Readonly<Record<'room' | 'leak' | 'level' | 'size', { readonly low: string; readonly high: string }>> = {
  room: { low: 'tighter', high: 'looser' },
  leak: { low: 'less', high: 'more' },
  level: { low: 'lower', high: 'higher' },
  size: { low: 'smaller', high: 'larger' },
};

/** What lying below and above the others is called: tighter and looser for room, less and more for what leaks. */
export function sideWords(telling: Telling): { readonly low: string; readonly high: string } {
  switch (telling) {
    case 'clearance':
    case 'end play':
    case 'bushing or ring':
      return sides.room;
    case 'leak-down':
      return sides.leak;
    case 'converter':
    case 'travel':
      return sides.size;
    default:
      return sides.level;
  }
}
