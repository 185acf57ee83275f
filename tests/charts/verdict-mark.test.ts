import { describe, expect, test } from 'vitest';
import { type Verdict, verdictMark, verdictWords } from '../../app/charts/verdict-mark.ts';

const kinds = (verdict: Verdict) => verdictMark(verdict, 16).shapes.map((shape) => shape.kind);

describe('the shape of a verdict', () => {
  test('tells in, out, too close and not read apart without colour', () => {
    expect(kinds('in')).toEqual(['circle']);
    expect(kinds('tight')).toEqual(['path', 'path']);
    expect(kinds('not read')).toEqual(['line']);
    const [half, whole] = verdictMark('too close to call', 16).shapes;
    expect(half).toMatchObject({ kind: 'path', fill: 'close', outline: 'M8 1L8 15L1 8Z' });
    expect(whole).toMatchObject({ kind: 'path', stroke: 'close', outline: 'M8 1L15 8L8 15L1 8Z' });
  });

  test('is one crossed square for tight, loose, low and high', () => {
    for (const verdict of ['loose', 'low', 'high'] as const) {
      expect(verdictMark(verdict, 16).shapes).toEqual(verdictMark('tight', 16).shapes);
    }
  });
});

test('the words of a verdict', () => {
  expect(verdictWords('in', null)).toBe('in');
  expect(verdictWords('loose', '2.0')).toBe('loose by 2.0');
  expect(verdictWords('tight', '2.0')).toBe('tight by 2.0');
  expect(verdictWords('too close to call', '0.2')).toBe('too close to call');
  expect(verdictWords('not read', null)).toBe('not read');
});
