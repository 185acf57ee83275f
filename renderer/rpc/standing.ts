// Whether this window is still let in: known to whoever carries its calls, shown over every screen.
import { useSyncExternalStore } from 'react';

/** `away`: nobody answers. `shut out`: somebody answers who does not know this window. */
export type Standing = 'let in' | 'away' | 'shut out';

let standing: Standing = 'let in';
const listeners = new Set<() => void>();

export function stand(as: Standing): void {
  if (as === standing) return;
  standing = as;
  for (const listener of listeners) listener();
}

export function useStanding(): Standing {
  return useSyncExternalStore(subscribe, () => standing);
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** What to do about it. */
export const standingWords: Readonly<Record<Exclude<Standing, 'let in'>, string>> = {
  away: 'Thoubook does not answer. What you typed is kept here: start Thoubook again and go on.',
  'shut out': 'This window is no longer let in: open Thoubook again and go on there. What you typed is kept.',
};
