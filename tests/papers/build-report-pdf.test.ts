import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { buildReport } from '../../app/papers/build-report.ts';
import type { BuildReportFacts } from '../../app/papers/build-report-facts.ts';
import { findFonts, fontsIn } from '../../main/papers/fonts.ts';
import { paintPaper } from '../../main/papers/paint-paper.ts';
import { check, forward, forwardPack, kx3, thou } from './kx3-report.ts';
import { fontsOf, type Placed, type ReadPage, type ReadPdf, readPdf } from './read-pdf.ts';

const fonts = findFonts();
const painted = new Map<BuildReportFacts, Promise<Buffer>>();
const opened = new Map<BuildReportFacts, Promise<ReadPdf>>();

/** Each report is painted once and read once, however many tests look at it. */
function paint(facts: BuildReportFacts): Promise<Buffer> {
  const known = painted.get(facts) ?? paintPaper(buildReport(facts), fonts);
  painted.set(facts, known);
  return known;
}

function read(facts: BuildReportFacts): Promise<ReadPdf> {
  const known = opened.get(facts) ?? paint(facts).then(readPdf);
  opened.set(facts, known);
  return known;
}

const customersCopy: BuildReportFacts = { ...kx3, copy: 'customer', paper: 'A4', isDemo: false };
const inMillimetres: BuildReportFacts = { ...kx3, copy: 'customer', paper: 'A4', lengthUnit: 'mm', decimalMark: ',' };
const shops = await read(kx3);
const customers = await read(customersCopy);

/** Long words wherever somebody may type them, everything out that can be out. */
const crowded: BuildReportFacts = {
  ...kx3,
  paper: 'A4',
  shopName: 'The Very Long Named Transmission and Driveline Rebuilding Company of Harrow Lane',
  customerName: 'Bartholomew Featherstonehaugh-Cholmondeley and Daughters',
  complaint:
    'slips 2–3 when hot, then flares and bangs into third; it began after the cooler line was replaced on the road',
  warranty:
    'twelve months or twelve thousand miles, whichever comes first, from the day the unit goes into service, parts and labour, cooler excepted',
  checks: [
    check('Clearance', 'Forward', 'by air', { low: 20, high: 30, target: 25, found: 32 }, [32, 1.5, 31, 33, 4], {
      verdict: 'loose',
      by: thou(2),
      override: {
        by: 'RA',
        reason: 'no thicker steel before Friday; agreed by phone on the 25th and to be looked at again at 500 miles',
      },
    }),
    check(
      'Clearance',
      'Converter hub to pump bushing measured with the long telescoping gauge at its far end',
      'by air',
      { low: 40, high: 50, target: 45 },
      [49.5, 1.5],
      { verdict: 'too close to call' },
    ),
    check(
      'Clearance',
      'Donaudampfschifffahrtselektrizitätenhauptbetriebswerk',
      'by air',
      { low: 40, high: 50, target: 45 },
      [38, 1.5],
      { verdict: 'tight', by: thou(2) },
    ),
    check('Clearance', 'Servo apply', 'by air', { low: 40, high: 50, target: 45 }, null),
  ],
  packs: [
    forwardPack,
    { ...forwardPack, name: 'Second', calculated_nm: null, check: null, mockUps: [] },
    { ...forwardPack, name: 'Third' },
    { ...forwardPack, name: 'Fourth' },
  ],
};
const sixty: BuildReportFacts = {
  ...kx3,
  checks: Array.from({ length: 60 }, (_, index) =>
    check(`Group ${Math.floor(index / 7)}`, `Check number ${index + 1}`, '', { low: 1, high: 3 }, [2, 0.2]),
  ),
};

