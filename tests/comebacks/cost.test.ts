// What comebacks cost, against a small shop added up by hand.
import { expect, test } from 'vitest';
import { sumByCause, sumByQuarter, sumCells } from '../../app/comebacks/cost.ts';
import { quarterOf, quartersBetween } from '../../app/jobs/calendar-days.ts';
import { shopThatDelivered } from './shop-that-delivered.ts';

test('a quarter is three months of the calendar year, and those between stand in order', () => {
  expect(['2025-01-01', '2025-03-31', '2025-04-01', '2025-12-31'].map(quarterOf)).toEqual([
    '2025 Q1',
    '2025 Q1',
    '2025 Q2',
    '2025 Q4',
  ]);
  expect(quartersBetween('2024 Q3', '2025 Q2')).toEqual(['2024 Q3', '2024 Q4', '2025 Q1', '2025 Q2']);
  expect(quartersBetween('2025 Q2', '2025 Q1')).toEqual([]);
});

test('each comeback counts once by quarter and family, is told under each of its causes, and a mistake nowhere', async () => {
  const shop = await shopThatDelivered();
  const { call, by } = shop;
  // Delivered: three in the first quarter, one in the third.
  const [one, two, three] = [
    await shop.build({ in: '2025-02-01', out: '2025-02-10', serial: 'A-1' }),
    await shop.build({ in: '2025-02-11', out: '2025-03-31', serial: 'A-2' }),
    await shop.build({ in: '2025-02-12', out: '2025-03-01', serial: 'A-3' }),
  ];
  const say = (comebackId: number, cause: string, certainty: string) =>
    call('comebacks.sayCause', { comebackId, cause, packId: null, certainty, note: '', by });
  // First quarter: 300.00 in warranty, two causes.
  const first = await shop.comesBack(one.jobId, '2025-03-31');
  await shop.decide(first.comebackId, { outcome: 'ours', covered: 'in warranty', cost: '300' });
  await say(first.comebackId, 'too tight', 'known');
  await say(first.comebackId, 'material', 'suspected');
  await say(first.comebackId, 'converter', 'not found');
  // Third quarter: 85.50 out of goodwill, one of 999.00 the customer paid, one in warranty nobody priced, one undecided.
  const fourth = await shop.build({ in: '2025-06-20', out: '2025-07-02', serial: 'A-4' });
  const second = await shop.comesBack(two.jobId, '2025-07-05');
  await shop.decide(second.comebackId, { outcome: 'no fault found', covered: 'out of goodwill', cost: '85.50' });
  const third = await shop.comesBack(three.jobId, '2025-08-05');
  await shop.decide(third.comebackId, { outcome: 'not our part', covered: 'not covered', cost: '999' });
  const unpriced = await shop.comesBack(fourth.jobId, '2025-09-01');
  await shop.decide(unpriced.comebackId, { outcome: 'ours', covered: 'in warranty' });
  await say(unpriced.comebackId, 'too tight', 'suspected');
  await shop.comesBack(one.jobId, '2025-09-02');
  // By mistake.
  const mistake = await shop.comesBack(two.jobId, '2025-09-03');
  await shop.decide(mistake.comebackId, { outcome: 'logged by mistake', covered: 'in warranty', cost: '5000' });

  const { cells, causes, families } = await call('comebacks.getCost', {});
  expect(families).toEqual([{ familyId: shop.familyId, name: 'KX3' }]);
  const nothing = { delivered: 0, cameBack: 0, ours: 0, cost_cents: 0, unpriced: 0, undecided: 0 };
  expect(sumByQuarter(cells, null)).toEqual([
    { ...nothing, quarter: '2025 Q1', delivered: 3, cameBack: 1, ours: 1, cost_cents: 300_00 },
    { ...nothing, quarter: '2025 Q2' },
    { quarter: '2025 Q3', delivered: 1, cameBack: 4, ours: 1, cost_cents: 85_50, unpriced: 1, undecided: 1 },
  ]);
  const all = { familyId: null, quarter: null };
  expect(sumCells(cells, all)).toMatchObject({ delivered: 4, cameBack: 5, cost_cents: 385_50 });
  expect(sumCells(cells, { ...all, familyId: shop.familyId + 1 })).toEqual(nothing);
  expect(sumByCause(causes, all)).toEqual([
    { cause: 'too tight', cameBack: 2, cost_cents: 300_00 },
    { cause: 'material', cameBack: 1, cost_cents: 300_00 },
    { cause: null, cameBack: 3, cost_cents: 85_50 },
  ]);
  expect(sumByCause(causes, { ...all, quarter: '2025 Q3' })).toEqual([
    { cause: 'too tight', cameBack: 1, cost_cents: 0 },
    { cause: null, cameBack: 3, cost_cents: 85_50 },
  ]);
});
