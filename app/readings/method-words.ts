// How a number was read, as a builder says it.
import type { ReadingMethod } from '../specs/spec-sheet.ts';

/** "by air", "by dial"; nothing where it goes without saying. */
export function methodWords(method: ReadingMethod): string {
  return method === 'air' || method === 'dial' || method === 'feeler' ? `by ${method}` : '';
}
