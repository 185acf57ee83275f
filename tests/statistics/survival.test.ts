// What must hold of survival statistics whatever the data, and what they refuse.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareTails } from '../../app/statistics/chi-square.ts';
import { cox, coxOfGroup, scoreOfGroup } from '../../app/statistics/cox.ts';
import { kaplanMeier } from '../../app/statistics/kaplan-meier.ts';
import { logRank } from '../../app/statistics/log-rank.ts';
import { weibull } from '../../app/statistics/weibull.ts';
import { expectAllRelative, expectRelative } from './relative.ts';
import { accepted, expectRefusal } from './result.ts';

type Subject = { time: number; event: number; x: number };

/** Whole times from a short range, so that many are equal. */
const tied: fc.Arbitrary<Subject[]> = fc.array(
  fc.record({ time: fc.integer({ min: 1, max: 12 }), event: fc.constantFrom(0, 1), x: fc.integer({ min: 0, max: 3 }) }),
  { minLength: 4, maxLength: 40 },
);

const columns = (subjects: readonly Subject[]) => ({
  time: subjects.map((subject) => subject.time),
  event: subjects.map((subject) => subject.event),
});
const factor = (subjects: readonly Subject[]) => subjects.map((subject) => subject.x);
const hasEvents = (subjects: readonly Subject[]) => subjects.some((subject) => subject.event === 1);

describe('Kaplan and Meier', () => {
  it('without anybody lost it is the part that is left', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 50 }), (time) => {
        const { steps } = accepted(kaplanMeier({ time, event: time.map(() => 1) }));
        for (const step of steps) {
          expect(step.survival).toBeCloseTo(time.filter((each) => each > step.time).length / time.length, 12);
        }
      }),
    );
  });

  it('does not care about the order of the rows or the unit of time', () => {
    fc.assert(
      fc.property(tied, fc.integer(), (subjects, seed) => {
        fc.pre(hasEvents(subjects));
        const found = accepted(kaplanMeier(columns(subjects)));
        const shuffled = subjects.toSorted(
          (a, b) => ((a.time * 7 + a.x * 3 + seed) % 5) - ((b.time * 7 + b.x * 3 + seed) % 5),
        );
        expect(accepted(kaplanMeier(columns(shuffled)))).toEqual(found);
        const scaled = accepted(kaplanMeier(columns(subjects.map((each) => ({ ...each, time: each.time * 1e6 })))));
        expect(scaled.steps.map((step) => step.survival)).toEqual(found.steps.map((step) => step.survival));
        expect(scaled.median).toBe(found.median === null ? null : found.median * 1e6);
      }),
    );
  });

  it('a curve level at one half has its median in the middle of the stretch', () => {
    // As R’s survival 3.5-3 prints them; a stretch that no event ends says only when one half was reached.
    expect(accepted(kaplanMeier({ time: [1, 2, 3, 4], event: [1, 1, 1, 1] })).median).toBe(2.5);
    expect(accepted(kaplanMeier({ time: [1, 2, 10, 10], event: [1, 1, 0, 0] })).median).toBe(2);
    expect(accepted(kaplanMeier({ time: [2, 1000], event: [1, 0] }))).toMatchObject({
      median: 2,
      medianInterval: [2, null],
    });
    expect(accepted(kaplanMeier({ time: [2, 5, 1000, 2000], event: [1, 1, 0, 1] }))).toMatchObject({
      median: 1002.5,
      medianInterval: [2, null],
    });
  });

  it('two subjects are enough, and nobody left has no limits', () => {
    const { steps, medianInterval } = accepted(kaplanMeier({ time: [1, 2], event: [1, 1] }));
    expect(steps[1]).toMatchObject({
      survival: 0,
      standardError: null,
      lower: null,
      upper: null,
      cumulativeHazard: 1.5,
    });
    expect(medianInterval).toEqual([1, null]);
  });
});

