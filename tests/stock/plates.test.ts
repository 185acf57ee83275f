import { describe, expect, test } from 'vitest';
import { class_nm, clean, found, outline, shopWithPlates, thou } from './plates-shop.ts';

describe('a box of plates, measured one after another', () => {
  test('a single plate keeps its points, its micrometer and how good that is', async () => {
    const { call, single, by } = await shopWithPlates();
    const pieceId = await single('77.0 77.5 77.0', 'A31');
    const plate = await call('stock.getPlate', { pieceId });
    expect(plate).toMatchObject({ tag: 'A31', state: 'free', why: '', spread_nm: thou(0.5), measuredBy: 'RA' });
    expect(plate.heights).toMatchObject([
      {
        height_nm: 1_960_033,
        points_nm: [thou(77), thou(77.5), thou(77)],
        typed: '77.0 77.5 77.0',
        micrometer: 'M-2',
        // The shop's own setting: 0.2 thou.
        standardUncertainty_nm: thou(0.2),
      },
    ]);
    await call('stock.remeasurePiece', { pieceId, typed: '76.5', reason: 'misread', by });
    const again = await call('stock.getPlate', { pieceId });
    expect(again.height_nm).toBe(thou(76.5));
    expect(again.spread_nm).toBeNull();
    expect(again.heights.map((height) => height.typed)).toEqual(['76.5', '77.0 77.5 77.0']);
  });

  test('into the can of its class, made when it is missing', async () => {
    const { intoCan, plates } = await shopWithPlates();
    const first = await intoCan('77.1');
    expect(first).toMatchObject({ can_nm: thou(77), count: 1 });
    expect(await intoCan('76.8')).toMatchObject({ canId: first.canId, count: 2 });
    expect(await intoCan('77.25')).toMatchObject({ can_nm: thou(77.5), count: 1 });
    expect((await plates()).cans.map(({ height_nm, count }) => [height_nm, count])).toEqual([
      [thou(77), 2],
      [thou(77.5), 1],
    ]);
  });

  test('out of its batch in the same act, and nothing at all when the batch is empty', async () => {
    const { call, single, intoCan, refused, measure, receive, frictionId, plates } = await shopWithPlates();
    const batchId = await receive(frictionId, 2, 'B-7');
    const onHand = async () => (await call('stock.getPart', { partId: frictionId })).onHand;
    await intoCan('77', { batchId });
    const pieceId = await single('77.5', '', { batchId });
    expect(await onHand()).toBe(0);
    expect((await call('stock.getPlate', { pieceId })).batchId).toBe(batchId);
    const { code } = await refused('stock.addMeasured', measure('78', { kind: 'can', class_nm }, { batchId }));
    expect(code).toBe('too-few');
    expect((await plates()).cans).toHaveLength(1);
  });

  test('an unlikely height is asked about, and kept when it is meant', async () => {
    const { single, refused, measure } = await shopWithPlates();
    await single('77');
    const { code, message } = await refused('stock.addMeasured', measure('47', { kind: 'single', tag: '' }));
    expect(code).toBe('unlikely');
    expect(message).toBe('47.0 thou is far from the others, 77.0: measure again, or say that it is so.');
    expect(await single('47', '', { isSure: true })).toBeGreaterThan(0);
  });

  test('a tag already used, a tag that is a height, a height that is none, classes wider than the plate', async () => {
    const { single, refused, measure } = await shopWithPlates();
    await single('77', 'A31');
    const codeOf = async (typed: string, into: object) =>
      (await refused('stock.addMeasured', measure(typed, into))).code;
    expect(await codeOf('77', { kind: 'single', tag: 'A31' })).toBe('tag-taken');
    expect(await codeOf('77', { kind: 'single', tag: '78.5' })).toBe('tag');
    expect(await codeOf('78 mm', { kind: 'single', tag: '' })).toBe('implausible');
    expect(await codeOf('77', { kind: 'can', class_nm: thou(200) })).toBe('class');
  });

  test('what was mistyped is taken back, once: its batch has it again and its tag is free', async () => {
    const { call, single, intoCan, refused, receive, frictionId, plates, by } = await shopWithPlates();
    const batchId = await receive(frictionId, 2, 'B-7');
    const onHand = async () => (await call('stock.getPart', { partId: frictionId })).onHand;
    const { canMovementId, canId } = await intoCan('77', { batchId });
    const pieceId = await single('77.5', 'A31', { batchId });
    await call('stock.takeBackMeasured', { canMovementId, pieceId: null, by });
    await call('stock.takeBackMeasured', { canMovementId: null, pieceId, by });
    expect(await onHand()).toBe(2);
    expect(await plates()).toMatchObject({ total: 0, plates: [], histogram: [], cans: [{ canId, count: 0 }] });
    expect(await single('75.5', 'A31')).not.toBe(pieceId);
    const codeOf = async (of: object) =>
      (await refused('stock.takeBackMeasured', { canMovementId: null, pieceId: null, by, ...of })).code;
    expect(await codeOf({ canMovementId })).toBe('taken-back');
    expect(await codeOf({ pieceId })).toBe('discarded');
    expect(await codeOf({})).toBe('which-one');
  });

  test('plates put into a can add to whatever is in it, and no more come out than there are', async () => {
    const { call, refusal, by } = await shopWithPlates();
    const can = { kind: 'steel', outline, typed: '78.0', count: 3, by };
    const { canId } = await call('stock.addCan', can);
    await call('stock.moveInCan', { canId, change: 4, reason: 'put in', by });
    await call('stock.moveInCan', { canId, change: -2, reason: 'taken back', by });
    expect(await refusal('stock.moveInCan', { canId, change: -6, reason: 'taken back', by })).toMatchObject({
      message: 'There are only 5 in this can: count it again or take fewer.',
    });
    expect(await refusal('stock.moveInCan', { canId, change: 0, reason: 'x', by })).toMatchObject({ code: 'input' });
    expect((await call('stock.listLoose', { outline: 'KX3 forward' })).cans).toMatchObject([{ canId, count: 5 }]);
  });

  test('a plate that sat in a pack, a count, and a can used up since are not taken back', async () => {
    const { call, single, intoCan, refused, putIn, jobId, by } = await shopWithPlates();
    const pieceId = await single('77');
    const { canMovementId, canId } = await intoCan('76.5');
    await putIn(jobId, [{ pieceId }, { canId }, { typed: '78.0' }, { typed: '77.5' }]);
    await putIn(jobId, [{ typed: '78.0' }]);
    const codeOf = async (of: object) =>
      (await refused('stock.takeBackMeasured', { canMovementId: null, pieceId: null, by, ...of })).code;
    expect(await codeOf({ pieceId })).toBe('was-used');
    expect(await codeOf({ canMovementId })).toBe('can-empty');
    expect(await codeOf({ canMovementId: canMovementId + 1 })).toBe('not-measured');
    expect((await call('stock.listLoose', { outline })).pieces.map((piece) => piece.pieceId)).toEqual([pieceId]);
  });
});

