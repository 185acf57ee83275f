// At the door: what was said and seen stays, earlier visits are found, promises and calls are written down.
import { expect, test } from 'vitest';
import { blankDiagnosis } from '../../app/jobs/door.contract.ts';
import { shopWithKx3 } from '../desk.ts';

const seen = {
  codes: 'P0733',
  fluidLevel: 'low',
  fluidColour: 'brown',
  fluidSmell: 'burnt',
  pan: 'fines, one brass curl',
  installedBy: 'another shop',
  vehicleChanges: 'larger tyres',
} as const;

async function shopWithJob() {
  const shop = await shopWithKx3();
  const checkIn = (unit: object, more: object = {}) =>
    shop.call('jobs.checkIn', {
      customer: { name: 'Tam Okoro', phone: '555 0117', email: '' },
      unit,
      complaint: 'Slips 2–3 when hot.',
      caseTag: 'T-1',
      distance: null,
      by: shop.by,
      ...more,
    });
  const unit = { familyId: shop.familyId, serial: 'KX3-19-2214', vehicle: 'half-ton pickup', use: 'tow' };
  const { jobId } = await checkIn(unit, { diagnosis: seen, promisedOn: '2026-11-27' });
  return { ...shop, checkIn, unit, jobId };
}

test('a correction stands in front of what was written first, which stays with its person', async () => {
  const { call, refusal, jobId, by } = await shopWithJob();
  const second = await call('shop.addPerson', { name: 'Noor Vey', initials: 'NV' });
  const card = { jobId, complaint: 'Slips 2–3 when cold.', diagnosis: { ...seen, fluidLevel: 'full' } };
  await call('jobs.correctIntake', { ...card, by: second.personId });
  expect(await call('jobs.listIntakes', { jobId })).toMatchObject([
    { complaint: 'Slips 2–3 when cold.', diagnosis: { fluidLevel: 'full' }, by: 'NV' },
    { complaint: 'Slips 2–3 when hot.', diagnosis: seen, by: 'RA' },
  ]);
  expect(await call('jobs.getJob', { jobId })).toMatchObject({ complaint: card.complaint, diagnosis: card.diagnosis });
  expect(await refusal('jobs.correctIntake', { ...card, by })).toMatchObject({ code: 'nothing-changed' });
});

test('what was not looked at says so', async () => {
  const { call, checkIn, unit } = await shopWithJob();
  const { jobId } = await checkIn(unit);
  expect((await call('jobs.getJob', { jobId })).diagnosis).toEqual(blankDiagnosis);
});

test('a unit that was here before shows its visits, by itself or by its serial in any case', async () => {
  const { call, checkIn, unit, jobId } = await shopWithJob();
  const { unitId } = (await call('jobs.getJob', { jobId })).unit;
  const again = await checkIn({ unitId });
  const typedAnew = await checkIn({ ...unit, serial: 'kx3-19-2214' });
  await checkIn({ ...unit, serial: '' });
  const numbers = async (input: object) => (await call('jobs.listVisits', input)).map(({ number }) => number);
  expect(await numbers({ unitId, serial: 'KX3-19-2214' })).toEqual([typedAnew.number, again.number, 1]);
  expect(await numbers({ unitId, serial: '' })).toEqual([again.number, 1]);
  expect(await numbers({ unitId: null, serial: 'Kx3-19-2214' })).toEqual([typedAnew.number, again.number, 1]);
  expect(await numbers({ unitId: null, serial: '2214' })).toEqual([]);
  expect(await numbers({ unitId: null, serial: '' })).toEqual([]);
});

