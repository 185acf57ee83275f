// Which of the widths a part comes in a reading names: the one it is within, or none.
import { accept, type Result, refuse } from '../base/result.ts';
import { formatAmount } from '../quantities/format-amount.ts';
import { unitNamed } from '../quantities/units.ts';
import type { Check } from '../specs/spec-sheet.ts';

/** The name of the variant that `value` (base units) lies within, or a refusal that says what there is. */
export function nameVariant(value: number, check: Pick<Check, 'name' | 'unit' | 'limits'>): Result<string> {
  const variants = check.limits.kind === 'variants' ? check.limits.variants : [];
  const named = variants.find((variant) => Math.abs(value - variant.nominal) <= variant.within);
  if (named) return accept(named.name);
  const unit = unitNamed(check.unit);
  const known = variants.map(
    (each) => `${each.name} (${formatAmount(each.nominal, unit)} ± ${formatAmount(each.within, unit)})`,
  );
  return refuse(
    'between-variants',
    `${formatAmount(value, unit)} ${unit.name} is neither ${known.join(' nor ')}: read it again.`,
  );
}
