// Teardown: findings by part with condition and decision, corrected, taken back, pinned to photos, told and searched.
import { expect, test } from 'vitest';
import { checkNamed, openJob, packNamed, readCheck } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { greyJpeg } from '../photos/small-jpeg.ts';

const plain = {
  part: 'pump bushing',
  packId: null,
  slotId: null,
  place: null,
  condition: 'worn',
  thickness: '',
  checkId: null,
  note: '',
} as const;

async function shopAtTeardown() {
  const shop = await shopWithKx3();
  const job = await openJob(shop.call, shop.familyId, shop.by);
  const { jobId, sheet } = job;
  const frictions = packNamed(sheet, 'Forward').slots.filter((slot) => slot.kind === 'friction');
  const write = async (finding: object, decision = 'not decided yet') =>
    (await shop.call('jobs.recordFinding', { jobId, finding: { ...plain, ...finding }, decision, by: shop.by }))
      .findingId;
  return { ...shop, job, jobId, sheet, forward: packNamed(sheet, 'Forward').packId, frictions, write };
}

test('a friction keeps its slot, its place and what is left of it, as typed and as a number', async () => {
  const { call, jobId, write, forward, frictions } = await shopAtTeardown();
  const slotId = frictions[1]?.slotId;
  await write({ part: 'friction 2', packId: forward, slotId, condition: 'burnt', thickness: '71.5' }, 'replace');
  // 71.5 thou × 25 400 nm = 1 816 100 nm; a new one is 80 thou, 2 032 000 nm.
  expect(await call('jobs.listFindings', { jobId })).toMatchObject([
    {
      part: 'friction 2',
      packName: 'Forward',
      slotName: 'friction 2',
      place: 'middle',
      condition: 'burnt',
      thickness_nm: 1_816_100,
      thicknessTyped: '71.5',
      nominal_nm: 2_032_000,
      decision: { decision: 'replace', by: 'RA' },
    },
  ]);
});

test('a correction stands in front, with its reason; what was taken back stands no more', async () => {
  const { call, refusal, jobId, write, by } = await shopAtTeardown();
  const first = await write({});
  const second = await write({ part: 'sun shell', condition: 'cracked' }, 'replace');
  const finding = { ...plain, condition: 'scored' };
  await call('jobs.correctFinding', { findingId: first, finding, reason: 'seen after washing', by });
  expect(await refusal('jobs.correctFinding', { findingId: first, finding, reason: 'again', by })).toMatchObject({
    code: 'nothing-changed',
  });
  await call('jobs.withdrawFinding', { findingId: second, reason: 'of another unit', by });
  expect(await call('jobs.listFindings', { jobId })).toMatchObject([
    { findingId: first, condition: 'scored', reason: 'seen after washing', earlier: [{ condition: 'worn' }] },
  ]);
  expect(await refusal('jobs.decideFinding', { findingId: second, decision: 'reuse', note: '', by })).toMatchObject({
    code: 'withdrawn',
  });
  expect((await call('jobs.getHistory', { jobId })).filter((act) => act.kind === 'finding')).toMatchObject([
    { says: 'pump bushing: worn' },
    { says: 'sun shell: cracked, to be replaced' },
    { says: 'pump bushing: scored, in place of pump bushing: worn', more: 'seen after washing' },
    { says: 'sun shell: taken back', more: 'of another unit' },
  ]);
});

test('decisions are rows: the newest counts and the others stay', async () => {
  const { call, jobId, write, by } = await shopAtTeardown();
  const findingId = await write({});
  const second = await call('shop.addPerson', { name: 'Noor Vey', initials: 'NV' });
  await call('jobs.decideFinding', { findingId, decision: 'machine', note: 'line bore', by: second.personId });
  await call('jobs.decideFinding', { findingId, decision: 'replace', note: '', by });
  expect(await call('jobs.listFindings', { jobId })).toMatchObject([
    {
      decision: { decision: 'replace', by: 'RA' },
      earlierDecisions: [{ decision: 'not decided yet' }, { decision: 'machine', note: 'line bore', by: 'NV' }],
    },
  ]);
});

