// Files of parts and counts: what each row would do, all good rows at once or none, and out again.
import Sqlite from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { shopWithKx3 } from '../desk.ts';
import { blankPart, shopWithParts } from './shop-with-parts.ts';
import { opened, readCsvSlowly } from './slow-csv.ts';

type Shop = Awaited<ReturnType<typeof shopWithKx3>>;

const guess = { delimiter: null, mapping: null };
const everyRow = { show: 'all', offset: 0, limit: 1000 };
const parts = (text: string) => ({ target: 'parts', text, ...guess });
const counts = (text: string) => ({ target: 'counts', text, ...guess });
const lines = (...rows: string[]) => rows.map((row) => `${row}\r\n`).join('');

const three = lines(
  'number,description,kind,supplier,unit of issue,bin,cost,price,core charge,reorder point,reorder quantity,families',
  'KX3-FR-080,"Forward friction, 0.080 in",friction,Brightwater Friction,each,A3,4.10,9.50,,20,50,KX3',
  'KX3-SE-01,Front seal,seal,Ostrander Supply,each,B1,2.00,,,,,',
  'KX3-CV-12,Converter,other,Ostrander Supply,each,,180,320.00,75,1,1,kx3',
);

async function fates(shop: Shop, input: object) {
  const { rows } = await shop.call('stock.previewCsv', { ...input, ...everyRow });
  return rows.map(({ line, fate, says }) => [line, fate, says] as const);
}

function take(shop: Shop, input: object, reason = '') {
  return shop.call('stock.importCsv', { ...input, reason, by: shop.by });
}

async function numbersOf(shop: Shop): Promise<string[]> {
  const { parts: found } = await shop.call('stock.listParts', {
    text: '',
    kind: null,
    familyId: null,
    only: 'in use',
    offset: 0,
    limit: 500,
  });
  return found.map((part) => part.number);
}

