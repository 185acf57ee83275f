// How large a label may be, as typed.
import { expect, test } from 'vitest';
import { parseLabelSide } from '../../app/stock/label-size.ts';

test('a bare number is millimetres, inches are said', () => {
  expect(parseLabelSide('50', 'width', '.')).toEqual({ ok: true, value: 50_000 });
  expect(parseLabelSide('62,5', 'width', ',')).toEqual({ ok: true, value: 62_500 });
  // 1 in = 25.4 mm; 2 1/8 in = 53.975 mm.
  expect(parseLabelSide('1 in', 'height', '.')).toEqual({ ok: true, value: 25_400 });
  expect(parseLabelSide('2 1/8', 'width', '.')).toEqual({ ok: true, value: 53_975 });
});

test('10 mm and 300 mm are the ends', () => {
  expect(parseLabelSide('10', 'width', '.').ok).toBe(true);
  expect(parseLabelSide('300', 'width', '.').ok).toBe(true);
  expect(parseLabelSide('9.99', 'width', '.')).toEqual({
    ok: false,
    refusal: {
      code: 'label-too-small',
      message: '“9.99” is too small for a code that a scanner reads: 10 mm is the least.',
    },
  });
  expect(parseLabelSide('-20', 'width', '.').ok).toBe(false);
  expect(parseLabelSide('301', 'width', '.')).toMatchObject({
    refusal: { message: '“301” is too large for a label: 300 mm is the most.' },
  });
  expect(parseLabelSide('wide', 'width', '.')).toMatchObject({
    refusal: { message: '“wide” is not the width of a label: type it in figures.' },
  });
});
