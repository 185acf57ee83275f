// A comeback from the day it is logged to its causes; every figure here is reckoned by hand on a calendar.
import { expect, test } from 'vitest';
import { shopThatDelivered } from './shop-that-delivered.ts';

test('a comeback opens its own ticket for the same unit and customer, and says how long the build ran', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', miles: 80_000, serial: 'A-17' });
  const back = await shop.comesBack(built.jobId, '2025-06-18', { odometer: 91_400 });

  const comeback = await shop.call('comebacks.getComeback', { comebackId: back.comebackId });
  // 21 days left of March, 30 of April, 31 of May, 18 of June.
  expect(comeback.service).toEqual({
    from: '2025-03-10',
    isAssumed: false,
    days: 21 + 30 + 31 + 18,
    used: { amount: 11_400, unit: 'miles' },
  });
  expect(comeback.card).toMatchObject({ outcome: 'not known yet', covered: 'not decided yet', cost_cents: null });
  const ticket = await shop.call('jobs.getJob', { jobId: back.jobId });
  const build = await shop.call('jobs.getJob', { jobId: built.jobId });
  expect(ticket.unit.unitId).toBe(build.unit.unitId);
  expect(ticket.customer.customerId).toBe(build.customer.customerId);
  expect(ticket.distance).toEqual({ amount: 91_400, unit: 'miles' });
  expect(await shop.call('comebacks.listOfJob', { jobId: built.jobId })).toMatchObject({
    heldAgainst: null,
    cameBack: [{ jobId: back.jobId, cameBackOn: '2025-06-18' }],
  });
  expect(await shop.call('comebacks.listOfJob', { jobId: back.jobId })).toMatchObject({
    heldAgainst: { jobId: built.jobId },
    cameBack: [],
  });
});

test('a build nobody said went into service counts from its delivery, and use without both ends is not known', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17', inServiceOn: null });
  const { comebackId } = await shop.comesBack(built.jobId, '2025-03-12', { odometer: 91_400 });
  const { service } = await shop.call('comebacks.getComeback', { comebackId });
  expect(service).toEqual({ from: '2025-03-10', isAssumed: true, days: 2, used: null });
});

test('one search finds a delivered build by tag, serial, number, customer or the label on its case', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17', caseTag: 'RED 9' });
  await shop.build({ in: '2025-03-11', out: '2025-03-12', serial: 'B-22', customer: 'Oskar Lund' });
  await shop.takeIn({ in: '2025-03-13', serial: 'C-31', customer: 'Priya Nandi' });
  const found = async (text: string) =>
    (await shop.call('comebacks.findBuilds', { text })).map(({ unit }) => unit.serial);
  expect(await found('red 9')).toEqual(['A-17']);
  expect(await found('A-17')).toEqual(['A-17']);
  expect(await found(String(built.number))).toEqual(['A-17']);
  expect(await found(`THOU-J${built.jobId}`)).toEqual(['A-17']);
  expect(await found('Lund')).toEqual(['B-22']);
  // It is still here, so it cannot have come back.
  expect(await found('Priya')).toEqual([]);
  expect(await found('')).toEqual([]);
});

test('an open ticket of the unit is held against the build once, and of another unit never', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const other = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'B-22' });
  // At the door it was typed anew, so it is another row of the same family and serial.
  const ticket = await shop.takeIn({ in: '2025-05-02', serial: 'A-17' });
  const [known] = await shop.call('comebacks.findBuilds', { text: String(built.number) });
  expect(known?.openTickets).toMatchObject([{ jobId: ticket.jobId, complaint: 'Slips in third.' }]);

  const on = { ticket: { jobId: ticket.jobId } };
  const log = (builtJobId: number, more: object = {}) => ({
    builtJobId,
    ...on,
    cameBackOn: '2025-05-02',
    customerSays: '',
    distance: null,
    covered: 'in warranty',
    coveredNote: '',
    by: shop.by,
    ...more,
  });
  expect((await shop.refusal('comebacks.logComeback', log(other.jobId))).message).toBe(
    `Job ${ticket.number} is another unit than job ${other.number}: only its own build can have come back.`,
  );
  expect((await shop.refusal('comebacks.logComeback', log(ticket.jobId))).message).toContain('was not handed over');
  expect(await shop.refusal('comebacks.logComeback', log(built.jobId, { cameBackOn: '2025-03-09' }))).toMatchObject({
    code: 'too-early',
    field: 'cameBackOn',
  });
  expect(await shop.refusal('comebacks.logComeback', log(built.jobId, { cameBackOn: '2025-05-03' }))).toMatchObject({
    code: 'future',
  });
  await shop.call('comebacks.logComeback', log(built.jobId));
  expect(await shop.refusal('comebacks.logComeback', log(built.jobId))).toMatchObject({ code: 'held-already' });
});

