// Escape gives up what was begun, wherever in it one stands.
import { useEffect, useRef } from 'react';

/** Calls `leave` on Escape, unless a list that floats over the form took it to close itself. */
export function useEscape(leave: () => void): void {
  const newest = useRef(leave);
  newest.current = leave;
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) newest.current();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
}