describe('parts', () => {
  test('a dry run says what each row would do and does nothing', async () => {
    const shop = await shopWithKx3();
    expect(await fates(shop, parts(three))).toEqual([
      [2, 'add', 'new part'],
      [3, 'add', 'new part'],
      [4, 'add', 'new part'],
    ]);
    expect(await numbersOf(shop)).toEqual([]);
  });

  test('the good rows go in as typed; the same file again changes nothing', async () => {
    const shop = await shopWithKx3();
    expect((await take(shop, parts(three))).totals).toEqual({ add: 3, change: 0, same: 0, reject: 0 });
    const part = await shop.call('stock.getPart', { partId: 1 });
    expect(part).toMatchObject({
      number: 'KX3-FR-080',
      description: 'Forward friction, 0.080 in',
      kind: 'friction',
      supplier: 'Brightwater Friction',
      bin: 'A3',
      cost_cents: 410,
      price_cents: 950,
      coreCharge_cents: null,
      reorderPoint: 20,
      reorderQuantity: 50,
      families: [{ name: 'KX3' }],
    });
    expect(await shop.call('stock.getPart', { partId: 3 })).toMatchObject({
      cost_cents: 18_000,
      coreCharge_cents: 7500,
    });
    expect((await fates(shop, parts(three))).map(([, fate]) => fate)).toEqual(['same', 'same', 'same']);
  });

  test('a price list changes what it names and leaves the rest', async () => {
    const shop = await shopWithKx3();
    await take(shop, parts(three));
    const prices = lines('Part No.;Unit cost', 'kx3-fr-080;4.35', 'KX3-SE-01;2.00', 'KX3-SE-01;2.10', 'LM2-01;1.00');
    expect(await fates(shop, parts(prices))).toEqual([
      [2, 'change', 'cost 4.10 → 4.35'],
      [3, 'same', 'as it is'],
      [4, 'reject', 'stands in line 3 already'],
      [5, 'reject', 'is a new part: it needs a column for description and kind'],
    ]);
    const { totals, rejects } = await take(shop, parts(prices));
    expect(totals).toEqual({ add: 0, change: 1, same: 1, reject: 2 });
    expect(await shop.call('stock.getPart', { partId: 1 })).toMatchObject({
      number: 'KX3-FR-080',
      cost_cents: 435,
      bin: 'A3',
      families: [{ name: 'KX3' }],
    });
    expect(opened(rejects!, ';').rows).toEqual([
      ['Part No.', 'Unit cost', 'why'],
      ['KX3-SE-01', '2.10', 'stands in line 3 already'],
      ['LM2-01', '1.00', 'is a new part: it needs a column for description and kind'],
    ]);
  });

  test('each row that cannot be taken says why, and the others go in', async () => {
    const shop = await shopWithKx3();
    const text = lines(
      'number,description,kind,cost,reorder point,reorder quantity,families',
      ',no number,seal,,,,',
      'A-1,,seal,,,,',
      'A-2,odd,gasket,,,,',
      'A-3,money,seal,"4,10",,,',
      'A-4,money,seal,-4.10,,,',
      'A-5,count,seal,,1.5,,',
      'A-6,count,seal,,3,0,',
      'A-7,count,seal,,,5,',
      'A-8,family,seal,,,,KX3; LM2',
      'A-9,a comma, not quoted,seal,,,,KX3',
      `A-10,${'x'.repeat(201)},seal,,,,`,
      'A-11,good,Seal,1,2.0,3,KX3',
    );
    expect((await fates(shop, parts(text))).map(([, fate, says]) => `${fate}: ${says}`)).toEqual([
      'reject: has no number',
      'reject: has no description',
      'reject: “gasket” is not a kind: steel, friction, pressure plate, snap ring, seal, bushing, washer, valve-body part, fluid, kit, other',
      'reject: cost “4,10” is not an amount of money like 12.50',
      'reject: cost “-4.10” is not an amount of money like 12.50',
      'reject: reorder point “1.5” is not a whole number from 0 to 1,000,000',
      'reject: reorder quantity “0” is not a whole number from 1 to 1,000,000',
      'reject: has a reorder quantity but no reorder point',
      'reject: there is no family “LM2”',
      'reject: has 8 cells where the headings are 7',
      'reject: description is longer than 200 characters',
      'add: new part',
    ]);
    const { rejects } = await take(shop, parts(text));
    expect(await numbersOf(shop)).toEqual(['A-11']);
    const { rows, text: file } = opened(rejects!);
    expect(rows).toHaveLength(12);
    const why = 'cost “-4.10” is not an amount of money like 12.50';
    expect(rows[5]).toEqual(['A-4', 'money', 'seal', "'-4.10", '', '', '', '', why]);
    // Mended, it goes in as it is.
    const mended = file.replace('gasket', 'seal');
    expect((await fates(shop, parts(mended))).find(([line]) => line === 4)).toEqual([4, 'add', 'new part']);
  });

  test('a decimal comma is the shop’s, not the file’s', async () => {
    const shop = await shopWithKx3();
    await shop.call('shop.changeSettings', { decimalMark: ',' });
    await take(shop, parts(lines('number;description;kind;cost', 'A-1;ring;seal;4,10', 'A-2;ring;seal;4.10')));
    expect(await numbersOf(shop)).toEqual(['A-1']);
    expect(await shop.call('stock.getPart', { partId: 1 })).toMatchObject({ cost_cents: 410 });
  });

  test('a late row that the file of the shop does not take leaves nothing of the earlier ones', async () => {
    const shop = await shopWithKx3();
    const { file } = shop.desk.shop();
    const raw = new Sqlite(file);
    raw.exec(`create trigger late before insert on parts when new.number = 'KX3-CV-12'
      begin select raise(abort, 'late'); end`);
    raw.close();
    await shop.refusal('stock.importCsv', { ...parts(three), reason: '', by: shop.by });
    expect(await numbersOf(shop)).toEqual([]);
    const after = new Sqlite(file);
    expect(after.prepare('select count(*) from parts').pluck().get()).toBe(0);
    expect(after.prepare('select count(*) from part_families').pluck().get()).toBe(0);
    after.exec('drop trigger late');
    after.close();
    expect((await take(shop, parts(three))).totals.add).toBe(3);
  });
});

