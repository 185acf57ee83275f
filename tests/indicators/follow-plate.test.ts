// What is found in a gauge's trace, against plates whose truth is known and a slower, obvious way to see stillness.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { followPlate, nothingSeen, type PlateRules, type PlateSeen } from '../../app/indicators/follow-plate.ts';
import { offerOf, type Wanted } from '../../app/indicators/plate-offer.ts';
import type { Sample } from '../../app/indicators/read-line.ts';
import { plateLevel } from '../../app/indicators/simulated-plate.ts';
import { levelOf, type Recent, withSample } from '../../app/indicators/stillness.ts';
import { leakingTrace, traceOf, turnedTrace } from './trace-of.ts';

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

const later = (by_ms: number, samples: readonly Sample[]) =>
  samples.map((each) => ({ ...each, at_ms: each.at_ms + by_ms }));

describe('a drum that is turned before the push', () => {
  const turned = fc.record({
    truth: fc.record({
      push_nm: fc.integer({ min: 2 * thou, max: 20 * thou }),
      air_nm: fc.integer({ min: 5 * thou, max: 80 * thou }),
    }),
    turned_nm: fc.integer({ min: -25 * thou, max: 25 * thou }),
    // Slower, and a wave of the plate stands still under the gauge as a pressed plate does.
    turn_ms: fc.integer({ min: 1000, max: 3000 }),
    every_ms: fc.constantFrom(10, 40, 100),
  });

  test('and zeroed is never a push: without one nothing is offered', () => {
    fc.assert(
      fc.property(turned, (given) => {
        const found = offer(turnedTrace({ ...given, isZeroed: true, isPushed: false }));
        expect(found).toEqual({ offer: null, lacks: 'push' });
      }),
    );
  });

  test('and zeroed, then pushed, gives the push alone', () => {
    fc.assert(
      fc.property(turned, (given) => {
        const found = offer(turnedTrace({ ...given, isZeroed: true, isPushed: true }));
        if (found.offer?.kind !== 'push and air') throw new Error(JSON.stringify(found));
        expect(Math.abs(found.offer.push_nm - given.truth.push_nm)).toBeLessThanOrEqual(2000 + rules.within_nm);
        expect(Math.abs(found.offer.air_nm - given.truth.air_nm)).toBeLessThanOrEqual(2000 + rules.within_nm);
      }),
    );
  });

  test('and not zeroed is offered nothing from that level', () => {
    fc.assert(
      fc.property(turned, (given) => {
        // Within what a plate may be off zero, nobody needs to zero it.
        fc.pre(Math.abs(given.turned_nm) > 1.5 * thou);
        // The whole lift still stands over rest, so that the air is seen.
        fc.pre(given.turned_nm + given.truth.air_nm > 4 * thou && given.turned_nm < 0);
        const found = offer(turnedTrace({ ...given, isZeroed: false, isPushed: false }));
        expect(found.offer === null || !found.isBackSeen).toBe(true);
      }),
    );
  });

  test('is pushed, let go and only then zeroed: the spot is done again', () => {
    const [rest, at, down] = [0, -5 * thou, -9 * thou];
    const zeroedLate = levels([rest, 800], [at, 800], [down, 800], [at, 800], [0, 800]);
    expect(offer(zeroedLate)).toEqual({ offer: null, lacks: 'push' });
    const again = [...zeroedLate, ...later(99_000, levels([0, 800], [-4 * thou, 800], [0, 800], [23 * thou, 800]))];
    expect(offer(again)).toMatchObject({ offer: { push_nm: 4 * thou, air_nm: 23 * thou }, isBackSeen: true });
  });

  test('may look like a slow push, which is believed the second time', () => {
    const slowly = levels([0, 800], [-thou, 300], [-2 * thou, 300], [-3 * thou, 300], [-4 * thou, 800], [0, 800]);
    expect(offer(slowly)).toEqual({ offer: null, lacks: 'push' });
    const twice = [...slowly, ...later(99_000, [...slowly, ...later(9000, levels([23 * thou, 800]))])];
    expect(offer(twice)).toMatchObject({ offer: { push_nm: 4 * thou, air_nm: 23 * thou } });
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
    const letGo = [-2 * thou, 100] as const;
    const deeper = levels([0, 800], [-3 * thou, 800], [-4 * thou, 800], letGo, [0, 800]);
    const go = [...deeper, ...later(99_000, levels([22 * thou, 800], [23 * thou, 800]))];
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
      expect(offer(traceOf({ truth, kind: 'will not hold', every_ms }))).toMatchObject({
        offer: { kind: 'will not hold' },
        isMoving: false,
      });
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
    ).toMatchObject({ offer: { kind: 'will not hold' } });
  });

  test('is seen too after the air had stood still, unless a hand closed the valve', () => {
    const truth = fc.record({
      push_nm: fc.integer({ min: thou, max: 10 * thou }),
      air_nm: fc.integer({ min: 15 * thou, max: 80 * thou }),
    });
    fc.assert(
      fc.property(
        truth,
        fc.integer({ min: 1400, max: 2000 }),
        fc.integer({ min: 900, max: 4000 }),
        fc.constantFrom(10, 40, 100),
        (given, stands_ms, leak_ms, every_ms) => {
          const samples = leakingTrace(given, stands_ms, leak_ms, every_ms);
          const stood = samples.filter(({ at_ms }) => at_ms < 6000 + stands_ms);
          expect(offer(stood)).toMatchObject({ offer: { kind: 'push and air' } });
          expect(offer(samples)).toMatchObject({ offer: { kind: 'will not hold' } });
        },
      ),
    );
    const closed = offer(traceOf({ truth: { push_nm: 4 * thou, air_nm: 23 * thou }, every_ms: 20, until_ms: 11_900 }));
    expect(closed).toMatchObject({ offer: { kind: 'push and air' } });
  });

  test('is forgotten with new air that holds', () => {
    const losing = levels([0, 800], [-4 * thou, 800], [0, 800], [23 * thou, 800], [20 * thou, 800], [0, 800]);
    expect(offer(losing)).toMatchObject({ offer: { kind: 'will not hold' } });
    expect(offer([...losing, ...later(99_000, levels([24 * thou, 800]))])).toMatchObject({
      offer: { kind: 'push and air', push_nm: 4 * thou, air_nm: 24 * thou },
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
