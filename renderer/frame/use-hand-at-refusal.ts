// Where the hand goes when the book refuses what was typed.
import { type RefObject, useEffect } from 'react';

/** Focuses the first entry of `box` that is refused, once the refusal stands beside it. */
export function useHandAtRefusal(box: RefObject<HTMLElement | null>, error: Error | null): void {
  useEffect(() => {
    // Not before it is drawn: until then no entry is marked, so a frame after the answer may be too soon.
    if (error) box.current?.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus();
  }, [box, error]);
}
