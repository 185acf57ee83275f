// Figures as an exported file writes them: exact enough to count on, in the shop's decimal mark.
import { type DecimalMark, formatAmount } from '../../app/quantities/format-amount.ts';
import { type LengthUnit, type Quantity, type Unit, unitNamed } from '../../app/quantities/units.ts';
import type { CsvCell } from '../../app/stock/csv-cells.ts';

export type Figures = {
  /** Base units written in `unit`, to a hundredth of the last figure that is shown elsewhere. */
  amount(amount: number | null, unit: Unit): CsvCell;
  /** What a column of the shop file holds. */
  cell(value: unknown): CsvCell;
};

export function figuresWith(decimalMark: DecimalMark): Figures {
  return {
    amount: (amount, unit) => {
      if (amount === null) return '';
      const digits = formatAmount(amount, unit, { decimals: unit.decimals + 2 }).replace('−', '-');
      return { figure: digits.replace(/\.?0+$/, '').replace('.', decimalMark) };
    },
    cell: (value) => {
      if (value === null) return '';
      return typeof value === 'number' ? { figure: String(value).replace('.', decimalMark) } : String(value);
    },
  };
}

/** The unit a quantity is exported in, so that a whole column has one. */
export function exportedUnits(lengthUnit: LengthUnit): ReadonlyArray<readonly [Quantity, Unit]> {
  const names = lengthUnit === 'thou' ? ['thou', 'psi', 'lb-ft', 'qt'] : ['mm', 'kPa', 'N·m', 'L'];
  return [...names, '°', ''].map((name) => [unitNamed(name).quantity, unitNamed(name)] as const);
}
