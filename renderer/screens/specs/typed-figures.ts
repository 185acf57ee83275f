// How the figures of a sheet are typed and written back: heights, limits, washers.
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import type { AmountField } from '../../../app/quantities/parse-amount.ts';
import { type LengthUnit, unitNamed } from '../../../app/quantities/units.ts';
import { exactText } from '../../../app/specs/exact-text.ts';
import type { Check } from '../../../app/specs/spec-sheet.ts';

/** What bare figures mean, as it was when editing began: a setting changed since must not change what was typed. */
export type Figures = { readonly lengthUnit: LengthUnit; readonly decimalMark: DecimalMark };

const inch_nm = 25_400_000;
const metre_nm = 1_000_000_000;

/** How the height of a plate is typed. */
export function heightField({ lengthUnit, decimalMark }: Figures): AmountField {
  return { quantity: 'length', unit: lengthUnit, decimalMark, largest: inch_nm, what: 'a height' };
}

/** How the limits of a check are typed; beyond an inch only what is read directly can be meant. */
export function limitsField({ unit, method }: Pick<Check, 'unit' | 'method'>, { decimalMark }: Figures): AmountField {
  const { quantity } = unitNamed(unit);
  const field = { quantity, unit, decimalMark, what: 'a limit' };
  if (quantity !== 'length') return field;
  return method === 'direct'
    ? { ...field, largest: metre_nm }
    : { ...field, largest: inch_nm, what: `a limit by ${method}` };
}

/** How the washers of a check are typed: in its own unit where that is a length. */
export function washersField({ unit }: Pick<Check, 'unit'>, figures: Figures): AmountField {
  return { ...heightField(figures), unit: unitNamed(unit).quantity === 'length' ? unit : figures.lengthUnit };
}

/** One amount as the sheet has it: "25", or "0.5 mm" where its unit cannot say it exactly. */
export function amountText(amount: number, field: AmountField): string {
  const { figures, unit } = exactText([amount], field);
  return `${figures[0]} ${unit}`.trim();
}
