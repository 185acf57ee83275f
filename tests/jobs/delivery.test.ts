// A unit handed over: what is written down stays, what was built stays, and the warranty begins when it is in service.

import { expect, test } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import type { Caller } from '../../main/shop/demo/kx3-job.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';

const usual = { months: 12, distance: { amount: 12_000, unit: 'miles' }, passes: null } as const;

async function shopWithJob() {
  const shop = await shopWithKx3();
  const job = await openJob(shop.call, shop.familyId, shop.by);
  const { jobId } = job;
  // The clock of the tests stands on 23 November 2026.
  const handover = {
    jobId,
    deliveredTo: 'Tam Okoro',
    deliveredOn: '2026-11-23',
    distance: { amount: 118_412, unit: 'miles' },
    handedOverById: shop.by,
    by: shop.by,
  };
  const deliver = (warranty: object = { terms: usual, inServiceOn: null }) =>
    shop.call('jobs.deliver', { ...handover, warranty, reason: 'they know what is open' });
  return { ...shop, job, jobId, handover, deliver };
}

async function stageOf(call: Caller, jobId: number): Promise<string | undefined> {
  const { stageId, stages } = await call('jobs.getJob', { jobId });
  return stages.find((stage) => stage.stageId === stageId)?.name;
}

test('the terms this shop usually gives are offered, and a job keeps the ones it left with', async () => {
  const { call, jobId, deliver } = await shopWithJob();
  await call('shop.changeSettings', { warrantyMonths: 12, warrantyDistance: 12_000 });
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({
    delivery: null,
    warranty: null,
    usualTerms: usual,
  });
  await deliver();
  await call('shop.changeSettings', { warrantyMonths: null, warrantyDistance: null });
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({
    delivery: { deliveredTo: 'Tam Okoro', deliveredOn: '2026-11-23', handedOverBy: 'RA', reason: '' },
    warranty: { terms: usual, inServiceOn: null, by: 'RA' },
    usualTerms: { months: null, distance: null, passes: null },
  });
  expect((await call('jobs.getJob', { jobId })).deliveredOn).toBe('2026-11-23');
  expect(await call('jobs.listJobs', { text: '', includeClosed: false })).toMatchObject([
    { deliveredOn: '2026-11-23' },
  ]);
});

test('the day in service comes by a call without a reason; what supersedes it needs one, and all of it stays', async () => {
  const { call, refusal, jobId, deliver, by } = await shopWithJob();
  expect(
    await refusal('jobs.changeWarranty', { jobId, terms: usual, inServiceOn: null, reason: '', by }),
  ).toMatchObject({ code: 'not-delivered' });
  await deliver();
  const change = { jobId, terms: usual, inServiceOn: '2026-11-23', reason: '', by };
  await call('jobs.changeWarranty', change);
  expect(await refusal('jobs.changeWarranty', change)).toMatchObject({ code: 'nothing-changed' });
  const longer = { ...change, terms: { ...usual, months: 24 } };
  expect(await refusal('jobs.changeWarranty', longer)).toMatchObject({ field: 'reason' });
  await call('jobs.changeWarranty', { ...longer, reason: 'waited three weeks for us' });
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({
    warranty: { terms: { months: 24 }, inServiceOn: '2026-11-23', reason: 'waited three weeks for us' },
    earlierWarranties: [
      { terms: { months: 12 }, inServiceOn: '2026-11-23', reason: '' },
      { terms: { months: 12 }, inServiceOn: null, reason: '' },
    ],
  });
});

test.each([
  ['jobs.deliver', { deliveredOn: '2026-11-24' }, 'deliveredOn', /still to come/],
  ['jobs.deliver', { deliveredOn: '2026-11-22' }, 'deliveredOn', /came in on 23 November 2026/],
  ['jobs.deliver', { deliveredOn: '2026-02-29' }, 'deliveredOn', /./],
  ['jobs.deliver', { deliveredTo: ' ' }, 'deliveredTo', /must not be empty/],
  [
    'jobs.deliver',
    { warranty: { terms: usual, inServiceOn: '2026-11-22' } },
    'inServiceOn',
    /cannot have gone into service before/,
  ],
  ['jobs.deliver', { warranty: { terms: usual, inServiceOn: '2026-11-30' } }, 'inServiceOn', /leave it open/],
  ['jobs.deliver', { handedOverById: 50 }, undefined, /no such person/],
])('%s with %o is refused, and nothing is written', async (method, more, field, sentence) => {
  const { call, refusal, jobId, handover } = await shopWithJob();
  const failure = await refusal(method, { ...handover, warranty: { terms: usual, inServiceOn: null }, ...more });
  expect(failure.message).toMatch(sentence);
  if (field !== undefined) expect(failure).toMatchObject({ kind: 'refusal', field });
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({ delivery: null, warranty: null });
});

