// The estimate on paper: every figure a customer is asked to agree to, none of the shop's own, whole on every page.
import { describe, expect, test } from 'vitest';
import { type EstimateFacts, estimatePaper } from '../../app/papers/estimate.ts';
import { findFonts } from '../../main/papers/fonts.ts';
import { paintPaper } from '../../main/papers/paint-paper.ts';
import { shopWithParts } from '../stock/shop-with-parts.ts';
import { readPdf } from './read-pdf.ts';

const fonts = findFonts();
const read = async (facts: EstimateFacts) => readPdf(await paintPaper(estimatePaper(facts), fonts));

// 18.5 × 115.00 = 2,127.50; 9 × 7.50 = 67.50; −50.00. Taxable 17.50 × 8.875 % = 1.553125, so 1.55. By hand.
const facts: EstimateFacts = {
  paper: 'letter',
  decimalMark: '.',
  shopName: 'Harrow Lane Transmission',
  isDemo: true,
  jobNumber: 214,
  number: 1,
  givenOn: '2026-11-18',
  givenBy: 'RA',
  customerName: 'Tam Okoro',
  unit: { family: 'KX3', serial: 'KX3-19-2214', vehicle: 'half-ton pickup', use: 'tow', caseTag: '214' },
  complaint: 'slips 2–3 when hot',
  whatWasFound: 'Direct drum burnt.\nPump within limits.',
  lines: [
    line('part', 'Forward friction', 900, 750, 6_750),
    line('labour', 'Rebuild', 1850, 11_500, 212_750, false),
    line('core charge', 'Converter core back', 100, -5_000, -5_000),
  ],
  totals: { lines_cents: 214_500, taxable_cents: 1_750, tax_cents: 155, total_cents: 214_655 },
  taxLabel: 'Sales tax',
  taxPerHundredThousand: 8875,
  deposited_cents: 50_000,
  approvals: [],
  changes: null,
};

function line(
  kind: EstimateFacts['lines'][number]['kind'],
  description: string,
  quantity_hundredths: number,
  unitPrice_cents: number,
  amount_cents: number,
  isTaxable = true,
): EstimateFacts['lines'][number] {
  return { kind, description, quantity_hundredths, unitPrice_cents, amount_cents, isTaxable };
}

const approval = {
  approvedBy: 'Tam Okoro',
  how: 'phone',
  approvedOn: '2026-11-19',
  upTo_cents: 214_655,
  by: 'RA',
} as const;

describe('the estimate on paper', () => {
  test('says every figure, what was found, the rounding, and asks for a signature', async () => {
    const { text, pages, isMarked } = await read(facts);
    for (const words of [
      'Job 214',
      'estimate 1',
      '18 November 2026',
      'Direct drum burnt.',
      'Pump within limits.',
      '18.5 h',
      '115.00',
      '2127.50',
      '−50.00',
      'Sales tax 8.875 % on 17.50',
      '1.55',
      '2146.55',
      'Received ahead',
      '−500.00',
      '1646.55',
      'Half a cent goes away from zero.',
      'Approved, name and day',
      'demo shop, everything invented',
      'page 1 of 1',
    ])
      expect(text, words).toContain(words);
    expect(pages).toHaveLength(1);
    expect(isMarked).toBe(true);
    // Labour stands first, core charges after parts.
    expect(text.indexOf('Rebuild')).toBeLessThan(text.indexOf('Forward friction'));
    expect(text.indexOf('Forward friction')).toBeLessThan(text.indexOf('Converter core back'));
  });

  test('says who approved it, how and when, and what changed since the one approved before', async () => {
    const { text } = await read({
      ...facts,
      paper: 'A4',
      isDemo: false,
      number: 2,
      approvals: [approval],
      changes: {
        sinceNumber: 1,
        lines: [
          { lineId: 1, description: 'Rebuild', was_cents: 207_000, is_cents: 212_750, difference_cents: 5_750 },
          { lineId: 2, description: 'Converter sublet', was_cents: 24_000, is_cents: null, difference_cents: -24_000 },
        ],
        tax_difference_cents: 0,
        total_difference_cents: -18_250,
      },
    });
    expect(text).toContain('Approved by Tam Okoro by phone on 19 November 2026, up to 2146.55; written down by RA.');
    expect(text).toContain('Changed since estimate 1 was approved');
    expect(text).toMatch(/Rebuild\s+2070\.00\s+2127\.50\s+\+57\.50/);
    expect(text).toMatch(/Converter sublet\s+240\.00\s+–\s+−240\.00/);
    expect(text).not.toMatch(/demo|name and day/);
  });

  test('a long one repeats its headings and loses no line', async () => {
    const many = Array.from({ length: 90 }, (_, index) => line('part', `Part ${index + 1},`, 100, 100, 100));
    const { pages, text } = await read({ ...facts, lines: many });
    expect(pages.length).toBeGreaterThan(1);
    for (let number = 1; number <= 90; number += 1) expect(text).toContain(`Part ${number},`);
    for (const page of pages.filter((each) => /Part \d+,/.test(each.text))) expect(page.text).toContain('amount');
  });
});

test('what it costs the shop stands on no paper', async () => {
  const { call, jobId, by } = await shopWithParts();
  const sublet = {
    kind: 'sublet',
    description: 'Converter rebuilt',
    quantity: '1',
    unitPrice: '240',
    unitCost: '173.19',
    isTaxable: false,
    batchId: null,
  };
  await call('jobs.addLine', { jobId, line: sublet, by });
  await call('jobs.giveEstimate', { jobId, whatWasFound: 'Lining in the converter.', by });
  const { pdfBase64, fileName } = await call('jobs.printEstimate', { jobId, number: 1, paper: 'A4' });
  expect(fileName).toBe('job 1 estimate 1.pdf');
  const { text } = await readPdf(Buffer.from(pdfBase64, 'base64'));
  expect(text).toContain('240.00');
  expect(text).toContain('Lining in the converter.');
  expect(text).not.toMatch(/173|cost/);
});
