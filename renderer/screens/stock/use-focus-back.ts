// Where the hand goes when what stood open at the side is closed: back to what opened it.
import { type RefObject, useEffect, useRef } from 'react';

/** Focuses the element in `list` marked `data-opens={id}` once `opened` has gone from that id to null. */
export function useFocusBack(list: RefObject<HTMLElement | null>, opened: number | null): void {
  const before = useRef(opened);
  useEffect(() => {
    const closed = before.current;
    before.current = opened;
    if (closed === null || opened !== null) return;
    list.current?.querySelector<HTMLElement>(`[data-opens="${closed}"]`)?.focus();
  }, [list, opened]);
}
