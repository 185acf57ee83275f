// Keys that stand in the row only while they can act.
import type { BenchKey } from '../../components/KeyBar.tsx';

export function keysWhen(condition: boolean, ...keys: readonly BenchKey[]): readonly BenchKey[] {
  return condition ? keys : [];
}
