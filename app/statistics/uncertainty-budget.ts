// The uncertainty budget of JCGM 100:2008 (GUM): standard uncertainties combined, and how far they reach.
import { accept, type Result, refuse } from '../base/result.ts';
import { studentTCoverageFactor } from './student-t.ts';

/** One line of a budget. Type B estimates have infinitely many degrees of freedom unless something limits them. */
export type BudgetLine = {
  readonly name: string;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
};

export type CombinedUncertainty = {
  readonly combined: number;
  /** Real, and infinite when no line limits it. */
  readonly effectiveDegreesOfFreedom: number;
  readonly coverageFactor: number;
  readonly expanded: number;
  /** Each line with its part of the combined variance; the shares add up to 1. */
  readonly lines: readonly (BudgetLine & { readonly share: number })[];
};

/** Half-width a of limits between which every value is as likely: a / √3 (GUM 4.3.7). */
export function rectangular(halfWidth: number): number {
  return halfWidth / Math.sqrt(3);
}

/** Half-width a of limits with the middle most likely: a / √6 (GUM 4.3.9). */
export function triangular(halfWidth: number): number {
  return halfWidth / Math.sqrt(6);
}

/** Half-width a of something that swings like a sine: a / √2 (GUM H.1.3.4). */
export function arcsine(halfWidth: number): number {
  return halfWidth / Math.sqrt(2);
}

/** An indication rounded to steps of `resolution`: δ / √12 (GUM F.2.2.1). */
export function roundingOf(resolution: number): number {
  return resolution / Math.sqrt(12);
}

/**
 * Lines combined in quadrature, with the effective degrees of freedom of Welch and Satterthwaite kept as a real number
 * (GUM G.4.1; the integer below is its option), Student's t for `coverage` (0 < coverage < 1) and U = k·u.
 * Refuses when no line is larger than zero. Source: JCGM 100:2008 5.1, 6.2, G.4.
 */
export function combine(lines: readonly BudgetLine[], coverage: number): Result<CombinedUncertainty> {
  const largest = Math.max(0, ...lines.map((line) => line.standardUncertainty));
  if (largest === 0) {
    return refuse('no-uncertainty', 'Nothing in the budget is larger than zero, so no uncertainty can be stated.');
  }
  // In units of the largest line, so that no square leaves the range of doubles.
  const squares = lines.map((line) => (line.standardUncertainty / largest) ** 2);
  const total = squares.reduce((sum, square) => sum + square, 0);
  const weighted = squares.reduce((sum, square, i) => sum + (square / total) ** 2 / lines[i]!.degreesOfFreedom, 0);
  const effectiveDegreesOfFreedom = weighted === 0 ? Number.POSITIVE_INFINITY : 1 / weighted;
  const combined = largest * Math.sqrt(total);
  const coverageFactor = studentTCoverageFactor(coverage, effectiveDegreesOfFreedom);
  return accept({
    combined,
    effectiveDegreesOfFreedom,
    coverageFactor,
    expanded: coverageFactor * combined,
    lines: lines.map((line, i) => ({ ...line, share: squares[i]! / total })),
  });
}
