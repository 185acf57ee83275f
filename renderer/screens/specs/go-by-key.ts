// The keys of a row of the sheet while one of its entries has the focus.
import type { KeyboardEvent } from 'react';

/** Alt with an arrow moves the row, and Enter goes on to the entry `next` finds from it. */
export function goByKey(
  event: KeyboardEvent<HTMLLIElement>,
  onMove: (by: -1 | 1) => void,
  next: (row: HTMLLIElement) => HTMLInputElement | null | undefined,
): void {
  if (!(event.target instanceof HTMLInputElement)) return;
  if (event.altKey && (event.key === 'ArrowUp' || event.key === 'ArrowDown')) {
    event.preventDefault();
    onMove(event.key === 'ArrowUp' ? -1 : 1);
  }
  if (event.key === 'Enter') {
    event.preventDefault();
    next(event.currentTarget)?.focus();
  }
}
