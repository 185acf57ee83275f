// What would decide a close call, against the obvious way: every remedy written out as a budget of its own and judged by
// the zones of ISO 14253-1 (in inside the limits by U, out outside them by U, else neither).
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  baseOnPumpLine,
  feelerBiasLine,
  handForceLine,
  offSquareLine,
  permittedErrorLine,
  resolutionLine,
} from '../../app/readings/budget-lines.ts';
import { type CloseCall, mostMoreReads, type Remedy, whatWouldDecide } from '../../app/readings/what-would-decide.ts';
import type { HoldsFor } from '../../app/specs/spec-sheet.ts';
import { studentTCoverageFactor } from '../../app/statistics/student-t.ts';

const endless = Number.POSITIVE_INFINITY;

type Case = {
  readonly low: number | null;
  readonly high: number | null;
  readonly holdsFor: HoldsFor;
  readonly spots: readonly { readonly value: number; readonly reads: number }[];
  readonly deviation: number;
  readonly degreesOfFreedom: number;
  readonly isLearning: boolean;
  readonly lines: readonly { readonly name: string; readonly u: number; readonly nu: number }[];
};

function callOf(each: Case): CloseCall {
  const values = each.spots.map(({ value }) => value);
  const limits =
    each.low === null
      ? ({ kind: 'maximum', high: each.high ?? 0 } as const)
      : each.high === null
        ? ({ kind: 'minimum', low: each.low } as const)
        : ({ kind: 'range', low: each.low, high: each.high } as const);
  return {
    check: { limits, holdsFor: each.holdsFor, unit: 'thou', quantity: 'length' },
    rule: 'guarded',
    mean: values.reduce((sum, value) => sum + value, 0) / values.length,
    min: Math.min(...values),
    max: Math.max(...values),
    readsAtSpots: each.spots.map(({ reads }) => reads),
    quality: {
      repeatability: { standardDeviation: each.deviation, degreesOfFreedom: each.degreesOfFreedom },
      fixedLines: each.lines.map(({ name, u, nu }) => ({ name, standardUncertainty: u, degreesOfFreedom: nu })),
      standsAlone: false,
      coverage: 0.95,
    },
    isLearning: each.isLearning,
  };
}

/** U of the mean of spots read so often (JCGM 100:2008 4.2.3, 5.1.2, G.4.1). */
function reach(each: Case, reads: readonly number[], more: number): number {
  const scatter = each.deviation * Math.sqrt(reads.reduce((sum, n) => sum + 1 / n, 0) / reads.length ** 2);
  const nu = each.degreesOfFreedom + (each.isLearning ? more : 0);
  const u = Math.sqrt(scatter ** 2 + each.lines.reduce((sum, line) => sum + line.u ** 2, 0));
  const ofLines = each.lines.reduce((sum, line) => sum + line.u ** 4 / line.nu, 0);
  return u * studentTCoverageFactor(0.95, u ** 4 / (scatter ** 4 / nu + ofLines));
}

type Zone = 'in' | 'out' | 'close';

function zone(value: number, by: number, low: number, high: number): Zone {
  if (value >= low + by && value <= high - by) return 'in';
  return value < low - by || value > high + by ? 'out' : 'close';
}

function isClose(each: Case, more = 0): boolean {
  const reads = each.spots.map((spot) => spot.reads);
  for (let i = 0; i < more; i += 1) {
    const least = Math.min(...reads);
    reads.splice(reads.indexOf(least), 1, least + 1);
  }
  const values = each.spots.map(({ value }) => value);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const tightest = Math.min(...values);
  const low = each.low ?? -endless;
  const high = each.high ?? endless;
  const ofMean = zone(mean, reach(each, reads, more), low, high);
  const ofSpot = reach(each, [Math.min(...reads)], more);
  switch (each.holdsFor) {
    case 'mean':
      return ofMean === 'close';
    case 'tightest spot':
      return zone(tightest, ofSpot, low, high) === 'close';
    case 'every spot': {
      const ends = [zone(tightest, ofSpot, low, endless), zone(Math.max(...values), ofSpot, -endless, high)];
      return !ends.includes('out') && ends.includes('close');
    }
    case 'mean and tightest':
      return ofMean === 'in' && tightest < low ? zone(tightest, ofSpot, low, endless) !== 'out' : ofMean === 'close';
  }
}

function without(each: Case, name: string, share: number): Case {
  const lines = each.lines.map((line) =>
    line.name !== name
      ? line
      : { ...line, u: line.u * share, nu: name === feelerBiasLine ? (line.nu + 1) / share ** 2 - 1 : line.nu },
  );
  return { ...each, lines };
}

// What a bench can do about a line, largest step last.
const steps: Record<string, readonly number[]> = {
  [handForceLine]: [0.5],
  [baseOnPumpLine]: [0],
  [resolutionLine]: [0.5, 0.1],
  [permittedErrorLine]: [0.5, 0.1],
  [offSquareLine]: [0],
  [feelerBiasLine]: [0.5],
};

