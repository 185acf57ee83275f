// Method against method and a check over the builds, through the contract, against published values.
import { describe, expect, test } from 'vitest';
import { openJob, readCheck } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';
import { expectAllRelative, expectRelative } from '../statistics/relative.ts';

const thou = 25_400;

describe('two methods on the same things', () => {
  test('disagree as Bland and Altman’s peak flow meters do', async () => {
    // Data of 17 subjects, first readings (Lancet i, 1986, 307); published bias −2.1, SD 38.8, interval −22.0 to 17.8;
    // further digits with R 4.2.2. Their litres a minute are typed as thou.
    const wright = [494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427];
    const mini = [512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451];
    const { call, by } = await shopWithKx3();
    for (const [index, value] of wright.entries()) {
      const pair = { what: `subject ${index + 1}`, supersedesId: null, by };
      const typed = { firstTyped: String(value), secondTyped: String(mini[index]) };
      // Either way round is the same pair.
      if (index % 2 === 0) await call('gauges.addPair', { ...pair, ...typed, first: 'direct', second: 'dial' });
      else
        await call('gauges.addPair', {
          ...pair,
          first: 'dial',
          second: 'direct',
          firstTyped: typed.secondTyped,
          secondTyped: typed.firstTyped,
        });
    }
    const { agreement, pairs } = await call('gauges.compareMethods', { first: 'direct', second: 'dial' });
    const inThou = (values: readonly number[]) => values.map((value) => value / thou);
    expect(pairs).toHaveLength(17);
    expectRelative((agreement?.bias ?? 0) / thou, -2.117647059, 1e-8);
    expectAllRelative(inThou(agreement?.limits ?? []), [-78.09590547, 73.86061135], 1e-8);
    expectAllRelative(inThou(agreement?.biasInterval ?? []), [-22.0488377, 17.81354358], 1e-8);
    expectAllRelative(inThou(agreement?.upperLimitInterval ?? []), [39.10496368, 108.616259], 1e-8);
  });

  test('lie on Pearson’s orthogonal line', async () => {
    // K. Pearson 1901; published 5.784 − 0.5456 x, further digits with R 4.2.2.
    const x = [0, 0.9, 1.8, 2.6, 3.3, 4.4, 5.2, 6.1, 6.5, 7.4];
    const y = [5.9, 5.4, 4.4, 4.6, 3.5, 3.7, 2.8, 2.8, 2.4, 1.5];
    const { call, by } = await shopWithKx3();
    for (const [index, value] of x.entries()) {
      const typed = { firstTyped: `${value} mm`, secondTyped: `${y[index]} mm` };
      await call('gauges.addPair', { what: 'x', first: 'direct', second: 'dial', ...typed, supersedesId: null, by });
    }
    const { line } = await call('gauges.compareMethods', { first: 'direct', second: 'dial' });
    expectRelative(line?.slope ?? 0, -0.5455611975, 1e-8);
    expectRelative((line?.intercept ?? 0) / 1e6, 5.784043775, 1e-8);
  });

  test('pair in the book where the same pack was read both ways in one state', async () => {
    const at = await shopWithKx3();
    const job = await openJob(at.call, at.familyId, at.by);
    const air = await readCheck(job, 'Forward clearance', 'as found', ['4 23', '4 25']);
    const { takeId } = await at.call('readings.startTake', {
      jobId: job.jobId,
      checkId: air.checkId,
      phase: 'as found',
      mode: 'quick',
      method: 'feeler',
      setup: null,
      note: '',
      by: at.by,
    });
    await at.call('readings.recordReading', { takeId, spot: 1, typed: '25 26', by: at.by });
    await readCheck(job, 'Direct clearance', 'as found', ['5 32']);
    const { pairs, agreement, why } = await at.call('gauges.compareMethods', { first: 'feeler', second: 'air' });
    // The leaves lie between 25 and 26; the means by air are 27 and 29.
    expect(pairs).toMatchObject([{ what: 'Forward, as found', first: 25.5 * thou, second: 28 * thou }]);
    expect(agreement).toBeNull();
    expect(why).toBe('Not enough yet: 1 of 2 pairs.');
  });

  test('a misread pair is superseded with a reason', async () => {
    const { call, refusal, by } = await shopWithKx3();
    const pair = { what: 'Forward', first: 'feeler', second: 'air', firstTyped: '25 26', secondTyped: '4 23', by };
    const { methodPairId } = await call('gauges.addPair', { ...pair, supersedesId: null });
    const again = { ...pair, secondTyped: '4 22', supersedesId: methodPairId };
    expect(await refusal('gauges.addPair', again)).toMatchObject({ field: 'reason' });
    await call('gauges.addPair', { ...again, reason: 'a slip' });
    const { pairs } = await call('gauges.compareMethods', { first: 'feeler', second: 'air' });
    expect(pairs.map(({ second }) => second / thou)).toEqual([26]);
    expect(await refusal('gauges.addPair', { ...pair, secondTyped: 'x', supersedesId: null })).toMatchObject({
      field: 'secondTyped',
    });
  });
});

describe('a check over the builds', () => {
  test('has the limits of the published flow rate, and refuses under eight builds', async () => {
    // NIST/SEMATECH e-Handbook 6.3.2.2: mean 50.81, limits 45.8159 and 55.8041. Typed as thou.
    const flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    const { call, familyId, by } = await shopWithKx3();
    const chart = () => call('gauges.chartCheck', { familyId, checkName: 'Rear end play' });
    for (const [index, value] of flow.entries()) {
      const job = await openJob(call, familyId, by);
      await readCheck(job, 'Rear end play', 'as found', ['90']);
      await readCheck(job, 'Rear end play', 'final', ['10']);
      await readCheck(job, 'Rear end play', 'final', [String(value)]);
      if (index === 6)
        expect(await chart()).toMatchObject({ why: 'Not enough yet: 7 of 8 builds have it as final.', chart: null });
    }
    const { points, chart: limits, why } = await chart();
    expect(why).toBeNull();
    expect(points.map(({ mean }) => mean / thou)).toEqual(flow);
    expectAllRelative(
      [limits?.mean ?? 0, limits?.lower ?? 0, limits?.upper ?? 0].map((value) => value / thou),
      [50.81, 45.81591017, 55.80408983],
      1e-8,
    );
    expect(points.every(({ isOutside }) => !isOutside)).toBe(true);
    const job = await openJob(call, familyId, by);
    await readCheck(job, 'Rear end play', 'final', ['90']);
    expect((await chart()).points.at(-1)).toMatchObject({ jobId: job.jobId, isOutside: true });
  });
});
