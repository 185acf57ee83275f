// The plan of a unit with plates out of cans, with what is not on hand but could be bought, and under the family's rules:
// against every way to hand the plates out, and by hand arithmetic.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { UnitPlan } from '../../app/packs/packs.contract.ts';
import { brokenRules } from '../../app/packs/placement.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import { planUnit } from '../../app/packs/unit-plan.ts';
import type { PlacementRule } from '../../app/specs/spec-sheet.ts';
import { planInWorker } from '../../main/workers/plan-unit.ts';
import { handings, inThou, packOf, readsOf, steel, thou } from './unit-of-steels.ts';

const sumOf = (heights: readonly number[]) => heights.reduce((sum, each) => sum + each, 0);
const height = fc.integer({ min: 60, max: 72 });
const pair = fc.array(height, { minLength: 2, maxLength: 2 });
const off = fc.integer({ min: -8, max: 8 });

type Can = PackToPlan['cans'][number];
const can = (canId: number, tall: number, count: number): Can => ({
  canId,
  kind: 'steel',
  outline: 'shared',
  height_nm: tall * thou,
  count,
});

/** Where each slot of a pack stands after the plan, in nanometres. */
function heightsAfter(asked: PackToPlan, planned: UnitPlan['packs'][number]): number[] {
  const option = planned.together.option;
  return asked.fitted.map(({ slotId, piece }) => {
    const coming = option?.in.find((each) => each.slotId === slotId);
    const moved = option?.moved.find((each) => each.toSlotId === slotId);
    const stays = asked.fitted.find(({ slotId: from }) => from === moved?.fromSlotId)?.piece;
    return coming?.height_nm ?? stays?.height_nm ?? piece.height_nm;
  });
}

