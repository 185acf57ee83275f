// A repeat test from its first prompt to what it says, on a real file. The numbers are the published study of AIAG
// Measurement Systems Analysis, 4th edition (10 parts, 3 people, 3 trials; several public copies agree), typed in
// millimetres from 10 mm up, which leaves every spread as it was.
import { describe, expect, test } from 'vitest';
import { repeatsOfStudy } from '../../app/gauges/study-cells.ts';
import { studyOrder } from '../../app/gauges/study-order.ts';
import { checkNamed, openJob, readCheck } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';
import { expectAllRelative, expectRelative } from '../statistics/relative.ts';

const published: Record<string, readonly (readonly number[])[]> = {
  A: [
    [0.29, -0.56, 1.34, 0.47, -0.8, 0.02, 0.59, -0.31, 2.26, -1.36],
    [0.41, -0.68, 1.17, 0.5, -0.92, -0.11, 0.75, -0.2, 1.99, -1.25],
    [0.64, -0.58, 1.27, 0.64, -0.84, -0.21, 0.66, -0.17, 2.01, -1.31],
  ],
  B: [
    [0.08, -0.47, 1.19, 0.01, -0.56, -0.2, 0.47, -0.63, 1.8, -1.68],
    [0.25, -1.22, 0.94, 1.03, -1.2, 0.22, 0.55, 0.08, 2.12, -1.62],
    [0.07, -0.68, 1.34, 0.2, -1.28, 0.06, 0.83, -0.34, 2.19, -1.5],
  ],
  C: [
    [0.04, -1.38, 0.88, 0.14, -1.46, -0.29, 0.02, -0.46, 1.77, -1.49],
    [-0.11, -1.13, 1.09, 0.2, -1.07, -0.67, 0.01, -0.56, 1.45, -1.77],
    [-0.15, -0.96, 0.67, 0.11, -1.45, -0.49, 0.21, -0.49, 1.87, -2.16],
  ],
};
const parts = Array.from({ length: 10 }, (_, index) => `part ${index + 1}`);
const typedOf = (initials: string, round: number, part: string) =>
  `${(10 + (published[initials]?.[round - 1]?.[parts.indexOf(part)] ?? 0)).toFixed(2)} mm`;

async function shopWithHands() {
  const at = await shopWithKx3();
  const hand = async (initials: string) =>
    (await at.call('shop.addPerson', { initials, name: `Hand ${initials}` })).personId;
  const people = [await hand('A'), await hand('B'), await hand('C')];
  const start = (more = {}) =>
    at.call('gauges.startStudy', {
      name: 'Mike on steels',
      method: 'direct',
      gaugeId: null,
      parts,
      people,
      trials: 3,
      tolerance: '',
      by: at.by,
      ...more,
    });
  return { ...at, people, start };
}

type At = Awaited<ReturnType<typeof shopWithHands>>;

/** Reads on, `most` readings at the most, each as it is asked for. */
async function readOn({ call, by }: At, studyId: number, most = Number.POSITIVE_INFINITY) {
  for (let taken = 0; taken < most; taken += 1) {
    const { next } = await call('gauges.getStudy', { studyId });
    if (next === null) return;
    const typed = typedOf(next.initials, next.round, next.part);
    await call('gauges.recordStudyRead', { studyId, place: next.place, typed, by });
  }
}

describe('the order handed out', () => {
  const size = { parts: 4, people: 3, trials: 2 };

  test('is the same for the same seed and another for another', () => {
    expect(studyOrder(size, 7)).toEqual(studyOrder(size, 7));
    expect(studyOrder(size, 7)).not.toEqual(studyOrder(size, 8));
  });

  test('asks for everything once, and each person for a whole round of parts before handing on', () => {
    const order = studyOrder(size, 123);
    expect(new Set(order.map((place) => JSON.stringify(place))).size).toBe(24);
    for (let at = 0; at < order.length; at += 4) {
      expect(new Set(order.slice(at, at + 4).map(({ person, trial }) => `${person} ${trial}`)).size).toBe(1);
    }
  });

  test('puts every part first about as often', () => {
    const firsts = Array.from({ length: 4000 }, (_, seed) => studyOrder(size, seed * 7919)[0]?.part);
    for (let part = 0; part < 4; part += 1) {
      // 1000 expected, with a standard deviation of √(4000 · ¼ · ¾) = 27: five of them are 137.
      expect(Math.abs(firsts.filter((first) => first === part).length - 1000)).toBeLessThan(137);
    }
  });
});

