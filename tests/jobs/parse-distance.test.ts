// What is typed for an odometer becomes the number that is meant, or one plain sentence.
import { describe, expect, test } from 'vitest';
import { parseDistance } from '../../app/jobs/parse-distance.ts';

describe('a distance as typed', () => {
  test.each([
    ['118400', 118_400],
    [' 118,400 ', 118_400],
    ['1,118,400', 1_118_400],
    ['118 400', 118_400],
    ['0', 0],
    ['42', 42],
  ])('%s', (typed, meant) => {
    expect(parseDistance(typed, '.')).toEqual({ ok: true, value: meant });
  });

  test('nothing typed is not known, which is no refusal', () => {
    expect(parseDistance('  ', '.')).toEqual({ ok: true, value: null });
  });

  test('the mark between thousands is the one the shop does not write decimals with', () => {
    expect(parseDistance('118.400', ',')).toEqual({ ok: true, value: 118_400 });
    expect(parseDistance('118.400', '.').ok).toBe(false);
    expect(parseDistance('118,400', ',').ok).toBe(false);
  });

  test.each(['118k', '-5', '12.5', '1,18,400', '118,400 400', 'about 90000', '118,4000'])('%s is refused', (typed) => {
    const refused = parseDistance(typed, '.');
    expect(refused.ok).toBe(false);
    expect(!refused.ok && refused.refusal.message).toContain(`“${typed}”`);
  });

  test('more digits than an odometer has are asked about', () => {
    expect(parseDistance('118400118400', '.')).toMatchObject({ ok: false, refusal: { code: 'too-large' } });
  });
});
