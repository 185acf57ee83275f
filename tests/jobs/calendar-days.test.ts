// Ages in calendar days, against Temporal's own calendar.
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { dayAfter, dayIn, daysBetween, daysWords, isLate, timeIn } from '../../app/jobs/calendar-days.ts';

describe('days between two days of the calendar', () => {
  test.each([
    // 2028 is a leap year, 2026 and 2100 are not.
    ['2028-02-28', '2028-03-01', 2],
    ['2026-02-28', '2026-03-01', 1],
    ['2100-02-28', '2100-03-01', 1],
    ['2027-12-31', '2028-01-01', 1],
    ['2028-01-01', '2029-01-01', 366],
    ['2026-11-25', '2026-11-25', 0],
    ['2026-11-25', '2026-11-24', -1],
  ])('%s to %s', (from, until, days) => expect(daysBetween(from, until)).toBe(days));

  const day = fc
    .record({
      year: fc.integer({ min: 1980, max: 2120 }),
      month: fc.integer({ min: 1, max: 12 }),
      day: fc.integer({ min: 1, max: 31 }),
    })
    .map((fields) => Temporal.PlainDate.from(fields));

  test('agree with Temporal for any two days', () => {
    fc.assert(
      fc.property(day, day, (from, until) => {
        expect(daysBetween(`${from}`, `${until}`)).toBe(from.until(until, { largestUnit: 'days' }).days);
      }),
    );
  });
});

test('so many days after a day, over a leap day and as Temporal counts them', () => {
  expect(dayAfter('2028-02-28', 2)).toBe('2028-03-01');
  fc.assert(
    fc.property(fc.integer({ min: -40_000, max: 40_000 }), (days) => {
      expect(dayAfter('2026-11-25', days)).toBe(`${Temporal.PlainDate.from('2026-11-25').add({ days })}`);
    }),
  );
});

describe('the day an instant falls on where the shop stands', () => {
  // In 2026 the clocks of Chicago go forward on 8 March (a day of 23 hours) and back on 1 November (one of 25).
  test.each([
    ['2026-03-08T05:59:00.000Z', '2026-03-07', '23:59'],
    ['2026-03-08T06:00:00.000Z', '2026-03-08', '00:00'],
    ['2026-03-09T04:59:00.000Z', '2026-03-08', '23:59'],
    ['2026-03-09T05:00:00.000Z', '2026-03-09', '00:00'],
    ['2026-11-01T05:00:00.000Z', '2026-11-01', '00:00'],
    ['2026-11-02T05:59:00.000Z', '2026-11-01', '23:59'],
    ['2026-11-02T06:00:00.000Z', '2026-11-02', '00:00'],
  ])('%s in Chicago', (instant, day, time) => {
    expect([dayIn(instant, 'America/Chicago'), timeIn(instant, 'America/Chicago')]).toEqual([day, time]);
  });

  test('a night of 23 or of 25 hours is one day', () => {
    const eve = (instant: string) => dayIn(instant, 'America/Chicago');
    expect(daysBetween(eve('2026-03-08T05:30:00.000Z'), eve('2026-03-09T05:30:00.000Z'))).toBe(2);
    expect(daysBetween(eve('2026-03-08T18:00:00.000Z'), eve('2026-03-09T17:00:00.000Z'))).toBe(1);
    expect(daysBetween(eve('2026-11-01T17:00:00.000Z'), eve('2026-11-02T18:00:00.000Z'))).toBe(1);
  });

  test('agrees with Temporal anywhere at any time', () => {
    const zones = ['America/Chicago', 'Europe/Berlin', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'Pacific/Apia', 'UTC'];
    const instants = fc.date({ min: new Date('1990-01-01'), max: new Date('2060-01-01'), noInvalidDate: true });
    fc.assert(
      fc.property(instants, fc.constantFrom(...zones), (date, zone) => {
        const there = Temporal.Instant.from(date.toISOString()).toZonedDateTimeISO(zone);
        expect(dayIn(date.toISOString(), zone)).toBe(`${there.toPlainDate()}`);
        expect(timeIn(date.toISOString(), zone)).toBe(`${there.toPlainTime()}`.slice(0, 5));
      }),
    );
  });
});

test('the day itself is not late, the day after is', () => {
  expect([isLate('2028-02-29', '2028-02-29'), isLate('2028-02-29', '2028-03-01')]).toEqual([false, true]);
});

test('ages in words', () => expect([-1, 0, 1, 12].map(daysWords)).toEqual(['today', 'today', '1 day', '12 days']));
