import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AmountField } from '../../app/quantities/parse-amount.ts';
import { unitNamed, unitNames } from '../../app/quantities/units.ts';
import { heightsText, parseHeights } from '../../app/specs/heights-text.ts';
import { limitsText, parseLimits } from '../../app/specs/limits-text.ts';
import type { Limits } from '../../app/specs/spec-sheet.ts';

const thouField: AmountField = { quantity: 'length', unit: 'thou', decimalMark: '.' };
const inchField: AmountField = { ...thouField, unit: 'in' };

const read = (typed: string, field = thouField) => {
  const limits = parseLimits(typed, field);
  if (!limits.ok) throw new Error(`${typed}: ${limits.refusal.message}`);
  return limits.value;
};
const asked = (typed: string, field = thouField) => {
  const limits = parseLimits(typed, field);
  return limits.ok ? undefined : limits.refusal.code;
};

// 1 in = 25.4 mm exactly (NIST SP 811, appendix B.8), so 1 thou is 25 400 nm and 1/16 in is 1 587 500 nm.
const thou = (value: number) => Math.round(value * 25_400);
const range = (low: number, high: number) => ({ kind: 'range', low, high });
const target = (aim: number, low: number, high: number) => ({ kind: 'target', target: aim, low, high });

describe('limits typed in the shop’s words', () => {
  test.each([
    ['20-30', range(thou(20), thou(30))],
    ['20 – 30', range(thou(20), thou(30))],
    ['20 to 30', range(thou(20), thou(30))],
    ['0.8-2', range(thou(0.8), thou(2))],
    ['.8t-2', range(thou(0.8), thou(2))],
    ['-2 to 3', range(thou(-2), thou(3))],
    ['0.5-0.8 mm', range(500_000, 800_000)],
    ['25 20-30', target(thou(25), thou(20), thou(30))],
    ['25, 20-30', target(thou(25), thou(20), thou(30))],
    ['25 (20 to 30)', target(thou(25), thou(20), thou(30))],
    ['25±5', target(thou(25), thou(20), thou(30))],
    ['25 +- 5', target(thou(25), thou(20), thou(30))],
    ['min 5', { kind: 'minimum', low: thou(5) }],
    ['at least 5', { kind: 'minimum', low: thou(5) }],
    ['5 min', { kind: 'minimum', low: thou(5) }],
    ['max 10', { kind: 'maximum', high: thou(10) }],
    ['≤ 10 thou', { kind: 'maximum', high: thou(10) }],
  ])('%s', (typed, limits) => {
    expect(read(typed)).toEqual(limits);
  });

  test('inch fractions, alone and as a range', () => {
    expect(read('min 1 1/8', inchField)).toEqual({ kind: 'minimum', low: 18 * 1_587_500 });
    expect(read('1/8-3/16', inchField)).toEqual(range(2 * 1_587_500, 3 * 1_587_500));
    expect(read('1 1/8 to 1 3/16', inchField)).toEqual(range(18 * 1_587_500, 19 * 1_587_500));
    expect(read('5/32 1/8-3/16', inchField)).toEqual(target(3_968_750, 2 * 1_587_500, 3 * 1_587_500));
  });

  test('a torque in its own unit, to the nearest millinewton metre', () => {
    // 1 ft·lbf = 1.355 818 N·m and 1 lbf·in = 0.112 984 8 N·m (NIST SP 811, appendix B.8).
    const field: AmountField = { quantity: 'torque', unit: 'lb-ft', decimalMark: '.' };
    expect(read('18 17.1-18.9', field)).toEqual(target(24_405, 23_184, 25_625));
    expect(read('90-110 lb-in', field)).toEqual(range(10_169, 12_428));
  });

  test('variants keep their names, or are called by their nominal', () => {
    const variants = (first: string, second: string) => ({
      kind: 'variants',
      variants: [
        { name: first, nominal: thou(90), within: thou(3) },
        { name: second, nominal: thou(118), within: thou(3) },
      ],
    });
    expect(read('90±3, 118±3')).toEqual(variants('90', '118'));
    expect(read('90 wide: 90 +- 3; 118 wide: 118 +/- 3')).toEqual(variants('90 wide', '118 wide'));
    expect(read('narrow, old: 90±3, 118±3 thou')).toEqual(variants('narrow, old', '118'));
  });

  test('a shop that writes a comma', () => {
    const field: AmountField = { quantity: 'length', unit: 'mm', decimalMark: ',' };
    expect(read('0,5-0,8', field)).toEqual(range(500_000, 800_000));
    expect(read('2,3±0,1, 3±0,1', field)).toMatchObject({ variants: [{ nominal: 2_300_000 }, { nominal: 3_000_000 }] });
  });
});

