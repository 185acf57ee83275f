// The heights a part is made in as one typed line, "62 74 86 98", and back.
import { accept, type Result, refuse } from '../base/result.ts';
import type { AmountField } from '../quantities/parse-amount.ts';
import { exactText, parseAmounts } from './exact-text.ts';

/**
 * The heights of a typed line, apart by blanks, thinnest first and each once; none for an empty line. A unit at the end
 * holds for all. Refuses a height of nothing or less, and whatever `parseAmount` refuses.
 */
export function parseHeights(typed: string, field: AmountField): Result<number[]> {
  const figures = typed
    .trim()
    .replace(/(\d)\s+([a-z"]+)/gi, '$1$2')
    .split(/\s*[;,]\s+|\s+/)
    .filter((each) => each !== '');
  const heights = parseAmounts(figures, field);
  if (!heights.ok) return heights;
  if (heights.value.some((height) => height <= 0)) {
    return refuse('not-positive', `“${typed.trim()}”: a height is more than nothing.`);
  }
  return accept([...new Set(heights.value)].sort((a, b) => a - b));
}

/** The heights as a line that `parseHeights` reads back as the same. */
export function heightsText(heights_nm: readonly number[], field: AmountField): string {
  const { figures, unit } = exactText(heights_nm, field);
  return `${figures.join(' ')} ${unit}`.trim();
}