describe('the log-rank test', () => {
  it('finds no difference between identical groups', () => {
    fc.assert(
      fc.property(tied, (subjects) => {
        const twice = [...subjects, ...subjects];
        fc.pre(hasEvents(subjects) && new Set(subjects.map((each) => each.time)).size > 1);
        const found = logRank(
          columns(twice),
          twice.map((_, i) => (i < subjects.length ? 'first' : 'second')),
        );
        fc.pre(found.ok);
        expect(accepted(found).chiSquare).toBeCloseTo(0, 12);
        expect(accepted(found).p).toBeCloseTo(1, 6);
      }),
    );
  });

  it('expects as many events as it observes, and is the score test of Cox’s model where no times are tied', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 1000 }), { minLength: 4, maxLength: 40 }),
        fc.integer({ min: 1, max: 1e6 }),
        (time, seed) => {
          const event = time.map((each) => ((each * 31 + seed) % 3 === 0 ? 0 : 1));
          const group = time.map((each) => (each * 17 + seed) % 2);
          const test = logRank({ time, event }, group);
          const model = cox({ time, event }, group, 'efron');
          fc.pre(test.ok && model.ok);
          const { groups, chiSquare } = accepted(test);
          expect(groups[0]!.expected + groups[1]!.expected).toBeCloseTo(groups[0]!.observed + groups[1]!.observed, 9);
          expect(accepted(model).score).toBeCloseTo(chiSquare, 9);
        },
      ),
    );
  });

  it('three groups agree with inverting the full covariance by hand', () => {
    // Times 1, 2, 3 of A, B, C, one each, all events. By hand: E = (1/3, 1/3 + 1/2, 1/3 + 1/2 + 1); V of A and B is
    // [[2/9, −1/9], [−1/9, 2/9 + 1/4]]; (O − E) = (2/3, 1/6); χ² = 2.2352941…
    const found = accepted(logRank({ time: [1, 2, 3], event: [1, 1, 1] }, ['A', 'B', 'C']));
    expectAllRelative(
      found.groups.map((group) => group.expected),
      [1 / 3, 5 / 6, 11 / 6],
      1e-14,
    );
    const [a, b, c] = [2 / 9, -1 / 9, 2 / 9 + 1 / 4];
    const [u, v] = [2 / 3, 1 / 6];
    expectRelative(found.chiSquare, (c * u * u - 2 * b * u * v + a * v * v) / (a * c - b * b), 1e-12);
    expect(found.degreesOfFreedom).toBe(2);
  });
});

describe('Cox’s model', () => {
  it('stands at the top of its likelihood: a plain sum over risk sets falls on either side', () => {
    fc.assert(
      fc.property(tied, (subjects) => {
        const found = cox(columns(subjects), factor(subjects), 'breslow');
        fc.pre(found.ok);
        const { coefficient, standardError, logLikelihood } = accepted(found);
        const plain = (trial: number) =>
          subjects
            .filter((subject) => subject.event === 1)
            .reduce((sum, { time, x }) => {
              const atRisk = subjects.filter((other) => other.time >= time);
              return sum + trial * x - Math.log(atRisk.reduce((total, other) => total + Math.exp(trial * other.x), 0));
            }, 0);
        expectRelative(plain(coefficient), logLikelihood[1], 1e-9);
        expectRelative(plain(0), logLikelihood[0], 1e-9);
        const aside = Math.min(0.1, standardError / 10);
        expect(plain(coefficient + aside)).toBeLessThan(logLikelihood[1]);
        expect(plain(coefficient - aside)).toBeLessThan(logLikelihood[1]);
      }),
    );
  });

  it('does not care about the unit or the zero of the factor, nor about the unit of time', () => {
    fc.assert(
      fc.property(tied, (subjects) => {
        const found = cox(columns(subjects), factor(subjects), 'efron');
        fc.pre(found.ok);
        const moved = subjects.map((each) => ({ ...each, time: each.time * 1e6, x: 1e6 + each.x / 1000 }));
        const again = accepted(cox(columns(moved), factor(moved), 'efron'));
        expect(again.coefficient / 1000).toBeCloseTo(accepted(found).coefficient, 6);
        expectRelative(again.standardError, accepted(found).standardError * 1000, 1e-6);
        expect(again.likelihoodRatio).toBeCloseTo(accepted(found).likelihoodRatio, 6);
      }),
    );
  });
});