describe('what is wrong or could mean two things is asked', () => {
  test.each([
    ['', 'empty'],
    ['30-20', 'limits'],
    ['20-20', 'limits'],
    ['35 20-30', 'limits'],
    ['90±3, 95±3', 'limits'],
    ['25', 'which-limit'],
    ['20 30', 'range-or-target'],
    ['1-3/16', 'which-fraction'],
    ['.5-2', 'which-unit'],
    ['twenty', 'not-limits'],
    ['20-30-40', 'not-limits'],
    ['20-3O', 'unknown-unit'],
    ['20-30 furlongs', 'unknown-unit'],
    ['20,5-30', 'decimal-mark'],
    ['2.0.5-30', 'two-decimal-marks'],
    ['90±0, 118±3', 'within'],
    ['wide: 90±3', 'one-variant'],
  ])('“%s” is refused as %s', (typed, code) => {
    expect(asked(typed)).toBe(code);
  });

  test('a range as some manuals print it is asked for its unit once, and says where that goes', () => {
    expect(parseLimits('0.030-0.050', thouField)).toMatchObject({
      refusal: { message: 'Are “0.030” and “0.050” thou or inches? Type t or in behind the last of them.' },
    });
    expect(read('0.030-0.050 in')).toEqual(range(thou(30), thou(50)));
  });

  test('upside down says both limits', () => {
    const limits = parseLimits('30-20', thouField);
    expect(!limits.ok && limits.refusal.message).toBe('The low limit 30.0 is not below the high limit 20.0.');
  });

  test('45 inches of clearance is asked about', () => {
    expect(asked('40-50', { ...inchField, largest: 25_400_000 })).toBe('implausible');
  });
});

const amount = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 });
const step = fc.integer({ min: 1, max: 100_000_000 });
const anyLimits: fc.Arbitrary<Limits> = fc.oneof(
  fc.record({ low: amount, span: step }).map(({ low, span }) => ({ kind: 'range' as const, low, high: low + span })),
  fc
    .record({ low: amount, below: fc.nat(9_999_999), above: step })
    .map(({ low, below, above }) => ({ kind: 'target' as const, target: low + below, low, high: low + below + above })),
  amount.map((low) => ({ kind: 'minimum' as const, low })),
  amount.map((high) => ({ kind: 'maximum' as const, high })),
  fc
    .array(fc.record({ name: fc.constantFrom('90 wide', 'narrow, old', 'late: 2', '118'), within: step, gap: step }), {
      minLength: 2,
      maxLength: 4,
    })
    .map((each) => {
      let from = 0;
      const variants = each.map(({ name, within, gap }) => {
        const nominal = from + gap + within;
        from = nominal + within;
        return { name, nominal, within };
      });
      return { kind: 'variants' as const, variants };
    }),
);
const mark = fc.constantFrom('.' as const, ',' as const);

describe('written and read back', () => {
  test.each(unitNames)('limits in “%s” come back to the last base unit', (unit) => {
    const { quantity } = unitNamed(unit);
    fc.assert(
      fc.property(anyLimits, mark, (limits, decimalMark) => {
        const field = { quantity, unit, decimalMark };
        expect(read(limitsText(limits, field), field)).toEqual(limits);
      }),
    );
  });

  test.each([
    ['20–30', '20-30'],
    ['25 20–30', '25 20-30'],
    ['−2 to 3', '-2 to 3'],
    ['min 1.125', 'min 1.125'],
    ['90 wide: 90 ± 3, 118 wide: 118 ± 3', '90 wide: 90±3, 118 wide: 118±3'],
    ['0.5–0.8 mm', '0.5-0.8 mm'],
  ])('%s stands for what was typed as %s', (shown, typed) => {
    expect(limitsText(read(typed), thouField)).toBe(shown);
  });
});

describe('the heights a part is made in', () => {
  const heights = (typed: string) => {
    const parsed = parseHeights(typed, thouField);
    return parsed.ok ? parsed.value : parsed.refusal.code;
  };

  test('typed in any order, each once', () => {
    expect(heights('74 62, 86 98 86')).toEqual([62, 74, 86, 98].map(thou));
    expect(heights('1.5 1.6 mm')).toEqual([1_500_000, 1_600_000]);
    expect(heights('')).toEqual([]);
    expect(heights('62 0')).toBe('not-positive');
    expect(heights('62 x')).toBe('unknown-unit');
  });

  test('come back as written', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 20_000_000 }), { maxLength: 12 }), (amounts) => {
        const sorted = amounts.sort((a, b) => a - b);
        expect(heights(heightsText(sorted, thouField))).toEqual(sorted);
      }),
    );
  });
});
