// A box being measured: how it was set up, what is typed, what waits to be written down, and what was measured so far.
import type { PieceKind } from '../../../app/specs/spec-sheet.ts';
import { nextTag } from '../../../app/stock/next-tag.ts';

export type BoxSetUp = {
  readonly kind: PieceKind;
  readonly into: 'can' | 'single';
  readonly class_nm: number;
  /** The tag of the next single plate; empty: they get none. */
  readonly tag: string;
  readonly batch: { readonly batchId: number; readonly name: string } | null;
  readonly micrometer: string;
};

export type Measured = {
  readonly height_nm: number;
  readonly into:
    | { readonly kind: 'single'; readonly pieceId: number; readonly tag: string }
    | {
        readonly kind: 'can';
        readonly canId: number;
        readonly canMovementId: number;
        readonly can_nm: number;
        readonly count: number;
      };
};

/** What stands between the first of `waiting` and the book. */
export type Asked = {
  readonly sentence: string;
  /** Enter on the unchanged line says that it is so. */
  readonly meansIt: 'is sure' | 'try again' | null;
};

export type Box = {
  /** As it was set up last; it holds once `isSetUp`. */
  readonly setUp: BoxSetUp | null;
  readonly isSetUp: boolean;
  readonly typed: string;
  /** Committed with Enter and not answered yet, the oldest first. */
  readonly waiting: readonly string[];
  readonly asked: Asked | null;
  readonly run: readonly Measured[];
};

export const emptyBox: Box = { setUp: null, isSetUp: false, typed: '', waiting: [], asked: null, run: [] };

/** What the field shows: the line that was asked about, or what is being typed. */
export function lineOf(box: Box): string {
  return box.asked === null ? box.typed : (box.waiting[0] ?? '');
}

export function withLine(box: Box, line: string): Box {
  if (box.asked === null) return { ...box, typed: line };
  // Emptied, it is given up.
  if (line.trim() === '') return { ...box, waiting: box.waiting.slice(1), asked: null };
  // Another figure is another question.
  return { ...box, waiting: [line, ...box.waiting.slice(1)], asked: { ...box.asked, meansIt: null } };
}

/** Enter: the line joins those that wait, or the one that was asked about goes on its way again. */
export function committed(box: Box): Box {
  if (box.asked !== null) return { ...box, asked: null };
  return { ...box, typed: '', waiting: [...box.waiting, box.typed] };
}

export function withMeasured(box: Box, measured: Measured): Box {
  const setUp = box.setUp && measured.into.kind === 'single' ? tagAfter(box.setUp) : box.setUp;
  return { ...box, setUp, waiting: box.waiting.slice(1), run: [...box.run, measured] };
}

/** The last one taken back: its tag is free again. */
export function withoutLast(box: Box): Box {
  const last = box.run.at(-1);
  const setUp =
    box.setUp && last?.into.kind === 'single' && last.into.tag !== ''
      ? { ...box.setUp, tag: last.into.tag }
      : box.setUp;
  return { ...box, setUp, run: box.run.slice(0, -1) };
}

function tagAfter(setUp: BoxSetUp): BoxSetUp {
  return setUp.tag === '' ? setUp : { ...setUp, tag: nextTag(setUp.tag) };
}

/** After a restart it is not known whether the line on its way was written down. */
export function takenUpAgain(box: Box): Box {
  if (box.waiting.length === 0 || box.asked !== null) return box;
  const sentence = 'This one may be in the book already: look at its can or tag, then press Enter or empty the line.';
  return { ...box, asked: { sentence, meansIt: 'try again' } };
}
