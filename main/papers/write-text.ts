// Words on paper: measured with the font they are set in, broken into lines that fit, placed on their baseline.
import { textLines, type Words } from '../../app/papers/paper.ts';
import type { Face, Sheet } from './sheet.ts';

export type SizeName = keyof typeof textLines;

export const colors = { ink: '#000000', quiet: '#333333', mark: '#555555', line: '#999999' } as const;

// Tabular figures of one height, so that columns line up.
const features: PDFKit.Mixins.OpenTypeFeatures[] = ['tnum', 'lnum', 'kern', 'liga'];

export type Run = { readonly text: string; readonly face: Face; readonly color: string };
export type Line = readonly Run[];

export function toRuns(words: readonly Words[], face: Face = 'regular'): readonly Run[] {
  return words.map(({ text, strong, quiet }) => ({
    text,
    face: strong ? 'semibold' : face,
    color: quiet ? colors.quiet : colors.ink,
  }));
}

export function runWidth({ document, widths }: Sheet, { face, text }: Run, size: number): number {
  const key = `${face} ${text}`;
  const known = widths.get(key);
  if (known !== undefined) return known * size;
  const em = document.font(face, 1000).widthOfString(text, { features }) / 1000;
  widths.set(key, em);
  return em * size;
}

export function lineWidth(sheet: Sheet, line: Line, size: number): number {
  return line.reduce((sum, run) => sum + runWidth(sheet, run, size), 0);
}

/** The runs broken at spaces, but not beside a ±, into lines no wider than `width`; a word wider than that is broken inside. */
export function breakLines(sheet: Sheet, runs: readonly Run[], size: number, width: number): readonly Line[] {
  const lines: Run[][] = [[]];
  let filled = 0;
  const append = (run: Run, itsWidth: number) => {
    const line = lines[lines.length - 1]!;
    const last = line[line.length - 1];
    if (last !== undefined && last.face === run.face && last.color === run.color) {
      line[line.length - 1] = { ...last, text: last.text + run.text };
    } else {
      line.push(run);
    }
    filled += itsWidth;
  };
  const startLine = () => {
    lines.push([]);
    filled = 0;
  };
  for (const run of runs) {
    for (const token of run.text.split(/((?<!±) +(?!±)|\n)/).filter((each) => each !== '')) {
      if (token === '\n') {
        startLine();
        continue;
      }
      const part = { ...run, text: token };
      const itsWidth = runWidth(sheet, part, size);
      const isSpace = token.trim() === '';
      if (filled + itsWidth <= width) {
        if (!isSpace || filled > 0) append(part, itsWidth);
      } else if (isSpace) {
        startLine();
      } else {
        if (filled > 0) startLine();
        for (const character of token) {
          const letter = { ...run, text: character };
          const letterWidth = runWidth(sheet, letter, size);
          if (filled > 0 && filled + letterWidth > width) startLine();
          append(letter, letterWidth);
        }
      }
    }
  }
  return lines.map(withoutSpaceAtEnd);
}

function withoutSpaceAtEnd(line: readonly Run[]): Line {
  const last = line[line.length - 1];
  if (last === undefined) return line;
  const text = last.text.replace(/ +$/, '');
  return text === '' ? line.slice(0, -1) : [...line.slice(0, -1), { ...last, text }];
}

/** One line on its baseline, from `x` or, aligned to the end, up to it. */
export function placeLine(
  sheet: Sheet,
  line: Line,
  x: number,
  baseline: number,
  size: number,
  align: 'start' | 'middle' | 'end' = 'start',
): void {
  const width = align === 'start' ? 0 : lineWidth(sheet, line, size);
  let at = align === 'start' ? x : align === 'end' ? x - width : x - width / 2;
  for (const [index, run] of line.entries()) {
    sheet.document
      .font(run.face, size)
      .fillColor(run.color)
      .text(run.text, at, baseline, { lineBreak: false, baseline: 'alphabetic', features });
    if (index < line.length - 1) at += runWidth(sheet, run, size);
  }
}

/** Where the baseline lies under the top of a line box of this size. */
export function baselineIn(name: SizeName): number {
  const { size, line } = textLines[name];
  return (line - size) / 2 + 0.8 * size;
}

/** Lines under each other from the top of the first line's box. */
export function placeLines(
  sheet: Sheet,
  lines: readonly Line[],
  x: number,
  y: number,
  name: SizeName,
  align: 'start' | 'end' = 'start',
): void {
  for (const [index, line] of lines.entries()) {
    placeLine(sheet, line, x, y + index * textLines[name].line + baselineIn(name), textLines[name].size, align);
  }
}
