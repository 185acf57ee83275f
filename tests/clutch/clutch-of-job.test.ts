// The clutch of a pack on a job: its figures frozen with the sheet, what the vehicle asks stated and stated again.
import { expect, test } from 'vitest';
import { openConnection } from '../../main/database/connection.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';

const inch = 0.0254;

async function forwardOnJob() {
  const at = await shopWithKx3();
  const { jobId } = await at.call('jobs.checkIn', {
    customer: { name: 'Tam Okoro', phone: '', email: '' },
    unit: { familyId: at.familyId, serial: 'KX3-1', vehicle: '', use: 'tow' },
    complaint: '',
    caseTag: '',
    distance: null,
    by: 1,
  });
  const { packs } = await at.call('specs.getRevision', { familyId: at.familyId });
  const packId = packs.find(({ name }) => name === 'Forward')!.packId;
  const clutch = (of = packId) => at.call('clutch.getClutch', { jobId, packId: of });
  const state = (engineTorque: string, converterRatio: string, reason = '') => ({
    ...{ jobId, engineTorque, converterRatio, reason, by: 1 },
  });
  return { ...at, jobId, packs, packId, clutch, state };
}

test('before anything is read it goes by the target, and a pack without figures says what it waits for', async () => {
  const { clutch, packs } = await forwardOnJob();
  const forward = await clutch();
  expect(forward).toMatchObject({
    packName: 'Forward',
    surfaces: 8,
    isPressureOnCard: false,
    checkingPressure_Pa: 275_790,
    clearance: { today_nm: 635_000, from: 'the target', low_nm: 508_000, high_nm: 762_000 },
    load: null,
  });
  // example-unit: 12.566 in², 15.3 psi, 503 lbf, 311 net.
  const { area_m2, startingPressure_Pa, checkingForce_N, checkingNet_N } = forward.estimate.piston.known!;
  expect(area_m2 / inch ** 2).toBeCloseTo(12.566, 3);
  expect(startingPressure_Pa / 6894.757).toBeCloseTo(15.3, 1);
  expect(checkingForce_N / 4.448222).toBeCloseTo(503, 0);
  expect(checkingNet_N / 4.448222).toBeCloseTo(311, 0);
  const direct = await clutch(packs.find(({ name }) => name === 'Direct')!.packId);
  expect(direct.figures).toBeNull();
  expect(direct.estimate.piston).toMatchObject({
    known: null,
    missing: [expect.any(String), 'Piston, inside', 'Return springs, installed'],
  });
});

test('what the vehicle asks is typed with units, kept, stated again with a reason, and told in the history', async () => {
  const { call, refusal, clutch, state, jobId, desk } = await forwardOnJob();
  expect(await refusal('clutch.stateLoad', state('220 in', '1.9'))).toMatchObject({ field: 'engineTorque' });
  expect(await refusal('clutch.stateLoad', state('220', ''))).toMatchObject({ field: 'converterRatio' });
  expect(await refusal('clutch.stateLoad', state('0', '1'))).toMatchObject({ code: 'not-positive' });
  await call('clutch.stateLoad', state('298.28 N·m', '1.9'));
  expect(await clutch()).toMatchObject({ load: { engineTorque_mNm: 298_280, by: 'RA' } });
  expect(await refusal('clutch.stateLoad', state('240', '1.9'))).toMatchObject({ field: 'reason' });
  await call('clutch.stateLoad', state('240', '2', 'tuned since'));
  // 240 lb-ft = 325.396 N·m; asked 240 · 2 · 1 = 480 of the 466.78 it holds by wear: 0.9725.
  const { load, estimate } = await clutch();
  expect(load).toMatchObject({ engineTorque_mNm: 325_396, reason: 'tuned since' });
  expect(estimate.torque.known?.wearMargin).toBeCloseTo(0.9725, 4);
  const told = (await call('jobs.getHistory', { jobId })).filter(({ says }) => says.startsWith('Engine torque'));
  expect(told.map(({ says, more }) => [says, more])).toEqual([
    ['Engine torque 220 lb-ft, converter ratio 1.90', ''],
    ['Engine torque 240 lb-ft, converter ratio 2.00', 'tuned since'],
  ]);
  const connection = openConnection(desk.shop().file, 'write');
  expect(() => connection.exec('update clutch_loads set reason = 1')).toThrow('append-only: clutch_loads');
  connection.close();
});

test('a revision in use keeps its figures, and the next one takes others', async () => {
  const { call, familyId, desk, clutch } = await forwardOnJob();
  const packs = kx3Sheet.packs.map((pack) =>
    pack.clutch ? { ...pack, clutch: { ...pack.clutch, springs_mN: 0 } } : pack,
  );
  await call('specs.saveSheet', { familyId, sheet: { ...kx3Sheet, packs }, sourceNote: '', by: 1 });
  expect((await clutch()).figures).toEqual(kx3Sheet.packs[0]?.clutch);
  const next = await call('specs.getRevision', { familyId });
  expect(next.number).toBe(2);
  expect(next.packs[0]?.clutch?.springs_mN).toBe(0);
  // The second revision is used by no job: it is replaced, its figures with it.
  await call('specs.saveSheet', { familyId, sheet: kx3Sheet, sourceNote: '', by: 1 });
  expect((await call('specs.getRevision', { familyId })).packs[0]?.clutch).toEqual(kx3Sheet.packs[0]?.clutch);
  const connection = openConnection(desk.shop().file, 'write');
  expect(() => connection.exec('update clutch_figures set springs_mn = 1')).toThrow('frozen: clutch_figures');
  expect(() => connection.exec('delete from clutch_figures')).toThrow('frozen: clutch_figures');
  connection.close();
});

test('a piston inside out is refused with the pack’s name, and no check is read in pounds', async () => {
  const { refusal, familyId } = await forwardOnJob();
  const [forward, ...others] = kx3Sheet.packs;
  const wrong = { ...forward!, clutch: { ...forward!.clutch!, pistonInside_nm: 200_000_000 } };
  const save = (sheet: typeof kx3Sheet) => ({ familyId, sheet, sourceNote: '', by: 1 });
  expect(await refusal('specs.saveSheet', save({ ...kx3Sheet, packs: [wrong, ...others] }))).toMatchObject({
    message: 'Forward, clutch: the piston must be larger outside than inside.',
  });
  const [check, ...checks] = kx3Sheet.checks;
  const pounds = { ...check!, method: 'direct' as const, quantity: 'force' as const, unit: 'lbf' };
  expect(await refusal('specs.saveSheet', save({ ...kx3Sheet, checks: [pounds, ...checks] }))).toMatchObject({
    message: `${check!.name}: no check is read in lbf.`,
  });
});