test('a refused comeback leaves no ticket behind', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const before = await shop.call('jobs.listJobs', { text: '', includeClosed: true });
  await expect(shop.comesBack(built.jobId, '2025-05-02', { cameBackOn: '2025-03-09' })).rejects.toThrow(
    'cannot have come back before',
  );
  expect(await shop.call('jobs.listJobs', { text: '', includeClosed: true })).toHaveLength(before.length);
});

test('filling in what was not known needs no reason, changing what was known does, and both stay on record', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const { comebackId } = await shop.comesBack(built.jobId, '2025-05-02');
  await shop.decide(comebackId, { outcome: 'ours', covered: 'in warranty', cost: '1,250.5' });
  expect(await shop.refusal('comebacks.writeCard', await shop.changeCard(comebackId, {}))).toMatchObject({
    code: 'nothing-changed',
  });
  const cheaper = await shop.changeCard(comebackId, { cost: '900' });
  expect(await shop.refusal('comebacks.writeCard', cheaper)).toMatchObject({ code: 'reason', field: 'reason' });
  expect(await shop.refusal('comebacks.writeCard', { ...cheaper, cost: '9.001' })).toMatchObject({ field: 'cost' });
  await shop.call('comebacks.writeCard', { ...cheaper, reason: 'the core came back' });
  const { card, earlierCards } = await shop.call('comebacks.getComeback', { comebackId });
  expect([card, ...earlierCards].map((each) => [each.outcome, each.cost_cents, each.reason])).toEqual([
    ['ours', 900_00, 'the core came back'],
    ['ours', 1250_50, ''],
    ['not known yet', null, ''],
  ]);
});

test('what was logged by mistake counts nowhere, and its ticket may be held against another build', async () => {
  const shop = await shopThatDelivered();
  const first = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const second = await shop.build({ in: '2025-06-01', out: '2025-06-10', serial: 'A-17' });
  const wrong = await shop.comesBack(first.jobId, '2025-08-02');
  expect((await shop.refusal('jobs.takeBackDelivery', { jobId: first.jobId, reason: 'x', by: 1 })).message).toBe(
    `Job ${first.number} came back as job ${wrong.number}: if that was logged by mistake, say so there first.`,
  );
  await shop.decide(wrong.comebackId, { outcome: 'logged by mistake' });
  const right = await shop.comesBack(second.jobId, '2025-08-02', { ticket: { jobId: wrong.jobId } });
  expect(await shop.call('comebacks.listOfJob', { jobId: first.jobId })).toEqual({ heldAgainst: null, cameBack: [] });
  expect(await shop.call('comebacks.listOfJob', { jobId: wrong.jobId })).toMatchObject({
    heldAgainst: { comebackId: right.comebackId, jobId: second.jobId },
  });
  // It cannot be both.
  const again = await shop.changeCard(wrong.comebackId, { outcome: 'ours', reason: 'it was' });
  expect(await shop.refusal('comebacks.writeCard', again)).toMatchObject({ code: 'held-already' });
});

