// What the mock-ups of a pack say about its gap and about every piece that was in it.
//
// Clearance k = gap − Σ heights of the pieces in it + re-stack + reading error: linear and Gaussian, so exact. What is
// known is kept as means and a square root of the covariance: each row says how one unknown moves with independent
// sources of doubt (the gap prior, each piece's own error, the micrometer's shared one, each mock-up). A source that two
// rows share cancels in their difference to the last digit, however wide it is: a friction that stays drops out.
import { accept, type Result, refuse } from '../base/result.ts';

export type GapPiece = { readonly id: string; readonly height: number; readonly standardUncertainty: number };

export type GapMockUp = {
  readonly pieces: readonly string[];
  readonly clearance: number;
  /** Of the reading, more than zero. */
  readonly standardUncertainty: number;
};

export type GapEvidence = {
  /** null: nothing is known about this drum's gap before its first mock-up. */
  readonly gapPrior: Estimate | null;
  readonly pieces: readonly GapPiece[];
  /** The micrometer's own error, the same in every height it gave. */
  readonly sharedMicrometerUncertainty: number;
  /** How much a pack reads differently after it was taken apart and put back, one standard deviation. */
  readonly restack: number;
  readonly mockUps: readonly GapMockUp[];
};

export type Estimate = { readonly mean: number; readonly standardDeviation: number };

/** Everything known about one pack, after its mock-ups. Opaque: ask the functions below. */
export type GapKnowledge = {
  /** One innovation a mock-up, in standard deviations of what the earlier ones predicted; null where nothing did. */
  readonly innovations: readonly (number | null)[];
  readonly restack: number;
  readonly indexOf: ReadonlyMap<string, number>;
  readonly means: readonly number[];
  readonly roots: readonly (readonly number[])[];
};

const gapRow = 0;
const micrometerRow = 1;
const firstPieceRow = 2;

/**
 * What the evidence says. Any one length unit. Refuses an unknown or repeated piece, a negative uncertainty, a reading
 * without uncertainty, and a gap about which nothing is said (no prior and no mock-up).
 * Source: Gaussian conditioning by Potter's square-root update (G. Bierman, Factorization Methods for Discrete
 * Sequential Estimation, 1977, II.3); with no gap prior the first mock-up defines the gap, which is the limit of an ever
 * wider prior, taken exactly.
 */
export function learnGap(evidence: GapEvidence): Result<GapKnowledge> {
  const checked = checkEvidence(evidence);
  if (!checked.ok) return checked;
  const indexOf = checked.value;
  const { gapPrior, pieces, mockUps, restack } = evidence;
  const means = [gapPrior?.mean ?? 0, 0, ...pieces.map((piece) => piece.height)];
  const roots = priorRoots(evidence);
  const innovations: (number | null)[] = [];
  mockUps.forEach((mockUp, k) => {
    const noise = Math.hypot(restack, mockUp.standardUncertainty);
    const rows = mockUp.pieces.map((id) => indexOf.get(id)!);
    if (k === 0 && !gapPrior) {
      means[gapRow] = mockUp.clearance + rows.reduce((sum, row) => sum + means[row]!, 0);
      roots[gapRow] = combination(roots, rows, 1);
      roots[gapRow][gapRow] = noise;
      innovations.push(null);
    } else {
      innovations.push(learnFrom(means, roots, rows, mockUp.clearance, noise));
    }
  });
  return accept({ innovations, restack, indexOf, means, roots });
}

/** The gap itself. */
export function gapEstimate(knowledge: GapKnowledge): Estimate {
  return estimateOfRow(knowledge, gapRow);
}

/** The true height of one piece, as the mock-ups leave it. */
export function pieceEstimate(knowledge: GapKnowledge, id: string): Result<Estimate> {
  const row = knowledge.indexOf.get(id);
  return row === undefined ? unknownPiece(id) : accept(estimateOfRow(knowledge, row));
}

/** Covariance of the gap and the pieces named, in this order: gap first. */
export function gapCovariance(knowledge: GapKnowledge, ids: readonly string[]): Result<number[][]> {
  const rows = rowsOf(knowledge.indexOf, ids);
  if (!rows.ok) return rows;
  const chosen = [gapRow, ...rows.value].map((row) => knowledge.roots[row]!);
  return accept(chosen.map((left) => chosen.map((right) => dot(left, right))));
}

/**
 * The true clearance the pack will have when it is built again from `candidate`. The re-stack scatter is included,
 * because a rebuilt pack is stacked anew; the error of reading it is not.
 */
export function predictClearance(knowledge: GapKnowledge, candidate: readonly string[]): Result<Estimate> {
  const rows = rowsOf(knowledge.indexOf, candidate);
  if (!rows.ok) return rows;
  const mean = knowledge.means[gapRow]! - rows.value.reduce((sum, row) => sum + knowledge.means[row]!, 0);
  const root = clearanceRoot(knowledge.roots, rows.value);
  return accept({ mean, standardDeviation: Math.hypot(norm(root), knowledge.restack) });
}

/** The space that is left above the pieces that stay, with what is needed to fill it from a bin. */
export type SpaceLeft = {
  /** Gap − Σ kept pieces. */
  readonly mean: number;
  readonly variance: number;
  /** What the mock-ups say the micrometer adds to every height it gives. */
  readonly micrometerMean: number;
  readonly micrometerVariance: number;
  /** Covariance of the space with the micrometer's error. */
  readonly covariance: number;
  readonly restackVariance: number;
};