test('a stage may ask that every finding is decided', async () => {
  const { call, refusal, jobId, write, forward, by } = await shopAtTeardown();
  const stages = await call('jobs.listStages', {});
  const stageId = (name: string) => stages.find((stage) => stage.name === name)?.stageId;
  await call('jobs.changeStageNeeds', { stageId: stageId('Checked in'), needs: ['findings decided'], by });
  const findingId = await write({ part: 'piston seal', packId: forward, place: 'piston end' });
  await write({}, 'replace');
  expect((await refusal('jobs.moveToStage', { jobId, stageId: stageId('As found'), by })).message).toBe(
    'Before As found: Forward piston seal: reuse, replace or machine is not decided.',
  );
  await call('jobs.decideFinding', { findingId, decision: 'replace', note: '', by });
  await call('jobs.moveToStage', { jobId, stageId: stageId('As found'), by });
});

test.each([
  [{ thickness: '71 mm' }, 'implausible', 'thickness'],
  [{ thickness: '-3' }, 'negative', 'thickness'],
  [{ place: 'middle' }, 'no-pack', 'packId'],
  [{ slotId: 1 }, 'no-pack', 'packId'],
] as const)('%o is refused at its field', async (some, code, field) => {
  const { refusal, jobId, by } = await shopAtTeardown();
  const finding = { ...plain, ...some };
  expect(await refusal('jobs.recordFinding', { jobId, finding, decision: 'reuse', by })).toMatchObject({ code, field });
});

test('a slot of another pack is refused', async () => {
  const { refusal, jobId, sheet, frictions, by } = await shopAtTeardown();
  const finding = { ...plain, packId: packNamed(sheet, 'Direct').packId, slotId: frictions[0]?.slotId };
  expect(await refusal('jobs.recordFinding', { jobId, finding, decision: 'reuse', by })).toMatchObject({
    code: 'not-found',
  });
});

test('parts are offered from the packs of the job, from earlier findings and from the stock', async () => {
  const { call, jobId, write, by } = await shopAtTeardown();
  await write({ part: 'forward drum bushing' });
  await call('stock.savePart', {
    partId: null,
    number: 'KX3-F-FR',
    description: 'Forward friction',
    kind: 'friction',
    supplier: '',
    unitOfIssue: 'each',
    bin: '',
    cost: '',
    price: '',
    coreCharge: '',
    reorderPoint: null,
    reorderQuantity: null,
    familyIds: [],
    contents: [],
    by,
  });
  const offered = async (text: string) =>
    (await call('jobs.suggestParts', { jobId, text })).map(({ part, note }) => `${part}; ${note}`);
  expect(await offered('forw fric')).toEqual([
    ...[1, 2, 3, 4].map((place) => `friction ${place}; Forward`),
    'Forward friction; KX3-F-FR, 0 on hand',
  ]);
  expect(await offered('DRUM')).toEqual(['forward drum bushing; found before']);
  expect(await offered('')).toEqual([]);
});

