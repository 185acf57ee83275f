// A figure typed while nothing is being typed in belongs to the entry line, wherever the last press left the focus.
import { useEffect } from 'react';

export function useTypeAnywhere(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
      if (!/^[\d.+-]$/.test(event.key) || isEntry(event.target)) return;
      // The key then arrives in what has the focus.
      document.querySelector<HTMLInputElement>('input[data-entry-line]')?.focus();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
}

function isEntry(target: EventTarget | null): boolean {
  return target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;
}
