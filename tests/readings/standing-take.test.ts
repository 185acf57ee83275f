// Which take of a check counts, when there are several.
import { expect, test } from 'vitest';
import { standingTake } from '../../app/readings/standing-take.ts';

type Take = Parameters<typeof standingTake>[0][number] & { readonly name: string };

const take = (name: string, phase: Take['phase'], method: Take['method'], lines = 1): Take => ({
  name,
  phase,
  method,
  readings: Array.from({ length: lines }),
  notes: [],
});
const byAir = { method: 'air' } as const;

test('a reading by the way the spec means stands before a newer one by another way', () => {
  const takes = [take('air', 'mock-up', 'air'), take('feeler', 'mock-up', 'feeler')];
  expect(standingTake(takes, byAir)?.name).toBe('air');
});

test('what was found before it came apart never stands for what was built, however it was read', () => {
  const takes = [take('found', 'as found', 'air'), take('built', 'final', 'feeler')];
  expect(standingTake(takes, byAir)?.name).toBe('built');
});

test('as found stands while nothing else was read, and a take begun without a line does not count', () => {
  const takes = [take('found', 'as found', 'air'), take('begun', 'final', 'air', 0)];
  expect(standingTake(takes, byAir)?.name).toBe('found');
  expect(standingTake([take('begun', 'final', 'air', 0)], byAir)).toBeUndefined();
});
