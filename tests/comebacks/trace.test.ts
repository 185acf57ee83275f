// The trace of one comeback over a real file: builds made and delivered through the contract, one of them odd.
import { expect, test } from 'vitest';
import { bySubject } from '../../app/comebacks/by-subject.ts';
import { readCheck } from '../../main/shop/demo/kx3-job.ts';
import { readPdf } from '../papers/read-pdf.ts';
import { blankPart } from '../stock/shop-with-parts.ts';
import { shopThatDelivered } from './shop-that-delivered.ts';

/** Lines of four spots that mean `total` thou: pushed down 4, then air. */
const spots = (total: number) => [-1, 0, 1, 0].map((more) => `4 ${total - 4 + more}`);

type Odd = { readonly forward?: number; readonly frictions?: number; readonly setup?: 'dry' };

async function shopOfBuilds(count: number, oddOnes: Readonly<Record<number, Odd>> = {}) {
  const shop = await shopThatDelivered();
  const { call, by, familyId } = shop;
  const sheet = await call('specs.getRevision', { familyId });
  const { partId } = await call('stock.savePart', { ...blankPart, number: 'KX3-FR-080', description: 'Friction', by });
  const received = { partId, quantity: 200, receivedOn: null, document: '', unitCost: '', by };
  const { batchId } = await call('stock.receiveBatch', { ...received, mark: 'L5' });
  const jobs: Array<{ jobId: number; number: number }> = [];
  for (let index = 0; index < count; index++) {
    const odd = oddOnes[index] ?? {};
    const day = `2025-02-${String(index + 1).padStart(2, '0')}`;
    const leaving = { in: day, out: day, serial: `A-${index}` };
    const job = await shop.takeIn(leaving);
    const at = { call, jobId: job.jobId, sheet, by };
    const plates = odd.setup === 'dry' ? ({ plates: 'dry' } as const) : {};
    await readCheck(at, 'Forward clearance', 'final', spots(odd.forward ?? 25 + (index % 3)), { setup: plates });
    await readCheck(at, 'Port A, Forward', 'final', [String(3 + (index % 2))]);
    const list = sheet.lists.find(({ name }) => name === 'Forward before the snap ring')!;
    const frictions = { jobId: job.jobId, lineId: list.lines[0]!.lineId, by, reason: 'as it goes' };
    await call('jobs.answerLine', { ...frictions, answer: { kind: 'counted', count: odd.frictions ?? 4 } });
    if (index < 3) {
      await call('stock.pullForJob', { partId, batchId, jobId: job.jobId, quantity: 4, isSure: true, by });
    }
    await shop.deliver(job, leaving);
    jobs.push(job);
  }
  return { ...shop, sheet, jobs, partId, batchId };
}

test('a tight pack comes first, opens its take, and speaks for too tight', async () => {
  const shop = await shopOfBuilds(12, { 5: { forward: 21, setup: 'dry' } });
  const odd = shop.jobs[5]!;
  const { comebackId, jobId } = await shop.comesBack(odd.jobId, '2025-06-18');
  const { call, sheet, by } = shop;
  await readCheck({ call, jobId, sheet, by }, 'Forward clearance', 'as found', spots(36));
  await call('jobs.recordFinding', {
    jobId,
    finding: {
      part: 'friction 2',
      packId: sheet.packs[0]!.packId,
      slotId: sheet.packs[0]!.slots[3]!.slotId,
      place: null,
      condition: 'burnt',
      checkId: null,
      note: '',
      thickness: '71.0',
    },
    decision: 'replace',
    by,
  });
  await call('comebacks.sayCause', {
    comebackId,
    cause: 'too tight',
    packId: null,
    certainty: 'suspected',
    note: '',
    by,
  });
  const trace = await call('comebacks.trace', { comebackId });

  expect(trace).toMatchObject({ siblings: 11, areNearest: false, builtJobId: odd.jobId, returnJobId: jobId });
  const [first] = bySubject(trace.findings).map(({ lead }) => lead);
  expect(first?.sentence).toBe('Forward clearance 21.0 thou: tighter than all 11 builds.');
  expect(first?.p).toBeCloseTo(2 / 12, 12);
  const opens = first?.opens;
  if (opens?.kind !== 'check' || opens.takeId === null) throw new Error('it opens no take');
  expect(await call('readings.getTake', { takeId: opens.takeId })).toMatchObject({
    jobId: odd.jobId,
    evaluation: { mean: 21 * 25_400 },
  });
  expect(trace.findings.map(({ sentence }) => sentence)).toContain(
    'Forward clearance was read with dry plates; 11 of 11 with soaked plates.',
  );

  // 36 now, 21 then.
  expect(trace.asFound).toMatchObject([{ name: 'Forward clearance', difference: 15 * 25_400, says: 'more' }]);
  expect(trace.foundParts).toMatchObject([{ condition: 'burnt, 71.0 of 80.0 thou left', gone: '9.0 thou gone' }]);
  expect(trace.wear).toEqual([
    'Forward: 9.0 thou gone from the plate measured; its clearance is 15.0 thou more than built.',
  ]);
  const tight = trace.causes.find(({ cause }) => cause === 'too tight');
  expect(tight?.certainty).toBe('suspected');
  expect(tight?.speaksFor.map(({ sentence }) => sentence)).toEqual([
    'Forward clearance went out too close to call; so did 0 of 11 builds.',
    'Forward clearance was read with dry plates; 11 of 11 with soaked plates.',
    'Forward friction 2: burnt, 71.0 of 80.0 thou left.',
  ]);

  // It is read as found already, so only the setup is left to be settled.
  expect(trace.wouldSettle).toEqual([
    'Read Forward clearance at the same spots set up both ways: the pairs tell what the setup did to it.',
  ]);

  const printed = async (copy: 'shop' | 'customer') => {
    const { pdfBase64 } = await call('comebacks.printReport', { comebackId, copy, paper: 'A4' });
    return (await readPdf(Buffer.from(pdfBase64, 'base64'))).text.replace(/\s+/g, ' ');
  };
  const shopCopy = await printed('shop');
  for (const words of [
    'Forward clearance 21.0 thou: tighter than all 11 builds.',
    '15.0 more than built: more than the readings can explain.',
    'too tight, suspected',
    'Not read when it was built',
    'What would settle it',
    // One comeback is too few for a curve of the family.
    'Not enough yet: 1 of 8 comebacks needed.',
    'The build as recorded, job',
  ])
    expect(shopCopy).toContain(words);
  const customerCopy = await printed('customer');
  for (const words of ['Slips again.', 'Forward friction 2', 'to be replaced', 'not decided yet'])
    expect(customerCopy).toContain(words);
  // No figures, no causes, no names of who did what.
  expect(customerCopy).not.toMatch(/builds|thou|tight|RA|of 100/);
});

