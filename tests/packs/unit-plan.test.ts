// All open packs of a unit at once: by hand arithmetic, and against every way of handing the plates out.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { UnitPlan } from '../../app/packs/packs.contract.ts';
import type { PackToPlan } from '../../app/packs/swap-search.ts';
import { planUnit } from '../../app/packs/unit-plan.ts';
import { handings, packOf, readsOf, steel } from './unit-of-steels.ts';

/** The plates each pack ends with, as a person would carry out the plan. */
function platesAfter(asked: readonly PackToPlan[], plan: UnitPlan, which: 'inOrder' | 'together'): number[][] {
  return asked.map((pack, index) => {
    const option = plan.packs[index]?.[which].option;
    const leaving = option?.out.map(({ piece }) => piece.pieceId) ?? [];
    const coming = option?.in.flatMap(({ from }) => ('pieceId' in from ? [from.pieceId] : [])) ?? [];
    return [...pack.fitted.map(({ piece }) => piece.pieceId).filter((id) => !leaving.includes(id)), ...coming];
  });
}

describe('two packs after one plate', () => {
  // Pack 1 wants 5 more than its 70 + 70, so 145 = 70 + 75; pack 2 wants 5 more than its 80 + 80, so 165, which no two
  // of 70, 70, 75, 80, 80, 86 make: 80 + 86 = 166 is one off, 44.0.
  const loose = [steel(91, 75), steel(92, 86)];
  const asked = [
    packOf(1, { heights: [70, 70], reads: 30, target: 25, band: 2 }, loose),
    packOf(2, { heights: [80, 80], reads: 50, target: 45, band: 4 }, loose),
  ];

  test('each gets the nearest, and none is named twice', () => {
    const plan = planUnit(asked, 'sum');
    expect(readsOf(plan, 'inOrder')).toEqual([25, 44]);
    expect(readsOf(plan, 'together')).toEqual([25, 44]);
    const used = platesAfter(asked, plan, 'together').flat();
    expect(new Set(used).size).toBe(4);
    expect(plan.sharing).toMatchObject([{ packs: ['Pack 1', 'Pack 2'], status: 'Optimal' }]);
    expect(plan.gain).toBe('Shared out together they come no nearer.');
  });

  test('the first pack leaves the only plate that saves the second, when it is planned with it', () => {
    // Pack 1 (70, reads 30, target 25) takes 75 for 25.0; that leaves pack 2 (70, reads 30, target 23) 74 for 26.0,
    // out of its 23 ± 2. Together pack 1 takes 74 (26.0) and pack 2 takes 75 (25.0): one off and two off.
    const only = [steel(91, 75), steel(92, 74)];
    const pair = [
      packOf(1, { heights: [70], reads: 30, target: 25, band: 4 }, only),
      packOf(2, { heights: [70], reads: 30, target: 23, band: 2 }, only),
    ];
    const plan = planUnit(pair, 'largest');
    expect(readsOf(plan, 'inOrder')).toEqual([25, 26]);
    expect(readsOf(plan, 'together')).toEqual([26, 25]);
    expect(plan.gain).toBe('Pack 1 first would leave Pack 2 at 26.0; together it comes to 25.0.');
    expect(plan.advised).toBe('together');
  });

  test('which pack blocks is said, where none of the plates brings it in', () => {
    const plan = planUnit(
      [
        packOf(1, { heights: [70], reads: 30, target: 30, band: 3 }, []),
        packOf(2, { heights: [70], reads: 60, target: 20, band: 3 }, []),
      ],
      'sum',
    );
    expect(plan.sharing[0]?.status).toBe('Infeasible');
    expect(plan.sharing[0]?.sentence).toContain('Pack 2 cannot be brought within its limits');
    expect(plan.packs[0]?.together.problem).toContain('Only the nearest');
  });
});