describe('where a plate is and whether it may be used', () => {
  test('free, in a unit, to be read again once it came out, free when it was read', async () => {
    const { call, single, putIn, stateOf, loose, jobId, by } = await shopWithPlates();
    const pieceId = await single('77.0', 'A31');
    expect(await stateOf(pieceId)).toBe('free');
    await putIn(jobId, [{ pieceId }, ...found.slice(1)]);
    expect(await stateOf(pieceId)).toBe('in a unit: in Forward of job 1');
    expect(await loose()).toEqual([]);
    await putIn(jobId, [{ typed: '78.0' }]);
    expect(await stateOf(pieceId)).toBe('read again: came out of a pack since it was measured');
    expect(await loose()).toEqual([pieceId]);
    await call('stock.remeasurePiece', { pieceId, typed: '76.9', reason: 'came out of Forward', by });
    expect(await stateOf(pieceId)).toBe('free');
  });

  test('a rejected plate is not offered and cannot be put in; looked over again it may', async () => {
    const { call, single, putIn, refused, mockUp, stateOf, loose, jobId, by } = await shopWithPlates();
    const pieceId = await single('77.0', 'A31');
    const look = { ...clean, flat: 'not flat', offFlat: '4', hasHotSpots: true, isUsable: false, pieceId, by };
    await call('stock.lookOverPlate', look);
    expect(await stateOf(pieceId)).toBe('do not use: not flat by 4.0 thou, hot spots');
    expect(await loose()).toEqual([]);
    const { code, message } = await refused('packs.recordMockUp', mockUp(jobId, [{ pieceId }, ...found.slice(1)]));
    expect([code, message]).toEqual([
      'rejected',
      'A31 (77.0 thou) is not to be used: not flat by 4.0 thou, hot spots.',
    ]);
    expect((await refused('stock.putInCan', { pieceId, by })).code).toBe('rejected');
    await call('stock.lookOverPlate', { ...clean, offFlat: '', pieceId, by });
    expect(await loose()).toEqual([pieceId]);
    await putIn(jobId, [{ pieceId }, ...found.slice(1)]);
    expect(await stateOf(pieceId)).toBe('in a unit: in Forward of job 1');
    // Rejected where it sits, it does not stay for the next mock-up.
    await call('stock.lookOverPlate', look);
    expect(await stateOf(pieceId)).toBe('do not use: not flat by 4.0 thou, hot spots, in Forward of job 1');
    expect((await refused('packs.recordMockUp', mockUp(jobId, [null, { typed: '79.0' }]))).code).toBe('rejected');
    expect((await call('stock.getPlate', { pieceId })).looks.map((each) => each.isUsable)).toEqual([
      false,
      true,
      false,
    ]);
  });

  test('a rejection says why, and only what is not flat is off by something', async () => {
    const { single, refused, by } = await shopWithPlates();
    const pieceId = await single('77.0');
    const codeOf = async (look: object) =>
      (await refused('stock.lookOverPlate', { ...clean, offFlat: '', pieceId, by, ...look })).code;
    expect(await codeOf({ isUsable: false })).toBe('why');
    expect(await codeOf({ offFlat: '3' })).toBe('flat');
    expect(await codeOf({ flat: 'not flat', offFlat: '900' })).toBe('implausible');
  });

  test('a plate put into a can is told apart no more', async () => {
    const { call, single, putIn, mockUp, refused, plates, loose, jobId, by } = await shopWithPlates();
    const pieceId = await single('77.1', 'A31');
    const inPack = await single('77.4');
    await putIn(jobId, [{ pieceId: inPack }, ...found.slice(1)]);
    expect((await refused('stock.putInCan', { pieceId: inPack, by })).code).toBe('piece-in-use');
    const { canId } = await call('stock.putInCan', { pieceId, class_nm, by });
    expect((await plates()).cans).toMatchObject([{ canId, height_nm: thou(77), count: 1 }]);
    expect((await plates()).plates.map((plate) => plate.pieceId)).not.toContain(pieceId);
    expect(await loose()).toEqual([]);
    expect(await call('stock.getPlate', { pieceId })).toMatchObject({
      state: 'do not use',
      why: 'among the others in the can of 77.0',
    });
    const codes = [
      await refused('stock.putInCan', { pieceId, by }),
      await refused('stock.remeasurePiece', { pieceId, typed: '77', reason: 'again', by }),
      await refused('stock.discardPiece', { pieceId, reason: 'bent', by }),
      await refused('packs.recordMockUp', mockUp(jobId, [{ pieceId }])),
    ].map((each) => each.code);
    expect(codes).toEqual(['in-can', 'in-can', 'in-can', 'in-can']);
    const empty = await call('stock.putInCan', { pieceId: await single('78.0'), by });
    await putIn(jobId, [{ canId: empty.canId }]);
    expect((await refused('packs.recordMockUp', mockUp(jobId, [null, { canId: empty.canId }]))).code).toBe('can-empty');
  });

  test('what a closed ticket left in a unit is found there by the next ticket of that unit, and by no other', async () => {
    const { call, single, putIn, mockUp, refused, stateOf, closeJob, jobId, familyId, by } = await shopWithPlates();
    const pieceId = await single('77.0', 'A31');
    await putIn(jobId, [{ pieceId }, ...found.slice(1)]);
    const checkIn = async (unit: object) =>
      (
        await call('jobs.checkIn', {
          customer: { name: 'Tam Okoro', phone: '555 0190', email: '' },
          ...{ unit, complaint: '', caseTag: '', distance: null, by },
        })
      ).jobId;
    const { unitId } = (await call('jobs.getJob', { jobId })).unit;
    const comesBack = await checkIn({ unitId });
    const other = await checkIn({ familyId, serial: 'KX3-19-9001', vehicle: '', use: 'tow' });
    const steels = [{ pieceId }, ...found.slice(1)];
    expect((await refused('packs.recordMockUp', mockUp(comesBack, steels))).code).toBe('piece-in-use');
    await closeJob();
    expect((await refused('packs.recordMockUp', mockUp(other, steels))).code).toBe('piece-in-use');
    await putIn(comesBack, steels);
    expect(await stateOf(pieceId)).toBe('in a unit: in Forward of job 2');
    await putIn(comesBack, [{ typed: '78.0' }]);
    // The first ticket's last mock-up names it still, but it came out since.
    expect(await stateOf(pieceId)).toBe('read again: came out of a pack since it was measured');
    await putIn(other, steels);
    expect(await stateOf(pieceId)).toBe('in a unit: in Forward of job 3');
  });
});

