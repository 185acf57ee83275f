// Factors that are tried: of many batches the bad one is found and every one counted; of two that go together one is the
// other's shadow.
import { expect, test } from 'vitest';
import { tryFactors } from '../../app/comebacks/fleet-factors.ts';
import type { GroupColumn, NumberColumn } from '../../app/comebacks/fleet-rows.ts';
import { findShadows } from '../../app/comebacks/fleet-shadows.ts';
import { shadowSentence } from '../../app/comebacks/fleet-words.ts';
import type { FollowedBuild } from '../../app/comebacks/follow-builds.ts';
import { falseDiscovery } from '../../app/statistics/false-discovery.ts';
import { fisher } from '../../app/statistics/fisher.ts';
import { accepted } from '../statistics/result.ts';

/** Build by build: came back after so many days, or followed for 300. */
const followed = (days: ReadonlyArray<number | null>): FollowedBuild[] =>
  days
    .map((time, place) => ({ place, time, event: time === null ? 0 : 1 }) as const)
    .map(({ place, time, event }) => ({
      place,
      time: time ?? 300,
      event,
      ending: event === 1 ? ('came back' as const) : ('still followed' as const),
      isGuessed: false,
    }))
    .toSorted((a, b) => a.time - b.time || b.event - a.event);

const group = (name: string, levels: readonly string[]): GroupColumn => ({
  kind: 'group',
  name,
  packName: null,
  grouping: 'batch',
  levels: levels.map((level) => [level]),
});

test('of 150 batches the bad one stands out against all 150, though those far from it are only counted', () => {
  // Six builds a batch; all of batch 7 came back, and one of every tenth batch.
  const days = Array.from({ length: 900 }, (_, i) => {
    const batch = Math.floor(i / 6);
    if (batch === 7) return 20 + i;
    return batch % 10 === 0 && i % 6 === 0 ? 30 + batch : null;
  });
  const column = group(
    'Batch',
    days.map((_, i) => `lot ${Math.floor(i / 6)}`),
  );
  const { tried, count, notTried } = tryFactors([column], followed(days));
  expect([count, notTried]).toEqual([150, []]);
  expect(tried.length).toBeLessThan(150);
  const [first, ...others] = tried;
  expect(first).toMatchObject({ level: 'lot 7', isFound: true, inLevel: { builds: 6, events: 6 } });
  // Nothing between it and 150 times its own p: that is the adjusted one.
  expect(first?.adjusted).toBeCloseTo(150 * first!.effect.p, 12);
  expect(others.filter(({ isFound }) => isFound)).toEqual([]);
  const all = accepted(falseDiscovery([first!.effect.p, ...new Array<number>(149).fill(1)], 0.05));
  expect(first?.adjusted).toBeCloseTo(all.adjusted[0]!, 12);
});

test('a group without a comeback is told by Fisher over all that were recorded', () => {
  const days = Array.from({ length: 60 }, (_, i) => (i < 40 && i % 4 === 0 ? 10 + i : null));
  const column = group(
    'Fluid',
    days.map((_, i) => (i < 40 ? 'red' : 'blue')),
  );
  const [only] = tryFactors([column], followed(days)).tried;
  const exact = accepted(
    fisher([
      [10, 30],
      [0, 20],
    ]),
  );
  expect(only).toMatchObject({ level: 'red', effect: { by: 'fisher', ratio: null, p: exact.pTwoSided } });
});

test('the newest builds, of which none has had the time to come back, are not said to last', () => {
  const builds = Array.from({ length: 60 }, (_, place) => {
    const isNew = place >= 40;
    // A quarter of the old ones came back, none of them within the ten days the new ones are out.
    const event: 0 | 1 = !isNew && place % 4 === 0 ? 1 : 0;
    const time = isNew ? 10 : event === 1 ? 100 + place : 300;
    const ending = event === 1 ? ('came back' as const) : ('still followed' as const);
    return { place, time, event, ending, isGuessed: false };
  }).toSorted((a, b) => a.time - b.time || b.event - a.event);
  const column = group(
    'Batch',
    Array.from({ length: 60 }, (_, place) => (place < 40 ? 'old' : 'new')),
  );
  const [only] = tryFactors([column], builds).tried;
  // While anybody was at risk of coming back only old ones were: nothing can be told apart.
  expect(only?.effect.p).toBe(1);
  expect(only?.isFound).toBe(false);
});

test('a builder who happened to have the tight ones is called a shadow of the tightness, not the other way round', () => {
  // Tight builds come back, whoever built them; RA built three of four of the tight ones.
  const builds = Array.from({ length: 200 }, (_, i) => {
    const isTight = i % 2 === 0;
    const isRosa = isTight ? i % 8 !== 0 : i % 8 === 1;
    return { isTight, isRosa, days: isTight && i % 5 !== 1 && i % 3 !== 0 ? 20 + i : i % 40 === 1 ? 50 + i : null };
  });
  const clearance: NumberColumn = {
    kind: 'number',
    name: 'Forward clearance',
    packName: 'Forward',
    unit: 'thou',
    tells: 'clearance',
    values: builds.map(({ isTight }, i) => 25_400 * ((isTight ? 20 : 27) + (i % 3))),
  };
  const builder = group(
    'Built by',
    builds.map(({ isRosa }) => (isRosa ? 'RA' : 'IM')),
  );
  const rows = followed(builds.map(({ days }) => days));
  const { tried } = tryFactors([clearance, builder], rows);
  expect(tried.map(({ isFound }) => isFound)).toEqual([true, true]);
  const [shadow, ...none] = findShadows(tried, rows);
  expect(none).toEqual([]);
  const held = new Map(shadow?.each.map((each) => [each.factor.column.name, each.mayBeShadow]));
  expect(Object.fromEntries(held)).toEqual({ 'Forward clearance': false, 'Built by': true });
  expect(shadowSentence(shadow!, { lengthUnit: 'thou', decimalMark: '.' })).toMatch(
    /: Built by: RA may be the shadow of Forward clearance, because inside its groups it tells nothing by itself\.$/,
  );
});
