// Who is followed for how long, and what counts as having come back: each rule by a build that shows it.
import { expect, test } from 'vitest';
import type { Cause, Certainty, Outcome } from '../../app/comebacks/causes.ts';
import type { FleetBuild, LaterVisit } from '../../app/comebacks/fleet-rows.ts';
import { followBuilds, type WhatIsAsked } from '../../app/comebacks/follow-builds.ts';
import { type BuildToMake, daysBefore, shopWithBuilds, today } from './fleet-shop.ts';

const left = '2026-06-01';
const after = (days: number) => daysBefore(left, -days);
/** From 1 June to the day of the tests, 23 November 2026. */
const untilToday = 175;

/** One build by itself; its visits as the book would tell them. */
function endOf(build: Partial<FleetBuild>, asked: Partial<WhatIsAsked> = {}) {
  const whole = { jobId: 1, revisionNumber: 1, builderId: null, batchIds: [], deliveredOn: left };
  const service = { distanceAtDelivery: null, inServiceOn: left, months: 12, laterVisits: [] };
  const everything = { packName: null, cause: null, clock: 'days', isUseGuessed: false } as const;
  const told = followBuilds([{ ...whole, ...service, ...build }], [0], today, { ...everything, ...asked });
  const [followed] = told.followed;
  return { ...told, ending: followed?.ending, event: followed?.event, time: followed?.time };
}

type Said = readonly [cause: Cause, packName: string | null, certainty: Certainty];

const comeback = (day: string, outcome: Outcome, causes: readonly Said[] = []): LaterVisit => ({
  day,
  distance: null,
  comeback: { outcome, causes: causes.map(([cause, packName, certainty]) => ({ cause, packName, certainty })) },
});

const visit = (day: string): LaterVisit => ({ day, distance: null, comeback: null });

test('a unit never heard of again is followed until today, or until its warranty ended', () => {
  expect(endOf({})).toMatchObject({ ending: 'still followed', event: 0, time: untilToday });
  expect(endOf({ months: 3 })).toMatchObject({ ending: 'warranty ended', event: 0, time: 92 });
  // The last day still counts: five months from 23 June end today.
  expect(endOf({ inServiceOn: '2026-06-23', months: 5 })).toMatchObject({ ending: 'still followed', time: 153 });
});

test.each([
  ['ours', [], {}, 'came back', 1],
  ['not known yet', [], {}, 'came back', 1],
  ['not our part', [], {}, 'not our part', 0],
  ['no fault found', [], {}, 'no fault found', 0],
  ['logged by mistake', [], {}, 'here again for something else', 0],
  ['ours', [['too tight', 'Forward', 'known']], { cause: 'too tight' }, 'came back', 1],
  ['ours', [['too tight', 'Forward', 'suspected']], { cause: 'too tight' }, 'came back', 1],
  ['ours', [['too tight', 'Forward', 'not found']], { cause: 'too tight' }, 'came back, cause not known yet', 0],
  ['ours', [['too loose', 'Forward', 'known']], { cause: 'too tight' }, 'came back for another cause', 0],
  [
    'not known yet',
    [['too tight', 'Forward', 'suspected']],
    { cause: 'too tight' },
    'came back, cause not known yet',
    0,
  ],
  ['ours', [['too tight', 'Forward', 'known']], { packName: 'Direct' }, 'came back for another cause', 0],
  ['ours', [['too tight', null, 'known']], { packName: 'Direct' }, 'came back', 1],
  ['ours', [], { packName: 'Direct' }, 'came back, cause not known yet', 0],
  [
    'ours',
    [
      ['too tight', 'Direct', 'known'],
      ['too loose', 'Forward', 'known'],
    ],
    { packName: 'Direct', cause: 'too loose' },
    'came back for another cause',
    0,
  ],
] as const)('a comeback that is %s with %j, asked for %j: %s', (outcome, causes, asked, ending, event) => {
  expect(endOf({ laterVisits: [comeback(after(30), outcome, causes)] }, asked)).toMatchObject({
    ending,
    event,
    time: 30,
  });
});

test('a later ordinary job ends following on its day, and what comes after it is no comeback of this build', () => {
  const laterVisits = [visit(after(20)), comeback(after(30), 'ours')];
  expect(endOf({ laterVisits })).toMatchObject({ ending: 'here again for something else', event: 0, time: 20 });
  // On one day the comeback speaks.
  expect(endOf({ laterVisits: [visit(after(30)), comeback(after(30), 'ours')] })).toMatchObject({ event: 1 });
});

test('what comes back after the warranty ended does not count, whoever paid for it', () => {
  const laterVisits = [comeback(after(120), 'ours')];
  expect(endOf({ laterVisits, months: 3 })).toMatchObject({ ending: 'warranty ended', event: 0, time: 92 });
  expect(endOf({ laterVisits, months: 4 })).toMatchObject({ ending: 'came back', event: 1, time: 120 });
});

