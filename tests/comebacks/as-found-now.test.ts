// A unit that came back beside what it was built to, with numbers added up by hand.
import { expect, test } from 'vitest';
import { asFoundNow, foundParts, wearOfPacks } from '../../app/comebacks/as-found-now.ts';
import { build, clearance, foundPart, recorded, thou, words } from './hand-made.ts';

const built = build(1, {
  checks: [
    clearance('Forward clearance', 26),
    clearance('Direct clearance', 45),
    recorded('Stator bushing', { amount: 2.5 * thou, expanded: null }),
  ],
});

const found = (name: string, amount: number, expanded: number | null = 1.5) => ({
  jobId: 2,
  takeId: 7,
  checkId: 1,
  check: recorded(name, null).check,
  amount: amount * thou,
  expanded: expanded === null ? null : expanded * thou,
});

test('fifteen more is more than two readings of ± 1.5 can explain, two more is not', () => {
  const read = [found('Forward clearance', 41), found('Direct clearance', 43)];
  const [forward, direct] = asFoundNow(built, read, words);
  // √(1.5² + 1.5²) = 2.1213…
  expect(forward!.expanded! / thou).toBeCloseTo(2.12132, 5);
  expect(forward).toMatchObject({ difference: 15 * thou, says: 'more', packName: 'Forward' });
  expect(forward?.sentence).toBe('15.0 more than built: more than the readings can explain.');
  expect(direct?.sentence).toBe('2.0 less than built: no more than the readings can explain.');
});

test('what was not read then, or not known how surely, says so', () => {
  const read = [found('Front end play', 20), found('Stator bushing', 3), found('Forward clearance', 26)];
  expect(asFoundNow(built, read, words).map(({ sentence }) => sentence)).toEqual([
    'It was not read when it was built.',
    '0.5 more than built; how sure that is, is not known.',
    'As built.',
  ]);
});

test('what the plates lost stands beside what the pack gained', () => {
  const findings = [
    foundPart('Forward', 'friction 1', { thickness_nm: 75 * thou, condition: 'worn' }),
    foundPart('Forward', 'friction 2', { thickness_nm: 71 * thou, condition: 'burnt', note: 'to the core' }),
    foundPart('Direct', 'friction 1', { thickness_nm: null, condition: 'good' }),
  ];
  const asFound = asFoundNow(built, [found('Forward clearance', 41)], words);
  expect(wearOfPacks(findings, asFound, words)).toEqual([
    'Forward: 14.0 thou gone from the 2 plates measured; its clearance is 15.0 thou more than built.',
  ]);
  expect(wearOfPacks(findings, [], words)).toEqual([
    'Forward: 14.0 thou gone from the 2 plates measured; its clearance was not read both times.',
  ]);
  expect(foundParts(findings, words)[1]).toEqual({
    words: 'Forward friction 2',
    condition: 'burnt, 71.0 of 80.0 thou left',
    gone: '9.0 thou gone',
    note: 'to the core',
  });
});