/** Gap − Σ `kept`, and how it moves with the micrometer error that the loose pieces share. */
export function spaceLeftBy(knowledge: GapKnowledge, kept: readonly string[]): Result<SpaceLeft> {
  const rows = rowsOf(knowledge.indexOf, kept);
  if (!rows.ok) return rows;
  const space = clearanceRoot(knowledge.roots, rows.value);
  const micrometer = knowledge.roots[micrometerRow]!;
  return accept({
    mean: knowledge.means[gapRow]! - rows.value.reduce((sum, row) => sum + knowledge.means[row]!, 0),
    variance: dot(space, space),
    micrometerMean: knowledge.means[micrometerRow]!,
    micrometerVariance: dot(micrometer, micrometer),
    covariance: dot(space, micrometer),
    restackVariance: knowledge.restack * knowledge.restack,
  });
}

/**
 * The clearance when loose pieces, measured by the same micrometer and never mocked up, fill the space: their number,
 * the sum of their heights and the sum of their own variances say everything. Re-stack included, as in
 * `predictClearance`, with which it agrees.
 */
export function clearanceWithLoose(
  space: SpaceLeft,
  loose: { readonly count: number; readonly heights: number; readonly variances: number },
): Estimate {
  const { count } = loose;
  const variance =
    space.variance +
    loose.variances +
    count * count * space.micrometerVariance -
    2 * count * space.covariance +
    space.restackVariance;
  return {
    mean: space.mean - loose.heights - count * space.micrometerMean,
    standardDeviation: Math.sqrt(Math.max(0, variance)),
  };
}

/** Columns: the gap's own doubt, the micrometer's, then one a piece. */
function priorRoots({ gapPrior, pieces, sharedMicrometerUncertainty }: GapEvidence): number[][] {
  const width = firstPieceRow + pieces.length;
  const row = (...entries: readonly (readonly [column: number, value: number])[]) => {
    const values = new Array<number>(width).fill(0);
    for (const [column, value] of entries) values[column] = value;
    return values;
  };
  const shared = [micrometerRow, sharedMicrometerUncertainty] as const;
  return [
    row([gapRow, gapPrior?.standardDeviation ?? 0]),
    row(shared),
    ...pieces.map((piece, i) => row([firstPieceRow + i, piece.standardUncertainty], shared)),
  ];
}

/** Takes one mock-up in, changing means and roots; returns its standardised innovation. */
function learnFrom(means: number[], roots: number[][], rows: readonly number[], clearance: number, noise: number) {
  const predicted = means[gapRow]! - rows.reduce((sum, row) => sum + means[row]!, 0);
  const direction = clearanceRoot(roots, rows);
  const explained = dot(direction, direction);
  const total = explained + noise * noise;
  const innovation = clearance - predicted;
  const shrink = 1 / (1 + noise / Math.sqrt(total));
  roots.forEach((root, i) => {
    const gain = dot(root, direction) / total;
    means[i]! += gain * innovation;
    root.forEach((value, column) => {
      root[column] = value - shrink * gain * direction[column]!;
    });
  });
  return innovation / Math.sqrt(total);
}

/** How gap − Σ rows moves with each source. */
function clearanceRoot(roots: readonly (readonly number[])[], rows: readonly number[]): number[] {
  const pieces = combination(roots, rows, -1);
  return roots[gapRow]!.map((value, column) => value + pieces[column]!);
}

function combination(roots: readonly (readonly number[])[], rows: readonly number[], factor: number): number[] {
  return roots[gapRow]!.map((_, column) => factor * rows.reduce((sum, row) => sum + roots[row]![column]!, 0));
}

function estimateOfRow(knowledge: GapKnowledge, row: number): Estimate {
  return { mean: knowledge.means[row]!, standardDeviation: norm(knowledge.roots[row]!) };
}

function dot(left: readonly number[], right: readonly number[]): number {
  return left.reduce((sum, value, i) => sum + value * right[i]!, 0);
}

function norm(values: readonly number[]): number {
  return Math.hypot(...values);
}

function rowsOf(indexOf: ReadonlyMap<string, number>, ids: readonly string[]): Result<number[]> {
  const rows: number[] = [];
  for (const id of ids) {
    const row = indexOf.get(id);
    if (row === undefined) return unknownPiece(id);
    if (rows.includes(row)) return refuse('piece-twice', `The piece ${id} cannot sit in one pack twice.`);
    rows.push(row);
  }
  return accept(rows);
}

function unknownPiece(id: string) {
  return refuse('unknown-piece', `There is no piece called ${id}.`);
}

function checkEvidence(evidence: GapEvidence): Result<ReadonlyMap<string, number>> {
  const indexOf = new Map<string, number>();
  for (const piece of evidence.pieces) {
    if (indexOf.has(piece.id)) return refuse('piece-twice', `Two pieces are called ${piece.id}.`);
    if (!(piece.standardUncertainty >= 0)) return negative('A height');
    indexOf.set(piece.id, firstPieceRow + indexOf.size);
  }
  if (evidence.gapPrior && !(evidence.gapPrior.standardDeviation >= 0)) return negative('A gap');
  if (!(evidence.sharedMicrometerUncertainty >= 0) || !(evidence.restack >= 0)) {
    return refuse('negative', 'The micrometer’s uncertainty and the re-stack scatter are zero or more.');
  }
  for (const mockUp of evidence.mockUps) {
    if (!(mockUp.standardUncertainty > 0)) {
      return refuse('no-uncertainty', 'A mock-up’s reading needs an uncertainty of more than zero.');
    }
    const rows = rowsOf(indexOf, mockUp.pieces);
    if (!rows.ok) return rows;
  }
  if (!evidence.gapPrior && evidence.mockUps.length === 0) {
    return refuse('nothing-known', 'Nothing is known about the gap: give a mock-up or what was known before.');
  }
  return accept(indexOf);
}

function negative(what: string) {
  return refuse('negative', `${what} cannot have an uncertainty below zero.`);
}