test('photos of the ticket are pinned and taken off again', async () => {
  const { call, refusal, jobId, write, by } = await shopAtTeardown();
  const findingId = await write({});
  const jpegBase64 = Buffer.from(greyJpeg).toString('base64');
  const { photoId } = await call('photos.addPhoto', {
    jobId,
    caption: '',
    jpegBase64,
    smallBase64: jpegBase64,
    folderName: null,
    by,
  });
  const pinned = async () => (await call('jobs.listFindings', { jobId }))[0]?.photoIds;
  await call('jobs.pinPhoto', { findingId, photoId, isPinned: true, by });
  expect(await pinned()).toEqual([photoId]);
  await call('jobs.pinPhoto', { findingId, photoId, isPinned: false, by });
  expect(await pinned()).toEqual([]);
  await call('jobs.pinPhoto', { findingId, photoId, isPinned: true, by });
  const told = (await call('jobs.getHistory', { jobId })).map(({ says }) => says);
  expect(told.filter((says) => says.includes(': photo'))).toEqual([
    'pump bushing: photo pinned',
    'pump bushing: photo taken off',
    'pump bushing: photo pinned',
  ]);
  await call('photos.removePhoto', { photoId, by });
  expect(await pinned()).toEqual([]);
  expect(await refusal('jobs.pinPhoto', { findingId, photoId, isPinned: true, by })).toMatchObject({
    code: 'not-found',
  });
});

test('a part to be replaced is charged once, also by the line that replaced its first', async () => {
  const { call, jobId, write, by } = await shopAtTeardown();
  const findingId = await write({}, 'replace');
  const isCharged = async () => (await call('jobs.listFindings', { jobId }))[0]?.isCharged;
  const line = {
    kind: 'part',
    description: 'pump bushing',
    quantity: '1',
    unitPrice: '9.50',
    unitCost: '',
    isTaxable: true,
    batchId: null,
  };
  expect(await isCharged()).toBe(false);
  const { lineId } = await call('jobs.addLine', { jobId, line, by });
  await call('jobs.chargeFinding', { findingId, lineId, by });
  expect(await isCharged()).toBe(true);
  const dearer = await call('jobs.replaceLine', { lineId, line: { ...line, unitPrice: '11' }, reason: '', by });
  expect(await isCharged()).toBe(true);
  await call('jobs.takeLineOff', { lineId: dearer.lineId, reason: '', by });
  expect(await isCharged()).toBe(false);
});

test('a job is found by the part and the note of a finding', async () => {
  const { call, jobId, write } = await shopAtTeardown();
  await write({ part: 'planet carrier', note: 'two pinions walked' });
  for (const text of ['net carr', 'pinions'])
    expect((await call('jobs.listJobs', { text, includeClosed: true })).map((each) => each.jobId)).toEqual([jobId]);
});

test('of a bore and a shaft both numbers are kept beside what was typed', async () => {
  const { call, jobId, sheet, job } = await shopAtTeardown();
  await readCheck(job, 'Stator bushing', 'as found', ['1.5025-1.5000']);
  const { checkId } = checkNamed(sheet, 'Stator bushing');
  const take = await call('readings.latestTake', { jobId, checkId });
  // Whole nanometres: 1.5025 in × 25 400 000 = 38 163 500; 1.5000 in = 38 100 000; 2.5 thou = 63 500.
  expect(take?.readings).toMatchObject([
    { typed: '1.5025-1.5000', first: 38_163_500, second: 38_100_000, value: 63_500 },
  ]);
  expect(take?.evaluation.verdict.word).toBe('in');
});

test('the customer reads what was found in plain words, the shop in full', async () => {
  const { call, jobId, write, forward, frictions } = await shopAtTeardown();
  const found = { part: 'friction 2', packId: forward, slotId: frictions[1]?.slotId, condition: 'glazed' };
  await write({ ...found, thickness: '71.5', note: 'cheap lining' }, 'replace');
  const printed = async (copy: 'shop' | 'customer') => {
    const { pdfBase64 } = await call('jobs.printBuildReport', { jobId, copy });
    return (await readPdf(Buffer.from(pdfBase64, 'base64'))).text;
  };
  const customers = await printed('customer');
  for (const words of ['Found at teardown', 'Forward friction 2', 'polished smooth by slipping', 'replaced'])
    expect(customers).toContain(words);
  expect(customers).not.toContain('cheap lining');
  const shops = await printed('shop');
  for (const words of ['cheap lining', 'glazed, 71.5 of 80.0 thou left', 'to be replaced'])
    expect(shops).toContain(words);
});
