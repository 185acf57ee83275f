import { describe, expect, test } from 'vitest';
import { blankPart, shopWithParts } from './shop-with-parts.ts';

describe('what is on hand is what came in less what went out', () => {
  test('a batch received, pulled, returned, scrapped and counted adds up, and every step stays on record', async () => {
    const { call, frictionId, receive, jobId, by } = await shopWithParts();
    const batchId = await receive(frictionId, 12, 'B-7');
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId, quantity: 5, by });
    await call('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 1, by });
    await call('stock.scrapFromBatch', { batchId, quantity: 2, reason: 'lining chipped', by });
    await call('stock.countBatch', { batchId, counted: 7, reason: 'one lay behind the bin', by });
    const part = await call('stock.getPart', { partId: frictionId });
    // 12 − 5 + 1 − 2 = 6, counted as 7.
    expect(part.onHand).toBe(7);
    expect(part.movements.map(({ kind, change }) => [kind, change])).toEqual([
      ['count', 1],
      ['scrap', -2],
      ['return', 1],
      ['pull', -5],
      ['receive', 12],
    ]);
    expect(await call('stock.listPartsOfJob', { jobId })).toMatchObject([
      { number: 'KX3-FR-080', quantity: 4, mark: 'B-7' },
    ]);
  });

  test('without a batch named the oldest is used up first', async () => {
    const { call, frictionId, receive, jobId, by } = await shopWithParts();
    const newer = await receive(frictionId, 6, 'B-8', '2026-11-20');
    const older = await receive(frictionId, 4, 'B-7', '2026-10-02');
    const { pulled } = await call('stock.pullForJob', { jobId, partId: frictionId, batchId: null, quantity: 6, by });
    expect(pulled).toEqual([
      { batchId: older, quantity: 4 },
      { batchId: newer, quantity: 2 },
    ]);
  });

  test('more than there is cannot be pulled, scrapped or returned', async () => {
    const { call, refusal, frictionId, receive, jobId, by } = await shopWithParts();
    const batchId = await receive(frictionId, 2, 'B-7');
    const pull = { jobId, partId: frictionId, batchId, by };
    expect(await refusal('stock.pullForJob', { ...pull, quantity: 3 })).toMatchObject({
      code: 'too-few',
      field: 'quantity',
      message: 'KX3-FR-080: 2 are left of batch B-7. If the shelf holds more, count the batch first.',
    });
    expect(await refusal('stock.scrapFromBatch', { batchId, quantity: 3, reason: 'wet', by })).toMatchObject({
      code: 'too-few',
    });
    await call('stock.pullForJob', { ...pull, quantity: 2 });
    expect(await refusal('stock.pullForJob', { ...pull, batchId: null, quantity: 1 })).toMatchObject({
      message: 'KX3-FR-080: none is on hand. If the shelf holds more, count the batch first.',
    });
    expect(await refusal('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 3, by })).toMatchObject({
      code: 'more-than-pulled',
      message: 'Job 1 holds 2 of KX3-FR-080 from this batch.',
    });
  });

  test('a receipt of nothing and a batch nobody could tell apart are refused, and nothing is written', async () => {
    const { call, refusal, frictionId, by } = await shopWithParts();
    const receipt = {
      partId: frictionId,
      quantity: 4,
      receivedOn: null,
      mark: '',
      document: 'Ostrander 5512',
      unitCost: '',
      by,
    };
    expect(await refusal('stock.receiveBatch', { ...receipt, quantity: 0 })).toMatchObject({
      code: 'nothing-received',
      field: 'quantity',
    });
    expect(await refusal('stock.receiveBatch', { ...receipt, document: '' })).toMatchObject({ code: 'unmarked' });
    expect(await refusal('stock.receiveBatch', { ...receipt, unitCost: '4.105' })).toMatchObject({ field: 'unitCost' });
    expect((await call('stock.getPart', { partId: frictionId })).batches).toEqual([]);
  });

  test('a part listed for another family is asked about, and goes when the builder means it', async () => {
    const { call, refusal, otherFamilyId, receive, jobId, by } = await shopWithParts();
    const { partId } = await call('stock.savePart', {
      ...blankPart,
      number: 'RV2-SL-01',
      description: 'Piston seal',
      kind: 'seal',
      familyIds: [otherFamilyId],
      by,
    });
    const batchId = await receive(partId, 1, 'S-1');
    const pull = { jobId, partId, batchId, quantity: 1, by };
    expect(await refusal('stock.pullForJob', pull)).toMatchObject({
      code: 'other-family',
      message: 'RV2-SL-01 is listed for RV2; this unit is a KX3.',
    });
    await call('stock.pullForJob', { ...pull, isSure: true });
    expect(await call('stock.listPartsOfJob', { jobId })).toHaveLength(1);
  });

  test('a price list taken in later changes no ticket', async () => {
    const { call, frictionId, receive, jobId, by } = await shopWithParts();
    await receive(frictionId, 12, 'B-7');
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId: null, quantity: 4, by });
    const text = 'number,price\nKX3-FR-080,7.75';
    await call('stock.importCsv', { target: 'parts', text, delimiter: null, mapping: null, reason: '', by });
    expect((await call('stock.getPart', { partId: frictionId })).price_cents).toBe(775);
    expect(await call('stock.listPartsOfJob', { jobId })).toMatchObject([{ quantity: 4, price_cents: 750 }]);
  });

  test('a closed ticket takes no parts and gives none back', async () => {
    const { call, refusal, frictionId, receive, jobId, by, closeJob } = await shopWithParts();
    const batchId = await receive(frictionId, 2, 'B-7');
    await call('stock.pullForJob', { jobId, partId: frictionId, batchId, quantity: 1, by });
    await closeJob();
    expect(await refusal('stock.pullForJob', { jobId, partId: frictionId, batchId, quantity: 1, by })).toMatchObject({
      code: 'job-closed',
    });
    expect(await refusal('stock.returnFromJob', { jobId, batchId, partId: null, quantity: 1, by })).toMatchObject({
      code: 'job-closed',
    });
  });
});

