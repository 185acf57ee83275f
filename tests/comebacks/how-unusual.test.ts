// How unusual a build is, by rank and by counting, against counting everything out.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeAmong, shareAlike } from '../../app/comebacks/how-unusual.ts';

const amounts = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 60 });
const word = fc.constantFrom('air', 'feeler', 'dial', 'count');

/** The middle rank from the low end, and from the high end, found by looking at every other build. */
function slowChance(amount: number, others: readonly number[]): number {
  const all = [amount, ...others];
  const ranks = (isBefore: (each: number) => boolean) => {
    const before = all.filter(isBefore).length;
    const same = all.filter((each) => each === amount).length;
    return before + (same + 1) / 2;
  };
  const nearer = Math.min(
    ranks((each) => each < amount),
    ranks((each) => each > amount),
  );
  return Math.min(1, (2 * nearer) / all.length);
}

describe('the place of a number', () => {
  test('tightest of forty-one builds: 2 of 41', () => {
    const others = Array.from({ length: 40 }, (_, index) => 25 + index);
    const { p, below, equal, above } = placeAmong(21, others);
    expect({ p, below, equal, above }).toEqual({ p: 2 / 41, below: 0, equal: 0, above: 40 });
    expect(placeAmong(99, others).p).toBe(2 / 41);
  });

  test('equal amounts share their middle rank: of four equal the second and a half', () => {
    // Ranks 1 to 4 of 10 are shared: 2.5, so 2 · 2.5 / 10.
    expect(placeAmong(5, [5, 5, 5, 6, 7, 8, 9, 10, 11]).p).toBe(0.5);
    expect(placeAmong(5, [5, 5, 5]).p).toBe(1);
  });

  test('is what counting says, and does not depend on the order', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 30 }), amounts, (amount, others) => {
        const { p, below, equal, above } = placeAmong(amount, others);
        expect(p).toBeCloseTo(slowChance(amount, others), 12);
        expect(below).toBe(others.filter((each) => each < amount).length);
        expect(equal).toBe(others.filter((each) => each === amount).length);
        expect(below + equal + above).toBe(others.length);
        expect(placeAmong(amount, others.toReversed())).toEqual(placeAmong(amount, others));
      }),
    );
  });

  test('the builds called unusual are as many as chance says', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 90 }), (all) => {
        const places = all.map((amount, index) => placeAmong(amount, all.toSpliced(index, 1)));
        const called = places.filter(({ p }) => p <= 0.05).length;
        expect(called).toBeCloseTo(all.length * places[0]!.byChance, 9);
        expect(called).toBeLessThanOrEqual(0.05 * all.length + 1e-9);
      }),
    );
  });
});

describe('the share of those alike', () => {
  test('one by feeler beside three by feeler and thirty-seven by air', () => {
    const others = [...Array(37).fill('air'), 'feeler', 'feeler', 'feeler'];
    const share = shareAlike('feeler', others);
    expect(share).toMatchObject({ p: 4 / 41, alike: 3, of: 40, commonest: 'air', commonestCount: 37 });
  });

  test('what everybody wrote differently is not unusual in anybody', () => {
    expect(shareAlike('a', ['b', 'c', 'd', 'e', 'f', 'g', 'h', 'i']).p).toBe(1);
  });

  test('two words even among the others: the build itself does not decide which is the habit', () => {
    expect(shareAlike('x', ['x', 'y', 'y'])).toMatchObject({ commonest: 'y', commonestCount: 2, alike: 1 });
  });

  test('the builds called unusual are as many as chance says, and never more than one in twenty', () => {
    fc.assert(
      fc.property(fc.array(word, { minLength: 2, maxLength: 120 }), (all) => {
        const shares = all.map((each, index) => shareAlike(each, all.toSpliced(index, 1)));
        const called = shares.filter(({ p }) => p <= 0.05).length;
        expect(called).toBeCloseTo(all.length * shares[0]!.byChance, 9);
        expect(called).toBeLessThanOrEqual(0.05 * all.length + 1e-9);
      }),
    );
  });
});
