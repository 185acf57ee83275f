// What a take says. Expected uncertainties are written out from JCGM 100:2008 (4.2.3 scatter of a mean, 4.3.7 rectangular
// a/√3, F.2.2.1 resolution δ/√12, 6.3 expanded) by hand in each test, with the starting settings of a shop:
// repeatability 0.7 thou, hand force 1 thou, dial resolution 1 thou in each of two dial states.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluateTake, type TakeToEvaluate } from '../../app/readings/evaluate-take.ts';
import type { Setup } from '../../app/readings/readings.contract.ts';
import { figuresNow, type TakeFigures } from '../../app/readings/take-figures.ts';
import { type LineField, parseLine, type TypedReading } from '../../app/readings/typed-line.ts';
import { verdictWords } from '../../app/readings/verdict-words.ts';
import { startingSettings } from '../../app/shop/starting-settings.ts';
import type { Check, HoldsFor, Limits, ReadingMethod } from '../../app/specs/spec-sheet.ts';

const thou = 25_400;
const settings = startingSettings({ shopName: 'Harrow Lane', lengthUnit: 'thou', paper: 'letter' });
const setup: Setup = {
  dialBase: 'drum',
  isPistonSeated: true,
  air_pa: 275_790,
  port: 'A',
  waveState: 'none',
  plates: 'soaked',
  isOpenEndUp: true,
  dialType: 'plunger',
  dialFaceCounts: 100,
  mark: 'dot',
};

function checkWith(limits: Limits, more: Partial<Check> = {}): Check {
  return {
    name: 'Forward clearance',
    group: 'Clearance',
    packName: null,
    method: 'air',
    quantity: 'length',
    unit: 'thou',
    limits,
    holdsFor: 'mean',
    waveState: 'none',
    spots: 4,
    shims_nm: [],
    sourceNote: '',
    ...more,
  };
}

const range = (low: number, high: number): Limits => ({ kind: 'range', low: low * thou, high: high * thou });

function read(typed: string, method: LineField['method'] = 'air'): TypedReading {
  const parsed = parseLine(typed, {
    method,
    quantity: 'length',
    unit: 'thou',
    decimalMark: '.',
    dialFaceCounts: 100,
    isZeroedAgain: false,
    meaning: null,
  });
  if (!parsed.ok) throw new Error(parsed.refusal.message);
  return parsed.value;
}

function evaluate(
  check: Check,
  lines: readonly (readonly [spot: number, typed: string])[],
  more: Partial<TakeToEvaluate> = {},
) {
  const method = more.method ?? check.method;
  const readings = lines.map(([spot, typed]) => ({ spot, reading: read(typed, method) }));
  const figures = starting(check, method);
  return evaluateTake({ check, method, setup, figures, settings, by: 'RA', readings, willNotHold: false, ...more });
}

/** What a take leans on in a shop that has learned nothing yet. */
function starting(check: Check, method: ReadingMethod): TakeFigures {
  const repeats = { sumOfSquares: 0, degreesOfFreedom: 0 };
  return figuresNow(check, method, settings, { repeats, feelerAboveAir: null });
}

const around = (...typed: string[]) => typed.map((line, i) => [i + 1, line] as const);