describe('the build report of KX3', () => {
  test('says every figure of the worked example', () => {
    const asFound = ['32.0', '38.0', '72.0', '31.0', '11.0', '5.0'];
    const asBuilt = ['26.0', '45.0', '60.0', '19.0', '1.4', '7.0', '2.5', '3.0', '2.7', '2.0', '125.0'];
    const limits = [
      '20–30',
      '40–50',
      '45–70',
      '10–24',
      '4–19',
      '0.8–2.0',
      '3–7',
      '5–10',
      '1.0–3.5',
      '2.0–4.5',
      '1.5–4.0',
      '100–150',
      '70–90',
      '110–140',
      '150–175',
      '≤ 10',
    ];
    const expanded = ['± 1.5', '± 1.7', '± 1.2', '± 0.3', '± 0.5', '± 0.2', '± 0.4', '± 3.2'];
    const heights = [
      '77.0',
      '79.5',
      '83.0',
      '80.0',
      '78.0',
      '77.5',
      '80.5',
      '250.0',
      '92.0',
      '84.0',
      '84.5',
      '92.5',
      '91.5',
      '310.0',
      '85.0',
      '70.0',
      '70.5',
      '69.5',
      '200.0',
      '86.0',
      '25.5',
    ];
    const others = [
      '82.0',
      '128.0',
      '164.0',
      '18.0',
      'Job 214',
      '26 November 2026',
      '118,400 miles',
      'RA, 23–26 November',
      'KX3, revision 3',
      '90 wide',
    ];
    for (const figure of [...asFound, ...asBuilt, ...limits, ...expanded, ...heights, ...others])
      expect(shops.text, figure).toContain(figure);
  });

  test('sums up in one sentence', () => {
    expect(shops.pages[0]!.text).toContain('All 18 measured checks are in.');
  });

  test('says what was changed, what it should read and what it read', () => {
    expect(shops.text).toMatch(/mock-up 1\s+steel 2: 76\.5 → 83\.0\s+25\.5\s+± 3\.2\s+26\.0\s+± 1\.5/);
    expect(shops.text).toMatch(/mock-up 1\s+steel 2: 91\.0 → 84\.0\s+45\.0\s+± 3\.2\s+45\.0\s+± 1\.5/);
  });

  test('says where on the drum it is loosest, and claims no tilt from one spot', () => {
    expect(shops.text).toContain('Uneven by 2 around the drum; tilt 1.0, loosest at 180° from the mark.');
    expect(shops.text).toContain('Uneven by 3 around the drum; tilt 1.6, loosest at 162° from the mark.');
    expect(shops.text).toContain('Read at one spot: how even it is around the drum is not known.');
  });

  test('signs on the first page', () => {
    expect(shops.pages[0]!.text).toContain('Signature for the build, RA');
    expect(shops.pages[0]!.text).toContain('Received');
  });
});

describe('the two copies', () => {
  const inside = [
    'dial had been read upside down',
    'friction 4 had hung on its lugs',
    'stroked twice and down',
    'price of the converter',
    'bushing changed',
    'Cautions at the bench',
  ];

  test('the shop’s copy says everything', () => {
    for (const words of inside) expect(shops.text).toContain(words);
    expect(shops.text).toContain('shop’s copy');
  });

  test('the customer’s copy leaves out what the shop says to itself', () => {
    for (const words of inside) expect(customers.text).not.toContain(words);
    expect(customers.text).toContain('customer’s copy');
    expect(customers.text).toContain('One reading was misread and read again; the shop keeps both.');
    for (const figure of ['26.0', '± 1.5', '20–30', '83.0', '32.0']) expect(customers.text).toContain(figure);
  });

  test('an override has its name and reason in the shop’s copy only', async () => {
    const reason = 'no thicker steel before Friday';
    const [own, given] = [await read(crowded), await read({ ...crowded, copy: 'customer' })];
    expect(own.text).toContain(`Stands as it is, RA: ${reason}`);
    expect(given.text).not.toContain(reason);
    expect(given.text).toContain('Stands as it is by decision of the shop');
  });
});

describe('every page', () => {
  test('says which of how many it is', () => {
    expect(shops.pages.length).toBeGreaterThan(1);
    for (const [index, page] of shops.pages.entries())
      expect(page.text).toContain(`page ${index + 1} of ${shops.pages.length}`);
  });

  test('says that the shop is a demo, and only then', () => {
    for (const page of shops.pages) expect(page.text).toContain('demo shop, everything invented');
    expect(customers.text).not.toMatch(/demo|invented/);
  });

  test.each([
    ['letter', shops, 612, 792],
    ['A4', customers, 595.28, 841.89],
  ] as const)('is as large as %s', (_, { pages }, width, height) => {
    for (const page of pages)
      expect([page.width, page.height]).toEqual([expect.closeTo(width, 1), expect.closeTo(height, 1)]);
  });

  const papers: ReadonlyArray<readonly [string, BuildReportFacts]> = [
    ['shop’s copy, letter', kx3],
    ['customer’s copy, A4, millimetres', inMillimetres],
    ['crowded', crowded],
    ['sixty checks', sixty],
    ['nothing measured', { ...kx3, checks: [], packs: [], superseded: [], notes: [], cautions: [], warranty: '' }],
  ];

  test.each(papers)('keeps its words inside the margins and off each other: %s', async (_, facts) => {
    for (const page of (await read(facts)).pages) {
      expect(outside(page)).toEqual([]);
      expect(overlapping(page.placed)).toEqual([]);
    }
  });
});

