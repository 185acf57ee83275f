// Which gauge read a take, and what it brings into the budget. Expected lines are hand arithmetic: half-width/√3 for a
// permitted error (JCGM 100:2008 4.3.7), √2 · step/√12 for the rounding of a travel, r·(1 − cos α)/√3 out of square.
import { describe, expect, test } from 'vitest';
import type { Input, Output } from '../../app/contract/contract.ts';
import { checkNamed, openJob, usualSetup } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';

const thou = 25_400;

type Gauge = Input<'gauges.saveGauge'>;

async function atTheBench() {
  const at = await shopWithKx3();
  const job = await openJob(at.call, at.familyId, at.by);
  const gauge = async (tag: string, more: Partial<Gauge> = {}) => {
    const { gaugeId } = await at.call('gauges.saveGauge', {
      gaugeId: null,
      kind: 'dial plunger',
      tag,
      unit: 'thou',
      resolution: '0.5',
      permittedError: '0.6',
      statedIn: '',
      offSquareDegrees: 0,
      serial: '',
      intervalDays: null,
      by: at.by,
      ...more,
    });
    return gaugeId;
  };
  const begin = (name: string, gaugeId: number | null, more: Partial<Input<'readings.startTake'>> = {}) => {
    const check = checkNamed(job.sheet, name);
    const setup = (more.method ?? check.method) === 'air' ? usualSetup : null;
    return {
      jobId: job.jobId,
      checkId: check.checkId,
      phase: 'as found' as const,
      mode: 'quick' as const,
      setup,
      gaugeId,
      note: '',
      by: at.by,
      ...more,
    };
  };
  const read = async (input: Input<'readings.startTake'>, typed: string) => {
    const { takeId } = await at.call('readings.startTake', input);
    return (await at.call('readings.recordReading', { takeId, spot: 1, typed, by: at.by })).take;
  };
  return { ...at, job, gauge, begin, read };
}

const lineOf = (take: Output<'readings.getTake'>, name: string) =>
  take.evaluation.budget.find((line) => line.name === name);

describe('a take that names its gauge', () => {
  test('by air brings the dial’s permitted error, its step and how far out of square it may stand', async () => {
    const { gauge, begin, read } = await atTheBench();
    const gaugeId = await gauge('Lever 2', { kind: 'dial lever', offSquareDegrees: 15 });
    const take = await read(begin('Forward clearance', gaugeId), '4 23');
    expect(take.gauge).toEqual({ gaugeId, tag: 'Lever 2' });
    expect(lineOf(take, 'dial permitted error')?.standardUncertainty).toBeCloseTo((0.6 * thou) / Math.sqrt(3), 6);
    expect(lineOf(take, 'dial permitted error')?.basis).toBe('Lever 2');
    expect(lineOf(take, 'dial resolution')?.standardUncertainty).toBeCloseTo((0.5 * thou) / Math.sqrt(6), 6);
    // cos 15° is 0.965 925 826.
    expect(lineOf(take, 'dial out of square')?.standardUncertainty).toBeCloseTo(
      (27 * thou * (1 - 0.965_925_826)) / Math.sqrt(3),
      3,
    );
    expect(take.evaluation.mean).toBe(27 * thou);
  });

  test('is named in the history of the job, beside what was noted', async () => {
    const { call, gauge, begin, read, job } = await atTheBench();
    const gaugeId = await gauge('Lever 2', { kind: 'dial lever' });
    await read(begin('Forward clearance', gaugeId, { note: 'drum on the bench' }), '4 23');
    await read(begin('Direct clearance', null), '5 33');
    const told = (await call('jobs.getHistory', { jobId: job.jobId })).filter(({ kind }) => kind === 'reading');
    expect(told.map(({ more }) => more)).toEqual(['Read with Lever 2; drum on the bench', '']);
  });

  test('without a stated error brings no line, and without a gauge the budget is as it was', async () => {
    const { gauge, begin, read } = await atTheBench();
    const plain = await read(begin('Forward clearance', null), '4 23');
    const named = await read(
      begin('Forward clearance', await gauge('D1', { permittedError: '', resolution: '1' })),
      '4 23',
    );
    expect(plain.gauge).toBeNull();
    expect(named.evaluation.budget).toEqual(plain.evaluation.budget);
  });

  test('by leaves brings the leaf’s error, by micrometer its own in place of the shop’s', async () => {
    const { gauge, begin, read } = await atTheBench();
    const leaves = await gauge('Leaves A', { kind: 'feeler set', permittedError: '0.3' });
    const byLeaves = await read(begin('Forward clearance', leaves, { method: 'feeler' }), '26 27');
    expect(lineOf(byLeaves, 'leaf permitted error')?.standardUncertainty).toBeCloseTo((0.3 * thou) / Math.sqrt(3), 6);
    const mike = await gauge('Mike', { kind: 'micrometer', permittedError: '0.1', resolution: '0.1' });
    const byMike = await read(begin('Converter hub to pump bushing', mike), '5.0');
    expect(lineOf(byMike, 'micrometer')).toMatchObject({ basis: 'Mike' });
    expect(lineOf(byMike, 'micrometer')?.standardUncertainty).toBeCloseTo((0.1 * thou) / Math.sqrt(3), 6);
  });

  test('keeps what it began with, whatever is written down of the gauge later', async () => {
    const { call, gauge, begin, read, by } = await atTheBench();
    const gaugeId = await gauge('D1');
    const before = await read(begin('Rear end play', gaugeId), '11');
    await call('gauges.saveGauge', {
      gaugeId,
      kind: 'dial plunger',
      tag: 'D1',
      unit: 'thou',
      resolution: '1',
      permittedError: '2',
      statedIn: '',
      offSquareDegrees: 20,
      serial: '',
      intervalDays: null,
      by,
    });
    expect(await call('readings.getTake', { takeId: before.takeId })).toEqual(before);
    const after = await read(begin('Rear end play', gaugeId), '11');
    expect(lineOf(after, 'dial permitted error')?.standardUncertainty).toBeCloseTo((2 * thou) / Math.sqrt(3), 6);
  });

  test('offers it as last time on the same job, until it is retired', async () => {
    const { call, job, gauge, begin, read, by } = await atTheBench();
    const gaugeId = await gauge('D1');
    await read(begin('Forward clearance', gaugeId), '4 23');
    await read(begin('Rear end play', null), '11');
    const last = () => call('gauges.lastGauge', { jobId: job.jobId, method: 'air' });
    expect(await last()).toEqual({ gaugeId, tag: 'D1' });
    expect(await call('gauges.lastGauge', { jobId: job.jobId, method: 'dial' })).toBeNull();
    await call('gauges.retireGauge', { gaugeId, isRetired: true, by });
    expect(await last()).toBeNull();
  });

  test('refuses one that does not read that way, and one that is retired', async () => {
    const { call, refusal, gauge, begin, by } = await atTheBench();
    const leaves = await gauge('Leaves A', { kind: 'feeler set' });
    expect(await refusal('readings.startTake', begin('Forward clearance', leaves))).toMatchObject({ field: 'gaugeId' });
    const gaugeId = await gauge('D1');
    await call('gauges.retireGauge', { gaugeId, isRetired: true, by });
    expect(await refusal('readings.startTake', begin('Forward clearance', gaugeId))).toMatchObject({
      message: 'D1 is retired: take another.',
    });
  });
});