test('what is put right under a build is traced anew, and the return ticket is no sibling', async () => {
  const shop = await shopOfBuilds(9, { 4: { frictions: 3 } });
  const odd = shop.jobs[4]!;
  const { comebackId, jobId } = await shop.comesBack(odd.jobId, '2025-06-18');
  const trace = () => shop.call('comebacks.trace', { comebackId });
  const before = await trace();
  expect(before.siblings).toBe(8);
  expect(before.findings.map(({ sentence }) => sentence)).toContain(
    'Forward before the snap ring, Frictions: 3 in, 4 asked for, which is off, “as it goes”; so in 0 of 8 builds.',
  );
  const { checkId } = shop.sheet.checks.find(({ name }) => name === 'Port A, Forward')!;
  const take = await shop.call('readings.latestTake', { jobId: odd.jobId, checkId });
  const { readingId } = take!.readings[0]!;
  await shop.call('readings.supersedeReading', { readingId, typed: '9', reason: 'misread the pad', by: shop.by });
  expect((await trace()).findings.map(({ sentence }) => sentence)).toContain(
    'Port A, Forward 9.0 psi: more than all 8 builds.',
  );
  await shop.deliver({ jobId, number: 0 }, { in: '2025-06-18', out: '2025-06-20', serial: 'A-4' });
  expect((await trace()).siblings).toBe(8);
});

test('a batch counts over the other builds, by who came back', async () => {
  const shop = await shopOfBuilds(10);
  const [first, second] = [shop.jobs[0]!, shop.jobs[1]!];
  await shop.comesBack(second.jobId, '2025-05-02');
  const { comebackId } = await shop.comesBack(first.jobId, '2025-06-18');
  const { findings } = await shop.call('comebacks.trace', { comebackId });
  const batch = findings.find(({ kind }) => kind === 'batch');
  expect(batch).toMatchObject({
    sentence: 'KX3-FR-080, batch L5: 1 of 2 other builds with it came back, 0 of 7 without.',
    opens: { kind: 'batch', partId: shop.partId, batchId: shop.batchId },
  });
  // One came back of nine; it is one of the two with probability 2 / 9, and the other table is likelier.
  expect(batch?.p).toBeCloseTo(2 / 9, 12);
});

test('with too few builds nothing is ranked, and an unknown comeback is refused', async () => {
  const shop = await shopOfBuilds(3);
  const { comebackId } = await shop.comesBack(shop.jobs[1]!.jobId, '2025-06-18');
  const { findings, looks } = await shop.call('comebacks.trace', { comebackId });
  expect(findings.every(({ p }) => p === null)).toBe(true);
  expect(looks.sentence).toBe('Nothing is ranked yet: that takes 8 siblings.');
  expect(await shop.refusal('comebacks.trace', { comebackId: 99 })).toMatchObject({ code: 'not-found' });
});
