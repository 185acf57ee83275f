import fc from 'fast-check';
import { expect, test } from 'vitest';
import { class_nm, clean, found, outline, shopWithPlates } from './plates-shop.ts';

const act = fc.record({
  kind: fc.constantFrom(
    'single',
    'can',
    'fit',
    'fit from can',
    'put in can',
    'reject',
    'discard',
    'take back',
    'count',
  ),
  which: fc.nat(9),
  /** Which of two tickets, and which slot. */
  ticket: fc.nat(1),
  slot: fc.nat(3),
});

test('over any history a plate is in one place, and a can holds what a plain recount says', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(act, { minLength: 8, maxLength: 30 }), async (acts) => {
      const shop = await shopWithPlates();
      const { call, desk, single, intoCan, putIn, familyId, by } = shop;
      const { jobId: second } = await call('jobs.checkIn', {
        customer: { name: 'Tam Okoro', phone: '555 0190', email: '' },
        unit: { familyId, serial: 'KX3-19-9001', vehicle: '', use: 'tow' },
        ...{ complaint: '', caseTag: '', distance: null, by },
      });
      const jobIds = [shop.jobId, second];
      // The plain recount: where each plate of ours lies, what each slot and each can holds.
      const places = new Map<number, string>();
      const slots = jobIds.map((): Array<number | null> => [null, null, null, null]);
      const cans = new Map<number, number>();
      for (const jobId of jobIds) await putIn(jobId, found);
      const went = (attempt: Promise<unknown>) =>
        attempt.then(
          () => true,
          () => false,
        );
      const settle = (ticket: number, slot: number, pieceId: number | null) => {
        const before = slots[ticket]?.[slot] ?? null;
        if (before !== null && before !== pieceId) places.set(before, 'bench');
        slots[ticket]?.splice(slot, 1, pieceId);
        if (pieceId !== null) places.set(pieceId, `ticket ${ticket}`);
      };
      for (const { kind, which, ticket, slot } of acts) {
        const pieceId = [...places.keys()][which % Math.max(1, places.size)];
        const canId = [...cans.keys()][which % Math.max(1, cans.size)];
        const steels = (from: { pieceId: number } | { canId: number }) =>
          Array.from({ length: 4 }, (_, index) => (index === slot ? from : null));
        const isOnBench = pieceId !== undefined && places.get(pieceId) === 'bench';
        if (kind === 'single' || pieceId === undefined) places.set(await single('77.0'), 'bench');
        else if (kind === 'can' || kind === 'take back' || canId === undefined) {
          const into = await intoCan(`${76 + (which % 3)}.0`);
          cans.set(into.canId, (cans.get(into.canId) ?? 0) + 1);
          if (kind === 'take back') {
            await call('stock.takeBackMeasured', { canMovementId: into.canMovementId, pieceId: null, by });
            cans.set(into.canId, (cans.get(into.canId) ?? 0) - 1);
          }
        } else if (kind === 'fit') {
          const isThere = slots[ticket]?.[slot] === pieceId;
          expect(await went(putIn(jobIds[ticket] ?? 0, steels({ pieceId })))).toBe(isOnBench || isThere);
          if (isOnBench) settle(ticket, slot, pieceId);
        } else if (kind === 'fit from can') {
          const held = cans.get(canId) ?? 0;
          expect(await went(putIn(jobIds[ticket] ?? 0, steels({ canId })))).toBe(held > 0);
          if (held > 0) {
            cans.set(canId, held - 1);
            settle(ticket, slot, null);
          }
        } else if (kind === 'put in can') {
          const attempt = call('stock.putInCan', { pieceId, class_nm, by });
          expect(await went(attempt)).toBe(isOnBench);
          if (isOnBench) {
            const { canId: into } = await attempt;
            cans.set(into, (cans.get(into) ?? 0) + 1);
            places.set(pieceId, 'can');
          }
        } else if (kind === 'reject' && isOnBench) {
          const look = { ...clean, isConed: true, isUsable: false, offFlat: '', pieceId, by };
          await call('stock.lookOverPlate', look);
          places.set(pieceId, 'rejected');
        } else if (kind === 'discard') {
          const mayGo = isOnBench || places.get(pieceId) === 'rejected';
          expect(await went(call('stock.discardPiece', { pieceId, reason: 'worn', by }))).toBe(mayGo);
          if (mayGo) places.set(pieceId, 'off the list');
        } else if (kind === 'count') {
          await call('stock.countCan', { canId, count: which, reason: 'counted', by });
          cans.set(canId, which);
        }
      }
      const loose = new Set(await shop.loose());
      const listed = await shop.plates();
      for (const [pieceId, place] of places) {
        const { state, where } = await call('stock.getPlate', { pieceId });
        expect(where === null ? 'nowhere' : `ticket ${jobIds.indexOf(where.jobId)}`).toBe(
          place.startsWith('ticket') ? place : 'nowhere',
        );
        expect(loose.has(pieceId)).toBe(place === 'bench');
        expect(state === 'do not use').toBe(['rejected', 'off the list', 'can'].includes(place));
        expect(listed.plates.some((plate) => plate.pieceId === pieceId)).toBe(place !== 'can');
      }
      expect(Object.fromEntries(listed.cans.map((can) => [can.canId, can.count]))).toEqual(Object.fromEntries(cans));
      const line = (await call('stock.listOutlines', {})).find((each) => each.outline === outline);
      expect([line?.free, line?.inCans]).toEqual([loose.size, [...cans.values()].reduce((sum, held) => sum + held, 0)]);
      await desk.close();
    }),
    { numRuns: 10 },
  );
});
