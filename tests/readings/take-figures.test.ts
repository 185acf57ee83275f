// What a take leans on, on a real file: nothing set or read later changes it, a shop's own repeats take the place of the
// starting value from twenty on, and a feeler is corrected from eight pairs on. Expected figures are the arithmetic
// beside them: repeats pooled as Σ(x − x̄)²/ν within each spot (JCGM 100:2008 4.2.2, H.5.2.5), a bias as a mean with
// s/√n (4.2.3), leaves as half their step/√3 (4.3.7).
import { describe, expect, test } from 'vitest';
import type { Output } from '../../app/contract/contract.ts';
import { checkNamed, openJob, readCheck, usualSetup } from '../../main/shop/demo/kx3-job.ts';
import { kx3Sheet } from '../../main/shop/demo/kx3-sheet.ts';
import { shopWithKx3 } from '../desk.ts';

const thou = 25_400;

async function atTheBench() {
  const at = await shopWithKx3();
  return { ...at, job: await openJob(at.call, at.familyId, at.by) };
}

type AtTheBench = Awaited<ReturnType<typeof atTheBench>>;
type Take = Output<'readings.getTake'>;

const spotOne = (lines: readonly string[]) => ({ spots: lines.map(() => 1) });

/** One spot of Forward read by air, as often as there are lines. */
const readForward = ({ job }: AtTheBench, ...lines: string[]) =>
  readCheck(job, 'Forward clearance', 'final', lines, { ...spotOne(lines), mode: 'quick' });

const repeatabilityOf = (take: Take) => take.evaluation.budget.find(({ name }) => name === 'repeatability');

async function times(count: number, act: (round: number) => Promise<unknown>): Promise<void> {
  for (let round = 0; round < count; round += 1) await act(round);
}

describe('what is set later leaves a take as it was', () => {
  test('a changed rule, repeatability, hand, dial and limit judge the next take, not the last', async () => {
    const at = await atTheBench();
    const before = await readForward(at, '4 25', '4 25.5');
    expect(before.evaluation.verdict.word).toBe('too close to call');
    await at.call('shop.changeSettings', {
      decisionRule: 'simple',
      repeatability_nm: 10 * thou,
      handForceHalfWidth_nm: 0,
      dialResolution_nm: thou / 10,
      unevenLimit_nm: thou / 10,
      repeatLimit_nm: thou / 10,
    });
    expect(await at.call('readings.getTake', { takeId: before.takeId })).toEqual(before);
    const after = await readForward(at, '4 25', '4 25.5');
    expect(after.evaluation.verdict.word).toBe('in');
    expect(after.evaluation.asks).toHaveLength(1);
  });

  test('how a shop writes its lengths still changes every screen', async () => {
    const at = await atTheBench();
    const { takeId } = await readForward(at, '4 19', '4 23');
    await at.call('shop.changeSettings', { lengthUnit: 'mm', decimalMark: ',' });
    const { asks } = (await at.call('readings.getTake', { takeId })).evaluation;
    expect(asks.map(({ why }) => why)).toEqual(['These two differ by 0,102 mm: once more.']);
  });
});

