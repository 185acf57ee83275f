// How what a vehicle asks of its clutches is typed.
import type { DecimalMark } from '../quantities/format-amount.ts';
import type { AmountField } from '../quantities/parse-amount.ts';
import type { LengthUnit } from '../quantities/units.ts';

export function loadFields({
  lengthUnit,
  decimalMark,
}: {
  readonly lengthUnit: LengthUnit;
  readonly decimalMark: DecimalMark;
}): { readonly engineTorque: AmountField; readonly converterRatio: AmountField } {
  return {
    engineTorque: {
      quantity: 'torque',
      unit: lengthUnit === 'thou' ? 'lb-ft' : 'N·m',
      decimalMark,
      what: 'the engine’s torque',
    },
    converterRatio: { quantity: 'ratio', unit: '×', decimalMark, what: 'a converter ratio', largest: 20_000_000 },
  };
}
