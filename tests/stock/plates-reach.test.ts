import { describe, expect, test } from 'vitest';
import { openJob, readCheck } from '../../main/shop/demo/kx3-job.ts';
import { layOutLooseSteels } from '../../main/shop/demo/kx3-swaps.ts';
import { clean, found, outline, shopWithPlates, thou } from './plates-shop.ts';

/** Forward packs as the example unit's was found, 77.0 76.5 78.0 77.5, that read this many thou of air. */
async function shopThatRead(...clearances: number[]) {
  const shop = await shopWithPlates();
  const jobIds: number[] = [];
  for (const air of clearances) {
    const job = await openJob(shop.call, shop.familyId, shop.by);
    await readCheck(job, 'Forward clearance', 'as found', Array(4).fill(`5 ${air - 5}`));
    await shop.putIn(job.jobId, found);
    jobIds.push(job.jobId);
  }
  const reach = () => shop.call('stock.getReach', { packId: shop.packId });
  return { ...shop, jobIds, reach };
}

describe('what the plates at hand can do for a pack', () => {
  test('the example unit: at 32.0 one swap of its loose steels does it', async () => {
    const { call, reach, jobIds, by } = await shopThatRead(32);
    await layOutLooseSteels(call, by);
    expect(await reach()).toMatchObject({
      packName: 'Forward',
      familyName: 'KX3',
      outline,
      lower_nm: thou(20),
      upper_nm: thou(30),
      fitted_nm: [77, 76.5, 78, 77.5].map(thou),
      fittedFrom: 'the last unit',
      // A 74.0 for the 78.0 opens it by 4.0, an 83.0 for the 76.5 closes it by 6.5; every step between is to be had.
      reach: [{ from_nm: thou(16), to_nm: thou(36.5) }],
      packs: [{ jobId: jobIds[0], clearance_nm: thou(32), swaps: 1, asks_nm: null }],
      covered: 1,
      buy: [],
      sentence: 'The last pack was in the band, or one swap from it with what is at hand today.',
    });
  });

  test('packs out of reach ask for heights, and one to buy is named that does for both', async () => {
    const { call, reach, by } = await shopThatRead(32, 38, 39);
    await layOutLooseSteels(call, by);
    const answer = await reach();
    // In place of the 76.5, to the middle of the band: 39 + 76.5 − 25 and 38 + 76.5 − 25. Newest first.
    expect(answer.packs.map((pack) => [pack.swaps, pack.asks_nm])).toEqual([
      [null, thou(90.5)],
      [null, thou(89.5)],
      [1, null],
    ]);
    // From 85.5 on both are in; of those for sale that help at all, 84.5 to 93.0, the middle is 88.75.
    expect(answer.buy).toEqual([{ heights_nm: [thou(88.5)], covers: 2 }]);
    expect(answer.sentence).toBe('Two of the last 3 packs asked for more than 83.0: 88.5 would do for both.');
  });

  test('a tight pack asks for less, and what no plate does is said', async () => {
    const { single, reach } = await shopThatRead(12);
    await single('74.0');
    const answer = await reach();
    // In place of the 78.0: 12 + 78 − 20 = 70.0 at most, 12 + 78 − 25 = 65.0 for the middle; for sale from 64.0 on.
    expect(answer.packs).toMatchObject([{ swaps: null, asks_nm: thou(65) }]);
    expect(answer.sentence).toBe('The last pack asked for less than 74.0: 67.0 would do.');
    const far = await shopThatRead(60);
    await far.single('83.0');
    expect((await far.reach()).sentence).toBe(
      'The last pack asked for more than 83.0: no plate that could be bought would do.',
    );
  });

  test('a rejected plate does nothing, a can does while it holds one', async () => {
    const { call, single, intoCan, reach, by } = await shopThatRead(32);
    const pieceId = await single('83.0');
    expect((await reach()).covered).toBe(1);
    await call('stock.lookOverPlate', { ...clean, isConed: true, isUsable: false, offFlat: '', pieceId, by });
    expect((await reach()).covered).toBe(0);
    const { canId } = await intoCan('83.0');
    expect((await reach()).covered).toBe(1);
    await call('stock.countCan', { canId, count: 0, reason: 'counted', by });
    const answer = await reach();
    expect(answer.covered).toBe(0);
    expect(answer.sentence).toMatch(/^The last pack asked for a plate, and none is at hand: \d\d\.\d would do\.$/);
  });

  test('nothing read yet, and a pack of a newer sheet that remembers what the older ones read', async () => {
    const fresh = await shopThatRead();
    expect(await fresh.reach()).toMatchObject({
      fittedFrom: 'nothing',
      reach: [],
      packs: [],
      sentence: 'No Forward of a KX3 was read yet, and no heights of its plates are known.',
    });
    const { call, familyId, by } = await shopThatRead(32);
    const { packs, checks } = await call('specs.getRevision', { familyId });
    const sheet = {
      packs: packs.map(({ packId: _, slots, ...pack }) => ({
        ...pack,
        slots: slots.map(({ slotId: __, ...slot }) => slot),
      })),
      checks: checks.map(({ checkId: _, packId: __, ...check }) => check),
    };
    await call('specs.saveSheet', { familyId, sheet, sourceNote: 'second printing', by });
    const newer = await call('specs.getRevision', { familyId });
    const packId = newer.packs.find((pack) => pack.name === 'Forward')?.packId;
    expect(await call('stock.getReach', { packId })).toMatchObject({
      fittedFrom: 'the last unit',
      packs: [{ swaps: null }],
    });
  });
});
