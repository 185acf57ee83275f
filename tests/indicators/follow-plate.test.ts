// What is found in a gauge's trace, against plates whose truth is known and a slower, obvious way to see stillness.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  followPlate,
  nothingSeen,
  offerOf,
  type PlateRules,
  type PlateSeen,
  type Wanted,
} from '../../app/indicators/follow-plate.ts';
import type { Sample } from '../../app/indicators/read-line.ts';
import { plateLevel } from '../../app/indicators/simulated-plate.ts';
import { levelOf, type Recent, withSample } from '../../app/indicators/stillness.ts';
import { traceOf } from './trace-of.ts';

const thou = 25_400;
const rules: PlateRules = { within_nm: 5_000, for_ms: 500, zeroReturn_nm: thou };
const follow = (samples: readonly Sample[], by = rules, from: PlateSeen = nothingSeen) =>
  samples.reduce((seen, sample) => followPlate(seen, sample, by), from);
const offer = (samples: readonly Sample[], wanted: Wanted = 'push and air', by = rules) =>
  offerOf(follow(samples, by), wanted, by);
/** A hand-made trace: each level for so long, at ten a second. */
const levels = (...parts: readonly (readonly [value_nm: number, for_ms: number])[]) => {
  const samples: Sample[] = [];
  for (const [value_nm, for_ms] of parts)
    for (let passed = 0; passed < for_ms; passed += 100) samples.push({ at_ms: samples.length * 100, value_nm });
  return samples;
};

describe('standing still', () => {
  test('is what looking through the whole trace again says it is', () => {
    const moves = fc.array(fc.tuple(fc.integer({ min: 1, max: 400 }), fc.integer({ min: -6, max: 6 })), {
      minLength: 1,
      maxLength: 60,
    });
    fc.assert(
      fc.property(
        moves,
        fc.integer({ min: 0, max: 12 }),
        fc.integer({ min: 50, max: 900 }),
        (steps, within_nm, for_ms) => {
          let [at_ms, value_nm] = [0, 0];
          let recent: Recent = [];
          const all: Sample[] = [];
          for (const [later, move] of steps) {
            at_ms += later;
            value_nm += move;
            all.push({ at_ms, value_nm });
            recent = withSample(recent, { at_ms, value_nm }, for_ms);
            // The slow way: the newest reading that is old enough and all after it, out of everything.
            const since = all.findLastIndex((each) => each.at_ms <= at_ms - for_ms);
            const values =
              since < 0
                ? []
                : all
                    .slice(since)
                    .map((each) => each.value_nm)
                    .toSorted((a, b) => a - b);
            const isStill = values.length >= 3 && Math.max(...values) - Math.min(...values) <= within_nm;
            expect(levelOf(recent, { within_nm, for_ms })).toBe(
              isStill ? values[Math.ceil(values.length / 2) - 1] : null,
            );
          }
        },
      ),
    );
  });
});