describe('the shop’s own repeats', () => {
  test('nineteen leave the starting value in place, the twentieth replaces it for what begins after', async () => {
    const at = await atTheBench();
    // Two reads 1 thou apart: Σ(x − x̄)² = 2 · 0.5² = 0.5 for one degree of freedom, so s² = 0.5 whatever their number.
    await times(19, () => readForward(at, '4 22', '4 23'));
    const twentieth = await readForward(at, '4 22', '4 23');
    expect(repeatabilityOf(twentieth)).toMatchObject({ basis: 'starting value' });
    expect(repeatabilityOf(twentieth)?.standardUncertainty).toBeCloseTo((0.7 / Math.SQRT2) * thou, 6);
    const next = await readForward(at, '4 22');
    expect(repeatabilityOf(next)).toMatchObject({ basis: 'the shop’s own, 20 repeats' });
    expect(repeatabilityOf(next)?.standardUncertainty).toBeCloseTo(Math.round(Math.sqrt(0.5) * thou), 9);
    expect(await at.call('readings.getTake', { takeId: twentieth.takeId })).toEqual(twentieth);
  });

  test('are the paired totals of what stands: misread lines, air only and other spots left out, a third read in', async () => {
    const at = await atTheBench();
    const { job, call, by } = at;
    const { checkId } = checkNamed(job.sheet, 'Forward clearance');
    const { takeId } = await call('readings.startTake', {
      jobId: job.jobId,
      checkId,
      phase: 'final',
      mode: 'final',
      setup: usualSetup,
      note: '',
      by,
    });
    const record = (spot: number, typed: string, more = {}) =>
      call('readings.recordReading', { takeId, spot, typed, by, ...more });
    // Push and travel scatter against each other; their totals are 26, 29 and, asked for, 27.
    await record(1, '4 22');
    await record(1, '2 27');
    await record(1, '6 21');
    // Zeroed again after the push, the travel is the total: 30 beside 31.
    await record(2, '5 25');
    await record(2, '5 31', { isZeroedAgain: true });
    // Misread as 82, stands as 28 beside 28.5; air only says nothing; the fourth spot was read once.
    const { readingId } = await record(3, '4 78');
    await call('readings.supersedeReading', { readingId, typed: '4 24', reason: 'read the wrong turn', by });
    await record(3, '4 24.5');
    await record(3, '60', { meaning: 'air only' });
    await record(4, '4 40');
    const mean = (26 + 29 + 27) / 3;
    const sumOfSquares =
      (26 - mean) ** 2 + (29 - mean) ** 2 + (27 - mean) ** 2 + 2 * ((31 - 30) / 2) ** 2 + 2 * ((28.5 - 28) / 2) ** 2;
    const { air, dial, direct } = await call('readings.getRepeatability', {});
    expect(air).toMatchObject({ repeats: 2 + 1 + 1, isUsed: false });
    expect(air.standardDeviation_nm).toBeCloseTo(Math.sqrt(sumOfSquares / 4) * thou, 6);
    expect([dial.repeats, dial.standardDeviation_nm, direct.repeats]).toEqual([0, null, 0]);
  });

  test('are each method’s own, and a take never leans on itself', async () => {
    const at = await atTheBench();
    const lines = [...new Array(11).fill('30'), ...new Array(10).fill('32')];
    const first = await readCheck(at.job, 'Front end play', 'as found', lines, spotOne(lines));
    expect(repeatabilityOf(first)?.basis).toBe('starting value');
    const second = await readCheck(at.job, 'Front end play', 'final', ['31']);
    // 21 reads: x̄ = (11·30 + 10·32)/21, Σ(x − x̄)² = 4 · 11 · 10 / 21, over 20.
    expect(repeatabilityOf(second)?.standardUncertainty).toBe(Math.round(Math.sqrt((4 * 110) / 21 / 20) * thou));
    expect(repeatabilityOf(await readForward(at, '4 22'))?.basis).toBe('starting value');
  });

  test('that never differ are not taken for a dial without steps', async () => {
    const at = await atTheBench();
    await times(20, () => readForward(at, '4 22', '4 22'));
    // δ/√12 of the dial's step of 1 thou: JCGM 100:2008 F.2.2.1.
    const next = await readForward(at, '4 22');
    expect(repeatabilityOf(next)?.standardUncertainty).toBe(Math.round(thou / Math.sqrt(12)));
  });

  test('are looked for in lengths alone', async () => {
    const at = await atTheBench();
    const pressure = kx3Sheet.checks.find(({ method, quantity }) => method === 'direct' && quantity === 'pressure');
    const lines = ['165', '166', '167'];
    await readCheck(at.job, pressure?.name ?? '', 'final', lines, spotOne(lines));
    expect((await at.call('readings.getRepeatability', {})).direct.repeats).toBe(0);
  });
});