describe('plates that sit in another pack', () => {
  test('the pack that gives is taken apart first', () => {
    // Pack 1 (70) reads 30 for 25 and wants 75, which sits in pack 2; pack 2 reads 20 for 25 and wants the loose 70.
    const plan = planUnit(
      [
        packOf(1, { heights: [70], reads: 30, target: 25, band: 2 }, [steel(91, 70)]),
        packOf(2, { heights: [75], reads: 20, target: 25, band: 2 }, [steel(91, 70)]),
      ],
      'sum',
    );
    expect(readsOf(plan, 'together')).toEqual([25, 25]);
    expect(plan.sharing[0]?.order).toEqual(['First take apart Pack 2: its 75.0 T20 goes into Pack 1.']);
  });

  test('a trade both ways is not advised', () => {
    // Each wants the only plate of the other: neither can be built first.
    const plan = planUnit(
      [
        packOf(1, { heights: [70], reads: 30, target: 25, band: 2 }, []),
        packOf(2, { heights: [75], reads: 20, target: 25, band: 2 }, []),
      ],
      'sum',
    );
    expect(plan.sharing[0]).toMatchObject({ status: 'NotBothWays', order: [] });
    expect(plan.packs.every(({ together }) => (together.option?.changes ?? 0) === 0)).toBe(true);
    expect(plan.advised).toBe('inOrder');
  });
});

test('together is the best of every way to hand out a small bin', () => {
  const height = fc.integer({ min: 60, max: 72 });
  fc.assert(
    fc.property(
      fc.array(height, { minLength: 2, maxLength: 2 }),
      fc.array(height, { minLength: 2, maxLength: 2 }),
      fc.array(height, { minLength: 0, maxLength: 4 }),
      fc.tuple(fc.integer({ min: -8, max: 8 }), fc.integer({ min: -8, max: 8 })),
      fc.constantFrom('sum' as const, 'largest' as const),
      (first, second, bin, off, objective) => {
        const loose = bin.map((each, index) => steel(90 + index, each));
        const wide = 100;
        const asked = [
          packOf(1, { heights: first, reads: 200, target: 200 + off[0], band: wide }, loose),
          packOf(2, { heights: second, reads: 200, target: 200 + off[1], band: wide }, loose),
        ];
        const sumOf = (heights: readonly number[]) => heights.reduce((sum, each) => sum + each, 0);
        const every = [...handings([...first, ...second, ...bin], 2, 2)].map(([one, two]) => {
          const off1 = Math.abs(sumOf(first) - one - off[0]);
          const off2 = Math.abs(sumOf(second) - two - off[1]);
          return { sum: off1 + off2, largest: Math.max(off1, off2) };
        });
        const plan = planUnit(asked, objective);
        const reads = readsOf(plan, 'together');
        const deviations = reads.map((read, index) => Math.abs(read! - 200 - off[index]!));
        const largest = Math.min(...every.map((each) => each.largest));
        const sums = every.filter((each) => objective === 'sum' || each.largest === largest).map((each) => each.sum);
        const isProven = plan.sharing[0]?.status === 'Optimal';
        if (isProven) expect(sumOf(deviations)).toBeCloseTo(Math.min(...sums), 6);
        if (isProven && objective === 'largest') expect(Math.max(...deviations)).toBeCloseTo(largest, 6);
        // What cannot be built one pack after the other is not advised.
        const [one, two] = plan.packs.map(({ together }) => ({
          out: together.option?.out.map(({ piece }) => piece.pieceId) ?? [],
          into: together.option?.in.flatMap(({ from }) => ('pieceId' in from ? [from.pieceId] : [])) ?? [],
        }));
        const [toSecond, toFirst] = [
          two!.into.some((id) => one!.out.includes(id)),
          one!.into.some((id) => two!.out.includes(id)),
        ];
        expect(toSecond && toFirst).toBe(false);
        expect(plan.sharing[0]?.order).toHaveLength(toSecond || toFirst ? 1 : 0);
        for (const which of ['inOrder', 'together'] as const) {
          const used = platesAfter(asked, plan, which);
          expect(used.map((plates) => plates.length)).toEqual([2, 2]);
          expect(new Set(used.flat()).size).toBe(4);
        }
      },
    ),
    { numRuns: 60 },
  );
});
