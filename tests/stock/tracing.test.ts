import { describe, expect, test } from 'vitest';
import { measureAsFound } from '../../main/shop/demo/kx3-as-found.ts';
import { buildKx3 } from '../../main/shop/demo/kx3-build.ts';
import { openJob } from '../../main/shop/demo/kx3-job.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { shopWithParts } from './shop-with-parts.ts';

/** The shop with parts and the example unit measured, built and read. */
async function shopWithBuiltUnit() {
  const shop = await shopWithParts();
  await layOutLooseSteels(shop.call, shop.by);
  const built = await openJob(shop.call, shop.familyId, shop.by);
  await measureAsFound(built);
  await buildKx3(
    built,
    () => {},
    async (method, input) => (await shop.refusal(method, input)).kind,
  );
  const units = async (of: object) => (await shop.call('stock.trace', { of })).units;
  return { ...shop, builtId: built.jobId, units };
}

describe('from a batch, a kit or a plate to every unit it went into, in one step', () => {
  test('a batch names the units it was pulled for, with the readings of their packs', async () => {
    const { call, units, frictionId, builtId, jobId, by, receive } = await shopWithBuiltUnit();
    const batchId = await receive(frictionId, 20, 'B-7');
    const other = await receive(frictionId, 20, 'B-8');
    await call('stock.pullForJob', { jobId: builtId, partId: frictionId, batchId, quantity: 4, by });
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId: other, quantity: 4, by });
    const [unit, ...more] = await units({ kind: 'batch', batchId });
    expect(more).toEqual([]);
    expect(unit).toMatchObject({
      jobId: builtId,
      what: ['4 × KX3-FR-080, B-7'],
      isStillIn: true,
      isClosed: false,
    });
    // The example unit's finals: Forward 26.0, Direct 45.0, Low/reverse 60.0 thou, all in.
    expect(unit?.clearances.map(({ packName, mean_nm, verdict }) => [packName, mean_nm, verdict.word])).toEqual([
      ['Forward', 26 * 25_400, 'in'],
      ['Direct', 45 * 25_400, 'in'],
      ['Low/reverse', 60 * 25_400, 'in'],
    ]);
    expect(await units({ kind: 'part', partId: frictionId })).toHaveLength(2);
  });

  test('what came back to the shelf whole leaves no trace in the unit', async () => {
    const { call, units, frictionId, jobId, by, receive } = await shopWithBuiltUnit();
    const batchId = await receive(frictionId, 20, 'B-7');
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId, quantity: 4, by });
    await call('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 4, by });
    expect(await units({ kind: 'batch', batchId })).toEqual([]);
  });

  test('a kit reaches the units that had it whole and those that had a part out of it, and the part finds its kit', async () => {
    const { call, units, kitId, sealId, builtId, jobId, by, receive } = await shopWithBuiltUnit();
    const kitBatch = await receive(kitId, 2, '', '2026-11-02', 'Brightwater 8841');
    await call('stock.pullForJob', { jobId: builtId, partId: kitId, batchId: kitBatch, quantity: 1, by });
    const { batches } = await call('stock.openKit', { batchId: kitBatch, quantity: 1, by });
    const sealBatch = batches.find((batch) => batch.partId === sealId)?.batchId ?? 0;
    await call('stock.pullForJob', { jobId, partId: sealId, batchId: sealBatch, quantity: 1, by });
    expect((await units({ kind: 'batch', batchId: kitBatch })).map((unit) => unit.jobId).toSorted()).toEqual([
      jobId,
      builtId,
    ]);
    expect((await units({ kind: 'part', partId: sealId })).map((unit) => unit.jobId).toSorted()).toEqual([
      jobId,
      builtId,
    ]);
    const seal = await call('stock.trace', { of: { kind: 'batch', batchId: sealBatch } });
    expect(seal.units.map((unit) => unit.jobId)).toEqual([jobId]);
    expect(seal.from).toContainEqual({
      of: { kind: 'batch', batchId: kitBatch },
      says: 'out of kit KX3-KIT-M, Brightwater 8841',
    });
  });

  test('a plate says which pack and slot it sits in, and where it was taken out again', async () => {
    const { call, units, builtId } = await shopWithBuiltUnit();
    // Forward came out right by one swap: 76.5 (A32) left, 83.0 (A47) went in.
    const { pieces } = await call('stock.listLoose', { outline: 'KX3 forward' });
    const a32 = pieces.find((piece) => piece.tag === 'A32');
    expect(await units({ kind: 'plate', pieceId: a32?.pieceId })).toMatchObject([
      { jobId: builtId, isStillIn: false, what: ['A32: Forward, steel 2, taken out again'] },
    ]);
    const found = await call('stock.findCode', { code: 'A47' });
    expect(found).toMatchObject({ kind: 'plate', outline: 'KX3 forward' });
    const pieceId = found?.kind === 'plate' ? found.pieceId : 0;
    expect(await units({ kind: 'plate', pieceId })).toMatchObject([
      { jobId: builtId, isStillIn: true, what: ['A47: Forward, steel 2'] },
    ]);
  });

  test('plates out of a can lead to every unit that had one, and the trace says that they are not told apart', async () => {
    const { call, by, builtId } = await shopWithBuiltUnit();
    const { canId } = await call('stock.addCan', {
      kind: 'steel',
      outline: 'KX3 forward',
      typed: '78.0',
      count: 3,
      by,
    });
    const sheet = await call('jobs.getJob', { jobId: builtId });
    const packId = sheet.packs.find((pack) => pack.name === 'Forward')?.packId;
    const pack = await call('packs.getPack', { jobId: builtId, packId });
    const slotId = pack.slots.find((slot) => slot.kind === 'steel')?.slotId;
    await call('packs.recordMockUp', { jobId: builtId, packId, pieces: [{ slotId, from: { canId } }], note: '', by });
    const traced = await call('stock.trace', { of: { kind: 'can', canId } });
    expect(traced).toMatchObject({ onHand: 2, units: [{ jobId: builtId, what: ['Forward, steel 1'] }] });
    expect(traced.caution).toContain('not told apart');
  });
});

