import { readFileSync } from 'node:fs';
import PDFDocument from 'pdfkit';
import { describe, expect, test } from 'vitest';
import { textWidth, wrapText } from '../../app/charts/text-box.ts';

const folder = 'node_modules/@expo-google-fonts/fira-sans';
const weights = [`${folder}/400Regular/FiraSans_400Regular.ttf`, `${folder}/600SemiBold/FiraSans_600SemiBold.ttf`];

/** The width in the font file itself, at ten points. */
function drawnWidths(words: readonly string[], font: string): readonly number[] {
  const document = new PDFDocument({ font: readFileSync(font) as unknown as string });
  document.fontSize(10);
  return words.map((each) => document.widthOfString(each, { features: ['tnum', 'lnum', 'kern'] }));
}

const letters = [...'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 .,:;–−±°→×·½¼⅛≤≥“”’()/%&@é'];
const labels = [
  'backing plate',
  'selective snap ring 86',
  'clearance, by calculation',
  '32.0 ± 1.5',
  'Converter hub to pump bushing',
];

describe('the room a line of text takes', () => {
  test.each(weights)('is never less than the font draws: %s', (font) => {
    const drawn = drawnWidths(letters, font);
    expect(letters.filter((each, index) => textWidth(each, 10) + 1e-9 < drawn[index]!)).toEqual([]);
  });

  test.each(weights)('is at most a tenth more than the font draws for a label: %s', (font) => {
    const drawn = drawnWidths(labels, font);
    for (const [index, label] of labels.entries()) {
      expect(textWidth(label, 10)).toBeGreaterThanOrEqual(drawn[index]!);
      expect(textWidth(label, 10)).toBeLessThan(drawn[index]! * 1.1);
    }
  });
});

describe('wrapping', () => {
  test('keeps every character and no line is wider than asked', () => {
    const words = 'Converter hub to pump bushing Donaudampfschifffahrtsgesellschaft with wave plate in';
    const lines = wrapText(words, 60, 10);
    expect(lines.join('').replaceAll(' ', '')).toBe(words.replaceAll(' ', ''));
    for (const line of lines) expect(textWidth(line, 10)).toBeLessThanOrEqual(60);
  });

  test('leaves a short line alone', () => {
    expect(wrapText('backing plate', 92, 14)).toEqual(['backing plate']);
  });
});
