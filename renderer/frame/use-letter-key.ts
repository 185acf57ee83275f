// One letter that acts while nothing is being typed.
import { useEffect } from 'react';

/** Calls `act` when `letter` is pressed anywhere but in an entry or an open list. */
export function useLetterKey(letter: string, act: () => void): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || event.defaultPrevented) return;
      if (event.key.toLowerCase() !== letter || isTyping(event.target)) return;
      event.preventDefault();
      act();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [letter, act]);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest('input, textarea, [role="menu"], [role="listbox"]') !== null;
}
