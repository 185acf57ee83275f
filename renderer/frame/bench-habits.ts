// What belongs to this bench and not to the shop: its gauge, its pedal, its sounds and its way round the drum. Kept on
// this machine, per shop file where it names something of the file.
import { useSyncExternalStore } from 'react';
import { useOpenShop } from './open-shop.ts';

export type BenchHabits = {
  /** The gauge's line that is read here. */
  readonly lineId: number | null;
  /** A key that does what Enter does, as the browser names it: "F13", "PageDown". */
  readonly pedal: string | null;
  /** Eyes are on the dial: an accepted line, one asked for again and one out of the band are heard. */
  readonly hasSounds: boolean;
  /** Spots one after another, or each across from the last. */
  readonly order: 'around' | 'across';
};

const usual: BenchHabits = { lineId: null, pedal: null, hasSounds: true, order: 'around' };

const listeners = new Set<() => void>();

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('storage', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('storage', listener);
  };
}

export function useBenchHabits(): {
  readonly habits: BenchHabits;
  readonly keep: (part: Partial<BenchHabits>) => void;
} {
  const { file } = useOpenShop();
  const key = `bench habits: ${file}`;
  const stored = useSyncExternalStore(subscribe, () => localStorage.getItem(key));
  const habits: BenchHabits = { ...usual, ...(stored === null ? {} : JSON.parse(stored)) };
  const keep = (part: Partial<BenchHabits>) => {
    localStorage.setItem(key, JSON.stringify({ ...habits, ...part }));
    for (const listener of listeners) listener();
  };
  return { habits, keep };
}
