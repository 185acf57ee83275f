// What would decide a take, said in one sentence.
import { withoutTrailingZeros } from '../charts/amounts.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Settings } from '../shop/shop.contract.ts';
import type { BudgetLine } from '../statistics/uncertainty-budget.ts';
import {
  baseOnPumpLine,
  betweenLeavesLine,
  feelerBiasLine,
  gaugeErrorLine,
  handForceLine,
  leafLine,
  micrometerLine,
  offSquareLine,
  permittedErrorLine,
  resolutionLine,
  waveringLine,
} from './budget-lines.ts';
import type { Remedy, WhatWouldDecide } from './what-would-decide.ts';

/** How amounts are written: the unit they are shown in, and the shop's decimal mark. */
export type DecideWords = { readonly unit: string; readonly decimalMark: Settings['decimalMark'] };

/** "If it stays there, 2 more reads would decide it, or a dial read to 0.5 instead of 1." */
export function decideSentence(found: WhatWouldDecide, words: DecideWords): string {
  switch (found.kind) {
    case 'one': {
      const [first = '', ...others] = found.remedies.map((remedy) => remedyWords(remedy, words));
      return `If it stays there, ${first} would decide it${others.map((other) => `, or ${other}`).join('')}.`;
    }
    case 'together': {
      const all = found.remedies.map((remedy) => remedyWords(remedy, words));
      return `No one thing would decide it; ${all.slice(0, -1).join(', ')} and ${all.at(-1)} together would.`;
    }
    case 'nothing': {
      const distance = formatAmount(found.distance, unitNamed(words.unit), words);
      const lies = /[1-9]/.test(distance) ? `lies ${distance} ${words.unit} from the limit` : 'sits on the limit';
      return `It ${lies}: no sharper reading at this bench would decide it.`;
    }
  }
}

function remedyWords(remedy: Remedy, words: DecideWords): string {
  if (remedy.kind === 'reads') return remedy.more === 1 ? '1 more read' : `${remedy.more} more reads`;
  const { line, share } = remedy;
  const half = line.standardUncertainty * Math.sqrt(3);
  const goodTo = `good to ± ${figure(half * share, words)} instead of ± ${figure(half, words)}`;
  switch (line.name) {
    case handForceLine:
      return `a push held to ± ${figure(half * share, words)} instead of ± ${figure(half, words)}`;
    case baseOnPumpLine:
      return 'the dial base on the drum';
    case offSquareLine:
      return 'the dial square to what it follows';
    case waveringLine:
      return 'a needle that stands still';
    case resolutionLine:
      return `a dial read to ${resolution(line, share, words)} instead of ${resolution(line, 1, words)}`;
    case permittedErrorLine:
      return `a dial ${goodTo}`;
    case gaugeErrorLine:
      return `a gauge ${goodTo}`;
    case leafLine:
      return `leaves ${goodTo}`;
    case micrometerLine:
      return share === 0.5 ? 'a micrometer twice as good' : 'a micrometer ten times as good';
    case betweenLeavesLine:
      return 'leaves that lie half as far apart';
    case feelerBiasLine:
      return pairsWords(line, share);
    default:
      return `less ${line.name}`;
  }
}

/** Twice the variance of a rounding: see `dialRounding`. */
function resolution(line: BudgetLine, share: number, words: DecideWords): string {
  return figure(line.standardUncertainty * share * Math.sqrt(6), words);
}

function pairsWords({ degreesOfFreedom }: BudgetLine, share: number): string {
  const pairs = degreesOfFreedom + 1;
  return `${pairs / share ** 2} pairs of feeler and air instead of ${pairs}`;
}

/** One decimal more than a reading has, and none that says nothing: "0.05", "1". */
function figure(amount: number, { unit, decimalMark }: DecideWords): string {
  const { decimals } = unitNamed(unit);
  const written = formatAmount(amount, unitNamed(unit), { decimals: decimals + 1, decimalMark });
  return withoutTrailingZeros(written);
}
