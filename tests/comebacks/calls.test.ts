// Whom to call: which builds share a thing, who was put on the list and why, and what leaves the book of it.
import { expect, test } from 'vitest';
import { readCsvFile } from '../../main/stock/lists-file.ts';
import { blankPart } from '../stock/shop-with-parts.ts';
import { shopThatDelivered } from './shop-that-delivered.ts';

/** Three units had frictions of one batch: one is still here, one was rebuilt with another, one ran; a fourth had none. */
async function shopWithOneBatch() {
  const shop = await shopThatDelivered();
  const { call, by } = shop;
  const { partId } = await call('stock.savePart', {
    ...blankPart,
    number: 'FR-80',
    description: 'Friction',
    kind: 'friction',
    by,
  });
  const receive = async (mark: string) => {
    const batch = { partId, quantity: 40, receivedOn: null, mark, document: '', unitCost: '', by };
    return (await call('stock.receiveBatch', batch)).batchId;
  };
  const bad = await receive('F2207');
  const good = await receive('F2208');
  const pull = async (jobId: number, batchId: number, quantity: number) =>
    call('stock.pullForJob', { jobId, partId, batchId, quantity, isSure: true, by });
  const builtWith = async (serial: string, customer: string, batchId: number | null) => {
    const given = { in: '2025-02-01', out: '2025-02-10', miles: 50_000, serial, customer };
    const job = await shop.takeIn(given);
    if (batchId !== null) await pull(job.jobId, batchId, 4);
    return shop.deliver(job, given);
  };
  const ran = await builtWith('A-17', '=Marrow Freight', bad);
  const cameBack = await builtWith('B-22', 'Dana Pell', bad);
  const other = await builtWith('C-31', 'Priya Nandi', good);
  const gaveBack = await shop.takeIn({ in: '2025-02-01', serial: 'E-50' });
  await pull(gaveBack.jobId, bad, 4);
  await call('stock.returnFromJob', { jobId: gaveBack.jobId, partId, batchId: bad, quantity: 4, by });
  const here = await shop.takeIn({ in: '2025-02-12', serial: 'D-40' });
  await pull(here.jobId, bad, 4);
  const back = await shop.comesBack(cameBack.jobId, '2025-04-11', { odometer: 53_500 });
  return { ...shop, bad, ran, cameBack, other, here, back };
}

test('builds that share a batch are listed once they left, with their use so far and what they came back as', async () => {
  const shop = await shopWithOneBatch();
  shop.clock.setTo('2025-05-21');
  const of = { kind: 'batch', batchId: shop.bad };
  const { builds, stillHere, title } = await shop.call('comebacks.listSharing', { of });
  expect(title).toContain('F2207');
  expect(stillHere).toBe(1);
  expect(builds.map(({ unit }) => unit.serial).toSorted()).toEqual(['A-17', 'B-22']);
  const [ran, back] = ['A-17', 'B-22'].map((serial) => builds.find(({ unit }) => unit.serial === serial));
  // 18 days left of February 2025, 31 of March, 30 of April, 21 of May.
  expect(ran?.service).toMatchObject({ days: 18 + 31 + 30 + 21, used: null });
  expect(ran).toMatchObject({ seenSince: null, cameBack: [], isOnList: false });
  expect(ran?.what[0]).toContain('4 × FR-80, F2207');
  // It stopped running on 11 April: 18 + 31 + 11 days, 3,500 miles.
  expect(back?.service).toMatchObject({ days: 60, used: { amount: 3_500, unit: 'miles' } });
  expect(back).toMatchObject({ seenSince: { number: shop.back.number }, cameBack: [{ cameBackOn: '2025-04-11' }] });
});

