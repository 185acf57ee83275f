// NIST SP 811 appendix B. The factors were computed as exact fractions from 1 in = 25.4 mm, 1 lb = 0.45359237 kg and
// g = 9.80665 m/s² in other software.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convertExactly, convertibleUnits } from '../../app/quantities/exact-conversion.ts';
import { accepted, expectRefusal } from '../statistics/result.ts';

describe('one of a unit in another, every digit', () => {
  it.each([
    ['in', 'mm', '25.4'],
    ['mm', 'in', '0.03937007874015748031496063'],
    ['thou', 'um', '25.4'],
    ['psi', 'kPa', '6.894757293168361336722673'],
    ['kPa', 'psi', '0.1450377377302092151542410'],
    ['psi', 'bar', '0.06894757293168361336722673'],
    ['bar', 'psi', '14.50377377302092151542410'],
    ['ft·lbf', 'N·m', '1.3558179483314004'],
    ['N·m', 'ft·lbf', '0.7375621492772653638780821'],
    ['in·lbf', 'N·m', '0.1129848290276167'],
    ['N·m', 'in·lbf', '8.850745791327184366536985'],
    ['lbf', 'N', '4.4482216152605'],
    ['N', 'lbf', '0.2248089430997104829100394'],
    ['lb', 'kg', '0.45359237'],
    ['kgf/cm2', 'kPa', '98.0665'],
    ['kgf·m', 'N·m', '9.80665'],
    ['in2', 'mm2', '645.16'],
    ['in3', 'cm3', '16.387064'],
    ['US qt', 'L', '0.946352946'],
    ['US gal', 'L', '3.785411784'],
    ['Btu_IT', 'J', '1055.05585262'],
    ['hp(550 ft·lbf/s)', 'W', '745.69987158227022'],
    ['mile', 'km', '1.609344'],
    ['lbf/in', 'N/mm', '0.1751268352464763779527559'],
    ['oz', 'g', '28.349523125'],
    ['slug·ft2', 'kg·m2', '1.3558179483314004'],
    ['lb·ft2', 'kg·m2', '0.0421401100938048'],
  ])('%s in %s', (from, to, expected) => {
    expect(accepted(convertExactly('1', from, to))).toBe(expected);
  });

  it('temperatures go by their zeros and temperature differences do not', () => {
    expect(accepted(convertExactly('212', '°F', '°C'))).toBe('100');
    expect(accepted(convertExactly('-40', 'degF', 'degC'))).toBe('-40');
    expect(accepted(convertExactly('98.6', '°F', 'K'))).toBe('310.15');
    expect(accepted(convertExactly('9', 'Δ°F', 'ΔK'))).toBe('5');
  });

  it('0.0355 in is 0.9017 mm, and a value goes there and back unchanged', () => {
    expect(accepted(convertExactly('0.0355', 'in', 'mm'))).toBe('0.9017');
    const pairs = [
      ['in', 'mm'],
      ['thou', 'um'],
      ['lbf', 'N'],
      ['ft·lbf', 'N·m'],
      ['US qt', 'L'],
      ['lb', 'kg'],
      ['mile', 'km'],
    ] as const;
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.integer({ min: -1e9, max: 1e9 }), ([from, to], tenThousandths) => {
        const typed = `${tenThousandths < 0 ? '-' : ''}${Math.floor(Math.abs(tenThousandths) / 10000)}.${String(Math.abs(tenThousandths) % 10000).padStart(4, '0')}`;
        const back = accepted(convertExactly(accepted(convertExactly(typed, from, to)), to, from));
        expect(Number(back)).toBe(Number(typed));
      }),
    );
  });

  it('refuses what is not a number, not a unit, or not the same kind of thing', () => {
    for (const value of ['', '.', '1,5', '1.2.3', 'NaN', 'Infinity', '0x10', '12 in']) {
      expectRefusal(convertExactly(value, 'in', 'mm'), 'not-a-number');
    }
    expectRefusal(convertExactly('1e9999', 'in', 'mm'), 'out-of-range');
    expectRefusal(convertExactly('1', 'cubit', 'mm'), 'unknown-unit');
    expectRefusal(convertExactly('1', 'in', 'Mm'), 'unknown-unit');
    expectRefusal(convertExactly('1', 'N·m', 'nm'), 'different-kinds');
  });

  it('every unit is itself', () => {
    for (const unit of convertibleUnits()) expect(accepted(convertExactly('1.25', unit, unit))).toBe('1.25');
  });
});
