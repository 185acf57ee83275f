// Ages in calendar days, against Temporal's own calendar.
import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { dayAfter, dayIn, daysBetween, daysWords, isLate, timeIn, untilWords } from '../../app/jobs/calendar-days.ts';

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

const anyDay = fc.integer({ min: 0, max: 60_000 }).map((days) => Temporal.PlainDate.from('1980-01-01').add({ days }));

test('so many days after a day, over a leap day and as Temporal counts them', () => {
  expect(dayAfter('2028-02-28', 2)).toBe('2028-03-01');
  fc.assert(
    fc.property(anyDay, fc.integer({ min: -40_000, max: 40_000 }), (day, days) => {
      expect(dayAfter(`${day}`, days)).toBe(`${day.add({ days })}`);
    }),
  );
});

describe('a promised day, said from today', () => {
  test.each([
    ['2028-03-01', '2028-02-28', 'in 2 days'],
    ['2026-03-01', '2026-02-28', 'in 1 day'],
    ['2028-02-29', '2028-02-29', 'today'],
    ['2027-12-31', '2028-01-02', 'late by 2 days'],
  ])('%s on %s', (day, today, words) => expect(untilWords(day, today)).toBe(words));

  test('late exactly when Temporal has today after it, by as many days', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -800, max: 800 }), (day, days) => {
        const today = day.add({ days });
        const late = Temporal.PlainDate.compare(today, day) > 0;
        expect(isLate(`${day}`, `${today}`)).toBe(late);
        const words = untilWords(`${day}`, `${today}`);
        expect(words.startsWith('late')).toBe(late);
        expect(Number(/\d+/.exec(words)?.[0] ?? 0)).toBe(Math.abs(day.until(today, { largestUnit: 'days' }).days));
      }),
    );
  });
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

describe('how old a job is where the shop stands', () => {
  const zones = ['America/Chicago', 'Europe/Berlin', 'Australia/Lord_Howe', 'America/St_Johns', 'Asia/Kathmandu'];
  const instants = fc.date({ min: new Date('1990-01-01'), max: new Date('2060-01-01'), noInvalidDate: true });
  const age = (from: Date, until: Date, zone: string) =>
    daysBetween(dayIn(from.toISOString(), zone), dayIn(until.toISOString(), zone));

  test('is what Temporal’s calendar of that place counts, over changes of the clock and leap days', () => {
    fc.assert(
      fc.property(instants, fc.integer({ min: 0, max: 100_000 }), fc.constantFrom(...zones), (from, hours, zone) => {
        const until = new Date(from.getTime() + hours * 3_600_000);
        const there = (date: Date) => Temporal.Instant.from(date.toISOString()).toZonedDateTimeISO(zone).toPlainDate();
        expect(age(from, until, zone)).toBe(there(from).until(there(until), { largestUnit: 'days' }).days);
      }),
    );
  });

  test('grows by one at every midnight of the place, were the day of 23 or of 25 hours', () => {
    const days = fc.integer({ min: 0, max: 20_000 }).map((n) => Temporal.PlainDate.from('2000-01-01').add({ days: n }));
    fc.assert(
      fc.property(days, fc.constantFrom(...zones), (day, zone) => {
        const startOf = (each: Temporal.PlainDate) => new Date(each.toZonedDateTime(zone).epochMilliseconds);
        const morning = startOf(day);
        const midnight = startOf(day.add({ days: 1 }));
        expect(age(morning, new Date(midnight.getTime() - 1), zone)).toBe(0);
        expect(age(morning, midnight, zone)).toBe(1);
      }),
    );
  });
});

test('the day itself is not late, the day after is', () => {
  expect([isLate('2028-02-29', '2028-02-29'), isLate('2028-02-29', '2028-03-01')]).toEqual([false, true]);
});

test('ages in words', () => expect([-1, 0, 1, 12].map(daysWords)).toEqual(['today', 'today', '1 day', '12 days']));
