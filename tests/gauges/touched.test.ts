// A gauge found out: which readings it touched and what they could have said. Expected values are hand arithmetic: a
// gauge that read 3 too much makes 22 of a true 19.
import { expect, test } from 'vitest';
import { movedLimits } from '../../app/gauges/moved-limits.ts';
import { checkNamed, openJob } from '../../main/shop/demo/kx3-job.ts';
import { shopWithKx3 } from '../desk.ts';

const thou = 25_400;

async function shopWithDial() {
  const at = await shopWithKx3();
  const { call, by } = at;
  const job = await openJob(call, at.familyId, by);
  const gauge = async (tag: string) =>
    (
      await call('gauges.saveGauge', {
        gaugeId: null,
        kind: 'dial plunger',
        tag,
        unit: 'thou',
        resolution: '1',
        permittedError: '0.5',
        statedIn: '',
        offSquareDegrees: 0,
        serial: '',
        intervalDays: null,
        by,
      })
    ).gaugeId;
  const check = (gaugeId: number, checkedOn: string, points: Array<[string, string]>) =>
    call('gauges.recordCheck', {
      gaugeId,
      against: 'blocks',
      checkedOn,
      points: points.map(([nominal, read]) => ({ nominal, read })),
      note: '',
      by,
    });
  const read = async (gaugeId: number | null, typed: string) => {
    const { takeId } = await call('readings.startTake', {
      jobId: job.jobId,
      checkId: checkNamed(job.sheet, 'Rear end play').checkId,
      phase: 'final',
      mode: 'quick',
      setup: null,
      gaugeId,
      note: '',
      by,
    });
    await call('readings.recordReading', { takeId, spot: 1, typed, by });
    return takeId;
  };
  return { ...at, job, gauge, check, read };
}

// The clock of these tests stands on 23 November 2026.
test('lists what it read since it was last good, by how much it could be off, and whether the verdict could change', async () => {
  const { call, job, gauge, check, read } = await shopWithDial();
  const dial = await gauge('D1');
  const other = await gauge('D2');
  await check(dial, '2026-11-20', [['50', '50']]);
  // Rear end play is 4 to 19 thou on the KX3 sheet.
  const near = await read(dial, '22');
  const inside = await read(dial, '12');
  await read(other, '27');
  await read(null, '27');
  const { gaugeCheckId } = await check(dial, '2026-11-23', [
    ['10', '10.1'],
    ['50', '53'],
  ]);
  const touched = await call('gauges.listTouched', { gaugeCheckId });
  expect(touched).toMatchObject({ tag: 'D1', sinceOn: '2026-11-20', untilOn: null, error: { low: 0, high: 3 * thou } });
  expect(touched.takes.map(({ takeId }) => takeId)).toEqual([inside, near]);
  const [second, first] = touched.takes;
  expect(second).toMatchObject({ mean: 12 * thou, couldBe: { low: 9 * thou, high: 12 * thou }, couldSay: [] });
  expect(first).toMatchObject({
    jobId: job.jobId,
    customer: 'Tam Okoro',
    checkName: 'Rear end play',
    word: 'loose',
    couldBe: { low: 19 * thou, high: 22 * thou },
  });
  expect(first?.couldSay).toEqual(['too close to call']);
});

test('counts from the beginning where it was never good, and ends at the next good check', async () => {
  const { call, refusal, gauge, check, read } = await shopWithDial();
  const dial = await gauge('D1');
  const takeId = await read(dial, '15');
  const { gaugeCheckId } = await check(dial, '2026-11-21', [['50', '53']]);
  const good = await check(dial, '2026-11-22', [['50', '50']]);
  const touched = await call('gauges.listTouched', { gaugeCheckId });
  // Read on the 23rd, after it was good again.
  expect(touched).toMatchObject({ sinceOn: null, untilOn: '2026-11-22', takes: [] });
  expect(await refusal('gauges.listTouched', { gaugeCheckId: good.gaugeCheckId })).toMatchObject({ code: 'not-out' });
  expect(takeId).toBe(1);
});

test('limits move as a whole', () => {
  expect(movedLimits({ kind: 'target', target: 20, low: 15, high: 25 }, 3)).toEqual({
    kind: 'target',
    target: 23,
    low: 18,
    high: 28,
  });
  expect(
    movedLimits(
      {
        kind: 'variants',
        variants: [
          { name: 'a', nominal: 90, within: 4 },
          { name: 'b', nominal: 118, within: 4 },
        ],
      },
      -2,
    ),
  ).toMatchObject({ variants: [{ nominal: 88 }, { nominal: 116 }] });
});
