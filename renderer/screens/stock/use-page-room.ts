// How many rows and columns of plates fit where they stand, so that a page is what one sees.
import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

// The sizes that PlatesColumns.module.css draws.
export const rowHeight = 32;
const columnWidth = 184;
const columnGap = 24;
/** The keys that turn the page, and the room round them. */
const footHeight = 80;

export type PageRoom = { readonly rows: number; readonly columns: number };

const atFirst: PageRoom = { rows: 12, columns: 3 };

export function usePageRoom<E extends HTMLElement>(): readonly [RefObject<E | null>, PageRoom] {
  const room = useRef<E>(null);
  const [fits, setFits] = useState(atFirst);
  useLayoutEffect(() => {
    const element = room.current;
    if (element === null) return;
    const page = element.closest('main') ?? document.documentElement;
    const measure = () => {
      const { width, top } = element.getBoundingClientRect();
      const above = top - page.getBoundingClientRect().top + page.scrollTop;
      const rows = Math.max(6, Math.floor((page.clientHeight - above - footHeight) / rowHeight));
      const columns = Math.max(1, Math.floor((width + columnGap) / (columnWidth + columnGap)));
      setFits((before) => (before.rows === rows && before.columns === columns ? before : { rows, columns }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    observer.observe(page);
    // What stands above it pushes it down.
    if (element.parentElement) observer.observe(element.parentElement);
    return () => observer.disconnect();
  }, []);
  return [room, fits];
}
