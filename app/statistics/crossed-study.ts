// The table of a gauge study: every appraiser measured every part the same number of times.
import { accept, type Result, refuse } from '../base/result.ts';
import { unitNear } from './summary.ts';

export type StudyRow = {
  readonly part: string | number;
  readonly appraiser: string | number;
  readonly trial: string | number;
  readonly value: number;
};

export type CrossedStudy = {
  /** cells[part][appraiser] are the trials, as offsets from the first value of the study, in `unit`. */
  readonly cells: readonly (readonly (readonly number[])[])[];
  /** A power of two, so that no square of an offset leaves the range of doubles. */
  readonly unit: number;
  readonly parts: number;
  readonly appraisers: number;
  readonly trials: number;
};

/**
 * The rows as a complete table. Refuses fewer than two parts, appraisers or trials, a trial named twice, a cell that is
 * missing or of another length (then the study is rank deficient or unbalanced), and values that are not numbers.
 */
export function crossStudy(rows: readonly StudyRow[]): Result<CrossedStudy> {
  if (!rows.every((row) => Number.isFinite(row.value))) return refuse('not-finite', 'A value is not a number.');
  const parts = [...new Set(rows.map((row) => row.part))];
  const appraisers = [...new Set(rows.map((row) => row.appraiser))];
  const trials = new Set(rows.map((row) => row.trial)).size;
  if (parts.length < 2 || appraisers.length < 2 || trials < 2) {
    return refuse('too-small', 'A study needs at least two parts, two appraisers and two trials.');
  }
  const origin = rows[0]!.value;
  const unit = unitNear(rows.map((row) => row.value - origin));
  const cells = parts.map(() => appraisers.map(() => new Map<string | number, number>()));
  const [placeOfPart, placeOfAppraiser] = [placesOf(parts), placesOf(appraisers)];
  for (const { part, appraiser, trial, value } of rows) {
    const cell = cells[placeOfPart.get(part)!]![placeOfAppraiser.get(appraiser)!]!;
    if (cell.has(trial)) {
      return refuse('trial-twice', `Trial ${trial} of part ${part} by ${appraiser} is there twice.`);
    }
    cell.set(trial, (value - origin) / unit);
  }
  if (!cells.flat().every((cell) => cell.size === trials)) {
    return refuse('unbalanced', 'Every appraiser must have measured every part the same number of times.');
  }
  return accept({
    cells: cells.map((row) => row.map((cell) => [...cell.values()])),
    unit,
    parts: parts.length,
    appraisers: appraisers.length,
    trials,
  });
}

function placesOf(names: readonly (string | number)[]): ReadonlyMap<string | number, number> {
  return new Map(names.map((name, place) => [name, place]));
}
