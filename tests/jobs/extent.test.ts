// A small job shows, asks for and goes through only what it takes; it can grow to the whole rebuild and never shrink.
import { expect, test } from 'vitest';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';

async function shopWithReseal() {
  const shop = await shopWithKx3();
  const { call, familyId, by } = shop;
  const stages = await call('jobs.listStages', {});
  const idOf = (name: string) => stages.find((stage) => stage.name === name)?.stageId;
  const reseal = {
    familyId,
    smallJobId: null,
    name: 'Reseal',
    stageIds: [idOf('Build'), idOf('Final check'), idOf('Ready'), idOf('Picked up')],
    checkNames: ['Front end play', 'Pan'],
    listNames: [],
    by,
  };
  const { checks } = await call('specs.getRevision', { familyId });
  const checkIdOf = (name: string) => checks.find((check) => check.name === name)?.checkId;
  const { smallJobId } = await call('specs.saveSmallJob', reseal);
  const checkIn = (chosen: number | null) =>
    call('jobs.checkIn', {
      customer: { name: 'Tam Okoro', phone: '', email: '' },
      unit: { familyId, serial: 'KX3-19-2214', vehicle: '', use: 'tow' },
      complaint: 'Leaks at the front.',
      caseTag: '',
      distance: null,
      smallJobId: chosen,
      by,
    });
  return { ...shop, idOf, checkIdOf, reseal, smallJobId, checkIn };
}

test('the ticket has its checks, stages and packs and no others, and its gates ask for no others', async () => {
  const { call, refusal, idOf, checkIdOf, smallJobId, checkIn, by } = await shopWithReseal();
  const { jobId } = await checkIn(smallJobId);
  const job = await call('jobs.getJob', { jobId });
  expect(job.extent).toEqual({ name: 'Reseal', widened: null });
  expect(job.checks.map(({ name }) => name)).toEqual(['Front end play', 'Pan']);
  expect(job.packs).toEqual([]);
  expect(job.stages.map(({ name }) => name)).toEqual([
    'Checked in',
    'Build',
    'Final check',
    'Ready',
    'Picked up',
    'Closed',
  ]);
  expect(job.missing).toHaveLength(2);
  expect(await call('jobs.listMissing', { jobIds: [jobId] })).toMatchObject([{ nextStageId: idOf('Build') }]);
  expect((await refusal('jobs.moveToStage', { jobId, stageId: idOf('Teardown'), by })).message).toBe(
    'Job 1 does not go through Teardown.',
  );
  // Past As found, Teardown and Waiting, which ask for what a reseal never has.
  await call('jobs.moveToStage', { jobId, stageId: idOf('Build'), by });
  const start = { jobId, phase: 'final', mode: 'final', setup: null, note: '', by };
  expect((await refusal('readings.startTake', { ...start, checkId: checkIdOf('Rear end play') })).message).toBe(
    'Job 1 does not take Rear end play: make it the whole rebuild first.',
  );
  await call('readings.startTake', { ...start, checkId: checkIdOf('Front end play') });
  expect(await call('jobs.listJobs', { text: '', includeClosed: false })).toMatchObject([{ extentName: 'Reseal' }]);
});

test('it grows to the whole rebuild with a reason, once, and the history says so', async () => {
  const { call, refusal, checkIdOf, smallJobId, checkIn, by } = await shopWithReseal();
  const { jobId } = await checkIn(smallJobId);
  expect(await refusal('jobs.widenJob', { jobId, reason: ' ', by })).toMatchObject({ field: 'reason' });
  const reason = 'brass in the pan';
  await call('jobs.widenJob', { jobId, reason, by });
  const job = await call('jobs.getJob', { jobId });
  expect(job.extent).toMatchObject({ name: 'Reseal', widened: { reason, by: 'RA' } });
  expect(job.stages).toHaveLength(9);
  expect(job.packs).toHaveLength(3);
  expect(job.checks.some(({ checkId }) => checkId === checkIdOf('Forward clearance'))).toBe(true);
  expect(await call('jobs.listJobs', { text: '', includeClosed: false })).toMatchObject([{ extentName: '' }]);
  expect(await call('jobs.getHistory', { jobId })).toContainEqual(
    expect.objectContaining({ says: 'No longer a Reseal: the whole rebuild', more: reason }),
  );
  expect((await refusal('jobs.widenJob', { jobId, reason, by })).message).toBe('Job 1 is the whole rebuild already.');
  const whole = await checkIn(null);
  expect((await call('jobs.getJob', { jobId: whole.jobId })).extent).toBeNull();
  expect((await refusal('jobs.widenJob', { jobId: whole.jobId, reason, by })).message).toContain('already');
});

test('a small job changed or dropped later does not reach back to a job, and lives on over revisions', async () => {
  const { call, refusal, familyId, reseal, smallJobId, checkIn, by } = await shopWithReseal();
  const { jobId } = await checkIn(smallJobId);
  const names = async () => (await call('jobs.getJob', { jobId })).checks.map(({ name }) => name);
  await call('specs.saveSmallJob', { ...reseal, smallJobId, name: 'Front reseal', checkNames: ['Rear end play'] });
  expect(await names()).toEqual(['Front end play', 'Pan']);
  const sheet = { ...kx3Sheet, checks: kx3Sheet.checks.filter(({ name }) => name !== 'Rear end play') };
  expect((await call('specs.saveSheet', { familyId, sheet, sourceNote: '', by })).number).toBe(2);
  const [kept] = await call('specs.listSmallJobs', { familyId });
  expect(kept).toMatchObject({ smallJobId, name: 'Front reseal', checkNames: ['Rear end play'] });
  // What the newest sheet has no more is said when it is saved again.
  expect((await refusal('specs.saveSmallJob', { ...reseal, smallJobId, checkNames: ['Rear end play'] })).message).toBe(
    'Rear end play is not on the sheet any more: take it out.',
  );
  await call('specs.dropSmallJob', { smallJobId, by });
  expect(await call('specs.listSmallJobs', { familyId })).toEqual([]);
  expect(await names()).toEqual(['Front end play', 'Pan']);
});

test('what cannot be a small job is refused in place', async () => {
  const { call, refusal, reseal, smallJobId, checkIn, by } = await shopWithReseal();
  expect(await refusal('specs.saveSmallJob', { ...reseal, name: 'RESEAL' })).toMatchObject({ field: 'name' });
  expect(await refusal('specs.saveSmallJob', { ...reseal, name: 'Look', checkNames: [] })).toMatchObject({
    code: 'nothing-taken',
  });
  const { familyId } = await call('specs.addFamily', { name: 'KX4', by });
  expect((await refusal('specs.saveSmallJob', { ...reseal, familyId, smallJobId })).message).toContain(
    'not on the sheet',
  );
  expect((await checkIn(null)).number).toBe(1);
  expect(
    (
      await refusal('jobs.checkIn', {
        customer: { name: 'Tam Okoro', phone: '', email: '' },
        unit: { familyId, serial: '', vehicle: '', use: 'tow' },
        complaint: '',
        caseTag: '',
        distance: null,
        smallJobId,
        by,
      })
    ).message,
  ).toBe('Reseal belongs to another family of units.');
});