test('a finding is shared with the builds that came back with it and those where it was left in, within the family', async () => {
  const shop = await shopThatDelivered();
  const { call, by } = shop;
  const find = async (jobId: number, part: string, condition: string, decision: string) => {
    const finding = {
      part,
      packId: null,
      slotId: null,
      place: null,
      condition,
      checkId: null,
      note: '',
      thickness: '',
    };
    return (await call('jobs.recordFinding', { jobId, finding, decision, by })).findingId;
  };
  const given = { in: '2025-02-01', out: '2025-02-10', serial: 'A-17' };
  const left = await shop.takeIn(given);
  await find(left.jobId, 'stator bushing', 'worn', 'reuse');
  await shop.deliver(left, given);
  const sound = await shop.takeIn({ ...given, serial: 'B-22' });
  await find(sound.jobId, 'stator bushing', 'good', 'reuse');
  await shop.deliver(sound, given);
  const failed = await shop.build({ ...given, serial: 'C-31' });
  const back = await shop.comesBack(failed.jobId, '2025-04-11');
  const findingId = await find(back.jobId, 'stator bushing', 'worn', 'replace');

  const { title, builds, stillHere } = await call('comebacks.listSharing', { of: { kind: 'finding', findingId } });
  expect(title).toBe('stator bushing worn, KX3');
  expect(builds.map(({ number, what }) => [number, what]).toSorted()).toEqual([
    [left.number, ['found at its teardown, used again']],
    [failed.number, [`found when it came back as job ${back.number}`]],
  ]);
  // The ticket of the return itself.
  expect(stillHere).toBe(1);
  const offered = await call('comebacks.suggestShared', { text: 'bushing worn' });
  expect(offered.map(({ says, more }) => [says, more])).toEqual([
    ['stator bushing worn', 'finding, KX3, on 2 tickets'],
  ]);
});

test('what is asked for most likely is offered without a word: what was pulled for builds that came back', async () => {
  const shop = await shopWithOneBatch();
  const offered = async (text: string) =>
    (await shop.call('comebacks.suggestShared', { text })).map(({ says }) => says);
  expect(await offered('')).toEqual(['FR-80, F2207']);
  expect(await offered('f220')).toEqual(['FR-80, F2208', 'FR-80, F2207']);
  expect(await offered('nothing of the kind')).toEqual([]);
});

test('a person puts builds on the list with a reason, notes the calls, and takes one off with the reason', async () => {
  const shop = await shopWithOneBatch();
  const { call, by } = shop;
  shop.clock.setTo('2025-05-21');
  const put = {
    jobIds: [shop.ran.jobId, shop.cameBack.jobId],
    shares: 'batch',
    what: 'FR-80, batch F2207',
    whatToCheck: 'colour of the fluid',
    reason: 'one came back glazed',
    by,
  };
  await call('comebacks.putOnList', put);
  expect((await shop.refusal('comebacks.putOnList', put)).message).toBe(
    `Job ${shop.ran.number} is on the list for this already.`,
  );
  // Nobody is called about a unit that stands in the shop.
  expect((await shop.refusal('comebacks.putOnList', { ...put, jobIds: [shop.here.jobId] })).message).toContain(
    'was not handed over',
  );
  const listed = async () => call('comebacks.listToCall', {});
  const entryOf = async (jobId: number) => (await listed()).find(({ build }) => build.jobId === jobId);
  const note = async (jobId: number, cameOfIt: string, words: string) => ({
    unitToCallId: (await entryOf(jobId))?.unitToCallId,
    cameOfIt,
    note: words,
    by,
  });
  await call('comebacks.noteCall', await note(shop.ran.jobId, 'not reached', 'left word'));
  await call('comebacks.noteCall', await note(shop.ran.jobId, 'comes in', 'Tuesday'));
  expect(await shop.refusal('comebacks.noteCall', await note(shop.cameBack.jobId, 'taken off', ''))).toMatchObject({
    field: 'note',
  });
  await call('comebacks.noteCall', await note(shop.cameBack.jobId, 'taken off', 'it is here'));
  expect((await entryOf(shop.ran.jobId))?.calls.map((each) => [each.cameOfIt, each.note])).toEqual([
    ['comes in', 'Tuesday'],
    ['not reached', 'left word'],
  ]);
  // Who is still to be called stands before who was taken off.
  expect((await listed()).map(({ build }) => build.number)).toEqual([shop.ran.number, shop.cameBack.number]);
  // Taken off, it may be put on again.
  await call('comebacks.putOnList', { ...put, jobIds: [shop.cameBack.jobId] });

  const history = await call('jobs.getHistory', { jobId: shop.ran.jobId });
  expect(history.filter(({ kind }) => kind === 'comeback').map(({ says, more }) => [says, more])).toEqual([
    ['To be called: FR-80, batch F2207', 'one came back glazed; to check: colour of the fluid'],
    ['Called about FR-80, batch F2207: not reached', 'left word'],
    ['Called about FR-80, batch F2207: comes in', 'Tuesday'],
  ]);
});

