// What goes out as CSV comes back the same, and nothing in it can be taken for a formula.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { delimiterFor, guardCell, unguardCell, writeCsv } from '../../app/stock/csv-cells.ts';
import { readCsvSlowly } from './slow-csv.ts';

const nasty = fc.constantFrom(
  ...[
    '=',
    '+',
    '-',
    '@',
    '\t',
    '\r',
    '\n',
    "'",
    '"',
    ' ',
    ',',
    ';',
    '|',
    '＝',
    '＋',
    '－',
    '＠',
    '−',
    '\ufeff',
    '\u200b',
    '\u00a0',
    '1',
    'a',
  ],
);
const cell = fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: nasty, maxLength: 8 }));
const delimiter = fc.constantFrom(',', ';', '\t', '|');
const trigger = /^[=+\-@\t\r\n＝＋－＠−]/;

test('by hand: what is guarded and what is not', () => {
  // OWASP, CSV Injection: cells that begin with = + - @, tab or carriage return, and their full-width variants.
  for (const text of ['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', '＝1', ' =1', '"=1', "'=1", '\u200b=1', '−1'])
    expect(guardCell(text)).toBe(`'${text}`);
  for (const text of ['', 'KX3-FR-080', '12.50', "O'Brien", "'tis", '5 = five', 'a@b', '"', "''"])
    expect(guardCell(text)).toBe(text);
});

test('the guard comes off again, and only the guard', () => {
  expect(unguardCell("'=1")).toBe('=1');
  expect(unguardCell("''=1")).toBe("'=1");
  expect(unguardCell("'tis")).toBe("'tis");
  expect(unguardCell('=1')).toBe('=1');
  fc.assert(
    fc.property(cell, (text) => {
      expect(unguardCell(guardCell(text))).toBe(text);
    }),
  );
});

test('by hand: quotes, line ends, numbers', () => {
  expect(
    writeCsv(
      [
        ['number', 'change'],
        ['5" ring, wide', -3],
        ['=A1', 4],
      ],
      ',',
    ),
  ).toBe('\ufeffnumber,change\r\n"5"" ring, wide",-3\r\n\'=A1,4\r\n');
  expect([delimiterFor('.'), delimiterFor(',')]).toEqual([',', ';']);
});

test('any cells, whatever stands between them: another reader gives the same ones back', () => {
  const rows = fc.array(fc.array(cell, { minLength: 2, maxLength: 5 }), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(rows, delimiter, (table, between) => {
      const read = readCsvSlowly(writeCsv(table, between as ','), between);
      expect(read.map((cells) => cells.map(unguardCell))).toEqual(table);
    }),
  );
});

test('no cell of text that another reader sees begins like a formula', () => {
  fc.assert(
    fc.property(fc.array(cell, { minLength: 2, maxLength: 5 }), delimiter, (cells, between) => {
      for (const [read = []] of [readCsvSlowly(writeCsv([cells], between as ','), between)])
        for (const each of read) {
          expect(each).not.toMatch(trigger);
          expect(each.replace(/^["\s\p{Cf}]+/u, '')).not.toMatch(trigger);
        }
    }),
  );
});

test('numbers stay numbers, the negative ones too', () => {
  fc.assert(
    fc.property(fc.integer(), (number) => {
      const [cells] = readCsvSlowly(writeCsv([['change', number]], ','), ',');
      expect(Number(cells?.[1])).toBe(number);
    }),
  );
});
