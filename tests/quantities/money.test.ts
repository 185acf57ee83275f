import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatMoney, parseMoney } from '../../app/quantities/money.ts';

describe('money is whole cents and nothing is guessed', () => {
  test.each([
    ['12.50', '.', 1250],
    ['12.5', '.', 1250],
    ['12', '.', 1200],
    ['0.07', '.', 7],
    ['1,250.00', '.', 125000],
    ['1 250', '.', 125000],
    ['1.250,5', ',', 125050],
  ] as const)('%s with a %s is %i cents', (typed, mark, cents) => {
    expect(parseMoney(typed, mark)).toEqual({ ok: true, value: cents });
  });

  test.each(['', '-1', '1.255', '12,50', '1e3', '4$', '1,25', '.5', '99999999999'])('“%s” is refused', (typed) => {
    expect(parseMoney(typed, '.').ok).toBe(false);
  });

  test('what is written out reads back the same', () => {
    fc.assert(
      fc.property(fc.nat(9_000_000_000), fc.constantFrom('.' as const, ',' as const), (cents, mark) => {
        expect(parseMoney(formatMoney(cents, mark), mark)).toEqual({ ok: true, value: cents });
      }),
    );
  });
});
