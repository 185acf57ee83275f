// The purchase list as painted: by supplier, with totals by hand, every word on the paper.
import { describe, expect, test } from 'vitest';
import { type PurchaseListFacts, purchaseList } from '../../app/papers/purchase-list.ts';
import type { Core, ReorderLine } from '../../app/stock/parts.contract.ts';
import { findFonts } from '../../main/papers/fonts.ts';
import { paintPaper } from '../../main/papers/paint-paper.ts';
import { fontsOf, readPdf } from './read-pdf.ts';

const fonts = findFonts();

function line(partId: number, number: string, more: Partial<ReorderLine> = {}): ReorderLine {
  return {
    partId,
    number,
    description: 'Forward friction, 0.080 in',
    kind: 'friction',
    supplier: 'Brightwater Friction',
    unitOfIssue: 'each',
    bin: 'A3',
    cost_cents: 410,
    price_cents: null,
    reorderPoint: 20,
    reorderQuantity: 50,
    isRetired: false,
    onHand: 12,
    isLow: true,
    suggested: 50,
    lineCost_cents: 20_500,
    ...more,
  };
}

function core(coreId: number, more: Partial<Core> = {}): Core {
  return {
    coreId,
    direction: 'to send back',
    what: 'KX3-CV-12, Converter, 10 in',
    quantity: 2,
    charge_cents: 7500,
    dueOn: '2026-12-04',
    isOverdue: false,
    part: { partId: 9, number: 'KX3-CV-12', supplier: 'Ostrander Supply' },
    job: null,
    openedAt: '2026-11-20T08:00:00.000Z',
    by: 'RA',
    settled: null,
    ...more,
  };
}

const seal = { supplier: 'Ostrander Supply', description: 'Front pump seal', reorderPoint: 4, onHand: 1 };
const facts: PurchaseListFacts = {
  paper: 'letter',
  decimalMark: '.',
  shopName: 'Harrow Lane Transmission',
  isDemo: true,
  printedOn: '2026-11-25',
  lines: [
    line(1, 'KX3-FR-080'),
    // 3 × 1,020.05 = 3,060.15, with the 205.00 above 3,265.15.
    line(2, 'KX3-FR-092', { cost_cents: 102_005, suggested: 3, lineCost_cents: 306_015, unitOfIssue: 'box of 10' }),
    line(3, 'KX3-SE-01', { ...seal, cost_cents: 200, suggested: 4, lineCost_cents: 800 }),
    line(4, 'KX3-SE-02', { ...seal, cost_cents: null, suggested: 4, lineCost_cents: null }),
    line(5, 'RING-7', { supplier: '', description: 'Snap ring', cost_cents: 35, suggested: 10, lineCost_cents: 350 }),
  ],
  cores: [
    core(1),
    core(2, { dueOn: '2026-11-02', isOverdue: true, quantity: 1 }),
    core(3, { part: null, what: 'Pump' }),
  ],
};

describe('the purchase list', () => {
  test('says by supplier what to buy, what it comes to, and what goes back', async () => {
    const { pages, text, isMarked, info } = await readPdf(await paintPaper(purchaseList(facts), fonts));
    expect(pages).toHaveLength(1);
    const brightwater = /Brightwater Friction(.*)Ostrander Supply(.*)No supplier named(.*)/s.exec(text)!;
    expect(brightwater[1]).toMatch(
      /KX3-FR-080\s+Forward friction, 0\.080 in\s+12\s+20\s+50\s+each\s+4\s*\.10\s+205\s*\.00/,
    );
    expect(brightwater[1]).toMatch(/All together\s+3265\s*\.15/);
    expect(brightwater[2]).toMatch(/KX3-SE-02\s+Front pump seal\s+1\s+4\s+4\s+each\s+–\s+–/);
    expect(brightwater[2]).toMatch(/All together\s+8\s*\.00\s+without one part whose cost is not known/);
    expect(brightwater[2]).toMatch(/KX3-CV-12, Converter, 10 in\s+4 December 2026\s+2\s+75\s*\.00/);
    expect(brightwater[2]).toContain('2 November 2026, overdue');
    expect(brightwater[3]).toMatch(/RING-7.*All together\s+3\s*\.50.*Pump/s);
    // 3,265.15 + 8.00 + 3.50; 2 + 1 + 2 cores.
    expect(text).toMatch(/5 parts\s.*3276\.65, without one part whose cost is not known/);
    expect(text).toMatch(/Cores to send back\s+5/);
    expect(text).toContain('demo shop, everything invented');
    expect(isMarked).toBe(true);
    expect(info).toMatchObject({ Title: 'Purchase list, 25 November 2026', Author: 'Harrow Lane Transmission' });
    for (const role of ['H1', 'H2', 'Table', 'TR', 'TH', 'TD'])
      expect(
        pages[0]!.structure.some((each) => each.role === role),
        role,
      ).toBe(true);
    expect(fontsOf(await paintPaper(purchaseList(facts), fonts)).names).toEqual([
      'FiraSans-Regular',
      'FiraSans-SemiBold',
    ]);
  });

  test('with nothing low and no core says so', async () => {
    const { text } = await readPdf(await paintPaper(purchaseList({ ...facts, lines: [], cores: [] }), fonts));
    expect(text).toContain('Nothing is at or under its reorder point, and no core has to go back.');
  });

  test('stays inside the margins where no core has a day to be back by', async () => {
    const cores = facts.cores.map((each) => ({ ...each, dueOn: null, isOverdue: false }));
    const { pages } = await readPdf(await paintPaper(purchaseList({ ...facts, cores }), fonts));
    for (const { right } of pages[0]!.placed) expect(right).toBeLessThan(612 - 42.5);
  });

  test('long lists go on over the page, under their headings and inside the margins', async () => {
    const long = Array.from({ length: 90 }, (_, index) =>
      line(index + 1, `KX3-${'LONG'.repeat(index % 4)}-${index + 1}`, {
        description: 'Forward friction, coated, of the kind with wide grooves, for the heavy duty drum',
        unitOfIssue: 'box of ten pairs',
        cost_cents: 123_456_78,
        lineCost_cents: 617_283_900,
      }),
    );
    const { pages } = await readPdf(
      await paintPaper(purchaseList({ ...facts, paper: 'A4', isDemo: false, lines: long, decimalMark: ',' }), fonts),
    );
    expect(pages.length).toBeGreaterThan(2);
    for (const [index, page] of pages.entries()) {
      expect([page.width, page.height]).toEqual([expect.closeTo(595.28, 1), expect.closeTo(841.89, 1)]);
      expect(page.text).toContain(`page ${index + 1} of ${pages.length}`);
      expect(page.text).toContain(index === pages.length - 1 ? 'cores to send back' : 'reorder at');
      for (const { left, right } of page.placed) {
        expect(left).toBeGreaterThan(42.5);
        expect(right).toBeLessThan(595.28 - 42.5);
      }
    }
  });
});
