// What the parts of a sheet being edited share: the draft, the row that is open, and the ways to change them.
import type { TypedSheet } from './typed-sheet.ts';

/** A row of the sheet: one at a time is open. */
export type Row = { readonly kind: 'pack' | 'check' | 'list' | 'picture'; readonly key: number };

/** What the packs and the checks of the sheet are edited with. */
export type Editing = {
  readonly sheet: TypedSheet;
  readonly familyName: string;
  readonly open: Row | null;
  /** How often what is wrong was asked for: a field that was never typed in then says what it lacks. */
  readonly timesAsked: number;
  readonly change: (sheet: TypedSheet) => void;
  /** A change that takes something away, in words, so that it can be undone. */
  readonly takeAway: (sheet: TypedSheet, what: string) => void;
  readonly openRow: (row: Row) => void;
  readonly close: () => void;
  /** The focus goes to what `find` finds once the screen is drawn again. */
  readonly focusNext: (find: () => Element | null | undefined) => void;
  /** Opens a row and goes to what is wrong in it. */
  readonly pointOut: (row: Row) => void;
};
