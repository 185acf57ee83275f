// Days as a person counts them on a calendar, whatever the clocks did in between.

const dayLength_ms = 86_400_000;
const formatters = new Map<string, Intl.DateTimeFormat>();

/** The day an instant (UTC text) falls on where the clock shows `timeZone`: "2026-11-25". */
export function dayIn(instant: string, timeZone: string): string {
  const { year, month, day } = partsIn(instant, timeZone);
  return `${year}-${month}-${day}`;
}

/** The time of day an instant (UTC text) falls on in `timeZone`: "07:05". */
export function timeIn(instant: string, timeZone: string): string {
  const { hour, minute } = partsIn(instant, timeZone);
  return `${hour}:${minute}`;
}

/** Calendar days from one day to another, both yyyy-mm-dd: 1 from today to tomorrow, negative when `until` is earlier. */
export function daysBetween(from: string, until: string): number {
  // A day without a zone is parsed as UTC, where every day is equally long.
  return Math.round((Date.parse(until) - Date.parse(from)) / dayLength_ms);
}

/** The day so many calendar days after another, yyyy-mm-dd. */
export function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(day) + days * dayLength_ms).toISOString().slice(0, 10);
}

/**
 * The day so many calendar months after another, yyyy-mm-dd: the same date of that month, or its last day where it has
 * no such date, so 31 January and one month is the last of February. ECMAScript Temporal calls this rule `constrain`.
 */
export function monthsAfter(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  // Day 0 of a month is the last one of the month before.
  const lastDate = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(date, lastDate))).toISOString().slice(0, 10);
}

/** The quarter of the calendar year a day lies in: "2026 Q3". As text they stand in order. */
export function quarterOf(day: string): string {
  return `${day.slice(0, 4)} Q${Math.ceil(Number(day.slice(5, 7)) / 3)}`;
}

/** Every quarter from one to another, both included; none where the last comes before the first. */
export function quartersBetween(first: string, last: string): string[] {
  const indexOf = (quarter: string) => 4 * Number(quarter.slice(0, 4)) + Number(quarter.slice(6)) - 1;
  const count = indexOf(last) - indexOf(first) + 1;
  return Array.from({ length: Math.max(0, count) }, (_, step) => {
    const index = indexOf(first) + step;
    return `${Math.floor(index / 4)} Q${(index % 4) + 1}`;
  });
}

/** "today", "1 day", "12 days". */
export function daysWords(days: number): string {
  if (days <= 0) return 'today';
  return days === 1 ? '1 day' : `${days} days`;
}

/** How far off a promised day is: "in 2 days", "today", "late by 3 days". */
export function untilWords(day: string, today: string): string {
  const days = daysBetween(today, day);
  if (isLate(day, today)) return `late by ${daysWords(-days)}`;
  return days === 0 ? 'today' : `in ${daysWords(days)}`;
}

/** Whether what was promised for a day is still not done the day after. */
export function isLate(promisedOn: string, today: string): boolean {
  return promisedOn < today;
}

function partsIn(instant: string, timeZone: string): Record<string, string> {
  const known = formatters.get(timeZone);
  const formatter =
    known ??
    new Intl.DateTimeFormat('en-GB', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
    });
  if (!known) formatters.set(timeZone, formatter);
  return Object.fromEntries(formatter.formatToParts(new Date(instant)).map(({ type, value }) => [type, value]));
}
