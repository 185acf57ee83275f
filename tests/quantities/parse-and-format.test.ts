import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatAmount, formatLengthTwice } from '../../app/quantities/format-amount.ts';
import { type AmountField, parseAmount } from '../../app/quantities/parse-amount.ts';
import { unitNamed, unitNames } from '../../app/quantities/units.ts';

const thouField: AmountField = {
  quantity: 'length',
  unit: 'thou',
  decimalMark: '.',
  what: 'a clearance',
  largest: 25_400_000,
};

const amountOf = (typed: string, field: AmountField = thouField) => {
  const parsed = parseAmount(typed, field);
  if (!parsed.ok) throw new Error(parsed.refusal.message);
  return parsed.value;
};
const refusalOf = (typed: string, field: AmountField = thouField) => {
  const parsed = parseAmount(typed, field);
  return parsed.ok ? undefined : parsed.refusal;
};

describe('what a builder types is what is kept', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, appendix B.8), so 1 thou = 25 400 nm.
  test.each([
    ['45', 1_143_000],
    ['45.5t', 1_155_700],
    ['.045 in', 1_143_000],
    ['1.14 mm', 1_140_000],
    ['0.8', 20_320],
    ['−4', -101_600],
  ])('%s on a thou field', (typed, amount_nm) => {
    expect(amountOf(typed)).toBe(amount_nm);
  });

  test('1 3/16 is an inch fraction and 5/32 too', () => {
    const roomy = { ...thouField, largest: 1_000_000_000 };
    expect(amountOf('1 3/16', roomy)).toBe(30_162_500);
    expect(amountOf('5/32', roomy)).toBe(3_968_750);
    expect(amountOf('1 1/8 in', roomy)).toBe(28_575_000);
  });

  test('a clearance of 32 thou is said back as 0.813 mm', () => {
    expect(formatLengthTwice(32 * 25_400, 'thou')).toBe('32.0 thou · 0.813 mm');
  });

  // Factors: NIST SP 811 appendix B.8 (psi 6.894 757 kPa, ft·lbf 1.355 818 N·m, lbf·in 0.112 984 8 N·m) and
  // 1 US quart = 0.946 352 946 L.
  test.each([
    ['40', 'pressure', 'psi', 275_790],
    ['18', 'torque', 'lb-ft', 24_405],
    ['100', 'torque', 'lb-in', 11_298],
    ['1.3', 'volume', 'qt', 1_230_259],
    ['2.25', 'angle', 'turns', 810],
  ] as const)('%s in %s is kept in %s to the nearest base unit', (typed, quantity, unit, amount) => {
    expect(amountOf(typed, { quantity, unit, decimalMark: '.' })).toBe(amount);
  });
});

describe('what is ambiguous or wrong is asked in one plain sentence, and never guessed', () => {
  test.each([
    ['.5', 'which-unit'],
    ['0.045', 'which-unit'],
    ['45 in', 'implausible'],
    ['abc', 'not-a-number'],
    ['', 'empty'],
    ['4.5.1', 'two-decimal-marks'],
    ['4,5', 'decimal-mark'],
    ['1 3/7', 'not-a-fraction'],
    ['5/4', 'not-a-fraction'],
    ['45 furlongs', 'unknown-unit'],
    ['1/128', 'not-a-fraction'],
    ['0.00000001 mm', 'too-fine'],
    ['1e3', 'unknown-unit'],
    ['NaN', 'not-a-number'],
    ['Infinity', 'not-a-number'],
    ['999999999999999999999', 'too-large'],
  ])('%s is refused as %s', (typed, code) => {
    const refusal = refusalOf(typed);
    expect(refusal?.code).toBe(code);
    expect(refusal?.message).toMatch(/^[^\n]+[.?]$/);
  });

  test('a shop that writes a comma is understood, and a point there is refused', () => {
    const comma: AmountField = { quantity: 'length', unit: 'mm', decimalMark: ',' };
    expect(amountOf('1,14', comma)).toBe(1_140_000);
    expect(refusalOf('1.14', comma)?.code).toBe('decimal-mark');
  });

  test('a steel of 78 mm is asked about', () => {
    expect(refusalOf('78 mm', { ...thouField, what: 'a steel' })?.message).toBe(
      '“78 mm” would be 78 mm, too large for a steel: check the unit.',
    );
  });
});

describe('parse and format are each other’s inverse', () => {
  const mark = fc.constantFrom('.' as const, ',' as const);

  test.each(unitNames)('every number somebody can type in “%s” comes back as typed', (name) => {
    const unit = unitNamed(name);
    // Turns are kept in whole degrees, so a hundredth of a turn does not come back; whole ones do.
    const decimalsKept = fc.integer({ min: 0, max: unit.quantity === 'angle' ? 0 : unit.decimals });
    fc.assert(
      fc.property(fc.bigInt({ min: -999_999n, max: 999_999n }), decimalsKept, mark, (number, decimals, decimalMark) => {
        const negative = number < 0n;
        const digits = (negative ? -number : number).toString().padStart(decimals + 1, '0');
        const cut = digits.length - decimals;
        const typed = `${negative ? '−' : ''}${digits.slice(0, cut)}${decimals > 0 ? decimalMark + digits.slice(cut) : ''}`;
        const amount = amountOf(`${typed} ${name}`.trim(), { quantity: unit.quantity, unit: name, decimalMark });
        expect(formatAmount(amount, unit, { decimals, decimalMark })).toBe(typed);
      }),
    );
  });

  test('inch to millimetre and back loses nothing at a tenth of a thou', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), (tenths) => {
        const amount_nm = amountOf(`${(tenths / 10).toFixed(1)} thou`, { ...thouField, largest: 1e12 });
        const millimetres = formatAmount(amount_nm, unitNamed('mm'), { decimals: 6 });
        expect(amountOf(`${millimetres} mm`, { ...thouField, largest: 1e12 })).toBe(amount_nm);
      }),
    );
  });
});