function withAll(each: Case, remedies: readonly Remedy[]): boolean {
  let now = each;
  let more = 0;
  for (const remedy of remedies) {
    if (remedy.kind === 'reads') more = remedy.more;
    else now = without(now, remedy.line.name, remedy.share);
  }
  return isClose(now, more);
}

const cases = fc.record({
  low: fc.option(fc.constant(20), { freq: 4 }),
  high: fc.constantFrom(24, 30),
  holdsFor: fc.constantFrom<HoldsFor>('mean', 'tightest spot', 'every spot', 'mean and tightest'),
  spots: fc.array(
    fc.record({
      value: fc.integer({ min: 180, max: 320 }).map((tenths) => tenths / 10),
      reads: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 4 },
  ),
  deviation: fc.integer({ min: 1, max: 20 }).map((tenths) => tenths / 10),
  degreesOfFreedom: fc.integer({ min: 5, max: 60 }),
  isLearning: fc.boolean(),
  lines: fc.uniqueArray(
    fc
      .record({
        name: fc.constantFrom(...Object.keys(steps)),
        u: fc.integer({ min: 1, max: 120 }).map((hundredths) => hundredths / 100),
        nu: fc.constant(endless),
      })
      .map((line) => (line.name === feelerBiasLine ? { ...line, nu: 9 } : line)),
    { selector: ({ name }) => name, maxLength: 5 },
  ),
});

describe('what would decide a close call', () => {
  test('is null exactly where nothing is close', () => {
    fc.assert(
      fc.property(cases, (each) => {
        expect(whatWouldDecide(callOf(each)) === null).toBe(!isClose(each));
      }),
      { numRuns: 500 },
    );
  });

  test('is every single remedy that does, each with the smallest step', () => {
    fc.assert(
      fc.property(cases, (each) => {
        fc.pre(isClose(each));
        const found = whatWouldDecide(callOf(each));
        const counts = Array.from({ length: mostMoreReads }, (_, index) => index + 1);
        const reads = counts.find((more) => !isClose(each, more));
        const lines = each.lines.flatMap(({ name }) => {
          const share = steps[name]?.find((step) => !isClose(without(each, name, step)));
          return share === undefined ? [] : [`${name} ${share}`];
        });
        const expected = [...(reads === undefined ? [] : [`reads ${reads}`]), ...lines];
        const said = found?.kind === 'one' ? found.remedies.map(named) : [];
        expect(said.toSorted()).toEqual(expected.toSorted());
      }),
      { numRuns: 1000 },
    );
  });

  test('is a set that decides together and of which nothing can be left out, or nothing when everything is not enough', () => {
    const seen = { together: 0, nothing: 0 };
    fc.assert(
      fc.property(cases, (each) => {
        const found = whatWouldDecide(callOf(each));
        fc.pre(found?.kind === 'together' || found?.kind === 'nothing');
        if (found?.kind === 'together') {
          seen.together += 1;
          expect(withAll(each, found.remedies)).toBe(false);
          for (const remedy of found.remedies) {
            const less = remedy.kind === 'reads' && remedy.more > 1 ? [{ ...remedy, more: remedy.more - 1 }] : [];
            const others = found.remedies.filter((other) => other !== remedy);
            expect(withAll(each, [...others, ...less])).toBe(true);
          }
        } else {
          seen.nothing += 1;
          for (const set of subsets(each.lines.map(({ name }) => name))) {
            const lines = set.map((name) => [name, steps[name]?.at(-1) ?? 1] as const);
            const shrunk = lines.reduce<Case>((now, [name, share]) => without(now, name, share), each);
            expect(isClose(shrunk, 0) && isClose(shrunk, mostMoreReads)).toBe(true);
          }
        }
      }),
      { numRuns: 300 },
    );
    expect(Math.min(seen.together, seen.nothing)).toBeGreaterThan(0);
  });

  test('says how far what is judged lies from its limit, where nothing decides', () => {
    const call = callOf({
      low: 20,
      high: 30,
      holdsFor: 'every spot',
      spots: [25, 29.75].map((value) => ({ value, reads: 1 })),
      deviation: 0.7,
      degreesOfFreedom: endless,
      isLearning: false,
      lines: [{ name: handForceLine, u: 1, nu: endless }],
    });
    expect(whatWouldDecide(call)).toEqual({ kind: 'nothing', distance: 0.25 });
  });
});

function named(remedy: Remedy): string {
  return remedy.kind === 'reads' ? `reads ${remedy.more}` : `${remedy.line.name} ${remedy.share}`;
}

function subsets<T>(all: readonly T[]): T[][] {
  return all.reduce<T[][]>((sets, each) => sets.flatMap((set) => [set, [...set, each]]), [[]]);
}
