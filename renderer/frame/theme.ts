// The light the screen is made for: paper in daylight, bay under the lift. Kept on this machine.
import { useSyncExternalStore } from 'react';

export type Theme = 'paper' | 'bay';

const storageKey = 'theme';

export function storedTheme(): Theme {
  return localStorage.getItem(storageKey) === 'bay' ? 'bay' : 'paper';
}

export function applyTheme(theme: Theme): void {
  document.documentElement.dataset.theme = theme;
}

const listeners = new Set<() => void>();

export function keepTheme(theme: Theme): void {
  localStorage.setItem(storageKey, theme);
  applyTheme(theme);
  for (const listener of listeners) listener();
}

/** The light as it is kept, wherever it is changed. */
export function useTheme(): Theme {
  return useSyncExternalStore((listener) => {
    listeners.add(listener);
    return () => listeners.delete(listener);
  }, storedTheme);
}