describe('Cox’s model of a group by counts', () => {
  it('says what it says of every subject by itself', () => {
    const subject = fc.record({
      time: fc.integer({ min: 1, max: 6 }),
      event: fc.nat({ max: 1 }),
      x: fc.nat({ max: 1 }),
    });
    fc.assert(
      fc.property(fc.array(subject, { minLength: 1, maxLength: 40 }), (subjects) => {
        const times = [1, 2, 3, 4, 5, 6];
        const count = (x: number) =>
          times.map((time) => {
            const alike = subjects.filter((each) => each.x === x && each.time === time);
            return { count: alike.length, came: alike.filter(({ event }) => event === 1).length };
          });
        const alike = (x: number) => {
          const counted = count(x);
          return { counts: counted.map((each) => each.count), events: counted.map(({ came }) => came) };
        };
        const byCounts = coxOfGroup(alike(1), alike(0), 'efron');
        const followUp = { time: subjects.map(({ time }) => time), event: subjects.map(({ event }) => event) };
        const bySubjects = cox(
          followUp,
          subjects.map(({ x }) => x),
          'efron',
        );
        expect(byCounts.ok).toBe(bySubjects.ok);
        if (!byCounts.ok || !bySubjects.ok) return;
        expectAllRelative(byCounts.value.logLikelihood, bySubjects.value.logLikelihood, 1e-9);
        expect(byCounts.value.coefficient).toBeCloseTo(bySubjects.value.coefficient, 6);
        expectRelative(byCounts.value.standardError, bySubjects.value.standardError, 1e-6);
        const { p } = accepted(scoreOfGroup(alike(1), alike(0), 'efron'));
        expect(p).toBeCloseTo(chiSquareTails(bySubjects.value.score, 1).upper, 6);
      }),
    );
  });
});

describe('the Weibull distribution', () => {
  const lifetimes: fc.Arbitrary<Subject[]> = fc.array(
    fc.record({
      time: fc.integer({ min: 1, max: 10_000 }),
      event: fc.constantFrom(0, 1, 1),
      x: fc.constant(0),
    }),
    { minLength: 3, maxLength: 30 },
  );

  it('limits contain the estimate, whose likelihood a plain sum confirms', () => {
    fc.assert(
      fc.property(lifetimes, (subjects) => {
        const result = weibull(columns(subjects));
        fc.pre(result.ok);
        const found = accepted(result);
        const plain = (shape: number, scale: number) =>
          subjects.reduce((sum, { time, event }) => {
            const hazard = (time / scale) ** shape;
            return sum - hazard + event * (Math.log(shape / scale) + (shape - 1) * Math.log(time / scale));
          }, 0);
        expectRelative(plain(found.shape, found.scale), found.logLikelihood, 1e-6);
        for (const [shape, scale] of [
          [1.01, 1],
          [0.99, 1],
          [1, 1.01],
          [1, 0.99],
        ] as const) {
          expect(plain(found.shape * shape, found.scale * scale)).toBeLessThan(found.logLikelihood + 1e-9);
        }
        const holds = (interval: readonly (number | null)[], estimate: number) => {
          expect(interval[0] ?? 0).toBeLessThan(estimate);
          expect(interval[1] ?? Number.POSITIVE_INFINITY).toBeGreaterThan(estimate);
        };
        holds(found.shapeInterval, found.shape);
        holds(found.scaleInterval, found.scale);
      }),
    );
  });

  it('does not care about the unit of time', () => {
    fc.assert(
      fc.property(lifetimes, (subjects) => {
        const result = weibull(columns(subjects));
        fc.pre(result.ok);
        const found = accepted(result);
        const scaled = accepted(weibull(columns(subjects.map((each) => ({ ...each, time: each.time * 1e6 })))));
        expectRelative(scaled.shape, found.shape, 1e-8);
        expectRelative(scaled.scale, found.scale * 1e6, 1e-8);
      }),
    );
  });

  it('two observations can be enough', () => {
    expect(accepted(weibull({ time: [1, 2], event: [1, 0] })).shape).toBeGreaterThan(0);
    expectRefusal(weibull({ time: [1, 2], event: [0, 1] }), 'no-finite-estimate');
    expectRefusal(weibull({ time: [2, 2], event: [1, 1] }), 'no-finite-estimate');
  });
});

describe('times near 1e12 with a small spread', () => {
  it('keep the digits of the Weibull shape', () => {
    // Reference: the profile score solved in 50-digit arithmetic (mpmath).
    const { shape } = accepted(weibull({ time: [1e12, 1e12 + 1, 1e12 + 5], event: [1, 1, 1] }));
    expectRelative(shape, 469_849_003_233.0, 1e-9);
  });
});