test('plates out of cans are shared out as single plates of their heights would be, and never more than there are', () => {
  const cans = fc.array(fc.tuple(height, fc.integer({ min: 1, max: 2 })), { minLength: 1, maxLength: 2 });
  fc.assert(
    fc.property(pair, pair, cans, fc.tuple(off, off), (first, second, bins, wants) => {
      const shared = bins.map(([tall, count], index) => can(index + 1, tall, count));
      const asked = [first, second].map((heights, index) => ({
        ...packOf(index + 1, { heights, reads: 200, target: 200 + wants[index]!, band: 100 }, []),
        cans: shared,
      }));
      const plan = planUnit(asked, 'sum');
      const single = bins.flatMap(([tall, count]) => Array.from({ length: count }, () => tall));
      const best = Math.min(
        ...[...handings([...first, ...second, ...single], 2, 2)].map(
          ([one, two]) => Math.abs(sumOf(first) - one - wants[0]) + Math.abs(sumOf(second) - two - wants[1]),
        ),
      );
      const reads = readsOf(plan, 'together');
      const found = sumOf(reads.map((read, index) => Math.abs(read! - 200 - wants[index]!)));
      if (plan.sharing[0]?.status === 'Optimal') expect(found).toBeCloseTo(best, 6);
      for (const which of ['inOrder', 'together'] as const) {
        const taken = plan.packs.flatMap((pack) => pack[which].option?.in ?? []).map(({ from }) => from);
        for (const { canId, count } of shared) {
          const of = taken.filter((from) => 'canId' in from && from.canId === canId);
          expect(of.length).toBeLessThanOrEqual(count);
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('what it says to buy is the least that brings every pack in, where nothing at hand does', () => {
  const catalogue = [62, 66, 70, 74];
  fc.assert(
    fc.property(pair, pair, fc.array(height, { maxLength: 2 }), fc.tuple(off, off), (first, second, bin, wants) => {
      const loose = bin.map((each, index) => steel(90 + index, each));
      const band = 1;
      const asked = [first, second].map((heights, index) => {
        const pack = packOf(index + 1, { heights, reads: 200, target: 200 + wants[index]!, band }, loose);
        const slots = pack.pack.slots.map((slot) => ({ ...slot, catalogue_nm: catalogue.map((each) => each * thou) }));
        return { ...pack, pack: { ...pack.pack, slots } };
      });
      const isIn = (bought: readonly number[]) =>
        [...handings([...first, ...second, ...bin, ...bought], 2, 2)].some(
          ([one, two]) =>
            Math.abs(sumOf(first) - one - wants[0]) <= band && Math.abs(sumOf(second) - two - wants[1]) <= band,
        );
      const [sharing] = planUnit(asked, 'sum').sharing;
      fc.pre(sharing?.status === 'Optimal' || sharing?.status === 'Infeasible');
      expect(sharing.status === 'Optimal').toBe(isIn([]));
      if (sharing.status === 'Optimal') return;
      const times = (count: number, tall: number) => Array.from({ length: count }, () => tall);
      const [, count, tall] = /Buy (\d) of (\d+)\.0 thou/.exec(sharing.sentence) ?? [];
      // Any height that is known of may be bought: those of the family's list, and those that sit there already.
      const heights = [...new Set([...catalogue, ...first, ...second, ...bin])];
      const least = [1, 2, 3, 4].find((each) => heights.some((candidate) => isIn(times(each, candidate))));
      expect(count === undefined ? undefined : Number(count)).toBe(least);
      if (count !== undefined) expect(isIn(times(Number(count), Number(tall)))).toBe(true);
    }),
    { numRuns: 40 },
  );
});

test('the thinnest goes where the family wants it, and the sum is as without the rule', () => {
  fc.assert(
    fc.property(pair, pair, fc.array(height, { maxLength: 3 }), fc.tuple(off, off), (first, second, bin, wants) => {
      const loose = bin.map((each, index) => steel(90 + index, each));
      const rules: PlacementRule[] = [{ kind: 'thinnest-in', pieceKind: 'steel', places: [2] }];
      const free = [first, second].map((heights, index) =>
        packOf(index + 1, { heights, reads: 200, target: 200 + wants[index]!, band: 100 }, loose),
      );
      const asked = free.map((pack) => ({ ...pack, pack: { ...pack.pack, rules } }));
      const plan = planUnit(asked, 'sum');
      expect(readsOf(plan, 'together')).toEqual(readsOf(planUnit(free, 'sum'), 'together'));
      asked.forEach((pack, index) => {
        const option = plan.packs[index]!.together.option;
        // A pack that keeps its plates keeps their places.
        if (!option || option.changes === 0) return;
        const heights = heightsAfter(pack, plan.packs[index]!);
        expect(brokenRules(pack.pack.slots, heights, rules, (each) => String(inThou(each)))).toEqual([]);
      });
    }),
    { numRuns: 60 },
  );
});

test('plates that no order puts as the family wants them are not advised, and it is said of which pack', () => {
  // Pack 2 holds 80 + 80 and needs 165: 75 + 90 is the only way to it, and its steels must be equal.
  const loose = [steel(91, 75), steel(92, 90)];
  const one = packOf(1, { heights: [70, 70], reads: 25, target: 25, band: 2 }, loose);
  const two = packOf(2, { heights: [80, 80], reads: 50, target: 45, band: 1 }, loose);
  const rules: PlacementRule[] = [{ kind: 'all-equal', pieceKind: 'steel' }];
  const plan = planUnit([one, { ...two, pack: { ...two.pack, rules } }], 'sum');
  expect(plan.packs[1]?.together.option).toBeNull();
  expect(plan.sharing[0]?.sentence).toBe('No order of the plates shared out to Pack 2 keeps the family’s rules.');
});

test('many packs are planned in a worker, which answers the same', async () => {
  const loose = [steel(91, 75), steel(92, 86), steel(93, 71)];
  const asked = [
    packOf(1, { heights: [70, 70], reads: 30, target: 25, band: 2 }, loose),
    packOf(2, { heights: [80, 80], reads: 50, target: 45, band: 4 }, loose),
    packOf(3, { heights: [70], reads: 26, target: 25, band: 4 }, loose),
  ];
  expect(await planInWorker({ asked, objective: 'sum' })).toEqual(planUnit(asked, 'sum'));
});
