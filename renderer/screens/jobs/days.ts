// Days as this machine's calendar counts them, and how a ticket says them.
import { dayIn, daysBetween, daysWords, isLate, untilWords } from '../../../app/jobs/calendar-days.ts';
import { sayDay, today } from '../../text/say-date.ts';

export function zoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

export function dayHere(instant: string): string {
  return dayIn(instant, zoneHere());
}

/** "27 Nov" from 2026-11-27. */
export function sayBusinessDay(day: string): string {
  // Noon of this machine's clock lies in that day wherever it stands.
  return sayDay(`${day}T12:00:00`);
}

/** How long something has stood: "today", "12 days". */
export function sayStanding(since: string): string {
  return daysWords(daysBetween(dayHere(since), today()));
}

/** "in 2 days", "today", "late by 3 days". */
export function sayUntil(day: string): string {
  return untilWords(day, today());
}

export function isLateToday(day: string): boolean {
  return isLate(day, today());
}
