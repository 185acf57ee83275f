// The code of a label says what it hangs on, and reads back as that.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { labelCode, readLabelCode } from '../../app/stock/label-code.ts';

test('a code says the kind by a letter and the rest in digits', () => {
  expect(labelCode({ kind: 'part', partId: 12 })).toBe('THOU-P12');
  expect(labelCode({ kind: 'batch', batchId: 12 })).toBe('THOU-B12');
  expect(labelCode({ kind: 'can', canId: 3 })).toBe('THOU-C3');
  expect(labelCode({ kind: 'plate', pieceId: 45 })).toBe('THOU-S45');
  expect(labelCode({ kind: 'job', jobId: 214 })).toBe('THOU-J214');
  expect(labelCode({ kind: 'gauge', gaugeId: 3 })).toBe('THOU-G3');
});

test('a scanner set to small letters, or one that types a blank, is understood', () => {
  expect(readLabelCode(' thou-j214\r')).toEqual({ kind: 'job', jobId: 214 });
});

test('what is not a code of this book is none', () => {
  for (const text of [
    '',
    'THOU-',
    'THOU-X12',
    'THOU-P',
    'THOU-P0',
    'THOU-P012',
    'THOU-P1.5',
    'KX3-FR-080',
    'THOU-P1 2',
  ])
    expect(readLabelCode(text)).toBeNull();
});

test('every code reads back as what it was made for, in alphanumeric characters alone', () => {
  const id = fc.integer({ min: 1, max: 2 ** 31 });
  const labelled = fc.oneof(
    fc.record({ kind: fc.constant('part' as const), partId: id }),
    fc.record({ kind: fc.constant('batch' as const), batchId: id }),
    fc.record({ kind: fc.constant('can' as const), canId: id }),
    fc.record({ kind: fc.constant('plate' as const), pieceId: id }),
    fc.record({ kind: fc.constant('job' as const), jobId: id }),
    fc.record({ kind: fc.constant('gauge' as const), gaugeId: id }),
  );
  fc.assert(
    fc.property(labelled, (of) => {
      expect(readLabelCode(labelCode(of))).toEqual(of);
      expect(labelCode(of)).toMatch(/^[0-9A-Z $%*+\-./:]+$/);
    }),
  );
});
