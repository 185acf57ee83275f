// How much room a line of text takes, known without a font so that a layout is the same on every machine.
import { type Medium, type Text, textSizes } from './shapes.ts';

// Advance widths in em, each the greater of Fira Sans 400 and 600 with tabular figures, rounded up to a fiftieth.
const widths: ReadonlyArray<readonly [string, number]> = [
  ["',.:;·’", 0.24],
  ['!', 0.26],
  [' ', 0.28],
  ['Iijl', 0.3],
  ['J', 0.32],
  ['()[]`{}', 0.34],
  ['f', 0.36],
  ['t', 0.38],
  ['r', 0.4],
  ['-|', 0.42],
  ['"“”', 0.44],
  ['*z', 0.46],
  ['?cs', 0.48],
  ['F', 0.5],
  ['/L\\_vxy–', 0.52],
  ['ETZ', 0.54],
  ['0123456789#$+<=>^aegk~±−°×≤≥', 0.56],
  ['CSVX', 0.58],
  ['APYbdhnopqu', 0.6],
  ['BR', 0.62],
  ['K', 0.64],
  ['DG', 0.66],
  ['HU', 0.68],
  ['NOQ', 0.7],
  ['…', 0.74],
  ['&w', 0.76],
  ['M', 0.8],
  ['Wm', 0.86],
  ['%→', 0.9],
  ['½¼⅛', 0.96],
  ['@', 1.02],
];
const widthOf = new Map(widths.flatMap(([characters, em]) => [...characters].map((each) => [each, em] as const)));
const widthOfFiraMono = 0.6;

/** A character outside the table: accented Latin is as wide as a plain letter, other scripts as wide as they are high. */
function widthOfOther(character: string): number {
  return character < '\u0250' ? 0.695 : 1.05;
}

/** The width of a line of text in units of `size`'s own; never less than it is drawn, at most a few per cent more. */
export function textWidth(words: string, size: number, typeface: 'sans' | 'mono' = 'sans'): number {
  let em = 0;
  for (const character of words) {
    em += typeface === 'mono' ? widthOfFiraMono : (widthOf.get(character) ?? widthOfOther(character));
  }
  return em * size;
}

/** The words broken into lines no wider than `width`; a word that alone is wider is broken inside. */
export function wrapText(words: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  let current = '';
  for (const word of words.split(/[ \n]+/).filter((each) => each !== '')) {
    const longer = current === '' ? word : `${current} ${word}`;
    if (textWidth(longer, size) <= width) {
      current = longer;
      continue;
    }
    if (current !== '') lines.push(current);
    current = '';
    for (const character of word) {
      if (current !== '' && textWidth(current + character, size) > width) {
        lines.push(current);
        current = '';
      }
      current += character;
    }
  }
  if (current !== '') lines.push(current);
  return lines;
}

export type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };

const ascent = 0.74;
const descent = 0.22;

/** The box that a line of text fills, from the top of its tallest letter to the bottom of its lowest. */
export function textBox(line: Text, medium: Medium): Box {
  const size = textSizes[medium][line.size];
  const width = textWidth(line.text, size, line.typeface);
  const left = line.anchor === 'start' ? line.x : line.anchor === 'middle' ? line.x - width / 2 : line.x - width;
  return { left, right: left + width, top: line.y - ascent * size, bottom: line.y + descent * size };
}

export function boxesOverlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}