describe('how sure a clearance by air is', () => {
  test('four spots: scatter by √4, hand and dial whole; about ± 1.5', () => {
    const { mean, standardUncertainty, budget } = evaluate(
      checkWith(range(20, 30)),
      around('4 21', '4 22', '5 22', '5 21'),
    );
    const byHand = Math.sqrt((0.7 / 2) ** 2 + 1 / 3 + 2 / 12) * thou;
    expect((mean ?? 0) / thou).toBe(26);
    expect(standardUncertainty).toBeCloseTo(byHand, 6);
    expect(budget.map(({ name }) => name)).toEqual(['repeatability', 'hand force on the push', 'dial resolution']);
    expect(budget.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(Math.max(...budget.map(({ share }) => share))).toBe(budget[1]?.share);
    expect(budget.map(({ basis }) => basis)).toEqual(['starting value', '', '']);
  });

  test('two spots do not yield an absurd interval: 26 and 28 are not ± 12.7', () => {
    const { expanded } = evaluate(checkWith(range(20, 30)), around('4 22', '4 24'));
    expect((expanded ?? 0) / thou).toBeLessThan(2);
  });

  test('one spot read twice: scatter by √2', () => {
    const { standardUncertainty } = evaluate(checkWith(range(45, 70)), [
      [1, '10 50'],
      [1, '10 50'],
    ]);
    expect(standardUncertainty).toBeCloseTo(Math.sqrt(0.49 / 2 + 1 / 3 + 2 / 12) * thou, 6);
  });

  test('a dial on the pump adds its line; a wavering needle too', () => {
    const onPump = evaluate(checkWith(range(20, 30)), around('4 21'), {
      setup: { ...setup, dialBase: 'pump or lower drum' },
    });
    expect(onPump.budget.map(({ name }) => name)).toContain('dial base on the pump');
    expect(onPump.remarks.join(' ')).toContain('read loose');
    const wavering = evaluate(checkWith(range(20, 30)), around('4-5 27'));
    expect(wavering.budget.find(({ name }) => name === 'wavering needle')?.standardUncertainty).toBeCloseTo(
      (0.5 / Math.sqrt(3)) * thou,
      6,
    );
  });

  test('pressures carry no stated repeatability: one read is judged plainly and says so, two speak for themselves', () => {
    const psi = checkWith(
      { kind: 'maximum', high: 68_948 },
      { method: 'drop', quantity: 'pressure', unit: 'psi', spots: 1 },
    );
    const one = evaluateTake({
      check: psi,
      method: 'drop',
      setup: null,
      figures: starting(psi, 'drop'),
      settings,
      by: 'RA',
      readings: [{ spot: 1, reading: { method: 'drop', amount: 20_684 } }],
      willNotHold: false,
    });
    expect([one.expanded, one.verdict.word, one.verdict.probabilityConforming]).toEqual([null, 'in', null]);
    expect(one.remarks).toContain('Repeatability unknown: judged without a guard.');
  });
});

describe('a pressure with a gauge named', () => {
  const pascals = 6894.757;
  const gauge = { tag: 'Line 300', permittedError: 13_790, offSquareDegrees: 0 };
  const read = (check: Check, amount: number, more = 1) =>
    evaluateTake({
      check,
      method: check.method,
      setup: null,
      figures: { ...starting(check, check.method), gauge },
      settings,
      by: 'RA',
      readings: Array.from({ length: more }, () => ({
        spot: 1,
        reading: { method: check.method === 'drop' ? 'drop' : 'direct', amount } as const,
      })),
      willNotHold: false,
    });
  const psi = { quantity: 'pressure', unit: 'psi', spots: 1 } as const;
  const line = checkWith({ kind: 'range', low: 482_633, high: 620_528 }, { ...psi, method: 'direct' });

  // 2 psi / √3 = 1.155 psi, and × 1.96 = 2.26: 75 psi is in from 70, 71 is not sure. A drop of two such readings is √2 of it.
  test('is as sure as the gauge is good, and a drop less so by √2', () => {
    const found = read(line, Math.round(75 * pascals));
    expect(found.budget).toEqual([
      { name: 'gauge permitted error', basis: 'Line 300', standardUncertainty: 13_790 / Math.sqrt(3), share: 1 },
    ]);
    expect((found.expanded ?? 0) / pascals).toBeCloseTo(2.263, 3);
    expect([found.verdict.word, found.remarks]).toEqual(['in', []]);
    const drop = checkWith({ kind: 'maximum', high: 68_948 }, { ...psi, method: 'drop' });
    expect((read(drop, 20_684).expanded ?? 0) / pascals).toBeCloseTo(3.201, 3);
  });

  test('says which gauge would decide it', () => {
    expect(read(line, Math.round(71 * pascals)).whatWouldDecide).toBe(
      'If it stays there, a gauge good to ± 0.2 instead of ± 2 would decide it.',
    );
  });
});

describe('in, tight, loose or too close to call', () => {
  const words = (limits: Limits, typed: string, more: Partial<Check> = {}) => {
    const check = checkWith(limits, { spots: 1, ...more });
    return verdictWords(evaluate(check, around(typed)).verdict, check);
  };

  // One read at one spot has u = √(0.49 + 1/3 + 2/12) = 0.995 thou, so its guard is just under 2.0.
  test.each([
    ['4 21', 'in'],
    ['4 26', 'too close to call'],
    ['4 27', 'too close to call'],
    ['4 29', 'loose by 3.0'],
    ['4 13', 'tight by 3.0'],
    ['4 17', 'too close to call'],
  ])('%s against 20 to 30 is %s', (typed, verdict) => {
    expect(words(range(20, 30), typed)).toBe(verdict);
  });

  test('under the simple rule there is no guard', () => {
    const check = checkWith(range(20, 30), { spots: 1 });
    const simple = evaluate(check, around('4 26'), {
      figures: { ...starting(check, 'air'), decisionRule: 'simple' },
    });
    expect(simple.verdict.word).toBe('in');
  });

  test('a band narrower than twice the guard says that this method cannot decide it', () => {
    const { verdict, acceptance } = evaluate(checkWith(range(24, 26), { spots: 1 }), around('4 21'));
    expect([verdict.word, acceptance]).toEqual(['too close to call', null]);
    expect(verdict.reason).toContain('cannot decide');
  });

  test.each([
    ['mean and tightest', 'tight'],
    ['mean', 'in'],
    ['tightest spot', 'tight'],
    ['every spot', 'tight'],
  ] as const)('limits that hold for the %s: a mean of 25 with one spot at 17 is %s', (holdsFor: HoldsFor, word) => {
    const check = checkWith(range(20, 35), { holdsFor });
    expect(evaluate(check, around('4 13', '4 23', '4 25', '4 23')).verdict.word).toBe(word);
  });

  // 28.55 lies 1.45 from its limit. u² = 0.49 / n + 1/3 + 2/12 asks for n = 11 reads: 1.96 × √0.5445 = 1.446. With half the
  // hand 1.96 × √(0.1225 + 1/12 + 2/12) = 1.20, with half the dial 1.96 × √(0.1225 + 1/3 + 1/24) = 1.38.
  test('too close to call says what would decide it', () => {
    const close = evaluate(checkWith(range(20, 30)), around('4 24.55', '4 24.55', '4 24.55', '4 24.55'));
    expect(close.verdict.word).toBe('too close to call');
    expect(close.whatWouldDecide).toBe(
      'If it stays there, 7 more reads would decide it, or a push held to ± 0.5 instead of ± 1, or a dial read to 0.5 instead of 1.',
    );
  });

  test('on its limit nothing would decide it', () => {
    expect(evaluate(checkWith(range(20, 30)), around('4 26')).whatWouldDecide).toBe(
      'It sits on the limit: no sharper reading at this bench would decide it.',
    );
  });

  // 29.2 lies 0.8 from its limit: the hand halved and the dial to tenths leave 1.96 × √(0.49 / n + 1/12 + 1/600) ≤ 0.8 from
  // n = 7 on, six more than the one there is; without either of them no number of reads is enough.
  test('what no one thing would decide says what would together', () => {
    expect(evaluate(checkWith(range(20, 30), { spots: 1 }), around('4 25.2')).whatWouldDecide).toBe(
      'No one thing would decide it; a push held to ± 0.5 instead of ± 1, a dial read to 0.1 instead of 1 and 6 more reads together would.',
    );
  });

  test('a pressure out of its band is low or high, not tight or loose', () => {
    const check = checkWith(
      { kind: 'minimum', low: 482_633 },
      { method: 'direct', quantity: 'pressure', unit: 'psi', spots: 1 },
    );
    const { verdict } = evaluateTake({
      check,
      method: 'direct',
      setup: null,
      figures: starting(check, 'direct'),
      settings,
      by: 'RA',
      readings: [{ spot: 1, reading: { method: 'direct', amount: 413_685 } }],
      willNotHold: false,
    });
    expect(verdictWords(verdict, check)).toBe('low by 10.0');
  });
});

describe('what is asked and said beside the number', () => {
  test('two reads of a spot that differ by more than the shop’s limit ask for a third, and only then', () => {
    const check = checkWith(range(20, 30));
    expect(
      evaluate(check, [
        [1, '4 20'],
        [1, '4 23'],
      ]).asks,
    ).toEqual([{ spot: 1, why: 'These two differ by 3.0 thou: once more.' }]);
    expect(
      evaluate(check, [
        [1, '4 20'],
        [1, '4 22'],
      ]).asks,
    ).toEqual([]);
    expect(
      evaluate(check, [
        [1, '4 20'],
        [1, '4 23'],
        [1, '4 22'],
      ]).asks,
    ).toEqual([]);
  });

  test('a spot far from the others is asked for once more', () => {
    const asks = evaluate(checkWith(range(20, 40)), around('4 21', '4 22', '4 29', '4 22')).asks;
    expect(asks.map(({ spot }) => spot)).toEqual([3]);
  });

  test('of three spots the odd one is asked about, not the two that agree', () => {
    const asks = evaluate(checkWith(range(20, 40)), around('4 27', '5 27', '5 36')).asks;
    // 31, 32, 41: the third lies 9.5 from the middle of the others.
    expect(asks).toEqual([{ spot: 3, why: 'This spot is 9.5 thou from the others: read it once more.' }]);
  });

  test('three spots leave no evidence of tilt, and none is claimed', () => {
    expect(evaluate(checkWith(range(20, 40), { spots: 3 }), around('4 21', '4 22', '4 29')).harmonic).toBeNull();
  });

  test('a pack that leans far beyond repeat scatter is called cocked', () => {
    const { harmonic, remarks } = evaluate(checkWith(range(20, 40)), around('4 20', '4 25', '4 30', '4 25'));
    expect((harmonic?.amplitude ?? 0) / thou).toBeCloseTo(5, 9);
    expect(harmonic?.isCocked).toBe(true);
    expect(remarks.join(' ')).toContain('Cocked');
  });

  test('another wave state than the spec means is said on the line', () => {
    const check = checkWith(range(45, 70), { waveState: 'in', spots: 1 });
    expect(evaluate(check, around('10 50'), { setup: { ...setup, waveState: 'left out' } }).remarks).toContain(
      'Read with the wave plate “left out”; the spec means “in”.',
    );
  });
});

describe('what must hold whatever is read', () => {
  const lines = fc.array(
    fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 90 })),
    {
      minLength: 1,
      maxLength: 12,
    },
  );
  const check = checkWith(range(20, 40));
  const evaluateLines = (taken: readonly (readonly [number, number, number])[]) =>
    evaluate(
      check,
      taken.map(([spot, push, air]) => [spot, `${push} ${air}`] as const),
    );

  test('the order in which spots were read changes nothing', () => {
    fc.assert(
      fc.property(lines, (taken) => {
        const forward = evaluateLines(taken);
        const backward = evaluateLines(taken.toReversed());
        expect(backward.mean).toBeCloseTo(forward.mean ?? Number.NaN, 6);
        expect(backward.expanded).toBeCloseTo(forward.expanded ?? Number.NaN, 6);
        expect(backward.verdict.word).toBe(forward.verdict.word);
      }),
    );
  });

  test('a thou more at every spot moves the mean by a thou and leaves its uncertainty alone', () => {
    fc.assert(
      fc.property(lines, (taken) => {
        const before = evaluateLines(taken);
        const after = evaluateLines(taken.map(([spot, push, air]) => [spot, push, air + 1] as const));
        expect((after.mean ?? 0) - (before.mean ?? 0)).toBeCloseTo(thou, 6);
        expect(after.expanded).toBeCloseTo(before.expanded ?? Number.NaN, 6);
      }),
    );
  });

  test('nothing that leaves is NaN or infinite', () => {
    fc.assert(
      fc.property(lines, (taken) => {
        const numbers = JSON.stringify(evaluateLines(taken), (_, value) => {
          if (typeof value === 'number' && !Number.isFinite(value)) throw new Error(`${value} left the evaluation`);
          return value;
        });
        expect(numbers).toContain('"mean":');
      }),
    );
  });
});
