// Labels of a shop: sizes as typed, what stands on each, and codes that a decoder reads back to the thing itself.
import { describe, expect, test } from 'vitest';
import { readLabelCode } from '../../app/stock/label-code.ts';
import { readCodes } from '../papers/read-codes.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { shopWithParts } from './shop-with-parts.ts';

async function shopWithThings() {
  const shop = await shopWithParts();
  const steel = { kind: 'steel', outline: 'KX3 forward', by: shop.by };
  const marked = await shop.receive(shop.frictionId, 5, '4471-K');
  const unmarked = await shop.receive(shop.sealId, 5, '', '2026-11-05', 'invoice 88');
  const { canId } = await shop.call('stock.addCan', { ...steel, typed: '77.5', count: 12 });
  const tagged = await shop.call('stock.addPiece', { ...steel, tag: 'A7', typed: '83' });
  const bare = await shop.call('stock.addPiece', { ...steel, tag: '', typed: '91' });
  const things = [
    { kind: 'part', partId: shop.frictionId },
    { kind: 'batch', batchId: marked },
    { kind: 'batch', batchId: unmarked },
    { kind: 'can', canId },
    { kind: 'plate', pieceId: tagged.pieceId },
    { kind: 'plate', pieceId: bare.pieceId },
    { kind: 'job', jobId: shop.jobId },
  ];
  return { ...shop, things };
}

type Shop = Awaited<ReturnType<typeof shopWithThings>>;

async function print(shop: Shop, labelSizeId: number, copies = 1): Promise<Buffer> {
  const labels = shop.things.map((of) => ({ of, copies }));
  const file = await shop.call('stock.printLabels', { labelSizeId, labels });
  expect(file.mediaType).toBe('application/pdf');
  return Buffer.from(file.base64, 'base64');
}

describe('printing', () => {
  test('every label says its thing, and its code leads back to it, in each size there is from the start', async () => {
    const shop = await shopWithThings();
    const sizes = await shop.call('stock.listLabelSizes', {});
    expect(sizes.map(({ width_um, height_um }) => [width_um, height_um])).toEqual([
      [50_000, 25_000],
      [40_000, 15_000],
      [80_000, 50_000],
    ]);
    let pdf: Buffer = Buffer.of();
    for (const { labelSizeId } of sizes) {
      pdf = await print(shop, labelSizeId);
      const codes = await readCodes(pdf);
      expect(codes.map((code) => readLabelCode(code ?? ''))).toEqual(shop.things);
    }
    const { pages } = await readPdf(pdf);
    expect(pages.map(({ placed }) => placed.map(({ text }) => text))).toEqual([
      ['KX3-FR-080', 'bin C4', 'Forward friction, 80 thou', 'Brightwater Friction', `THOU-P${shop.frictionId}`],
      [
        'KX3-FR-080',
        'batch 4471-K',
        '2 November 2026',
        'bin C4',
        'Forward friction, 80 thou',
        expect.stringMatching(/^THOU-B\d+$/),
      ],
      ['KX3-SL-11', 'invoice 88', '5 November 2026', 'Piston seal, inner', expect.stringMatching(/^THOU-B\d+$/)],
      ['77.5', 'thou · steel', 'KX3 forward', expect.stringMatching(/^THOU-C\d+$/)],
      ['A7', '83.0 thou · steel', 'KX3 forward', expect.stringMatching(/^THOU-S\d+$/)],
      ['91.0', 'thou · steel', 'KX3 forward', expect.stringMatching(/^THOU-S\d+$/)],
      ['Job 1', 'KX3 KX3-19-2208', 'Tam Okoro', `THOU-J${shop.jobId}`],
    ]);
  });

  test('copies lie one after the other', async () => {
    const shop = await shopWithThings();
    const { pages } = await readPdf(await print(shop, 1, 3));
    expect(pages).toHaveLength(21);
    expect(new Set(pages.slice(0, 3).map((page) => page.text)).size).toBe(1);
  });

  test('a thing or a size that is not there, and more labels than a roll holds, are refused', async () => {
    const shop = await shopWithThings();
    const refusal = async (labelSizeId: number, of: object, copies = 1) =>
      (await shop.refusal('stock.printLabels', { labelSizeId, labels: [{ of, copies }] })).message;
    expect(await refusal(1, { kind: 'can', canId: 99 })).toBe('There is no such can.');
    expect(await refusal(99, shop.things[0]!)).toBe('There is no such label size.');
    const many = Array.from({ length: 6 }, () => ({ of: shop.things[0], copies: 200 }));
    expect((await shop.refusal('stock.printLabels', { labelSizeId: 1, labels: many })).message).toBe(
      'That is 1,200 labels: print 1,000 at a time at most.',
    );
  });
});

describe('sizes', () => {
  const sizeNamed = async (shop: Shop, name: string) =>
    (await shop.call('stock.listLabelSizes', {})).find((size) => size.name === name);

  test('are kept as typed, in millimetres or with a unit, and can be changed', async () => {
    const shop = await shopWithThings();
    const typed = { name: 'Drawer', by: shop.by };
    const { labelSizeId } = await shop.call('stock.saveLabelSize', {
      ...typed,
      labelSizeId: null,
      width: '2 in',
      height: '12.5',
    });
    // 2 in = 50.8 mm.
    expect(await sizeNamed(shop, 'Drawer')).toEqual({
      labelSizeId,
      name: 'Drawer',
      width_um: 50_800,
      height_um: 12_500,
    });
    await shop.call('stock.saveLabelSize', { ...typed, labelSizeId, width: '10', height: '10' });
    const pdf = await print(shop, labelSizeId);
    expect((await readCodes(pdf)).map((code) => readLabelCode(code ?? ''))).toEqual(shop.things);
  });

  test('too small for a code, too large, or called like another, they are refused', async () => {
    const shop = await shopWithThings();
    const refusal = (typed: object) =>
      shop.refusal('stock.saveLabelSize', {
        labelSizeId: null,
        name: 'Dot',
        width: '20',
        height: '20',
        by: shop.by,
        ...typed,
      });
    expect(await refusal({ height: '9.5' })).toMatchObject({
      message: '“9.5” is too small for a code that a scanner reads: 10 mm is the least.',
      field: 'height',
    });
    expect(await refusal({ width: '12 in' })).toMatchObject({
      message: '“12 in” is too large for a label: 300 mm is the most.',
      field: 'width',
    });
    expect(await refusal({ name: 'Bin, 50 × 25 mm' })).toMatchObject({
      message: 'There is already a label size “Bin, 50 × 25 mm”: change that one.',
    });
    expect(await refusal({ labelSizeId: 99 })).toMatchObject({ message: 'There is no such label size.' });
    expect(await shop.call('stock.listLabelSizes', {})).toHaveLength(3);
  });
});
