// From the bytes of a line to readings with their time, with what could not be read counted.
import { cutFrames, nothingPending, type Pending } from './frames.ts';
import { findNumber, lengthOf, type ReadingPattern } from './reading-pattern.ts';

/** One reading of the gauge, `at_ms` on the line's own clock; up is plus. */
export type Sample = { readonly at_ms: number; readonly value_nm: number };

/** What the line says, as it was set. */
export type LineWords = {
  readonly pattern: ReadingPattern;
  /** Of numbers that do not name their own. */
  readonly unit: 'mm' | 'in';
  /** The gauge counts down when the plate goes up. */
  readonly isReversed: boolean;
};

export type LineReader = {
  readonly pending: Pending;
  readonly readings: number;
  /** Spoilt frames, and frames that do not look like a reading. */
  readonly garbled: number;
  /** The newest whole frame, for a person to look at. */
  readonly lastFrame: string;
};

export const freshReader: LineReader = { pending: nothingPending, readings: 0, garbled: 0, lastFrame: '' };

/** What these bytes add. Readings that came in one piece carry one time. */
export function readBytes(
  before: LineReader,
  bytes: Iterable<number>,
  at_ms: number,
  words: LineWords,
): { readonly reader: LineReader; readonly samples: readonly Sample[] } {
  const { pending, frames, spoilt } = cutFrames(before.pending, bytes);
  const samples: Sample[] = [];
  for (const frame of frames) {
    const found = findNumber(words.pattern, frame);
    const length = found && lengthOf(found, words.unit);
    if (length !== null) samples.push({ at_ms, value_nm: words.isReversed && length !== 0 ? -length : length });
  }
  const reader = {
    pending,
    readings: before.readings + samples.length,
    garbled: before.garbled + spoilt + frames.length - samples.length,
    lastFrame: frames.at(-1) ?? before.lastFrame,
  };
  return { reader, samples };
}
