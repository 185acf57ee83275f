// A font opened once and asked once for each word. Opening one takes a tenth of a second and shaping a word a millisecond;
// papers say the same words again and again, and pdfkit shapes a line three times to place it once.
import { readFileSync } from 'node:fs';
import { create, type Font, type Glyph } from 'fontkit';
import type { FontSource } from './fonts.ts';

type Run = {
  readonly glyphs: readonly Glyph[];
  readonly positions: readonly object[];
  readonly advanceWidth: number;
};

/** A shop's papers use a few thousand words; a word's run takes about a kilobyte. */
const mostWords = 20_000;

const opened = new Map<FontSource, Font>();

/**
 * The font as pdfkit takes it. Its words are shaped apart from each other, so that a line is exactly as wide as its words
 * and spaces were measured: kerning does not reach across a space.
 */
export function openFont(source: FontSource): Font {
  const known = opened.get(source);
  if (known !== undefined) return known;
  const bytes = Buffer.from(typeof source === 'string' ? readFileSync(source) : source);
  const shaped = shapingOnce(create(bytes) as Font, create(bytes) as Font);
  opened.set(source, shaped);
  return shaped;
}

/** `outlines` is asked what a file embeds: fontkit forgets there what letter a glyph was met as. */
function shapingOnce(font: Font, outlines: Font): Font {
  const words = new Map<string, Run>();
  const shape = (word: string, features: string[] | undefined): Run => {
    const key = `${features?.join() ?? ''} ${word}`;
    const known = words.get(key);
    if (known !== undefined) return known;
    if (words.size >= mostWords) words.clear();
    const { glyphs, positions, advanceWidth, direction } = font.layout(word, features);
    const run = { glyphs: direction === 'rtl' ? glyphs : metAs(word, glyphs), positions, advanceWidth };
    words.set(key, run);
    return run;
  };
  const layout = (text: string, features?: string[]) => {
    const runs = text.split(/(?<= )|(?= )/).map((word) => shape(word, features));
    return {
      glyphs: runs.flatMap((run) => run.glyphs),
      // pdfkit writes into the positions it is given.
      positions: runs.flatMap((run) => run.positions.map((position) => ({ ...position }))),
      advanceWidth: runs.reduce((sum, run) => sum + run.advanceWidth, 0),
    };
  };
  return Object.create(font, {
    layout: { value: layout },
    createSubset: { value: () => outlines.createSubset() },
  }) as Font;
}

/**
 * The glyphs as what they were met as in this word. A font draws some letters alike (a space that breaks and one that does
 * not), and fontkit remembers whichever came first: what is copied from a paper would depend on the papers before it.
 */
function metAs(word: string, glyphs: readonly Glyph[]): readonly Glyph[] {
  const letters = [...word];
  if (letters.length !== glyphs.length) return glyphs;
  return glyphs.map((glyph, index) =>
    Object.create(glyph, { codePoints: { value: [letters[index]!.codePointAt(0)] } }),
  );
}
