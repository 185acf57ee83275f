// The book's own reader of CSV files gives back what its writer wrote, and finds by itself what stands between the columns.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { writeCsv } from '../../app/stock/csv-cells.ts';
import { mapByHeadings } from '../../app/stock/csv-columns.ts';
import { readCsvFile } from '../../main/stock/lists-file.ts';

const headings = ['number', 'description', 'bin'];
const cell = fc
  .oneof(
    fc.string({ unit: 'binary' }),
    fc.string({ unit: fc.constantFrom('=', "'", '"', ',', ';', '\t', '|', '\n', '\r', '-', ' ', 'a'), maxLength: 8 }),
  )
  .filter((text) => !text.includes('\ufffd'));
const delimiter = fc.constantFrom(',' as const, ';' as const, '\t' as const, '|' as const);

test('any cells go out and come in again, whichever delimiter, given or found', () => {
  const rows = fc.array(fc.tuple(fc.constant('A-1'), cell, fc.constant('end')), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(rows, delimiter, fc.boolean(), (table, between, isGiven) => {
      const file = readCsvFile(writeCsv([headings, ...table], between), isGiven ? between : null, 'parts');
      expect(file).toEqual({
        delimiter: between,
        headings,
        rows: table.map((cells, index) => ({ line: index + 2, cells })),
      });
    }),
  );
});

test('blank lines are left out but counted, and either line end ends a line', () => {
  const { rows } = readCsvFile('\r\nnumber,bin\n\r\nA-1,B1\r\n,\nA-2,"B\n2"\n', null, 'parts');
  expect(rows).toEqual([
    { line: 4, cells: ['A-1', 'B1'] },
    { line: 6, cells: ['A-2', 'B\n2'] },
  ]);
});

test('the delimiter under which the headings are known wins over one that makes more columns', () => {
  const { delimiter: found } = readCsvFile('number;cost, each, net, new\nA-1;4\n', null, 'parts');
  expect(found).toBe(';');
});

test('headings are known in any case, with other words for them, our own first', () => {
  expect(mapByHeadings('parts', ['PART NO.', 'Vendor', 'Unit-Cost', 'colour', 'Reorder Point'])).toEqual([
    'number',
    'supplier',
    'cost',
    null,
    'reorder point',
  ]);
  expect(mapByHeadings('parts', ['part', 'Number'])).toEqual([null, 'number']);
  expect(mapByHeadings('counts', ['item', 'lot', 'qty', 'count'])).toEqual(['number', 'batch mark', null, 'counted']);
});
