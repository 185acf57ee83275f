// Where the focus goes once the screen has been drawn again: what held it may be gone.
import { useEffect, useRef } from 'react';

/** Gives what asks for it: `find` is called after the next drawing, and what it finds takes the focus. */
export function useFocusNext(): (find: () => Element | null | undefined) => void {
  const wanted = useRef<(() => Element | null | undefined) | null>(null);
  useEffect(() => {
    const found = wanted.current?.();
    wanted.current = null;
    if (found instanceof HTMLElement) found.focus();
    // As much of its row as there is room for, and it in any case.
    found?.closest('fieldset')?.scrollIntoView({ block: 'nearest' });
    found?.scrollIntoView({ block: 'nearest' });
  });
  return (find) => {
    wanted.current = find;
  };
}
