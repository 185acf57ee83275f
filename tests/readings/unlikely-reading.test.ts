import { expect, test } from 'vitest';
import { oddReading } from '../../app/readings/unlikely-reading.ts';

// Common practice, no source: how far is too far. The figures below are a builder's own slips, 1 thou = 25 400 nm.
const thou = (amount: number) => Math.round(amount * 25_400);
const forward = {
  quantity: 'length',
  unit: 'thou',
  limits: { kind: 'range', low: thou(20), high: thou(30) },
} as const;
const words = { decimalMark: '.' } as const;

test.each([
  ['the first spot of a loose pack', 97, [], null],
  ['a nought too many at the first spot', 320, [], '320.0 thou, where the sheet allows 30.0?'],
  ['a cocked drum', 55, [20, 31], null],
  ['a figure glued to the one before it', 527, [57, 58], '527.0 thou, where the other spots read 57.0 to 58.0?'],
  ['a figure that was left out', 5, [32], '5.0 thou, where the other spots read 32.0?'],
  ['no clearance at all beside others', 0, [32], '0.0 thou, where the other spots read 32.0?'],
  ['anything where the other spots read nothing', 20, [0, 0], null],
])('%s', (_, value, others, asked) => {
  const odd = oddReading(thou(value), others.map(thou), forward, words);
  if (asked === null) expect(odd).toBeNull();
  else expect(odd).toBe(`${asked} Enter: it is so. Else type it anew.`);
});

test('a pressure is never asked about, nor a length whose sheet names no most', () => {
  expect(oddReading(9e9, [], { ...forward, limits: { kind: 'minimum', low: 1 } }, words)).toBeNull();
  expect(oddReading(9e9, [1], { ...forward, quantity: 'pressure', unit: 'psi' }, words)).toBeNull();
});
