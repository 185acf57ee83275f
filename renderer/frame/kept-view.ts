// How a list was narrowed and where one stood in it: kept for the way back, forgotten when its place is entered anew.
import { useSyncExternalStore } from 'react';

const kept = new Map<string, unknown>();
const listeners = new Set<() => void>();

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function tell(): void {
  for (const listener of listeners) listener();
}

/** Like `useState`, but there again when one comes back. `key` names the list and the shop file it is of. */
export function useKeptView<T>(key: string, initial: T): readonly [view: T, change: (view: T) => void] {
  const view = useSyncExternalStore(subscribe, () => (kept.has(key) ? (kept.get(key) as T) : initial));
  const change = (next: T) => {
    kept.set(key, next);
    tell();
  };
  return [view, change];
}

/** A place chosen in the rail begins at its beginning. */
export function forgetKeptViews(): void {
  kept.clear();
  tell();
}