describe('a repeat test', () => {
  test('is blind until its last reading is in, can be left and taken up, and refuses a reading out of turn', async () => {
    const at = await shopWithHands();
    const { studyId } = await at.start({ parts: parts.slice(0, 2), trials: 2 });
    await readOn(at, studyId, 5);
    const half = await at.call('gauges.getStudy', { studyId });
    expect(half).toMatchObject({
      taken: 5,
      outOf: 12,
      reads: [],
      results: null,
      next: { place: 6 },
      before: { place: 5 },
    });
    expect(await at.refusal('gauges.recordStudyRead', { studyId, place: 5, typed: '10 mm', by: at.by })).toMatchObject({
      code: 'other-place',
    });
    expect(await at.refusal('gauges.recordStudyRead', { studyId, place: 6, typed: 'ten', by: at.by })).toMatchObject({
      field: 'typed',
    });
    await readOn(at, studyId);
    const whole = await at.call('gauges.getStudy', { studyId });
    expect(whole).toMatchObject({ taken: 12, next: null });
    expect(whole.reads).toHaveLength(12);
    expect(await at.refusal('gauges.recordStudyRead', { studyId, place: 13, typed: '10 mm', by: at.by })).toMatchObject(
      { code: 'all-read' },
    );
  });

  test('says what the published study says', async () => {
    const at = await shopWithHands();
    // A band 6 mm wide: 6σ of it in percent is 100σ.
    const { studyId } = await at.start({ tolerance: '6 mm' });
    await readOn(at, studyId);
    const { results } = await at.call('gauges.getStudy', { studyId });
    const of = (source: string, lines = results?.lines) => lines?.find((line) => line.source === source);
    const order = ['repeatability', 'reproducibility', 'gauge', 'part', 'total'];
    // Published 0.199933, 0.226838, 0.302373, 1.042327, 1.085; the further digits with R 4.2.2.
    expectAllRelative(
      order.map((source) => (of(source)?.standardDeviation ?? 0) / 1e6),
      [0.1999331797, 0.2268375215, 0.3023715223, 1.042327494, 1.085299563],
      1e-8,
    );
    expectAllRelative(
      order.map((source) => of(source)?.percentStudyVariation ?? 0),
      [18.42193497, 20.90091337, 27.86065088, 96.0405338, 100],
      1e-8,
    );
    expectRelative(of('gauge')?.percentTolerance ?? 0, 30.23715223, 1e-8);
    expectRelative(results?.distinctCategories ?? 0, 4.860516477, 1e-8);
    expectRelative(results?.pInteraction ?? 0, 0.9741064043, 1e-8);
    expect(results?.isPooled).toBe(true);
    // Published by averages and ranges: 26.68 % of study variation.
    expectRelative(of('gauge', results?.byRanges ?? [])?.percentStudyVariation ?? 0, 26.67804984, 1e-8);
    // Variances 1.0864, 0.0515 and 0.0400 of 1.1779: 92, 4 and 3 of 100.
    expect(results?.sentence).toBe(
      'The parts make 92 of 100 of what differs, whose hand it is 4, reading again with the same hand 3.',
    );
    // Within the cells alone: published sum of squares 2.7589 over 60 degrees of freedom.
    expect(results?.repeatability.degreesOfFreedom).toBe(60);
    expectRelative((results?.repeatability.standardDeviation ?? 0) / 1e6, Math.sqrt(2.758933333 / 60), 1e-8);
  });

  test('puts a misread reading right, with the reason, and shows the right one at the end', async () => {
    const at = await shopWithHands();
    const { studyId } = await at.start({ parts: parts.slice(0, 2), trials: 2 });
    await at.call('gauges.recordStudyRead', { studyId, place: 1, typed: '99 mm', by: at.by });
    await at.call('gauges.supersedeStudyRead', { studyId, place: 1, typed: '9.9 mm', reason: 'a slip', by: at.by });
    await readOn(at, studyId);
    const { reads } = await at.call('gauges.getStudy', { studyId });
    expect(reads).toHaveLength(12);
    expect(reads[0]).toMatchObject({ place: 1, typed: '9.9 mm', amount_nm: 9_900_000 });
  });

  test('of readings that never differ refuses kindly', async () => {
    const at = await shopWithHands();
    const { studyId } = await at.start({ parts: parts.slice(0, 2), trials: 2 });
    for (let place = 1; place <= 12; place += 1) {
      await at.call('gauges.recordStudyRead', { studyId, place, typed: '10 mm', by: at.by });
    }
    expect(await at.call('gauges.getStudy', { studyId })).toMatchObject({
      results: null,
      why: 'All values are equal: there is nothing to divide up.',
    });
  });

  test.each([
    ['somebody twice', { people: [1, 1] }, 'people'],
    ['two parts of one name', { parts: ['a', 'a'] }, 'parts'],
    ['a band of nothing', { tolerance: '0' }, 'tolerance'],
  ])('is not begun with %s', async (_, more, field) => {
    const { refusal, by } = await shopWithHands();
    const input = { name: 'x', method: 'direct', gaugeId: null, parts: ['a', 'b'], people: [1, 2], trials: 2 };
    expect(await refusal('gauges.startStudy', { ...input, tolerance: '', by, ...more })).toMatchObject({ field });
  });
});

