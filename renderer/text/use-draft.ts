// What is typed and not committed, kept on the machine so that a crash or a closed window loses nothing.
import { useCallback, useState } from 'react';

export type Draft<T> = {
  readonly value: T;
  readonly change: (value: T) => void;
  /** Committed or given up: forget it and begin again from the initial value. */
  readonly clear: () => void;
};

/**
 * A value like `useState`, kept under `key` until it is cleared. `key` names what is typed and for what
 * ("reading of take 12 spot 3"); when it changes, the draft of the new key is taken up. `T` must survive JSON; give
 * the key another name when its shape changes.
 */
export function useDraft<T>(key: string, initial: T): Draft<T> {
  const [held, setHeld] = useState(() => ({ key, value: stored(key, initial) }));
  const current = held.key === key ? held : { key, value: stored(key, initial) };
  if (current !== held) setHeld(current);

  const change = useCallback(
    (value: T) => {
      localStorage.setItem(storageKey(key), JSON.stringify(value));
      setHeld({ key, value });
    },
    [key],
  );
  const clear = () => {
    localStorage.removeItem(storageKey(key));
    setHeld({ key, value: initial });
  };
  return { value: current.value, change, clear };
}

function storageKey(key: string): string {
  return `draft: ${key}`;
}

function stored<T>(key: string, initial: T): T {
  const text = localStorage.getItem(storageKey(key));
  return text === null ? initial : (JSON.parse(text) as T);
}