test('another day is promised only with a reason, and both days stay', async () => {
  const { call, refusal, jobId, by } = await shopWithJob();
  expect(await refusal('jobs.promiseDay', { jobId, on: '2026-12-01', reason: '', by })).toMatchObject({
    field: 'reason',
  });
  expect(await refusal('jobs.promiseDay', { jobId, on: '2026-11-27', reason: 'x', by })).toMatchObject({ field: 'on' });
  expect((await refusal('jobs.promiseDay', { jobId, on: '2026-02-29', reason: 'x', by })).kind).toBe('refusal');
  await call('jobs.promiseDay', { jobId, on: '2028-02-29', reason: 'ring on back order', by });
  expect(await call('jobs.listPromises', { jobId })).toMatchObject([
    { on: '2028-02-29', reason: 'ring on back order', by: 'RA' },
    { on: '2026-11-27', reason: '', by: 'RA' },
  ]);
  const [line] = await call('jobs.listJobs', { text: '', includeClosed: false });
  expect(line).toMatchObject({ promisedOn: '2028-02-29', enteredBy: 'RA' });
});

test('calls stand newest first', async () => {
  const { call, jobId, by } = await shopWithJob();
  await call('jobs.logCall', { jobId, direction: 'we called', withWhom: 'Tam Okoro', said: 'Ring is late.', by });
  await call('jobs.logCall', { jobId, direction: 'they called', withWhom: 'Mrs Okoro', said: 'Friday is fine.', by });
  expect((await call('jobs.listCalls', { jobId })).map(({ said }) => said)).toEqual([
    'Friday is fine.',
    'Ring is late.',
  ]);
});

test('a job is found by a fragment of anything written down of it', async () => {
  const { call, jobId, by, familyId, checkIn, unit } = await shopWithJob();
  const customer = { name: 'Ilse Brandt-Okoro', phone: '555 9144', email: '' };
  const other = await checkIn(
    { ...unit, serial: 'KX3-20-0417' },
    { customer, complaint: 'Late into third.', caseTag: '77' },
  );
  await call('jobs.logCall', {
    jobId,
    direction: 'we called',
    withWhom: 'Jonas Weißmüller',
    said: 'Approved the "ring".',
    by,
  });
  const { packs } = await call('specs.getRevision', { familyId });
  const [slot] = packs[0]?.slots.filter(({ kind }) => kind === 'steel') ?? [];
  const pieces = [{ slotId: slot?.slotId, from: { typed: '77.0', tag: 'QX41' } }];
  const others =
    packs[0]?.slots.filter(({ slotId, nominal_nm }) => nominal_nm === null && slotId !== slot?.slotId) ?? [];
  await call('packs.recordMockUp', {
    jobId,
    packId: packs[0]?.packId,
    pieces: [...pieces, ...others.map(({ slotId }) => ({ slotId, from: { typed: '80.0' } }))],
    note: 'ring groove worn',
    by,
  });
  const { partId } = await call('stock.savePart', {
    partId: null,
    number: 'ZR-8055',
    description: 'Ring',
    kind: 'snap ring',
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
  await call('stock.receiveBatch', {
    partId,
    quantity: 4,
    receivedOn: null,
    mark: 'LOT-19',
    document: '',
    unitCost: '',
    by,
  });
  await call('stock.pullForJob', { jobId, partId, batchId: null, quantity: 1, by });
  const found = async (text: string) =>
    (await call('jobs.listJobs', { text, includeClosed: true })).map((line) => line.jobId);
  for (const text of [
    'okoro',
    '2214',
    '0117',
    'slips',
    'LIPS 2',
    'P0733',
    'brass',
    'T-1',
    'weissm',
    'weißm',
    '"ring"',
    'qx41',
    'groove',
    'r-805',
    'lot-1',
    'slips qx41',
  ]) {
    expect([text, await found(text)]).toEqual([
      text,
      text === 'okoro' ? [other.jobId, jobId] : text === 'weissm' ? [] : [jobId],
    ]);
  }
  // Fewer than three letters, and letters that mean something to the database.
  expect(await found('77')).toEqual([other.jobId]);
  expect(await found('x4')).toEqual([jobId]);
  expect(await found('2–')).toEqual([jobId]);
  for (const text of ['%', '_', '"', "'", '* OR', 'NEAR(', '\\'])
    expect([text, await found(text)]).toEqual([text, text === '"' ? [jobId] : []]);
});