describe('a file that cannot be read', () => {
  const refused = async (text: string, more: object = {}) => {
    const shop = await shopWithKx3();
    const failure = await shop.refusal('stock.previewCsv', { ...parts(text), ...more, ...everyRow });
    return failure.message;
  };

  test.each([
    ['', 'The file is empty.'],
    ['\ufeff\r\n  \r\n', 'The file is empty.'],
    ['number,description\r\n', 'The file has headings, but no row under them.'],
    ['number description\r\nA-1 ring\r\n', 'Only one column was found: choose what separates the columns.'],
    [
      'number,description\r\nA-1,"ring\r\n',
      'A quotation mark in line 2 does not close where the cell ends: correct it.',
    ],
    [
      'number,description\r\nA-1,D\ufffdsseldorf ring\r\n',
      'Line 2 has letters that cannot be read: save the file as CSV in UTF-8 and choose it again.',
    ],
  ])('%j', async (text, sentence) => {
    expect(await refused(text)).toBe(sentence);
  });

  test('a delimiter that was given and is not there', async () => {
    expect(await refused(three, { delimiter: ';' })).toBe(
      'Only one column was found with semicolons between: choose what separates the columns.',
    );
  });

  test('a hundred thousand rows are counted, not taken', async () => {
    const rows = Array.from({ length: 100_000 }, (_, index) => `A-${index},ring,seal`);
    expect(await refused(lines('number,description,kind', ...rows))).toBe(
      'The file has 100,000 rows; 20,000 are taken at a time: split it.',
    );
  });

  test('columns chosen by hand must be columns of the file and fields there are', async () => {
    const text = lines('a,b,c', 'A-1,ring,seal');
    expect(await refused(text, { mapping: ['number', 'description'] })).toBe(
      'The file has 3 columns, but 2 were chosen: choose again.',
    );
    expect(await refused(text, { mapping: ['number', 'colour', null] })).toBe(
      'A column cannot be “colour”: choose one of the list.',
    );
    expect(await refused(text, { mapping: ['number', 'bin', 'bin'] })).toBe(
      'Two columns are chosen for “bin”: leave one of them out.',
    );
  });
});

describe('what a file may look like', () => {
  test.each([
    ['a byte order mark', `\ufeff${three}`],
    ['LF', three.replaceAll('\r\n', '\n')],
    ['CR', three.replaceAll('\r\n', '\r')],
    ['blank lines', three.replaceAll('\r\n', '\r\n\r\n  \r\n')],
    ['all quoted', lines(...readCsvSlowly(three, ',').map((cells) => cells.map((cell) => `"${cell}"`).join(',')))],
    ['no line end at the end', three.trimEnd()],
    ['headings in capitals', three.replace(/^[^\r]*/, (head) => head.toUpperCase())],
  ])('%s', async (_, text) => {
    const shop = await shopWithKx3();
    const { totals, delimiter } = await shop.call('stock.previewCsv', { ...parts(text), ...everyRow });
    expect([totals, delimiter]).toEqual([{ add: 3, change: 0, same: 0, reject: 0 }, ',']);
  });

  test('columns without headings it knows are told, and can be chosen', async () => {
    const shop = await shopWithKx3();
    const text = lines('Teil|Was|Art', 'A-1|ring|seal');
    const preview = await shop.call('stock.previewCsv', { ...parts(text), ...everyRow });
    expect(preview).toMatchObject({
      delimiter: '|',
      headings: ['Teil', 'Was', 'Art'],
      mapping: [null, null, null],
      missing: ['number'],
      totals: { add: 0, reject: 1 },
      rows: [{ line: 2, fate: 'reject', says: 'not looked at: choose which column is the number' }],
    });
    const chosen = { ...parts(text), mapping: ['number', 'description', 'kind'] };
    expect(await fates(shop, chosen)).toEqual([[2, 'add', 'new part']]);
    expect(await shop.refusal('stock.importCsv', { ...parts(text), reason: '', by: shop.by })).toMatchObject({
      message: 'Choose which column is the number first.',
    });
  });

  test('a window of the rows, of one fate', async () => {
    const shop = await shopWithKx3();
    const rows = Array.from({ length: 30 }, (_, index) => `A-${index},ring,${index % 3 === 0 ? 'gasket' : 'seal'}`);
    const input = parts(lines('number,description,kind', ...rows));
    const preview = await shop.call('stock.previewCsv', { ...input, show: 'reject', offset: 8, limit: 5 });
    expect(preview.rows.map((row) => row.cells[0])).toEqual(['A-24', 'A-27']);
    expect(preview.totals).toEqual({ add: 20, change: 0, same: 0, reject: 10 });
  });
});

