// A day to promise that is past already: mistyped most likely, so it is asked about once and may be kept.
import { useState } from 'react';
import { isLateToday, sayBusinessDay } from './days.ts';

/** `day` is yyyy-mm-dd, or empty. */
export function usePastDay(day: string) {
  const [asked, setAsked] = useState<string | null>(null);
  return {
    /** Stands at the field until another day is typed. */
    question:
      day !== '' && asked === day ? `${sayBusinessDay(day)} is past: once more keeps it, or type another day.` : null,
    /** Whether it may be promised; a past day may be when it is given a second time. */
    isMeant: () => {
      if (day === '' || day === asked || !isLateToday(day)) return true;
      setAsked(day);
      return false;
    },
  };
}
