import { expect, test } from 'vitest';
import { nextTag } from '../../app/stock/next-tag.ts';

test.each([
  ['A09', 'A10'],
  ['A99', 'A100'],
  ['A', 'A1'],
  ['R2-007', 'R2-008'],
  ['B1x9', 'B1x10'],
  ['A99999999999999999999', 'A100000000000000000000'],
])('after %s comes %s', (tag, next) => expect(nextTag(tag)).toBe(next));
