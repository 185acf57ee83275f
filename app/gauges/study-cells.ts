// The readings of a repeat test put back from the order they were taken in: by part, person and trial.
import type { OwnRepeats } from '../readings/repeatability.ts';
import type { StudyRow } from '../statistics/crossed-study.ts';
import { centre } from '../statistics/summary.ts';
import { type StudySize, studyOrder } from './study-order.ts';

/** `amounts` in the order they were handed out, as far as it was gone. */
export function studyRows(size: StudySize, seed: number, amounts: readonly number[]): StudyRow[] {
  return studyOrder(size, seed)
    .slice(0, amounts.length)
    .map(({ part, person, trial }, place) => ({ part, appraiser: person, trial, value: amounts[place]! }));
}

/**
 * How well one hand repeats one part, for what later takes lean on: Σ (read − mean of its cell)² and its degrees of
 * freedom. Differences between people are no part of it, nor is their interaction with the parts.
 */
export function repeatsOfStudy(rows: readonly StudyRow[]): OwnRepeats {
  const cells = Map.groupBy(rows, ({ part, appraiser }) => `${part} ${appraiser}`);
  let sumOfSquares = 0;
  let degreesOfFreedom = 0;
  for (const cell of cells.values()) {
    sumOfSquares += centre(cell.map(({ value }) => value)).sumOfSquares;
    degreesOfFreedom += cell.length - 1;
  }
  return { sumOfSquares, degreesOfFreedom };
}
