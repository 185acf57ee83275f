// A paper as data: what it says, in order, in strings already written out and charts already drawn. A painter only
// places it.
import type { Chart } from '../charts/shapes.ts';
import type { Verdict } from '../charts/verdict-mark.ts';

export const paperSizes = {
  letter: { width: 612, height: 792 },
  A4: { width: 595.28, height: 841.89 },
} as const;
export type PaperSize = keyof typeof paperSizes;

/** In points. The foot holds the page line. */
export const margins = { side: 43.2, top: 36, bottom: 32, foot: 20 } as const;

/** Size and line height in points of the four sizes of a paper. */
export const textLines = {
  small: { size: 8.5, line: 10 },
  body: { size: 10, line: 12.5 },
  say: { size: 15, line: 18 },
  read: { size: 26, line: 30 },
} as const;

/** The width between the side margins. */
export function contentWidth(size: PaperSize): number {
  return paperSizes[size].width - 2 * margins.side;
}

/** A run of words; *strong* is semibold, *quiet* a step back. */
export type Words = { readonly text: string; readonly strong?: boolean; readonly quiet?: boolean };

export type Cell =
  | { readonly kind: 'words'; readonly words: readonly Words[] }
  | { readonly kind: 'chart'; readonly chart: Chart }
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly text: string };

export type Column = {
  /** Words, or a chart that labels the charts under it. */
  readonly heading: string | Chart;
  /** *decimal* lines up the decimal marks of the whole column. */
  readonly align: 'start' | 'end' | 'decimal';
  /** Points, as wide as its content, or a share of what is left, in which words wrap. */
  readonly width: number | 'content' | 'rest';
};

export type Row =
  | { readonly kind: 'group'; readonly text: string }
  | { readonly kind: 'row'; readonly cells: readonly Cell[]; readonly note?: string };

export type Table = { readonly kind: 'table'; readonly columns: readonly Column[]; readonly rows: readonly Row[] };

/** A photo; width and height are those of the JPEG, in its own points. */
export type Picture = {
  readonly jpegBase64: string;
  readonly width: number;
  readonly height: number;
  readonly caption: string;
};

/** A picture painted as large as the chart over it; null leaves its place empty. */
export type MarkedPicture = {
  readonly jpegBase64: string | null;
  readonly chart: Chart;
  readonly caption: string;
};

export type Block =
  | {
      readonly kind: 'masthead';
      readonly title: string;
      readonly by: readonly Words[];
      readonly right: readonly (readonly Words[])[];
    }
  /** Short facts side by side, each under its name. */
  | { readonly kind: 'facts'; readonly facts: ReadonlyArray<{ readonly name: string; readonly value: string }> }
  | { readonly kind: 'verdict'; readonly verdict: Verdict; readonly sentence: string; readonly aside: string }
  /** A heading stays with what follows it. */
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'paragraph'; readonly words: readonly Words[]; readonly small?: boolean }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | Table
  | { readonly kind: 'chart'; readonly chart: Chart }
  /** Blocks kept on one page, with a chart in a column of `width` to their left if there is one. */
  | {
      readonly kind: 'together';
      readonly left: { readonly chart: Chart; readonly width: number } | null;
      readonly blocks: readonly Block[];
    }
  /** Charts side by side. */
  | { readonly kind: 'charts'; readonly charts: readonly Chart[] }
  /** Photos two in a row, each with its caption under it. */
  | { readonly kind: 'pictures'; readonly pictures: readonly Picture[] }
  | { readonly kind: 'marked pictures'; readonly pictures: readonly MarkedPicture[] }
  | Closing;

/**
 * Closes the signed page: charts in a row with notes beside them, and lines to sign on at the foot. The same charts come
 * in several heights, tallest first; the first that fits the page is taken. Where none does they open the next page.
 */
export type Closing = {
  readonly kind: 'closing';
  readonly versions: readonly (readonly Chart[])[];
  readonly notes: readonly (readonly Words[])[];
  readonly signatures: readonly string[];
};

export type Paper = {
  readonly size: PaperSize;
  readonly language: string;
  readonly title: string;
  readonly author: string;
  readonly subject: string;
  /** The instant it was made, ISO. */
  readonly madeAt: string;
  /** At the head of every page but the first. */
  readonly head: { readonly left: string; readonly right: string };
  /** At the foot of every page, before "page x of y". */
  readonly foot: { readonly left: string; readonly middle: string };
  readonly blocks: readonly Block[];
};