test('a delivery is corrected with a reason or taken back, never written twice', async () => {
  const { call, refusal, jobId, handover, deliver, by } = await shopWithJob();
  await deliver({ terms: usual, inServiceOn: '2026-11-23' });
  expect((await refusal('jobs.deliver', { ...handover, warranty: { terms: usual, inServiceOn: null } })).message).toBe(
    'Job 1 was handed over on 23 November 2026: correct that instead.',
  );
  await call('jobs.correctDelivery', { ...handover, deliveredTo: 'Mrs Okoro', reason: 'she came for it' });
  await call('jobs.takeBackDelivery', { jobId, reason: 'leaked in the yard', by });
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({
    delivery: null,
    earlierDeliveries: [
      { deliveredOn: null, reason: 'leaked in the yard' },
      { deliveredTo: 'Mrs Okoro', reason: 'she came for it' },
      { deliveredTo: 'Tam Okoro', reason: '' },
    ],
  });
  expect((await refusal('jobs.correctDelivery', { ...handover, reason: 'x' })).message).toBe(
    'Job 1 was not handed over yet.',
  );
  await deliver();
  const acts = await call('jobs.getHistory', { jobId });
  expect(acts.filter(({ kind }) => kind === 'delivery').map(({ says, more }) => `${says} (${more})`)).toEqual([
    'Handed over to Tam Okoro on 23 November 2026 (118,412 miles on it, by RA)',
    'Warranty, in service from 23 November 2026: until 23 November 2027 or 12,000 miles after delivery, whichever comes first ()',
    'Handed over to Mrs Okoro on 23 November 2026, corrected (118,412 miles on it, by RA, she came for it)',
    'Delivery taken back (leaked in the yard)',
    'Handed over to Tam Okoro on 23 November 2026 (118,412 miles on it, by RA)',
    'Warranty, not in service yet: 12 months or 12,000 miles, whichever comes first ()',
  ]);
  expect((await call('jobs.listJobs', { text: 'mrs okoro', includeClosed: true })).map((each) => each.jobId)).toEqual([
    jobId,
  ]);
});

test('once it has left nothing more is read or built, but a misread may still be put right', async () => {
  const { call, refusal, jobId, job, deliver, by } = await shopWithJob();
  await measureAsFound(job);
  const check = job.sheet.checks.find(({ name }) => name === 'Front end play');
  const [take] = await call('readings.listTakes', { jobId, checkId: check?.checkId });
  const start = { jobId, checkId: check?.checkId, phase: 'final', mode: 'final', setup: null, note: '', by };
  await deliver();
  const left = 'Job 1 was handed over on 23 November 2026: check the unit in again, or take the delivery back.';
  for (const [method, input] of [
    ['readings.startTake', start],
    ['readings.recordReading', { takeId: take?.takeId, spot: 1, typed: '30', by }],
    ['packs.recordMockUp', { jobId, packId: job.sheet.packs[0]?.packId, pieces: [], note: '', by }],
    ['jobs.overrideCheck', { jobId, checkId: check?.checkId, reason: 'x', by }],
    ['jobs.signOff', { jobId, place: 'on stand', note: '', by }],
  ] as const)
    expect([method, (await refusal(method, input)).message]).toEqual([method, left]);
  const readingId = take?.readings[0]?.readingId;
  await call('readings.supersedeReading', { readingId, typed: '30', reason: 'wrote 31 for 30', by });
  await call('jobs.logCall', { jobId, direction: 'they called', withWhom: 'Tam Okoro', said: 'Shifts well.', by });
  await call('jobs.takeBackDelivery', { jobId, reason: 'came straight back', by });
  await call('readings.startTake', start);
});

