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

/** A strip, or what decides by the height left on the page which strips come. */
export type Flowing = Strip | ((room: number) => readonly Strip[]);

/** Places the strips down the pages; every page but the first keeps `headHeight` for its running head. */
export function flow(sheet: Sheet, headHeight: number, strips: readonly Flowing[]): void {
  const waiting = [...strips];
  let isTop = true;
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (typeof next === 'function') {
      waiting.unshift(...next(sheet.bottom - sheet.y));
      continue;
    }
    const fits = sheet.y + (isTop ? 0 : next.before) + heightToKeep(next, waiting) <= sheet.bottom;
    if (!isTop && (next.startsPage === true || !fits)) {
      nextPage(sheet, headHeight);
      isTop = true;
      if (next.headings !== undefined) {
        next.headings.paint(sheet.left, sheet.y);
        sheet.y += next.headings.height;
      }
    }
    if (!isTop) sheet.y += next.before;
    if (next.atFoot === true) sheet.y = Math.max(sheet.y, sheet.bottom - next.height);
    next.paint(sheet.left, sheet.y);
    sheet.y += next.height;
    isTop = false;
  }
}

/** The strip with those it may not be parted from. */
function heightToKeep(strip: Strip, waiting: readonly Flowing[]): number {
  const [next, ...others] = waiting;
  if (strip.keepsWithNext !== true || next === undefined || typeof next === 'function') return strip.height;
  return strip.height + next.before + heightToKeep(next, others);
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
