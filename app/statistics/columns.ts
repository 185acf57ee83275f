// Columns of numbers that belong together, row by row: the first thing every statistic checks.
import { accept, type Result, refuse } from '../base/result.ts';

/** Accepts columns of one length holding finite numbers only; the names go into the sentence. */
export function checkColumns(columns: Readonly<Record<string, readonly number[]>>): Result<number> {
  const entries = Object.entries(columns);
  const length = entries[0]?.[1].length ?? 0;
  for (const [name, values] of entries) {
    if (values.length !== length) {
      return refuse('different-lengths', `${entries.map(([each]) => each).join(', ')} must be equally long.`);
    }
    if (!values.every(Number.isFinite)) return refuse('not-finite', `${name} holds something that is not a number.`);
  }
  return accept(length);
}
