// What a job's mock-ups of one pack tell about its gap: the records of the book, put as evidence for gap.ts.
import type { Settings } from '../shop/shop.contract.ts';
import type { GapEvidence } from './gap.ts';
import type { Piece } from './packs.contract.ts';

export type MockUpRecord = {
  readonly pieces: readonly Piece[];
  /** What it read, when it was read; lengths in nanometres. */
  readonly read: { readonly mean_nm: number; readonly standardUncertainty_nm: number } | null;
};

// Common practice, no source: a plate nobody measured is off its nominal by a couple of thou, one measured by its
// maker only by half of that again. Both are wide, and cancel for every piece that stays.
const nominalUncertainty_nm = 50_800;
const catalogueUncertainty_nm = 38_100;

/** How well a height is known where nothing was written down with it, the micrometer's shared error apart. */
export function heightUncertainty_nm(heightFrom: Piece['heightFrom'], settings: Settings): number {
  switch (heightFrom) {
    case 'measured':
      return settings.micrometerUncertainty_nm;
    case 'catalogue':
      return catalogueUncertainty_nm;
    case 'nominal':
      return nominalUncertainty_nm;
  }
}

/** Evidence from the mock-ups that were read, in order; `others` are loose pieces to predict with. */
export function packEvidence(
  mockUps: readonly MockUpRecord[],
  others: readonly Piece[],
  settings: Settings,
): GapEvidence {
  const pieces = new Map<number, Piece>();
  for (const piece of [...mockUps.flatMap((mockUp) => mockUp.pieces), ...others]) pieces.set(piece.pieceId, piece);
  return {
    gapPrior: null,
    pieces: [...pieces.values()].map((piece) => ({
      id: pieceName(piece.pieceId),
      height: piece.height_nm,
      standardUncertainty: piece.standardUncertainty_nm ?? heightUncertainty_nm(piece.heightFrom, settings),
    })),
    sharedMicrometerUncertainty: settings.micrometerUncertainty_nm,
    restack: settings.restack_nm,
    mockUps: mockUps.flatMap(({ pieces: fitted, read }) =>
      read
        ? [
            {
              pieces: fitted.map((piece) => pieceName(piece.pieceId)),
              clearance: read.mean_nm,
              standardUncertainty: read.standardUncertainty_nm,
            },
          ]
        : [],
    ),
  };
}

export function pieceName(pieceId: number): string {
  return `piece ${pieceId}`;
}

/** Beyond this many standard deviations a reading does not fit what was put in. */
export const innovationLimit = 3;

/** What to look at when it does not, first suspect first. */
export const firstSuspects: readonly string[] = [
  'The last friction has not dropped onto its hub or drum lugs.',
  'The snap ring is not seated all round.',
  'The piston is not down.',
  'A plate was written down wrong.',
];
