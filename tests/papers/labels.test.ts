// Labels as painted: the page is the label, a general-purpose decoder reads the code, no word spills.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textWidth } from '../../app/charts/text-box.ts';
import { type LabelSheet, type LabelWords, layLabel, pointsOf_um } from '../../app/papers/labels.ts';
import { findFonts } from '../../main/papers/fonts.ts';
import { paintLabels } from '../../main/papers/paint-labels.ts';
import { readCodes } from './read-codes.ts';
import { fontsOf, readPdf } from './read-pdf.ts';

const bin = { width_um: 50_000, height_um: 25_000 };
const plate = { width_um: 40_000, height_um: 15_000 };
const shelf = { width_um: 80_000, height_um: 50_000 };
const tall = { width_um: 20_000, height_um: 45_000 };
const least = { width_um: 10_000, height_um: 10_000 };
const sizes = [bin, plate, shelf, tall, least];

const friction: LabelWords = {
  code: 'THOU-B12',
  big: 'KX3-FR-080',
  lines: ['bin A3 left', 'batch 4471-K', 'received 24 November 2026', 'Forward friction, 0.080 in'],
};
const steel: LabelWords = { code: 'THOU-C3', big: '77.5', lines: ['thou · steel', 'KX3 forward'] };
const longest: LabelWords = {
  code: 'THOU-J99999999999999',
  big: 'Donaudampfschifffahrtselektrizitätenhauptbetriebswerk',
  lines: [
    '“Ångström” & Söhne, left of the second door',
    '…',
    'a label whose words go on and on and never come to any end at all, not even here',
  ],
};

const widest: LabelWords = { code: 'THOU-P1', big: 'W'.repeat(200), lines: ['W'.repeat(200), 'm'.repeat(200)] };

function sheetOf(size: { width_um: number; height_um: number }, labels: readonly LabelWords[]): LabelSheet {
  return {
    width: pointsOf_um(size.width_um),
    height: pointsOf_um(size.height_um),
    title: 'Labels',
    author: 'Harrow Lane Transmission',
    madeAt: '2026-11-25T12:00:00Z',
    labels: labels.map((words) => layLabel(words, size)),
  };
}

const fonts = findFonts();

describe.each(sizes)('a label of $width_um by $height_um micrometres', (size) => {
  const painted = paintLabels(sheetOf(size, [friction, steel, longest]), fonts);

  test('is a page of exactly that size', async () => {
    // 1 in = 25.4 mm = 72 points.
    const [width, height] = [(size.width_um * 72) / 25_400, (size.height_um * 72) / 25_400];
    const raw = (await painted).toString('latin1');
    const boxes = [...raw.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map((match) => match.slice(1).map(Number));
    expect(boxes).toHaveLength(3);
    for (const box of boxes) {
      expect(Math.abs(box[0]! - width)).toBeLessThan(0.01);
      expect(Math.abs(box[1]! - height)).toBeLessThan(0.01);
    }
  });

  test.each([300, 600])('its code is read at %d dots an inch', async (dotsPerInch) => {
    expect(await readCodes(await painted, dotsPerInch)).toEqual(['THOU-B12', 'THOU-C3', 'THOU-J99999999999999']);
  });

  test('keeps its words on the label, off the code and off each other', async () => {
    const bytes = await paintLabels(sheetOf(size, [friction, steel, longest, widest]), fonts);
    for (const { placed, width, height } of (await readPdf(bytes)).pages) {
      for (const [index, word] of placed.entries()) {
        expect(word.left).toBeGreaterThan(0);
        expect(word.bottom).toBeGreaterThan(0);
        expect(word.right).toBeLessThan(width);
        expect(word.top).toBeLessThan(height);
        for (const other of placed.slice(index + 1)) {
          expect(word.bottom >= other.top - 0.3 || other.bottom >= word.top - 0.3).toBe(true);
        }
      }
    }
  });
});

test('the words say the big one first and what can be typed last', async () => {
  const { pages } = await readPdf(await paintLabels(sheetOf(bin, [friction, steel]), fonts));
  expect(pages[0]!.placed[0]!.text).toBe('KX3-FR-080');
  expect(pages[0]!.placed.at(-1)!.text).toBe('THOU-B12');
  expect(pages[1]!.placed.map((each) => each.text)).toEqual(['77.5', 'thou · steel', 'KX3 forward', 'THOU-C3']);
});

test('the file is tagged: a figure with words for those who do not see it, and paragraphs', async () => {
  const bytes = await paintLabels(sheetOf(bin, [friction]), fonts);
  const { isMarked, pages, info } = await readPdf(bytes);
  expect(isMarked).toBe(true);
  expect(info).toMatchObject({ Title: 'Labels', Language: 'en' });
  expect(pages[0]!.structure).toContainEqual({ role: 'Figure', alt: 'Code THOU-B12' });
  expect(pages[0]!.structure.filter((each) => each.role === 'P').length).toBeGreaterThan(2);
  expect(fontsOf(bytes).names).toEqual(['FiraSans-Regular', 'FiraSans-SemiBold']);
});

test('whatever the words and the size, code and words stay inside, apart, and the modules are 0.33 mm or more', () => {
  const side = fc.integer({ min: 10_000, max: 300_000 });
  const words = fc.record({
    code: fc.constant('THOU-P1'),
    big: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
    lines: fc.array(fc.string({ unit: 'grapheme', maxLength: 80 }), { maxLength: 6 }),
  });
  fc.assert(
    fc.property(words, side, side, (said, width_um, height_um) => {
      const [width, height] = [(width_um * 72) / 25_400, (height_um * 72) / 25_400];
      const { code, lines } = layLabel(said, { width_um, height_um });
      // 21 modules and 4 blank ones on both sides.
      expect(code.side / 29).toBeGreaterThan((0.33 * 72) / 25.4 - 1e-9);
      expect(code.x + code.side).toBeLessThan(width + 1e-6);
      expect(code.y + code.side).toBeLessThan(height + 1e-6);
      expect(Math.min(code.x, code.y)).toBeGreaterThan(-1e-6);
      for (const line of lines) {
        const isBeside = line.x >= code.x + code.side - 1e-6;
        const isUnder = line.baseline - 0.75 * line.size >= code.y + code.side - 1e-6;
        expect(isBeside || isUnder).toBe(true);
        expect(line.x + textWidth(line.text, line.size)).toBeLessThan(width);
        expect(line.baseline + 0.22 * line.size).toBeLessThan(height);
        expect(line.size).toBeGreaterThan(4.9);
      }
    }),
  );
});
