// A function that stays the same from drawing to drawing and does what its newest version does.
import { useCallback, useLayoutEffect, useRef } from 'react';

/** For handlers, not for what is called while drawing. */
export function useSteady<A extends unknown[], R>(newest: (...given: A) => R): (...given: A) => R {
  const held = useRef(newest);
  useLayoutEffect(() => {
    held.current = newest;
  });
  return useCallback((...given: A) => held.current(...given), []);
}
