// A finding in words: at the bench in the trade's, on the customer's copy in plain ones.
import { type DecimalMark, formatLength } from '../quantities/format-amount.ts';
import type { LengthUnit } from '../quantities/units.ts';
import type { Condition, FindingCard, FindingDecision } from './findings.contract.ts';

type PartNamed = Pick<FindingCard, 'part' | 'packName' | 'slotName' | 'place'>;

/** "Forward friction 2", "lip seal, Forward, piston end", "pump bushing". */
export function partWords({ part, packName, slotName, place }: PartNamed): string {
  if (packName === null) return part;
  if (slotName !== null) return part === slotName ? `${packName} ${slotName}` : `${part}, ${packName} ${slotName}`;
  return [part, packName, place ?? ''].filter((each) => each !== '').join(', ');
}

/** "burnt, 71.0 of 80.0 thou left". */
export function conditionWords(
  { condition, thickness_nm, nominal_nm }: Pick<FindingCard, 'condition' | 'thickness_nm' | 'nominal_nm'>,
  { lengthUnit, decimalMark }: { readonly lengthUnit: LengthUnit; readonly decimalMark: DecimalMark },
): string {
  if (thickness_nm === null) return condition;
  const shown = (length: number) => formatLength(length, lengthUnit, undefined, decimalMark);
  const of = nominal_nm === null ? '' : ` of ${shown(nominal_nm)}`;
  return `${condition}, ${shown(thickness_nm)}${of} ${lengthUnit} left`;
}

/** For who does not work at a bench. */
export const plainCondition: Readonly<Record<Condition, string>> = {
  good: 'good',
  worn: 'worn',
  burnt: 'burnt',
  glazed: 'polished smooth by slipping',
  flaked: 'its lining comes off',
  warped: 'bent by heat',
  'heat-spotted': 'spotted by heat',
  scored: 'scratched deep',
  cracked: 'cracked',
  loose: 'too loose',
  stuck: 'stuck',
  leaking: 'leaking',
  broken: 'broken',
  missing: 'missing',
};

/** What is to be done about it. */
export const decisionWords: Readonly<Record<FindingDecision, string>> = {
  'not decided yet': 'not decided yet',
  reuse: 'to be used again',
  replace: 'to be replaced',
  machine: 'to be machined',
};

/** What was done about it, once the unit is built. */
export const doneWords: Readonly<Record<FindingDecision, string>> = {
  'not decided yet': 'not decided yet',
  reuse: 'used again',
  replace: 'replaced',
  machine: 'machined',
};