test('without a term of months a build is left out of the days; without a day in service it counts from delivery', () => {
  expect(endOf({ months: null })).toMatchObject({ followed: [], leftOut: { 'no term of months': 1 } });
  expect(endOf({ inServiceOn: null })).toMatchObject({ time: untilToday, fromDelivery: 1 });
});

test('a delivery taken back is no build any more', async () => {
  const { call, ask, jobIds, by } = await shopWithBuilds([{ deliveredOn: left }, { deliveredOn: left }]);
  await call('jobs.takeBackDelivery', { jobId: jobIds[0], reason: 'leaked in the yard', by });
  expect(await ask()).toMatchObject({ selected: 1, followed: 1 });
});

/** Nine builds that came back after 10, 20 … 90 days, of which the shop knows days and miles. */
const nine = Array.from({ length: 9 }, (_, i): BuildToMake => {
  const days = 10 * (i + 1);
  const ends = { on: after(days), outcome: 'ours', distance: 1000 + 100 * days };
  return { deliveredOn: left, distance: 1000, visits: [ends] };
});

test('the days are whole days from the day in service, and those on its first day are half a day', async () => {
  const first = { deliveredOn: left, visits: [{ on: left, outcome: 'ours' }] };
  const waited = { deliveredOn: left, inServiceOn: after(5), visits: [{ on: after(12), outcome: 'ours' }] };
  const { ask } = await shopWithBuilds([...nine, first, waited, { deliveredOn: left }]);
  const { survival } = await ask();
  if (!survival.isEnough) throw new Error(survival.why);
  expect(survival.curve.steps.map(({ time }) => time)).toEqual([0.5, 7, 10, 20, 30, 40, 50, 60, 70, 80, 90]);
  expect(survival.curve.until).toBe(untilToday);
  expect(survival.curve.steps[0]).toMatchObject({ atRisk: 12, events: 1 });
});

test('in use only what was written down counts, and a guess is shown as one', async () => {
  // Never seen again for 100 days; seen again in service without a look at the miles.
  const unknown = [
    { deliveredOn: after(75), distance: 500 },
    { deliveredOn: left, distance: 0, visits: [{ on: after(50) }] },
  ];
  const { ask } = await shopWithBuilds([...nine, ...unknown]);
  const known = await ask({ clock: 'miles' });
  expect(known).toMatchObject({
    followed: 9,
    guessed: 0,
    leftOut: [{ why: 'use not known', builds: 2 }],
    usePerDay: null,
  });
  const guessed = await ask({ clock: 'miles', guessUse: true });
  // All nine ran 100 miles a day.
  expect(guessed).toMatchObject({ followed: 11, guessed: 2, leftOut: [], usePerDay: { median: 100, builds: 9 } });
  if (!guessed.survival.isEnough) throw new Error('not enough');
  expect(guessed.survival.curve.until).toBe(10_000);
  // 1 mile is 1.609344 km.
  const inKm = await ask({ clock: 'km' });
  if (!inKm.survival.isEnough) throw new Error('not enough');
  expect(inKm.survival.curve.steps[0]?.time).toBeCloseTo(1609.344, 9);
});

test('with too few comebacks it says how many there are and how many it takes', async () => {
  const { ask } = await shopWithBuilds(nine.slice(0, 3));
  const why = 'Not enough yet: 3 of 8 comebacks needed.';
  const { survival, wear, factors, quarters } = await ask();
  expect([survival, wear, factors]).toEqual([survival, wear, factors].map(() => ({ isEnough: false, why })));
  expect(quarters).toMatchObject([{ quarter: '2026 Q2', builds: 3, cameBack: 3, stillFollowed: 0 }]);
});

test('a group in which none came back is told by counting, and what was never recorded leaves its builds out', async () => {
  const tow = Array.from({ length: 6 }, (): BuildToMake => ({ deliveredOn: left, use: 'tow' }));
  const some = nine.map((build, i) =>
    i < 8 ? { ...build, read: { 'Stator bushing': 25_400 * (1 + ((5 * i) % 8)) } } : build,
  );
  const { ask } = await shopWithBuilds([...some, ...tow]);
  const { factors } = await ask();
  if (!factors.isEnough) throw new Error(factors.why);
  const use = factors.tried.find(({ name }) => name === 'Use');
  // All nine of one use came back and none of six of the other: 1 in C(15, 6) = 5005 tables, twice over its mirror or none.
  expect(use).toMatchObject({ by: 'fisher', level: 'street', inLevel: { builds: 9, events: 9 }, ratio: null });
  // The score test, which knows how long each was followed, is asked too, and the more careful of the two is told.
  expect(use?.p).toBeGreaterThanOrEqual(1 / 5005);
  expect(use?.p).toBeLessThan(1 / 1000);
  expect(use?.says).toBe('Use: street: all of 9 came back, none of 6 of the others.');
  const bushing = factors.tried.find(({ name }) => name === 'Stator bushing');
  expect(bushing).toMatchObject({ builds: 8, events: 8, unrecorded: 7 });
});