test('a ticket is picked up by the delivery, and without it only with a reason', async () => {
  const { call, refusal, jobId, deliver, by } = await shopWithJob();
  const stages = await call('jobs.listStages', {});
  const idOf = (name: string) => stages.find((stage) => stage.name === name)?.stageId;
  await call('jobs.moveToStage', { jobId, stageId: idOf('Ready'), reason: 'as it is', by });
  const pickUp = { jobId, stageId: idOf('Picked up'), by };
  expect((await refusal('jobs.moveToStage', pickUp)).message).toBe(
    'Before Picked up: the delivery is not written down.',
  );
  await deliver();
  expect(await stageOf(call, jobId)).toBe('Picked up');
});

test('a delivery that is taken back brings the ticket back to where it waits for one', async () => {
  const { call, jobId, deliver, by } = await shopWithJob();
  await deliver();
  await call('jobs.takeBackDelivery', { jobId, reason: 'leaked in the yard', by });
  expect(await stageOf(call, jobId)).toBe('Ready');
});

test('a unit leaves unfinished only with a reason, which stays beside what was missing', async () => {
  const { call, refusal, jobId, handover } = await shopWithJob();
  const warranty = { terms: usual, inServiceOn: null };
  const asked = await refusal('jobs.deliver', { ...handover, warranty });
  expect(asked).toMatchObject({ code: 'missing', field: 'reason' });
  expect(asked.message).toContain('not signed off');
  expect(await call('jobs.getDelivery', { jobId })).toMatchObject({ delivery: null, warranty: null });
  expect(await stageOf(call, jobId)).toBe('Checked in');
  await call('jobs.deliver', { ...handover, warranty, reason: 'sold as it stands' });
  const { passedOver } = await call('jobs.getJob', { jobId });
  expect(await stageOf(call, jobId)).toBe('Picked up');
  expect(passedOver.map(({ reason }) => reason)).toContain('sold as it stands');
  expect(passedOver.map(({ need }) => need)).not.toContain('delivery recorded');
});

test('a unit that comes back brings the warranty it left with', async () => {
  const { call, jobId, deliver } = await shopWithJob();
  const { unitId } = (await call('jobs.getJob', { jobId })).unit;
  const visits = () => call('jobs.listVisits', { unitId, serial: '' });
  expect(await visits()).toMatchObject([{ left: null }]);
  await deliver({ terms: usual, inServiceOn: '2026-11-23' });
  expect(await visits()).toMatchObject([
    {
      left: {
        terms: usual,
        inServiceOn: '2026-11-23',
        deliveredOn: '2026-11-23',
        distanceAtDelivery: { amount: 118_412, unit: 'miles' },
      },
    },
  ]);
});

test('an answer to a list may be put right with its reason once it has left, and nothing new is answered', async () => {
  const { call, refusal, familyId, by } = await shopWithKx3();
  const line = { words: 'Hub polished', asks: { kind: 'tick' } };
  const lists = [
    { name: 'Converter', when: 'build', packName: null, lines: [line, { ...line, words: 'Flushed' }], sourceNote: '' },
  ];
  await call('specs.saveSheet', { familyId, sheet: { ...kx3Sheet, lists, pictures: [] }, sourceNote: '', by });
  const { jobId } = await openJob(call, familyId, by);
  const [list] = await call('jobs.listListsOfJob', { jobId, when: null });
  const [first, second] = list?.lines ?? [];
  const answer = { jobId, lineId: first?.lineId, answer: { kind: 'done' }, reason: '', by };
  await call('jobs.answerLine', answer);
  await call('jobs.deliver', {
    reason: 'they know what is open',
    jobId,
    deliveredTo: 'Tam Okoro',
    deliveredOn: '2026-11-23',
    distance: null,
    handedOverById: by,
    warranty: { terms: usual, inServiceOn: null },
    by,
  });
  expect((await refusal('jobs.answerLine', { ...answer, answer: { kind: 'not so' } })).message).toContain(
    'handed over',
  );
  expect((await refusal('jobs.answerLine', { ...answer, lineId: second?.lineId, reason: 'x' })).message).toContain(
    'handed over',
  );
  await call('jobs.answerLine', { ...answer, answer: { kind: 'not so' }, reason: 'ticked the wrong unit' });
  expect((await call('jobs.listListsOfJob', { jobId, when: null }))[0]?.lines[0]?.given).toMatchObject({
    answer: { kind: 'not so' },
    reason: 'ticked the wrong unit',
  });
});
