// Which of the takes of a check counts.
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import type { NoteKind } from './readings.contract.ts';

type ReadTake = {
  readonly method: ReadingMethod;
  readonly readings: readonly unknown[];
  readonly notes: ReadonlyArray<{ readonly what: NoteKind }>;
};

/**
 * Of takes in the order they began, the newest that was read the way the spec means it; only when there is none, the
 * newest of another way. A take in which nothing was read does not count.
 */
export function standingTake<T extends ReadTake>(
  takes: readonly T[],
  check: { readonly method: ReadingMethod },
): T | undefined {
  // That it would not hold air is a result too, even when no line could be read.
  const read = takes.filter(
    (take) => take.readings.length > 0 || take.notes.some((note) => note.what === 'will not hold air'),
  );
  return read.findLast((take) => take.method === check.method) ?? read.at(-1);
}