describe('a scanned code goes straight to what it means', () => {
  test('labels, part numbers in any letters and tags are understood; anything else is nothing', async () => {
    const { call, by, frictionId, jobId, receive } = await shopWithBuiltUnit();
    const batchId = await receive(frictionId, 1, 'B-7');
    const find = (code: string) => call('stock.findCode', { code });
    expect(await find(`thou-b${batchId} `)).toEqual({ kind: 'batch', batchId, partId: frictionId });
    expect(await find(`THOU-J${jobId}`)).toEqual({ kind: 'job', jobId });
    const gauge = { gaugeId: null, kind: 'dial lever', tag: 'Lever 9', unit: 'thou', resolution: '0.5', by };
    const blank = { permittedError: '', statedIn: '', offSquareDegrees: 0, serial: '', intervalDays: null };
    const { gaugeId } = await call('gauges.saveGauge', { ...gauge, ...blank });
    expect(await find(`THOU-G${gaugeId}`)).toEqual({ kind: 'gauge', gaugeId });
    const place = { kind: 'gauge', gaugeId };
    expect(await call('shop.findAnything', { text: `thou-g${gaugeId}` })).toMatchObject([
      { noun: 'code', found: [{ place }] },
    ]);
    expect(await call('shop.findAnything', { text: 'lever 9' })).toMatchObject([
      { noun: 'gauge', found: [{ place, title: 'Lever 9' }] },
    ]);
    expect(await find('kx3-fr-080')).toEqual({ kind: 'part', partId: frictionId });
    for (const nothing of ['', 'THOU-B9999', 'THOU-G9999', 'THOU-J9999', 'no such thing', '%'])
      expect(await find(nothing)).toBeNull();
  });
});
