// Business days as papers write them.

const months = 'January February March April May June July August September October November December'.split(' ');

/** "26 November 2026" from 2026-11-26. */
export function writeDay(day: string): string {
  const [year, month, date] = day.split('-').map(Number);
  return `${date} ${months[(month ?? 1) - 1]} ${year}`;
}

/** "23–26 November", "30 November – 2 December", or one day by itself; without the year, which stands on the paper. */
export function writeDays(from: string, until: string): string {
  const [, firstMonth, firstDate] = from.split('-').map(Number);
  const [, lastMonth, lastDate] = until.split('-').map(Number);
  const last = `${lastDate} ${months[(lastMonth ?? 1) - 1]}`;
  if (from === until) return last;
  if (firstMonth === lastMonth) return `${firstDate}–${last}`;
  return `${firstDate} ${months[(firstMonth ?? 1) - 1]} – ${last}`;
}
