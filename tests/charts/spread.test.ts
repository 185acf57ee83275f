import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Spreadable, spread } from '../../app/charts/spread.ts';

const label = (wanted: number, room = 10): Spreadable => ({ wanted, before: room / 2, after: room / 2 });

describe('labels moved apart', () => {
  test('stay where they want to be when they are clear of each other', () => {
    expect(spread([label(20), label(40), label(70)], 0, 100)).toEqual([20, 40, 70]);
  });

  test('share the move between two that want the same place', () => {
    expect(spread([label(50), label(50)], 0, 100)).toEqual([45, 55]);
  });

  test('give way to the edge', () => {
    expect(spread([label(0), label(2)], 0, 100)).toEqual([5, 15]);
    expect(spread([label(99), label(100)], 0, 100)).toEqual([85, 95]);
  });

  test('keep order, room and edges, and move no more than any arrangement on a grid does', () => {
    const labels = fc.array(
      fc.record({
        wanted: fc.integer({ min: 0, max: 30 }),
        before: fc.integer({ min: 1, max: 4 }),
        after: fc.integer({ min: 1, max: 4 }),
      }),
      { minLength: 1, maxLength: 3 },
    );
    fc.assert(
      fc.property(labels, (wanted) => {
        const [least, most] = [0, 30];
        const places = spread(wanted, least, most);
        expect(isClear(wanted, places, least, most, 1e-9)).toBe(true);
        const cost = (candidate: readonly number[]) =>
          wanted.reduce((sum, each, index) => sum + (candidate[index]! - each.wanted) ** 2, 0);
        for (const candidate of grid(wanted.length, most)) {
          if (isClear(wanted, candidate, least, most, 0))
            expect(cost(places)).toBeLessThanOrEqual(cost(candidate) + 1e-6);
        }
      }),
      { numRuns: 40 },
    );
  });
});

function isClear(
  labels: readonly Spreadable[],
  places: readonly number[],
  least: number,
  most: number,
  slack: number,
): boolean {
  return labels.every((each, index) => {
    const next = labels[index + 1];
    const end = places[index]! + each.after;
    const follows = next === undefined ? end <= most + slack : end <= places[index + 1]! - next.before + slack;
    return follows && (index > 0 || places[0]! - each.before >= least - slack);
  });
}

/** Every way to put `count` labels on whole positions. */
function grid(count: number, most: number): readonly (readonly number[])[] {
  const positions = Array.from({ length: most + 1 }, (_, index) => index);
  let all: number[][] = [[]];
  for (let index = 0; index < count; index += 1) {
    all = all.flatMap((each) => positions.filter((p) => p >= (each.at(-1) ?? 0)).map((p) => [...each, p]));
  }
  return all;
}
