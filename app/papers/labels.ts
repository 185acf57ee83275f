// Labels to stick on bins, boxes, cans, plates and units: a code for the scanner and, beside it, what a person looks for.
import { textWidth } from '../charts/text-box.ts';

/** What one label says: `big` is read from across the room, `lines` by who holds it, the most needed first. */
export type LabelWords = { readonly code: string; readonly big: string; readonly lines: readonly string[] };

export type LabelSide_um = { readonly width_um: number; readonly height_um: number };

/** A run of words on its baseline; all measures in points from the upper left corner of the label. */
export type LabelLine = {
  readonly text: string;
  readonly x: number;
  readonly baseline: number;
  readonly size: number;
  readonly isBig: boolean;
};

/** One label, laid out. The code is a square of `side`, its quiet zone in it. */
export type LabelLayout = {
  readonly code: { readonly text: string; readonly x: number; readonly y: number; readonly side: number };
  readonly lines: readonly LabelLine[];
};

/** A file of labels, one a page. */
export type LabelSheet = {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly author: string;
  /** The instant it was made, ISO. */
  readonly madeAt: string;
  readonly labels: readonly LabelLayout[];
};

const mm = 72 / 25.4;

/** Micrometres in points, of which 72 make an inch. */
export function pointsOf_um(length_um: number): number {
  return (length_um / 1000) * mm;
}

// ISO/IEC 18004: a code of version 1 is 21 modules wide and wants 4 blank ones around it. It holds 20 characters.
export const quietModules = 4;
const modules = 21 + 2 * quietModules;
// A module is a whole number of dots of a printer of 300 an inch, so that its edges come out sharp; at least four, 0.34 mm.
const dot = 72 / 300;
const leastDots = 4;
const leastCode = modules * leastDots * dot;
const codeShare = 0.4;
const margin = 1.5 * mm;
/** Less room than this takes no words that can be read. */
const leastWords = { width: 5 * mm, height: 2.5 * mm };

const bigSizes = { least: 6, most: 44, share: 0.36 } as const;
const lineSizes = { least: 5, most: 12, share: 0.13 } as const;
const bigLine = 1.05;
const lineStep = 1.2;
const ascent = 0.75;

/** The code at the left of a wide label or at the top of a tall one, the words in the rest; a tiny label is all code. */
export function layLabel(words: LabelWords, size: LabelSide_um): LabelLayout {
  const [width, height] = [pointsOf_um(size.width_um), pointsOf_um(size.height_um)];
  const isWide = width >= height;
  const [long, short] = isWide ? [width, height] : [height, width];
  const beside = wholeDots(Math.min(short, Math.max(leastCode, codeShare * long)));
  const room = isWide
    ? { x: beside, y: margin, width: width - beside - margin, height: height - 2 * margin }
    : { x: margin, y: beside, width: width - 2 * margin, height: height - beside - margin };
  const hasWords = room.width >= leastWords.width && room.height >= leastWords.height;
  const side = hasWords ? beside : wholeDots(short);
  const x = hasWords && isWide ? 0 : middle(width, side);
  const y = hasWords && !isWide ? 0 : middle(height, side);
  return { code: { text: words.code, x, y, side }, lines: hasWords ? layWords(words, room) : [] };
}

/** The widest code within `side` whose modules are whole dots. */
function wholeDots(side: number): number {
  return modules * dot * Math.max(leastDots, Math.floor(side / (modules * dot) + 1e-9));
}

/** Where a code of `side` begins to stand in the middle, on a whole dot. */
function middle(whole: number, side: number): number {
  return Math.floor((whole - side) / 2 / dot) * dot;
}

type Room = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** The big words as large as they fit, the others under them as long as there is height; together half way down. */
function layWords({ big, lines, code }: LabelWords, room: Room): readonly LabelLine[] {
  const largestBig = between(bigSizes.least, room.height * bigSizes.share, bigSizes.most);
  const heading = fitText(big, room.width, Math.min(largestBig, room.height / bigLine), bigSizes.least);
  const said = lines.filter((line) => line !== '');
  const lineSize = smallSize([...said, code], room);
  const rows = Math.floor((room.height - heading.size * bigLine + 0.01) / (lineSize * lineStep));
  // What can be typed when the scanner fails stands last; a line of words gives way to it.
  const small = rows < 1 ? [] : [...said.slice(0, rows - 1), code];
  const height = heading.size * bigLine + small.length * lineSize * lineStep;
  const top = room.y + (room.height - height) / 2;
  return [
    { ...heading, x: room.x, baseline: top + heading.size * ascent, isBig: true },
    ...small.map((text, index) => {
      const rowTop = top + heading.size * bigLine + index * lineSize * lineStep;
      const fitted = fitText(text, room.width, lineSize, lineSize);
      return { ...fitted, x: room.x, baseline: rowTop + lineSize * (ascent + 0.1), isBig: false };
    }),
  ];
}

/** One size for all small lines: that of the longest, but one long line makes the others only so much smaller. */
function smallSize(lines: readonly string[], room: Room): number {
  const largest = between(lineSizes.least, room.height * lineSizes.share, lineSizes.most);
  const longest = Math.max(...lines.map((line) => textWidth(line, 1)));
  return between(Math.max(lineSizes.least, 0.75 * largest), room.width / longest, largest);
}

/** The words in the largest size they fit in, never under `least`; words too long even then end with "…". */
function fitText(words: string, width: number, largest: number, least: number): { text: string; size: number } {
  const size = Math.max(Math.min(largest, least), Math.min(largest, width / textWidth(words, 1)));
  if (textWidth(words, size) <= width + 1e-9) return { text: words, size };
  const characters = [...words];
  while (characters.length > 0 && textWidth(`${characters.join('').trimEnd()}…`, size) > width) characters.pop();
  return { text: `${characters.join('').trimEnd()}…`, size };
}

function between(least: number, value: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
