// A line while it is typed, before the book has it.
import type { EstimateLine, LineKind, MoneyTerms, StockOffer, TypedLine } from '../../../app/jobs/estimate.contract.ts';
import { isUsuallyTaxed } from '../../../app/jobs/estimate-kinds.ts';
import { formatQuantity } from '../../../app/jobs/estimate-typed.ts';
import type { DecimalMark } from '../../../app/quantities/format-amount.ts';
import { formatMoney } from '../../../app/quantities/money.ts';

export function blankLine(terms: MoneyTerms, kind: LineKind = 'labour'): TypedLine {
  return {
    kind,
    description: '',
    quantity: '',
    unitPrice: '',
    unitCost: '',
    isTaxable: isUsuallyTaxed(kind, terms),
    batchId: null,
  };
}

/** A part on the ticket, to be priced by hand. */
export function lineOfOffer({ kind, description, quantity, batchId }: StockOffer): TypedLine {
  return { kind, description, quantity: String(quantity), unitPrice: '', unitCost: '', isTaxable: true, batchId };
}

/** A line as it stands, to be changed. */
export function lineToChange(line: EstimateLine, decimalMark: DecimalMark): TypedLine {
  return {
    kind: line.kind,
    description: line.description,
    quantity: formatQuantity(line.quantity_hundredths, decimalMark),
    unitPrice: formatMoney(line.unitPrice_cents, decimalMark),
    unitCost: line.unitCost_cents === null ? '' : formatMoney(line.unitCost_cents, decimalMark),
    isTaxable: line.isTaxable,
    batchId: line.stock?.batchId ?? null,
  };
}