describe('counts', () => {
  const counted = async () => {
    const shop = await shopWithParts();
    const first = await shop.receive(shop.frictionId, 50, '4471-K');
    const second = await shop.receive(shop.frictionId, 20, '', '2026-11-05', 'invoice 88');
    const seals = await shop.receive(shop.sealId, 6, 'S1');
    return { ...shop, first, second, seals };
  };
  const onHand = async (shop: Shop, partId: number) => {
    const { batches } = await shop.call('stock.getPart', { partId });
    return batches.map((batch) => batch.onHand);
  };

  test('a batch is told by its mark, its document, or by being the only one', async () => {
    const shop = await counted();
    const text = lines(
      'number,batch mark,document,counted',
      'KX3-FR-080,4471-k,,48',
      'KX3-FR-080,,Invoice 88,20',
      'kx3-sl-11,,,7',
    );
    expect(await fates(shop, counts(text))).toEqual([
      [2, 'change', 'on hand 50 → 48'],
      [3, 'same', 'on hand 20, as counted'],
      [4, 'change', 'on hand 6 → 7'],
    ]);
    const { totals, rejects } = await take(shop, counts(text), 'November count');
    expect([totals, rejects]).toEqual([{ add: 0, change: 2, same: 1, reject: 0 }, null]);
    expect(await onHand(shop, shop.frictionId)).toEqual([20, 48]);
    const { movements } = await shop.call('stock.getPart', { partId: shop.sealId });
    expect(movements[0]).toMatchObject({ kind: 'count', change: 1, reason: 'November count', by: 'RA' });
  });

  test('what cannot be counted says why', async () => {
    const shop = await counted();
    const text = lines(
      'Part,Batch,Qty',
      'KX3-FR-080,,3',
      'KX3-FR-080,9999,3',
      'KX3-SL-11,,two',
      'KX3-SL-11,,-1',
      'KX3-SL-11,,',
      'KX3-SL-11,,6',
      'KX3-SL-11,S1,5',
      'LM2-01,,1',
      'KX3-KIT-M,,1',
    );
    expect((await fates(shop, counts(text))).map(([, fate, says]) => `${fate}: ${says}`)).toEqual([
      'reject: KX3-FR-080 lies in 2 batches: say which by its batch mark or document',
      'reject: KX3-FR-080 has no batch 9999',
      'reject: counted “two” is not a whole number',
      'reject: counted “-1” is not a whole number',
      'same: not counted',
      'same: on hand 6, as counted',
      'reject: the same batch stands in line 7 already',
      'reject: there is no part LM2-01',
      'reject: KX3-KIT-M never came in: receive it first',
    ]);
  });

  test('a count wants a reason', async () => {
    const shop = await counted();
    const input = { ...counts(lines('number,counted', 'KX3-SL-11,5')), reason: ' ', by: shop.by };
    expect((await shop.refusal('stock.importCsv', input)).message).toBe(
      'Say why it was counted: it stands in the ledger.',
    );
  });

  test('the batches that went out are a sheet to count with', async () => {
    const shop = await counted();
    const sheet = opened(await shop.call('stock.exportCsv', { what: 'batches' }));
    const filled = sheet.text.replace(/,50,\r/, ',50,49\r');
    expect(await fates(shop, counts(filled))).toEqual([
      [2, 'change', 'on hand 50 → 49'],
      [3, 'same', 'not counted'],
      [4, 'same', 'not counted'],
    ]);
  });
});

