// Keys of the hand that stand beside what they choose instead of in the row: figures and arrows.
import { useEffect } from 'react';
import type { BenchKey } from '../../components/KeyBar.tsx';

/** They act unless somebody is typing a line. */
export function useHandKeys(keys: readonly Pick<BenchKey, 'key' | 'onPress'>[]): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.altKey || event.metaKey || event.defaultPrevented) return;
      const pressed = keys.find((each) => each.key === event.key);
      if (!pressed || isTyping(event.target)) return;
      event.preventDefault();
      pressed.onPress();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [keys]);
}

function isTyping(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement) return target.value !== '' || !('entryLine' in target.dataset);
  return target instanceof HTMLTextAreaElement;
}