describe('a hundred thousand builds in a handful of times', () => {
  const builds = 100_000;
  const time = Array.from({ length: builds }, (_, i) => 1 + (i % 5));
  const event = time.map((_, i) => (i % 2 === 0 ? 1 : 0));
  // Both factors go round with the times and events, so every tenth build is the same and nothing can be told apart.
  const half = time.map((_, i) => (Math.floor(i / 10) % 2 === 0 ? 'a' : 'b'));

  it('have the curve of the ten they repeat', () => {
    // By hand: each time has a tenth with the event and a tenth without; at risk 10, 8, 6, 4, 2 tenths.
    const { steps } = accepted(kaplanMeier({ time, event }));
    expect(steps.map((step) => step.atRisk)).toEqual([10, 8, 6, 4, 2].map((tenths) => tenths * 10_000));
    expectAllRelative(
      steps.map((step) => step.survival),
      [9 / 10, (9 * 7) / 80, (9 * 7 * 5) / 480, (9 * 7 * 5 * 3) / 1920, (9 * 7 * 5 * 3) / 3840],
      1e-12,
    );
  });

  it('and two halves of them do not differ', () => {
    expect(accepted(logRank({ time, event }, half)).chiSquare).toBeCloseTo(0, 9);
    for (const ties of ['efron', 'breslow'] as const) {
      const x = half.map((name) => (name === 'a' ? 0 : 1));
      expect(accepted(cox({ time, event }, x, ties)).coefficient).toBeCloseTo(0, 9);
    }
  });

  it('and a hundred thousand at a single time are one table, worked by hand', () => {
    // 20,000 of 60,000 and 10,000 of 40,000 fail at 1, the others are followed to 2. E = 30,000 · 0.6 = 18,000,
    // V = 30,000 · 0.6 · 0.4 · 70,000/99,999; Breslow: 20,000 = 30,000 · 6r/(6r + 4), so r = 4/3.
    const first = time.map((_, i) => i < 60_000);
    const failed = time.map((_, i) => (i < 20_000 || i >= 90_000 ? 1 : 0));
    const data = { time: failed.map((each) => 2 - each), event: failed };
    const { groups, chiSquare } = accepted(logRank(data, first.map(String)));
    expectRelative(groups[0]!.expected, 18_000, 1e-12);
    expectRelative(chiSquare, 2000 ** 2 / ((7200 * 70_000) / 99_999), 1e-9);
    const x = first.map(Number);
    expectRelative(accepted(cox(data, x, 'breslow')).hazardRatio, 4 / 3, 1e-9);
  });
});

describe('what survival statistics refuse', () => {
  const fine = { time: [1, 2, 3, 4], event: [1, 0, 1, 1] };
  const each = [
    ['kaplan-meier', kaplanMeier],
    ['weibull', weibull],
    ['log-rank', (data: typeof fine) => logRank(data, ['a', 'b', 'a', 'b'])],
    ['cox', (data: typeof fine) => cox(data, [0, 1, 2, 1], 'efron')],
  ] as const;

  it.each(each)('%s: no events, an event of 2, a negative or infinite time, columns of different length', (_, of) => {
    expectRefusal(of({ ...fine, event: [0, 0, 0, 0] }), 'no-events');
    expectRefusal(of({ ...fine, event: [1, 2, 0, 1] }), 'not-an-event');
    expectRefusal(of({ ...fine, time: [-1, 2, 3, 4] }), 'negative');
    expectRefusal(of({ ...fine, time: [1, 2, 3, Number.POSITIVE_INFINITY] }), 'not-finite');
    expectRefusal(of({ ...fine, event: [1, 0, 1] }), 'different-lengths');
  });

  it('a single group, a factor that is the same for everybody, all events in one group', () => {
    expectRefusal(logRank(fine, ['a', 'a', 'a', 'a']), 'one-group');
    expectRefusal(logRank(fine, ['a', 'b']), 'different-lengths');
    expectRefusal(logRank({ time: [1, 2], event: [0, 1] }, ['a', 'b']), 'never-together');
    expectRefusal(cox(fine, [7, 7, 7, 7], 'efron'), 'constant-covariate');
    expectRefusal(cox({ time: [1, 2, 3, 4], event: [1, 1, 0, 0] }, [1, 1, 0, 0], 'efron'), 'no-finite-estimate');
    expectRefusal(cox({ time: [3, 4, 1, 2], event: [1, 1, 0, 0] }, [1, 1, 0, 0], 'efron'), 'constant-covariate');
    expectRefusal(weibull({ ...fine, time: [0, 1, 2, 3] }), 'not-positive');
  });
});
