// Money of an estimate: rounding by a published rule and by hand, and what must hold for any lines at all.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ComparedLine, changesBetween } from '../../app/jobs/estimate-changes.ts';
import { lineAmount_cents, type PricedLine, taxOn_cents, totalsOf } from '../../app/jobs/estimate-total.ts';
import {
  formatQuantity,
  formatTaxRate,
  parseMoneyOrCredit,
  parseQuantity,
  parseTaxRate,
} from '../../app/jobs/estimate-typed.ts';

// The rule, R.I. Gen. Laws § 44-18.1-25 (Rounding rule): "Tax computation must be carried to the third decimal place,
// and the tax must be rounded to a whole cent using a method that rounds up to the next cent whenever the third decimal
// place is greater than four"; on an invoice basis if the seller so elects. The same on the sum of an invoice: A New Tax
// System (Goods and Services Tax) Act 1999 (Australia), s 9-90 (2)(a), "rounding 0.5 cents upwards". Neither gives
// figures; those below are the rule carried out by hand.
describe('tax is rounded as the statutes say, the figures by hand', () => {
  test.each([
    // 100.00 × 8.875 % = 8.875: third decimal 5, up.
    [10_000, 8875, 888],
    // 100.01 × 8.875 % = 8.8758875: third decimal 5, up.
    [10_001, 8875, 888],
    // 99.99 × 8.875 % = 8.8741125: third decimal 4, down.
    [9_999, 8875, 887],
    // 0.10 × 5 % = 0.005: up to a cent.
    [10, 5000, 1],
    // 0.08 × 6 % = 0.0048: down to nothing.
    [8, 6000, 0],
    // 1,234.50 × 7.25 % = 89.50125.
    [123_450, 7250, 8950],
    // A credit of 100.00 is the charge of 100.00 with its sign turned: half away from zero.
    [-10_000, 8875, -888],
    [5_000, 0, 0],
  ])('%d cents at %d per hundred thousand: %d', (taxable, rate, tax) => {
    expect(taxOn_cents(taxable, rate)).toBe(tax);
  });
});

describe('a line is rounded once, by hand', () => {
  test.each([
    // 1.25 h × 115.50 = 144.375, half a cent, up.
    [125, 11_550, 14_438],
    // 0.33 × 0.05 = 0.0165.
    [33, 5, 2],
    // 0.50 × 0.01 = 0.005: a cent, and as a credit minus a cent.
    [50, 1, 1],
    [50, -1, -1],
    // 0.49 × 0.01 = 0.0049.
    [49, 1, 0],
    // 9 × 7.50.
    [900, 750, 6_750],
  ])('%d hundredths at %d cents: %d', (quantity_hundredths, unitPrice_cents, amount) => {
    expect(lineAmount_cents({ quantity_hundredths, unitPrice_cents })).toBe(amount);
  });
});

test('tax is figured on the sum, not line by line', () => {
  // Three lines of 0.10 at 5 %: 0.30 × 5 % = 0.015, up to 0.02. Line by line it would be 3 × 0.01 = 0.03.
  const line = { quantity_hundredths: 100, unitPrice_cents: 10, isTaxable: true };
  expect(totalsOf([line, line, line], 5000)).toEqual({
    lines_cents: 30,
    taxable_cents: 30,
    tax_cents: 2,
    total_cents: 32,
  });
});

test('a whole estimate by hand', () => {
  // 18.5 h × 115.00 = 2,127.50, not taxed; 9 × 7.50 = 67.50 and 1 × 189.95, taxed; a core back, −50.00, taxed.
  // Taxable 67.50 + 189.95 − 50.00 = 207.45; × 8.875 % = 18.4111875, so 18.41. Total 2,334.95 + 18.41 = 2,353.36.
  const lines = [
    { quantity_hundredths: 1850, unitPrice_cents: 11_500, isTaxable: false },
    { quantity_hundredths: 900, unitPrice_cents: 750, isTaxable: true },
    { quantity_hundredths: 100, unitPrice_cents: 18_995, isTaxable: true },
    { quantity_hundredths: 100, unitPrice_cents: -5_000, isTaxable: true },
  ];
  expect(totalsOf(lines, 8875)).toEqual({
    lines_cents: 233_495,
    taxable_cents: 20_745,
    tax_cents: 1_841,
    total_cents: 235_336,
  });
});

const quantity = fc.integer({ min: 1, max: 1_000_000 });
const price = fc.integer({ min: -1_000_000, max: 100_000_000 });
const rate = fc.integer({ min: 0, max: 100_000 });
const line: fc.Arbitrary<PricedLine> = fc.record({
  quantity_hundredths: quantity,
  unitPrice_cents: price,
  isTaxable: fc.boolean(),
});
const lines = fc.array(line, { maxLength: 30 });