test('the list leaves the book as a file no spreadsheet calculates with, and as a paper', async () => {
  const shop = await shopWithOneBatch();
  const { call, by } = shop;
  shop.clock.setTo('2025-05-21');
  const put = {
    jobIds: [shop.ran.jobId],
    shares: 'batch',
    what: '+F2207',
    whatToCheck: '@fluid',
    reason: '-glazed',
    by,
  };
  await call('comebacks.putOnList', put);
  const file = await call('comebacks.exportToCall', {});
  const text = Buffer.from(file.base64, 'base64').toString('utf8');
  expect(text).toContain("'=Marrow Freight");
  expect(text).toContain("'+F2207");
  expect(text).toContain("'@fluid");
  expect(text).toContain("'-glazed");
  const { headings, rows } = readCsvFile(text, ',', 'parts');
  const cell = (heading: string) => rows[0]?.cells[headings.indexOf(heading)];
  expect(rows).toHaveLength(1);
  expect(['customer', 'phone', 'handed over', 'days in service', 'use', 'stands'].map(cell)).toEqual([
    '=Marrow Freight',
    '555 0160',
    '2025-02-10',
    '100',
    'not seen since',
    'to be called',
  ]);
  expect(cell('warranty')).toBe('in warranty until 10 February 2026, the 12,000 miles could not be looked at');
  const paper = await call('comebacks.printToCall', {});
  expect(Buffer.from(paper.pdfBase64, 'base64').subarray(0, 5).toString('latin1')).toBe('%PDF-');
});

test('a gauge that was found out is shared by the builds it read', async () => {
  const shop = await shopThatDelivered();
  const { call, by } = shop;
  const { gaugeId } = await call('gauges.saveGauge', {
    gaugeId: null,
    kind: 'dial plunger',
    tag: 'D1',
    unit: 'thou',
    resolution: '0.5',
    permittedError: '0.6',
    statedIn: '',
    offSquareDegrees: 0,
    serial: '',
    intervalDays: null,
    by,
  });
  const given = { in: '2025-02-01', out: '2025-02-10', serial: 'A-17' };
  const read = await shop.takeIn(given);
  const { checks } = await call('jobs.getJob', { jobId: read.jobId });
  const { takeId } = await call('readings.startTake', {
    jobId: read.jobId,
    checkId: checks.find(({ name }) => name === 'Rear end play')?.checkId,
    phase: 'final',
    mode: 'quick',
    setup: null,
    gaugeId,
    note: '',
    by,
  });
  await call('readings.recordReading', { takeId, spot: 1, typed: '12', by });
  await shop.deliver(read, given);
  await shop.build({ ...given, serial: 'B-22' });
  shop.clock.setTo('2025-03-01');
  const { gaugeCheckId } = await call('gauges.recordCheck', {
    gaugeId,
    against: 'blocks',
    checkedOn: '2025-03-01',
    points: [{ nominal: '50', read: '53' }],
    note: '',
    reason: '',
    supersedesId: null,
    by,
  });
  const offered = await call('comebacks.suggestShared', { text: 'd1' });
  expect(offered.map(({ of }) => of)).toEqual([{ kind: 'gauge', gaugeCheckId }]);
  const { title, builds } = await call('comebacks.listSharing', { of: { kind: 'gauge', gaugeCheckId } });
  expect(title).toBe('D1, found out on 1 March 2025');
  // It read 12 of 4 to 19 thou, three too much at most: in all the same.
  expect(builds.map(({ number, what }) => [number, what])).toEqual([[read.number, ['Rear end play: in all the same']]]);
});
