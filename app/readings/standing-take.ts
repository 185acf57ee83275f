// Which of the takes of a check counts.
import type { ReadingMethod } from '../specs/spec-sheet.ts';
import type { NoteKind, Phase } from './readings.contract.ts';

type ReadTake = {
  readonly phase: Phase;
  readonly method: ReadingMethod;
  readonly readings: readonly unknown[];
  readonly notes: ReadonlyArray<{ readonly what: NoteKind }>;
};

/**
 * Of takes in the order they began, the newest that was read the way the spec means it; only when there is none, the
 * newest of another way. What was found before it came apart counts only until something is read of the build. A take in
 * which nothing was read does not count.
 */
export function standingTake<T extends ReadTake>(
  takes: readonly T[],
  check: { readonly method: ReadingMethod },
): T | undefined {
  // That it would not hold air is a result too, even when no line could be read.
  const read = takes.filter(
    (take) => take.readings.length > 0 || take.notes.some((note) => note.what === 'will not hold air'),
  );
  const ofBuild = read.filter((take) => take.phase !== 'as found');
  const counting = ofBuild.length > 0 ? ofBuild : read;
  return counting.findLast((take) => take.method === check.method) ?? counting.at(-1);
}
