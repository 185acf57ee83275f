// Traces of a gauge on the build report: on the shop's copy, marked where they were made up, never on the customer's.
import { expect, test } from 'vitest';
import { buildReport } from '../../app/papers/build-report.ts';
import type { BuildReportFacts, TraceFacts } from '../../app/papers/build-report-facts.ts';
import { findFonts } from '../../main/papers/fonts.ts';
import { paintPaper } from '../../main/papers/paint-paper.ts';
import { forwardPack, kx3 } from './kx3-report.ts';
import { readPdf } from './read-pdf.ts';

const fonts = findFonts();
const thou = 25_400;
const trace = (spot: number, isPractice = false): TraceFacts => ({
  spot,
  lineName: 'Bench gauge',
  isPractice,
  samples: [
    [0, 0],
    [600, -4 * thou],
    [1300, 0],
    [2100, 21 * thou],
  ],
  pressed_nm: -4 * thou,
  air_nm: 21 * thou,
});

const withTraces = (copy: 'shop' | 'customer', traces: readonly TraceFacts[]): BuildReportFacts => ({
  ...kx3,
  copy,
  packs: [{ ...forwardPack, traces }],
});

const textOf = async (facts: BuildReportFacts) => {
  const { text } = await readPdf(await paintPaper(buildReport(facts), fonts));
  return text.replace(/\s+/g, ' ');
};

test('the shop’s copy draws them spot by spot with their figures', async () => {
  const text = await textOf(withTraces('shop', [trace(1), trace(2), trace(3, true)]));
  expect(text).toContain('Gauge’s trace, spot 1, spot 2: Bench gauge.');
  expect(text).toContain('Gauge’s trace, spot 3: Bench gauge. Practice, made up.');
  expect(text).toContain('air 21.0');
  expect(text).toContain('pressed −4.0');
});

test('the customer’s copy has none', async () => {
  expect(await textOf(withTraces('customer', [trace(1)]))).not.toContain('trace');
});
