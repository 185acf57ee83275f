// Why is opened and closed by its key, and closed by Esc wherever the hand is.
import { useEffect, useState } from 'react';

export function useWhy(): { readonly isOpen: boolean; readonly turn: () => void } {
  const [isOpen, open] = useState(false);
  useEffect(() => {
    if (!isOpen) return;
    const press = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) open(false);
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [isOpen]);
  return { isOpen, turn: () => open(!isOpen) };
}
