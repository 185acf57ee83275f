import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { create, type Font } from 'fontkit';
import { expect, test } from 'vitest';
import { findFonts } from '../../main/papers/fonts.ts';
import { openFont } from '../../main/papers/shaped-font.ts';

const { regular } = findFonts();
const features = ['tnum', 'lnum', 'kern', 'liga'];
// The reference: fontkit itself, opened anew and shaping each word once.
const fresh = create(readFileSync(regular as string)) as Font;

const idsOf = ({ glyphs }: { glyphs: readonly { id: number }[] }) => glyphs.map(({ id }) => id);

test('a line is drawn with the glyphs and widths its words have by themselves, however often it was asked for', () => {
  const word = fc.string({ unit: fc.constantFrom(...'Avfifl±0123456789.−+/”°µΩé&Ty,'), minLength: 1, maxLength: 9 });
  fc.assert(
    fc.property(fc.array(word, { minLength: 1, maxLength: 8 }), (words) => {
      const line = openFont(regular).layout(words.join(' '), features);
      const apart = words.flatMap((each, index) => (index === 0 ? [each] : [' ', each]));
      const runs = apart.map((each) => fresh.layout(each, features));
      expect(idsOf(line)).toEqual(runs.flatMap(idsOf));
      expect(line.advanceWidth).toBe(runs.reduce((sum, run) => sum + run.advanceWidth, 0));
      // What a reader of the line may do to its positions stays with that reader.
      for (const position of line.positions) position.xAdvance = -1;
    }),
  );
});

test('letters drawn alike are copied from a paper as they were typed, whichever was written first', () => {
  const font = openFont(regular);
  for (const letter of ['\u00a0', ' ', '\u00b5', '\u03bc', '\u2126', '\u03a9', '\u00ad', '-']) {
    const { glyphs } = font.layout(letter, features);
    expect(glyphs.map(({ codePoints }) => codePoints)).toEqual([[letter.codePointAt(0)]]);
  }
  font.createSubset().encode();
  expect(font.layout('−', features).glyphs[0]?.codePoints).toEqual([0x2212]);
});
