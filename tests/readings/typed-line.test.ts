import { describe, expect, test } from 'vitest';
import { type LineField, parseLine, type TypedReading, valueOfReading } from '../../app/readings/typed-line.ts';

const byAir: LineField = {
  method: 'air',
  quantity: 'length',
  unit: 'thou',
  decimalMark: '.',
  dialFaceCounts: 100,
  isZeroedAgain: false,
  meaning: null,
};

const thou = (amount: number) => amount / 25_400;
const read = (typed: string, field: LineField = byAir): TypedReading => {
  const parsed = parseLine(typed, field);
  if (!parsed.ok) throw new Error(`${typed}: ${parsed.refusal.message}`);
  return parsed.value;
};
const total = (typed: string, field: LineField = byAir) => thou(valueOfReading(read(typed, field)) ?? Number.NaN);
const asked = (typed: string, field: LineField = byAir) => {
  const parsed = parseLine(typed, field);
  return parsed.ok ? undefined : parsed.refusal.code;
};

describe('a line by air', () => {
  // Common practice, no source: push-down and air travel add; 4 and 23 are 27, 5 and 27 are 32.
  test.each([
    ['4 23', 27],
    ['5 27', 32],
    ['4+23', 27],
    ['-4 23', 27],
    ['-4+23', 27],
    ['96 23', 27],
    ['4-5 27', 31.5],
    ['4t 23t', 27],
    ['.004 .023 in', 27],
    ['0.1016 0.5842 mm', 27],
  ])('%s is a clearance of %d thou', (typed, clearance) => {
    expect(total(typed)).toBeCloseTo(clearance, 9);
  });

  test('a wavering needle keeps how far it wavered', () => {
    const reading = read('4-5 27');
    expect(reading.method === 'air' && thou(reading.waver)).toBeCloseTo(0.5, 9);
  });

  test('zeroed again after the push, air travel already holds the push-down: 38, not 43', () => {
    expect(total('5 38', { ...byAir, isZeroedAgain: true })).toBe(38);
  });

  test('a lone number is asked about; air only is no clearance, the whole one is', () => {
    expect(asked('27')).toBe('one-number');
    expect(valueOfReading(read('27', { ...byAir, meaning: 'air only' }))).toBeNull();
    expect(total('27', { ...byAir, meaning: 'total' })).toBe(27);
  });

  test.each([
    ['.5 20', 'which-unit'],
    ['45 in', 'implausible'],
    ['4 x', 'not-a-number'],
    ['4 1.2.3', 'two-decimal-marks'],
    ['4,5 23', 'decimal-mark'],
    ['4 23 5', 'too-many-numbers'],
    ['4 -23', 'negative'],
    ['5-4 27', 'waver'],
    ['', 'empty'],
  ])('“%s” is asked about, not guessed', (typed, code) => {
    expect(asked(typed)).toBe(code);
  });
});

describe('leaves', () => {
  const byFeeler: LineField = { ...byAir, method: 'feeler' };

  test('the gap lies between the leaf that goes and the one that stops', () => {
    expect(total('41 42', byFeeler)).toBe(41.5);
    expect(read('30 31 tight', byFeeler)).toMatchObject({ feel: 'tight' });
    expect(read('goes 30 stops 31', byFeeler)).toMatchObject({ goes: 762_000, stops: 787_400 });
  });

  test.each([
    ['31 30', 'leaves'],
    ['30 30', 'leaves'],
    ['tight 25', 'two-leaves'],
    ['30', 'two-leaves'],
  ])('“%s” is refused', (typed, code) => {
    expect(asked(typed, byFeeler)).toBe(code);
  });
});

describe('the other ways of reading', () => {
  test('bore minus shaft: 1.5025 and 1.5000 in are 2.5 thou, typed with a blank or a minus', () => {
    const direct: LineField = { ...byAir, method: 'direct' };
    expect(total('1.5025 1.5000 in', direct)).toBeCloseTo(2.5, 9);
    expect(total('1.5025-1.5000 in', direct)).toBeCloseTo(2.5, 9);
    expect(total('1502.5 1500', direct)).toBeCloseTo(2.5, 9);
    // 1.5025 in is 38 163 500 nm, 1.5000 in 38 100 000.
    for (const typed of ['1.5025 1.5000', '1.5025-1.5000', '1502.5 1500', '1.5025 1.5000 in']) {
      expect(read(typed, direct)).toMatchObject({ between: { first: 38_163_500, second: 38_100_000 } });
    }
    expect(total('82.5 80', direct)).toBeCloseTo(2.5, 9);
    expect(read('2.5', direct)).not.toHaveProperty('between');
    expect(asked('1.5 1.6 in', direct)).toBe('negative');
  });

  test('a dial pushed and pulled from 15 to 46 travelled 31', () => {
    expect(total('15 46', { ...byAir, method: 'dial' })).toBe(31);
    expect(total('31', { ...byAir, method: 'dial' })).toBe(31);
  });

  test('40 psi that fell to 37 dropped 3, and a pressure that rose is asked about', () => {
    const drop: LineField = { ...byAir, method: 'drop', quantity: 'pressure', unit: 'psi' };
    const fell = read('40 37', drop);
    // 3 psi by NIST SP 811: 3 × 6 894.757 Pa.
    expect(valueOfReading(fell)).toBeCloseTo(20_684, -1);
    expect(asked('37 40', drop)).toBe('negative');
  });

  test('a count is whole', () => {
    const count: LineField = { ...byAir, method: 'count', quantity: 'count', unit: '' };
    expect(valueOfReading(read('4', count))).toBe(4);
    expect(asked('4.5', count)).toBe('too-fine');
  });
});
