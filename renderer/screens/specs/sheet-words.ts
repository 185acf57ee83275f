// The closed words of a spec sheet, and its limits, as a person reads them.
import { formatAmount } from '../../../app/quantities/format-amount.ts';
import type { AmountField } from '../../../app/quantities/parse-amount.ts';
import { readUnitNames, unitNamed } from '../../../app/quantities/units.ts';
import { exactText } from '../../../app/specs/exact-text.ts';
import {
  type Check,
  type HoldsFor,
  holdsFor,
  type Limits,
  methods,
  type PlacementRule,
  pieceKinds,
  type ReadingMethod,
  type WaveState,
  waveStates,
} from '../../../app/specs/spec-sheet.ts';

const methodWords: Record<ReadingMethod, string> = {
  air: 'by air',
  feeler: 'by feeler',
  dial: 'by dial',
  direct: 'directly',
  count: 'by counting',
  drop: 'as a drop',
};
const waveWords: Record<WaveState, string> = {
  none: 'no wave plate',
  in: 'wave plate in',
  flattened: 'wave plate flattened',
  'left out': 'wave plate left out',
};
const ruleWords: Record<PlacementRule['kind'], string> = {
  'thinnest-in': 'thinnest',
  'thickest-in': 'thickest',
  'all-equal': 'all equal',
};

export const methodOptions = methods.map((id) => ({ id, words: methodWords[id] }));
export const waveOptions = waveStates.map((id) => ({ id, words: waveWords[id] }));
export const holdsForOptions = holdsFor.map((id) => ({ id, words: id }));
/** What each choice asks of the spots. */
export const holdsForMeaning: Record<HoldsFor, string> = {
  'mean and tightest': 'mean inside, tightest spot not below the low limit',
  mean: 'mean of the spots inside',
  'tightest spot': 'tightest spot inside',
  'every spot': 'every spot inside',
};
export const kindOptions = pieceKinds.map((id) => ({ id, words: id }));
export const ruleOptions = (['thinnest-in', 'thickest-in', 'all-equal'] as const).map((id) => ({
  id,
  words: ruleWords[id],
}));
/** A count has no unit, and a list no entry without a name. */
export const countUnit = 'count';
export const unitOptions = readUnitNames.map((name) => ({ id: name || countUnit, words: name || countUnit }));

/** How a check is read, in passing: "by air, 4 spots, wave plate in"; nothing for one number read directly. */
export function howRead(check: Pick<Check, 'method' | 'spots' | 'waveState'>): string {
  return [
    check.method === 'direct' ? '' : methodWords[check.method],
    check.spots === 1 ? '' : `${check.spots} spots`,
    check.waveState === 'none' ? '' : waveWords[check.waveState],
  ]
    .filter((each) => each !== '')
    .join(', ');
}

/** Limits in full: "target 25, good enough 20 to 30 thou". */
export function sayLimits(limits: Limits, field: AmountField): string {
  const write = (amount: number) => {
    const { figures, unit } = exactText([amount], field);
    const rounded = () => formatAmount(amount, unitNamed(field.unit), { decimalMark: field.decimalMark });
    return unit === '' && figures[0] !== undefined ? figures[0] : rounded();
  };
  return `${limitsSaid(limits, write)} ${field.unit}`.trim();
}

/** And a length in the other system beside it: "20 to 30 thou · 0.508 to 0.762 mm". */
export function sayLimitsTwice(limits: Limits, field: AmountField): string {
  const own = sayLimits(limits, field);
  if (field.quantity !== 'length' || limits.kind === 'variants') return own;
  const other = field.unit === 'mm' ? 'thou' : 'mm';
  const write = (amount: number) => formatAmount(amount, unitNamed(other), { decimalMark: field.decimalMark });
  const range = limits.kind === 'target' ? ({ ...limits, kind: 'range' } as const) : limits;
  return `${own} · ${limitsSaid(range, write)} ${other}`;
}

function limitsSaid(limits: Limits, write: (amount: number) => string): string {
  switch (limits.kind) {
    case 'range':
      return `${write(limits.low)} to ${write(limits.high)}`;
    case 'target':
      return `target ${write(limits.target)}, good enough ${write(limits.low)} to ${write(limits.high)}`;
    case 'minimum':
      return `at least ${write(limits.low)}`;
    case 'maximum':
      return `at most ${write(limits.high)}`;
    case 'variants':
      return limits.variants
        .map(({ name, nominal, within }) => `“${name}” from ${write(nominal - within)} to ${write(nominal + within)}`)
        .join(', ');
  }
}