describe('for any lines at any rate', () => {
  test('the rounded share is the nearest whole cent, a half away from zero, in whole numbers of any length', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e13, max: 1e13 }), rate, (cents, parts) => {
        const twice = 2n * BigInt(cents) * BigInt(parts);
        const whole = 100_000n;
        const sign = twice < 0n ? -1n : 1n;
        // floor(|x| + ½) with its sign, in integers.
        const nearest = (sign * (sign * twice + whole)) / (2n * whole);
        expect(BigInt(taxOn_cents(cents, parts))).toBe(nearest);
      }),
    );
  });

  test('the order of the lines changes nothing', () => {
    const shuffled = lines.chain((some) =>
      fc.tuple(fc.constant(some), fc.shuffledSubarray(some, { minLength: some.length })),
    );
    fc.assert(
      fc.property(shuffled, rate, ([some, other], at) => {
        expect(totalsOf(other, at)).toEqual(totalsOf(some, at));
      }),
    );
  });

  test('total is lines and tax, and untaxed lines bear none', () => {
    fc.assert(
      fc.property(lines, rate, (some, at) => {
        const totals = totalsOf(some, at);
        expect(totals.total_cents).toBe(totals.lines_cents + totals.tax_cents);
        const untaxed = some.map((each) => ({ ...each, isTaxable: false }));
        expect(totalsOf(untaxed, at).total_cents).toBe(totals.lines_cents);
      }),
    );
  });

  test('splitting a line moves the total by no more than the rounding of its parts, the tax on that, and a cent', () => {
    const parts = fc.array(quantity, { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(lines, parts, price, fc.boolean(), rate, (others, split, unitPrice_cents, isTaxable, at) => {
        const of = (quantity_hundredths: number) => ({ quantity_hundredths, unitPrice_cents, isTaxable });
        const whole = totalsOf([...others, of(split.reduce((sum, each) => sum + each, 0))], at);
        const apart = totalsOf([...others, ...split.map(of)], at);
        // Half a cent for each part and half for the whole; the tax on that difference, rounded twice.
        const most = (split.length + 1) / 2;
        expect(Math.abs(apart.lines_cents - whole.lines_cents)).toBeLessThanOrEqual(most);
        const mostInAll = most + (most * at) / 100_000 + 1;
        expect(Math.abs(apart.total_cents - whole.total_cents)).toBeLessThanOrEqual(mostInAll);
      }),
    );
  });
});

describe('what changed', () => {
  const compared = fc
    .array(line, { maxLength: 12 })
    .map((some) =>
      some.map((each, index): ComparedLine => ({ ...each, lineId: index + 1, description: `line ${index + 1}` })),
    );
  const edits = fc.array(fc.constantFrom('keep', 'replace', 'take off'), { minLength: 12, maxLength: 12 });

  test('the differences add up to the difference of the totals, whatever was kept, replaced, taken off or added', () => {
    fc.assert(
      fc.property(compared, edits, lines, line, rate, rate, (before, acts, added, other, rateBefore, rateNow) => {
        const replacedBy = new Map<number, number>();
        const kept = before.flatMap((each, index): ComparedLine[] => {
          if (acts[index] === 'take off') return [];
          if (acts[index] === 'keep') return [each];
          // Replaced twice over: only the last one stands.
          replacedBy.set(each.lineId, 100 + index).set(100 + index, 200 + index);
          return [{ ...other, lineId: 200 + index, description: each.description }];
        });
        const more = added.map((each, index) => ({ ...each, lineId: 300 + index, description: 'new' }));
        const now = [...kept, ...more];
        const changes = changesBetween(
          { lines: before, taxPerHundredThousand: rateBefore },
          { lines: now, taxPerHundredThousand: rateNow },
          replacedBy,
        );
        const sum = changes.lines.reduce((cents, each) => cents + each.difference_cents, 0);
        const [was, is] = [totalsOf(before, rateBefore), totalsOf(now, rateNow)];
        expect(changes.total_difference_cents).toBe(is.total_cents - was.total_cents);
        expect(sum + changes.tax_difference_cents).toBe(changes.total_difference_cents);
        const untouched = before.filter((_, index) => acts[index] === 'keep').length;
        expect(changes.lines).toHaveLength(before.length - untouched + more.length);
      }),
    );
  });
});

describe('typed figures', () => {
  test.each([
    ['2', 200],
    ['1.25', 125],
    ['.5', 50],
    ['', 100],
    ['0.01', 1],
  ])('quantity “%s” is %d hundredths', (typed, hundredths) => {
    expect(parseQuantity(typed, '.')).toEqual({ ok: true, value: hundredths });
  });

  test.each(['0', '-1', '1.255', '1,5', 'two', '.', '99999'])('quantity “%s” is refused', (typed) => {
    expect(parseQuantity(typed, '.').ok).toBe(false);
  });

  test.each([
    ['8.875', 8875],
    ['8.875 %', 8875],
    ['7', 7000],
    ['', 0],
    ['100', 100_000],
  ])('tax “%s” is %d per hundred thousand', (typed, parts) => {
    expect(parseTaxRate(typed, '.')).toEqual({ ok: true, value: parts });
  });

  test.each(['100.001', '8.8755', '-1', 'none'])('tax “%s” is refused', (typed) => {
    expect(parseTaxRate(typed, '.').ok).toBe(false);
  });

  test('a currency sign in front is no hindrance', () => {
    expect(parseMoneyOrCredit('$310.00', '.')).toEqual({ ok: true, value: 31_000 });
    expect(parseMoneyOrCredit('-€ 12,50', ',')).toEqual({ ok: true, value: -1250 });
    expect(parseMoneyOrCredit('310 $', '.').ok).toBe(false);
  });

  test('a minus sign is a credit', () => {
    expect(parseMoneyOrCredit('-50', '.')).toEqual({ ok: true, value: -5000 });
    expect(parseMoneyOrCredit('−50,25', ',')).toEqual({ ok: true, value: -5025 });
    expect(parseMoneyOrCredit('--50', '.').ok).toBe(false);
  });

  test('what is written is read back the same, with either mark', () => {
    fc.assert(
      fc.property(quantity, rate, fc.constantFrom('.' as const, ',' as const), (hundredths, parts, mark) => {
        expect(parseQuantity(formatQuantity(hundredths, mark), mark)).toEqual({ ok: true, value: hundredths });
        expect(parseTaxRate(formatTaxRate(parts, mark), mark)).toEqual({ ok: true, value: parts });
      }),
    );
  });
});
