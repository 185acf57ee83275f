// What lines come to, in whole cents. Each line is rounded once, the tax is computed once on the taxable sum and rounded
// once, both to the nearest cent with the half away from zero.

export type PricedLine = {
  readonly quantity_hundredths: number;
  readonly unitPrice_cents: number;
  readonly isTaxable: boolean;
};

export type Totals = {
  /** The lines before tax. */
  readonly lines_cents: number;
  /** Those of them that are taxed. */
  readonly taxable_cents: number;
  readonly tax_cents: number;
  readonly total_cents: number;
};

/** Said on the screen and on paper, word for word. */
export const roundingWords =
  'Each line is rounded to the cent; tax is figured once, on the taxable sum, and rounded to the cent. Half a cent goes away from zero.';

/** Quantity times price, rounded to the cent. Exact while both are safe integers and the amount is one too. */
export function lineAmount_cents({ quantity_hundredths, unitPrice_cents }: Omit<PricedLine, 'isTaxable'>): number {
  return share_cents(unitPrice_cents, quantity_hundredths, 100);
}

/** The tax on a sum, rounded to the cent; 8.875 % is 8875 per hundred thousand. */
export function taxOn_cents(taxable_cents: number, perHundredThousand: number): number {
  return share_cents(taxable_cents, perHundredThousand, 100_000);
}

/** What the lines come to, whatever their order. */
export function totalsOf(lines: readonly PricedLine[], taxPerHundredThousand: number): Totals {
  const lines_cents = sumOf(lines);
  const taxable_cents = sumOf(lines.filter((line) => line.isTaxable));
  const tax_cents = taxOn_cents(taxable_cents, taxPerHundredThousand);
  return { lines_cents, taxable_cents, tax_cents, total_cents: lines_cents + tax_cents };
}

function sumOf(lines: readonly PricedLine[]): number {
  return lines.reduce((sum, line) => sum + lineAmount_cents(line), 0);
}

// The whole multiples first: what is left over stays small enough to be exact in a double.
function share_cents(cents: number, parts: number, whole: number): number {
  const size = Math.abs(cents);
  const rest = (size % whole) * parts;
  const wholes = ((size - (size % whole)) / whole) * parts + Math.floor(rest / whole);
  const rounded = wholes + (2 * (rest % whole) >= whole ? 1 : 0);
  return cents < 0 && rounded !== 0 ? -rounded : rounded;
}
