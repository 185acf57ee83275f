// Instants and days as the shop says them: "16 Nov", with the year only when it is another one.
import { dayIn } from '../../app/jobs/calendar-days.ts';

const thisYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const otherYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });

/** The day it is where this machine stands: "2026-11-25". */
export function today(): string {
  return dayIn(new Date().toISOString(), Intl.DateTimeFormat().resolvedOptions().timeZone);
}

/** The day of an instant (UTC text) where this machine stands. */
export function sayDay(instant: string): string {
  const date = new Date(instant);
  return (date.getFullYear() === new Date().getFullYear() ? thisYear : otherYear).format(date);
}

export function sayDayAndTime(instant: string): string {
  return `${sayDay(instant)}, ${clock.format(new Date(instant))}`;
}

/** How long ago an instant was, in whole days of this machine's calendar: "today", "1 day", "12 days". */
export function sayAge(instant: string): string {
  const dayOf = (date: Date) => Date.UTC(date.getFullYear(), date.getMonth(), date.getDate());
  const days = Math.round((dayOf(new Date()) - dayOf(new Date(instant))) / 86_400_000);
  if (days <= 0) return 'today';
  return days === 1 ? '1 day' : `${days} days`;
}
