// The open packs of the example unit KX3 planned at once; expected numbers are its hand arithmetic.
import { expect, test } from 'vitest';
import { layOutLooseSteels, measureAsFound, openJob } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';

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
