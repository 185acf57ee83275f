// The open packs of the example unit KX3 planned at once; expected numbers are its hand arithmetic.
import { expect, test } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { openJob, packNamed } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { deskIn, shopWithKx3 } from '../desk.ts';

const thou = (length_nm: number | undefined) => Math.round((length_nm ?? Number.NaN) / 254) / 100;

test('one swap each for Forward and Direct, the thin steel in slot 2 or 3', async () => {
  const { call, familyId, by } = await shopWithKx3();
  await layOutLooseSteels(call, by);
  const job = await openJob(call, familyId, by);
  expect(await call('packs.planUnit', { jobId: job.jobId, objective: 'sum' })).toBeNull();
  await measureAsFound(job);
  const plan = await call('packs.planUnit', { jobId: job.jobId, objective: 'sum' });
  const swapsOf = (name: string) => {
    const option = plan?.packs.find((pack) => pack.name === name)?.inOrder.option;
    const into = option?.in.map(({ height_nm, slotName }) => ({ height: thou(height_nm), slotName }));
    return { out: option?.out.map(({ piece }) => thou(piece.height_nm)), into, reads: thou(option?.predicted_nm) };
  };
  expect(swapsOf('Forward')).toMatchObject({ out: [76.5], into: [{ height: 83 }], reads: 25.5 });
  const direct = swapsOf('Direct');
  expect(direct).toMatchObject({ out: [91], into: [{ height: 84 }], reads: 45 });
  expect(['steel 2', 'steel 3']).toContain(direct.into?.[0]?.slotName);
  // Their outlines differ, so there is nothing to share out.
  expect([plan?.sharing, plan?.gain]).toEqual([[], null]);
});

test('a plate goes from one pack into another in the order the plan says, and in no other', async () => {
  const at = await deskIn();
  await at.call('shop.createShop', {
    shopName: 'Harrow Lane Transmission',
    lengthUnit: 'thou',
    paper: 'letter',
    personName: 'Rosa Aldane',
    personInitials: 'RA',
  });
  const { familyId } = await at.call('specs.addFamily', { name: 'KX3', by: 1 });
  const oneOutline = (slot: { kind: string; outline: string }) =>
    slot.kind === 'steel' ? { ...slot, outline: 'KX3 forward' } : slot;
  const packs = kx3Sheet.packs.map((pack) => ({ ...pack, slots: pack.slots.map(oneOutline) }));
  await at.call('specs.saveSheet', { familyId, sheet: { ...kx3Sheet, packs }, sourceNote: '', by: 1 });
  const job = await openJob(at.call, familyId, 1);
  await measureAsFound(job);
  const into = async (name: string, slotOf: number, from: object) => {
    const pack = packNamed(job.sheet, name);
    const { slotId } = pack.slots.filter(({ kind }) => kind === 'steel')[slotOf]!;
    return { jobId: job.jobId, packId: pack.packId, pieces: [{ slotId, from }], note: '', by: 1 };
  };
  const direct = await at.call('packs.getPack', { jobId: job.jobId, packId: packNamed(job.sheet, 'Direct').packId });
  const b12 = direct.mockUps[0]!.pieces.find(({ piece }) => piece.tag === 'B12')!.piece;
  const taking = await into('Forward', 1, { pieceId: b12.pieceId });
  expect((await at.refusal('packs.recordMockUp', taking)).message).toContain('a plate cannot be in two packs');
  await at.call('packs.recordMockUp', await into('Direct', 1, { typed: '84.0', tag: 'B21' }));
  expect(await at.call('packs.recordMockUp', taking)).toMatchObject({ number: 1 });
});