describe('a kit is one line that expands into its parts', () => {
  test('pulled whole it brings its parts along, and one left over goes back on the shelf by itself', async () => {
    const { call, refusal, kitId, sealId, receive, jobId, by } = await shopWithParts();
    const kitBatch = await receive(kitId, 2, '', '2026-11-02', 'Brightwater 8841');
    await call('stock.pullForJob', { jobId, partId: kitId, batchId: kitBatch, quantity: 1, by });
    expect(await call('stock.listPartsOfJob', { jobId })).toMatchObject([
      {
        number: 'KX3-KIT-M',
        quantity: 1,
        document: 'Brightwater 8841',
        contents: [
          { number: 'KX3-FR-080', quantity: 9 },
          { number: 'KX3-SL-11', quantity: 3 },
        ],
      },
    ]);
    const { batchId } = await call('stock.returnFromJob', {
      jobId,
      batchId: kitBatch,
      partId: sealId,
      quantity: 1,
      by,
    });
    expect((await call('stock.listPartsOfJob', { jobId }))[0]?.contents).toMatchObject([
      { quantity: 9 },
      { quantity: 2 },
    ]);
    const seal = await call('stock.getPart', { partId: sealId });
    expect(seal.onHand).toBe(1);
    expect(seal.batches).toMatchObject([
      {
        batchId,
        mark: '',
        kit: { batchId: kitBatch, partNumber: 'KX3-KIT-M', document: 'Brightwater 8841', receivedOn: '2026-11-02' },
      },
    ]);
    expect(
      await refusal('stock.returnFromJob', { jobId, batchId: kitBatch, partId: sealId, quantity: 3, by }),
    ).toMatchObject({ message: 'Job 1 has 2 of KX3-SL-11 out of that kit.' });
    expect(
      await refusal('stock.returnFromJob', { jobId, batchId: kitBatch, partId: null, quantity: 1, by }),
    ).toMatchObject({ code: 'not-whole' });
  });

  test('taken apart, its parts lie in stock and know the kit, its document and its date', async () => {
    const { call, refusal, kitId, frictionId, receive, by } = await shopWithParts();
    const kitBatch = await receive(kitId, 2, '', '2026-11-02', 'Brightwater 8841');
    await call('stock.openKit', { batchId: kitBatch, quantity: 1, by });
    await call('stock.openKit', { batchId: kitBatch, quantity: 1, by });
    const friction = await call('stock.getPart', { partId: frictionId });
    expect(friction.batches).toMatchObject([{ onHand: 18, document: 'Brightwater 8841', receivedOn: '2026-11-02' }]);
    expect(await refusal('stock.openKit', { batchId: kitBatch, quantity: 1, by })).toMatchObject({ code: 'too-few' });
  });

  test('what lay in a kit stays as it was when it came in, whatever the list says later', async () => {
    const { call, kitId, sealId, receive, jobId, by } = await shopWithParts();
    const kitBatch = await receive(kitId, 1, 'K-1');
    const kit = await call('stock.getPart', { partId: kitId });
    await call('stock.savePart', {
      ...blankPart,
      partId: kitId,
      number: kit.number,
      description: kit.description,
      kind: 'kit',
      contents: [{ partId: sealId, quantity: 1 }],
      by,
    });
    await call('stock.pullForJob', { jobId, partId: kitId, batchId: kitBatch, quantity: 1, by });
    expect((await call('stock.listPartsOfJob', { jobId }))[0]?.contents).toMatchObject([
      { quantity: 9 },
      { quantity: 3 },
    ]);
  });
});

