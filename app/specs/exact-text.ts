// Amounts of a spec sheet as text and back, exactly: what is written is read again as the very same whole number.
import { accept, type Result, refuse } from '../base/result.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { type AmountField, parseAmount } from '../quantities/parse-amount.ts';
import { unitNamed } from '../quantities/units.ts';

/** `unit` stands once behind all of the figures; '' where the field's own unit is understood. */
export type ExactText = { readonly figures: readonly string[]; readonly unit: string };

const mostDecimals = 9;

/**
 * The shortest figures that are read back as these very amounts: bare where that will do, with the unit named where
 * bare figures would be asked about, in millimetres where a length never ends in its own unit.
 */
export function exactText(amounts: readonly number[], field: AmountField): ExactText {
  const millimetres = field.quantity === 'length' ? ['mm'] : [];
  for (const unit of ['', field.unit, ...millimetres]) {
    const figures = amounts.map((amount) => exactFigures(amount, unit, field));
    if (figures.every((each) => each !== null)) return { figures, unit };
  }
  throw new Error(`no figures in ${field.unit} mean ${amounts.join(', ')}`);
}

function exactFigures(amount: number, unit: string, field: AmountField): string | null {
  // Only what is typed may be asked about for its size.
  const { quantity, decimalMark } = field;
  const roomy = { quantity, unit: field.unit, decimalMark };
  for (let decimals = 0; decimals <= mostDecimals; decimals++) {
    const figures = formatAmount(amount, unitNamed(unit || field.unit), { decimals, decimalMark });
    const read = parseAmount(`${figures} ${unit}`, roomy);
    if (read.ok && read.value === amount) return figures;
  }
  return null;
}

/** The amounts of several typed figures; a unit behind the last one holds for every bare one before it. */
export function parseAmounts(typed: readonly string[], field: AmountField): Result<readonly number[]> {
  const unit = unitBehind(typed.at(-1) ?? '');
  const amounts: number[] = [];
  for (const figures of typed) {
    const amount = parseAmount(unitBehind(figures) === '' ? `${figures} ${unit}`.trim() : figures, field);
    if (!amount.ok && amount.refusal.code === 'which-unit' && typed.length > 1) {
      const all = typed.map((each) => `“${each.trim()}”`).join(' and ');
      return refuse('which-unit', `Are ${all} thou or inches? Type t or in behind the last of them.`);
    }
    if (!amount.ok) return amount;
    amounts.push(amount.value);
  }
  return accept(amounts);
}

function unitBehind(figures: string): string {
  return /[a-z°"][^\d]*$/i.exec(figures)?.[0].trim() ?? '';
}
