// Who is at the bench: chosen once at the foot of the rail, written beside everything that is recorded.
import { useSyncExternalStore } from 'react';
import type { Person } from '../../app/shop/shop.contract.ts';
import { type OpenShop, useOpenShop } from './open-shop.ts';

const listeners = new Set<() => void>();

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  window.addEventListener('storage', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('storage', listener);
  };
}

// Per shop file: the demo's people are not the shop's.
function storageKey(shop: OpenShop): string {
  return `at the bench: ${shop.file}`;
}

/** The person at the bench, and the act of changing places. Whoever was never chosen is the first of the shop. */
export function useAtBench(): { readonly person: Person; readonly choose: (personId: number) => void } {
  const shop = useOpenShop();
  const chosenId = Number(useSyncExternalStore(subscribe, () => localStorage.getItem(storageKey(shop))));
  const working = shop.people.filter((each) => !each.isRetired);
  const person = working.find((each) => each.personId === chosenId) ?? working[0];
  if (!person) throw new Error('A shop always has somebody working in it.');
  const choose = (personId: number) => {
    localStorage.setItem(storageKey(shop), String(personId));
    for (const listener of listeners) listener();
  };
  return { person, choose };
}
