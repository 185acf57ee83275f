// A pedal, or any key bound as one: it does what Enter does, wherever the last press left the focus. It never means air.
import { useEffect } from 'react';
import type { BenchKey } from '../../components/KeyBar.tsx';
import { useBenchHabits } from '../../frame/bench-habits.ts';

export function usePedal(keys: readonly BenchKey[]): void {
  const { pedal } = useBenchHabits().habits;
  useEffect(() => {
    if (pedal === null) return;
    const press = (event: KeyboardEvent) => {
      if (event.key !== pedal || event.repeat || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      const asked = keys.find((each) => each.isFilled);
      if (asked && !asked.isDisabled) asked.onPress();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [keys, pedal]);
}