test('a cause in a pack of the build has one standing word; earlier words and those taken back stay on record', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const { comebackId } = await shop.comesBack(built.jobId, '2025-05-02');
  const { packs } = await shop.call('comebacks.getComeback', { comebackId });
  const forward = packs.find(({ name }) => name === 'Forward')?.packId ?? 0;
  const say = (cause: string, packId: number | null, certainty: string, note = '') => ({
    comebackId,
    cause,
    packId,
    certainty,
    note,
    by: shop.by,
  });
  await shop.call('comebacks.sayCause', say('too tight', forward, 'suspected'));
  await shop.call('comebacks.sayCause', say('material', null, 'not found'));
  await shop.call('comebacks.sayCause', say('too tight', forward, 'known', 'as found 14 thou'));
  await shop.call('comebacks.sayCause', say('too tight', null, 'suspected'));
  await shop.call('comebacks.takeBackCause', { comebackId, cause: 'too tight', packId: null, reason: 'twice', by: 1 });
  expect(await shop.refusal('comebacks.sayCause', say('too loose', 9999, 'known'))).toMatchObject({ field: 'packId' });
  expect(
    await shop.refusal('comebacks.takeBackCause', { comebackId, cause: 'converter', packId: null, reason: 'x', by: 1 }),
  ).toMatchObject({ code: 'not-said' });

  const { causes, earlierCauses } = await shop.call('comebacks.getComeback', { comebackId });
  expect(causes.map((each) => [each.cause, each.packName, each.certainty, each.note])).toEqual([
    ['too tight', 'Forward', 'known', 'as found 14 thou'],
    ['material', null, 'not found', ''],
  ]);
  expect(earlierCauses.map((each) => [each.cause, each.packName, each.certainty, each.note])).toEqual([
    ['too tight', null, 'taken back', 'twice'],
    ['too tight', null, 'suspected', ''],
    ['too tight', 'Forward', 'suspected', ''],
  ]);
  // On the list a cause that was looked for and not found is none.
  const [line] = await shop.call('comebacks.listComebacks', { only: 'all' });
  expect(line?.causes).toEqual(['too tight']);
});

test('the list is newest first and is narrowed to the undecided and to ours', async () => {
  const shop = await shopThatDelivered();
  const one = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const two = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'B-22' });
  const three = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'C-31' });
  const early = await shop.comesBack(one.jobId, '2025-05-02');
  const late = await shop.comesBack(two.jobId, '2025-07-02');
  const middle = await shop.comesBack(three.jobId, '2025-06-02');
  await shop.decide(early.comebackId, { outcome: 'ours' });
  await shop.decide(middle.comebackId, { outcome: 'no fault found' });
  const numbers = async (only: string) =>
    (await shop.call('comebacks.listComebacks', { only })).map(({ number }) => number);
  expect(await numbers('all')).toEqual([late.number, middle.number, early.number]);
  expect(await numbers('open')).toEqual([late.number]);
  expect(await numbers('ours')).toEqual([early.number]);
});

test('both histories tell of it, and what the customer said finds the ticket', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const back = await shop.comesBack(built.jobId, '2025-05-02', { customerSays: 'Whines like a kettle.' });
  await shop.decide(back.comebackId, { outcome: 'ours', covered: 'in warranty', cost: '85' });
  const { comebackId } = back;
  await shop.call('comebacks.sayCause', {
    comebackId,
    cause: 'converter',
    packId: null,
    certainty: 'known',
    note: '',
    by: 1,
  });
  const told = async (jobId: number) =>
    (await shop.call('jobs.getHistory', { jobId })).filter(({ kind }) => kind === 'comeback').map(({ says }) => says);
  expect(await told(built.jobId)).toEqual([
    `Came back on 2 May 2025 as job ${back.number}`,
    `Comeback as job ${back.number}: ours`,
  ]);
  expect(await told(back.jobId)).toEqual([
    `Logged as a comeback of job ${built.number}: back on 2 May 2025, outcome not known yet, cover not decided yet`,
    'Comeback: back on 2 May 2025, outcome ours, in warranty, cost 85.00',
    'Cause converter, whole unit: known',
  ]);
  const found = await shop.call('jobs.listJobs', { text: 'kettle', includeClosed: false });
  expect(found.map(({ jobId }) => jobId)).toEqual([back.jobId]);
});

test('the lines of the return ticket are offered as its cost, and what is recorded on it is counted', async () => {
  const shop = await shopThatDelivered();
  const built = await shop.build({ in: '2025-03-01', out: '2025-03-10', serial: 'A-17' });
  const { comebackId, jobId } = await shop.comesBack(built.jobId, '2025-05-02');
  const line = {
    kind: 'labour',
    description: 'Out and in',
    quantity: '2.5',
    unitPrice: '96',
    unitCost: '',
    isTaxable: true,
    batchId: null,
  };
  await shop.call('jobs.addLine', { jobId, line, by: 1 });
  const finding = {
    part: 'lip seal',
    packId: null,
    slotId: null,
    place: null,
    condition: 'leaking',
    checkId: null,
    note: '',
    thickness: '',
  };
  await shop.call('jobs.recordFinding', { jobId, finding, decision: 'replace', by: 1 });
  const comeback = await shop.call('comebacks.getComeback', { comebackId });
  expect(comeback.lines_cents).toBe(240_00);
  expect(comeback.recorded).toEqual({ asFoundChecks: 0, findings: 1, photos: 0 });
});