describe('a feeler beside air', () => {
  /** A new unit as found: Direct by air, in all 30, and then by feeler. */
  async function pairUp(at: AtTheBench, leaves: string, by = at.by, air = '4 26') {
    const job = { ...(await openJob(at.call, at.familyId, by)), by };
    if (air !== '') await readCheck(job, 'Direct clearance', 'as found', [air, air], spotOne([air, air]));
    return feel(at, job, leaves);
  }

  async function feel({ call }: AtTheBench, job: AtTheBench['job'], typed: string) {
    const { checkId } = checkNamed(job.sheet, 'Direct clearance');
    const { by, jobId } = job;
    const phase = 'as found';
    const start = { jobId, checkId, phase, mode: 'quick', method: 'feeler', setup: null, note: '', by };
    const { takeId } = await call('readings.startTake', start);
    return (await call('readings.recordReading', { takeId, spot: 1, typed, by })).take;
  }

  // 32 and 34 by feeler against 30 by air.
  const leaves = (round: number) => (round % 2 === 0 ? '31.5 32.5' : '33.5 34.5');

  test('seven pairs are counted and nothing else', async () => {
    const at = await atTheBench();
    await times(7, (round) => pairUp(at, leaves(round)));
    const { evaluation } = await pairUp(at, '41 42', at.by, '');
    expect(evaluation.feelerBias).toEqual({ pairs: 7, bias: null, meanAsRead: 41.5 * thou });
    expect(evaluation.mean).toBe(41.5 * thou);
    expect(evaluation.remarks).toContain('7 of 8 pairs of feeler and air in RA’s hands: not corrected.');
    expect(evaluation.budget.map(({ name }) => name)).toEqual(['between the leaves']);
  });

  test('from eight on it is corrected and says so, judged on what it is by air, over revisions of the sheet', async () => {
    const at = await atTheBench();
    await times(8, (round) => pairUp(at, leaves(round)));
    await at.call('specs.saveSheet', {
      familyId: at.familyId,
      sheet: kx3Sheet,
      sourceNote: 'a second look',
      by: at.by,
    });
    const { evaluation, jobId } = await pairUp(at, '41 42', at.by, '');
    // Differences 2 and 4, four times each: mean 3, s² = 8 · 1²/7, so s/√8 = √(1/7).
    expect(evaluation.feelerBias).toEqual({ pairs: 8, bias: 3 * thou, meanAsRead: 41.5 * thou });
    expect(evaluation.mean).toBe(38.5 * thou);
    expect(evaluation.remarks).toContain(
      'Feeler reads this pack 3.0 thou above air in RA’s hands (8 pairs): 38.5 by air.',
    );
    expect(evaluation.budget.map(({ name, basis }) => [name, basis])).toEqual([
      ['feeler bias', '8 pairs'],
      ['between the leaves', ''],
    ]);
    expect(evaluation.standardUncertainty).toBeCloseTo(Math.hypot(Math.sqrt(1 / 7), 0.5 / Math.sqrt(3)) * thou, 0);
    // Direct is meant at 40 or more, and the ± is about 1: 41.5 would have been in.
    expect([evaluation.verdict.word, evaluation.verdict.by]).toEqual(['tight', 1.5 * thou]);
    // What stands on the ticket, and from there in the report, brings the sentence along.
    const { checks } = await at.call('jobs.getJob', { jobId });
    expect(checks.find(({ name }) => name === 'Direct clearance')?.latest).toMatchObject({
      value: 38.5 * thou,
      remarks: evaluation.remarks,
    });
  });

  test('is one person’s own, from the newest take of each kind that is a clearance', async () => {
    const at = await atTheBench();
    const { personId } = await at.call('shop.addPerson', { name: 'Jo Mbeki', initials: 'JM' });
    await times(7, (round) => pairUp(at, leaves(round)));
    expect((await pairUp(at, '41 42', personId, '')).evaluation.feelerBias?.pairs).toBe(0);
    // Air only is no clearance, and a pack that would not hold air was not read by it.
    const job = await openJob(at.call, at.familyId, at.by);
    const { checkId } = checkNamed(job.sheet, 'Direct clearance');
    const start = { jobId: job.jobId, checkId, phase: 'as found', mode: 'quick', setup: usualSetup, note: '', by: 1 };
    const airOnly = await at.call('readings.startTake', start);
    await at.call('readings.recordReading', { ...airOnly, spot: 1, typed: '30', meaning: 'air only', by: 1 });
    const leaking = await at.call('readings.startTake', start);
    await at.call('readings.recordReading', { ...leaking, spot: 1, typed: '4 26', by: 1 });
    await at.call('readings.noteAtSpot', { ...leaking, spot: 1, what: 'will not hold air', by: 1 });
    await feel(at, job, '31.5 32.5');
    expect((await pairUp(at, '41 42', at.by, '')).evaluation.feelerBias?.pairs).toBe(7);
    // The same unit read again, and well, by both: one pair more, by the newest of each.
    await readCheck(job, 'Direct clearance', 'as found', ['4 26']);
    await feel(at, job, '33.5 34.5');
    const { feelerBias } = (await pairUp(at, '41 42', at.by, '')).evaluation;
    // 2, 4, 2, 4, 2, 4, 2 and 4.
    expect(feelerBias).toMatchObject({ pairs: 8, bias: 3 * thou });
  });
});