describe('out as a file', () => {
  test('parts go out and come in again into another shop as they were, whatever they are called', async () => {
    const shop = await shopWithKx3();
    await take(shop, parts(three));
    const names = ['=1+1', "'=1", '-5 seal', '@x', 'a "quoted" one', 'two, three', '; four', '“±”', "'tis", '+', '＝x'];
    for (const [index, name] of names.entries()) {
      await shop.call('stock.savePart', {
        ...blankPart,
        number: `N-${index}`,
        description: name,
        supplier: name,
        kind: 'seal',
        by: shop.by,
      });
    }
    const { text, rows } = opened(await shop.call('stock.exportCsv', { what: 'parts' }));
    expect(text.startsWith('\ufeffnumber,description,kind,')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
    for (const cells of rows) for (const cell of cells) expect(cell).not.toMatch(/^[=+\-@\t\r＝＋－＠]/);
    const other = await shopWithKx3();
    expect((await take(other, parts(text))).totals).toEqual({ add: 14, change: 0, same: 0, reject: 0 });
    expect(opened(await other.call('stock.exportCsv', { what: 'parts' })).rows).toEqual(rows);
    expect((await take(shop, parts(text))).totals).toEqual({ add: 0, change: 0, same: 14, reject: 0 });
  });

  test('the ledger goes out with its signs as numbers', async () => {
    const shop = await shopWithParts();
    const batchId = await shop.receive(shop.frictionId, 5, '=4471');
    const { jobId, by, frictionId: partId } = shop;
    await shop.call('stock.pullForJob', { jobId, partId, batchId: null, quantity: 2, by });
    await shop.call('stock.scrapFromBatch', { batchId, quantity: 1, reason: '-dropped', by });
    const { rows } = opened(await shop.call('stock.exportCsv', { what: 'movements' }));
    expect(rows.map((cells) => cells.slice(1))).toEqual([
      ['number', 'batch mark', 'document', 'what', 'change', 'job', 'reason', 'by'],
      ['KX3-FR-080', "'=4471", '', 'receive', '5', '', '', 'RA'],
      ['KX3-FR-080', "'=4471", '', 'pull', '-2', '1', '', 'RA'],
      ['KX3-FR-080', "'=4471", '', 'scrap', '-1', '', "'-dropped", 'RA'],
    ]);
  });

  test('a shop with a decimal comma gets semicolons between', async () => {
    const shop = await shopWithParts();
    await shop.call('shop.changeSettings', { decimalMark: ',' });
    const { rows } = opened(await shop.call('stock.exportCsv', { what: 'reorder' }), ';');
    expect(rows).toEqual([
      ['supplier', 'number', 'description', 'bin', 'on hand', 'reorder point', 'buy', 'unit', 'cost each', 'line'],
      // None on hand, to stand above 10 by sixes: 12. 12 × 4.10 = 49.20.
      [
        'Brightwater Friction',
        'KX3-FR-080',
        'Forward friction, 80 thou',
        'C4',
        '0',
        '10',
        '12',
        'each',
        '4,10',
        '49,20',
      ],
    ]);
  });

  test('plates, cans and cores', async () => {
    const shop = await shopWithKx3();
    const plate = { kind: 'steel', outline: 'KX3 forward', by: shop.by };
    await shop.call('stock.addPiece', { ...plate, tag: 'A7', typed: '77.5' });
    await shop.call('stock.addCan', { ...plate, typed: '77', count: 12 });
    const core = { direction: 'due to us', what: 'torque converter', quantity: 1, charge: '75', jobId: null };
    await shop.call('stock.openCore', { ...core, dueOn: '2026-12-01', by: shop.by });
    const out = async (what: string) => opened(await shop.call('stock.exportCsv', { what })).rows;
    expect((await out('plates'))[1]?.slice(0, 5)).toEqual(['KX3 forward', 'steel', '77.5', 'A7', 'measured']);
    expect(await out('cans')).toEqual([
      ['outline', 'kind', 'height, thou', 'count'],
      ['KX3 forward', 'steel', '77.0', '12'],
    ]);
    expect((await out('cores'))[1]?.slice(0, 5)).toEqual(['due to us', 'torque converter', '1', '75.00', '2026-12-01']);
  });
});
