// A paper is painted as strips from top to bottom: each stays whole, and the flow decides which page it falls on.
import { nextPage, type Sheet } from './sheet.ts';

export type Strip = {
  /** Air above it, left out at the top of a page. */
  readonly before: number;
  readonly height: number;
  readonly paint: (x: number, y: number) => void;
  /** May not be the last on its page. */
  readonly keepsWithNext?: boolean;
  /** Begins a new page unless it already stands at the top of one. */
  readonly startsPage?: boolean;
  /** Goes down to the foot of its page. */
  readonly atFoot?: boolean;
  /** Painted again above it when it begins a page: a table's headings. */
  readonly headings?: Pick<Strip, 'height' | 'paint'>;
};

/** Places the strips down the pages. */
export function flow(sheet: Sheet, strips: readonly Strip[]): void {
  let isTop = true;
  for (const [index, strip] of strips.entries()) {
    const fits = sheet.y + (isTop ? 0 : strip.before) + heightToKeep(strips, index) <= sheet.bottom;
    if (!isTop && (strip.startsPage === true || !fits)) {
      nextPage(sheet);
      isTop = true;
      if (strip.headings !== undefined) {
        strip.headings.paint(sheet.left, sheet.y);
        sheet.y += strip.headings.height;
      }
    }
    if (!isTop) sheet.y += strip.before;
    if (strip.atFoot === true) sheet.y = Math.max(sheet.y, sheet.bottom - strip.height);
    strip.paint(sheet.left, sheet.y);
    sheet.y += strip.height;
    isTop = false;
  }
}

/** The strip with those it may not be parted from. */
function heightToKeep(strips: readonly Strip[], index: number): number {
  const strip = strips[index]!;
  const next = strips[index + 1];
  if (strip.keepsWithNext !== true || next === undefined) return strip.height;
  return strip.height + next.before + heightToKeep(strips, index + 1);
}

/** Strips under each other as one, to stand beside something. */
export function stackStrips(strips: readonly Strip[]): Pick<Strip, 'height' | 'paint'> {
  const gap = (index: number) => (index === 0 ? 0 : strips[index]!.before);
  return {
    height: strips.reduce((sum, strip, index) => sum + gap(index) + strip.height, 0),
    paint: (x, y) => {
      let at = y;
      for (const [index, strip] of strips.entries()) {
        at += gap(index);
        strip.paint(x, at);
        at += strip.height;
      }
    },
  };
}
