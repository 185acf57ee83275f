// The only place that knows what time it is, and where.
import { dayIn } from '../../app/jobs/calendar-days.ts';

/** Answers the present instant, UTC, as ISO text. */
export type Clock = () => string;

export const systemClock: Clock = () => new Date().toISOString();

/** Where this machine stands; instants are kept in UTC. */
export function zoneHere(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The shop's day an instant falls on: "2026-11-25". */
export function dayHere(instant: string): string {
  return dayIn(instant, zoneHere());
}