describe('a long table', () => {
  test('has its headings again on every page it goes on to', async () => {
    const { pages } = await read(sixty);
    const withRows = pages.filter((page) => /Check number \d/.test(page.text));
    expect(withRows.length).toBeGreaterThan(1);
    for (const page of withRows) {
      expect(page.text).toContain('thou = 0.001 in');
      expect(page.text).toContain('as built');
    }
    for (let number = 1; number <= 60; number += 1)
      expect(pages.some((page) => page.text.includes(`Check number ${number} `))).toBe(true);
  });

  test('leaves no group’s heading alone at the foot', async () => {
    const { pages } = await read(sixty);
    for (const page of pages) expect(page.text).not.toMatch(/Group \d\s+(Thoubook|Built)/);
  });
});

describe('the file', () => {
  test('carries Fira and nothing else, with its outlines', async () => {
    const carried = fontsOf(await paint(kx3));
    expect(carried.names).toEqual(['FiraSans-Regular', 'FiraSans-SemiBold']);
    expect(carried.embedded).toBe(2);
  });

  test('is tagged: headings, tables with their headings, figures with words for those who do not see them', () => {
    expect(shops.isMarked).toBe(true);
    const tagged = shops.pages.flatMap((page) => page.structure);
    expect(tagged.filter((each) => each.role === 'H1')).toHaveLength(1);
    for (const role of ['H2', 'P', 'Table', 'TR', 'TH', 'TD', 'Figure'])
      expect(
        tagged.some((each) => each.role === role),
        role,
      ).toBe(true);
    const figures = tagged.filter((each) => each.role === 'Figure').map((each) => each.alt);
    expect(figures).toContain(
      'Forward to scale, from the piston up: steel 77.0, friction 79.5, steel, new 83.0, friction 80.0, steel 78.0, friction 80.0, steel 77.5, friction 80.5, backing plate 250.0. Clearance 25.5.',
    );
    expect(figures.every((alt) => alt !== null && alt !== '')).toBe(true);
  });

  test('says its title, author and language', async () => {
    expect(shops.info).toMatchObject({
      Title: 'Build report, job 214, shop’s copy',
      Author: 'Harrow Lane Transmission',
      Language: 'en',
    });
    const raw = (await paint(kx3)).toString('latin1');
    expect(raw).toContain('/DisplayDocTitle true');
  });

  test('is the same bytes when it is made again', async () => {
    const again = await paintPaper(buildReport(kx3), fonts);
    expect(again.equals(await paint(kx3))).toBe(true);
  });

  test('is made from fonts given as bytes as well as from their files', async () => {
    const bytes = {
      regular: readFileSync(fonts.regular as string),
      semibold: readFileSync(fonts.semibold as string),
      mono: readFileSync(fonts.mono as string),
    };
    expect((await readPdf(await paintPaper(buildReport(kx3), bytes))).text).toBe(shops.text);
  });

  test('looks for its fonts in a folder under the names the build gives them', () => {
    expect(fontsIn('fonts').semibold).toMatch(/FiraSans_600SemiBold\.ttf$/);
  });
});

test('millimetres throughout where the shop works in them (26.0 thou = 0.6604 mm, 83.0 thou = 2.1082 mm)', async () => {
  const { text } = await read(inMillimetres);
  for (const figure of ['0,660', '2,108', '0,508–0,762', '± 0,038']) expect(text).toContain(figure);
  expect(text).not.toContain('thou');
});

test('a pack that was not read says so', async () => {
  const { text } = await read({
    ...kx3,
    packs: [{ ...forwardPack, check: { ...forward, final: null, verdict: 'not read' } }],
  });
  expect(text).toContain('* Forward by calculation. It has not been read.');
  expect(text).toContain('The clearance has not been read as built.');
});

/** Words that leave the side margins or the paper. */
function outside({ placed, width, height }: ReadPage): readonly string[] {
  const [side, slack] = [43.2, 0.6];
  return placed
    .filter(
      (each) =>
        each.left < side - slack || each.right > width - side + slack || each.bottom < 20 || each.top > height - 20,
    )
    .map((each) => each.text);
}

function overlapping(placed: readonly Placed[]): readonly string[] {
  return placed.flatMap((one, index) =>
    placed
      .slice(index + 1)
      .filter(
        (other) =>
          one.left < other.right - 0.2 &&
          other.left < one.right - 0.2 &&
          one.bottom < other.top &&
          other.bottom < one.top,
      )
      .map((other) => `${one.text} on ${other.text}`),
  );
}
