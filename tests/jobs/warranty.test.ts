// How long a warranty runs, counted by hand and against published rules of adding months to a date.
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { monthsAfter } from '../../app/jobs/calendar-days.ts';
import type { WarrantyTerms } from '../../app/jobs/delivery.contract.ts';
import type { Distance } from '../../app/jobs/distance.contract.ts';
import { termsWords, warrantyStanding, warrantyWords } from '../../app/jobs/warranty.ts';

describe('so many months after a day', () => {
  test.each([
    // Java SE 21, java.time.LocalDate.plusMonths: "2007-03-31 plus one month … the last valid day of the month,
    // 2007-04-30, is selected instead" [M].
    ['2007-03-31', 1, '2007-04-30'],
    // The same, plusYears: "2008-02-29 (leap year) plus one year … 2009-02-28" [M].
    ['2008-02-29', 12, '2009-02-28'],
    // W3C XML Schema Part 2, second edition, E.2: 2000-03-31 + P1M = 2000-04-30 [M].
    ['2000-03-31', 1, '2000-04-30'],
    // 31 January: the last of February, which has 29 days in 2028 and 2000 and 28 in 2027 and 2100.
    ['2027-01-31', 1, '2027-02-28'],
    ['2028-01-31', 1, '2028-02-29'],
    ['2000-01-31', 1, '2000-02-29'],
    ['2100-01-30', 1, '2100-02-28'],
    ['2026-02-28', 12, '2027-02-28'],
    // Not drawn to the end of the month: the 28th stays the 28th.
    ['2027-02-28', 12, '2028-02-28'],
    ['2026-11-30', 3, '2027-02-28'],
    ['2026-12-31', 24, '2028-12-31'],
  ])('%s and %i', (day, months, expected) => expect(monthsAfter(day, months)).toBe(expected));

  test('agree with Temporal’s `constrain` for any day', () => {
    const days = fc.integer({ min: 0, max: 60_000 });
    fc.assert(
      fc.property(days, fc.integer({ min: 0, max: 240 }), (offset, months) => {
        const day = Temporal.PlainDate.from('1980-01-01').add({ days: offset });
        expect(monthsAfter(`${day}`, months)).toBe(`${day.add({ months }, { overflow: 'constrain' })}`);
      }),
    );
  });
});

const none: WarrantyTerms = { months: null, distance: null, passes: null };
const yearOrMiles: WarrantyTerms = { ...none, months: 12, distance: { amount: 12_000, unit: 'miles' } };
const writing = { decimalMark: '.', sayDay: (day: string) => day } as const;

describe('in words', () => {
  test.each([
    [yearOrMiles, '2026-02-28', 'until 2027-02-28 or 12,000 miles after delivery, whichever comes first'],
    [
      yearOrMiles,
      null,
      '12 months from the day it goes into service or 12,000 miles after delivery, whichever comes first',
    ],
    [{ ...none, months: 1 }, '2027-01-31', 'until 2027-02-28'],
    [{ ...none, passes: 40 }, '2026-11-27', 'from 2026-11-27, 40 passes after delivery'],
    [
      { months: 6, distance: { amount: 10_000, unit: 'km' as const }, passes: 1 },
      '2026-11-27',
      'until 2027-05-27, 10,000 km or 1 pass after delivery, whichever comes first',
    ],
    [none, '2026-11-27', 'no warranty'],
  ])('%o from %s', (terms, inServiceOn, words) => expect(warrantyWords({ terms, inServiceOn }, writing)).toBe(words));

  test('terms before there is a day', () => {
    expect(termsWords(yearOrMiles, ',')).toBe('12 months or 12.000 miles, whichever comes first');
    expect(termsWords({ ...none, months: 1 }, '.')).toBe('1 month');
    expect(termsWords(none, '.')).toBe('no warranty');
  });
});

describe('when the unit is back', () => {
  const standing = (
    terms: WarrantyTerms,
    day: string,
    use: { from?: Distance; until?: Distance } = {},
    inServiceOn: string | null = '2026-02-28',
  ) =>
    warrantyStanding(
      { terms, inServiceOn, distanceAtDelivery: use.from ?? null },
      { day, distance: use.until ?? null },
      writing,
    );
  const miles = (amount: number) => ({ amount, unit: 'miles' }) as const;
  const from = miles(118_400);

  test.each([
    [
      'the last day still counts',
      standing(yearOrMiles, '2027-02-28', { from, until: miles(118_500) }),
      'in warranty',
      /until 2027-02-28, 100 of 12,000 miles used/,
    ],
    [
      'the day after does not',
      standing(yearOrMiles, '2027-03-01', { from, until: from }),
      'ended',
      /ended 2027-02-28$/,
    ],
    ['nor does a leap day', standing({ ...none, months: 24 }, '2028-02-29'), 'ended', /ended 2028-02-28$/],
    // 130,400 − 118,400 = 12,000.
    [
      'the last mile still counts',
      standing(yearOrMiles, '2026-06-01', { from, until: miles(130_400) }),
      'in warranty',
      /12,000 of 12,000 miles/,
    ],
    [
      'a mile more does not',
      standing(yearOrMiles, '2026-06-01', { from, until: miles(130_401) }),
      'ended',
      /at 12,000 miles: 12,001 miles since delivery/,
    ],
    [
      'no odometer now',
      standing(yearOrMiles, '2026-06-01', { from }),
      'in warranty',
      /until 2027-02-28, the 12,000 miles could not be looked at/,
    ],
    ['none at delivery', standing(yearOrMiles, '2026-06-01', { until: from }), 'in warranty', /could not be looked at/],
    [
      'another unit',
      standing(yearOrMiles, '2026-06-01', { from, until: { amount: 200_000, unit: 'km' } }),
      'in warranty',
      /could not be looked at/,
    ],
    [
      'an odometer that ran back',
      standing(yearOrMiles, '2026-06-01', { from, until: miles(90_000) }),
      'in warranty',
      /could not be looked at/,
    ],
    [
      'only miles, and none known',
      standing({ ...none, distance: miles(12_000) }, '2030-01-01'),
      'not known',
      /is not known/,
    ],
    ['not in service', standing(yearOrMiles, '2026-06-01', {}, null), 'not in service', /not in service yet/],
    ['back before it was', standing(yearOrMiles, '2026-02-27'), 'not in service', /2026-02-28/],
    ['no warranty', standing(none, '2026-06-01'), 'none', /without/],
  ])('%s', (_, { state, words }, expected, says) => {
    expect(state).toBe(expected);
    expect(words).toMatch(says);
  });

  test('never comes back once it has ended, however day and use go on', () => {
    const terms = fc.record({
      months: fc.option(fc.integer({ min: 1, max: 36 })),
      distance: fc.option(fc.integer({ min: 1, max: 20_000 }).map(miles)),
      passes: fc.constant(null),
    });
    const step = fc.tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 15_000 }));
    fc.assert(
      fc.property(terms, step, step, (given, [days, driven], [moreDays, more]) => {
        const start = Temporal.PlainDate.from('2026-02-28');
        const at = (after: number, run: number) =>
          standing(given, `${start.add({ days: after })}`, { from, until: miles(from.amount + run) }).state;
        const [first, later] = [at(days, driven), at(days + moreDays, driven + more)];
        if (first === 'ended') expect(later).toBe('ended');
      }),
    );
  });
});