describe('what later takes lean on', () => {
  test('is the test’s own repeats with the bench’s, once it is finished; earlier takes stay', async () => {
    const at = await shopWithHands();
    const job = await openJob(at.call, at.familyId, at.by);
    const before = await readCheck(job, 'Converter hub to pump bushing', 'final', ['5.0']);
    const repeatability = (take: typeof before) => take.evaluation.budget.find((line) => line.name === 'repeatability');
    expect(repeatability(before)?.basis).toBe('starting value');
    const { studyId } = await at.start();
    await readOn(at, studyId, 89);
    const while_ = await readCheck(job, 'Converter hub to pump bushing', 'final', ['5.0']);
    expect(repeatability(while_)?.basis).toBe('starting value');
    await readOn(at, studyId);
    const after = await readCheck(job, 'Converter hub to pump bushing', 'final', ['5.0']);
    expect(repeatability(after)?.basis).toBe('the shop’s own, 60 repeats');
    expectRelative(repeatability(after)?.standardUncertainty ?? 0, 1e6 * Math.sqrt(2.758933333 / 60), 1e-5);
    const { checkId } = checkNamed(job.sheet, 'Converter hub to pump bushing');
    expect((await at.call('readings.listTakes', { jobId: job.jobId, checkId }))[0]).toEqual(before);
    expect((await at.call('readings.getRepeatability', {})).direct).toMatchObject({ repeats: 60, isUsed: true });
  });

  test('leaves out how people differ', () => {
    // Two hands a hundred apart that each repeat within 1: Σ(x − x̄)² = 0.5 in each of the four cells.
    const rows = [0, 1].flatMap((part) =>
      [0, 1].flatMap((appraiser) =>
        [0, 1].map((trial) => ({ part, appraiser, trial, value: 10 * part + 100 * appraiser + trial })),
      ),
    );
    expect(repeatsOfStudy(rows)).toEqual({ sumOfSquares: 2, degreesOfFreedom: 4 });
  });
});