describe('a spot read by air', () => {
  test('gives push-down and air travel, whatever they are and however fast the gauge speaks', () => {
    const truth = fc.record({
      push_nm: fc.integer({ min: thou, max: 20 * thou }),
      air_nm: fc.integer({ min: 5 * thou, max: 80 * thou }),
    });
    fc.assert(
      fc.property(
        truth,
        fc.constantFrom(10, 40, 100),
        fc.constantFrom('steady', 'bounces'),
        (given, every_ms, kind) => {
          const found = offer(traceOf({ truth: given, kind, every_ms }));
          expect(found).toMatchObject({ isMoving: false, isBackSeen: true, offer: { kind: 'push and air' } });
          if (found.offer?.kind !== 'push and air') return;
          // Two roundings to the step, and up to what counts as still while it is coming to its level.
          expect(Math.abs(found.offer.push_nm - given.push_nm)).toBeLessThanOrEqual(2000 + rules.within_nm);
          expect(Math.abs(found.offer.air_nm - given.air_nm)).toBeLessThanOrEqual(2000 + rules.within_nm);
        },
      ),
    );
  });

  test('is found through noise when more unrest counts as still, and drift moves it by no more than it drifted', () => {
    const truth = { push_nm: 4 * thou, air_nm: 23 * thou };
    const noisy = { ...rules, within_nm: 26_000 };
    for (const [kind, noise_nm] of [
      ['steady', 12_700],
      ['drifts', 0],
      ['drifts', 12_700],
    ] as const) {
      const found = offer(traceOf({ truth, kind, noise_nm, every_ms: 20 }), 'push and air', noisy);
      if (found.offer?.kind !== 'push and air') throw new Error(`${kind}: ${JSON.stringify(found)}`);
      expect(Math.abs(found.offer.push_nm - truth.push_nm)).toBeLessThanOrEqual(2 * 12_700 + 2000);
      expect(Math.abs(found.offer.air_nm - truth.air_nm)).toBeLessThanOrEqual(thou + 2 * 12_700);
    }
  });

  test('is never offered as settled while the plate moves', () => {
    const truth = { push_nm: 4 * thou, air_nm: 23 * thou };
    let seen = nothingSeen;
    for (const sample of traceOf({ truth, every_ms: 20, until_ms: 11_900 })) {
      seen = followPlate(seen, sample, rules);
      const now = offerOf(seen, 'push and air', rules);
      const wasFar = [100, 200, 300].some(
        (ago) => Math.abs(plateLevel(truth, sample.at_ms - ago, 'steady') - sample.value_nm) > rules.within_nm + 1000,
      );
      if (now.offer && sample.at_ms > 300) expect(now.isMoving || !wasFar).toBe(true);
    }
  });

  test('says in turn what is still missing', () => {
    const rest = [0, 1000] as const;
    const pressed = [-4 * thou, 1000] as const;
    const air = [23 * thou, 1000] as const;
    expect(offer(levels([3 * thou, 2000]))).toEqual({ offer: null, lacks: 'rest' });
    expect(offer(levels(rest))).toEqual({ offer: null, lacks: 'push' });
    expect(offer(levels(rest, air))).toEqual({ offer: null, lacks: 'push' });
    expect(offer(levels(rest, pressed, rest))).toEqual({ offer: null, lacks: 'air' });
    expect(offer(levels(rest, pressed, [-1.5 * thou, 1000]))).toEqual({ offer: null, lacks: 'zero' });
    expect(offer(levels(rest, pressed, [1.5 * thou, 1000]))).toEqual({ offer: null, lacks: 'zero' });
    const whole = { kind: 'push and air', push_nm: 4 * thou, air_nm: 23 * thou };
    expect(offer(levels(rest, pressed, rest, air))).toEqual({ offer: whole, isMoving: false, isBackSeen: true });
    // Let go and aired at once: nobody saw it come back to zero.
    expect(offer(levels(rest, pressed, air))).toEqual({ offer: whole, isMoving: false, isBackSeen: false });
    expect(offer(levels(rest, pressed, rest, air, [12 * thou, 100]))).toMatchObject({ offer: whole, isMoving: true });
    expect(offer(levels(rest, pressed, rest, air, rest))).toMatchObject({ offer: whole, isMoving: false });
  });

  test('takes the deepest of a push and the highest of the air, and begins again with the next push', () => {
    const go = levels([0, 800], [-3 * thou, 800], [-4 * thou, 800], [0, 800], [22 * thou, 800], [23 * thou, 800]);
    expect(offer(go)).toMatchObject({ offer: { push_nm: 4 * thou, air_nm: 23 * thou } });
    const again = levels([0, 800], [-4 * thou, 800], [0, 800], [23 * thou, 800], [0, 800], [-2 * thou, 800], [0, 800]);
    expect(offer(again)).toEqual({ offer: null, lacks: 'air' });
    expect(
      offer([...again, ...levels([25 * thou, 800]).map((each) => ({ ...each, at_ms: each.at_ms + 99_000 }))]),
    ).toMatchObject({
      offer: { push_nm: 2 * thou, air_nm: 25 * thou },
    });
  });

  test('from the pressed plate needs no push; a travel is the far end; a size is where it stands', () => {
    expect(offer(levels([0, 800], [27 * thou, 800]), 'whole')).toMatchObject({
      offer: { kind: 'whole', air_nm: 27 * thou },
    });
    expect(offer(levels([0, 800], [-31 * thou, 800]), 'travel')).toMatchObject({ offer: { amount_nm: 31 * thou } });
    expect(offer(levels([0, 800], [31 * thou, 800]), 'travel')).toMatchObject({ offer: { amount_nm: 31 * thou } });
    expect(offer(levels([61 * thou, 800]), 'size')).toMatchObject({ offer: { amount_nm: 61 * thou } });
    expect(offer(levels([0, 100], [9 * thou, 100]), 'size')).toEqual({ offer: null, lacks: 'stillness' });
  });
});

describe('a piston that will not hold', () => {
  test('is seen however fast it loses, and one that holds is never called so', () => {
    const truth = { push_nm: 4 * thou, air_nm: 23 * thou };
    for (const every_ms of [10, 50, 100]) {
      expect(offer(traceOf({ truth, kind: 'will not hold', every_ms }))).toEqual({ offer: null, lacks: 'hold' });
      for (const kind of ['steady', 'bounces', 'drifts'] as const) {
        const by = { ...rules, within_nm: 8_000 };
        expect(
          follow(traceOf({ truth, kind, every_ms, until_ms: 12_000 }), by).isLosingAir,
          `${kind} ${every_ms}`,
        ).toBe(false);
      }
    }
    // Half a thou a second: it looks still all the while, and sinks.
    const sinking = Array.from(
      { length: 60 },
      (_, i): Sample => ({ at_ms: 5000 + i * 100, value_nm: 23 * thou - i * 1270 }),
    );
    expect(
      offer([...levels([0, 800], [-4 * thou, 800], [0, 800]), ...sinking], 'push and air', {
        ...rules,
        within_nm: 8_000,
      }),
    ).toEqual({
      offer: null,
      lacks: 'hold',
    });
  });
});

test('a day at the bench keeps no more of the trace than the time it looks back', () => {
  const truth = { push_nm: 4 * thou, air_nm: 23 * thou };
  const go = traceOf({ truth, every_ms: 10, until_ms: 11_990 });
  let seen = nothingSeen;
  // Ten hours at ten a second are 360 000 readings; here as many, at a hundred.
  for (let round = 0; round < 300; round += 1) {
    for (const { at_ms, value_nm } of go) seen = followPlate(seen, { at_ms: at_ms + round * 12_000, value_nm }, rules);
    expect(seen.recent.length).toBeLessThanOrEqual(102);
  }
  expect(offerOf(seen, 'push and air', rules)).toMatchObject({ offer: { kind: 'push and air' } });
});