describe('what has run low is bought in time, and cores are not forgotten', () => {
  test('a part at its reorder point is listed with what brings it over', async () => {
    const { call, frictionId, receive } = await shopWithParts();
    await receive(frictionId, 11, 'B-7');
    expect(await call('stock.listReorder', {})).toEqual([]);
    await call('stock.countBatch', { batchId: 1, counted: 3, reason: 'counted', by: 1 });
    // Point 10, in boxes of 6: 3 + 6 = 9 is still too few, 3 + 12 = 15 is not.
    expect(await call('stock.listReorder', {})).toMatchObject([
      { number: 'KX3-FR-080', onHand: 3, suggested: 12, lineCost_cents: 12 * 410 },
    ]);
  });

  test('a part with a core charge opens a core to send back, the earliest due stands first, and it ends once', async () => {
    const { call, refusal, receive, jobId, by } = await shopWithParts();
    const { partId } = await call('stock.savePart', {
      ...blankPart,
      number: 'KX3-TC-1',
      description: 'Converter',
      kind: 'other',
      coreCharge: '60',
      by,
    });
    await receive(partId, 1, 'C-9');
    const { coreId } = await call('stock.openCore', {
      direction: 'due to us',
      what: 'case',
      quantity: 1,
      charge: '',
      dueOn: '2026-11-01',
      jobId,
      by,
    });
    expect(await call('stock.listCores', { includeSettled: false })).toMatchObject([
      { what: 'case', isOverdue: true, job: { number: 1 } },
      { what: 'KX3-TC-1, Converter', direction: 'to send back', charge_cents: 6000, isOverdue: false },
    ]);
    expect(await refusal('stock.settleCore', { coreId, how: 'sent back', note: '', by })).toMatchObject({
      code: 'wrong-way',
    });
    await call('stock.settleCore', { coreId, how: 'came back', note: 'cracked', by });
    expect(await refusal('stock.settleCore', { coreId, how: 'charged', note: '', by })).toMatchObject({
      code: 'settled',
    });
    expect(await call('stock.listCores', { includeSettled: false })).toHaveLength(1);
  });
});

describe('a part is found by any fragment and cannot be named twice', () => {
  test('number, description, supplier, bin and batch mark all find it, in any order of words', async () => {
    const { call, frictionId, receive } = await shopWithParts();
    await receive(frictionId, 1, 'LOT%9_x');
    const find = async (text: string) =>
      (
        await call('stock.listParts', { text, kind: null, familyId: null, only: 'in use', offset: 0, limit: 50 })
      ).parts.map((part) => part.number);
    expect(await find('fr-08')).toEqual(['KX3-FR-080']);
    expect(await find('brightw forward')).toEqual(['KX3-FR-080']);
    expect(await find('%9_')).toEqual(['KX3-FR-080']);
    expect(await find('%')).toEqual(['KX3-FR-080']);
    expect(await find('kx3')).toEqual(['KX3-FR-080', 'KX3-KIT-M', 'KX3-SL-11']);
    expect(await find('nothing such')).toEqual([]);
  });

  test('a number in other letters, a kit in itself and a part with parts in it are refused', async () => {
    const { call, refusal, kitId, sealId, by } = await shopWithParts();
    expect(await refusal('stock.savePart', { ...blankPart, number: 'kx3-fr-080', description: 'x', by })).toMatchObject(
      {
        code: 'number-taken',
        field: 'number',
      },
    );
    const kit = { ...blankPart, partId: kitId, number: 'KX3-KIT-M', description: 'Master kit', kind: 'kit', by };
    expect(await refusal('stock.savePart', { ...kit, contents: [{ partId: kitId, quantity: 1 }] })).toMatchObject({
      code: 'kit-in-itself',
    });
    expect(
      await refusal('stock.savePart', { ...kit, kind: 'seal', contents: [{ partId: sealId, quantity: 1 }] }),
    ).toMatchObject({ code: 'not-a-kit' });
    const contents = (await call('stock.getPart', { partId: kitId })).contents;
    expect(contents).toHaveLength(2);
  });
});
