// A real process killed at random moments: nothing that was acknowledged is lost, nothing is there by half.
import { expect, test } from 'vitest';
import { seeded } from '../bench/seeded.ts';
import { killRounds } from './kill-rounds.ts';
import { longRounds } from './long-rounds.ts';
import { longActs } from './one-act.ts';

// A loss seen once is a loss: there is no second try.
const once = { retry: 0, timeout: 600_000 };

test(
  'killed thirty times at any moment, the book keeps every acknowledged act and holds no half act',
  once,
  async () => {
    const seed = Date.now() % 1_000_000;
    console.log(`kill test, seed ${seed}`);
    const sum = await killRounds(30, seed, () => undefined);
    expect(sum.losses, `seed ${seed}`).toEqual([]);
    expect(sum.kills).toBe(30);
    expect(sum.acknowledged).toBeGreaterThan(0);
  },
);

test.each(longActs)(
  'killed in the middle of a %s, there is a whole shop file, before or after, and every backup is whole',
  once,
  async (act) => {
    const seed = Date.now() % 1_000_000;
    console.log(`kill test of a ${act}, seed ${seed}`);
    const sum = await longRounds(act, 4, seeded(seed), () => undefined);
    expect(sum.losses, `seed ${seed}`).toEqual([]);
    expect(sum.kills).toBe(4);
  },
);