describe('the list of an outline', () => {
  test('a window by thickness, counts by state, a picture of the whole, found by tag or height', async () => {
    const { call, single, putIn, jobId, by } = await shopWithPlates();
    for (const [typed, tag] of [
      ['78.5', 'A43'],
      ['74.0', 'A41'],
      ['75.5', 'A42'],
      ['77.5', ''],
    ] as const)
      await single(typed, tag);
    const rejected = await single('78.5', 'A44');
    await call('stock.lookOverPlate', {
      ...clean,
      isGlazed: true,
      isUsable: false,
      offFlat: '',
      pieceId: rejected,
      by,
    });
    await putIn(jobId, found);
    const ask = (more: object) =>
      call('stock.listPlates', { outline, text: '', state: null, offset: 0, limit: 1000, ...more });
    const all = await ask({});
    expect(all.plates.map((plate) => plate.height_nm / 25_400)).toEqual([
      74, 75.5, 76.5, 77, 77.5, 77.5, 78, 78.5, 78.5,
    ]);
    expect(all.total).toBe(9);
    expect(all.byState).toEqual({ free: 4, 'in a unit': 4, 'read again': 0, 'do not use': 1 });
    expect(all.histogram.filter((bar) => bar.height_nm >= thou(77.5))).toEqual([
      { height_nm: thou(77.5), state: 'free', count: 1 },
      { height_nm: thou(77.5), state: 'in a unit', count: 1 },
      { height_nm: thou(78), state: 'in a unit', count: 1 },
      { height_nm: thou(78.5), state: 'do not use', count: 1 },
      { height_nm: thou(78.5), state: 'free', count: 1 },
    ]);
    expect((await ask({ offset: 2, limit: 3 })).plates).toEqual(all.plates.slice(2, 5));
    const free = await ask({ state: 'free', offset: 1, limit: 2 });
    expect([free.total, ...free.plates.map((plate) => plate.tag)]).toEqual([4, 'A42', '']);
    expect((await ask({ text: 'a4' })).plates.map((plate) => plate.tag)).toEqual(['A41', 'A42', 'A43', 'A44']);
    const by78 = await ask({ text: '78.5' });
    expect([by78.total, by78.byState.free, by78.histogram.length]).toEqual([2, 1, all.histogram.length]);
    expect((await ask({ text: '%' })).total).toBe(0);
    const lines = await call('stock.listOutlines', {});
    expect(lines.find((line) => line.outline === outline)).toMatchObject({
      kinds: ['steel'],
      packs: [{ familyName: 'KX3', packName: 'Forward' }],
      free: 4,
      inCans: 0,
    });
  });

  test('what happened last, newest first', async () => {
    const { call, single, intoCan, putIn, jobId, by } = await shopWithPlates();
    const pieceId = await single('77.0', 'A31');
    await call('stock.remeasurePiece', { pieceId, typed: '77.1', reason: 'misread', by });
    const { canId } = await intoCan('76.6');
    await call('stock.countCan', { canId, count: 3, reason: 'counted', by });
    await putIn(jobId, [{ pieceId }, { canId }, ...found.slice(2)]);
    await putIn(jobId, [{ typed: '78.2' }]);
    await call('stock.lookOverPlate', { ...clean, isConed: true, isUsable: false, offFlat: '', pieceId, by });
    await call('stock.discardPiece', { pieceId, reason: 'scrapped', by });
    const moves = await call('stock.listPlateMoves', { outline, limit: 200 });
    expect(moves.map(({ name, says }) => `${name}: ${says}`)).toEqual([
      'A31: off the list: scrapped',
      'A31: not to be used: coned',
      '78.2: into Forward of job 1',
      'A31: out of Forward of job 1',
      'A31: into Forward of job 1',
      '76.5: into Forward of job 1',
      '78.0: into Forward of job 1',
      '77.5: into Forward of job 1',
      'can 76.5: +2, counted',
      'can 76.5: +1, measured 76.6',
      'A31: measured again 77.1: misread',
      'A31: measured 77.0',
    ]);
    expect(await call('stock.listPlateMoves', { outline, limit: 2 })).toEqual(moves.slice(0, 2));
  });
});
